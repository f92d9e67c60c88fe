import * as fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import type { KindId, Shown, WriteOptions } from '../../src/measure';

// Read anew: what no shelf of sizes is put up for is written as the measure that it is.
vi.resetModules();
const { isIssue, kinds, plainShown, read, write, writeExact } = await import('../../src/measure');

const seed = { seed: 2024, numRuns: 400 };

const anyShown: fc.Arbitrary<Shown> = fc.record({
  length: fc.constantFrom('feet', 'inches', 'mm'),
  fraction: fc.constantFrom(8, 16, 32),
  mass: fc.constantFrom('lb', 'kg'),
  money: fc.constantFrom('', '$', '€', '£'),
});
const numeric = kinds.map(({ id }) => id).filter((id) => id !== 'choice');

function readBack(text: string, kind: KindId, shown: Shown): number | string {
  const reading = read(text, { kind, shown, field: 'value' });
  if (isIssue(reading)) return `${text}: ${reading.issue}`;
  const value = reading.evaluate(() => Number.NaN);
  return isIssue(value) ? `${text}: ${value.issue}` : value;
}

/** Doubles of everyday size: a few to many figures, either sign. */
const everyday = fc.oneof(
  fc
    .tuple(fc.integer({ min: -999_999, max: 999_999 }), fc.integer({ min: 0, max: 6 }))
    .map(([digits, places]) => digits / 10 ** places),
  fc.double({ min: -1e6, max: 1e6, noNaN: true }),
);
/** What a field of the kind takes. */
function fit(kind: KindId, value: number): number {
  if (kind === 'slope') return Math.abs(value) + 0.01;
  // Above 100 K: a hair above absolute zero takes more decimals of a degree Celsius than anybody types.
  if (kind === 'temperature') return Math.abs(value) + 100;
  if (kind === 'count') return Math.round(value) + 0;
  return value + 0;
}

describe('what is written exactly reads back to the same double', () => {
  test.each(numeric)('%s', (kind) => {
    fc.assert(
      fc.property(everyday, anyShown, anyShown, (number, shown, other) => {
        const value = fit(kind, number);
        const text = writeExact(value, kind, shown);
        expect(readBack(text, kind, shown)).toBe(value);
        // An entry means the same under any choice of units, but for a price or amount, whose sign goes unwritten.
        expect(readBack(text, kind, other)).toBe(value);
      }),
      { ...seed, numRuns: 60 },
    );
  });
  test('any finite length at all, in every notation', () => {
    fc.assert(
      fc.property(
        fc.double({ noNaN: true, noDefaultInfinity: true }),
        anyShown,
        fc.boolean(),
        (number, shown, eighths) => {
          const value = Math.abs(number) > 1e300 || Math.abs(number) < 1e-290 ? 0 : number;
          expect(readBack(writeExact(value, 'length', shown, { eighths }), 'length', shown)).toBe(value + 0);
        },
      ),
      seed,
    );
  });
  test('with a unit of the field’s own', () => {
    fc.assert(
      fc.property(everyday, fc.constantFrom('m', 'cm', 'ft', 'yd', 'thou', 'µm'), (value, unit) => {
        const text = writeExact(value, 'length', plainShown, { unit });
        expect(text.endsWith(unit)).toBe(true);
        expect(readBack(text, 'length', plainShown)).toBe(value + 0);
      }),
      seed,
    );
  });
  test('marks of a tape are written as fractions, not decimals', () => {
    fc.assert(
      fc.property(fc.integer({ min: -60_000, max: 60_000 }), (sixtyFourths) => {
        const value = (sixtyFourths * 127) / 320000;
        const text = writeExact(value, 'length', { ...plainShown, length: 'feet' });
        expect(text).not.toContain('.');
        expect(readBack(text, 'length', plainShown)).toBe(value + 0);
      }),
      seed,
    );
  });
  test('and whole millimetres are whole', () => {
    fc.assert(
      fc.property(fc.integer({ min: -20_000, max: 20_000 }), (millimetres) => {
        expect(writeExact(millimetres / 1000, 'length', plainShown)).toBe(`${millimetres} mm`);
      }),
      seed,
    );
  });
  test('switching units to and fro loses nothing', () => {
    fc.assert(
      fc.property(everyday, fc.array(anyShown, { minLength: 1, maxLength: 6 }), (start, choices) => {
        let value = start + 0;
        for (const shown of choices)
          value = Number(readBack(writeExact(value, 'length', shown), 'length', shown));
        expect(value).toBe(start + 0);
      }),
      { ...seed, numRuns: 100 },
    );
  });
  test('what its field refuses is written all the same', () => {
    expect(writeExact(2.5, 'count', plainShown)).toBe('2.5');
    expect(writeExact(0, 'slope', plainShown)).toBe('1 in 0');
    expect(() => writeExact(Number.NaN, 'length', plainShown)).toThrow(RangeError);
  });
});

describe('what is written for reading reads back to what it says', () => {
  test.each(numeric)('%s', (kind) => {
    fc.assert(
      fc.property(everyday, anyShown, (number, shown) => {
        const value = fit(kind, number);
        const { text } = write(value, kind, shown);
        const back = readBack(text, kind, shown);
        expect(back).toBeTypeOf('number');
        // And is then written the same again: rounding does not creep.
        expect(write(Number(back), kind, shown).text).toBe(text);
      }),
      { ...seed, numRuns: 100 },
    );
  });
  const notations: readonly [string, Partial<Shown>, WriteOptions, number][] = [
    // Half of the finest mark, in metres, and a hair for rounding.
    ['feet to 1/8', { length: 'feet', fraction: 8 }, {}, 0.0254 / 16],
    ['feet to 1/16', { length: 'feet', fraction: 16 }, {}, 0.0254 / 32],
    ['feet to 1/32', { length: 'feet', fraction: 32 }, {}, 0.0254 / 64],
    ['whole mm', { length: 'mm' }, { tape: true }, 0.0005],
    ['eighths', {}, { eighths: true }, 0.0254 / 32],
  ];
  test.each(notations)(
    '%s: within half a mark, and the remainder says the rest',
    (_, choice, options, half) => {
      const shown = { ...plainShown, ...choice };
      fc.assert(
        fc.property(fc.double({ min: -20, max: 20, noNaN: true }), (value) => {
          const { text, remainder } = write(value, 'length', shown, options);
          const back = Number(readBack(text, 'length', shown));
          expect(Math.abs(back - value)).toBeLessThanOrEqual(half * (1 + 1e-9));
          const [, size = '0', unit = 'mm', way = 'strong'] =
            /^([\d./]+) (in|mm) (strong|scant)$/.exec(remainder) ?? [];
          expect(remainder === '' || size !== '0').toBe(true);
          // Strong is farther from nought, on either side of it.
          const outward = (way === 'strong' ? 1 : -1) * (back < 0 ? -1 : 1);
          const past = Number(readBack(`${size} ${unit}`, 'length', shown)) * outward;
          // To a hundredth of an inch or a tenth of a millimetre.
          expect(Math.abs(back + past - value)).toBeLessThan(0.000131);
        }),
        seed,
      );
    },
  );
});
