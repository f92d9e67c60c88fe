/** A block of cells pasted into the grid: all of it is written as one step, or nothing and the reasons are kept to be read. */
import { offsetsOf, type Table } from '../../boat';
import { cellsOf } from '../../boat/table/pasted-cells';
import type { Landing, NewStation } from '../../boat/table/pasted-landing';
import { isAsking, isRefused, type Pasted, pastedInto } from '../../boat/table/pasted-table';
import type { PastedWay } from '../../boat/table/pasted-ways';
import { readOffset } from '../../boat/table/offset-notation';
import { addStation, nextName, type TableEdit } from '../../boat/table/table-edits';
import { isIssue, plainShown, read } from '../../measure';
import type { Bench } from '../bench';
import type { GridState } from './grid-state';

/** @returns false where the text is one cell, for the box alone */
export function pasteBlock(
  bench: Bench,
  state: GridState,
  text: string,
  row: number,
  column: number,
): boolean {
  const notation = state.notation.peek();
  const isLength = (cell: string) => !isIssue(readOffset(cell, { notation, field: 'it' }));
  const cells = cellsOf(text, isLength);
  if (cells.length === 1 && cells[0]!.length === 1) return false; // there is always a row
  putIn(bench, state, { text, row, column });
  return true;
}

interface Block {
  readonly text: string;
  readonly row: number;
  readonly column: number;
  /** What a block without headings is. */
  readonly way?: PastedWay;
}

/** Writes the block into the table; or says why not, or asks what it is. */
export function putIn(bench: Bench, state: GridState, block: Block): void {
  const { book } = bench;
  const pasted = pastedOn(bench, state, block);
  state.told.value = '';
  state.paste.value = null;
  state.asked.value = null;
  if (isAsking(pasted)) {
    state.asked.value = { ...block, ways: pasted.asks };
    return;
  }
  if (isRefused(pasted)) {
    const { grow } = pasted;
    state.paste.value = { ...pasted, again: () => grow && pasteGrown(bench, state, block, grow) };
    return;
  }
  // What stands already is not written over the plan again.
  const graph = book.inHand.peek();
  const news = Object.entries(pasted.writes).filter(
    ([name, entry]) => graph.designed(name) !== valueOf(entry),
  );
  book.write(Object.fromEntries(news));
  book.settle();
  const count = Object.keys(pasted.writes).length;
  const stood =
    news.length === count
      ? ''
      : `, ${news.length === 0 ? 'none' : news.length} of them other than what stood`;
  state.told.value = `${count === 1 ? 'One number' : `${count} numbers`} pasted${stood}.${saidOfDiagonals(pasted.left)} Undo takes ${count === 1 ? 'it' : 'them'} back.`;
}

export function pastedOn(bench: Bench, state: GridState, { text, row, column, way }: Block): Pasted {
  return pastedInto(text, landingOn(state, bench.book.state.peek().table, row, column), way);
}

const saidOfDiagonals = (left: number) =>
  left === 0
    ? ''
    : ` ${left === 1 ? 'One diagonal is' : `${left} diagonals are`} left out: this table has no place for diagonals. Check one or two against the sections.`;

function landingOn(state: GridState, table: Table, row: number, column: number): Landing {
  const { edges, stations } = offsetsOf(table);
  const opened = state.opened.peek();
  return {
    stations,
    edges,
    columns: state.columns.peek(),
    row,
    column,
    notation: state.notation.peek(),
    isPlane: (station) =>
      !opened.has(station) && station !== stations[0]?.name && station !== stations.at(-1)?.name,
    newName: (number) => {
      let named = table;
      for (let n = 0; n < number; n++)
        named = withStation(named, named.stations.length, nextName(named, 'station'));
      return nextName(named, 'station');
    },
  };
}

const withStation = (table: Table, at: number, name: string) => addStation(table, at, name, null).table;

/** The same block into the table with the stations that it has and the table has not; one step. */
function pasteGrown(bench: Bench, state: GridState, block: Block, grow: readonly NewStation[]): void {
  const { text, row, column, way } = block;
  const { book } = bench;
  const told = (faults: readonly string[]) => {
    state.paste.value = { faults, again: () => undefined };
  };
  let edit: TableEdit;
  try {
    const table = grow.reduce((now, { at, name }) => withStation(now, at, name), book.state.peek().table);
    const pasted = pastedInto(text, landingOn(state, table, row, column), way);
    if (!('writes' in pasted)) {
      told(isRefused(pasted) ? pasted.faults : []);
      return;
    }
    edit = { table, words: {}, writes: pasted.writes };
  } catch (fault) {
    // A name in the block may be none that a station can take.
    if (!(fault instanceof Error) || fault.constructor !== Error) throw fault;
    told([fault.message]);
    return;
  }
  book.reshape(edit);
  state.paste.value = null;
  state.told.value = `${grow.length === 1 ? 'A station' : `${grow.length} stations`} added and the block pasted. Undo takes both back.`;
}

export function valueOf(entry: string): number | null {
  const reading = read(entry, { kind: 'length', shown: plainShown, field: 'it' });
  const value = isIssue(reading) ? reading : reading.evaluate(() => 0);
  return isIssue(value) ? null : value;
}
