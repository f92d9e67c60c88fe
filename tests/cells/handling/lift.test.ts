import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lift } from '../../../src/cells/handling/lift';
import { testDrawings } from '../proofs';
import { tryCell } from '../try-cell';

const G = 9.80665;
/** A hull of 120 kg on blocks 3 m apart, balanced in the middle; a lever of 2.4 m with 250 mm under her. */
const hull = {
  mass: '120 kg',
  span: '3000 mm',
  centre: '1500 mm',
  lever: '2400 mm',
  short: '250 mm',
  rises: '150 mm',
  packing: '38 mm',
  drop: '500 mm',
};
const tried = (entries: Record<string, string> = {}) => tryCell(lift, { ...hull, ...entries });
const says = (entries: Record<string, string>) =>
  tried(entries)
    .warnings.map((one) => one.says)
    .join(' ');

describe('one end lifted by a lever', () => {
  test('bears half of her, and a push of an eighth of that holds it', () => {
    const one = tried();
    expect(one.number('halfway')).toBeCloseTo(1.5, 12);
    expect(one.number('loadShare')).toBeCloseTo(0.5, 12);
    expect(one.number('load')).toBeCloseTo(60, 9);
    expect(one.number('stays')).toBeCloseTo(60, 9);
    expect(one.number('longArm')).toBeCloseTo(2.15, 12);
    expect(one.number('push')).toBeCloseTo((60 * 250) / 2150, 9);
    expect(one.number('people')).toBe(1);
    expect(one.words).toContain('one person');
    // The long end goes down by 500 mm, the short one up in proportion.
    expect(one.number('rise')).toBeCloseTo((0.5 * 250) / 2150, 12);
    expect(one.warnings).toStrictEqual([]);
  });

  test('counts pushes by the packing that goes in', () => {
    const one = tried();
    // 58 mm of rise, less 6 mm of room, takes a whole piece of 38 mm; four of them pass 150 mm.
    expect(one.number('packed')).toBeCloseTo(0.038, 12);
    expect(one.number('bitesEnd')).toBe(4);
    expect(one.number('bites')).toBe(8);
    expect(one.number('gained')).toBeCloseTo(0.152, 12);
    expect(one.number('stack')).toBeCloseTo(0.5 + 0.152, 12);
    const thin = tried({ short: '100 mm' });
    expect(thin.number('packed')).toBeCloseTo((0.5 * 100) / 2300 - 0.006, 12);
    expect(says({ short: '100 mm' })).toContain('no room for a packing of 38 mm');
    // The same rise exactly asks for no push more.
    expect(tried({ rises: '152 mm' }).number('bitesEnd')).toBe(4);
    expect(tried({ rises: '153 mm' }).number('bitesEnd')).toBe(5);
  });

  test('the work of the hands is that done on the hull', () => {
    const any = fc.record({
      mass: fc.double({ min: 20, max: 900, noNaN: true }),
      short: fc.double({ min: 0.1, max: 0.4, noNaN: true }),
      lever: fc.double({ min: 1.5, max: 5, noNaN: true }),
    });
    fc.assert(
      fc.property(any, ({ mass, short, lever }) => {
        const one = tried({ mass: `${mass} kg`, short: `${short} m`, lever: `${lever} m`, drop: '600 mm' });
        expect(one.number('push') * 0.6).toBeCloseTo(one.number('load') * one.number('rise'), 9);
      }),
      { numRuns: 30 },
    );
  });

  test('the lever is bent over its block like a beam', () => {
    const one = tried({ breadth: '38 mm', depth: '89 mm', rupture: '80 MPa', leverShare: '25 %' });
    expect(one.number('moment')).toBeCloseTo(60 * G * 0.25, 6);
    expect(one.number('stress')).toBeCloseTo((60 * G * 0.25 * 6) / (0.038 * 0.089 ** 2), 0);
    expect(one.number('strength')).toBeCloseTo(20e6, 3);
    expect(says({ mass: '900 kg', depth: '40 mm' })).toContain('take a deeper timber');
  });

  test('says what can’t be done', () => {
    expect(tried({ centre: '3100 mm' }).issues['load']).toContain('beyond this lifting place');
    expect(tried({ short: '1900 mm', lever: '1800 mm' }).issues['push']).toContain('nothing of the lever');
    expect(tried({ drop: '20 mm' }).issues['bites']).toContain('no further than it takes');
    expect(says({ mass: '900 kg' })).toContain('no more than two find room');
    expect(says({ stands: '100 mm' })).toContain('meets the floor');
    expect(says({ stands: '1 m' })).toContain('more than three times');
  });

  test('the long end stands as high as the lever that lies level halfway', () => {
    expect(tried({ stands: '500 mm' }).number('handLow')).toBeCloseTo(
      0.5 + (0.5 * 250) / 2150 / 2 - 0.25,
      12,
    );
  });

  describe('drawing', () => {
    testDrawings(lift, {
      'as it opens': hull,
      'low down': { ...hull, stands: '60 mm', drop: '100 mm', packing: '3 mm', room: '1 mm' },
      'a long lever': { ...hull, lever: '5 m' },
      'a short one': { ...hull, lever: '900 mm' },
    });
  });
});
