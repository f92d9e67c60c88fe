import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { plainShown, type Shown } from '../../src/measure';
import { bits, bitShelf, drillFor, letterDrills, numberDrills } from '../../src/trade/drills';
import { screwSize, shankPlay } from '../../src/trade/screws';

const INCH = 0.0254;
const inches: Shown = { ...plainShown, length: 'feet' };
const called = (metres: number, side: 'below' | 'above', shown: Shown) => drillFor(metres, side, shown)?.text;

describe('the drills of the tables', () => {
  // Remembered from ASME B94.11M, each typed a second time where a shop chart pairs it with a neighbour.
  test.each([
    [1, 0.228],
    [2, 0.221],
    [7, 0.201],
    [10, 0.1935],
    [14, 0.182],
    [18, 0.1695],
    [21, 0.159],
    [22, 0.157],
    [25, 0.1495],
    [27, 0.144],
    [29, 0.136],
    [30, 0.1285],
    [36, 0.1065],
    [43, 0.089],
    [47, 0.0785],
    [50, 0.07],
    [54, 0.055],
    [60, 0.04],
  ])('No. %i is %f in', (number, size) => {
    expect(numberDrills[number - 1]).toBe(size);
  });

  test('sixty numbers fall, twenty-six letters rise from where the numbers end', () => {
    expect(numberDrills).toHaveLength(60);
    expect(letterDrills).toHaveLength(26);
    expect([...numberDrills].sort((a, b) => b - a)).toEqual(numberDrills);
    expect([...letterDrills].sort((a, b) => a - b)).toEqual(letterDrills);
    expect(letterDrills[0]).toBeGreaterThan(numberDrills[0]!);
    expect([letterDrills[3], letterDrills[5], letterDrills[25]]).toEqual([0.246, 0.257, 0.413]);
  });
});

describe('the drill for a hole', () => {
  test('a pilot of 0.7 of the root of a No. 6 screw, 2.009 mm: the drill below, in either system', () => {
    const pilot = 0.7 * screwSize(6, 'root');
    expect(called(pilot, 'below', plainShown)).toBe('2.0 mm');
    expect(called(pilot, 'below', inches)).toBe('5/64 in');
  });

  test('where the 64ths are far off, a number drill: No. 8, 0.0917 in, lies between 5/64 and 3/32', () => {
    expect(called(0.7 * screwSize(8, 'root'), 'below', inches)).toBe('No. 43 drill');
  });

  // The column "nearest size in fractions of an inch" of a plan seller's printed wood screw chart, and its
  // column of drill gauges for No. 10, whose 3/16 in is thinner than the shank.
  test.each([
    [6, '9/64 in'],
    [7, '5/32 in'],
    [8, '11/64 in'],
    [9, '3/16 in'],
    [10, 'No. 10 drill'],
    [12, '7/32 in'],
    [14, '1/4 in'],
  ])('the shank of a No. %i screw takes the drill that a printed chart gives, %s', (gauge, drill) => {
    expect(called(screwSize(gauge, 'diameter') + shankPlay, 'above', inches)).toBe(drill);
  });

  test('what is sold exactly is taken exactly', () => {
    expect(called(0.0023, 'below', plainShown)).toBe('2.3 mm');
    expect(called(0.0023, 'above', plainShown)).toBe('2.3 mm');
    expect(called((5 / 64) * INCH, 'below', inches)).toBe('5/64 in');
    expect(called((5 / 64) * INCH, 'above', inches)).toBe('5/64 in');
  });

  test('is never on the wrong side, and near', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.0012, max: 0.0125, noNaN: true }),
        fc.constantFrom('below' as const, 'above' as const),
        fc.constantFrom(plainShown, inches),
        (hole, side, shown) => {
          const { size } = drillFor(hole, side, shown)!;
          const off = side === 'below' ? hole - size : size - hole;
          expect(off).toBeGreaterThan(-1e-8);
          // A tenth of a millimetre; among inch drills the widest gap is the ninth from No. 56 to No. 55.
          expect(off).toBeLessThan(shown === inches ? 0.12 * hole : 0.0001001);
        },
      ),
      { seed: 3 },
    );
  });

  test('none beyond the set', () => {
    expect(drillFor(0.0004, 'below', plainShown)).toBeUndefined();
    expect(drillFor(0.02, 'above', plainShown)).toBeUndefined();
    expect(drillFor(0.0145, 'above', inches)).toBeUndefined();
  });
});

describe('bits for plain holes', () => {
  test('are called as they are sold, in the system chosen and with the names of the other', () => {
    expect(bitShelf.called(0.012, plainShown)?.text).toBe('12 mm');
    expect(bitShelf.called(0.5 * INCH, inches)).toMatchObject({ text: '1/2 in', spoken: '1/2 of an inch' });
    expect(bitShelf.called(1.25 * INCH, inches)?.text).toBe('1 1/4 in');
    expect(bitShelf.called(2 * INCH, inches)?.text).toBe('2 in');
    expect(bitShelf.called(0.012, inches)?.text).toBe('12 mm');
    expect(bitShelf.called(0.5 * INCH, plainShown)?.text).toBe('1/2 in');
    expect(bitShelf.called(0.0135, plainShown)).toBeUndefined();
  });

  test('every one has a name of whole millimetres or of sixteenths at most', () => {
    for (const width of bits.metric)
      expect(bitShelf.called(width / 1000, plainShown)?.text).toBe(`${width} mm`);
    for (const parts of bits.inch)
      expect(bitShelf.called((parts * INCH) / 16, inches)?.text).toMatch(
        /^(\d |(?=\d\/|1\d\/))?(\d+\/(2|4|8|16) )?in$/,
      );
  });
});
