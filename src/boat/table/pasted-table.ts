/**
 * A table pasted from a spreadsheet into the table of offsets. Either every cell of it can be read and has a
 * place, or nothing is written and each cell that can't is told by its row and column, counted in the block.
 *
 * With headings, one or two rows of edges and of what is measured, columns go by them; with stations' names in
 * the first column, rows go by those. A block without headings is asked about. Plans often have their stations
 * across the top, and rows in blocks: such a table is turned first. A title over it is passed by.
 */
import { isIssue } from '../../measure';
import { offsetName } from './offsets';
import { readOffset } from './offset-notation';
import { cellsOf } from './pasted-cells';
import { banded } from './pasted-bands';
import { type Columns, headed } from './pasted-headings';
import { type Landing, type NewStation, short } from './pasted-landing';
import {
  type Counted,
  counted,
  hasNames,
  headRows,
  isDash,
  stationsAcross,
  titleRows,
  turned,
} from './pasted-layout';
import { rowsByName, rowsFrom } from './pasted-rows';
import { type PastedWay, waysOf } from './pasted-ways';

export type Pasted =
  | {
      readonly writes: Readonly<Record<string, string>>;
      /** Rows or columns of diagonals, which the table has no place for. */
      readonly left: number;
    }
  | { readonly faults: readonly string[]; readonly grow?: readonly NewStation[] }
  | UnheadedBlock;

/** A block without headings: what it may be, the likeliest first. */
export interface UnheadedBlock {
  readonly asks: readonly PastedWay[];
}

type Refused = { readonly faults: readonly string[]; readonly grow?: readonly NewStation[] };

export const isRefused = (pasted: Pasted): pasted is Refused => 'faults' in pasted;
export const isAsking = (pasted: Pasted): pasted is UnheadedBlock => 'asks' in pasted;

/** @param way what a block without headings is; without it, the ways there are come back */
export function pastedInto(text: string, landing: Landing, way?: PastedWay): Pasted {
  const read = (cell: string, unit?: string) =>
    readOffset(cell, { notation: landing.notation, field: 'it', ...(unit === undefined ? {} : { unit }) });
  const isLength = (cell: string) => !isIssue(read(cell));
  const pasted = cellsOf(text, isLength).map((row) => row.map((cell) => (isDash(cell) ? '' : cell)));
  const { rows, told, left } = laidOut(pasted, landing, isLength, way);
  const heads = headRows(rows, landing, isLength);
  const body = rows.slice(heads);
  if (body.every((row) => row.every((cell) => cell === '')))
    return { faults: ['nothing but headings and empty cells was pasted'] };
  const named = hasNames(rows, heads, landing, isLength);
  if (heads === 0 && !way) return asking(body, named, landing);
  const names = named ? [undefined] : [];
  const columns: Columns =
    heads > 0 ? headed(rows.slice(0, heads), named, landing, told) : { at: [...names, ...way!.columns] }; // without headings there is a way
  if ('faults' in columns) return columns;
  const placed = named
    ? rowsByName(body, heads, landing, told)
    : rowsFrom(way?.row ?? landing.row, body, landing);
  if ('faults' in placed) return placed;

  const writes: Record<string, string> = {};
  const faults: string[] = [];
  body.forEach((row, r) => {
    row.forEach((cell, c) => {
      const place = columns.at[c];
      const station = placed.at[r];
      if (cell === '' || (named && c === 0) || place === 'left out') return;
      const where = told.cell(heads + r, c);
      if (!place || !station) {
        faults.push(`${where}: "${short(cell)}" has no place in the table`);
        return;
      }
      const reading = read(cell, place.unit);
      if (isIssue(reading))
        faults.push(`${where}: "${short(cell)}" is not a length${because(reading.issue)}`);
      else writes[offsetName(station.name, place.edge.name, place.column)] = reading.text;
    });
  });
  if (faults.length > 0) return { faults };
  const diagonals = left + columns.at.filter((place) => place === 'left out').length;
  return { writes: { ...forwardOfAll(writes, landing), ...writes }, left: diagonals };
}

interface LaidOut {
  /** Stations down, headings on top. */
  readonly rows: readonly (readonly string[])[];
  readonly told: Counted;
  readonly left: number;
}

function laidOut(
  pasted: readonly (readonly string[])[],
  landing: Landing,
  isLength: (cell: string) => boolean,
  way: PastedWay | undefined,
): LaidOut {
  const titles = titleRows(pasted, landing, isLength);
  const block = pasted.slice(titles);
  const bands = banded(block, landing);
  if (bands) {
    const told = counted(titles, true, bands.added, (c) => bands.from[c] ?? c);
    return { rows: turned(bands.rows), told, left: bands.left };
  }
  const isTurned = way?.across ?? stationsAcross(block[0], landing);
  return { rows: isTurned ? turned(block) : block, told: counted(titles, isTurned), left: 0 };
}

function asking(body: readonly (readonly string[])[], named: boolean, landing: Landing): Pasted {
  const height = body.findLastIndex((cells) => cells.some((cell) => cell !== '')) + 1;
  const filled = body.map((row) => row.findLastIndex((cell) => cell !== '') + 1);
  const width = Math.max(...filled) - (named ? 1 : 0);
  const asks = waysOf(height, width, named, landing);
  if (asks.length > 0) return { asks };
  const there = landing.columns.length - landing.column;
  const count = (n: number) => (n === 1 ? '1 column' : `${n} columns`);
  return {
    faults: [
      `the block has ${count(width)}, but from the box in hand to the right there ${there === 1 ? 'is' : 'are'} ${there}; begin further left, or show more columns`,
    ],
  };
}

/** Where one edge of a plane station was given its place forward, the same of the others. */
function forwardOfAll(writes: Readonly<Record<string, string>>, { stations, edges, isPlane }: Landing) {
  const more: Record<string, string> = {};
  for (const station of stations) {
    const names = edges.map((edge) => offsetName(station.name, edge.name, 'x'));
    const given = names.filter((name) => Object.hasOwn(writes, name));
    if (given.length === 1 && isPlane(station.name))
      for (const name of names) more[name] = writes[given[0]!]!; // the one given
  }
  return more;
}

/** The reader's own reason where it says more than that. */
const because = (why: string) =>
  /eighths|inches run|could be|lacks|zero/.test(why) ? ` (${why.replace(/^it:? /, '')})` : '';
