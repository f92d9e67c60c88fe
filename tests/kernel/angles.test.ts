import { expect, test } from 'vitest';
import { dihedral, flareOfNormal } from '../../src/kernel';
import type { Vec3 } from '../../src/kernel';
import './near';

const degrees = 180 / Math.PI;
const rad = (angle: number): number => angle / degrees;
const { sin, cos } = Math;

/** The side surface: flare from vertical and its plan angle, closing in going forward +. */
const side = (flare: number, plan: number): Vec3 => [
  sin(plan) * cos(flare),
  cos(plan) * cos(flare),
  -sin(flare),
];

test('flare is read back from a normal', () => {
  expect(flareOfNormal(side(rad(25), 0)) * degrees).toBeNear(25, 1e-12);
  expect(flareOfNormal([0.3, 1, 0]) * degrees).toBeNear(0, 0, 1e-12);
});

test('flare 25 and deadrise 15 make a chine of 130 degrees inside (sum of angles)', () => {
  expect(dihedral(side(rad(25), 0), [0, sin(rad(15)), -cos(rad(15))]) * degrees).toBeNear(130, 1e-12);
  expect(dihedral([0, 1, 0], [0, 2, 0])).toBeNear(Math.PI, 1e-12);
});
