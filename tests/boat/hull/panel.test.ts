import { describe, expect, test } from 'vitest';
import { buildHull, offsetsOf, starter, starters } from '../../../src/boat';
import { lengthTo } from '../../../src/kernel';
import { hullThrough, steps } from '../shapes';
import type { Vec3 } from '../../../src/kernel';

/** Sides bent to an upright cylinder of radius 6 m, cut off level below and on a slope above. */
function cylinderSided(stations: number) {
  const half = 0.4;
  const angles = steps(-half, half, stations);
  const at = (angle: number, z: number): Vec3 => [6 * Math.sin(angle), 6 * Math.cos(angle) - 5, z];
  return hullThrough({
    keel: angles.map((a): Vec3 => [6 * Math.sin(a), 0, 0]),
    chine: angles.map((a) => at(a, 0)),
    sheer: angles.map((a) => at(a, 0.5 + 0.05 * 6 * Math.sin(a))),
  });
}

describe('a cylinder cut on a slope', () => {
  test('rolls out to a sine curve: area and corners', () => {
    const panel = cylinderSided(9).panel('side');
    // Mean height times arc; the slope adds as much forward as it takes aft.
    expect(Math.abs(panel.area / (0.5 * 6 * 0.8) - 1)).toBeLessThan(3e-6);
    const { inner, outer } = panel.flat;
    const rise = 0.05 * 6 * Math.sin(0.4);
    const corners = [inner[0]!, inner.at(-1)!, outer[0]!, outer.at(-1)!];
    const wanted = [
      [0, 0],
      [4.8, 0],
      [0, 0.5 - rise],
      [4.8, 0.5 + rise],
    ];
    // Achieved 0.002 mm.
    corners.forEach(([x, y], i) =>
      expect(Math.hypot(x - wanted[i]![0]!, y - wanted[i]![1]!)).toBeLessThan(0.00001),
    );
  });

  test('bends to its radius and does not twist', () => {
    const panel = cylinderSided(17).panel('side');
    expect(Math.abs(panel.leastRadius!.radius / 6 - 1)).toBeLessThan(0.01);
    expect(panel.twist.angle).toBeLessThan(1e-4);
  });

  test('stands plumb, without crown', () => {
    const hull = cylinderSided(9);
    for (const frame of hull.frames) {
      expect(Math.abs(frame.crown('side'))).toBeLessThan(1e-6);
      expect(Math.abs(frame.flare('side'))).toBeLessThan(1e-12);
    }
  });
});

test.each(starters.map(({ id }) => [id] as const))('%s: edges keep their length on the sheet', (id) => {
  const hull = buildHull(offsetsOf(starter(id)!));
  for (const panel of hull.panels) {
    for (const [edge, line] of [
      [panel.inner, panel.flat.inner],
      [panel.outer, panel.flat.outer],
    ] as const) {
      let chords = 0;
      for (let k = 1; k < line.length; k++)
        chords += Math.hypot(line[k]![0] - line[k - 1]![0], line[k]![1] - line[k - 1]![1]);
      // The sheet's chords are those of 128 pieces: a little shorter than the curve.
      const length = lengthTo(edge.batten, edge.batten.knots.at(-1)!);
      expect(chords / length).toBeGreaterThan(0.9999);
      expect(chords / length).toBeLessThan(1 + 1e-6);
    }
  }
});

test('the vee launch has its tightest bottom at the forefoot', () => {
  const bottom = buildHull(offsetsOf(starter('vee-launch')!)).panel('bottom');
  expect(bottom.leastRadius!.x).toBeGreaterThan(4);
  expect(bottom.leastRadius!.radius).toBeLessThan(0.6);
});
