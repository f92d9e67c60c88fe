import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Point } from '../../../src/drawing';
import { hatchLines } from '../../../src/drawing/set-out/hatching';
import { makeSlab, within } from '../../../src/drawing/set-out/slab';

const square = (x: number, y: number, side: number): Point[] => [
  [x, y],
  [x + side, y],
  [x + side, y + side],
  [x, y + side],
];

const total = (lines: ReturnType<typeof hatchLines>): number =>
  lines.reduce((sum, [x1, y1, x2, y2]) => sum + Math.hypot(x2 - x1, y2 - y1), 0);

/** Even-odd by a ray to the right; a second road beside the scan by rows. */
const inside = (rings: readonly (readonly Point[])[], x: number, y: number): boolean => {
  let odd = false;
  for (const ring of rings) {
    ring.forEach(([ax, ay], i) => {
      const [bx, by] = ring[(i + 1) % ring.length]!;
      if (ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax)) odd = !odd;
    });
  }
  return odd;
};

/** Distance of a point from the nearest edge. */
const toEdge = (rings: readonly (readonly Point[])[], x: number, y: number): number =>
  Math.min(
    ...rings.flatMap((ring) =>
      ring.map(([ax, ay], i) => {
        const [bx, by] = ring[(i + 1) % ring.length]!;
        const length2 = (bx - ax) ** 2 + (by - ay) ** 2;
        const share = length2 === 0 ? 0 : ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / length2;
        const t = Math.max(0, Math.min(1, share));
        return Math.hypot(x - ax - t * (bx - ax), y - ay - t * (by - ay));
      }),
    ),
  );

describe('hatch lines', () => {
  const coordinate = fc.double({ min: 0, max: 300, noNaN: true });
  const ring = fc.array(fc.tuple(coordinate, coordinate), { minLength: 3, maxLength: 9 });
  const rings = fc.array(ring, { minLength: 1, maxLength: 3 });

  test('lie inside any area, however it crosses itself', () => {
    fc.assert(
      fc.property(rings, fc.boolean(), (area, falling) => {
        const outside = hatchLines(area, 6, falling, []).flatMap(([x1, y1, x2, y2]) =>
          [0.01, 0.3, 0.5, 0.77, 0.99]
            .map((share) => [x1 + share * (x2 - x1), y1 + share * (y2 - y1)] as const)
            .filter(([x, y]) => toEdge(area, x, y) > 1e-6 && !inside(area, x, y)),
        );
        expect(outside).toEqual([]);
      }),
      { numRuns: 200, seed: 3 },
    );
  });

  test('fill the area: their length times their spacing is the area', () => {
    // Holes count: 100 x 100 less 40 x 40. The first and last row may err by a spacing each.
    const area = [square(10.3, 20.7, 100), square(40, 50, 40)];
    for (const spacing of [2, 4, 6]) {
      const covered = spacing * total(hatchLines(area, spacing, false, []));
      expect(Math.abs(covered - 8400)).toBeLessThan(0.2 * spacing ** 2 + 0.002 * 8400);
    }
  });

  test('rise or fall at 45 degrees on fixed rows of the sheet', () => {
    for (const falling of [false, true]) {
      for (const [x1, y1, x2, y2] of hatchLines([square(7, 3, 80)], 6, falling, [])) {
        // On paper y runs down: a rising line loses y as x grows.
        expect((y2 - y1) / (x2 - x1)).toBeCloseTo(falling ? 1 : -1, 9);
        const row = (falling ? y1 - x1 : x1 + y1) / Math.SQRT2 / 6;
        expect(Math.abs(row - Math.round(row))).toBeLessThan(1e-9);
      }
    }
  });

  test('stand still while the area moves', () => {
    const rows = (x: number): Set<number> =>
      new Set(hatchLines([square(x, 0, 60)], 6, false, []).map(([x1, y1]) => Math.round((x1 + y1) * 1e6)));
    const [here, there] = [rows(0), rows(1.7)];
    const shared = [...here].filter((r) => there.has(r));
    expect(shared.length).toBeGreaterThan(here.size - 2);
  });

  test('leave texts clear', () => {
    const text = makeSlab(60, 60, 30, 8, Math.cos(0.3), Math.sin(0.3));
    const lines = hatchLines([square(0, 0, 120)], 6, false, [text]);
    expect(lines.length).toBeGreaterThan(hatchLines([square(0, 0, 120)], 6, false, []).length);
    // 2 px of air less rounding.
    for (const line of lines) expect(within(text, line, 1.99)).toBeNull();
  });

  test('are none in an area without extent', () => {
    expect(hatchLines([[]], 6, false, [])).toEqual([]);
    expect(hatchLines([[[5, 5]]], 6, false, [])).toEqual([]);
    expect(
      hatchLines(
        [
          [
            [0, 0],
            [50, 0],
            [20, 0],
          ],
        ],
        6,
        false,
        [],
      ),
    ).toEqual([]);
  });
});
