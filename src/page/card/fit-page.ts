/** Finds the highest rung of the ladder on which one page of a card is no higher than its paper. */
import { render, type VNode } from 'preact';
import type { Card } from './card';
import { CARD_WIDTH, type Picture } from './card-picture';
import { isBeside, pageView, type CardPage } from './card-view';
import { BESIDE, LADDER, PAGE_HEIGHT, type Rung } from './ladder';
import type { TableSetting } from './table-view';
import { leastTold } from './used-view';

/** What a page is fitted with: the card, its pictures, how its table is set, and where all is measured. */
export interface Fitting {
  readonly card: Card;
  readonly pictures: readonly Picture[];
  readonly table: TableSetting;
  readonly place: HTMLElement;
}

/** A page as it was found to fit. */
export interface FittedPage {
  readonly view: VNode;
  /** Its place on the ladder, from the top. */
  readonly rung: number;
}

/** @returns null where the page is too high on each of the ladder's first `rungs` */
export function fitPage(fitting: Fitting, part: CardPage, rungs: number): FittedPage | null {
  const tried = new Set<string>();
  for (const [index, rung] of LADDER.slice(0, rungs).entries()) {
    const all = tried.size;
    if (tried.add(bearingOn(part, rung)).size === all) continue;
    const view = fittedTo(fitting, part, rung);
    if (view) return { view, rung: index };
  }
  return null;
}

/** What of a rung changes this page. */
const bearingOn = (
  { pictured, tabled, used }: CardPage,
  { closeness, picture, table, inputs, sources }: Rung,
): string => [closeness, pictured && picture, tabled && table, used && inputs, used && sources].join(' ');

/** The page with the least that it can have, whatever its height. */
export function leastPage({ card, table }: Fitting, part: CardPage): VNode {
  return pageView(card, part, LADDER.at(-1)!, { table: { ...table, rows: 0 }, told: 0, pictures: [] }); // the ladder has rungs
}

function fittedTo(fitting: Fitting, part: CardPage, rung: Rung): VNode | null {
  const { card, place } = fitting;
  // A table takes the whole width and leaves a picture's side empty.
  if (isBeside(rung) && part.pictured && part.tabled) return null;
  const drawn = part.pictured ? fitting.pictures : [];
  const at = (pictures: readonly VNode[], rows: number, told = 0) => {
    const view = pageView(card, part, rung, { table: { ...fitting.table, rows }, told, pictures });
    render(view, place);
    const room = PAGE_HEIGHT - (place.firstElementChild?.getBoundingClientRect().height ?? 0);
    return { view, room, fits: room >= 0 && !isFigureTooWide(place) };
  };
  /** With as many inputs told as there is room for, where the rung counts some. */
  const filled = (pictures: readonly VNode[], rows: number) => {
    const least = leastTold(card.inputs, rung.inputs);
    const most = part.used ? card.inputs.length : least;
    return at(
      pictures,
      rows,
      mostOf(least, most, (told) => at(pictures, rows, told).fits),
    ).view;
  };
  const all = fitting.table.rows;
  if (rung.table === 'as far as it goes') {
    // A picture that can be read is worth more than the last rows: they stand in the notebook.
    for (let rows = all - 1; rows > 0 && drawn.length > 0; rows -= 1) {
      const bare = at([], rows);
      if (!bare.fits) continue;
      for (const pictures of tries(drawn, rung, bare.room))
        if (at(pictures, rows).fits) return filled(pictures, rows);
    }
    const pictures = drawn.slice(0, 1).map((picture) => picture.draw(0).node);
    const rows = mostOf(0, all, (more) => at(pictures, more).fits);
    return at(pictures, rows).fits ? filled(pictures, rows) : null;
  }
  const bare = at([], all);
  if (!bare.fits) return null;
  const tried = drawn.length > 0 ? tries(drawn, rung, bare.room) : [[]];
  for (const pictures of tried) if (at(pictures, all).fits) return filled(pictures, all);
  return null;
}

/** A large figure keeps to one line, until it may break on the last rungs. */
function isFigureTooWide(place: HTMLElement): boolean {
  const edge = place.getBoundingClientRect().right + 1;
  return [...place.querySelectorAll('.card-figure b')].some(
    (one) => one.getBoundingClientRect().right > edge,
  );
}

/** The largest number of what fits, which each smaller one does too; the least where none does. */
function mostOf(least: number, all: number, fits: (many: number) => boolean): number {
  let most = all;
  while (least < most) {
    const middle = Math.ceil((least + most) / 2);
    if (fits(middle)) least = middle;
    else most = middle - 1;
  }
  return least;
}

/** Pictures that may find room, the best first. */
function* tries(pictures: readonly Picture[], { picture: asks }: Rung, room: number): Generator<VNode[]> {
  const [first] = pictures;
  if (!first) return;
  if (asks === 'beside' || asks === 'narrow') {
    for (const [width, height] of BESIDE[asks]) {
      const drawn = first.draw(height, Math.floor(CARD_WIDTH * width));
      const hasRoom = drawn.height * width <= room;
      if (drawn.legible && hasRoom) yield [drawn.node];
    }
  } else if (asks === 'least' || room >= Math.min(first.wants, asks)) {
    yield* pictured(pictures, room);
  }
}

/** The first picture in the height there is, if that does it justice, and a further one below it where it finds room. */
function* pictured([first, ...more]: readonly Picture[], room: number): Generator<VNode[]> {
  const drawn = first?.draw(room);
  if (!drawn?.legible || drawn.height > room) return;
  const nodes = [drawn.node];
  let left = room - drawn.height;
  for (const picture of more) {
    const { node, height, legible } = picture.draw(left);
    if (height > left || !legible) break;
    nodes.push(node);
    left -= height;
  }
  yield nodes;
}
