/** The hull at rest under a load: sunk, trimmed and heeled as the water bears her, and what is left of her sides. */
import {
  type Attitude,
  balance,
  type Balance,
  type Burden,
  dot,
  heightsAlong,
  meshSection,
  upOf,
  type Vec3,
} from '../../kernel';
import type { Hull } from './hull';

/** A place on the sheer, and how high it stands plumb over the water to port and to starboard, m. */
export interface FreeboardAt {
  readonly x: number;
  readonly port: number;
  readonly starboard: number;
}

export interface Floating {
  /** False where she sinks or finds no rest: what is told is then of the hull held level, and sunk to the sheer at most. */
  readonly floats: boolean;
  readonly at: Balance;
  /** Of her lowest point under the water, m. */
  readonly draught: number;
  /** All along the sheer, from aft. */
  readonly freeboard: readonly FreeboardAt[];
  readonly least: {
    readonly x: number;
    readonly side: 'port' | 'starboard' | 'both sides';
    readonly amount: number;
  };
}

const ALONG_SHEER = 129;
/** Nearer than this both sides are alike, m. */
const ALIKE = 1e-6;
/** A hull that would sink is shown with so much of her under. */
const NEARLY_ALL = 0.999;

/** @param from where to begin: near the rest it is found sooner */
export function floatingUnder(hull: Hull, { volume, centre }: Burden, from?: Attitude): Floating {
  const { body } = hull;
  const rest = volume < hull.volume ? balance(body, { volume, centre }, {}, from) : null;
  const held = { volume: Math.min(volume, NEARLY_ALL * hull.volume), centre };
  const at = rest ?? balance(body, held, { heel: 0, trim: 0 })!; // held level, less than all of her floats
  const freeboard = sheerOver(hull, at);
  const lowest = freeboard.reduce((best, one) => (lower(one) < lower(best) ? one : best));
  const { port, starboard } = lowest;
  const side = Math.abs(port - starboard) < ALIKE ? 'both sides' : port < starboard ? 'port' : 'starboard';
  return {
    floats: rest !== null,
    at,
    draught: at.plane.height - heightsAlong(body, upOf(at))[0],
    freeboard,
    least: { x: lowest.x, side, amount: lower(lowest) },
  };
}

/** An edge beside the sheer: so far inboard of it, and so far above, m. */
export interface Rim {
  readonly inboard: number;
  readonly above: number;
}

/** How high the sheer, or an edge beside it, stands plumb over the water all along, from aft. */
export function sheerOver(
  hull: Hull,
  { plane }: Pick<Balance, 'plane'>,
  { inboard, above }: Rim = { inboard: 0, above: 0 },
): readonly FreeboardAt[] {
  const over = (point: Vec3) => dot(plane.normal, point) - plane.height;
  const sheer = hull.edges.at(-1)!.polyline(ALONG_SHEER); // two edges or more
  return sheer.map(([x, y, z]): FreeboardAt => {
    const out = Math.max(0, y - inboard);
    return { x, port: over([x, out, z + above]), starboard: over([x, -out, z + above]) };
  });
}

export const lower = ({ port, starboard }: FreeboardAt): number => Math.min(port, starboard);

/** The lines in which the water meets the hull, m; closed ones end where they begin. */
export const waterlineOf = (hull: Hull, { at }: Floating): readonly (readonly Vec3[])[] =>
  meshSection(hull.body, at.plane);
