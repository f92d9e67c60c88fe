import { describe, expect, test } from 'vitest';
import { buildHull, type Hull, offsetsOf, starter } from '../../../src/boat';
import type { Vec3 } from '../../../src/kernel';
import {
  box,
  coneSided,
  degrees,
  hullThrough,
  planeSided,
  radians,
  roundPrism,
  veePrism,
  wedge,
} from '../shapes';

/** The table is B1 to B5, B14, B15, L12 of the trade's plane geometry: bevels and corners from flare, plan and profile. */
describe('bevels', () => {
  const frameOf = (hull: Hull) => hull.stations[2]!;

  test('flare 20, plan 10: 9.408 deg', () => {
    const hull = hullThrough(
      planeSided({ flare: radians(20), plan: Math.tan(radians(10)), profile: 0, rake: 0, height: 0.4 }),
    );
    expect(degrees(frameOf(hull).bevel('chine', 'side'))).toBeCloseTo(9.408, 3);
    expect(degrees(frameOf(hull).bevel('sheer', 'side'))).toBeCloseTo(9.408, 3);
    expect(degrees(frameOf(hull).flare('side'))).toBeCloseTo(20, 9);
  });

  test('the same with the profile rising 3 deg: 8.406 deg', () => {
    const hull = hullThrough(
      planeSided({
        flare: radians(20),
        plan: Math.tan(radians(10)),
        profile: Math.tan(radians(3)),
        rake: 0,
        height: 0.4,
      }),
    );
    expect(degrees(frameOf(hull).bevel('sheer', 'side'))).toBeCloseTo(8.406, 3);
  });

  test('closing in forward the bevel is negative, and no flare makes it the plan angle', () => {
    const hull = hullThrough(
      planeSided({ flare: 0, plan: -Math.tan(radians(12)), profile: 0, rake: 0, height: 0.4 }),
    );
    expect(degrees(frameOf(hull).bevel('sheer', 'side'))).toBeCloseTo(-12, 6);
  });

  test('a bottom that rises forward closes in by its slope', () => {
    const hull = hullThrough(
      planeSided({ flare: 0.3, plan: 0, profile: Math.tan(radians(5)), rake: 0, height: 0.4 }),
    );
    expect(degrees(frameOf(hull).bevel('keel', 'bottom'))).toBeCloseTo(-5, 6);
    expect(degrees(frameOf(hull).bevel('chine', 'bottom'))).toBeCloseTo(-5, 6);
  });

  test('the formula of the trade holds with the skin at the edge, on every frame of a starter', () => {
    for (const id of ['ferry-dory', 'vee-launch']) {
      const hull = buildHull(offsetsOf(starter(id)!));
      for (const frame of hull.frames) {
        for (const panel of hull.panels) {
          for (const edge of [panel.inner, panel.outer]) {
            const flare = frame.skinFlare(edge.name, panel.name);
            const { plan, profile } = edge.slopes[frame.index]!;
            const bevel = Math.atan(plan * Math.cos(flare) - profile * Math.sin(flare));
            expect(frame.bevel(edge.name, panel.name)).toBeCloseTo(bevel, 12);
          }
        }
      }
    }
  });
});

