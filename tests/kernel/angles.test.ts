import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  bevelOfNormal,
  bevelOfSlopes,
  cross,
  deadriseOfNormal,
  dihedral,
  dot,
  flareOfNormal,
  hopper,
  transomCorner,
  unit,
} from '../../src/kernel';
import type { Vec3 } from '../../src/kernel';
import './near';
import { seeded } from './shapes';

const degrees = 180 / Math.PI;
const rad = (angle: number): number => angle / degrees;
const { sin, cos, tan } = Math;

/** The side surface: flare from vertical and its plan angle, closing in going forward +. */
const side = (flare: number, plan: number): Vec3 => [
  sin(plan) * cos(flare),
  cos(plan) * cos(flare),
  -sin(flare),
];

describe('bevel', () => {
  // Plane geometry; the numbers were worked out apart, to three decimals.
  test.each([
    [20, tan(rad(10)), 0, 9.408],
    [20, tan(rad(10)), tan(rad(3)), 8.406],
    [0, tan(rad(12)), 0, 12],
    [25, 0.15, 0.05, 6.55],
  ])('flare %f, plan slope %f, profile slope %f: %f degrees', (flare, p, q, want) => {
    expect(bevelOfSlopes(rad(flare), p, q) * degrees).toBeNear(want, 0, 6e-4);
  });
  test('from slopes is that from the normal of the surface they make', () => {
    const angle = fc.double({ min: -0.6, max: 0.6, noNaN: true });
    fc.assert(
      fc.property(angle, angle, angle, (flare, p, q) => {
        // Along the line (1, p, q), up the section (0, sin f, cos f).
        const normal = cross([1, p, q], [0, sin(flare), cos(flare)]);
        expect(bevelOfNormal(normal)).toBeNear(Math.abs(bevelOfSlopes(flare, p, q)), 1e-9, 1e-12);
      }),
      seeded,
    );
  });
});

test('flare and deadrise are read back from a normal', () => {
  expect(flareOfNormal(side(rad(25), 0)) * degrees).toBeNear(25, 1e-12);
  expect(flareOfNormal([0.3, 1, 0]) * degrees).toBeNear(0, 0, 1e-12);
  expect(deadriseOfNormal([0, sin(rad(15)), -cos(rad(15))]) * degrees).toBeNear(15, 1e-12);
  expect(deadriseOfNormal([0.1, 0, -1])).toBeNear(0, 0, 1e-12);
});

test('flare 25 and deadrise 15 make a chine of 130 degrees inside (sum of angles)', () => {
  expect(dihedral(side(rad(25), 0), [0, sin(rad(15)), -cos(rad(15))]) * degrees).toBeNear(130, 1e-12);
  expect(dihedral([0, 1, 0], [0, 2, 0])).toBeNear(Math.PI, 1e-12);
});

describe('side and raked transom', () => {
  // Worked out apart from the two planes, to three decimals.
  test.each([
    [15, 12, 0, 93.085, 14.687, 101.602],
    [15, 12, 8, 85.545, 16.378, 103.696],
    [15, 12, -8, 100.679, 13.249, 99.701],
    [20, 13, 10, 85.293, 21.79, 105.674],
    [0, 12, 10, 80.221, 2.1, 102.18],
  ])('flare %i, rake %i, plan %i', (flare, rake, plan, inside, onTransom, onSide) => {
    const got = transomCorner(rad(flare), rad(rake), rad(plan));
    expect(got.dihedral * degrees).toBeNear(inside, 0, 6e-4);
    expect(got.edgeBevel * degrees).toBeNear(inside - 90, 0, 6e-4);
    expect(got.onTransom * degrees).toBeNear(onTransom, 0, 6e-4);
    expect(got.onSide * degrees).toBeNear(onSide, 0, 6e-4);
    expect(got.buttTilt * degrees).toBeNear(Math.abs(inside - 90), 0, 6e-4);
    expect(got.mitreTilt * degrees).toBeNear(90 - inside / 2, 0, 6e-4);
  });
  test('both angles are those of the line where the two planes meet', () => {
    const angle = fc.double({ min: -0.5, max: 0.5, noNaN: true });
    fc.assert(
      fc.property(angle, angle, angle, (flare, rake, plan) => {
        const got = transomCorner(flare, rake, plan);
        const line = unit(cross(side(flare, plan), [-cos(rake), 0, -sin(rake)]));
        const up = line[2] < 0 ? line.map((value) => -value) : line;
        const [x = 0, y = 0, z = 0] = up;
        // Up the face of the transom, and forward on the level along the side.
        expect(got.onTransom).toBeNear(Math.atan2(y, dot([x, y, z], [-sin(rake), 0, cos(rake)])), 1e-9, 1e-9);
        expect(got.onSide).toBeNear(Math.acos(dot([x, y, z], [cos(plan), -sin(plan), 0])), 1e-9, 1e-9);
      }),
      seeded,
    );
  });
  test('upright and square they are all square', () => {
    const got = transomCorner(0, 0, 0);
    for (const value of [got.edgeBevel, got.onTransom, got.buttTilt]) expect(value).toBeNear(0, 0, 1e-12);
    expect(got.onSide * degrees).toBeNear(90, 1e-12);
    expect(got.mitreTilt * degrees).toBeNear(45, 1e-12);
  });
});

describe('hopper, against the chart printed in manuals of bench saws ("Compound-angle settings for popular structures")', () => {
  test.each([
    [4, 0, 45, 0],
    [4, 5, 44.89, 3.53],
    [4, 15, 44.01, 10.55],
    [4, 30, 40.89, 20.7],
    [4, 45, 35.26, 30],
    [4, 60, 26.57, 37.76],
    [4, 75, 14.51, 43.08],
    [4, 90, 0, 45],
    [5, 10, 35.58, 5.86],
    [6, 45, 22.21, 20.7],
    [8, 25, 20.58, 9.31],
  ])('%i sides at %i degrees', (sides, pitch, mitre, tilt) => {
    const got = hopper(rad(pitch), sides);
    // Printed to two decimals.
    expect(got.mitre * degrees).toBeNear(mitre, 0, 0.0065);
    expect(got.tilt * degrees).toBeNear(tilt, 0, 0.0065);
  });
  test('four butted sides at 75 degrees tilt the blade by 3.841 (closed form); other boxes have no such cut', () => {
    expect((hopper(rad(75), 4).buttedTilt ?? NaN) * degrees).toBeNear(3.841, 0, 6e-4);
    expect(hopper(rad(75), 5).buttedTilt).toBeNull();
    expect(() => hopper(1, 2)).toThrow('at least 3 sides; got 2');
  });
});
