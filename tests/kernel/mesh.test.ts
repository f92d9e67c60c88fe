import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  bridge,
  joined,
  meshVolume,
  mirrored,
  polygonMesh,
  reversed,
  surfaceCentroid,
} from '../../src/kernel';
import type { Vec3 } from '../../src/kernel';
import { isClosed, meshArea, meshCentroid } from './mesh-size';
import './near';
import { boxMesh, seeded } from './shapes';

describe('box', () => {
  const low: Vec3 = [1, -0.5, 2];
  const high: Vec3 = [4, 1.5, 2.5];
  const box = boxMesh(low, high);
  test('has the area, volume and centre of a box, and is closed', () => {
    expect(meshArea(box)).toBeNear(2 * (3 * 2 + 3 * 0.5 + 2 * 0.5), 1e-14);
    expect(meshVolume(box)).toBeNear(3, 1e-14);
    expect(isClosed(box)).toBe(true);
    const middle = [2.5, 0.5, 2.25];
    (meshCentroid(box) ?? []).forEach((value, axis) => expect(value).toBeNear(middle[axis] ?? NaN, 1e-14));
    (surfaceCentroid(box) ?? []).forEach((value, axis) => expect(value).toBeNear(middle[axis] ?? NaN, 1e-14));
    expect(meshCentroid(box)).toHaveLength(3);
  });
  test('is open with a face gone or turned inside out', () => {
    const { points, triangles } = box;
    expect(isClosed({ points, triangles: triangles.slice(3) })).toBe(false);
    const turned = triangles.slice();
    turned.set([triangles[1] ?? 0, triangles[0] ?? 0]);
    expect(isClosed({ points, triangles: turned })).toBe(false);
  });
  test('mirrored it lies on the other side, still outside out; reversed it is a hole', () => {
    const other = mirrored(box);
    expect(meshVolume(other)).toBeNear(3, 1e-14);
    expect(meshCentroid(other)?.[1]).toBeNear(-0.5, 1e-14);
    expect(meshVolume(reversed(box))).toBeNear(-3, 1e-14);
    expect(isClosed(reversed(box))).toBe(true);
  });
  test('joined to its mirror image it has twice the volume, centred on the middle line', () => {
    const both = joined(box, mirrored(box));
    expect(meshVolume(both)).toBeNear(6, 1e-14);
    expect(meshCentroid(both)?.[1]).toBeNear(0, 0, 1e-14);
    expect(isClosed(both)).toBe(true);
  });
  test('grows with the square and the cube, wherever it lies', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 100, noNaN: true }),
        fc.double({ min: -50, max: 50, noNaN: true }),
        (k, by) => {
          const points = box.points.map((value) => k * value + by);
          const grown = { points, triangles: box.triangles };
          // Rounding of points 50 from the origin, against a box of size k.
          const floor = 1e-12 / k;
          expect(meshVolume(grown) / k ** 3).toBeNear(3, 1e-12, floor);
          expect(meshArea(grown) / k ** 2).toBeNear(17, 1e-12, floor);
        },
      ),
      seeded,
    );
  });
});

describe('polygon', () => {
  test('a triangle is the least there is', () => {
    const corners: Vec3[] = [
      [0, 0, 0],
      [3, 0, 0],
      [0, 4, 0],
    ];
    expect(meshArea(polygonMesh(corners))).toBeNear(6, 1e-14);
  });
  test('an L laid out of flat triangles has its volume with the rest of its prism', () => {
    const shape: Vec3[] = [
      [0, 0, 0],
      [2, 0, 0],
      [2, 1, 0],
      [1, 1, 0],
      [1, 3, 0],
      [0, 3, 0],
    ];
    const top = shape.map(([x, y]): Vec3 => [x, y, 2]);
    const around = [...shape, [0, 0, 0] as const];
    const prism = joined(
      reversed(polygonMesh(shape)),
      polygonMesh(top),
      reversed(
        bridge(
          around,
          around.map(([x, y]): Vec3 => [x, y, 2]),
        ),
      ),
    );
    expect(isClosed(prism)).toBe(true);
    expect(meshVolume(prism)).toBeNear(8, 1e-14);
    const centroid = meshCentroid(prism) ?? [NaN, NaN, NaN];
    // Two rectangles: 2 x 1 at (1, 0.5) and 1 x 2 at (0.5, 2).
    [0.75, 1.25, 1].forEach((want, axis) => expect(centroid[axis]).toBeNear(want, 1e-13));
  });
  test('a rectangle has its area; two corners make none', () => {
    expect(
      meshArea(
        polygonMesh([
          [0, 0, 0],
          [2, 0, 0],
          [2, 0, 3],
          [0, 0, 3],
        ]),
      ),
    ).toBeNear(6, 1e-14);
    expect(() =>
      polygonMesh([
        [0, 0, 0],
        [1, 0, 0],
      ]),
    ).toThrow('at least 3 corners; got 2');
  });
});

test('a bridge faces (a to b) x along, and needs as many points on both lines', () => {
  const port: Vec3[] = [
    [0, 1, 0],
    [1, 1.2, 0.1],
    [2, 1, 0],
  ];
  const lid = bridge(
    port,
    port.map(([x, y, z]): Vec3 => [x, -y, z]),
  );
  expect(meshArea(lid)).toBeNear(2 * (1 + 1.2) * Math.hypot(1, 0.1), 1e-14);
  // Upward: with its flat bottom it would hold a positive volume above z = -1.
  const floor = bridge(
    port.map(([x, y]): Vec3 => [x, -y, -1]),
    port.map(([x, y]): Vec3 => [x, y, -1]),
  );
  expect(meshVolume(joined(lid, floor))).toBeGreaterThan(0);
  expect(() => bridge(port, port.slice(1))).toThrow('got 3 and 2');
});

test('nothing has no centre', () => {
  const nothing = { points: new Float64Array(0), triangles: new Uint32Array(0) };
  expect(meshCentroid(nothing)).toBeNull();
  expect(surfaceCentroid(nothing)).toBeNull();
  expect(meshVolume(nothing)).toBe(0);
});