describe('side and raked transom', () => {
  // Alpha of the side's plane, rake, plan angle (closing in forward +), dihedral, edge on the transom's face.
  test.each([
    [15, 12, 0, 93.085, 14.687],
    [15, 12, 8, 85.545, 16.378],
    [15, 12, -8, 100.679, 13.249],
    [20, 13, 10, 85.293, 21.79],
    [0, 12, 10, 80.221, 2.1],
  ])('lean %d, rake %d, plan %d: dihedral %f, edge %f', (alpha, rake, psi, dihedral, onTransom) => {
    const flare = Math.atan(Math.tan(radians(alpha)) / Math.cos(radians(psi)));
    const hull = hullThrough(
      planeSided({ flare, plan: -Math.tan(radians(psi)), profile: 0, rake: radians(rake), height: 0.38 }),
    );
    const transom = hull.aft;
    expect(degrees(transom.bevel('chine', 'side')) + 90).toBeCloseTo(dihedral, 3);
    const [chine, sheer] = transom.outline.slice(1);
    expect(degrees(Math.atan2(sheer![0] - chine![0], sheer![1] - chine![1]))).toBeCloseTo(onTransom, 3);
    const { tilt, plan } = transom.tilt('side');
    expect(degrees(tilt)).toBeCloseTo(alpha, 6);
    expect(degrees(plan)).toBeCloseTo(psi, 6);
    expect(degrees(transom.flare('side'))).toBeCloseTo(degrees(flare), 6);
  });

  test('expanded: 380 mm high at a rake of 13 deg is 389.996 mm up the slope', () => {
    const hull = hullThrough(
      planeSided({ flare: 0.3, plan: 0, profile: 0, rake: radians(13), height: 0.38 }),
    );
    expect(hull.aft.outline.at(-1)![1] * 1000).toBeCloseTo(389.996, 2);
    expect(degrees(-hull.aft.plane.lean)).toBeCloseTo(13, 9);
    expect(hull.aft.plane.miss).toBeLessThan(1e-12);
  });

  test('the true area is that seen along the boat over the cosine of the rake', () => {
    const hull = hullThrough(
      planeSided({ flare: 0.3, plan: 0, profile: 0, rake: radians(13), height: 0.38 }),
    );
    const [, [chine], [sheer]] = hull.aft.section as [unknown, [number], [number]];
    expect(hull.aft.area).toBeCloseTo(((chine + sheer) * 0.38) / Math.cos(radians(13)), 9);
  });

  test('corners out of one plane are told', () => {
    const hull = buildHull(offsetsOf(starter('vee-launch')!));
    // Keel to chine leans 20 in 120, chine to sheer 100 in 570: half a millimetre apart from one line.
    expect(hull.aft.plane.miss).toBeGreaterThan(0.0003);
    expect(hull.aft.plane.miss).toBeLessThan(0.001);
  });
});

describe('angle inside the hull', () => {
  test('flare 25 and deadrise 15 make 130 deg', () => {
    const hull = hullThrough(veePrism(3, 0.6, radians(15), 0.4, radians(25)));
    for (const station of hull.stations) {
      expect(degrees(station.angle('chine'))).toBeCloseTo(130, 6);
      expect(degrees(station.angle('keel'))).toBeCloseTo(150, 6);
      expect(degrees(station.deadrise('bottom'))).toBeCloseTo(15, 6);
      expect(degrees(station.skinFlare('chine', 'bottom'))).toBeCloseTo(75, 6);
    }
  });

  test('a box is square, its keel straight across', () => {
    const hull = hullThrough(box(3, 1, 0.4));
    expect(degrees(hull.frames[0]!.angle('chine'))).toBeCloseTo(90, 9);
    // The inverse cosine loses half its figures at a straight angle.
    expect(degrees(hull.frames[0]!.angle('keel'))).toBeCloseTo(180, 5);
  });

  test('round a half cylinder each chine turns by half the two arcs beside it', () => {
    const hull = hullThrough(roundPrism(2));
    const angles = [0, 30, 55, 75, 95];
    const chord = (i: number) => (angles[i]! + angles[i + 1]!) / 2;
    hull.edges.slice(1, -1).forEach((edge, i) => {
      expect(degrees(hull.frames[0]!.angle(edge.name))).toBeCloseTo(180 - (chord(i + 1) - chord(i)), 6);
    });
  });

  test('nothing lies above the sheer', () => {
    expect(() => hullThrough(box(3, 1, 0.4)).frames[0]!.angle('sheer')).toThrow(
      'no panel lies above the sheer',
    );
  });
});

