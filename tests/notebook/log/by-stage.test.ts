import { describe, expect, test } from 'vitest';
import { byStage, lineOf, linesOf, sumOf } from '../../../src/notebook/log/by-stage';
import { entry } from './entries';

const log = {
  e1: entry({ day: '2026-03-02', cell: 'scarf', hours: '2.5', money: '12.40' }),
  e2: entry({ day: '1 Mar 2026', cell: 'scarf', hours: '90 min' }),
  e3: entry({ cell: 'limber', hours: '1 h 20 min', money: '-4' }),
  e4: entry({ day: '2026-03-02', hours: 'two', money: '30' }),
  e10: entry({ day: '2026-03-02', cell: 'of another edition', hours: '-1', money: '3 mm' }),
};
const stages: Readonly<Record<string, string>> = { scarf: 'Timber', limber: 'Frames' };
const report = byStage(log, (cell) => stages[cell] ?? null, ['Shape', 'Frames', 'Timber'], 'As a whole');

describe('what an entry says', () => {
  const of = (said: Parameters<typeof entry>[0]) => lineOf('e1', entry(said));
  test.each([
    ['3', 3],
    ['90 min', 1.5],
    ['1 h 30', 1.5],
    ['2 * 1.5', 3],
    ['', null],
  ])('%j of hours is %j h', (hours, is) => {
    expect(of({ hours }).hours).toBe(is);
  });

  test.each([
    ['-1', 'the hours can’t be less than none'],
    ['1001', 'the hours are too many; one entry takes at most 1000'],
  ])('%j of hours is told: %s', (hours, says) => {
    expect(of({ hours }).hours).toStrictEqual({ issue: says });
  });

  test.each(['two', '3 mm', '1/0', 'scarf.taper', '1e400', '<b>3</b>', '__proto__', '\u0000'])(
    'what is no number is told and never reckoned with: %j',
    (text) => {
      const { hours, money } = of({ hours: text, money: text });
      expect(hours).toStrictEqual({ issue: 'the hours can’t be read; write 3, 2.5 or 1 h 20 min' });
      expect(money).toStrictEqual({ issue: 'the amount can’t be read; write 12 or 12.50' });
    },
  );

  test('money may come back', () => {
    expect(of({ money: '-12.50' }).money).toBe(-12.5);
  });
});

test('entries stand in the order of their days, those without one last, and of one day as they were begun', () => {
  expect(linesOf(log).map(({ id }) => id)).toStrictEqual(['e2', 'e1', 'e4', 'e10', 'e3']);
  expect(linesOf(log, 'scarf').map(({ id }) => id)).toStrictEqual(['e2', 'e1']);
});

describe('sums by stage', () => {
  test('stand in the order of a build, what has no stage last, and empty ones not at all', () => {
    expect(report.map(({ title, lines }) => [title, lines.map(({ id }) => id)])).toStrictEqual([
      ['Frames', ['e3']],
      ['Timber', ['e2', 'e1']],
      ['As a whole', ['e4', 'e10']],
    ]);
  });

  test('are of what can be read, and say how much can’t', () => {
    const told = report.map(({ hours, money, unread }) => [hours, money, unread]);
    expect(told).toStrictEqual([
      [4 / 3, -4, 0],
      [4, 12.4, 0],
      [0, 30, 3],
    ]);
  });

  test('come together to what all entries do: none is lost or counted twice', () => {
    const all = sumOf(linesOf(log));
    const sum = (of: (stage: (typeof report)[number]) => number) =>
      report.reduce((a, stage) => a + of(stage), 0);
    expect(sum(({ hours }) => hours)).toBeCloseTo(all.hours, 12);
    expect(sum(({ money }) => money)).toBeCloseTo(all.money, 12);
    expect(sum(({ unread }) => unread)).toBe(all.unread);
    expect(report.flatMap(({ lines }) => lines)).toHaveLength(Object.keys(log).length);
  });
});
