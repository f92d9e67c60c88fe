/**
 * Screws laid out by rows in one piece of wood, and moved where they would meet a later cut.
 *
 * Places are along the grain and across it, in metres from a corner of the piece: `[along, in]`.
 */
import { chordAt, type Vec2 } from '../kernel';

/** Where screws may stand in a piece, and by what rules. */
export interface Field {
  /** Where edges and ends allow a screw, convex and anticlockwise; two points where they all stand in one line. */
  readonly allowed: readonly Vec2[];
  /** Least distances in one line of grain, and from line to line, m. */
  readonly along: number;
  readonly across: number;
  /** Rows wanted, how far apart, and greatest distance in a row, m. */
  readonly rows: number;
  readonly rowGap: number;
  readonly pitch: number;
  /** How far a screw there stands clear of all later cuts beyond what is asked, m; - what it lacks; and of which. */
  readonly clearance: (at: Vec2) => Clearance;
}

export interface Clearance {
  readonly by: number;
  /** The nearest later cut in words; empty where there is none. */
  readonly of: string;
}

export interface PlacedScrew {
  /** Where the rows put it. */
  readonly wanted: Vec2;
  /** Where it stands; null where no place is left for it. */
  readonly at: Vec2 | null;
  /** The cut that it clashed with; empty where it stays. */
  readonly clash: string;
  /** What is left at the place beyond what is asked, m; of a dropped one what it lacked. */
  readonly clear: number;
}

/** Moved screws are sought on a grid as fine as a builder marks, m. */
const GRID = 1e-3;
/** Distances that meet a rule but for rounding, m. */
const ROUNDING = 1e-9;

/** Rows from the outer edge inward, each shared out evenly, every other one staggered; no row where none is allowed. */
export function rowsIn(field: Field): readonly Vec2[] {
  const { allowed, rows, rowGap, across } = field;
  if (allowed.length < 2) return [];
  const levels = allowed.map(([, inward]) => inward);
  // Corners that lie in one edge but for rounding are all met a hair inside it.
  const outermost = within(Math.min(...levels) + ROUNDING, levels);
  const gap = Math.max(rowGap, across);
  return Array.from({ length: rows }, (_, row) => ({ row, inward: outermost + row * gap })).flatMap(
    ({ row, inward }) => {
      const chord = chordAt(allowed, inward);
      return chord ? inRow(chord, field, row % 2 === 1).map((along): Vec2 => [along, inward]) : [];
    },
  );
}

function inRow([from, to]: readonly [number, number], { along, pitch }: Field, staggered: boolean): number[] {
  const room = to - from;
  // A thousandth of a space is forgiven.
  const wanted = 1 + Math.ceil(room / pitch - 1e-3);
  const most = 1 + Math.floor(room / along + 1e-9);
  const count = Math.min(wanted, most);
  if (count === 1) return [(from + to) / 2];
  const space = room / (count - 1);
  const first = staggered ? from + space / 2 : from;
  return Array.from({ length: staggered ? count - 1 : count }, (_, i) => first + i * space);
}

/** All screws of the field in the order of their rows: those that meet no later cut first have their places. */
export function layOut(field: Field): readonly PlacedScrew[] {
  const wanted = rowsIn(field);
  const found = wanted.map((at) => field.clearance(at));
  const taken = wanted.filter((_, i) => found[i]!.by >= -ROUNDING); // one clearance a screw
  return wanted.map((at, i): PlacedScrew => {
    const { by, of } = found[i]!;
    if (by >= -ROUNDING) return { wanted: at, at, clash: '', clear: by };
    const place = nearest(at, field, taken);
    if (!place) return { wanted: at, at: null, clash: of, clear: by };
    taken.push(place);
    return { wanted: at, at: place, clash: of, clear: field.clearance(place).by };
  });
}

/** Whether two screws may stand so: in other lines of grain, or far enough along one. */
export function apart(a: Vec2, b: Vec2, { along, across }: Pick<Field, 'along' | 'across'>): boolean {
  return Math.abs(a[0] - b[0]) >= along - ROUNDING || Math.abs(a[1] - b[1]) >= across - ROUNDING;
}

/** The nearest place on the grid round a screw that edges, ends, other screws and later cuts all allow. */
function nearest(from: Vec2, field: Field, taken: readonly Vec2[]): Vec2 | null {
  const { allowed } = field;
  const reach = Math.max(...allowed.map(([s, t]) => Math.max(Math.abs(s - from[0]), Math.abs(t - from[1]))));
  const levels = allowed.map(([, t]) => t);
  const lowest = Math.ceil((Math.min(...levels) - from[1]) / GRID - 1e-6);
  const highest = Math.floor((Math.max(...levels) - from[1]) / GRID + 1e-6);
  const chords = Array.from({ length: Math.max(0, highest - lowest + 1) }, (_, k) =>
    chordAt(allowed, within(from[1] + (lowest + k) * GRID, levels)),
  );
  let best: { readonly at: Vec2; readonly away: number } | null = null;
  // Rings of the grid, outward; a ring no nearer than the best found ends the search.
  for (let ring = 1; ring * GRID <= reach && !(best && ring * GRID >= best.away); ring++) {
    for (const [ds, dt] of ringOf(ring, lowest, highest)) {
      const away = Math.hypot(ds, dt) * GRID;
      const chord = chords[dt - lowest];
      const at: Vec2 = [from[0] + ds * GRID, from[1] + dt * GRID];
      if (!chord || !isOn(at, chord) || (best && away >= best.away)) continue;
      if (!taken.every((other) => apart(at, other, field))) continue;
      if (field.clearance(at).by >= -ROUNDING) best = { at, away };
    }
  }
  return best?.at ?? null;
}

/** Steps to the places of a square ring, as far as they lie between the lowest and the highest step across. */
function ringOf(ring: number, lowest: number, highest: number): (readonly [number, number])[] {
  const places: (readonly [number, number])[] = [];
  for (const level of [-ring, ring]) {
    if (level < lowest || level > highest) continue;
    for (let k = -ring; k <= ring; k++) places.push([k, level]);
  }
  for (let level = Math.max(lowest, 1 - ring); level <= Math.min(highest, ring - 1); level++)
    places.push([-ring, level], [ring, level]);
  return places;
}

export function isAllowed(at: Vec2, allowed: readonly Vec2[]): boolean {
  const levels = allowed.map(([, inward]) => inward);
  const level = within(at[1], levels);
  if (Math.abs(level - at[1]) > ROUNDING) return false;
  const chord = chordAt(allowed, level);
  return chord !== null && isOn(at, chord);
}

const isOn = ([along]: Vec2, [from, to]: readonly [number, number]): boolean =>
  along >= from - ROUNDING && along <= to + ROUNDING;

/** A level brought within others: one at their edge but for rounding crosses them there. */
const within = (level: number, levels: readonly number[]): number =>
  Math.min(Math.max(level, Math.min(...levels)), Math.max(...levels));
