/** Limits along a sweep: what each comes to at every place looked at, and where what is drawn comes to it. */
import type { Read } from '../../boat';
import { type Bounds, type Course, findRoot, type Sample } from '../../kernel';
import type { KindId } from '../../measure';

/** A limit of the number that is drawn, or of the one below. */
export interface SweptLimit {
  readonly axis: 'x' | 'y';
  readonly kind: KindId;
  /** Whether it must not be more, or else not less. */
  readonly isMost: boolean;
  /** What it is, SI; null where there is none. */
  readonly by: (read: Read) => number | null;
}

/** One limit along one line. */
export interface LimitAlong {
  /** At the places of the line. */
  readonly samples: readonly Sample[];
  /** Where the line comes to it, or steps past it, in order; y is the limit there. */
  readonly met: readonly Sample[];
}

/** Closing in ends at this share of the range. */
const FINE = 1e-9;

/**
 * @param line looked at by `at`
 * @param limitAt what a limit, by its number, is where `at` looked last
 * @yields 1 after each place at which one is met
 */
export function* limitsAlong(
  limits: readonly SweptLimit[],
  line: readonly Sample[],
  at: Course,
  limitAt: (x: number, limit: number) => number | null,
  { low, high, whole = false }: Bounds,
): Generator<number, LimitAlong[]> {
  const all: LimitAlong[] = [];
  for (const [index, { axis }] of limits.entries()) {
    /** How far past the limit it is, signed; null where either is not. */
    const past = (x: number, y: number | null): number | null => {
      const limit = y === null ? null : limitAt(x, index);
      return y === null || limit === null ? null : (axis === 'y' ? y : x) - limit;
    };
    const samples = line.map(({ x, y }): Sample => ({ x, y: y === null ? null : limitAt(x, index) }));
    const met: Sample[] = [];
    for (const [i, one] of line.entries()) {
      const next = line[i + 1];
      const [a, b] = [past(one.x, one.y), next ? past(next.x, next.y) : null];
      // There is nothing between two whole numbers.
      if (whole || !next || a === null || b === null || a >= 0 === b >= 0) continue;
      // What has no value on the way leaves the bracket as it is, on the side of the end it lies nearer.
      const g = (x: number) => past(x, at(x)) ?? (x - one.x < next.x - x ? a : b);
      const x = findRoot(g, one.x, next.x, FINE * (high - low));
      if (x !== null && at(x) !== null) met.push({ x, y: limitAt(x, index) });
      yield 1;
    }
    all.push({ samples, met });
  }
  return all;
}
