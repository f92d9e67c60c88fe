/**
 * The boat full of water, which stands inside as high as outside and runs in and out as she turns: what bears her is what
 * her own parts and the foam in her push aside, and no more.
 */
import {
  balance,
  type Balance,
  below,
  heightsAlong,
  joined,
  type Mesh,
  meshVolume,
  type Vec3,
} from '../../kernel';
import { sheerOver } from './floating';
import type { Hull } from './hull';

/** A part in the water: how heavy the stuff of it is, kg/m3. */
export interface Solid {
  readonly mesh: Mesh;
  readonly density: number;
}

/** What hangs on her, or stands in her, all of it under water: what it weighs there, kg, and where. */
export interface Hung {
  readonly mass: number;
  readonly at: Vec3;
}

export interface Flooded {
  /** Whether she rests on the water, stands on one end in it, or goes down. */
  readonly lies: 'floats' | 'on end' | 'sinks';
  /** At rest; null where she isn't. */
  readonly at: Balance | null;
  /** Height of the metacentre over all that weighs, m, held upright and free to trim: below 0 she rolls over. */
  readonly stiffness: number;
}

/** Less than this, a gram of water, no level is found for, m3. */
const NOTHING = 1e-6;

/**
 * @param water density, kg/m3
 * @throws a sentence, where she and all that hangs on her weigh nothing
 */
export function floodedUnder(solids: readonly Solid[], hung: readonly Hung[], water: number): Flooded {
  const mesh = joined(...solids.map((solid) => solid.mesh));
  const weights = [...solids.map(weightOf), ...hung];
  const mass = weights.reduce((sum, one) => sum + one.mass, 0);
  const along = (axis: 0 | 1 | 2) => weights.reduce((sum, one) => sum + one.mass * one.at[axis], 0) / mass;
  const burden = { volume: mass / water, centre: [along(0), along(1), along(2)] as const };
  if (!(burden.volume > NOTHING)) throw new Error('what weighs nothing has no waterline');
  const upright = balance(mesh, burden, { heel: 0 });
  const stiffness = upright?.metacentric.transverse ?? 0;
  const all = meshVolume(mesh);
  if (all <= burden.volume) return { lies: 'sinks', at: null, stiffness };
  const at = balance(mesh, burden, {}, upright ?? undefined);
  return { lies: at ? 'floats' : 'on end', at, stiffness };
}

const UP: Vec3 = [0, 0, 1];

function weightOf({ mesh, density }: Solid): Hung {
  // All of it lies below its highest point.
  const { volume, centroid } = below(mesh, { normal: UP, height: heightsAlong(mesh, UP)[1] + 1 });
  // A block of next to no foam is lost in rounding.
  return { mass: density * volume, at: centroid ?? [0, 0, 0] };
}

/** An end of the boat in the water. */
export interface EndOver {
  /** How high the highest point of its sheer stands over the water, m; below 0 all of it is under. */
  readonly highest: number;
  /** How high its middle stands where it is highest: half-way between both sheers, m; below 0 it is under. */
  readonly middle: number;
}

/**
 * Both ends of a boat without a deck, by the reference areas of 33 CFR 183.310 and 183.315.
 * @param reach how much of her at each end is looked at, along the boat, m
 */
export function endsOver(
  hull: Hull,
  at: Balance,
  reach: number,
): { readonly aft: EndOver; readonly fore: EndOver } {
  const sheer = sheerOver(hull, at);
  const [first, last] = [sheer[0]!.x, sheer.at(-1)!.x]; // many points
  const end = (within: (x: number) => boolean): EndOver => {
    const points = sheer.filter(({ x }) => within(x));
    return {
      highest: Math.max(...points.flatMap(({ port, starboard }) => [port, starboard])),
      middle: Math.max(...points.map(({ port, starboard }) => (port + starboard) / 2)),
    };
  };
  return { aft: end((x) => x <= first + reach), fore: end((x) => x >= last - reach) };
}
