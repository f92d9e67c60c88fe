/** The hull at rest under a load: sunk, trimmed and heeled as the water bears her, and what is left of her sides. */
import {
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

export function floatingUnder(hull: Hull, { volume, centre }: Burden): Floating {
  const { body } = hull;
  const rest = volume < hull.volume ? balance(body, { volume, centre }) : null;
  const held = { volume: Math.min(volume, NEARLY_ALL * hull.volume), centre };
  const at = rest ?? balance(body, held, { heel: 0, trim: 0 })!; // held level, less than all of her floats
  const up = upOf(at);
  const over = (point: Vec3) => dot(up, point) - at.plane.height;
  const freeboard = hull.edges
    .at(-1)!
    .polyline(ALONG_SHEER)
    .map(([x, y, z]): FreeboardAt => ({
      // two edges or more
      x,
      port: over([x, y, z]),
      starboard: over([x, -y, z]),
    }));
  const lowest = freeboard.reduce((best, one) => (lower(one) < lower(best) ? one : best));
  const { port, starboard } = lowest;
  const side = Math.abs(port - starboard) < ALIKE ? 'both sides' : port < starboard ? 'port' : 'starboard';
  return {
    floats: rest !== null,
    at,
    draught: at.plane.height - heightsAlong(body, up)[0],
    freeboard,
    least: { x: lowest.x, side, amount: lower(lowest) },
  };
}

const lower = ({ port, starboard }: FreeboardAt): number => Math.min(port, starboard);

/** The lines in which the water meets the hull, m; closed ones end where they begin. */
export const waterlineOf = (hull: Hull, { at }: Floating): readonly (readonly Vec3[])[] =>
  meshSection(hull.body, at.plane);
