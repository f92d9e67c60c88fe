/** A second road to what is under a heeled and trimmed water: sections clipped by a library, and added up along the boat. */
import { polygonClipping } from './clipping';
import { describe, expect, test } from 'vitest';
import { buildHull, offsetsOf, starters } from '../../../src/boat';
import { below, meshSection, upOf } from '../../../src/kernel';
import '../near';

const SLICES = 120;

const poses = [
  { heel: 0.2, trim: 0.03, height: 0.28 },
  { heel: -0.5, trim: -0.05, height: 0.3 },
  { heel: 1.4, trim: -0.08, height: 0.1 },
];

describe.each(
  starters.filter(({ id }) => id !== 'ferry-dory-misread').map(({ id, table }) => [id, table] as const),
)('%s', (_, table) => {
  const { body } = buildHull(offsetsOf(table));
  const xs = Array.from({ length: body.points.length / 3 }, (_point, i) => body.points[3 * i]!);
  const [aft, fore] = [Math.min(...xs), Math.max(...xs)];
  const dx = (fore - aft) / SLICES;
  // In the middle of each slice: the loops of the section.
  const sections = Array.from({ length: SLICES }, (_slice, i) => {
    const x = aft + (i + 0.5) * dx;
    const loops = meshSection(body, { normal: [1, 0, 0], height: x });
    return { x, loops: loops.map((loop) => loop.map(([, y, z]): [number, number] => [y, z])) };
  });

  test.each(poses)('heel $heel, trim $trim rad, water $height m up', ({ heel, trim, height }) => {
    const normal = upOf({ heel, trim });
    const got = below(body, { normal, height });
    const sum = { volume: 0, x: 0, y: 0, z: 0 };
    for (const { x, loops } of sections)
      for (const { area, y, z } of polygonClipping(loops, { normal, height, x })) {
        sum.volume += area * dx;
        sum.x += area * x * dx;
        sum.y += area * y * dx;
        sum.z += area * z * dx;
      }
    expect(got.volume).toBeNear(sum.volume, 1e-3);
    (['x', 'y', 'z'] as const).forEach((axis, i) =>
      expect(got.centroid![i]).toBeNear(sum[axis] / sum.volume, 0, 1e-3),
    );
  });
});
