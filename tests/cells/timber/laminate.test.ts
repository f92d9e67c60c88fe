import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bend } from '../../../src/cells/timber/bend';
import { laminate } from '../../../src/cells/timber/laminate';
import { tryCell } from '../try-cell';
import { measured, testBoats, testDrawings, testSense } from '../proofs';

const stack = {
  thickness: '38 mm',
  width: '90 mm',
  radius: '2.5 m',
  bay: '600 mm',
  length: '4 m',
  modulus: '13.4 GPa',
  rupture: '85 MPa',
  allowed: '50 %',
};
const says = (entries: Readonly<Record<string, string>>) =>
  tryCell(laminate, entries)
    .warnings.map((warning) => warning.says)
    .join(' | ');

describe('laminate', () => {
  test('two layers: half the stress, a quarter of the pull, a quarter sprung back', () => {
    const two = tryCell(laminate, { ...stack, plies: '2' });
    expect(two.number('share') / two.number('solidShare')).toBeCloseTo(0.5, 12);
    expect(two.number('force') / two.number('solidForce')).toBeCloseTo(0.25, 12);
    expect(two.number('springBack')).toBe(0.25);
    expect(two.number('stiffer')).toBeCloseTo(4, 12);
    expect(two.number('gluedStiffness') / two.number('looseStiffness')).toBeCloseTo(4, 12);
    expect(two.number('opening')).toBeCloseTo(4 / 3, 12);
  });

  test('a layer is bent as the bend cell bends a board of its thickness', () => {
    const tried = tryCell(laminate, { ...stack, plies: '4' });
    const { length: _, ...board } = stack;
    const one = tryCell(bend, { ...board, thickness: '9.5 mm' });
    expect(tried.number('stress')).toBeCloseTo(one.number('stress'), 3);
    expect(tried.number('leastRadius')).toBeCloseTo(one.number('leastRadius'), 9);
    expect(tried.number('force')).toBeCloseTo(4 * one.number('force'), 6);
    expect(tried.number('rise')).toBeCloseTo(one.number('rise'), 12);
  });

  test('a form of the radius given comes off at the radius wanted', () => {
    const wanted = tryCell(laminate, { ...stack, plies: '3' });
    const made = tryCell(laminate, { ...stack, plies: '3', radius: `${wanted.number('formRadius')} m` });
    expect(made.number('releasedRadius')).toBeCloseTo(2.5, 9);
  });

  test('the layers proposed keep within the share, one fewer would not', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 500, max: 6000 }),
        fc.integer({ min: 4, max: 80 }),
        (radius, thickness) => {
          const entries = { ...stack, radius: `${radius} mm`, thickness: `${thickness} mm` };
          const needed = tryCell(laminate, entries).number('pliesNeeded');
          fc.pre(needed <= 24);
          // A thousandth of a layer is forgiven.
          expect(tryCell(laminate, { ...entries, plies: `${needed}` }).number('share')).toBeLessThan(0.501);
          const fewer = tryCell(laminate, { ...entries, plies: `${Math.max(2, needed - 1)}` }).number(
            'share',
          );
          expect(needed === 2 || fewer > 0.5).toBe(true);
        },
      ),
      { seed: 13, numRuns: 60 },
    );
  });

  test('more layers never raise stress, pull or spring-back', () => {
    const rows = Array.from({ length: 23 }, (_, i) => tryCell(laminate, { ...stack, plies: `${i + 2}` }));
    for (const key of ['share', 'force', 'springBack']) {
      const values = rows.map((row) => row.number(key));
      for (let i = 1; i < values.length; i += 1) expect(values[i]).toBeLessThan(values[i - 1]!);
    }
  });

  test('glue between the layers only: three layers, two lines', () => {
    expect(tryCell(laminate, { ...stack, plies: '3' }).number('glueArea')).toBeCloseTo(2 * 0.09 * 4, 12);
  });

  test('one layer is not a stack and is refused in a sentence', () => {
    expect(tryCell(laminate, { plies: '1' }).issues['plies']).toContain('at least 2');
  });

  describe('warnings', () => {
    test('none for thin layers', () =>
      expect(says({ ...stack, plies: '6', radius: '4 m', width: '40 mm' })).toBe(''));
    test('over the share allowed', () => expect(says({ ...stack, plies: '2' })).toContain('over the 50'));
    test('near breaking', () =>
      expect(says({ ...stack, plies: '2', radius: '2 m' })).toContain('breaks this wood on average'));
    test('thicker than a hundredth of the radius', () =>
      expect(says({ ...stack, plies: '2', radius: '1.5 m' })).toContain('hundredth of the radius'));
    test('too thick to go round', () =>
      expect(says({ ...stack, plies: '24', thickness: '300 mm', radius: '250 mm' })).toContain(
        'does not fit round',
      ));
    test('more than one person holds', () =>
      expect(says({ ...stack, plies: '2', width: '300 mm' })).toContain('more than one person'));
  });

  testSense(laminate);
  testBoats(laminate);

  testDrawings(laminate, {
    'as it stands': {},
    'two layers': { ...stack, plies: '2' },
    'many layers': { ...stack, plies: '24' },
    'nearly straight': { ...stack, radius: '50 m' },
    tight: { ...stack, plies: '12', radius: '400 mm' },
    'thicker than its curve': { ...stack, thickness: '300 mm', radius: '100 mm' },
    wide: { ...stack, width: '1 m' },
  });

  test('the drawing carries the figures to scale', () => {
    const { drawing } = tryCell(laminate, { ...stack, plies: '2' });
    expect(measured(drawing, '600 mm')).toBeCloseTo(600, 6);
    expect(measured(drawing, '38 mm')).toBeCloseTo(38, 6);
    expect(measured(drawing, '19 mm')).toBeCloseTo(19, 6);
    expect(measured(drawing, '90 mm')).toBeCloseTo(90, 6);
  });

  test('the chart begins with one solid board and passes through this stack', () => {
    const tried = tryCell(laminate, { ...stack, plies: '5' });
    const [stress, spring] = tried.chart?.lines ?? [];
    expect(stress?.points[0]).toEqual([1, tried.number('solidShare')]);
    expect(stress?.points[4]?.[1]).toBeCloseTo(tried.number('share'), 12);
    expect(spring?.points[4]?.[1]).toBeCloseTo(0.04, 12);
  });
});
