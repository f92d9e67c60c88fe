import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { trailer } from '../../../src/cells/handling/trailer';
import { testDrawings } from '../proofs';
import { tryCell } from '../try-cell';

const DEG = Math.PI / 180;
/** A boat of 300 kg on a trailer of 150, whose own tongue bears 10. */
const set = {
  boat: '300 kg',
  balance: '1900 mm',
  behind: '1600 mm',
  ball: '3000 mm',
  empty: '150 kg',
  emptyTongue: '10 kg',
  aftBunk: '600 mm',
  foreBunk: '3100 mm',
  long: '4 m',
  broad: '1600 mm',
};
const tried = (entries: Record<string, string> = {}) => tryCell(trailer, { ...set, ...entries });
const says = (entries: Record<string, string>) =>
  tried(entries)
    .warnings.map((one) => one.says)
    .join(' ');

describe('a boat on her trailer', () => {
  test('what hangs on the ball and on the axle', () => {
    const one = tried();
    expect(one.number('total')).toBeCloseTo(450, 9);
    expect(one.number('ahead')).toBeCloseTo(0.3, 12);
    expect(one.number('tongue')).toBeCloseTo(10 + 30, 9);
    expect(one.number('tongueShare')).toBeCloseTo(40 / 450, 12);
    expect(one.number('axleLoad')).toBeCloseTo(410, 9);
    expect(one.number('perTyre')).toBeCloseTo(205, 9);
    expect(one.warnings).toStrictEqual([]);
  });

  test('moved as it says, she has the share aimed at', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1.2, max: 2.2, noNaN: true }),
        fc.integer({ min: 4, max: 14 }),
        (behind, aim) => {
          const one = tried({ behind: `${behind} m`, aimShare: `${aim} %` });
          const moved = tried({ behind: `${behind - one.number('shift')} m`, aimShare: `${aim} %` });
          expect(moved.number('tongueShare')).toBeCloseTo(aim / 100, 9);
          expect(moved.number('shiftBy')).toBeCloseTo(0, 9);
        },
      ),
      { numRuns: 30 },
    );
    expect(tried({ behind: '2 m' }).words).toContain('forward for 8 %');
    expect(tried({ behind: '1.2 m' }).words).toContain('aft for 8 %');
  });

  test('bunks bear her by their distances, and must have her between them', () => {
    const one = tried();
    expect(one.number('aftBears')).toBeCloseTo((300 * 1.2) / 2.5, 9);
    expect(one.number('foreBears')).toBeCloseTo((300 * 1.3) / 2.5, 9);
    expect(says({ aftBunk: '2 m' })).toContain('beyond the bunks');
    expect(says({ foreBunk: '1800 mm' })).toContain('beyond the bunks');
    expect(tried({ aftBunk: '2 m', foreBunk: '1500 mm' }).issues['aftBears']).toContain(
      'forward of the after one',
    );
  });

  test('the fullest part, whichever it is', () => {
    const ratings = { grossRated: '900 kg', axleRated: '820 kg', tyreRated: '410 kg', ballRated: '80 kg' };
    expect(tried(ratings).number('fullest')).toBeCloseTo(0.5, 9);
    expect(tried({ ...ratings, grossRated: '400 kg' }).number('fullest')).toBeCloseTo(450 / 400, 9);
    expect(tried({ ...ratings, ballRated: '32 kg' }).number('fullest')).toBeCloseTo(40 / 32, 9);
    expect(says({ tyreRated: '200 kg' })).toContain('nearest to its rating');
  });

  test('straps by length and by weight', () => {
    const straps = (entries: Record<string, string>) => tried(entries).number('straps');
    expect(tried({ long: '16 ft', bow: 'free' }).number('byLength')).toBe(3);
    expect(tried({ long: '16 ft', bow: 'stopped' }).number('byLength')).toBe(2);
    expect(tried({ long: '10 ft', bow: 'free' }).number('byLength')).toBe(2);
    expect(tried({ long: '5 ft', boat: '1100 lb', bow: 'free' }).number('byLength')).toBe(1);
    expect(tried({ long: '5 ft', boat: '1101 lb', bow: 'free' }).number('byLength')).toBe(2);
    expect(tried({ boat: '1000 kg', strapLimit: '300 kg' }).number('byLoad')).toBe(4);
    expect(straps({ boat: '1000 kg', strapLimit: '300 kg' })).toBe(4);
    expect(says({ strapsThere: '1' })).toContain('asks for 2 straps');
  });

  test('holds, and the winch up the ramp', () => {
    const one = tried({ boat: '900 lb' });
    const kilos = 900 * 0.45359237;
    expect(one.number('holdForward')).toBeCloseTo(0.435 * kilos, 9);
    expect(one.number('holdAft')).toBeCloseTo(kilos / 2, 9);
    expect(one.number('holdSide')).toBeCloseTo(kilos / 4, 9);
    expect(one.number('holdDown')).toBeCloseTo(kilos / 5, 9);
    const pull = tried({ ramp: '12°', drag: '0.4' }).number('winchPull');
    expect(pull).toBeCloseTo(300 * (Math.sin(12 * DEG) + 0.4 * Math.cos(12 * DEG)), 9);
    expect(says({ winchRated: '100 kg' })).toContain('rated for 100 kg');
  });

  test('warns of a light tongue, a heavy one, and of breadth', () => {
    expect(says({ behind: '1900 mm' })).toContain('swings behind');
    expect(says({ behind: '1200 mm', ballRated: '300 kg' })).toContain('more than the 15 %');
    expect(says({ broad: '2600 mm' })).toContain('passes the 2500 mm');
  });

  describe('drawing', () => {
    testDrawings(trailer, {
      'as it opens': set,
      'far aft': { ...set, behind: '2400 mm' },
      short: {
        ...set,
        ball: '1500 mm',
        long: '2 m',
        balance: '900 mm',
        behind: '700 mm',
        foreBunk: '1500 mm',
      },
    });
  });
});
