import { describe, expect, test } from 'vitest';
import { bar, below, block, distance, loft, meshVolume, type Vec3 } from '../../src/kernel';
import './near';

const all = { normal: [0, 0, 1], height: 50 } as const;

describe('solids through rings', () => {
  test('a block, from its two corners', () => {
    const { volume, centroid, wettedArea } = below(block([1, 2, 3], [3, 5, 7]), all);
    expect(volume).toBeNear(24, 1e-12);
    expect(wettedArea).toBeNear(2 * (2 * 3 + 3 * 4 + 4 * 2), 1e-12);
    expect(distance(centroid!, [2, 3.5, 5])).toBeLessThan(1e-9);
  });

  test('outward whichever way the rings turn or run', () => {
    const ring = (x: number): readonly Vec3[] => [
      [x, 0, 0],
      [x, 1, 0],
      [x, 0, 1],
    ];
    for (const rings of [
      [ring(0), ring(2)],
      [ring(2), ring(0)],
      [ring(0).toReversed(), ring(2).toReversed()],
    ])
      expect(meshVolume(loft(rings))).toBeNear(1, 1e-12);
  });

  test('a bar along a straight line, level, plumb or across', () => {
    for (const to of [
      [3, 0, 0],
      [0, 0, 3],
      [0, 3, 0],
      [1, 2, 2],
    ] as const) {
      const { volume, centroid } = below(bar([[0, 0, 0], to], 0.1), all);
      expect(volume).toBeNear(0.03, 1e-12);
      expect(distance(centroid!, [to[0] / 2, to[1] / 2, to[2] / 2])).toBeLessThan(1e-9);
    }
  });

  test('a bar round a quarter of a circle has the volume of its middle line', () => {
    const line = Array.from({ length: 65 }, (_, i): Vec3 => {
      const angle = (Math.PI / 2) * (i / 64);
      return [2 * Math.sin(angle), 2 * Math.cos(angle), 0];
    });
    expect(meshVolume(bar(line, 0.1))).toBeNear(0.01 * Math.PI, 1e-3);
  });

  test('says what it can’t close', () => {
    expect(() => loft([[[0, 0, 0]]])).toThrow('a solid needs two rings; got 1');
  });
});
