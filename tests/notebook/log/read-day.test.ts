import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { issue } from '../../../src/measure';
import { dayOf, readDay, sayDay } from '../../../src/notebook/log/read-day';

describe('a day', () => {
  test.each([
    ['2026-11-28', '2026-11-28'],
    [' 2026-3-4 ', '2026-03-04'],
    ['28 Nov 2026', '2026-11-28'],
    ['28. november 2026', '2026-11-28'],
    ['Sept 5, 2026', '2026-09-05'],
    ['5 Sept. 2026', '2026-09-05'],
    ['', null],
  ])('%j is %j', (text, day) => {
    expect(readDay(text)).toBe(day);
  });

  test.each([
    ['3/4/2026', 'the day can’t be read; write it as 2026-11-28 or 28 Nov 2026'],
    ['yesterday', 'the day can’t be read; write it as 2026-11-28 or 28 Nov 2026'],
    ['28 Foo 2026', 'the day can’t be read; write it as 2026-11-28 or 28 Nov 2026'],
    ['2026-13-01', 'there is no month 13; write the day as 2026-11-28'],
    ['31 Nov 2026', 'there is no 31 Nov 2026'],
    ['2026-02-29', 'there is no 29 Feb 2026'],
    ['2026-11-00', 'there is no 0 Nov 2026'],
  ])('%j is told: %s', (text, says) => {
    expect(readDay(text)).toStrictEqual(issue(says));
  });

  test('has 29 February by the Gregorian rule: 2000 and 2024, not 1900', () => {
    const isDay = (year: number) => typeof readDay(`${year}-02-29`) === 'string';
    expect([2000, 2024, 1900, 2023].map(isDay)).toStrictEqual([true, true, false, false]);
  });

  test('reads back as it is said, whichever it is', () => {
    const days = fc.date({ min: new Date('1990-01-01'), max: new Date('2090-12-31'), noInvalidDate: true });
    fc.assert(
      fc.property(days, (date) => {
        const day = date.toISOString().slice(0, 10);
        expect(readDay(day)).toBe(day);
        expect(readDay(sayDay(day))).toBe(day);
      }),
      { seed: 5, numRuns: 300 },
    );
  });

  test('today is the builder’s own, not Greenwich’s', () => {
    expect(dayOf(new Date(2026, 2, 4, 0, 5))).toBe('2026-03-04');
    expect(dayOf(new Date(2026, 11, 31, 23, 55))).toBe('2026-12-31');
  });
});
