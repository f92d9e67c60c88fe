/** The form of the hull at a draught, on an even keel: what is under water, how long and how broad, and where. */
import type { Hull, Station } from '../../boat';
import { below, type Immersion, meshSection, sectionBelow, type SectionBelow } from '../../kernel';
import type { Values } from '../define';

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

const upright = [0, 0, 1] as const;

/** Everything below the level at this height above the base line. */
export const immersedAt = (hull: Hull, height: number): Immersion =>
  below(hull.body, { normal: upright, height });

/** @throws a sentence where the level misses the hull */
export function waterplaneAt(hull: Hull, height: number): WaterplaneBounds {
  const rim = meshSection(hull.body, { normal: upright, height }).flat();
  if (rim.length === 0) throw new Error('the whole hull lies under this waterline: give a smaller draught');
  return {
    aft: Math.min(...rim.map(([x]) => x)),
    fore: Math.max(...rim.map(([x]) => x)),
    halfBreadth: Math.max(...rim.map(([, y]) => Math.abs(y))),
  };
}

/** The section in the plane square to the boat that stands on the station's keel point. */
export const sectionUnder = (hull: Hull, station: Station, height: number): SectionBelow =>
  sectionBelow(hull.body, station.x, height);

/** Places along the hull at which areas are taken, ends included; even steps, an even number of bays. */
export const PLACES = 65;

/** Areas below a height at even steps from the aftermost to the foremost point under water: the curve of areas. */
export function curveOfAreas(hull: Hull, height: number): readonly (readonly [x: number, area: number])[] {
  const { aft, fore } = reachBelow(hull, height);
  return Array.from({ length: PLACES }, (_, i) => {
    const x = aft + ((fore - aft) * i) / (PLACES - 1);
    return [x, sectionBelow(hull.body, x, height).area];
  });
}

/** How far aft and forward the part under water reaches: to the waterplane's ends, or past them under a rake. */
function reachBelow(hull: Hull, height: number): { aft: number; fore: number } {
  const bounds = waterplaneAt(hull, height);
  let { aft, fore } = bounds;
  const { points } = hull.body;
  for (let i = 0; i < points.length; i += 3) {
    if (points[i + 2]! > height) continue; // a point has three numbers
    aft = Math.min(aft, points[i]!);
    fore = Math.max(fore, points[i]!);
  }
  return { aft, fore };
}

/** The greatest of the curve of areas, m2. */
export const greatestSection = (hull: Hull, height: number): number =>
  Math.max(...curveOfAreas(hull, height).map(([, area]) => area));

/** A number among the values; a cell that asks for another is wrong. */
export function numberOf(values: Values, key: string): number {
  const value = values[key];
  if (typeof value !== 'number') throw new TypeError(`${key} is not a number`);
  return value;
}

export const stationOf = (hull: Hull, values: Values): Station => hull.station(String(values['station']));
