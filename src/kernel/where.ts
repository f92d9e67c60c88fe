/**
 * Where a function of one number is what is wanted: looked at from end to end, each crossing closed in on, so that steps
 * are told as they are: a level one is a stretch and not a point, and what is stepped over is not met.
 */
import { findRoot } from './roots';
import { type Bounds, type Course, type Sample, sampled, spanOf } from './sampling';
import { withTurns } from './turns';

/** Exactly the value; or no more, or no less, than it. */
export type Aim = 'exactly' | 'at most' | 'at least';

/** From one place to another; a point where both are the same. */
export interface MetStretch {
  readonly from: number;
  readonly to: number;
}

export interface Where {
  /** Where it is as wanted, in order. */
  readonly met: readonly MetStretch[];
  /** Where it steps over the value that is wanted exactly, and what it is before and after. */
  readonly stepsOver: readonly { readonly at: number; readonly before: number; readonly after: number }[];
  /** The least and the greatest it comes to, and where first; null where it has no value at all. */
  readonly least: Extreme | null;
  readonly most: Extreme | null;
  /** Whether it has no value in some places. */
  readonly hasGaps: boolean;
}
export interface Extreme {
  readonly at: number;
  readonly value: number;
  /** Whether it turns there, and goes the other way on both sides. */
  readonly turns: boolean;
}

/** Closing in ends at this share of the range. */
const FINE = 1e-10;
/** Values count as the same up to this share of what is looked at. */
const SAME = 1e-9;
/** What is left at a crossing, as a share, if the function does cross there and does not jump. */
const CROSSES = 1e-6;
/** A shorter stretch is told as a point: about a turn all is the same within rounding. */
const POINT = 1e-4;

/**
 * @param value what is wanted
 * @param at further places to look at in the first look
 * @yields how much of the first look is done, 0 to 1
 */
export function* where(
  f: Course,
  wanted: Aim,
  value: number,
  bounds: Bounds,
  at: readonly number[] = [],
): Generator<number, Where> {
  const looked = yield* sampled(f, bounds, at);
  const samples = bounds.whole ? looked : yield* withTurns(f, looked);
  const span = bounds.high - bounds.low;
  const scale = Math.max(spanOf(samples), Math.abs(value), ...samples.map(({ y }) => Math.abs(y ?? 0)));
  const same = SAME * scale;
  const isMet = (y: number | null): boolean => {
    if (y === null) return false;
    if (wanted === 'exactly') return Math.abs(y - value) <= same;
    return wanted === 'at most' ? y <= value + same : y >= value - same;
  };
  const edge = (yes: number, no: number): number => {
    let [a, b] = [yes, no];
    while (Math.abs(b - a) > FINE * span) {
      const middle = (a + b) / 2;
      if (isMet(f(middle))) a = middle;
      else b = middle;
    }
    return a;
  };
  const met: { from: number; to: number }[] = [];
  const stepsOver: Where['stepsOver'][number][] = [];
  let open: number | null = null;
  for (const [index, { x, y }] of samples.entries()) {
    const before = samples[index - 1];
    if (isMet(y)) {
      open ??= !before || bounds.whole ? x : edge(x, before.x);
      if (index === samples.length - 1) met.push({ from: open, to: x });
      continue;
    }
    if (open !== null && before) met.push({ from: open, to: bounds.whole ? before.x : edge(before.x, x) });
    else if (wanted === 'exactly' && !bounds.whole && before && crosses(before, { x, y }, value))
      cross(before, { x, y });
    open = null;
    yield 1;
  }

  function cross(a: Sample, b: Sample): void {
    // What has no value on the way leaves the bracket as it is, on the side of the end it lies nearer.
    const g = (x: number) => (f(x) ?? (Math.abs(x - a.x) < Math.abs(x - b.x) ? a.y! : b.y!)) - value;
    const at = findRoot(g, a.x, b.x, FINE * span);
    const y = at === null ? null : f(at);
    if (at === null) return;
    const hair = Math.min(CROSSES * span, (b.x - a.x) / 4);
    const [low, high] = [Math.max(a.x, at - hair), Math.min(b.x, at + hair)];
    const [left, right] = [f(low), f(high)];
    if (y !== null && Math.abs(y - value) <= CROSSES * scale) {
      const isLevel = isMet(left) || isMet(right);
      met.push(isLevel ? { from: edge(at, a.x), to: edge(at, b.x) } : { from: at, to: at });
    } else if (left !== null && right !== null && (left - value) * (right - value) < 0) {
      stepsOver.push({ at, before: left, after: right });
    }
  }

  return {
    met: met.map(({ from, to }) => (to - from <= POINT * span ? point((from + to) / 2) : { from, to })),
    stepsOver,
    least: extreme(samples, -1),
    most: extreme(samples, 1),
    hasGaps: samples.some(({ y }) => y === null),
  };
}

const point = (at: number): MetStretch => ({ from: at, to: at });

const crosses = (a: Sample, b: Sample, value: number): boolean =>
  a.y !== null && b.y !== null && (a.y - value) * (b.y - value) < 0;

function extreme(samples: readonly Sample[], way: 1 | -1): Extreme | null {
  let best: { readonly index: number; readonly y: number } | null = null;
  for (const [index, { y }] of samples.entries())
    if (y !== null && (best === null || way * y > way * best.y)) best = { index, y };
  if (best === null) return null;
  const { index, y } = best;
  const goesOn = (side: 1 | -1): boolean => {
    let at = index + side;
    while (samples[at]?.y === y) at += side;
    return typeof samples[at]?.y === 'number';
  };
  return { at: samples[index]!.x, value: y, turns: goesOn(1) && goesOn(-1) };
}
