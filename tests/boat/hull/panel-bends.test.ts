import { describe, expect, test } from 'vitest';
import { buildHull, offsetsOf, starter, starters } from '../../../src/boat';
import { flatPanel } from '../../../src/boat/hull/flat-panel';
import { panelBends } from '../../../src/boat/hull/panel-bends';
import { distance, distance2, type Vec3 } from '../../../src/kernel';
import '../../kernel/near';
import { box, hullThrough, steps } from '../shapes';

test('a flat side bends nowhere and twists nowhere', () => {
  for (const { bend, twist } of panelBends(hullThrough(box(4, 1.2, 0.5)).panel('side'))) {
    expect(bend).toBe(0);
    expect(twist).toBeNear(0, 0, 1e-9);
  }
});

test('a side bent to an upright cylinder bends to its radius about upright lines', () => {
  const angles = steps(-0.4, 0.4, 17);
  const at = (angle: number, z: number): Vec3 => [6 * Math.sin(angle), 6 * Math.cos(angle) - 5, z];
  const hull = hullThrough({
    keel: angles.map((a): Vec3 => [6 * Math.sin(a), 0, 0]),
    chine: angles.map((a) => at(a, 0)),
    sheer: angles.map((a) => at(a, 0.5)),
  });
  for (const { bend, axis } of panelBends(hull.panel('side'))) {
    expect(1 / bend).toBeNear(6, 0.02);
    expect(axis).toBeNear(Math.PI / 2, 1e-6);
  }
});

describe.each(starters.map(({ id }) => [id] as const))('%s', (id) => {
  const hull = buildHull(offsetsOf(starter(id)!));

  test('rulings lie on the flat panel as long as they are on the hull, the tightest and most twisted among them', () => {
    for (const panel of hull.panels) {
      const all = panelBends(panel);
      all.forEach(({ from, to }, k) => {
        const ruling = panel.strip.rulings[k]!;
        expect(distance2(from, to)).toBeNear(distance(ruling.from, ruling.to), 1e-9, 1e-9);
      });
      expect(Math.max(...all.map(({ bend }) => bend))).toBeNear(
        1 / (panel.leastRadius?.radius ?? Infinity),
        1e-12,
      );
      expect(Math.max(...all.map(({ twist }) => twist))).toBe(panel.twist.angle);
      const { length } = flatPanel(panel);
      expect(all.every(({ along }) => along >= 0 && along <= length)).toBe(true);
    }
  });
});
