import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cross, dot, norm, type Vec3 } from '../../../src/kernel';
import {
  atHeel,
  axesOfLook,
  heelInWords,
  type Viewpoint,
  lookFrom,
  namedLooks,
  nearer,
  seen,
  seenFrom,
  threeQuarter,
  turned,
  unseen,
} from '../../../src/page/hull3d/look';
import '../../kernel/near';

const named = (words: string): Viewpoint => namedLooks.find((one) => one.words === words)!.look;
/** A point of the port bow: forward, to port, up. */
const point: Vec3 = [3, 1, 0.5];
const angle = fc.double({ min: -7, max: 7, noNaN: true });

test('a hull that lies over to port has her port side down, and her mast would point to the left from astern', () => {
  const over = seen(atHeel(axesOfLook(named('From astern')), Math.PI / 2), point);
  for (const [i, value] of over.entries()) expect(value).toBeNear([-0.5, -1, -3][i]!, 1e-12, 1e-12);
  const down = seen(atHeel(axesOfLook(named('From astern')), Math.PI), point);
  for (const [i, value] of down.entries()) expect(value).toBeNear([1, -0.5, -3][i]!, 1e-12, 1e-12);
  expect([0.002, Math.PI / 6, -Math.PI / 2].map(heelInWords)).toStrictEqual([
    '',
    ', lying 30° over to port',
    ', lying 90° over to starboard',
  ]);
});

describe('the usual sides', () => {
  test.each([
    // Forward is to the left from port, to the right from starboard, towards the eye from ahead.
    ['From port', [-3, 0.5, 1]],
    ['From starboard', [3, 0.5, -1]],
    ['From ahead', [1, 0.5, 3]],
    ['From astern', [-1, 0.5, -3]],
    // As a half-breadth plan: bow to the right, port above.
    ['From above', [3, 1, 0.5]],
  ] as const)('%s', (words, want) => {
    const found = seen(axesOfLook(named(words)), point);
    for (const [i, value] of found.entries()) expect(value).toBeNear(want[i]!, 1e-12, 1e-12);
  });
  test.each([
    ['Three-quarter', 'seen from the starboard bow, 24° above level'],
    ['From port', 'seen from port, level'],
    ['From astern', 'seen from astern, level'],
    ['From above', 'seen from straight above'],
  ])('%s in words', (words, says) => {
    expect(seenFrom(named(words))).toBe(says);
  });
});

test('axes are square to each other, of unit length and right-handed, from anywhere', () => {
  fc.assert(
    fc.property(angle, angle, (turn, lift) => {
      const { right, up, toward } = axesOfLook({ turn, lift, near: 1 });
      for (const axis of [right, up, toward]) expect(norm(axis)).toBeNear(1, 1e-12);
      expect(dot(cross(right, up), toward)).toBeNear(1, 1e-12);
      const back = unseen({ right, up, toward }, seen({ right, up, toward }, point));
      for (const [i, value] of back.entries()) expect(value).toBeNear(point[i]!, 1e-12, 1e-12);
    }),
  );
});

test('an eye in the direction of a look has that look', () => {
  const lift = fc.double({ min: -1.57, max: 1.57, noNaN: true });
  fc.assert(
    fc.property(fc.double({ min: -3.14, max: 3.14, noNaN: true }), lift, (turn, up) => {
      const found = lookFrom(axesOfLook({ turn, lift: up, near: 1 }).toward, 2);
      expect(found.turn).toBeNear(turn, 1e-9, 1e-9);
      expect(found.lift).toBeNear(up, 1e-9, 1e-9);
      expect(found.near).toBe(2);
    }),
  );
});

describe('turning by hand', () => {
  test('to the right brings what is left of the eye before it: from starboard the stern', () => {
    expect(seenFrom(turned(named('From starboard'), Math.PI / 2, 0))).toBe('seen from astern, level');
  });
  test('downward brings the inside of the boat up, and stops straight above and straight below', () => {
    expect(seenFrom(turned(named('From port'), 0, Math.PI / 6))).toBe('seen from port, 30° above level');
    expect(turned(threeQuarter, 0, 9).lift).toBe(Math.PI / 2);
    expect(turned(threeQuarter, 0, -9).lift).toBe(-Math.PI / 2);
    expect(seenFrom(turned(threeQuarter, 0, -9))).toBe('seen from straight below');
  });
  test('a whole turn comes back, however often', () => {
    const back = Array.from({ length: 36 * 3 }).reduce<Viewpoint>(
      (from) => turned(from, Math.PI / 18, 0),
      threeQuarter,
    );
    expect(back.turn).toBeNear(threeQuarter.turn, 1e-9);
    expect(seenFrom(back)).toBe(seenFrom(threeQuarter));
  });
  test('nearness has an end both ways, and is told', () => {
    expect(nearer(threeQuarter, 1e9).near).toBe(8);
    expect(nearer(threeQuarter, 1e-9).near).toBe(0.5);
    expect(seenFrom(nearer(threeQuarter, 2))).toMatch(/, 2\.0 times as large$/);
  });
});
