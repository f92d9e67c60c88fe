import { describe, expect, test } from 'vitest';
import {
  breadthAt,
  chineLogs,
  frames,
  gussets,
  keelson,
  skin,
  stems,
  thwarts,
  transom,
} from '../../../src/boat';
import type { Vec3 } from '../../../src/kernel';
import { box, hullThrough, planeSided, radians, veePrism, wedge, near } from '../shapes';

test('a box: lengths, pieces and middles', () => {
  const hull = hullThrough(box(4, 1.2, 0.5));
  expect(keelson(hull)).toMatchObject({
    pieces: 1,
    longest: near(4, 12),
    total: near(4, 12),
  });
  expect(keelson(hull).centre).toStrictEqual([near(2, 12), 0, 0]);
  expect(chineLogs(hull)).toMatchObject({ pieces: 2, total: near(8, 12) });
  // Three frames: one bottom of 1.2 m and two sides of 0.5 m each.
  expect(frames(hull)).toMatchObject({ pieces: 9, longest: 1.2, total: near(3 * 2.2, 12) });
  expect(frames(hull).centre[2]).toBeCloseTo((2 * 0.5 * 0.25) / 2.2, 12);
  expect(skin(hull, 'side')).toMatchObject({ pieces: 2, area: near(4, 9) });
  expect(skin(hull, 'side').centre).toStrictEqual([near(2, 9), 0, near(0.25, 9)]);
  expect(stems(hull)).toMatchObject({ pieces: 0, total: 0 });
});

test('two edges have no chine logs and no gussets', () => {
  const { keel, sheer } = veePrism(3, 0.6, 0.2, 0.4, 0.3);
  const hull = hullThrough({ keel: keel!, sheer: sheer! });
  expect(chineLogs(hull)).toMatchObject({ pieces: 0, total: 0 });
  expect(gussets(hull, 0.15)).toMatchObject({ pieces: 0, area: 0 });
});

describe('transom', () => {
  test('centre of a trapezium, on its slope', () => {
    const rake = radians(13);
    const hull = hullThrough(planeSided({ flare: radians(20), plan: 0, profile: 0, rake, height: 0.5 }));
    const [low, high] = [1, 1 + 0.5 * Math.tan(radians(20))];
    const z = (0.5 * (low + 2 * high)) / (3 * (low + high));
    const part = transom(hull, 'transom');
    expect(part.area).toBeCloseTo(((low + high) * 0.5) / Math.cos(rake), 12);
    expect(part.centre[2]).toBeCloseTo(z, 12);
    expect(part.centre[0]).toBeCloseTo(-z * Math.tan(rake), 12);
  });

  test('of a triangle, two thirds up', () => {
    const keel = [0, 1, 2].map((x): Vec3 => [x, 0, 0]);
    const hull = hullThrough({ keel, sheer: keel.map(([x]): Vec3 => [x, 0.6, 0.9]) });
    expect(transom(hull, 'transom').centre[2]).toBeCloseTo(0.6, 12);
    expect(transom(hull, 'transom').area).toBeCloseTo(0.54, 12);
  });

  test('none where the bow is a stem', () => {
    expect(() => transom(hullThrough(wedge(4, 1, 0.5)), 'bow transom')).toThrow(
      'this hull has no bow transom',
    );
  });
});

describe('breadth of a section at a height', () => {
  const section = [
    [0, 0.1],
    [0.5, 0.2],
    [0.7, 0.6],
  ] as const;
  test('between and at the corners', () => {
    expect(breadthAt(section, 0.1)).toBeCloseTo(0, 12);
    expect(breadthAt(section, 0.15)).toBeCloseTo(0.25, 12);
    expect(breadthAt(section, 0.2)).toBeCloseTo(0.5, 12);
    expect(breadthAt(section, 0.5)).toBeCloseTo(0.65, 12);
    expect(breadthAt(section, 0.6)).toBeCloseTo(0.7, 12);
  });
  test('nothing below the keel or above the sheer', () => {
    expect(breadthAt(section, 0.05)).toBeNull();
    expect(breadthAt(section, 0.61)).toBeNull();
  });
  test('on a flat bottom', () => {
    expect(
      breadthAt(
        [
          [0, 0],
          [0.5, 0],
          [0.6, 0.4],
        ],
        0,
      ),
    ).toBeCloseTo(0.5, 12);
  });
});

test('thwarts: as many as asked, as long as the section is broad', () => {
  const hull = hullThrough(veePrism(3, 0.6, radians(15), 0.4, radians(25)));
  const height = 0.3;
  const half = 0.6 + (height - 0.6 * Math.tan(radians(15))) * Math.tan(radians(25));
  expect(thwarts(hull, 3, height)).toMatchObject({ pieces: 3, longest: near(2 * half, 12) });
  expect(thwarts(hull, 0, height)).toMatchObject({ pieces: 0, total: 0 });
});
