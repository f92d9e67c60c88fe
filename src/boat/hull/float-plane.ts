/**
 * How deep the hull can sink before water comes in: the static float plane of the US rule for small boats, and how much
 * may be put along one side before she takes water.
 */
import { balance, below, dot, sectionBelow, upOf, type Attitude, type Plane, type Vec3 } from '../../kernel';
import type { Hull } from './hull';

const ALONG_SHEER = 129;

/**
 * Where water may come in, m: all along both sheers, and at a cut-out for the motor.
 *
 * @param cut height of the cut-out above the bottom of the stern transom, plumb, m; null for none
 */
function wayIn(hull: Hull, cut: number | null): readonly Vec3[] {
  const sheer = hull.edges.at(-1)!.polyline(ALONG_SHEER); // two edges or more
  const both = sheer.flatMap(([x, y, z]): Vec3[] => [
    [x, y, z],
    [x, -y, z],
  ]);
  if (cut === null || hull.aft.role !== 'transom') return both;
  const foot = hull.aft.corners[0]!; // keel and sheer at least
  const top = hull.aft.corners.at(-1)!;
  const share = cut / (top[2] - foot[2]);
  return [...both, [foot[0] + share * (top[0] - foot[0]), 0, foot[2] + cut]];
}

/** Level athwartships, with the sheer at stern and stem alike above the water: one of the two ways of the rule. */
export function levelTrim(hull: Hull): number {
  const sheer = hull.edges.at(-1)!.points;
  const [aft, fore] = [sheer[0]!, sheer.at(-1)!];
  return Math.atan2(fore[2] - aft[2], fore[0] - aft[0]);
}

/** The highest water that leaves her dry, so held. @throws where the cut-out lies under her bottom */
export function floatPlane(hull: Hull, cut: number | null): Plane {
  const normal = upOf({ heel: 0, trim: levelTrim(hull) });
  return { normal, height: Math.min(...wayIn(hull, cut).map((point) => dot(normal, point))) };
}

/** What she pushes aside at it, m3. Source: 33 CFR 183.35(b)(1). */
export const floodingVolume = (hull: Hull, cut: number | null): number =>
  below(hull.body, floatPlane(hull, cut)).volume;

/** The boat as she is loaded before anything is put along her side: kg and m. */
export interface Laden {
  readonly mass: number;
  readonly forward: number;
  readonly height: number;
}

/** Halvings between the last load that leaves her dry and the next that doesn't: to a five-hundredth of it. */
const HALVINGS = 9;
/** Middle of the weights inside the skin, m. */
const FROM_SIDE = 0.075;

/**
 * The mass along one side of her seats at which water is about to come in, kg. She sinks, heels and trims as she will.
 *
 * @param at where the weights stand: forward, and their height, m
 * @param density of the water, kg/m3
 *
 * Source: 33 CFR 183.41(a)(2), which has it measured in the water.
 */
export function sideLoadOf(
  hull: Hull,
  { mass, forward, height }: Laden,
  at: { readonly forward: number; readonly height: number },
  cut: number | null,
  density: number,
): number {
  const { body } = hull;
  const points = wayIn(hull, cut);
  const side = Math.max(sectionBelow(body, at.forward, at.height).halfBreadth - FROM_SIDE, 0);
  let last: Attitude | undefined;
  const staysDry = (load: number): boolean => {
    const all = mass + load;
    const rest = balance(
      body,
      {
        volume: all / density,
        centre: [
          (mass * forward + load * at.forward) / all,
          (load * side) / all,
          (mass * height + load * at.height) / all,
        ],
      },
      {},
      last,
    );
    const dry = rest !== null && points.every((point) => dot(rest.plane.normal, point) >= rest.plane.height);
    if (dry) last = rest;
    return dry;
  };
  let [low, high] = [0, Math.max(mass / 2, 1)];
  while (staysDry(high)) [low, high] = [high, 2 * high];
  for (let round = 0; round < HALVINGS; round += 1) {
    const middle = (low + high) / 2;
    if (staysDry(middle)) low = middle;
    else high = middle;
  }
  return low;
}
