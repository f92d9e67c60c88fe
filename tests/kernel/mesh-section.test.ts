import { describe, expect, test } from 'vitest';
import { distance, joined, meshSection } from '../../src/kernel';
import type { Vec3 } from '../../src/kernel';
import './near';
import { boxMesh } from './shapes';

const box = boxMesh([0, 0, 0], [3, 2, 1]);

/** Area of a closed line in a plane of constant x, + when counter-clockwise seen from forward. */
function areaAtX(line: readonly Vec3[]): number {
  let twice = 0;
  line.slice(1).forEach(([, y, z], i) => {
    const [, y0, z0] = line[i] ?? [0, NaN, NaN];
    twice += y0 * z - y * z0;
  });
  return twice / 2;
}

describe('a box', () => {
  test('is cut across in one closed rectangle, counter-clockwise', () => {
    const lines = meshSection(box, { normal: [1, 0, 0], height: 1.3 });
    expect(lines).toHaveLength(1);
    const line = lines[0] ?? [];
    expect(line[0]).toStrictEqual(line.at(-1));
    expect(areaAtX(line)).toBeNear(2, 1e-14);
    for (const [x] of line) expect(x).toBeNear(1.3, 1e-14);
  });
  test('is cut corner to corner in a hexagon of side sqrt(2)/2 when it is a cube (closed form)', () => {
    const third = Math.sqrt(1 / 3);
    const lines = meshSection(boxMesh([0, 0, 0], [1, 1, 1]), {
      normal: [third, third, third],
      height: 1.5 * third,
    });
    const line = lines[0] ?? [];
    const round = line.slice(1).reduce((sum, point, i) => sum + distance(point, line[i] ?? point), 0);
    expect(round).toBeNear(3 * Math.SQRT2, 1e-13);
  });
  test('is missed by a plane beside it', () => {
    expect(meshSection(box, { normal: [1, 0, 0], height: 3.5 })).toStrictEqual([]);
    expect(meshSection(box, { normal: [1, 0, 0], height: -1 })).toStrictEqual([]);
  });
});

test('two boxes are cut in two lines', () => {
  const both = joined(box, boxMesh([0, 5, 0], [3, 6, 1]));
  const areas = meshSection(both, { normal: [1, 0, 0], height: 1 }).map(areaAtX);
  expect(areas.toSorted((a, b) => a - b).map((area) => Math.round(area * 1e9) / 1e9)).toStrictEqual([1, 2]);
});

test('an open mesh is cut in an open line', () => {
  // Without the top: two triangles of the face z = 1.
  const open = { points: box.points, triangles: box.triangles.slice(0, -6) };
  const lines = meshSection(open, { normal: [1, 0, 0], height: 1 });
  expect(lines).toHaveLength(1);
  const line = lines[0] ?? [];
  expect(line[0]).not.toStrictEqual(line.at(-1));
  const length = line.slice(1).reduce((sum, point, i) => sum + distance(point, line[i] ?? point), 0);
  expect(length).toBeNear(4, 1e-14);
});
