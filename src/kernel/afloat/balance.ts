import type { Mesh } from '../mesh';
import { meshVolume } from '../mesh-measure';
import { axesOf } from '../plane';
import { add, dot, scale, subtract, type Vec3 } from '../vec';
import { type Attitude, UPRIGHT, upOf } from './attitude';
import { FINE, type InWater, levelFor, ROUGH } from './level';

/** What floats: the water that its mass pushes aside, m3, and where its centre lies, m. */
export interface Burden {
  readonly volume: number;
  readonly centre: Vec3;
}

/** Where a body comes to rest, or is held, in the water that bears it. */
export interface Balance extends Attitude, InWater {
  /** How far the water's push acts forward and to port of the weight, level, m; 0 each way that it is free to turn. */
  readonly ahead: number;
  readonly lever: number;
  /** Heights of the metacentres over the centre of the weight, m: for a small heel, and for a small trim. */
  readonly metacentric: { readonly transverse: number; readonly longitudinal: number };
}

/** A last step smaller than this leaves an error of its square, rad, and m that the water rises. */
const SETTLED = 1e-7;
/** A step this small needs no proof that it goes down, rad. */
const NEAR = 1e-3;
/** Longer ones might leap a ridge, from where she would settle to where she would capsize, rad. */
const LONGEST_STEP = 0.1;
const MOST_ROUNDS = 200;
/** From a balance that won't hold she is tipped by this, rad, to see where she goes. */
const TIPPED = 0.02;
/** Beyond this she stands on end, and heel has no meaning, rad. */
const ON_END = 1.3;

/**
 * Sinkage, trim and heel at which a body floats at rest: where its centre lies least high over that of the water pushed
 * aside. Newton's steps by the second moments of the waterplane, each shortened until it goes down, the volume held:
 * roughly on the way, where the waterplane tells what is amiss, and to the last bit where she comes to rest.
 *
 * A balance found is one that holds: top-heavy, she lies over at the angle where she comes to rest.
 *
 * @param held turns that are not free, rad
 * @param from where to begin: near the answer it is found sooner, the more so with the water there
 * @returns null where she sinks, or would stand on end
 *
 * Source: K. J. Rawson and E. C. Tupper, Basic Ship Theory, chapters 3 and 4 (equilibrium, metacentres; free trim).
 */
export function balance(
  mesh: Mesh,
  burden: Burden,
  held: Partial<Attitude> = {},
  from: Attitude & Partial<InWater> = UPRIGHT,
): Balance | null {
  if (!(burden.volume > 0)) throw new Error('what weighs nothing has no waterline');
  if (meshVolume(mesh) <= burden.volume) return null;
  const free = { heel: held.heel === undefined, trim: held.trim === undefined };
  const start = { heel: from.heel, trim: from.trim, ...held };
  let here = lying(mesh, burden, start, levelFrom(start, from, burden), ROUGH);
  let tipped = 0;
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const { heel, trim, unsettled } = stepFrom(here, free);
    const size = Math.max(Math.abs(heel), Math.abs(trim));
    const isSettled = Math.max(size, Math.abs(here.risen)) < SETTLED;
    if (isSettled && unsettled && tipped < 3) {
      // She balances as on a knife's edge.
      tipped += 1;
      here = moved(mesh, burden, here, free.heel ? { heel: TIPPED, trim: 0 } : { heel: 0, trim: TIPPED });
      continue;
    }
    const share = Math.min(1, LONGEST_STEP / size);
    const by = { heel: share * heel, trim: share * trim };
    here = isSettled ? moved(mesh, burden, here, by, FINE) : downhill(mesh, burden, here, by);
    if (Math.abs(here.trim) > ON_END) return null;
    if (isSettled) return here;
  }
  throw new Error('no attitude was found in which she rests: look at her weights');
}

/** A balance, and how far the water rose or fell in the last step, of which its square is left, m. */
interface Lying extends Balance {
  readonly risen: number;
}

/**
 * The body lying so, sunk until it pushes aside what it weighs.
 *
 * @param fine share of the body's height that the water is found to, before it rises by the last step
 */
