import { describe, expect, test } from 'vitest';
import { curvesOfForm } from '../../../src/kernel';
import '../near';
import { boxMesh } from '../shapes';
import { prism } from './hulls';

describe('curves of form', () => {
  test('of a vee with a chine: area 0.207682 at 0.25 (polygon by its corners); a level that misses it is left out', () => {
    const vee = prism(1, [
      [0, 0],
      [0.6, 0.16],
      [0.8, 0.6],
      [0, 0.6],
    ]);
    const [at, ...none] = curvesOfForm(vee, [0.25, -0.1]);
    expect(none).toHaveLength(0);
    expect(at!.volume).toBeNear(0.207682, 0, 6e-7);
    expect(at!.waterplane.area).toBeNear(2 * 0.640909, 0, 1.2e-6);
  });

  // KM = T/2 + B^2/12T is least at T = B/sqrt 6, where it is B/sqrt 6 too (Derrett, summary of formulae).
  test('a box’s metacentre is lowest where it is as high as she is deep', () => {
    const heights = Array.from({ length: 200 }, (_, i) => 0.5 + i * 0.005);
    const curve = curvesOfForm(boxMesh([-3, -1, 0], [3, 1, 2]), heights);
    const least = curve.reduce((best, at) =>
      at.metacentre.transverse < best.metacentre.transverse ? at : best,
    );
    expect(least.height).toBeNear(2 / Math.sqrt(6), 0, 0.005);
    expect(least.metacentre.transverse).toBeNear(2 / Math.sqrt(6), 1e-4);
    expect(least.metacentre.longitudinal).toBeNear(least.height / 2 + 36 / (12 * least.height), 1e-9);
  });
});
