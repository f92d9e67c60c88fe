/**
 * Screws laid out by rows in one piece of wood, and moved where they would meet a later cut.
 *
 * Places are along the grain and across it, in metres from a corner of the piece: `[along, in]`.
 */
import { chordAt, distance2, type Vec2 } from '../../kernel';
import { once } from '../once';

/** Where screws may stand in a piece, and by what rules. */
export interface ScrewField {
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

/** Moved screws are sought on a grid as fine as a builder marks, m; in large pieces two or three times as coarse. */
const GRID = 1e-3;
const PLACES = 20_000;
/** Distances that meet a rule but for rounding, m. */
const ROUNDING = 1e-9;

/** Rows from the outer edge inward, each shared out evenly, every other one staggered; no row where none is allowed. */
export function rowsIn(field: ScrewField): readonly Vec2[] {
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

function inRow(
  [from, to]: readonly [number, number],
  { along, pitch }: ScrewField,
  staggered: boolean,
): number[] {
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

/** All screws of the field in the order of their rows: those that meet no later cut have their places first. */
export function layOut(field: ScrewField): readonly PlacedScrew[] {
  const found = rowsIn(field).map((wanted) => ({ wanted, ...field.clearance(wanted) }));
  const taken = found.filter(({ by }) => by >= -ROUNDING).map(({ wanted }) => wanted);
  let places = taken.length === found.length ? [] : freePlaces(field, taken);
  return found.map(({ wanted, by, of }): PlacedScrew => {
    if (by >= -ROUNDING) return { wanted, at: wanted, clash: '', clear: by };
    const place = nearest(places, wanted);
    if (!place) return { wanted, at: null, clash: of, clear: by };
    const { at } = place;
    places = places.filter((other) => apart(other.at, at, field));
    return { wanted, at, clash: of, clear: place.clearance().by };
  });
}

/** Whether two screws may stand so: in other lines of grain, or far enough along one. */
export function apart(a: Vec2, b: Vec2, { along, across }: Pick<ScrewField, 'along' | 'across'>): boolean {
  return Math.abs(a[0] - b[0]) >= along - ROUNDING || Math.abs(a[1] - b[1]) >= across - ROUNDING;
}

/** A place of the grid; how it stands to later cuts is measured when it is asked, for most lie far from any screw. */
interface Place {
  readonly at: Vec2;
  readonly clearance: () => Clearance;
}

/** Places of a grid from the corner of the piece that edges, ends and screws in place all allow. */
function freePlaces(field: ScrewField, taken: readonly Vec2[]): readonly Place[] {
  const { allowed } = field;
  const levels = allowed.map(([, inward]) => inward);
  const [lowest, highest] = [Math.min(...levels), Math.max(...levels)];
  const runs = allowed.map(([along]) => along);
  const places = ((highest - lowest) * (Math.max(...runs) - Math.min(...runs))) / GRID ** 2;
  const step = GRID * Math.max(1, Math.ceil(Math.sqrt(places / PLACES)));
  // What is less than a step high is one line.
  const rows = Array.from(
    { length: Math.max(0, Math.floor(highest / step) - Math.ceil(lowest / step) + 1) },
    (_, i) => within((Math.ceil(lowest / step) + i) * step, levels),
  );
  return (rows.length > 0 ? rows : [lowest]).flatMap((inward) => {
    const [from, to] = chordAt(allowed, inward) ?? [0, -1];
    const first = Math.ceil(from / step);
    const count = Math.max(0, Math.floor(to / step) - first + 1);
    return Array.from({ length: count }, (_, i): Vec2 => [(first + i) * step, inward])
      .filter((at) => taken.every((other) => apart(at, other, field)))
      .map((at): Place => ({ at, clearance: once(() => field.clearance(at)) }));
  });
}

/** The nearest place that all later cuts allow. */
function nearest(places: readonly Place[], from: Vec2): Place | null {
  let best: Place | null = null;
  let least = Infinity;
  for (const place of places) {
    const away = distance2(place.at, from);
    if (away < least && place.clearance().by >= -ROUNDING) [best, least] = [place, away];
  }
  return best;
}

/** A level brought within others: one at their edge but for rounding crosses them there. */
const within = (level: number, levels: readonly number[]): number =>
  Math.min(Math.max(level, Math.min(...levels)), Math.max(...levels));
