import { below, type Immersion } from '../immersion';
import type { Mesh } from '../mesh';
import type { Plane } from '../plane';
import type { Vec3 } from '../vec';

/** A body in the water, and what is under. */
export interface InWater {
  /** The water, in the body's own axes. */
  readonly plane: Plane;
  readonly immersed: Immersion;
}

/** A level is found to this share of the body's height. */
export const FINE = 1e-11;
/** This near, one step by the waterplane leaves an error of its square. */
export const ROUGH = 1e-3;
const MOST_ROUNDS = 100;

/**
 * How high the water stands on a closed body of which so much is under, the body held in its attitude: Newton's steps
 * by the waterplane, held between a level known to be too low and one too high.
 *
 * @param up unit direction
 * @param volume m3, more than nothing and less than all of it
 * @param guess height of the water along `up`, m
 * @param share of the body's height that the level may be out by
 */
export function levelFor(mesh: Mesh, up: Vec3, volume: number, guess?: number, share = FINE): InWater {
  let [low, high] = heightsAlong(mesh, up);
  const range = high - low;
  let height = guess !== undefined && guess > low && guess < high ? guess : (low + high) / 2;
  for (let round = 0; ; round += 1) {
    const plane = { normal: up, height };
    const immersed = below(mesh, plane);
    const over = immersed.volume - volume;
    if (over > 0) high = height;
    else low = height;
    const { area } = immersed.waterplane;
    // Where the water meets no skin, above a part that is wholly under, only halving helps.
    const step = area > 0 ? -over / area : null;
    const isFound = step === null ? high - low <= FINE * range : Math.abs(step) <= share * range;
    if (isFound || round === MOST_ROUNDS) return { plane, immersed };
    const next = step === null ? low : height + step;
    height = next > low && next < high ? next : (low + high) / 2;
  }
}

/** From the body's lowest point to its highest along a direction, m. */
export function heightsAlong({ points }: Mesh, [ux, uy, uz]: Vec3): [low: number, high: number] {
  let low = Infinity;
  let high = -Infinity;
  for (let i = 0; i < points.length; i += 3) {
    const height = ux * points[i]! + uy * points[i + 1]! + uz * points[i + 2]!; // a point has three numbers
    low = Math.min(low, height);
    high = Math.max(high, height);
  }
  return [low, high];
}
