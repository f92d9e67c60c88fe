/**
 * How a pasted block is laid out: what stands over it, which way its stations run, which rows are headings and
 * what they say, and whether its first column names stations.
 */
import { nameOf } from '../../measure';
import type { Named } from './named';
import type { Column } from './offsets';

type Cells = readonly (readonly string[])[];

/** What the table has that a block may name. */
interface Known {
  readonly stations: readonly Named[];
  readonly edges: readonly Named[];
}

/** In a printed table a dash says that there is nothing to give. */
export const isDash = (cell: string) => /^[-−–—]+$/.test(cell);

/** Rows over the block that hold but one text, which is no heading, station or length. */
export function titleRows(
  rows: Cells,
  { stations, edges }: Known,
  isLength: (cell: string) => boolean,
): number {
  const isWide = (row: readonly string[]) => row.filter((cell) => cell !== '').length > 1;
  const isTitle = (cell: string) =>
    cell === '' || (!isLength(cell) && stationCalled(stations, cell) < 0 && headingOf(cell, edges) === null);
  // In a block of one column every text is a cell of it.
  return rows.some(isWide) ? rows.findIndex((row) => isWide(row) || !row.every(isTitle)) : 0;
}

/** Whether the block has its stations across the top instead of down its side. */
export function stationsAcross(
  top: readonly string[] | undefined,
  { stations }: Pick<Known, 'stations'>,
): boolean {
  const across = (top ?? []).slice(1).filter((cell) => stationCalled(stations, cell) >= 0);
  return across.length > 1 && stationCalled(stations, top?.[0] ?? '') < 0;
}

export function turned(rows: Cells): Cells {
  const width = Math.max(...rows.map((row) => row.length));
  return Array.from({ length: width }, (_, c) => rows.map((row) => row[c] ?? ''));
}

/** Words for a place in the block as it was pasted. */
export interface Counted {
  readonly row: (r: number) => string;
  readonly column: (c: number) => string;
  readonly cell: (r: number, c: number) => string;
}

/** @param pastedRow the row of the block as it was pasted, from 0, for a column of the turned one */
export function counted(
  titles: number,
  isTurned: boolean,
  added = 0,
  pastedRow: (c: number) => number = (c) => c,
): Counted {
  const row = (r: number) => (isTurned ? `column ${r - added + 1}` : `row ${titles + r + 1}`);
  const column = (c: number) => (isTurned ? `row ${titles + pastedRow(c) + 1}` : `column ${c + 1}`);
  // A heading of a block of rows stands in the first column.
  const at = (r: number) => row(Math.max(added, r));
  return { row, column, cell: (r, c) => (isTurned ? `${column(c)}, ${at(r)}` : `${row(r)}, ${column(c)}`) };
}

// Stations

const same = (a: string, b: string) =>
  nameOf(a).toLowerCase() === nameOf(b).toLowerCase() && nameOf(a) !== '';

/** The station that a cell names, by its name or, where no other has it, by its number: `2`, `Stn 2`. */
export function stationCalled(stations: readonly Named[], cell: string): number {
  const known = stations.findIndex(({ label, name }) => same(label, cell) || same(name, cell));
  const [, number] = /^(?:st(?:n|ation)?\.?|fr(?:ame)?\.?|f|mould|no\.?)? *(\d+)$/i.exec(cell) ?? [];
  if (known >= 0 || number === undefined) return known;
  const numbered = stations.filter(({ label }) => /\d+$/.exec(label)?.[0] === number);
  return numbered.length === 1 ? stations.indexOf(numbered[0]!) : -1;
}

// Headings

export interface PastedHeading {
  readonly edge?: Named;
  readonly column?: Column;
  readonly unit?: string;
}

const measures: Readonly<Record<Column, RegExp>> = {
  x: /^(x|fwd|forward|(distance|dist)( forward| fwd)?|position)$/,
  halfBreadth:
    /^(y|hb|h b|(half )?breadths?|(half )?widths?|half beams?)( (from|out from|off)( the)? (cl|c l|cent(re|er) ?line))?$/,
  height: /^(z|hts?|heights?)( (above|over|from)( the)? (bl|b l|base( ?line)?))?$/,
};
const unitIn =
  /[([]\s*(?:(mm|cm|m|in|ft|inches|feet)|f(?:ee)?t[-, ]+in(?:ches)?[-, ]+(?:eighths|8ths))\s*[)\]]/i;

/** What a heading says; null where it says nothing that this table knows. */
export function headingOf(cell: string, edges: readonly Named[]): PastedHeading | null {
  const unit = unitIn.exec(cell)?.[1]?.toLowerCase();
  const words = cell
    .replace(unitIn, ' ')
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
  const known = edges
    .map((edge) => ({
      edge,
      words: edge.label
        .toLowerCase()
        .replaceAll(/[^\p{L}\p{N}]+/gu, ' ')
        .trim(),
    }))
    .filter((one) => ` ${words} `.includes(` ${one.words} `))
    .toSorted((a, b) => b.words.length - a.words.length)[0];
  const rest = (known ? ` ${words} `.replace(` ${known.words} `, ' ').trim() : words)
    // Half-breadth to the sheer, height at chine.
    .replace(/ (of|to|at)( the)?$/, '')
    .replace(/^(of|to|at)( the)? /, '');
  const column = (Object.keys(measures) as Column[]).find((one) => measures[one].test(rest));
  if (!known && !column) return null;
  if (rest !== '' && !column) return null;
  return {
    ...(known ? { edge: known.edge } : {}),
    ...(column ? { column } : {}),
    ...(unit ? { unit: { inches: 'in', feet: 'ft' }[unit] ?? unit } : {}),
  };
}

/**
 * How many rows at the top are headings: none, one or two, in which no cell is a length. One is known, or all are
 * words: then it is told which of them are not.
 */
export function headRows(
  rows: Cells,
  { edges, stations }: Known,
  isLength: (cell: string) => boolean,
): number {
  const isHead = (row: readonly string[] | undefined) =>
    row !== undefined &&
    !row.some(isLength) &&
    (row.some((cell) => cell !== '' && headingOf(cell, edges) !== null) || areWords(row)) &&
    stationCalled(stations, row[0] ?? '') < 0;
  if (!isHead(rows[0])) return 0;
  return isHead(rows[1]) ? 2 : 1;
}

/** More than one cell of the row, and all that hold anything, begin with a letter. */
function areWords(row: readonly string[]): boolean {
  const full = row.filter((cell) => cell !== '');
  return full.length > 1 && full.every((cell) => /^\p{L}/u.test(cell));
}

/** Whether the first column holds stations' names: one is known, or all are words and the headings leave it out. */
export function hasNames(
  rows: Cells,
  heads: number,
  { stations, edges }: Known,
  isLength: (cell: string) => boolean,
): boolean {
  const firsts = rows.slice(heads).map((row) => row[0] ?? '');
  const isHeaded = rows.slice(0, heads).some((row) => headingOf(row[0] ?? '', edges) !== null);
  if (heads > 0) return !isHeaded;
  // A station called 3 is also a length; without headings the box in hand decides then.
  return firsts.some((cell) => stationCalled(stations, cell) >= 0 && !isLength(cell));
}
