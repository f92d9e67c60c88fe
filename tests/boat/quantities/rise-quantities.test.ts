import { layoutOf } from '../../../src/boat/quantities/lists';
import { describe, expect, test } from 'vitest';
import { demoBoat, starters } from '../../../src/boat';
import { riseQuantities } from '../../../src/boat/quantities/rise-quantities';
import { riseOf } from '../../../src/kernel/polyline';
import { laminate } from '../../../src/cells/timber/bending/laminate';
import { tryCell } from '../../cells/try-cell';

describe('the rise of a line', () => {
  test('of an arc is the sagitta: 8 mm over a chord of 160 mm on a radius of 404 mm', () => {
    const half = Math.asin(80 / 404);
    const arc = Array.from({ length: 161 }, (_, i) => {
      const angle = half * (i / 80 - 1);
      return [404 * Math.sin(angle), 0, 404 * Math.cos(angle)] as const;
    });
    expect(riseOf(arc)).toBeCloseTo(404 - Math.sqrt(404 ** 2 - 80 ** 2), 9);
    expect(riseOf(arc)).toBeCloseTo(8, 9);
  });

  test('of a straight line is none; of no line there is none to tell', () => {
    expect(
      riseOf([
        [0, 0, 0],
        [1, 2, 3],
        [2, 4, 6],
      ]),
    ).toBeCloseTo(0, 12);
    expect(() => riseOf([])).toThrow('without points');
  });
});

test('each edge of a boat has one, less than half its length', () => {
  for (const { table } of starters) {
    const names = riseQuantities(layoutOf(table)).map(({ name }) => name);
    expect(names).toContain('keel.rise');
    for (const name of names.filter((one) => one !== 'keel.rise')) {
      const [along = ''] = name.split('.');
      const tried = tryCell(laminate, { along }, table);
      expect(tried.number('wholeRise')).toBeGreaterThan(0);
      expect(tried.number('wholeRise')).toBeLessThan(tried.number('length') / 2);
    }
  }
});

test('is no less than the greatest offset of the stations from that line', () => {
  const keel = demoBoat.stations.map(({ points }) => points[0]!);
  const [aft, fore] = [keel[0]!, keel.at(-1)!];
  const run = Math.hypot(fore.x! - aft.x!, fore.z! - aft.z!);
  const off = keel.map(
    ({ x, z }) =>
      Math.abs((fore.x! - aft.x!) * (z! - aft.z!) - (fore.z! - aft.z!) * (x! - aft.x!)) / run / 1000,
  );
  const rise = tryCell(laminate, { along: 'keel' }).number('wholeRise');
  expect(rise).toBeGreaterThanOrEqual(Math.max(...off) - 1e-9);
  expect(rise).toBeLessThan(Math.max(...off) * 1.1);
});
