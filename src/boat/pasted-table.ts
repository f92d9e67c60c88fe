/**
 * A table pasted from a spreadsheet into the table of offsets. Either every cell of it can be read and has a
 * place, or nothing is written and each cell that can't is told by its row and column, counted in the block.
 *
 * With headings, one or two rows of edges and of what is measured, columns go by them; with stations' names in
 * the first column, rows go by those. Without, the block goes in from the box in hand to the right and down.
 * Plans often have their stations across the top: such a block is turned first. A title over it is passed by.
 */
import { isIssue, nameOf } from '../measure';
import type { Named } from './named';
import { offsetName } from './offset-entries';
import { type Notation, readOffset } from './offset-notation';
import type { Column } from './offsets';
import { cellsOf } from './pasted-cells';
import {
  type Counted,
  counted,
  hasNames,
  headRows,
  type Heading,
  headingOf,
  isDash,
  stationCalled,
  stationsAcross,
  titleRows,
  turned,
} from './pasted-layout';
import { MOST_STATIONS } from './table';

export interface GridColumn {
  readonly edge: Named;
  readonly column: Column;
}

/** Where a block lands. */
export interface Landing {
  readonly stations: readonly Named[];
  readonly edges: readonly Named[];
  /** Columns as they stand in the grid, from left to right. */
  readonly columns: readonly GridColumn[];
  /** The box in hand. */
  readonly row: number;
  readonly column: number;
  readonly notation: Notation;
  /** Whether a station stands as one plane: a place forward given of one edge is then that of all. */
  readonly isPlane: (station: string) => boolean;
  /** A name for a station to be added, by its number among those added. */
  readonly newName: (number: number) => string;
}

/** A station that the block has and the table has not: put in before the one that is at `at` by then. */
export interface NewStation {
  readonly at: number;
  readonly name: string;
}

export type Pasted =
  | { readonly writes: Readonly<Record<string, string>> }
  | { readonly faults: readonly string[]; readonly grow?: readonly NewStation[] };

export function isRefused(pasted: Pasted): pasted is Exclude<Pasted, { writes: unknown }> {
  return 'faults' in pasted;
}

