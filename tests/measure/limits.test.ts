/** A limit is never written on its wrong side, whatever it measures and in whatever units it is read. */
import * as fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import type { Bound, KindId, Shown } from '../../src/measure';

// Read anew: what no shelf of sizes is put up for is written as the measure that it is.
vi.resetModules();
const { isIssue, kinds, plainShown, putBefore, read, shownUnit, write } = await import('../../src/measure');
const { knownUnit } = await import('../../src/measure/units');

const inch = 0.0254;
const feet = (fraction: Shown['fraction']): Shown => ({ length: 'feet', fraction, mass: 'lb', money: '$' });
const choices: readonly Shown[] = [
  plainShown,
  feet(8),
  feet(16),
  feet(32),
  { length: 'inches', fraction: 16, mass: 'lb', money: '' },
];

/** The value that a text says, read as an entry would be: a second road to it. */
function readBack(text: string, kind: KindId, shown: Shown): number {
  const reading = read(text.replace('−', '-'), { kind, shown, field: 'it' });
  const value = isIssue(reading) ? reading : reading.evaluate(() => Number.NaN);
  if (isIssue(value)) throw new Error(`"${text}": ${value.issue}`);
  return value;
}

/** Sizes from a thousandth to a hundred thousand of the unit of the field, either side of nought where there is one. */
function sizesOf(kind: KindId, shown: Shown): fc.Arbitrary<number> {
  const symbol = shownUnit(kind, shown);
  const { factor, zero } = symbol === '' ? { factor: undefined, zero: undefined } : knownUnit(symbol);
  const unit = factor ? Number(factor.top) / Number(factor.bottom) : 1;
  const from = zero ? Number(zero.top) / Number(zero.bottom) : 0;
  const size = fc.double({ min: -3, max: 5, noNaN: true }).map((power) => 10 ** power * unit);
  // A slope has no negative, a count no parts.
  if (kind === 'slope') return size;
  if (kind === 'count') return fc.integer({ min: 0, max: 1_000_000 });
  return fc.tuple(size, fc.boolean()).map(([of, below]) => from + (below ? -of : of));
}

const measured = kinds.map(({ id }) => id).filter((id) => id !== 'choice');
const slack = (value: number) => 1e-8 * Math.max(Math.abs(value), 1e-12);

describe.each(measured)('%s', (kind) => {
  test('at most is never written larger, at least never smaller', () => {
    for (const shown of choices) {
      fc.assert(
        fc.property(sizesOf(kind, shown), (value) => {
          const [most, least] = (['most', 'least'] as const).map((bound: Bound) => {
            const { text, written } = write(value, kind, shown, { bound });
            const back = readBack(text, kind, shown);
            expect(Math.abs(back - written)).toBeLessThanOrEqual(slack(back));
            return back;
          }) as [number, number];
          expect(most).toBeLessThanOrEqual(value + slack(value));
          expect(least).toBeGreaterThanOrEqual(value - slack(value));
          // And no further than the next figure or mark that is written at all.
          const nearest = write(value, kind, shown).text;
          // What is nearest to nothing is nothing; of a limit a figure is kept.
          if (!/[1-9]/.test(nearest)) return;
          const near = readBack(nearest, kind, shown);
          const step = kind === 'length' ? Math.max(Math.abs(value) / 50, inch / 8) : Infinity;
          expect(least - most).toBeLessThanOrEqual(step + slack(value));
          expect(near).toBeGreaterThanOrEqual(most - slack(value));
          expect(near).toBeLessThanOrEqual(least + slack(value));
        }),
        { seed: 11, numRuns: 80 },
      );
    }
  });
});

test('a limit on a tape goes to the mark on its own side', () => {
  const size = 0.67 * inch;
  expect(write(size, 'length', feet(16)).text).toBe('11/16 in');
  expect(write(size, 'length', feet(16), { bound: 'most' }).text).toBe('5/8 in');
  expect(write(0.64 * inch, 'length', feet(16), { bound: 'least' }).text).toBe('11/16 in');
});

test('a limit that lies on a mark stays there, whatever a sum left in its last bits', () => {
  expect(write(0.1 + 0.05, 'length', plainShown, { bound: 'most' }).text).toBe('150 mm');
  expect(write((11 / 16) * inch * (1 + 1e-14), 'length', feet(16), { bound: 'least' }).text).toBe('11/16 in');
});

test('a limit of next to nothing is not written as nothing', () => {
  expect(write(0.00002, 'length', plainShown, { bound: 'most' }).text).toBe('0.02 mm');
  expect(write(0.0004, 'share', plainShown, { bound: 'most' }).text).toBe('0.04 %');
});

describe('as finely as the work asks', () => {
  test.each([
    [0.0005, '5 43/64 in'],
    [0.001, '5 21/32 in'],
    [0.003, '5 11/16 in'],
  ])('within %s m', (within, text) => {
    expect(write(5.667 * inch, 'length', feet(16), { within }).text).toBe(text);
  });
  test('a twentieth of a degree', () => {
    const degree = Math.PI / 180;
    expect(write(1.234 * degree, 'angle', plainShown).text).toBe('1.2°');
    expect(write(1.234 * degree, 'angle', plainShown, { within: 0.05 * degree }).text).toBe('1.23°');
  });
});

describe('what stands beside a number goes into the sentence', () => {
  test('strong and scant', () => {
    expect(write(14.61 * inch, 'length', feet(16)).told).toBe('14 5/8 in scant');
    expect(write(14.65 * inch, 'length', feet(16)).told).toBe('14 5/8 in strong');
    expect(write(14.625 * inch, 'length', feet(16)).told).toBe('14 5/8 in');
  });
  // Custom of the trade, no source: a mark is read "scant"; a size is "a scant 3/4 in deep".
  test.each([
    ['Members 3 1/2 in scant deep; the side', 'Members a scant 3 1/2 in deep; the side'],
    [`It is 2' 9 7/8" strong long, 3/4 in thick`, `It is a strong 2' 9 7/8" long, 3/4 in thick`],
    ['9 mm strong wide. 3/8 in scant deep.', 'A strong 9 mm wide. A scant 3/8 in deep.'],
    ['an 11/16 in strong board', 'a strong 11/16 in board'],
    ['An 8 mm scant board', 'A scant 8 mm board'],
    ['the 3/4 in scant face', 'the scant 3/4 in face'],
    ['which is 2 5/8 in strong more rise', 'which is a strong 2 5/8 in more rise'],
    ['21\u00a03/16\u00a0in strong high', 'A strong 21\u00a03/16\u00a0in high'],
    ['line at 12 in strong from the end', 'line at 12 in strong from the end'],
    ['3/4 in deep', '3/4 in deep'],
  ])('what the tape leaves out goes before a measure: %s', (behind, before) => {
    expect(putBefore(behind)).toBe(before);
  });
  test('what a force weighs like, by the standard weight of a kilogram, 9.80665 N', () => {
    expect(write(565.2, 'force', plainShown)).toMatchObject({
      text: '565 N',
      remainder: 'as 58 kg',
      told: '565 N (as 58 kg)',
    });
    expect(write(30, 'force', plainShown).remainder).toBe('as 3.1 kg');
    expect(write(4, 'force', plainShown).remainder).toBe('as 408 g');
    expect(write(565.2, 'force', feet(16)).told).toBe('127 lbf');
  });
});
