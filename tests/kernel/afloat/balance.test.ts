import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { buildHull, offsetsOf, starters } from '../../../src/boat';
import { balance, dot, subtract, upOf } from '../../../src/kernel';
import { orderOf } from '../near';
import { boxMesh, seeded } from '../shapes';
import { prism, wigley } from './hulls';

const { atan, cos, PI, sqrt, tan } = Math;
const degrees = (angle: number) => (angle * PI) / 180;

describe('a box 6 x 2, 0.25 deep (Derrett, Ship Stability for Masters and Mates, summary of formulae)', () => {
  const box = boxMesh([-3, -1, 0], [3, 1, 1]);
  const volume = 3;

  test('upright: draught, and metacentric heights KB + BM - KG with KG 0.4', () => {
    const at = balance(box, { volume, centre: [0, 0, 0.4] })!;
    expect(at.plane.height).toBeNear(0.25, 1e-9);
    expect([at.heel, at.trim]).toStrictEqual([0, 0]);
    expect(at.metacentric.transverse).toBeNear(1.05833, 0, 5e-6);
    expect(at.metacentric.longitudinal).toBeNear(11.725, 1e-9);
  });

  // While no corner comes out or goes under, x_B = (L^2 / 12 T) tan, z_B = T/2 + (L^2 / 24 T) tan^2.
  test.each([
    [1, 3],
    [-2.5, 0],
    [0, -7],
    [1, 8],
  ])('trimmed %f and heeled %f degrees by a weight out of the middle', (trimmed, heeled) => {
    const [t, h] = [tan(degrees(trimmed)), tan(degrees(heeled))];
    // Water stands higher by so much a metre forward, and a metre to port.
    const [ahead, aside] = [t / cos(degrees(heeled)), h];
    const [rollL, rollB] = [36 / (12 * 0.25), 4 / (12 * 0.25)];
    const centre = [
      rollL * ahead,
      rollB * aside,
      0.125 + (rollL * ahead ** 2 + rollB * aside ** 2) / 2,
    ] as const;
    // The weight stands 0.3 above it, plumb.
    const up = upOf({ heel: degrees(heeled), trim: degrees(trimmed) });
    const at = balance(box, {
      volume,
      centre: [centre[0] + 0.3 * up[0], centre[1] + 0.3 * up[1], centre[2] + 0.3 * up[2]],
    })!;
    expect(at.trim).toBeNear(degrees(trimmed), 0, 1e-9);
    expect(at.heel).toBeNear(degrees(heeled), 0, 1e-9);
    centre.forEach((value, axis) => expect(at.immersed.centroid![axis]).toBeNear(value, 0, 1e-9));
  });

  test('too heavy she sinks; of nothing there is no waterline', () => {
    expect(balance(box, { volume: 12, centre: [0, 0, 0.4] })).toBeNull();
    expect(() => balance(box, { volume: 0, centre: [0, 0, 0] })).toThrow('what weighs nothing');
  });

  test('a weight far out at one end stands her on end', () => {
    expect(
      balance(boxMesh([0, -0.05, 0], [6, 0.05, 0.1]), { volume: 0.03, centre: [9, 0, 0.05] }),
    ).toBeNull();
  });

  // Wall-sided, GZ = sin (GM + BM tan^2 / 2): she lies over where tan^2 = -2 GM / BM.
  test('top-heavy she lolls to the angle of the wall-sided formula', () => {
    const [bm, gm] = [4 / 3, -0.01];
    const at = balance(box, { volume, centre: [0, 0, 0.125 + bm - gm] })!;
    expect(Math.abs(at.heel)).toBeNear(atan(sqrt((-2 * gm) / bm)), 1e-8);
    expect(at.metacentric.transverse).toBeGreaterThan(0);
  });
});

describe('righting levers', () => {
  const lever = (mesh: Parameters<typeof balance>[0], volume: number, kg: number, heel: number) =>
    balance(mesh, { volume, centre: [4, 0, kg] }, { heel: degrees(heel) })!.lever;
  const box = boxMesh([0, -1, 0], [8, 1, 1.2]);
  test.each([
    [5, 0.036537],
    [10, 0.074153],
    [20, 0.157611],
    [30, 0.257835],
  ])('box B 2, T 0.5, KG 0.5 at %i degrees: %f (closed form; at 30 the bilge is out)', (angle, want) => {
    expect(lever(box, 8, 0.5, angle)).toBeNear(want, 0, 1e-6);
    expect(lever(box, 8, 0.5, -angle)).toBeNear(-want, 0, 1e-6);
  });
  test('flared section, bottom half 0.5, flare 25 degrees, T 0.15, KG 0.35 (polygon by its corners)', () => {
    const t = tan(degrees(25));
    const hull = prism(8, [
      [0, 0],
      [0.5, 0],
      [0.5 + t, 1],
      [0, 1],
    ]);
    expect(lever(hull, 8 * (0.15 + 0.0225 * t), 0.35, 10)).toBeNear(0.088616, 0, 1e-6);
    expect(lever(hull, 8 * (0.15 + 0.0225 * t), 0.35, 20)).toBeNear(0.179664, 0, 1e-6);
  });
});

