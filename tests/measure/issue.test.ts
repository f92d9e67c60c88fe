import { describe, expect, test } from 'vitest';
import { isIssue, issue } from '../../src/measure';

describe('issue', () => {
  test('is known among numbers, choices and nothing at all', () => {
    expect(isIssue(issue('the board is too short'))).toBe(true);
    for (const other of [0, Number.NaN, '', 'issue', null, undefined, [], {}, { text: 'issue' }]) {
      expect(isIssue(other)).toBe(false);
    }
  });
  test('keeps its sentence', () => {
    expect(issue('the board is too short')).toStrictEqual({ issue: 'the board is too short' });
  });
});
