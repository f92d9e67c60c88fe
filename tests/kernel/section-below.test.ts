import { describe, expect, test } from 'vitest';
import { meshVolume, sectionBelow } from '../../src/kernel';
import { cutAcross, cutMesh } from '../../src/kernel/cut-mesh';
import { axesOf } from '../../src/kernel/plane';
import './near';
import { boxMesh } from './shapes';

const box = boxMesh([-3, -1, 0], [3, 1, 1]);

describe('a box 6 x 2 x 1', () => {
  test.each([-3, -2.4, 0, 3])('is cut alike at x = %d, in its end faces too', (x) => {
    expect(sectionBelow(box, x, 0.25)).toStrictEqual({ area: 0.5, halfBreadth: 1 });
  });
  test('is whole where the water stands over it, nothing where it is dry or where it ends', () => {
    expect(sectionBelow(box, 1, 4)).toStrictEqual({ area: 2, halfBreadth: 1 });
    expect(sectionBelow(box, 1, -0.1)).toStrictEqual({ area: 0, halfBreadth: 0 });
    expect(sectionBelow(box, 3.001, 0.5)).toStrictEqual({ area: 0, halfBreadth: 0 });
  });
});

describe('a pyramid on its tip, sides 1 in 1, 2 high (closed form: section a triangle cut off)', () => {
  const points = Float64Array.from([0, 0, 0, 2, -2, 2, 2, 2, 2, -2, 2, 2, -2, -2, 2]);
  const triangles = Uint32Array.from([0, 2, 1, 0, 3, 2, 0, 4, 3, 0, 1, 4, 1, 2, 3, 1, 3, 4]);
  const pyramid = { points, triangles };
  test.each([-2, -1.3, 0, 0.5, 2, 2.1])('is cut across at x = %d as by any plane that lies there', (x) => {
    for (const way of [1, -1] as const) {
      const [across, byPlane]: number[][][] = [[], []];
      const ends = (points: Float64Array, a: number, b: number) => [
        ...points.subarray(a, a + 3),
        ...points.subarray(b, b + 3),
      ];
      cutAcross(pyramid, x, way, (...cut) => across!.push(ends(...cut)));
      const axes = axesOf({ normal: [way, 0, 0], height: way * x });
      cutMesh(pyramid, axes, null, (...cut) => byPlane!.push(ends(...cut)));
      expect(across).toStrictEqual(byPlane);
    }
  });
  test('has the volume of a third of its box, so its faces look outward', () => {
    expect(meshVolume(pyramid)).toBeNear((16 * 2) / 3, 1e-14);
  });
  // At x the section is a trapezium: 2x wide at z = x, 2z wide above.
  test.each([
    [0, 1],
    [0.5, 1.2],
    [-0.7, 0.9],
    [1.5, 1.9],
  ])('at x = %d below z = %d', (x, z) => {
    const { area, halfBreadth } = sectionBelow(pyramid, x, z);
    expect(area).toBeNear(z ** 2 - x ** 2, 1e-12);
    expect(halfBreadth).toBeNear(z, 1e-12);
  });
});
