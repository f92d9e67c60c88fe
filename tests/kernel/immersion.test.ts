import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { below, findRoot } from '../../src/kernel';
import type { Mesh, Plane } from '../../src/kernel';
import { orderOf } from './near';
import { boxMesh, seeded } from './shapes';
import { prism, wigley } from './afloat/hulls';

const { cos, sin, PI } = Math;
const level = (height: number): Plane => ({ normal: [0, 0, 1], height });
/** The water seen from a boat heeled to port by an angle. */
const heeled = (angle: number, height: number): Plane => ({ normal: [0, -sin(angle), cos(angle)], height });

/** Righting lever about a point at height kg: the distance across between weight and buoyancy, at a volume held. */
function lever(mesh: Mesh, volume: number, angle: number, kg: number): number {
  const height = findRoot((h) => below(mesh, heeled(angle, h)).volume - volume, -3, 3) ?? NaN;
  const [, y, z] = below(mesh, heeled(angle, height)).centroid ?? [NaN, NaN, NaN];
  return y * cos(angle) + (z - kg) * sin(angle);
}

describe('box 6 x 2 floating 0.25 deep (Derrett, Ship Stability for Masters and Mates: KB = T/2, BM = B^2/12T)', () => {
  const box = boxMesh([-3, -1, 0], [3, 1, 1]);
  const { volume, centroid, waterplane, wettedArea } = below(box, level(0.25));
  test('volume, centre, waterplane and wetted area', () => {
    expect(volume).toBeNear(3, 1e-14);
    expect(centroid?.[2]).toBeNear(0.125, 1e-14);
    expect(waterplane.area).toBeNear(12, 1e-14);
    expect(wettedArea).toBeNear(12 + 16 * 0.25, 1e-14);
  });
  test('metacentric radii 1.3333 and 12', () => {
    expect(waterplane.transverse / volume).toBeNear(1.3333, 0, 5e-5);
    expect(waterplane.transverse).toBeNear((6 * 2 ** 3) / 12, 1e-14);
    expect(waterplane.longitudinal / volume).toBeNear(12, 1e-14);
  });
  test('the lid in the plane, all under, all dry', () => {
    const full = below(box, level(1));
    expect(full.volume).toBeNear(12, 1e-14);
    expect(full.waterplane.area).toBeNear(12, 1e-14);
    expect(full.wettedArea).toBeNear(12 + 16, 1e-14);
    const under = below(box, level(2));
    expect(under.volume).toBeNear(12, 1e-14);
    expect(under.waterplane).toStrictEqual({
      area: 0,
      centroid: null,
      transverse: 0,
      longitudinal: 0,
      mixed: 0,
    });
    const dry = below(box, level(0));
    expect(dry).toStrictEqual({
      volume: 0,
      centroid: null,
      wettedArea: 0,
      waterplane: { area: 0, centroid: null, transverse: 0, longitudinal: 0, mixed: 0 },
    });
  });
  test('moments are taken about the centre of the waterplane, which moves with the box', () => {
    const moved = below(boxMesh([1, 2, 0], [7, 4, 1]), level(0.25));
    expect(moved.waterplane.transverse).toBeNear(4, 1e-13);
    expect(moved.waterplane.longitudinal).toBeNear(36, 1e-13);
    [4, 3, 0.25].forEach((want, axis) => expect(moved.waterplane.centroid?.[axis]).toBeNear(want, 1e-13));
  });
});

describe('righting levers', () => {
  const box = boxMesh([0, -1, 0], [1, 1, 1.2]);
  // Wall-sided formula GZ = sin a (GM + BM tan^2 a / 2), exact until the bilge comes out at 26.57 degrees.
  test.each([
    [5, 0.036537],
    [10, 0.074153],
    [20, 0.157611],
  ])('box B 2, T 0.5, KG 0.5 at %i degrees: %f', (angle, want) => {
    expect(lever(box, 1, (angle * PI) / 180, 0.5)).toBeNear(want, 0, 1e-6);
  });
  test('at 30 degrees, bilge out: a triangle under water, 0.257835 (closed form by clipping)', () => {
    expect(lever(box, 1, PI / 6, 0.5)).toBeNear(0.257835, 0, 1e-6);
  });
  test('flared section, bottom half 0.5, flare 25 degrees, T 0.15, KG 0.35', () => {
    const t = Math.tan((25 * PI) / 180);
    const hull = prism(1, [
      [0, 0],
      [0.5, 0],
      [0.5 + t, 1],
      [0, 1],
    ]);
    const float = below(hull, level(0.15));
    expect(float.volume).toBeNear(0.160492, 0, 6e-7);
    expect(float.centroid?.[2]).toBeNear(0.076634, 0, 6e-7);
    expect(float.waterplane.transverse / float.volume).toBeNear(0.769054, 0, 6e-7);
    expect(lever(hull, float.volume, PI / 18, 0.35)).toBeNear(0.088616, 0, 1e-6);
    expect(lever(hull, float.volume, PI / 9, 0.35)).toBeNear(0.179664, 0, 1e-6);
  });
});

test('triangular prism, apex down: KB = 2T/3, BM = B^2/6T (Derrett, same appendix)', () => {
  const wedge = prism(4, [
    [0, 0],
    [1.5, 0.75],
    [0, 0.75],
  ]);
  const { volume, centroid, waterplane } = below(wedge, level(0.5));
  expect(volume).toBeNear((4 * 2 * 0.5) / 2, 1e-13);
  expect(centroid?.[2]).toBeNear(1 / 3, 1e-13);
  expect(waterplane.transverse / volume).toBeNear(4 / 3, 1e-13);
});

