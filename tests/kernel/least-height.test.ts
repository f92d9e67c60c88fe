import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { leastHeight, turned, type Vec2 } from '../../src/kernel';
import './near';
import { seeded } from './shapes';

const rectangle: readonly Vec2[] = [
  [0, 0],
  [5, 0],
  [5, 0.6],
  [0, 0.6],
];
const spread = (values: readonly number[]) => Math.max(...values) - Math.min(...values);

describe('laid least high', () => {
  test('a rectangle on a slope lies down again, what ran forward still running forward', () => {
    for (const angle of [0.4, -0.4, 1.2, -1.2]) {
      const { turn, length, height, origin } = leastHeight(rectangle.map((point) => turned(point, angle)));
      expect(turn).toBeNear(-angle, 1e-12);
      expect(length).toBeNear(5, 1e-12);
      expect(height).toBeNear(0.6, 1e-12);
      expect(origin[0]).toBeNear(0, 0, 1e-12);
      expect(origin[1]).toBeNear(0, 0, 1e-12);
    }
  });

  test('a triangle lies on its longest side, also where that is the upper one', () => {
    const triangle: readonly Vec2[] = [
      [0, 0],
      [4, 0],
      [1, -1],
    ];
    const { turn, height } = leastHeight(triangle.map((point) => turned(point, 0.1)));
    expect(turn).toBeNear(-0.1, 1e-12);
    expect(height).toBeNear(1, 1e-12);
  });

  test('no turn in a fine sweep makes it less, and the box is that of the points turned', () => {
    const place = fc.double({ min: -3, max: 3, noNaN: true, noDefaultInfinity: true });
    fc.assert(
      fc.property(fc.array(fc.tuple(place, place), { minLength: 3, maxLength: 12 }), (points) => {
        fc.pre(spread(points.map(([x]) => x)) > 0.1);
        const { turn, length, height } = leastHeight(points);
        const at = (angle: number) => points.map((point) => turned(point, angle));
        expect(spread(at(turn).map(([, y]) => y))).toBeNear(height, 1e-9, 1e-9);
        expect(spread(at(turn).map(([x]) => x))).toBeNear(length, 1e-9, 1e-9);
        const swept = Array.from({ length: 90 }, (_, i) => spread(at((i * Math.PI) / 90).map(([, y]) => y)));
        expect(Math.min(...swept)).toBeGreaterThan(height - 1e-9);
      }),
      seeded,
    );
  });

  test('points that are all one place can’t be laid', () => {
    expect(() =>
      leastHeight([
        [1, 1],
        [1, 1],
      ]),
    ).toThrow('points that are all the same can’t be laid along a line');
  });
});
