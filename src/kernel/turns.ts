/** Where a function that was looked at goes up and comes down again: its turns, closed in on. */
import { findMinimum } from './roots';
import type { Course, Sample } from './sampling';

/** Turns closed in on. */
const MOST_TURNS = 12;

/**
 * The same samples with the places, between those looked at, where the function turns.
 * @yields 1 after each turn
 */
export function* withTurns(f: Course, samples: readonly Sample[]): Generator<number, Sample[]> {
  const more: Sample[] = [];
  for (const [index, { y }] of samples.entries()) {
    const [before, after] = [samples[index - 1], samples[index + 1]];
    if (!before || !after || y === null || before.y === null || after.y === null) continue;
    const way = Math.sign(y - before.y);
    if (way === 0 || way !== Math.sign(y - after.y) || more.length >= MOST_TURNS) continue;
    const worst = -way * Math.min(way * before.y, way * after.y);
    const { at, value } = findMinimum((x) => (f(x) === null ? worst : -way * f(x)!), before.x, after.x, 1e-7);
    if (-way * value > way * y) more.push({ x: at, y: -way * value });
    yield 1;
  }
  return [...samples, ...more].toSorted((a, b) => a.x - b.x);
}
