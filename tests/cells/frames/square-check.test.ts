import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demoBoat } from '../../../src/boat';
import { mannerOf } from '../../../src/cells';
import { plainShown, write } from '../../../src/measure';
import { squareCheck } from '../../../src/cells/frames/square-check';
import { testDrawings } from '../proofs';
import { tryCell } from '../try-cell';

const sheet = { first: '2400 mm', second: '2400 mm', apart: '1200 mm' };
const tried = (entries: Record<string, string>) => tryCell(squareCheck, { ...sheet, ...entries });
const millimetres = (metres: number) => `${metres * 1000} mm`;

test('says how far to push as finely as the answer stands at its head', () => {
  const shown = { ...plainShown, length: 'feet', fraction: 8 } as const;
  const sides = { first: '6 ft', second: '6 ft', apart: '42 in' };
  const told = tryCell(
    squareCheck,
    { ...sides, diagonalAC: `6' 11 5/8"`, diagonalBD: `6' 11 1/8"` },
    demoBoat,
    shown,
  );
  // A slide of 0.29 in: 9/32 and a hair, where a tape of eighths has 1/4.
  const by = mannerOf(squareCheck, 'slide');
  const head = write(told.number('slide'), 'length', shown, by).told;
  expect(head).toMatch(/^9\/32 in/);
  expect(write(told.number('slideBy'), 'length', shown, mannerOf(squareCheck, 'slideBy')).told).toBe(head);
});

describe('square by its diagonals', () => {
  test('a true rectangle: 2683.28 mm both ways, and nothing to push', () => {
    const one = tried({});
    expect(one.number('trueDiagonal') * 1000).toBeCloseTo(Math.hypot(2400, 1200), 9);
    expect(one.number('slide')).toBe(0);
    expect(one.words).toContain('within');
    expect(one.warnings).toStrictEqual([]);
  });

  test('a rectangle racked by any angle, or a figure with unlike sides: the slide and the angle it was given', () => {
    const racked = fc.record({
      first: fc.double({ min: 0, max: 5, noNaN: true }),
      second: fc.double({ min: 0.3, max: 5, noNaN: true }),
      apart: fc.double({ min: 0.2, max: 2, noNaN: true }),
      angle: fc.double({ min: -0.6, max: 0.6, noNaN: true }),
    });
    fc.assert(
      fc.property(racked, ({ first, second, apart, angle }) => {
        const [dx, dy] = [apart * Math.sin(angle), apart * Math.cos(angle)];
        const one = tried({
          first: millimetres(first),
          second: millimetres(second),
          apart: millimetres(apart),
          diagonalAC: millimetres(Math.hypot(first / 2 + dx + second / 2, dy)),
          diagonalBD: millimetres(Math.hypot(first / 2 - dx + second / 2, dy)),
        });
        expect(one.number('slide')).toBeCloseTo(dx, 9);
        expect(one.number('outOfSquare')).toBeCloseTo(angle, 8);
        expect(one.number('misfit')).toBeCloseTo(0, 9);
      }),
      { numRuns: 40 },
    );
  });

  test('says which side to push, and which way', () => {
    expect(tried({ diagonalAC: '2690 mm', diagonalBD: '2676 mm' }).words).toContain(
      'A to C is the longer: push side D to C along itself towards D by 7.8 mm',
    );
    expect(tried({ diagonalAC: '2676 mm', diagonalBD: '2690 mm' }).words).toContain(
      'B to D is the longer: push side D to C along itself towards C by 7.8 mm',
    );
  });

  test('warns of more than is accepted, and of diagonals that do not belong to the sides', () => {
    const says = (entries: Record<string, string>) =>
      tried(entries)
        .warnings.map((one) => one.says)
        .join(' ');
    expect(says({ diagonalAC: '2690 mm', diagonalBD: '2676 mm' })).toContain('Out of square by 0.37°');
    expect(says({ diagonalAC: '2685 mm', diagonalBD: '2682 mm' })).toBe('');
    expect(says({ diagonalAC: '2700 mm', diagonalBD: '2700 mm' })).toContain('was misread');
  });

  test('diagonals that no such figure has are told', () => {
    expect(tried({ diagonalAC: '3700 mm', diagonalBD: '800 mm' }).issues['outOfSquare']).toContain(
      'no figure with these sides',
    );
  });

  describe('drawing', () => {
    testDrawings(squareCheck, {
      true: sheet,
      racked: { ...sheet, diagonalAC: '2690 mm', diagonalBD: '2676 mm' },
      'racked the other way': { ...sheet, diagonalAC: '2660 mm', diagonalBD: '2706 mm' },
      'a jig': { first: '6 m', second: '6 m', apart: '600 mm', diagonalAC: '6035 mm', diagonalBD: '6025 mm' },
      'a frame without a chine': { first: '0 mm', second: '1400 mm', apart: '500 mm' },
    });
  });
});
