import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { allHappen, anyHappens, layersOf, ownStrains, stackOf } from '../../src/kernel/layers';

test('what is thinner than a tenth of a millimetre is no layer', () => {
  expect(layersOf([0.006, 0, 0.00009, 0.0001])).toStrictEqual([0.006, 0.0001]);
});

test('one layer is no stack, and is told so', () => {
  expect(stackOf(2)).toBe(2);
  expect(() => stackOf(1)).toThrow('two layers or more');
});

describe('the stretch of each layer on its own radius', () => {
  test('of 10, 20 and 10 mm round 500 mm: middles at 485, 500 and 515', () => {
    const found = ownStrains(0.5, [0.01, 0.02, 0.01]);
    [10 / 970, 20 / 1000, 10 / 1030].forEach((expected, i) => expect(found[i]).toBeCloseTo(expected, 12));
  });

  test('is none where there is no layer, and moves no other', () => {
    expect(ownStrains(0.5, [0.01, 0, 0.01])).toStrictEqual([
      ownStrains(0.5, [0.01, 0.01])[0],
      0,
      ownStrains(0.5, [0.01, 0.01])[1],
    ]);
  });

  test('falls from the hollow side outward for layers alike, and never passes 1', () => {
    const length = fc.double({ min: 1e-3, max: 0.3, noNaN: true });
    fc.assert(
      fc.property(length, length, fc.integer({ min: 2, max: 12 }), (radius, ply, layers) => {
        const found = ownStrains(
          radius,
          Array.from({ length: layers }, () => ply),
        );
        expect(Math.max(...found)).toBeLessThanOrEqual(1);
        for (let i = 1; i < layers; i += 1) expect(found[i]).toBeLessThanOrEqual(found[i - 1]!);
      }),
      { seed: 5 },
    );
  });
});

describe('chances of several layers', () => {
  test('of one in two, three times: 7 in 8 that one comes, 1 in 8 that all do', () => {
    expect(anyHappens([0.5, 0.5, 0.5])).toBeCloseTo(7 / 8, 15);
    expect(allHappen([0.5, 0.5, 0.5])).toBe(1 / 8);
  });

  test('that are rare add up, to the last digits', () => {
    expect(anyHappens([1e-20, 2e-20]) / 3e-20).toBeCloseTo(1, 12);
  });

  test('of what is certain and of nothing', () => {
    expect(anyHappens([1, 0.2])).toBe(1);
    expect(anyHappens([0, 0])).toBeCloseTo(0, 15);
    expect(allHappen([])).toBe(1);
  });
});
