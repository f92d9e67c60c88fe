import { describe, expect, test } from 'vitest';
import { plainShown, type Shown } from '../../../src/measure';
import { ticksOf } from '../../../src/page/picture/chart-axis';

const inFeet: Shown = { ...plainShown, length: 'feet', mass: 'lb' };
const texts = (kind: Parameters<typeof ticksOf>[0]['kind'], high: number, shown: Shown) =>
  ticksOf({ kind, label: '' }, [0, high], shown, 150, 'y', 13).map(({ text }) =>
    text.replaceAll('\u00a0', ' '),
  );

/** US gallon and fluid ounce, exact: NIST Special Publication 811, appendix B.8 (from memory). */
const GALLON = 231 * 0.0254 ** 3;

describe('the marks of an axis', () => {
  test('are in one unit, that of the largest, on round numbers of it', () => {
    expect(texts('volume', 0.45 * GALLON, inFeet)).toStrictEqual(['0 qt', '0.5 qt', '1 qt', '1.5 qt']);
    expect(texts('area', 119 * 0.0254 ** 2, inFeet)).toStrictEqual([
      '0 in²',
      '20 in²',
      '40 in²',
      '60 in²',
      '80 in²',
      '100 in²',
    ]);
    expect(texts('volume', 2.6e-3, plainShown)).toStrictEqual([
      '0 L',
      '0.5 L',
      '1 L',
      '1.5 L',
      '2 L',
      '2.5 L',
    ]);
    expect(texts('volume', 0.6e-3, plainShown)).toStrictEqual([
      '0 mL',
      '100 mL',
      '200 mL',
      '300 mL',
      '400 mL',
      '500 mL',
      '600 mL',
    ]);
    expect(texts('mass', 1.3, plainShown).every((text) => text.endsWith(' kg'))).toBe(true);
  });

  test.each([plainShown, { ...inFeet, fraction: 8 } as const])(
    '%# read apart, whatever the extent',
    (shown) => {
      for (const high of [0.003, 0.005, 0.012, 0.04, 0.2, 1, 5])
        for (const room of [150, 232, 400, 800]) {
          const read = ticksOf({ kind: 'length', label: '' }, [0, high], shown, room, 'x', 12).map(
            ({ text }) => text,
          );
          expect([...new Set(read)]).toStrictEqual(read);
        }
    },
  );

  test('of what is counted are whole', () => {
    expect(texts('count', 3, plainShown)).toStrictEqual(['0', '1', '2', '3']);
  });

  test('are those of a tape where lengths are shown in feet and inches', () => {
    expect(texts('length', 3.5, inFeet)).toStrictEqual([
      '0 in',
      '2\' 0"',
      '4\' 0"',
      '6\' 0"',
      '8\' 0"',
      '10\' 0"',
    ]);
  });
});
