/** The form of the hull at a draught, on an even keel: what is under water, how long and how broad, and where. */
import type { Hull, Station } from '../../boat';
import { once } from '../../boat/once';
import {
  below,
  findRoot,
  type Immersion,
  meshSection,
  sectionBelow,
  type SectionBelow,
  type Vec3,
} from '../../kernel';
import type { Values } from '../form/define';

/** Heights of the hull above the base line, m. */
export interface Heights {
  readonly lowest: number;
  readonly highest: number;
  /** Of the sheer where it is lowest. */
  readonly leastSheer: number;
}

/** The waterplane's bounds, m. */
export interface WaterplaneBounds {
  readonly aft: number;
  readonly fore: number;
  readonly halfBreadth: number;
}

const ALONG_SHEER = 257;

const heights = new WeakMap<Hull, Heights>();

export function heightsOf(hull: Hull): Heights {
  const known = heights.get(hull);
  if (known) return known;
  const { points } = hull.body;
  let lowest = Infinity;
  let highest = -Infinity;
  for (let i = 2; i < points.length; i += 3) {
    lowest = Math.min(lowest, points[i]!); // a point has three numbers
    highest = Math.max(highest, points[i]!);
  }
  const sheer = hull.edges.at(-1)!.polyline(ALONG_SHEER); // a hull has two edges or more
  const leastSheer = Math.min(...sheer.map(([, , z]) => z));
  const made = { lowest, highest, leastSheer };
  heights.set(hull, made);
  return made;
}

/**
 * How deep she floats when she pushes aside so much water, m from her lowest point.
 * @throws where the water would stand over the sheer before she floated
 */
export function draughtAt(hull: Hull, volume: number): number {
  const known = draughts.get(hull);
  if (known?.volume === volume) return known.draught;
  const { lowest, leastSheer } = heightsOf(hull);
  const wanting = (draught: number) =>
    below(hull.body, { normal: [0, 0, 1], height: lowest + draught }).volume - volume;
  const draught = findRoot(wanting, 0, leastSheer - lowest, 1e-7);
  if (draught === null) throw new Error('so heavy, the water would stand over the sheer before she floated');
  draughts.set(hull, { volume, draught });
  return draught;
}
const draughts = new WeakMap<Hull, { readonly volume: number; readonly draught: number }>();

/** The hull floating level at a height above the base line, on an even keel; worked out when first asked for. */
export interface Afloat {
  readonly immersed: Immersion;
  /** Throws a sentence where the level misses the hull. */
  readonly waterplane: WaterplaneBounds;
  /** Areas at even steps from the aftermost to the foremost point under water: the curve of areas, m and m2. */
  readonly areas: readonly (readonly [x: number, area: number])[];
  /** The section in the plane square to the boat that stands on the station's keel point. */
  section(station: Station): SectionBelow;
}

/** Places along the hull at which areas are taken, ends included; an even number of bays, for Simpson's rule. */
export const PLACES = 65;
/** Levels kept a hull: each row of a table of stations asks for the same one. */
const KEPT = 4;

const afloat = new WeakMap<Hull, Map<number, Afloat>>();

export function afloatAt(hull: Hull, height: number): Afloat {
  const levels = afloat.get(hull) ?? new Map<number, Afloat>();
  afloat.set(hull, levels);
  const made = levels.get(height) ?? floatAnew(hull, height);
  if (levels.size >= KEPT) levels.clear();
  levels.set(height, made);
  return made;
}

function floatAnew(hull: Hull, height: number): Afloat {
  const plane = { normal: [0, 0, 1], height } as const;
  const immersed = once(() => below(hull.body, plane));
  const waterplane = once(() => boundsOf(meshSection(hull.body, plane).flat()));
  const areas = once(() => {
    const { aft, fore } = reachBelow(hull, height, waterplane());
    return Array.from({ length: PLACES }, (_, i) => {
      const x = aft + ((fore - aft) * i) / (PLACES - 1);
      return [x, sectionBelow(hull.body, x, height).area] as const;
    });
  });
  const sections = new Map<Station, SectionBelow>();
  return {
    get immersed() {
      return immersed();
    },
    get waterplane() {
      return waterplane();
    },
    get areas() {
      return areas();
    },
    section: (station) => {
      const known = sections.get(station) ?? sectionBelow(hull.body, station.x, height);
      sections.set(station, known);
      return known;
    },
  };
}

function boundsOf(rim: readonly Vec3[]): WaterplaneBounds {
  if (rim.length === 0) throw new Error('the whole hull lies under this waterline: give a smaller draught');
  return {
    aft: Math.min(...rim.map(([x]) => x)),
    fore: Math.max(...rim.map(([x]) => x)),
    halfBreadth: Math.max(...rim.map(([, y]) => Math.abs(y))),
  };
}

/** How far aft and forward the part under water reaches: to the waterplane's ends, or past them under a rake. */
function reachBelow(hull: Hull, height: number, bounds: WaterplaneBounds): { aft: number; fore: number } {
  let { aft, fore } = bounds;
  const { points } = hull.body;
  for (let i = 0; i < points.length; i += 3) {
    if (points[i + 2]! > height) continue; // a point has three numbers
    aft = Math.min(aft, points[i]!);
    fore = Math.max(fore, points[i]!);
  }
  return { aft, fore };
}

/** A number among the values; a cell that asks for another is wrong. */
export function numberOf(values: Values, key: string): number {
  const value = values[key];
  if (typeof value !== 'number') throw new TypeError(`${key} is not a number`);
  return value;
}

export const stationOf = (hull: Hull, values: Values): Station => hull.station(String(values['station']));
