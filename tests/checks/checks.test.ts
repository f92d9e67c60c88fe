/** Every row of every file of checks: the product gives what the world outside gives, and each row can fail. */
import { describe, expect, test } from 'vitest';
import { once } from '../../src/boat/once';
import { allChecks, misses, wrongs } from './check';

const checks = allChecks();

test('there are rows, and no id stands twice', () => {
  expect(checks.length).toBeGreaterThan(0);
  const ids = checks.map((check) => check.id);
  expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toStrictEqual([]);
});

test('what a source prints too roughly is held finely by another row of the same cell', () => {
  const unheld = checks.filter(({ cell, rough }) => {
    const finer = checks.find(({ id }) => id === rough?.finer);
    return rough !== undefined && (finer?.cell !== cell || finer.rough !== undefined);
  });
  expect(unheld.map(({ id }) => id)).toStrictEqual([]);
});

describe.each(checks.map((check) => [check.id, check.what, check] as const))('%s %s', (_id, _what, check) => {
  const obtained = once(() => check.obtain());

  test('agrees with its source', () => {
    expect(misses(check, obtained())).toBe('');
  });

  test('would not agree with any of its numbers one per cent off', () => {
    const unseen = wrongs(check).filter((expected) => misses({ ...check, expected }, obtained()) === '');
    expect(unseen).toStrictEqual([]);
  });

  test('says where its number comes from', () => {
    expect(check.source).not.toBe('');
    expect(Number.isFinite(check.tolerance) && check.tolerance >= 0).toBe(true);
  });
});
