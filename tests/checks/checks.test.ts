/** Every row of every file of checks: the product gives what the world outside gives, and each row can fail. */
import { describe, expect, test } from 'vitest';
import { allChecks, misses } from './check';

const checks = allChecks();

test('there are rows, and no id stands twice', () => {
  expect(checks.length).toBeGreaterThan(0);
  const ids = checks.map((check) => check.id);
  expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toStrictEqual([]);
});

describe.each(checks.map((check) => [check.id, check.what, check] as const))('%s %s', (_id, _what, check) => {
  test('agrees with its source', () => {
    expect(misses(check, check.obtain())).toBe('');
  });

  test('would not agree with a number one per cent off', () => {
    const wrong = { ...check, expected: check.expected.map((value) => value * 1.01 + 2 * check.tolerance) };
    expect(misses(wrong, check.obtain())).not.toBe('');
  });

  test('says where its number comes from', () => {
    expect(check.source).not.toBe('');
    expect(Number.isFinite(check.tolerance) && check.tolerance >= 0).toBe(true);
  });
});
