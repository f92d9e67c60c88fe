import { describe, expect, test } from 'vitest';
import {
  bendBatten,
  bridge,
  curveOf,
  joined,
  meshOfStrips,
  meshVolume,
  mirrored,
  polygonMesh,
  reversed,
  spanStrip,
} from '../../src/kernel';
import type { Mesh, Strip, Vec3 } from '../../src/kernel';
import { isClosed, meshArea } from './mesh-size';
import { orderOf } from './near';
import { onCylinder, straight, wave } from './shapes';

const keel = curveOf(
  bendBatten([
    [0, 0, 0.1],
    [1.5, 0, 0],
    [3, 0, 0.05],
    [4, 0, 0.3],
  ]),
);
const chine = curveOf(
  bendBatten([
    [0, 0.5, 0.2],
    [1.5, 0.6, 0.15],
    [3, 0.4, 0.25],
    [4, 0, 0.5],
  ]),
);
const sheer = curveOf(
  bendBatten([
    [0, 0.6, 0.7],
    [1.5, 0.8, 0.6],
    [3, 0.6, 0.7],
    [4.3, 0, 0.9],
  ]),
);

function hull(cells: number): { closed: Mesh; strips: readonly Strip[] } {
  const strips = [spanStrip(keel, chine, { cells }), spanStrip(chine, sheer, { cells })];
  const { mesh, edges } = meshOfStrips(strips);
  const mirror = ([x, y, z]: Vec3): Vec3 => [x, -y, z];
  const top = edges[2] ?? [];
  const stern = edges.map((edge): Vec3 => edge[0] ?? [NaN, NaN, NaN]);
  // Seen from aft, counter-clockwise: up the starboard side, down the port one.
  const transom = polygonMesh([...stern.map(mirror), ...stern.slice(1).toReversed()]);
  return { closed: joined(mesh, mirrored(mesh), bridge(top, top.map(mirror)), transom), strips };
}

describe('two strips, their mirror image, a lid and a transom', () => {
  test('hold water', () => {
    const { closed } = hull(16);
    expect(isClosed(closed)).toBe(true);
    expect(isClosed({ points: closed.points, triangles: closed.triangles.slice(3) })).toBe(false);
  });
  test('have a volume that converges with the square of the cell', () => {
    const [a, b, c] = [8, 16, 32].map((cells) => meshVolume(hull(cells).closed));
    const order = orderOf((b ?? NaN) - (a ?? NaN), (c ?? NaN) - (b ?? NaN));
    expect(order).toBeGreaterThan(1.7);
    expect(order).toBeLessThan(2.5);
    // Between the box of its greatest measures and half of it.
    expect(c).toBeGreaterThan(0.5 * 4 * 1.2 * 0.5);
    expect(c).toBeLessThan(4.3 * 1.6 * 0.9);
  });
  test('have the area of the flat sheets', () => {
    const { strips } = hull(64);
    for (const strip of strips) expect(meshArea(meshOfStrips([strip]).mesh)).toBeNear(strip.area, 2e-4);
  });
});

test('a strip of a cylinder has the same area in space as flat, to the second order', () => {
  const miss = (cells: number): number => {
    const strip = spanStrip(
      onCylinder(2, straight(0, 1), straight(0, 0)),
      onCylinder(2, straight(0, 1), wave(1, 0.2, 3)),
      {
        cells,
      },
    );
    return meshArea(meshOfStrips([strip]).mesh) / strip.area - 1;
  };
  // Flat triangles under a curved strip lose a little of its area.
  expect(miss(32)).toBeNear(0, 0, 4e-5);
  const order = orderOf(miss(16), miss(32));
  expect(order).toBeGreaterThan(1.9);
  expect(order).toBeLessThan(2.2);
});

test('edges run from first to last in the order of the strips, with the points of both neighbours', () => {
  const strips = [spanStrip(keel, chine, { cells: 8 }), spanStrip(chine, sheer, { cells: 8 })];
  const { mesh, edges } = meshOfStrips(strips);
  expect(edges).toHaveLength(3);
  expect(edges[1]?.length).toBeGreaterThan(17);
  expect(mesh.points.length).toBe(3 * edges.reduce((sum, edge) => sum + edge.length, 0));
  expect(edges[1]?.at(-1)?.[0]).toBeNear(4, 1e-12);
  // Each point once, though fans and neighbours come to it more often.
  for (const edge of edges) {
    edge.slice(1).forEach((point, k) => expect(point).not.toStrictEqual(edge[k]));
  }
  // Faces outward: inside out it would be a negative volume with its mirror image.
  expect(meshVolume(joined(mesh, mirrored(mesh)))).toBeGreaterThan(0);
  expect(meshVolume(reversed(joined(mesh, mirrored(mesh))))).toBeLessThan(0);
});

test('says when there is no strip, or neighbours share no edge', () => {
  expect(() => meshOfStrips([])).toThrow('a mesh needs at least 1 strip; got none');
  const strips = [spanStrip(keel, chine, { cells: 8 }), spanStrip(keel, sheer, { cells: 8 })];
  expect(() => meshOfStrips(strips)).toThrow("strips 1 and 2 don't share an edge");
});