describe('crown', () => {
  test('flat panels have none', () => {
    const hull = hullThrough(wedge(4, 1.2, 0.5));
    for (const frame of hull.frames) {
      for (const { name } of hull.panels) expect(Math.abs(frame.crown(name))).toBeLessThan(1e-9);
    }
  });

  test('a cone stands outside the straight frame by the bow of its hyperbola', () => {
    const [r1, r2, height] = [6, 6.35, 0.6];
    const hull = hullThrough(coneSided({ r1, r2, height, half: 0.42, keelOffset: 5, stations: 17 }));
    const frame = hull.frames.at(-1)!;
    const x = frame.x;
    // In the plane x the cone is y = sqrt(r(z)^2 - x^2); its greatest distance from the chord, by search.
    const y = (z: number) => Math.sqrt((r1 + ((r2 - r1) * z) / height) ** 2 - x * x);
    const slope = (y(height) - y(0)) / height;
    let crown = 0;
    for (let z = 0; z <= height; z += height / 1000) {
      crown = Math.max(crown, (y(z) - y(0) - slope * z) / Math.hypot(1, slope));
    }
    // Read at rulings, of which few cross a plane here: up to 0.02 mm short.
    expect(crown).toBeGreaterThan(0.0002);
    expect(Math.abs(frame.crown('side') - crown)).toBeLessThan(0.00002);
  });

  test('is asked of frames only', () => {
    expect(() => hullThrough(wedge(4, 1.2, 0.5)).aft.crown('side')).toThrow(
      'does not reach across station 0',
    );
  });
});

describe('stem', () => {
  test('a wedge closes at its half angle', () => {
    const hull = hullThrough(wedge(4, 1.2, 0.5));
    expect(hull.fore.bevel('sheer', 'side')).toBeCloseTo(Math.atan(0.6 / 4), 9);
    expect(hull.fore.bevel('chine', 'side')).toBeCloseTo(Math.atan(0.6 / 4), 9);
  });

  test('where keel and chine run together the bottom keeps a plane', () => {
    const hull = buildHull(offsetsOf(starter('ferry-dory')!));
    // The bottom is flat across, so its normal at the stem is square to the keel's own slope there.
    const { profile } = hull.edge('keel').slopes.at(-1)!;
    const square = [profile, 0, -1].map((step) => step / Math.hypot(profile, 1));
    for (const edge of ['keel', 'chine']) {
      const normal = hull.fore.normal(edge, 'bottom');
      normal.forEach((step, axis) => expect(Math.abs(step - square[axis]!)).toBeLessThan(0.002));
    }
  });
});

describe('which way a frame stands', () => {
  test('abaft the widest station aft of its line, forward of it forward', () => {
    const hull = buildHull(offsetsOf(starter('ferry-dory')!));
    expect(hull.widest.label).toBe('frame 3');
    expect(hull.frames.map(({ stands }) => stands)).toStrictEqual([
      'aft',
      'aft',
      'forward',
      'forward',
      'forward',
    ]);
  });

  test('the widest frame stands where its bevel is cut off, not added', () => {
    const half = [0.4, 0.5, 0.52, 0.4, 0];
    const line = (z: number) => half.map((y, i): Vec3 => [i, y, z]);
    const hull = hullThrough({ keel: half.map((_, i): Vec3 => [i, 0, 0]), chine: line(0), sheer: line(0.5) });
    expect(hull.widest.index).toBe(2);
    expect(hull.widest.stands).toBe(hull.edge('sheer').slopes[2]!.plan > 0 ? 'aft' : 'forward');
  });
});

describe('girth and section', () => {
  test('girth is the straight distance between corners', () => {
    const hull = hullThrough(veePrism(3, 0.6, radians(15), 0.4, radians(25)));
    expect(hull.frames[0]!.girth('bottom')).toBeCloseTo(0.6 / Math.cos(radians(15)), 12);
    expect(hull.frames[0]!.girth('side')).toBeCloseTo(0.4 / Math.cos(radians(25)), 12);
    expect(hull.frames[0]!.section[1]).toStrictEqual([0.6, 0.6 * Math.tan(radians(15))]);
  });
});
