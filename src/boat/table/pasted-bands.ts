/**
 * The layout of most plans: stations across the top, and under them a block of rows for each kind of number, headed
 * Heights, Half-breadths, Diagonals. Each row is given the heading of its block in a column of its own, so that
 * the table reads as one with two headings.
 */
import type { Named } from './named';
import { headingOf, stationCalled, stationsAcross } from './pasted-layout';

type Cells = readonly (readonly string[])[];

interface Known {
  readonly stations: readonly Named[];
  readonly edges: readonly Named[];
}

export interface Banded {
  /** The row of stations first, each row with its block's heading before it. */
  readonly rows: Cells;
  /** For each of them the row of the block as it was pasted. */
  readonly from: readonly number[];
  /** Columns that they have more than the block. */
  readonly added: number;
  /** Rows of diagonals, left out. */
  readonly left: number;
}

/** Diagonals measure a section once more, aslant; a table of edges has no place for them. */
export const isDiagonal = (cell: string) => /^diag/i.test(cell.trim());

/** The block with its rows' headings in a column, or null where it is laid out otherwise. */
export function banded(rows: Cells, known: Known): Banded | null {
  const top = rows.findIndex((row) => stationsAcross(row, known));
  const stations = rows[top];
  if (!stations) return null;
  const bandOf = (row: readonly string[]) => (isBand(row[0] ?? '', known) ? row[0]! : '');
  const isAlone = (row: readonly string[]) => bandOf(row) !== '' && isEmpty(row.slice(1));
  if (!rows.slice(0, top).every((row) => isAlone(row) || isEmpty(row))) return null;
  // The headings stand over their rows, or in a column of their own before them.
  const beside = stationCalled(known.stations, stations[1] ?? '') < 0 && !rows.some(isAlone);
  if (!rows.some(beside ? (row) => bandOf(row) !== '' : isAlone)) return null;
  const own = (row: readonly string[]) => (beside ? row.slice(1) : row);
  let band = '';
  let left = 0;
  const body = rows.flatMap((row, r): { from: number; cells: readonly string[] }[] => {
    if (beside ? bandOf(row) !== '' : isAlone(row)) band = bandOf(row);
    // Some plans say the stations again over each block.
    if (r === top || isAlone(row) || isEmpty(row) || isAgain(row, stations, known)) return [];
    if (isDiagonal(band) || isDiagonal(own(row)[0] ?? '')) {
      left += 1;
      return [];
    }
    return [{ from: r, cells: [band, ...own(row)] }];
  });
  return {
    rows: [['', ...own(stations)], ...body.map(({ cells }) => cells)],
    from: [top, ...body.map(({ from }) => from)],
    added: beside ? 0 : 1,
    left,
  };
}

const isEmpty = (row: readonly string[]) => row.every((cell) => cell === '');

function isBand(cell: string, { edges }: Known): boolean {
  const heading = headingOf(cell, edges);
  return isDiagonal(cell) || (heading?.column !== undefined && heading.edge === undefined);
}

function isAgain(row: readonly string[], top: readonly string[], { stations }: Known): boolean {
  const named = row.slice(1).filter((cell) => cell !== '');
  return (
    named.length > 1 &&
    row.every((cell, c) => c === 0 || stationCalled(stations, cell) === stationCalled(stations, top[c] ?? ''))
  );
}