// C_B = 4/9, KB = 5T/8, BM = 3B^2/35T, BM_L = 3L^2/40T; wall-sided above its water. DREA TC 89/308, Hally 1989.
describe('Wigley hull 10 x 1 x 0.625, KG 0.45', () => {
  const form = { length: 10, beam: 1, draught: 0.625 };
  const volume = (4 / 9) * 6.25;
  const errors = (n: number) => {
    const at = balance(wigley(n, form, 0.4), { volume, centre: [0, 0, 0.45 - 0.625] })!;
    const [gm, gmL] = [0.390625 + 0.137143 - 0.45, 0.390625 + 12 - 0.45];
    return {
      sunk: at.plane.height,
      gm: at.metacentric.transverse - gm,
      gmL: at.metacentric.longitudinal - gmL,
    };
  };
  const [coarse, fine] = [errors(24), errors(48)];
  test.each(['sunk', 'gm', 'gmL'] as const)('%s converges with the square of the cell', (of) => {
    expect(orderOf(coarse[of], fine[of])).toBeGreaterThan(1.85);
    expect(orderOf(coarse[of], fine[of])).toBeLessThan(2.15);
  });
  test('with 48 x 48 cells a side the volume is out by less than 0.1 %, GM by less than 0.5 %', () => {
    // What she sinks too deep, times the waterplane.
    expect((Math.abs(fine.sunk) * (2 / 3) * 10) / volume).toBeLessThan(0.001);
    expect(Math.abs(fine.gm) / 0.077768).toBeLessThan(0.005);
    expect(Math.abs(fine.gmL) / 11.94).toBeLessThan(0.005);
  });
});

const bodies = starters.map(({ table }) => buildHull(offsetsOf(table)).body);
const burden = fc.record({
  of: fc.nat({ max: bodies.length - 1 }),
  volume: fc.double({ min: 0.15, max: 0.5, noNaN: true }),
  centre: fc.tuple(
    fc.double({ min: 1.2, max: 2.2, noNaN: true }),
    fc.double({ min: -0.15, max: 0.15, noNaN: true }),
    fc.double({ min: 0.1, max: 0.6, noNaN: true }),
  ),
});

describe('any boat, any load', () => {
  test('pushes aside what she weighs, its centre plumb under hers, and any other attitude stands higher', () => {
    fc.assert(
      fc.property(burden, ({ of, volume, centre }) => {
        const at = balance(bodies[of]!, { volume, centre });
        if (!at) return;
        expect(at.immersed.volume).toBeNear(volume, 1e-9);
        const off = subtract(at.immersed.centroid!, centre);
        const plumb = dot(off, upOf(at));
        expect(Math.hypot(...off)).toBeNear(Math.abs(plumb), 0, 1e-9);
        const height = (held: { heel: number; trim: number }) =>
          -dot(
            subtract(balance(bodies[of]!, { volume, centre }, held)!.immersed.centroid!, centre),
            upOf(held),
          );
        for (const [heel, trim] of [
          [0.03, 0],
          [-0.03, 0],
          [0, 0.02],
          [0, -0.02],
          [0.02, 0.02],
          [0.02, -0.02],
        ] as const)
          expect(height({ heel: at.heel + heel, trim: at.trim + trim })).toBeGreaterThan(-plumb);
      }),
      { ...seeded, numRuns: 30 },
    );
  });

  test('is the same seen in a mirror', () => {
    fc.assert(
      fc.property(burden, ({ of, volume, centre: [x, y, z] }) => {
        const [one, other] = [1, -1].map((side) =>
          balance(bodies[of]!, { volume, centre: [x, side * y, z] }),
        );
        expect(other === null).toBe(one === null);
        if (!one || !other || Math.abs(y) < 0.02) return;
        expect(other.heel).toBeNear(-one.heel, 0, 1e-6);
        expect(other.trim).toBeNear(one.trim, 0, 1e-6);
      }),
      { ...seeded, numRuns: 20 },
    );
  });

  // Work done in heeling her is what her weight is raised over the water's push; Moseley, 1850, as in Rawson and Tupper.
  test('the area under the curve of levers is the rise of her weight over the centre of the water', () => {
    for (const body of bodies) {
      const centre = [1.8, 0, 0.3] as const;
      const curve = Array.from({ length: 81 }, (_, i) =>
        balance(body, { volume: 0.3, centre }, { heel: degrees(i / 2) })!,
      );
      expect(curve).toHaveLength(81);
      const over = ({ immersed, ...at }: (typeof curve)[number]) =>
        -dot(subtract(immersed.centroid!, centre), upOf(at));
      // Simpson's rule; heel turns her about her own axis, which the trim tilts.
      const area = curve.reduce((sum, { lever, trim }, i) => {
        const weight = i === 0 || i === 80 ? 1 : i % 2 === 1 ? 4 : 2;
        return sum + (weight * lever * cos(trim) * degrees(0.5)) / 3;
      }, 0);
      expect(over(curve[80]!) - over(curve[0]!)).toBeNear(area, 1e-5);
    }
  });
});
