/** The hull laid over: held at a heel and free to trim, where her edge goes under, and what people to one side do. */
import { type Attitude, balance, type Balance, type Burden, findRoot, rightingCurve } from '../../kernel';
import { floatingUnder, lower, type Rim, sheerOver } from './floating';
import type { Hull } from './hull';

const DEGREE = Math.PI / 180;
/** A hull that would sink is shown with so much of her under. */
const NEARLY_ALL = 0.999;
/** Between the heels of the righting curve, and the last of them, rad. */
const STEP = 5 * DEGREE;
export const LAST_HEEL = 90 * DEGREE;
/** The heel at which an edge goes under is looked for in steps no smaller and no larger, rad. */
const LEAST_STRIDE = 5 * DEGREE;
const MOST_STRIDE = 15 * DEGREE;
/** An angle told to a hundredth of a degree is found to a tenth of that, rad. */
const FINE = 1e-3 * DEGREE;

/** The hull held at a heel, free to trim, closed up to her sheer. */
export interface LaidOver {
  /** False where she sinks or finds no trim: what is told is then of the hull held level, and sunk to the sheer at most. */
  readonly floats: boolean;
  readonly at: Balance;
}

/** @param from where to begin: near the answer it is found sooner */
export function heldAt({ body, volume }: Hull, burden: Burden, heel: number, from?: Attitude): LaidOver {
  const at = balance(body, burden, { heel }, from);
  if (at) return { floats: true, at };
  const least = { ...burden, volume: Math.min(burden.volume, NEARLY_ALL * volume) };
  return { floats: false, at: balance(body, least, { heel, trim: 0 })! }; // held both ways, less than all of her floats
}

/** From where she was found upright to 90 degrees in steps of five, as far as a trim is found; upright at least. */
export function leversOf(hull: Hull, burden: Burden, upright: LaidOver): readonly Balance[] {
  if (!upright.floats) return [upright.at];
  const heels = Array.from({ length: Math.round(LAST_HEEL / STEP) }, (_, i) => (i + 1) * STEP);
  return [upright.at, ...rightingCurve(hull.body, burden, heels, upright.at)];
}

/** How high the lowest place of an edge stands plumb over the water, m; less than 0 under it. */
export const rimOver = (hull: Hull, at: Balance, rim?: Rim): number =>
  Math.min(...sheerOver(hull, at, rim).map(lower));

/**
 * The heel at which the water reaches an edge, or at which no trim is found any more, rad: by strides out from upright,
 * then between the last two. The last heel of the curve where it isn't reached.
 */
export function rimUnder(hull: Hull, burden: Burden, upright: LaidOver, rim?: Rim): number {
  let last = upright.at;
  const over = (heel: number) => {
    const at = balance(hull.body, burden, { heel }, last);
    if (!at) return -hull.beam;
    last = at;
    return rimOver(hull, at, rim);
  };
  const freeboard = rimOver(hull, upright.at, rim);
  if (!upright.floats || freeboard <= 0) return 0;
  // A side so high at half her breadth goes under about here.
  const likely = Math.atan((2 * freeboard) / hull.beam);
  const stride = Math.min(MOST_STRIDE, Math.max(LEAST_STRIDE, likely / 2));
  for (let dry = 0; dry < LAST_HEEL; dry += stride) {
    const next = Math.min(LAST_HEEL, dry + stride);
    if (over(next) <= 0) return findRoot(over, dry, next, FINE) ?? next;
  }
  return LAST_HEEL;
}

export interface Leaning {
  /** To the side that the weight is on, rad; half a turn where she turns over. */
  readonly heel: number;
  /** Least freeboard of all the sheer, m. */
  readonly freeboard: number;
  /** Freeboard on the low side where upright it is least, m. */
  readonly there: number;
}

/** How she lies with the centre of all aboard so far to port, m. */
export function leaningBy(
  hull: Hull,
  { volume, centre: [x, , z] }: Burden,
  aside: number,
  upright: LaidOver,
): Leaning {
  const lain = floatingUnder(hull, { volume, centre: [x, aside, z] }, upright.at);
  if (!lain.floats) return { heel: Math.PI, freeboard: -hull.beam, there: -hull.beam };
  const level = sheerOver(hull, upright.at).map(lower);
  const { port, starboard } = lain.freeboard[level.indexOf(Math.min(...level))]!; // both along the same sheer
  return { heel: Math.abs(lain.at.heel), freeboard: lain.least.amount, there: Math.min(port, starboard) };
}