function lying(
  mesh: Mesh,
  { volume, centre }: Burden,
  at: Attitude,
  guess: number | undefined,
  fine: number,
): Lying {
  const up = upOf(at);
  const { plane, immersed } = levelFor(mesh, up, volume, guess, fine);
  const { area, centroid: middle, transverse, longitudinal } = immersed.waterplane;
  // What is still to go under, or to come out, is a slice of the waterplane.
  const slice = volume - immersed.volume;
  const risen = area > 0 ? slice / area : 0;
  const moment = scale(immersed.centroid!, immersed.volume); // some of it is under
  const centroid = middle
    ? scale(add(moment, scale(add(middle, scale(up, risen / 2)), slice)), 1 / volume)
    : immersed.centroid!;
  const { normal, forward, port } = axesOf(plane);
  const off = subtract(centroid, centre);
  const over = -dot(off, normal);
  return {
    ...at,
    plane: { normal: up, height: plane.height + risen },
    immersed: { ...immersed, volume, centroid },
    ahead: dot(off, forward),
    lever: dot(off, port),
    metacentric: {
      transverse: transverse / volume - over,
      longitudinal: longitudinal / volume - over,
    },
    risen,
  };
}

/** Turned on about the middle of the waterplane, and sunk by the slice of it that she has been laden with since. */
function levelFrom(at: Attitude, { immersed }: Partial<InWater>, { volume }: Burden): number | undefined {
  const { centroid: middle, area = 0 } = immersed?.waterplane ?? {};
  return immersed && middle ? dot(upOf(at), middle) + (volume - immersed.volume) / area : undefined;
}

/** How high the centre lies over that of the water pushed aside, m: what a free body makes as small as it can. */
const heightOver = ({ plane, immersed }: InWater, { centre }: Burden): number =>
  dot(plane.normal, subtract(centre, immersed.centroid!)); // some of it is under

/** Turned on by so much, about the middle of the waterplane, so that hardly any volume comes or goes. */
function moved(mesh: Mesh, burden: Burden, from: Lying, by: Attitude, fine = ROUGH): Lying {
  const at = { heel: from.heel + by.heel, trim: from.trim + by.trim };
  const { centroid: middle } = from.immersed.waterplane;
  const about = middle && add(middle, scale(from.plane.normal, from.risen));
  return lying(mesh, burden, at, about ? dot(upOf(at), about) : undefined, fine);
}

/** The step, halved until it goes down; near the end, where rounding hides that, as it is. */
function downhill(mesh: Mesh, burden: Burden, from: Lying, by: Attitude): Lying {
  const before = heightOver(from, burden);
  let to = moved(mesh, burden, from, by);
  for (let share = 0.5; share > 1e-4; share /= 2) {
    const size = share * Math.max(Math.abs(by.heel), Math.abs(by.trim));
    if (size < NEAR || heightOver(to, burden) < before) break;
    to = moved(mesh, burden, from, { heel: share * by.heel, trim: share * by.trim });
  }
  return to;
}

/** Newton's step from an attitude. Where it would go up she is unsettled: the step then goes down by the slope. */
function stepFrom(
  { trim, ahead, lever, metacentric, immersed }: Balance,
  free: { readonly heel: boolean; readonly trim: boolean },
): Attitude & { readonly unsettled: boolean } {
  const across = Math.cos(trim);
  // Slopes and curvatures of the height over the water's centre, m a radian and a radian squared.
  const slope = { heel: free.heel ? across * lever : 0, trim: free.trim ? ahead : 0 };
  const hh = across * across * metacentric.transverse;
  const tt = metacentric.longitudinal;
  const ht = free.heel && free.trim ? (across * immersed.waterplane.mixed) / immersed.volume : 0;
  if (!free.trim)
    return { heel: free.heel ? down(slope.heel, hh) : 0, trim: 0, unsettled: free.heel && hh <= 0 };
  if (!free.heel) return { heel: 0, trim: down(slope.trim, tt), unsettled: tt <= 0 };
  // Along the two principal axes of the curvature the turns don't mix.
  const angle = Math.atan2(2 * ht, hh - tt) / 2;
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  const first = hh * c * c + 2 * ht * c * s + tt * s * s;
  const second = hh * s * s - 2 * ht * c * s + tt * c * c;
  const one = down(slope.heel * c + slope.trim * s, first);
  const other = down(slope.trim * c - slope.heel * s, second);
  return { heel: one * c - other * s, trim: one * s + other * c, unsettled: first <= 0 || second <= 0 };
}

/** Newton's step along one axis; where the curvature turns over, as far the other way as it would go. */
function down(slope: number, curvature: number): number {
  if (slope === 0) return 0;
  return -slope / Math.max(Math.abs(curvature), 1e-9);
}
