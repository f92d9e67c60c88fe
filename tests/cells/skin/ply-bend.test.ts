import { describe, expect, test } from 'vitest';
import { plyBend } from '../../../src/cells/skin/ply-bend';
import { panels } from '../../../src/cells/skin/panels';
import { testDrawings } from '../proofs';
import { tryCell } from '../try-cell';

const INCH = 0.0254;
const FOOT = 12 * INCH;
const quarter = { plyThickness: '1/4 in', grain: 'along', bendRadius: '5 ft' };
const tried = (entries: Record<string, string> = {}) => tryCell(plyBend, { ...quarter, ...entries });
const says = (entries: Record<string, string>) => tried(entries).warnings.map(({ says: text }) => text);

describe('a sheet on a curve', () => {
  test('of a quarter of an inch: the rows of both tables', () => {
    const one = tried();
    expect(one.number('layerThickness')).toBeCloseTo(INCH / 4, 12);
    expect(one.number('takesAlong')).toBeCloseTo(5 * FOOT, 9);
    expect(one.number('takesAcross')).toBeCloseTo(2 * FOOT, 9);
    expect(one.number('pickedAlong')).toBeCloseTo(31 * INCH, 9);
    expect(one.number('pickedAcross')).toBeCloseTo(20 * INCH, 9);
    expect(one.number('common')).toBe(one.number('takesAlong'));
    expect(one.number('picked')).toBe(one.number('pickedAlong'));
    // At the row itself all of it is used; the other way two fifths.
    expect(one.number('share')).toBeCloseTo(1, 9);
    expect(one.number('otherShare')).toBeCloseTo(2 / 5, 9);
    expect(one.all['verdict']).toBe('bends');
    expect(one.warnings).toStrictEqual([]);
  });

  test('bends, perhaps, or does not, and says which', () => {
    expect(tried({ bendRadius: '5 ft' }).words).toMatch(/^It bends\./);
    // Tighter than the common row, and not than the picked one of 31 in.
    expect(tried({ bendRadius: '3 ft' }).words).toMatch(/^It bends only if/);
    expect(tried({ bendRadius: '30 in' }).words).toMatch(/^It does not bend/);
    expect(tried({ bendRadius: '30 in', wetness: 'soaked' }).words).toMatch(/^It bends only if/);
    expect(tried({ bendRadius: '3 ft', grain: 'across' }).words).toMatch(/^It bends\./);
    expect(says({ bendRadius: '3 ft' })[0]).toContain('One table lets');
    expect(says({ bendRadius: '30 in' })[0]).toContain('tighter than any table');
    expect(says({ plyThickness: '22 mm', bendRadius: '7 m' })[0]).toContain('the tables end at 3/4 in');
  });

  test('by a chord and its depth: the circle through three points', () => {
    // 2 R = c^2 / 4 d + d.
    const one = tried({ curve: 'chord', stick: '1200 mm', hollow: '100 mm' });
    expect(one.number('bendsTo')).toBeCloseTo((1.2 ** 2 / 0.4 + 0.1) / 2, 9);
    // A half circle is as deep as its radius.
    expect(tried({ curve: 'chord', stick: '2 m', hollow: '1 m' }).number('bendsTo')).toBeCloseTo(1, 9);
  });

  test('a twist takes its part: 5° stretch the edges by 0.000635', () => {
    const flat = tried({ bendRadius: '100 m' }).number('share');
    const twisted = tried({ bendRadius: '100 m', twist: '5°' }).number('share');
    const strain = (5 * Math.PI) / 180;
    expect(twisted - flat).toBeCloseTo(strain ** 2 / 12 / (INCH / 4 / (2 * 5 * FOOT)), 9);
  });

  test('thinner layers bend tighter; both cells say the same of the same sheet', () => {
    const whole = tried({ plyThickness: '12 mm', bendRadius: '2 m' });
    const halves = tried({ plyThickness: '12 mm', bendRadius: '2 m', skinLayers: '2' });
    expect(halves.number('common')).toBeLessThan(whole.number('common'));
    const panel = tryCell(panels, { thickness: '9 mm' });
    const sheet = tried({
      plyThickness: '9 mm',
      bendRadius: `${panel.number('bendsTo') * 1000} mm`,
      grain: panel.all['grain'] as string,
    });
    expect(sheet.number('takesAlong')).toBe(panel.number('takesAlong'));
    expect(sheet.number('pickedAcross')).toBe(panel.number('pickedAcross'));
  });

  describe('drawing', () => {
    testDrawings(plyBend, {
      'as it opens': {},
      flat: { bendRadius: '40 m' },
      tight: { bendRadius: '300 mm', plyThickness: '12 mm' },
      across: { grain: 'across', bendRadius: '700 mm' },
      'by a chord': { curve: 'chord', stick: '1200 mm', hollow: '200 mm' },
    });
  });
});
