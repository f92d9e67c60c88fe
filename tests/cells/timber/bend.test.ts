import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bend } from '../../../src/cells/timber/bend';
import { buildHull, offsetsOf, starter } from '../../../src/boat';
import { tryCell } from '../try-cell';
import { measured, testBoats, testDrawings, testSense } from '../proofs';

const ferryDory = starter('ferry-dory')!; // a starter of ours
const sitka = {
  thickness: '18 mm',
  width: '90 mm',
  radius: '2 m',
  modulus: '10.8 GPa',
  rupture: '70 MPa',
  allowed: '50 %',
  bay: '600 mm',
};
const says = (entries: Readonly<Record<string, string>>) =>
  tryCell(bend, entries)
    .warnings.map((warning) => warning.says)
    .join(' | ');

describe('bend', () => {
  test('18 mm of Sitka spruce round 2 m: 48.6 MPa, 69 % of breaking', () => {
    const tried = tryCell(bend, sitka);
    expect(tried.number('strain')).toBeCloseTo(0.0045, 12);
    expect(tried.number('stress')).toBeCloseTo(48.6e6, 3);
    expect(tried.number('share')).toBeCloseTo(48.6 / 70, 12);
    expect(tried.number('radiusToThickness')).toBeCloseTo(111.11, 2);
  });

  test('the least radius, the thickest board and the layers all meet the share allowed', () => {
    const tried = tryCell(bend, sitka);
    const least = tryCell(bend, { ...sitka, radius: `${tried.number('leastRadius')} m` });
    expect(least.number('share')).toBeCloseTo(0.5, 9);
    const thickest = tryCell(bend, { ...sitka, thickness: `${tried.number('thickest')} m` });
    expect(thickest.number('share')).toBeCloseTo(0.5, 9);
    expect(tried.number('plies')).toBe(2);
    expect(tried.number('thickness') / tried.number('plies')).toBeLessThanOrEqual(tried.number('thickest'));
  });

  test('a board 1 1/2 in thick that will not take a curve takes it as two of 3/4 in', () => {
    const curve = { radius: '2.5 m', species: 'douglasFirCoast', allowed: '67 %' };
    const solid = tryCell(bend, { ...curve, thickness: '1 1/2 in' });
    expect(solid.warnings.some(({ warning }) => warning.weight === 'stop')).toBe(true);
    expect(solid.number('plies')).toBe(2);
    expect(
      tryCell(bend, { ...curve, thickness: '3/4 in' }).warnings.some(
        ({ warning }) => warning.weight === 'stop',
      ),
    ).toBe(false);
  });

  test('half the radius doubles the share; twice the thickness takes eight times the pull', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 200, max: 9000 }),
        fc.integer({ min: 2, max: 70 }),
        (radius, thickness) => {
          const once = tryCell(bend, { ...sitka, radius: `${radius} mm`, thickness: `${thickness} mm` });
          const tighter = tryCell(bend, {
            ...sitka,
            radius: `${radius / 2} mm`,
            thickness: `${thickness} mm`,
          });
          const thicker = tryCell(bend, {
            ...sitka,
            radius: `${radius} mm`,
            thickness: `${2 * thickness} mm`,
          });
          expect(tighter.number('share') / once.number('share')).toBeCloseTo(2, 9);
          expect(thicker.number('force') / once.number('force')).toBeCloseTo(8, 9);
        },
      ),
      { seed: 9, numRuns: 40 },
    );
  });

  test('takes wood, curve and frames from the boat', () => {
    const hull = buildHull(offsetsOf(ferryDory));
    const tried = tryCell(bend, { along: 'sheer', 'keelson.timber': 'whiteOak' });
    expect(tried.number('radius')).toBeCloseTo(hull.edge('sheer').leastRadius?.radius ?? 0, 9);
    expect(tried.all['species']).toBe('whiteOak');
    expect(tried.number('modulus')).toBeCloseTo(12.3e9, 0);
    expect(tried.number('rupture')).toBeCloseTo(105e6, 0);
  });

  describe('warnings', () => {
    test('none within the share allowed', () => expect(says({ ...sitka, thickness: '9 mm' })).toBe(''));
    test('over the share allowed', () =>
      expect(says({ ...sitka, thickness: '15 mm' })).toContain('over the 50'));
    test('near breaking', () => expect(says(sitka)).toContain('breaks this wood on average'));
    test('more than one person holds', () =>
      expect(says({ ...sitka, thickness: '12 mm', width: '300 mm', radius: '2.2 m' })).toContain(
        'more than one person',
      ));
    test('a bay wider than the circle', () =>
      expect(says({ ...sitka, thickness: '1 mm', radius: '250 mm', rupture: '200 MPa' })).toContain(
        'wider than the circle',
      ));
  });

  testSense(bend);
  testBoats(bend);

  testDrawings(bend, {
    'as it stands': {},
    'a bow': sitka,
    'nearly straight': { ...sitka, radius: '40 m' },
    tight: { ...sitka, radius: '350 mm', thickness: '3 mm' },
    'tighter than its bay': { ...sitka, radius: '200 mm', thickness: '3 mm' },
    'thicker than its curve': { ...sitka, radius: '50 mm', thickness: '150 mm' },
  });

  test('the drawing spans the bay and rises as the figure says', () => {
    const tried = tryCell(bend, { ...sitka, radius: '1 m' });
    const { drawing } = tried;
    // R - sqrt(R^2 - 0.3^2) = 46.06 mm
    expect(measured(drawing, '600 mm')).toBeCloseTo(600, 6);
    expect(measured(drawing, '46.1 mm')).toBeCloseTo(46.06, 2);
    expect(tried.number('rise')).toBeCloseTo(0.04606, 5);
  });

  test('the chart runs along the real edge and is highest where the cell reckons', () => {
    const tried = tryCell(bend, { along: 'chine' });
    const { chart } = tried;
    const [line] = chart?.lines ?? [];
    const highest = Math.max(...(line?.points.map(([, share]) => share) ?? []));
    expect(chart?.x.to).toBeCloseTo(line?.points.at(-1)?.[0] ?? 0, 9);
    expect(chart?.points?.[0]?.y).toBeCloseTo(tried.number('share'), 9);
    // 81 samples step over the peak by a little.
    expect(highest).toBeLessThanOrEqual(tried.number('share') * (1 + 1e-9));
    expect(highest).toBeGreaterThan(tried.number('share') * 0.97);
  });

  test('where the hull cannot be drawn the chart runs against the radius', () => {
    const { chart } = tryCell(bend, { ...sitka, along: 'chine', 'frame1.chine.x': '-9 m' });
    expect(chart?.x.label).toBe('Radius');
    expect(chart?.points?.[0]?.x).toBe(2);
    const here = chart?.lines[0]?.points.find(([radius]) => Math.abs(radius - 2) < 1e-9);
    expect(here?.[1]).toBeCloseTo(48.6 / 70, 9);
  });
});

describe('the chart', () => {
  const markedShare = (entries: Record<string, string>) => tryCell(bend, entries).chart?.points?.[0]?.y;
  test.each([
    ['along the edge', {}],
    ['of a radius typed', { radius: '2 m' }],
    ['of a radius typed for another edge', { along: 'sheer', radius: '3 m' }],
  ])('marks the share that the answer says: %s', (_, entries) => {
    const share = tryCell(bend, entries).number('share');
    expect(markedShare(entries)).toBeCloseTo(share, 9);
  });
});
