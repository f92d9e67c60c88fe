import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import '../../src/cells/common/sizes/packs-sold';
import { plainShown, read, isIssue, type Shown, write, writeExact } from '../../src/measure';
import { packsFor, packShelf, packsShelf, packsSold } from '../../src/trade/packs-sold';

const LITRE = 0.001;
/** Weights and Measures, US gallon: 231 cubic inches, 3.785 411 784 L. */
const GALLON = 3.785411784 * LITRE;
const inches: Shown = { ...plainShown, length: 'feet' };

describe('one pack', () => {
  test('is called as the shop calls it: ounces below a pint, then pint, quart, gallon', () => {
    const called = [1 / 16, 1 / 8, 1 / 4, 1, 5].map((gallons) => packShelf.called(gallons * GALLON, inches));
    expect(called.map((size) => size?.text)).toStrictEqual([
      '8 fl oz',
      '1 pint',
      '1 quart',
      '1 gallon',
      '5 gallons',
    ]);
    expect(called[0]?.spoken).toBe('8 fluid ounces');
    expect(called[2]?.spoken).toBe('1 quart');
    expect(
      [0.25, 0.5, 1, 4].map((litres) => packShelf.called(litres * LITRE, plainShown)?.text),
    ).toStrictEqual(['250 mL', '500 mL', '1 L', '4 L']);
  });

  test('of the other system keeps its own name; one that is no size of a shop is written as a volume', () => {
    expect(write(4 * LITRE, 'pack', inches).text).toBe('4 L');
    expect(write(GALLON / 4, 'pack', plainShown).text).toBe('1 quart');
    // A cartridge of 300 mL is sold as 10.1 fl oz where ounces are.
    expect(write(0.3 * LITRE, 'pack', inches).text).toBe('10.1 fl oz');
    expect(write(0.3 * LITRE, 'pack', plainShown).text).toBe('300 mL');
    expect(write(GALLON / 4, 'volume', inches).text).toBe('1 qt');
  });

  test('reads back as it is called', () => {
    for (const [shown, sizes] of [
      [plainShown, packsSold.metric],
      [inches, packsSold.inch],
    ] as const)
      for (const size of sizes) {
        const reading = read(packShelf.called(size, shown)!.text, { kind: 'pack', shown, field: 'pack' });
        if (isIssue(reading)) throw new Error(reading.issue);
        expect(Number(reading.evaluate(() => Number.NaN)) / size).toBeCloseTo(1, 12);
        expect(writeExact(0.3 * LITRE, 'pack', plainShown)).toBe('0.3 L');
      }
  });
});

describe('what must be bought', () => {
  const say = (volume: number, shown: Shown) => write(volume, 'packs', shown).told;

  test('is the next pack or packs, with what is needed beside it', () => {
    expect(say(12.3 * (GALLON / 128), inches)).toBe('1 pint (for 12.3 fl oz)');
    expect(say(GALLON / 4, inches)).toBe('1 quart');
    expect(say((2.4 * GALLON) / 4, inches)).toBe('2 quarts and 1 pint (for 2.4 qt)');
    expect(say(1.4 * GALLON, inches)).toBe('1 gallon and 2 quarts (for 1.4 gal)');
    expect(say((3.9 * GALLON) / 4, inches)).toBe('1 gallon (for 3.9 qt)');
    expect(say(7 * GALLON, inches)).toBe('5 gallons and 2 gallons');
    expect(say(1 * (GALLON / 128), inches)).toBe('8 fl oz (for 1 fl oz)');
    expect(say(2.3 * LITRE, plainShown)).toBe('2 × 1 L and 500 mL (for 2.3 L)');
    expect(say(0.2 * LITRE, plainShown)).toBe('250 mL (for 200 mL)');
    expect(write(2.3 * LITRE, 'packs', plainShown).spoken).toBe('2 of 1 litre and 500 millilitres');
    expect(say(0, plainShown)).toBe('0 L');
  });

  test('holds what is needed, in two sizes at most, and no pack of it is one too many', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-6, max: 0.2, noNaN: true }),
        fc.constantFrom('metric', 'inch'),
        (need, system) => {
          const sizes = packsSold[system];
          const lots = packsFor(need, sizes);
          const held = lots.reduce((sum, [count, size]) => sum + count * size, 0);
          expect(lots.length).toBeLessThanOrEqual(2);
          expect(held).toBeGreaterThanOrEqual(need * (1 - 1e-5));
          // Without one of the smallest packs bought it would not do.
          expect(held - Math.min(...lots.map(([, size]) => size))).toBeLessThan(need * (1 + 1e-5));
          expect(packsShelf.called(need, system === 'metric' ? plainShown : inches)?.size).toBe(held);
        },
      ),
    );
  });
});