export function pastedInto(text: string, landing: Landing): Pasted {
  const read = (cell: string, unit?: string) =>
    readOffset(cell, { notation: landing.notation, field: 'it', ...(unit === undefined ? {} : { unit }) });
  const isLength = (cell: string) => !isIssue(read(cell));
  const pasted = cellsOf(text, isLength).map((row) => row.map((cell) => (isDash(cell) ? '' : cell)));
  const titles = titleRows(pasted, landing, isLength);
  const isTurned = stationsAcross(pasted[titles], landing);
  const rows = isTurned ? turned(pasted.slice(titles)) : pasted.slice(titles);
  const told = counted(titles, isTurned);
  const heads = headRows(rows, landing, isLength);
  const body = rows.slice(heads);
  if (body.every((row) => row.every((cell) => cell === '')))
    return { faults: ['nothing but headings and empty cells was pasted'] };
  const named = hasNames(rows, heads, landing, isLength);
  const columns =
    heads > 0 ? headed(rows.slice(0, heads), named, landing, told) : unheaded(body, named, landing);
  if ('faults' in columns) return columns;
  const placed = named ? rowsByName(body, heads, landing, told) : rowsFromBox(body, landing);
  if ('faults' in placed) return placed;

  const writes: Record<string, string> = {};
  const faults: string[] = [];
  body.forEach((row, r) => {
    row.forEach((cell, c) => {
      const place = columns.at[c];
      const station = placed.at[r];
      if (cell === '' || (named && c === 0)) return;
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
  return faults.length > 0 ? { faults } : { writes: { ...forwardOfAll(writes, landing), ...writes } };
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
const short = (text: string) => (text.length > 30 ? `${text.slice(0, 29)}…` : text);
// Columns

interface Place extends GridColumn {
  readonly unit?: string;
}
type Columns = { readonly at: readonly (Place | undefined)[] } | { readonly faults: readonly string[] };

function headed(
  heads: readonly (readonly string[])[],
  named: boolean,
  landing: Landing,
  told: Counted,
): Columns {
  const width = Math.max(...heads.map((row) => row.length));
  const at: (Place | undefined)[] = [];
  const faults: string[] = [];
  // In the upper of two rows a heading stands over all columns up to the next.
  let over: Heading = {};
  for (let c = 0; c < width; c++) {
    if (named && c === 0) {
      at.push(undefined);
      continue;
    }
    const cells = heads.map((row) => row[c] ?? '');
    const read = cells.map((cell) => (cell === '' ? {} : headingOf(cell, landing.edges)));
    const unknown = read.indexOf(null);
    if (unknown >= 0) {
      faults.push(
        `${told.cell(unknown, c)}: "${short(cells[unknown]!)}" is no edge of this table (${landing.edges.map(({ label }) => label).join(', ')}) with forward, half-breadth or height`,
      );
      continue;
    }
    if (heads.length === 2 && cells[0] !== '') over = read[0]!;
    const heading: Heading = heads.length === 2 ? { ...over, ...read[1] } : read[0]!;
    if (cells.every((cell) => cell === '') && heads.length === 1) {
      at.push(undefined);
      continue;
    }
    const { column = onlyOne(landing, 'column'), unit } = heading;
    // A column of stations' places forward often stands alone, before all edges.
    const edge = heading.edge ?? onlyOne(landing, 'edge') ?? (column === 'x' ? landing.edges[0] : undefined);
    if (!edge || !column) {
      faults.push(
        edge
          ? `${told.column(c)}: is it the forward, the half-breadth or the height of the ${edge.label}? The heading must say`
          : `${told.column(c)}: the heading must name an edge of this table`,
      );
    } else if (at.some((other) => other?.edge.name === edge.name && other.column === column)) {
      faults.push(`${told.column(c)}: the ${edge.label} is given one kind of number twice`);
    } else at.push({ edge, column, ...(unit === undefined ? {} : { unit }) });
  }
  return faults.length > 0 ? { faults } : { at };
}

/** What all columns of the grid have in common, if they have. */
function onlyOne<K extends keyof GridColumn>({ columns }: Landing, key: K): GridColumn[K] | undefined {
  const first = columns[0]?.[key];
  return columns.every((one) => one[key] === first) ? first : undefined;
}

function unheaded(body: readonly (readonly string[])[], named: boolean, landing: Landing): Columns {
  const names = named ? 1 : 0;
  const filled = body.map((row) => row.findLastIndex((cell) => cell !== '') + 1);
  const width = Math.max(...filled) - names;
  const there = landing.columns.length - landing.column;
  if (width > there) {
    const count = (n: number) => (n === 1 ? '1 column' : `${n} columns`);
    return {
      faults: [
        `the block has ${count(width)}, but from the box in hand to the right there ${there === 1 ? 'is' : 'are'} ${there}; begin further left, or show more columns`,
      ],
    };
  }
  return {
    at: [...Array.from({ length: names }, () => undefined), ...landing.columns.slice(landing.column)],
  };
}

// Rows

type Rows =
  | { readonly at: readonly (Named | undefined)[] }
  | { readonly faults: readonly string[]; readonly grow?: readonly NewStation[] };

function rowsFromBox(body: readonly (readonly string[])[], { stations, row, newName }: Landing): Rows {
  const height = body.findLastIndex((cells) => cells.some((cell) => cell !== '')) + 1;
  const there = stations.length - row;
  if (height <= there) return { at: stations.slice(row) };
  const more = height - there;
  const faults = [
    `the block has ${height} rows, but from the box in hand down there ${there === 1 ? 'is 1 station' : `are ${there} stations`}`,
  ];
  return growing(
    faults,
    stations,
    Array.from({ length: more }, (_, i) => ({ at: stations.length + i, name: newName(i) })),
  );
}

function rowsByName(
  body: readonly (readonly string[])[],
  heads: number,
  { stations }: Landing,
  told: Counted,
): Rows {
  const at: (Named | undefined)[] = [];
  const faults: string[] = [];
  const missing: { name: string; after: number }[] = [];
  const seen = new Set<string>();
  let last = -1;
  body.forEach((row, r) => {
    const cell = row[0] ?? '';
    const isEmpty = row.every((one) => one === '');
    const index = stationCalled(stations, cell);
    at.push(stations[index]);
    if (isEmpty) return;
    const key = stations[index]?.name ?? nameOf(cell).toLowerCase();
    if (cell === '') faults.push(`${told.row(heads + r)}: the name of the station is missing`);
    else if (seen.has(key))
      faults.push(`${told.row(heads + r)}: the station "${short(cell)}" stands there twice`);
    else if (index < 0) {
      missing.push({ name: cell, after: last });
    } else last = index;
    seen.add(key);
  });
  if (faults.length > 0) return { faults };
  if (missing.length === 0) return { at };
  // Each goes in after the station that stands before it in the block.
  const grow = missing.map(({ name, after }, i) => ({
    at: after + 1 + missing.slice(0, i).filter((earlier) => earlier.after <= after).length,
    name,
  }));
  return growing(
    missing.map(({ name }) => `the table has no station "${short(name)}"`),
    stations,
    grow,
  );
}

function growing(faults: readonly string[], stations: readonly Named[], grow: readonly NewStation[]): Rows {
  return stations.length + grow.length > MOST_STATIONS
    ? { faults: [...faults, `a table takes at most ${MOST_STATIONS} stations`] }
    : { faults, grow };
}
