/**
 * Changes of a table's stations and edges. Each gives the table as it is then, and what becomes of the words
 * by which quantities know its stations and edges, so that entries go along (carry.ts).
 *
 * Where a station or an edge comes between two others it begins on what is there: a station on the battens
 * of the hull as it stands, an edge midway between its neighbours, so that the hull goes on being drawn.
 */
import type { Vec3 } from '../../kernel';
import { attempt } from '../attempt';
import type { WordChanges } from './carry';
import { quantityName } from './names';
import { offsetFaults } from './offset-faults';
import { type Offsets, offsetsOf } from './offsets';
import {
  type Face,
  LONGEST_NAME,
  MOST_EDGES,
  MOST_STATIONS,
  type Table,
  type TablePoint,
  type TableStation,
  type TableUnit,
  tableUnits,
} from './table';

export interface TableEdit {
  readonly table: Table;
  readonly words: WordChanges;
  /** Entries that are written with the same stroke. */
  readonly writes?: Readonly<Record<string, string>>;
}

/** The hull as it stands, as far as a new line begins on it. */
export interface Battens {
  readonly offsets: Pick<Offsets, 'points'>;
  readonly stations: readonly unknown[];
  readonly edges: readonly {
    readonly points: readonly (Vec3 | null)[];
    /** @throws where it can't be drawn */
    readonly atX: (x: number) => { readonly point: Vec3 } | null;
  }[];
}

export type Line = 'station' | 'edge';

const namesIn = (table: Table, line: Line): readonly string[] =>
  line === 'edge' ? table.edges : table.stations.map(({ name }) => name);

const inPlace = <T>(list: readonly T[], at: number, put: readonly T[], drop = 0): T[] => [
  ...list.slice(0, at),
  ...put,
  ...list.slice(at + drop),
];

/**
 * Why a name can't be that of the station or edge at `at`, as a sentence without its full stop; null where
 * it can. An `at` past the end stands for one that is yet to come.
 */
export function nameFault(table: Table, line: Line, at: number, name: string): string | null {
  const label = name.trim();
  if (label === '') return `the ${line} needs a name`;
  if (label.length > LONGEST_NAME) return `a name has at most ${LONGEST_NAME} letters`;
  const word = quantityName(label, line);
  const others = (['edge', 'station'] as const).flatMap((kind) =>
    namesIn(table, kind)
      .filter((_, i) => kind !== line || i !== at)
      .map((other) => ({ other, word: quantityName(other, kind) })),
  );
  const bare: Table = { ...table, edges: [], stations: [] };
  const alone: Table =
    line === 'edge' ? { ...bare, edges: [label] } : { ...bare, stations: [{ name: label, points: [] }] };
  const own = offsetFaults(offsetsOf(alone)).find((fault) => fault[line] === word);
  if (own) return own.says;
  const same = others.find((one) => one.word === word)?.other;
  if (same === undefined) return null;
  return same === label
    ? `there is a "${same}" already; edges and stations need names of their own`
    : `"${label}" and "${same}" are told apart only by signs or capitals`;
}

/** @throws if the name can't be taken */
export function rename(table: Table, line: Line, at: number, name: string): TableEdit {
  const fault = nameFault(table, line, at, name);
  if (fault !== null) throw new Error(fault);
  const label = name.trim();
  const words = wordsOfOwner(table, line, at, quantityName(label, line));
  if (line === 'edge') return { table: { ...table, edges: inPlace(table.edges, at, [label], 1) }, words };
  const stations = table.stations.map((one, i) => (i === at ? { ...one, name: label } : one));
  return { table: { ...table, stations }, words };
}

/** Of two with one word the first has the entries, so only its change moves them. */
function wordsOfOwner(table: Table, line: Line, at: number, now: string | null): WordChanges {
  const words = namesIn(table, line).map((name) => quantityName(name, line));
  const was = words[at];
  return was === undefined || was === '' || was === now || words.indexOf(was) !== at ? {} : { [was]: now };
}

/** Takes a station or an edge out, and its entries with it. */
export function remove(table: Table, line: Line, at: number): TableEdit {
  const words = wordsOfOwner(table, line, at, null);
  if (line === 'station') return { table: { ...table, stations: inPlace(table.stations, at, [], 1) }, words };
  const stations = table.stations.map(({ name, points }) => ({ name, points: inPlace(points, at, [], 1) }));
  return { table: { ...table, edges: inPlace(table.edges, at, [], 1), stations }, words };
}

/** Moves a station forward or aft, or an edge out or in; its entries go by its name, so they come along. */
export function move(table: Table, line: Line, from: number, to: number): TableEdit {
  const moved = <T>(list: readonly T[]): T[] =>
    inPlace(inPlace(list, from, [], 1), to, list.slice(from, from + 1));
  if (line === 'station') return { table: { ...table, stations: moved(table.stations) }, words: {} };
  const stations = table.stations.map(({ name, points }) => ({ name, points: moved(points) }));
  return { table: { ...table, edges: moved(table.edges), stations }, words: {} };
}

