/** Pages of a card that speak of one thing alone, as a sheet with all that is cut from it: of the version in hand. */
import { render, type VNode } from 'preact';
import type { Instance } from '../../cells';
import { isIssue } from '../../measure';
import type { Bench } from '../bench';
import { html } from '../html';
import { atHand } from '../on-hand';
import type { Card } from './card';
import { drawn, LEAST_WIDE, type Picture } from './card-picture';
import type { CardRow, CardTable } from './card-table';
import { headView } from './card-view';
import { PAGE_HEIGHT } from './ladder';
import { tableSetting } from './table-setting';
import { tableView } from './table-view';

export interface CardLeaf {
  readonly title: string;
  readonly says: string;
  readonly picture: Picture;
  /** The rows that belong to it; null where it has none. */
  readonly table: CardTable | null;
}

/** None while a number is missing. */
export function leavesOf(instance: Instance, bench: Bench, table: CardTable | null): readonly CardLeaf[] {
  const { leaves } = instance.cell;
  const at = leaves ? atHand(instance, bench.book.inHand.value, bench) : null;
  if (!leaves || !at || isIssue(at)) return [];
  return leaves(at.values, at.on).map(({ title, drawing, rows }) => {
    const own = table?.rows.filter(({ id }) => rows.includes(id)) ?? [];
    return {
      title,
      says: drawing.says,
      picture: drawn(drawing, undefined, bench, LEAST_WIDE, { caption: false }),
      table: table && own.length > 0 ? withoutRepeats(table, own) : null,
    };
  });
}

/** Columns that say the same in all of several rows are left out: the page's head and its first sentence say it. */
function withoutRepeats(table: CardTable, rows: readonly CardRow[]): CardTable {
  const texts = rows.map(({ cells }) => cells.map((said) => JSON.stringify(said)));
  const told = table.columns.map(
    (_, at) => rows.length === 1 || texts.some((row) => row[at] !== texts[0]![at]), // there is a row
  );
  const kept = <T>(of: readonly T[]) => of.filter((_, at) => told[at]);
  return {
    ...table,
    columns: kept(table.columns),
    rows: rows.map((row) => ({ ...row, inHand: false, cells: kept(row.cells) })),
  };
}

/** The least height of its picture before rows are left to the notebook, px. */
const LEAST_PICTURE = 280;

/** Set out in `place`: the picture takes what its rows leave, and the last rows give way to a picture that can be read. */
export function leafPage(card: Card, leaf: CardLeaf, place: HTMLElement): VNode {
  const { title, says, picture, table } = leaf;
  const view = (rows: VNode | null, drawing: VNode | null) =>
    html`<section class="card-page card-leaf" data-closeness="tight">
      ${headView(card, `, ${title}`)}
      <p class="card-words">${says}</p>
      ${drawing ? html`<div class="card-pictures">${drawing}</div>` : null} ${rows}
    </section>`;
  const roomBeside = (rows: VNode | null): number => {
    render(view(rows, null), place);
    return PAGE_HEIGHT - (place.firstElementChild?.getBoundingClientRect().height ?? 0) - BETWEEN;
  };
  if (!table) return view(null, picture.draw(roomBeside(null)).node);
  const setting = tableSetting(table, place, (as) => view(tableView(table, as), null));
  let many = table.rows.length;
  const rowsNow = () => tableView(table, { ...setting, rows: many });
  while (many > 0 && roomBeside(rowsNow()) < LEAST_PICTURE) many -= 1;
  return view(rowsNow(), picture.draw(roomBeside(rowsNow())).node);
}

/** Between a picture and the rows below it, px: 2 mm. */
const BETWEEN = 8;
