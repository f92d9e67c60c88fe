/**
 * How deep the hull can sink before water comes in: the static float plane of the US rule for small boats, and how much
 * may be put along one side before she takes water.
 */
import { balance, type Balance, below, dot, sectionBelow, upOf, type Plane, type Vec3 } from '../../kernel';
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

/** Between the last load that leaves her dry and twice that, or nothing: to a five-hundredth of it. */
const STEPS = 512;
/** Middle of the weights inside the skin, m. */
const FROM_SIDE = 0.075;

/**
 * A boat that has weights laid along one side of her seats. She sinks, heels and trims as she will.
 *
 * @param at where the weights stand: forward, and their height, m
 * @param density of the water, kg/m3
 * @returns the mass at which water is about to come in, kg, for a cut-out as in `floatPlane`; how she lies under a load
 * is found once for all of them
 *
 * Source: 33 CFR 183.41(a)(2), which has it measured in the water.
 */
export function sideLoadsOf(
  hull: Hull,
  { mass, forward, height }: Laden,
  at: { readonly forward: number; readonly height: number },
  density: number,
): (cut: number | null) => number {
  const { body } = hull;
  const side = Math.max(sectionBelow(body, at.forward, at.height).halfBreadth - FROM_SIDE, 0);
  const known = new Map<number, Balance | null>();
  /** How she lies; from where she lay under less it is found sooner. */
  const restUnder = (load: number): Balance | null => {
    const all = mass + load;
    const centre: Vec3 = [
      (mass * forward + load * at.forward) / all,
      (load * side) / all,
      (mass * height + load * at.height) / all,
    ];
    const less = Math.max(...[...known].filter(([of, rest]) => of < load && rest).map(([of]) => of));
    return balance(body, { volume: all / density, centre }, {}, known.get(less) ?? undefined);
  };
  return (cut) => {
    const points = wayIn(hull, cut);
    /** How far the water stands below the first way in, m. */
    const left = (load: number): number => {
      const rest = known.has(load) ? known.get(load)! : restUnder(load);
      known.set(load, rest);
      return rest
        ? Math.min(...points.map((point) => dot(rest.plane.normal, point))) - rest.plane.height
        : -Infinity;
    };
    let [low, high] = [0, Math.max(mass / 2, 1)];
    while (left(high) >= 0) [low, high] = [high, 2 * high];
    const step = (high - low) / STEPS;
    return low + step * lastBefore(STEPS, (index) => left(low + step * index));
  };
}

/** The last whole number below `end` at which f, which falls, is not yet under 0; nothing where it never was above. */
function lastBefore(end: number, f: (index: number) => number): number {
  let [above, fAbove, under, fUnder] = [0, f(0), end, f(end)];
  if (fAbove < 0) return 0;
  for (let round = 1; under - above > 1; round += 1) {
    // Where the straight line between the two crosses; every third time the middle, for f may be bent.
    const crossing = above + ((under - above) * fAbove) / (fAbove - fUnder);
    const guess = round % 3 === 0 || !Number.isFinite(fUnder) ? (above + under) / 2 : crossing;
    const index = Math.min(Math.max(Math.floor(guess), above + 1), under - 1);
    const value = f(index);
    if (value >= 0) [above, fAbove] = [index, value];
    else [under, fUnder] = [index, value];
  }
  return above;
}