/** Says that the numbers are measured to this face of the skin; the numbers stay. */
export function toFace(table: Table, offsetsTo: Face): TableEdit {
  return { table: { ...table, offsetsTo }, words: {} };
}

/**
 * A station put in before the one at `at`.
 * @param hull as it stands, for a beginning on its battens; null where there is none
 * @throws if the name can't be taken, or the table is full
 */
export function addStation(table: Table, at: number, name: string, hull: Battens | null): TableEdit {
  if (table.stations.length >= MOST_STATIONS)
    throw new Error(`${MOST_STATIONS} stations are the most a table takes`);
  const fault = nameFault(table, 'station', table.stations.length, name);
  if (fault !== null) throw new Error(fault);
  const read = hull === null ? null : attempt(() => betweenStations(hull, table, at));
  const points = Array.isArray(read) ? read : table.edges.map((_, edge) => emptyPoint(edge));
  const station: TableStation = { name: name.trim(), points };
  return { table: { ...table, stations: inPlace(table.stations, at, [station]) }, words: {} };
}

/** A point not known yet; the keel lies on the centreline, which is known. */
export const emptyPoint = (edge: number): TablePoint => ({ x: null, y: edge === 0 ? 0 : null, z: null });

/** What the battens read midway between the stations at `at - 1` and `at`, each edge for itself. */
function betweenStations(hull: Battens, { unit, edges, stations }: Table, at: number): TablePoint[] {
  if (hull.edges.length !== edges.length || hull.stations.length !== stations.length)
    throw new Error('the hull is drawn from another table');
  const keel = hull.edges[0]?.points;
  const [aft, fore] = [keel?.[at - 1], keel?.[at]];
  if (!aft || !fore) throw new Error('no station stands on both sides of it');
  const x = (aft[0] + fore[0]) / 2;
  return hull.edges.map((edge, index): TablePoint => {
    const place = attempt(() => edge.atX(x));
    const point = place !== null && 'point' in place ? place.point : null;
    if (!point) return { ...emptyPoint(index), x: inUnit(x, unit) };
    return { x: inUnit(x, unit), y: index === 0 ? 0 : inUnit(point[1], unit), z: inUnit(point[2], unit) };
  });
}

/** To the micrometre or finer: a fair curve read off and put back stays fair. */
function inUnit(metres: number, unit: TableUnit): number {
  return Number((metres / tableUnits[unit]).toFixed(Math.ceil(Math.log10(tableUnits[unit] * 1e6))));
}

/**
 * An edge put in outside the one at `at - 1`. Between two others it begins midway; outermost it is empty but
 * for its places forward.
 * @throws if the name can't be taken, or the table is full
 */
export function addEdge(table: Table, at: number, name: string, hull: Battens | null): TableEdit {
  if (table.edges.length >= MOST_EDGES) throw new Error(`${MOST_EDGES} edges are the most a table takes`);
  const fault = nameFault(table, 'edge', table.edges.length, name);
  if (fault !== null) throw new Error(fault);
  const stands = (edge: number, station: number, axis: 0 | 1 | 2): number | null => {
    const value = hull?.offsets.points[edge]?.[station]?.[axis];
    if (value !== undefined && value !== null) return value;
    const plan = table.stations[station]?.points[edge]?.[axes[axis]] ?? null;
    return plan === null ? null : plan * tableUnits[table.unit];
  };
  const between = (station: number, axis: 0 | 1 | 2): number | null => {
    const inner = stands(at - 1, station, axis);
    const outer = at < table.edges.length ? stands(at, station, axis) : axis === 0 ? inner : null;
    return inner === null || outer === null ? null : inUnit((inner + outer) / 2, table.unit);
  };
  const stations = table.stations.map(({ name: station, points }, i) => ({
    name: station,
    points: inPlace(points, at, [
      at === 0 ? emptyPoint(0) : { x: between(i, 0), y: between(i, 1), z: between(i, 2) },
    ]),
  }));
  return { table: { ...table, edges: inPlace(table.edges, at, [name.trim()]), stations }, words: {} };
}

const axes = ['x', 'y', 'z'] as const;

/** A name for one more, that nothing has yet: `frame 6`, `chine 2`. */
export function nextName(table: Table, line: Line): string {
  const stem = line === 'edge' ? 'chine' : 'frame';
  for (let n = 1; ; n++) {
    const name = `${stem} ${n}`;
    const isFree = nameFault(table, line, namesIn(table, line).length, name) === null;
    // After the last of its kind, not in a gap: a name that is gone may still stand in pencil on a frame.
    if (isFree && !namesIn(table, line).some((other) => numberIn(other, stem) >= n)) return name;
  }
}

const numberIn = (name: string, stem: string) =>
  Number(new RegExp(`^${stem} (\\d{1,4})$`).exec(name)?.[1] ?? -1);