test('vee section with a chine at waterline 0.25: area 0.207682 (polygon clipped by hand)', () => {
  const vee = prism(1, [
    [0, 0],
    [0.6, 0.16],
    [0.8, 0.6],
    [0, 0.6],
  ]);
  const { volume, waterplane } = below(vee, level(0.25));
  expect(volume).toBeNear(0.207682, 0, 6e-7);
  expect(waterplane.area).toBeNear(2 * 0.640909, 0, 1.2e-6);
});

describe('Wigley hull 10 x 1 x 0.625, y = (B/2) (1 - (2x/L)^2) (1 - (z/T)^2)', () => {
  const form = { length: 10, beam: 1, draught: 0.625 };
  const [coarse, fine] = [16, 32].map((n) => below(wigley(n, form), level(0)));
  // C_B = 4/9, C_WP = 2/3, KB = 5T/8, I_T = 4 L B^3 / 105, I_L = B L^3 / 30.
  test.each([
    ['volume', (4 / 9) * 6.25, (of: typeof fine) => of?.volume],
    ['waterplane area', (2 / 3) * 10, (of: typeof fine) => of?.waterplane.area],
    ['transverse moment', 40 / 105, (of: typeof fine) => of?.waterplane.transverse],
    ['longitudinal moment', 1000 / 30, (of: typeof fine) => of?.waterplane.longitudinal],
    ['depth of centre', -0.625 + 0.390625, (of: typeof fine) => of?.centroid?.[2]],
  ] as const)('%s converges with the square of the cell', (_, want, read) => {
    const one = (read(coarse) ?? NaN) - want;
    const two = (read(fine) ?? NaN) - want;
    expect(orderOf(one, two)).toBeGreaterThan(1.9);
    expect(orderOf(one, two)).toBeLessThan(2.1);
    // Extrapolated from both, it is right to the fourth power.
    expect(two - (one - two) / 3).toBeNear(0, 0, 2e-5 * Math.abs(want));
  });
});

describe('any plane', () => {
  const hull = prism(3, [
    [0, 0],
    [0.5, 0.1],
    [0.8, 0.6],
    [0, 0.7],
  ]);
  const plane = fc
    .tuple(
      fc.double({ min: -0.6, max: 0.6, noNaN: true }),
      fc.double({ min: -0.2, max: 0.2, noNaN: true }),
      fc.double({ min: 0.05, max: 0.5, noNaN: true }),
    )
    .map(([heel, trim, height]): Plane => ({
      normal: [sin(trim), cos(trim) * sin(heel), cos(trim) * cos(heel)],
      height,
    }));
  test('parts the whole in two, each with its own centre', () => {
    fc.assert(
      fc.property(plane, (water) => {
        const [x, y, z] = water.normal;
        const [under, over, all] = [
          below(hull, water),
          below(hull, { normal: [-x, -y, -z], height: -water.height }),
          below(hull, level(9)),
        ];
        expect(under.volume + over.volume).toBeNear(all.volume, 1e-12);
        expect(under.wettedArea + over.wettedArea).toBeNear(all.wettedArea, 1e-12);
        expect(under.waterplane.area).toBeNear(over.waterplane.area, 1e-11);
        for (const axis of [0, 1, 2] as const) {
          const moment = (part: typeof under): number => part.volume * (part.centroid?.[axis] ?? 0);
          expect(moment(under) + moment(over)).toBeNear(moment(all), 1e-11, 1e-12);
        }
      }),
      seeded,
    );
  });
  test('rising by a little takes on the waterplane, and its centre moves by the moments (d volume / d height)', () => {
    fc.assert(
      fc.property(plane, (water) => {
        const step = 1e-5;
        const up = below(hull, { ...water, height: water.height + step });
        const down = below(hull, { ...water, height: water.height - step });
        const here = below(hull, water);
        expect((up.volume - down.volume) / (2 * step)).toBeNear(here.waterplane.area, 1e-6);
        for (const axis of [0, 1, 2] as const) {
          const moment = (part: typeof up): number => part.volume * (part.centroid?.[axis] ?? 0);
          const rate = (moment(up) - moment(down)) / (2 * step);
          expect(rate).toBeNear(here.waterplane.area * (here.waterplane.centroid?.[axis] ?? NaN), 1e-5, 1e-7);
        }
      }),
      seeded,
    );
  });
  test('grown k times has k^2 the area, k^3 the volume and k^4 the moments', () => {
    fc.assert(
      fc.property(plane, fc.double({ min: 0.01, max: 50, noNaN: true }), (water, k) => {
        const grown = { points: hull.points.map((value) => k * value), triangles: hull.triangles };
        const [one, other] = [below(hull, water), below(grown, { ...water, height: k * water.height })];
        expect(other.volume).toBeNear(k ** 3 * one.volume, 1e-12);
        expect(other.wettedArea).toBeNear(k ** 2 * one.wettedArea, 1e-12);
        expect(other.waterplane.transverse).toBeNear(k ** 4 * one.waterplane.transverse, 1e-10);
        expect(other.waterplane.longitudinal).toBeNear(k ** 4 * one.waterplane.longitudinal, 1e-10);
      }),
      seeded,
    );
  });
});
