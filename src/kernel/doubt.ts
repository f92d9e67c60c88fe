/**
 * Doubt: how far an answer may be out because the numbers it was worked out from may be.
 *
 * A doubt is how much is to be given or taken: of twenty readings nineteen lie within it, which is two standard
 * deviations of a normal distribution.
 *
 * Source: JCGM 100:2008 (GUM), 5.1.2, the law of propagation of uncertainty for inputs that don't hang together; where
 * an answer bends, sampling in its place as in JCGM 101:2008.
 */
import { normalBelow } from './chance';

/** How an answer moves with one input, all else as it is: with its doubt taken off, and put on. Signed. */
export interface Swing {
  readonly less: number;
  readonly more: number;
}

/** How far a swing goes, on the mean of its two sides, 0 or more. */
export const halfOf = ({ less, more }: Swing): number => (Math.abs(less) + Math.abs(more)) / 2;

/** The greatest move of a swing to either side, 0 or more. */
const mostOf = ({ less, more }: Swing): number => Math.max(Math.abs(less), Math.abs(more));

/** The doubts of several inputs together, as far as an answer goes straight: the root of the sum of their squares. */
export const together = (doubts: readonly number[]): number => Math.hypot(...doubts);

/** A swing is taken for straight where its two sides differ by less than this share of the longer. */
const STRAIGHT = 0.1;

/** Whether an answer bends or jumps within a swing, so that its two sides are no longer one. */
export function isBent(swing: Swing): boolean {
  const most = mostOf(swing);
  return most > 0 && Math.abs(swing.less + swing.more) > STRAIGHT * most;
}

/**
 * Standard deviations at which to try all inputs at once, spread evenly over the normal distribution, and the same
 * each time: points of Richtmyer's sequence (multiples of the roots of primes, whole numbers left out).
 *
 * @param inputs how many
 * @returns one row a trial, of one number an input
 */
export function trials(inputs: number, count: number): readonly (readonly number[])[] {
  const steps = primes(inputs).map((prime) => Math.sqrt(prime) % 1);
  const deviations = even();
  return Array.from({ length: count }, (_, at) =>
    steps.map((step) => deviations[Math.floor(((0.5 + (at + 1) * step) % 1) * EVEN)]!),
  );
}

/** Shares of a normal distribution alike in size, each taken at its middle: far finer than any doubt is known. */
const EVEN = 4096;
let evenly: readonly number[] | null = null;
const even = (): readonly number[] =>
  (evenly ??= Array.from({ length: EVEN }, (_, at) => deviationAt((at + 0.5) / EVEN)));

/** The course of an answer with one input, drawn through its swing: by how much it moves with so many doubts put on. */
export const along = ({ less, more }: Swing, doubts: number): number =>
  ((more - less) / 2) * doubts + ((more + less) / 2) * doubts ** 2;

/** The first primes. */
function primes(count: number): number[] {
  const found: number[] = [];
  for (let next = 2; found.length < count; next += 1)
    if (found.every((prime) => next % prime !== 0)) found.push(next);
  return found;
}

/** Beyond so many standard deviations nothing is tried: one in 16,000. */
const FARTHEST = 4;

/** How many standard deviations from the mean this share of a normal distribution lies below, by halving. */
function deviationAt(share: number): number {
  let low = -FARTHEST;
  let high = FARTHEST;
  for (let halving = 0; halving < 30; halving += 1) {
    const middle = (low + high) / 2;
    if (normalBelow(middle) < share) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/**
 * Between which two values nineteen of twenty lie.
 *
 * @param tried values in any order, at least one
 * @throws on none
 */
export function nineteenOfTwenty(tried: readonly number[]): readonly [least: number, most: number] {
  if (tried.length === 0) throw new Error('a spread needs a value');
  const sorted = tried.toSorted((a, b) => a - b);
  const at = (share: number): number => {
    const place = share * (sorted.length - 1);
    const below = Math.floor(place);
    const low = sorted[below]!; // within the list
    return low + (place - below) * ((sorted[below + 1] ?? low) - low);
  };
  return [at(0.025), at(0.975)];
}
