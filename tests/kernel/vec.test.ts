import { expect, test } from 'vitest';
import {
  add,
  between,
  between2,
  cross,
  distance,
  distance2,
  dot,
  norm,
  scale,
  subtract,
  unit,
} from '../../src/kernel';

test('sums and products of vectors', () => {
  expect(add([1, 2, 3], [4, 6, 8])).toStrictEqual([5, 8, 11]);
  expect(subtract([1, 2, 3], [4, 6, 8])).toStrictEqual([-3, -4, -5]);
  expect(scale([1, 2, 3], 2)).toStrictEqual([2, 4, 6]);
  expect(dot([1, 2, 3], [4, -5, 6])).toBe(12);
  expect(cross([1, 0, 0], [0, 1, 0])).toStrictEqual([0, 0, 1]);
  expect(cross([1, 2, 3], [4, 5, 6])).toStrictEqual([-3, 6, -3]);
});

test('lengths and directions', () => {
  expect(norm([2, 3, 6])).toBe(7);
  expect(distance([1, 1, 1], [3, 4, 7])).toBe(7);
  expect(distance2([1, 1], [4, 5])).toBe(5);
  expect(unit([0, 3, 4])).toStrictEqual([0, 0.6, 0.8]);
  expect(() => unit([0, 0, 0])).toThrow('no length has no direction');
});

test('places between two points', () => {
  expect(between([0, 0, 0], [4, 8, 2], 0.25)).toStrictEqual([1, 2, 0.5]);
  expect(between2([1, 1], [3, 5], 0.5)).toStrictEqual([2, 3]);
});
