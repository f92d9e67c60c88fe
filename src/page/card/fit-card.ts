/** Sets a card out on one page, or on two, each on the highest rung of the ladder that it fits on. */
import { render, type VNode } from 'preact';
import { html } from '../html';
import type { Card } from './card';
import type { Picture } from './card-picture';
import { type CardPage, pageView } from './card-view';
import { type FittedPage, type Fitting, fitPage, leastPage } from './fit-page';
import { BEFORE_A_PICTURE_GOES_OVER, BEFORE_A_TABLE_GOES_OVER, LADDER } from './ladder';
import { arrangements, onePage, parted, pictureAndTableApart, withoutPicture } from './parts';
import { type CardLeaf, leafPage } from './leaf';
import { tableSetting } from './table-setting';
import type { TableSetting } from './table-view';

/**
 * Renders the card into its place, which is laid out at the card's width. What no setting can hold,
 * words, warnings and cautions of more than two pages, runs on to a third: nothing is cut off.
 */
export function fitCard(
  card: Card,
  pictures: readonly Picture[],
  noPicture: string,
  place: HTMLElement,
  leaves: readonly CardLeaf[] = [],
): void {
  const whole = onePage(card, pictures.length > 0, noPicture, inShort(leaves));
  const { table } = card;
  const set = table
    ? tableSetting(
        table,
        place,
        (setting) => pageView(card, whole, LADDER[0]!, { table: setting, told: 0, pictures: [] }), // the ladder has rungs
      )
    : NO_TABLE;
  const fitting = { card, pictures, table: set, place };
  const rungs = card.table ? BEFORE_A_TABLE_GOES_OVER : LADDER.length;
  const one = fitPage(fitting, whole, rungs);
  const two = one ? null : onTwo(fitting, whole);
  const asksThree = !one && !two?.whole && whole.pictured && whole.tabled;
  const three = asksThree ? onThree(fitting, whole) : null;
  const pages = one ? [one.view] : (three ?? two?.pages ?? inPieces(fitting, whole));
  const more = leaves.map((leaf) => leafPage(card, leaf, place));
  render(html`<div>${pages}${more}</div>`, place);
}

const NO_TABLE: TableSetting = { parts: 1, breaks: 'nowhere', rows: 0 };

/** What is said of them on the first page. */
function inShort(leaves: readonly CardLeaf[]): readonly string[] {
  const [first, last] = [leaves[0], leaves.at(-1)];
  if (!first || !last) return [];
  return [first === last ? first.title : `${first.title} to ${last.title}, one a page`];
}

interface Paged {
  readonly pages: readonly VNode[];
  /** No row of the table is left out. */
  readonly whole: boolean;
}

/** Of the ways to part the card the one whose lower page stands highest; null where the first page can't hold what must stand there. */
function onTwo(fitting: Fitting, whole: CardPage): Paged | null {
  let best: Paged | null = null;
  let rungs = LADDER.length;
  for (const [first, second] of arrangements(whole, fitting.card)) {
    const yields = second.pictured ? BEFORE_A_PICTURE_GOES_OVER : 0;
    // It must do better than the best so far.
    const within = Math.max(0, best ? rungs - yields : rungs);
    const one: FittedPage | null = fitPage(fitting, first, within);
    const two: FittedPage | null = one && fitPage(fitting, second, within);
    if (!one || !two) continue;
    best = { pages: [one.view, two.view], whole: LADDER[two.rung]?.table === 'whole' };
    rungs = Math.max(one.rung, two.rung) + yields;
  }
  return best;
}

/** The drawing on the second page and the table on the third; null where even so one of them is not whole. */
function onThree(fitting: Fitting, whole: CardPage): readonly VNode[] | null {
  const pages = pictureAndTableApart(whole, fitting.card).map((part) =>
    fitPage(fitting, part, LADDER.length - 1),
  );
  return pages.every((page) => page !== null) ? pages.map(({ view }) => view) : null;
}

/** As many words, warnings and cautions as the first page holds, the others on the second with all the rest. */
function inPieces(fitting: Fitting, whole: CardPage): readonly VNode[] {
  const pieces = whole.words.length + whole.warnings.length + whole.cautions.length;
  const ways = Array.from({ length: pieces + 1 }, (_, less) => parted(whole, fitting.card, pieces - less));
  const fit = (part: CardPage) => fitPage(fitting, part, LADDER.length)?.view;
  const held = ways.find(([first]) => fit(first)) ?? ways.at(-1)!; // there is one way at least
  const [first, second] = held;
  return [
    fit(first) ?? leastPage(fitting, first),
    fit(second) ?? fit(withoutPicture(second)) ?? leastPage(fitting, withoutPicture(second)),
  ];
}
