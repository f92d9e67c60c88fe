/** The form of the hull at a draught, on an even keel: what is under water, how long and how broad, and where. */
import {
  below,
  type Immersion,
  levelFor,
  meshSection,
  sectionBelow,
  type SectionBelow,
  type Vec3,
} from '../../kernel';
import { once } from '../once';
import type { Hull } from './hull';
import type { Station } from './station';

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

export function heightsOf(hull: Hull): Heights {
  const { points } = hull.body;
  let lowest = Infinity;
  let highest = -Infinity;
  for (let i = 2; i < points.length; i += 3) {
    lowest = Math.min(lowest, points[i]!); // a point has three numbers
    highest = Math.max(highest, points[i]!);
  }
  const sheer = hull.edges.at(-1)!.polyline(ALONG_SHEER); // a hull has two edges or more
  const leastSheer = Math.min(...sheer.map(([, , z]) => z));
  return { lowest, highest, leastSheer };
}

/** How high the water stands over the base line on an even keel when she pushes aside so much of it, m; over her where she can't. */
const levelUnder = (hull: Hull, volume: number): number =>
  volume < hull.volume ? levelFor(hull.body, [0, 0, 1], volume).plane.height : Infinity;

/**
 * How deep she floats when she pushes aside so much water, m from her lowest point.
 * @throws where the water would stand over the sheer before she floated
 */
export function draughtAt(hull: Hull, volume: number): number {
  const { lowest, leastSheer } = heightsOf(hull);
  const level = levelUnder(hull, volume);
  if (level > leastSheer)
    throw new Error('so heavy, the water would stand over the sheer before she floated');
  return level - lowest;
}

/** The same, and no deeper than her sheer where it is lowest, m. */
export function draughtUpTo(hull: Hull, volume: number): number {
  const { lowest, leastSheer } = heightsOf(hull);
  return Math.min(levelUnder(hull, volume), leastSheer) - lowest;
}

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
export function afloatAt(hull: Hull, height: number): Afloat {
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
    section: ({ x }) => sectionBelow(hull.body, x, height),
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
