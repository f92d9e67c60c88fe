import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { screwLengths } from '../../src/trade/lengths-sold';
import { leadHoleShare, screws, screwSize, screwToBuy, usualGauge } from '../../src/trade/screws';

const gauges = screws.rows.map(({ id }) => Number(/\d+/.exec(id)?.[0]));

const inches = (metres: number) => metres / 0.0254;

describe('screw sizes', () => {
  test('gauges 8, 10 and 14 have the diameters a trade list prints', () => {
    expect(inches(screwSize(8, 'diameter'))).toBeCloseTo(0.164, 6);
    expect(inches(screwSize(10, 'diameter'))).toBeCloseTo(0.19, 6);
    expect(inches(screwSize(14, 'diameter'))).toBeCloseTo(0.242, 6);
  });

  test('heads without a listed diameter lie between their listed neighbours', () => {
    for (const [gauge, below, above] of [
      [5, 4, 6],
      [7, 6, 8],
      [9, 8, 10],
    ] as const) {
      expect(screwSize(gauge, 'head')).toBeGreaterThan(screwSize(below, 'head'));
      expect(screwSize(gauge, 'head')).toBeLessThan(screwSize(above, 'head'));
    }
  });

  test('in every gauge the root is thinner than the shank, and the head is widest', () => {
    for (const gauge of gauges) {
      const [root, shank, head] = (['root', 'diameter', 'head'] as const).map((size) =>
        screwSize(gauge, size),
      );
      expect(root).toBeLessThan(shank!);
      expect(shank).toBeLessThan(head!);
    }
  });

  test('every size grows with the gauge', () => {
    for (const size of ['root', 'diameter', 'head'] as const) {
      const values = gauges.map((gauge) => screwSize(gauge, size));
      expect(values).toEqual([...values].sort((a, b) => a - b));
      expect(new Set(values).size).toBe(gauges.length);
    }
  });

  test('every number names its source', () => {
    for (const row of screws.rows)
      for (const cited of Object.values(row.cells)) expect(cited.source).not.toBe('');
  });

  test('a gauge that is not sold is refused in a sentence', () => {
    expect(() => screwSize(11, 'root')).toThrow('there is no wood screw of gauge 11');
    expect(() => screwSize(8.5, 'diameter')).toThrow('gauge 8.5');
  });
});

describe('lead holes', () => {
  test('0.7 of the root up to a gravity of 0.6, 0.9 above', () => {
    expect([0.36, 0.5, 0.55, 0.6].map(leadHoleShare)).toEqual([0.7, 0.7, 0.7, 0.7]);
    expect([0.601, 0.73].map(leadHoleShare)).toEqual([0.9, 0.9]);
  });
});

describe('the screw to buy', () => {
  test('the shortest that reaches', () => {
    expect(screwToBuy(0.0301, 0.06, screwLengths.metric)).toBe(0.035);
    expect(screwToBuy(0.03, 0.06, screwLengths.metric)).toBe(0.03);
  });

  test('where that would come through, the longest that stays inside', () => {
    expect(screwToBuy(0.034, 0.022, screwLengths.metric)).toBe(0.02);
  });

  test('inch lengths for an inch shop', () => {
    expect(inches(screwToBuy(0.034, 0.06, screwLengths.inch))).toBeCloseTo(1.5, 12);
  });

  test('none short enough is said', () => {
    expect(() => screwToBuy(0.03, 0.011, screwLengths.metric)).toThrow('no wood screw sold is short enough');
  });

  test('is always sold, never longer than what stays inside, and reaches if any does', () => {
    const length = fc.double({ min: 0.012, max: 0.2, noNaN: true });
    fc.assert(
      fc.property(length, length, (wanted, longest) => {
        const bought = screwToBuy(wanted, longest, screwLengths.metric);
        expect(screwLengths.metric).toContain(bought);
        expect(bought).toBeLessThanOrEqual(longest + 1e-6);
        const reaching = screwLengths.metric.some((sold) => sold >= wanted && sold <= longest);
        expect(reaching && bought < wanted - 1e-6).toBe(false);
      }),
      { seed: 7 },
    );
  });
});

test('the usual gauge by thickness of plywood', () => {
  expect([0.004, 0.006, 0.0064, 0.009, 0.0095, 0.375 * 0.0254, 0.012, 0.019].map(usualGauge)).toEqual([
    6, 6, 6, 8, 8, 8, 10, 10,
  ]);
});
