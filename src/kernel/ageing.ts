/** How far something has come that goes faster in the warm, through days that are all alike. */
import { findRoot } from './roots';

const HOUR = 3600;
const DAY = 24 * HOUR;
/** Longest piece that is summed at once, s: over it a smooth day is a parabola for our purposes. */
const PIECE = HOUR / 2;

/** A rate by the time of day, in seconds since midnight, and the times at which it jumps or has a corner. */
export interface DailyRate {
  /** Of one where time counts in full. */
  readonly at: (time: number) => number;
  readonly corners: readonly number[];
}

/** Simpson's rule over one piece without corners; its ends are asked from inside, where a jump belongs to neither. */
function pieceOf({ at }: DailyRate, from: number, to: number): number {
  const hair = (to - from) * 1e-9;
  return ((to - from) / 6) * (at(from + hair) + 4 * at((from + to) / 2) + at(to - hair));
}

/** The next end of a piece after a time, s since the first midnight. */
function pieceEnd(corners: readonly number[], time: number): number {
  const day = Math.floor(time / DAY) * DAY;
  const next = [0, DAY].flatMap((later) => corners.map((corner) => day + later + corner));
  return Math.min(time + PIECE, ...next.filter((corner) => corner > time + 1e-6));
}

/**
 * What the rate adds up to from one time to another, s; both since the first midnight.
 *
 * The error of a piece goes with the fifth power of its length: under 1e-6 of the sum for a rate that doubles in a day.
 */
export function aged(rate: DailyRate, from: number, to: number): number {
  let sum = 0;
  for (let time = from; time < to;) {
    const end = Math.min(to, pieceEnd(rate.corners, time));
    sum += pieceOf(rate, time, end);
    time = end;
  }
  return sum;
}

/**
 * When the rate has added up to an age, s since the first midnight; null where it never does.
 *
 * @param age s at a rate of one, 0 or more
 */
export function ripeAt(rate: DailyRate, from: number, age: number): number | null {
  if (age <= 0) return from;
  const day = aged(rate, from, from + DAY);
  if (day <= 0) return null;
  // Whole days are alike; the last one or two are gone through.
  const days = Math.max(0, Math.floor(age / day) - 1);
  let time = from + days * DAY;
  let left = age - days * day;
  for (;;) {
    const end = pieceEnd(rate.corners, time);
    const piece = pieceOf(rate, time, end);
    if (piece >= left) {
      const [start, rest] = [time, left];
      return findRoot((at) => pieceOf(rate, start, at) - rest, time, end) ?? end;
    }
    left -= piece;
    time = end;
  }
}
