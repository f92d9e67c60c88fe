import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bend } from '../../../../src/cells/timber/bending/bend';
import { boardsForOne } from '../../../../src/cells/timber/bending/bend-chance';
import { buildHull, offsetsOf, starter } from '../../../../src/boat';
import { look } from '../../../../src/trade/table';
import { timber } from '../../../../src/trade/timber';
import { tryCell } from '../../try-cell';
import { measured, testBoats, testDrawings } from '../../proofs';

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
      { seed: 9, numRuns: 15 },
    );
  });

  test('takes wood, curve and frames from the boat', () => {
    const hull = buildHull(offsetsOf(ferryDory));
    const tried = tryCell(bend, { part: 'sheerClamp', 'sheerClamp.timber': 'whiteOak' });
    expect(tried.number('radius')).toBeCloseTo(hull.edge('sheer').leastRadius?.radius ?? 0, 9);
    expect(tried.all['species']).toBe('whiteOak');
    // 12.3 GPa as printed, and a tenth for the shear in it: Wood Handbook, Table 5-3, footnote, from memory.
    expect(tried.number('modulus')).toBeCloseTo(1.1 * 12.3e9, 0);
    expect(tried.number('sharePrinted')).toBeCloseTo(tried.number('share') / 1.1, 12);
    expect(tried.number('rupture')).toBeCloseTo(105e6, 0);
  });

  describe('warnings', () => {
    test('none within the share allowed', () => expect(says({ ...sitka, thickness: '9 mm' })).toBe(''));
    test('over the share allowed', () =>
      expect(says({ ...sitka, thickness: '15 mm' })).toContain('over the 50'));
    test('near breaking', () => expect(says(sitka)).toContain('breaks this wood on average'));
    test('more than one person holds', () =>
      expect(says({ ...sitka, thickness: '12 mm', width: '300 mm', radius: '2.2 m' })).toContain(
        'one person holds 250 N',
      ));
    test('a bay wider than the circle', () =>
      expect(says({ ...sitka, thickness: '1 mm', radius: '250 mm', rupture: '200 MPa' })).toContain(
        'wider than the circle',
      ));
  });

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

describe('the curve', () => {
  const radiusOf = (entries: Record<string, string>) => tryCell(bend, entries).number('radius');
  const chine = buildHull(offsetsOf(ferryDory)).edge('chine').leastRadius?.radius ?? NaN;

  test('is that of the edge, of the chord, or the builder’s own, as chosen', () => {
    expect(radiusOf({ along: 'chine' })).toBeCloseTo(chine, 9);
    expect(radiusOf({ along: 'chine', curve: 'chord', chord: '2 m', chordRise: '100 mm' })).toBeCloseTo(
      5.05,
      12,
    );
    expect(radiusOf({ along: 'chine', curve: 'own' })).toBe(2);
  });

  test('is what is typed, whichever was chosen', () => {
    for (const curve of ['edge', 'own', 'chord']) expect(radiusOf({ curve, radius: '3 m' })).toBe(3);
  });

  test('of more than half a circle still goes through the ends and the top of its rise', () => {
    const tried = tryCell(bend, { curve: 'chord', chord: '1 m', chordRise: '800 mm' });
    const [radius, arc] = [tried.number('chordRadius'), tried.number('chordArc')];
    // From the centre to an end, over half the chord, and by what the rise goes past the centre.
    expect(Math.hypot(0.5, 0.8 - radius)).toBeCloseTo(radius, 12);
    expect(arc).toBeGreaterThan(Math.PI * radius);
    expect(2 * radius * Math.sin(arc / radius / 2)).toBeCloseTo(1, 12);
  });

  test('needs no hull once it isn’t an edge', () => {
    const broken = { 'frame1.chine.x': '-9 m', along: 'chine' };
    expect(tryCell(bend, { ...broken, curve: 'chord' }).issues).toStrictEqual({});
    expect(tryCell(bend, { ...broken, curve: 'own' }).drawing).toBeDefined();
    expect(tryCell(bend, broken).issues['radius']).toContain('chine');
  });
});

describe('the wood', () => {
  const woodsHere = timber.rows.map(({ id }) => id);
  const hasGreen = (species: string) => look(timber, species, 'ruptureGreen') !== null;

  test('at 12 %, 20 °C and for minutes is as the table has it', () => {
    for (const species of woodsHere) {
      const tried = tryCell(bend, { species });
      expect([species, tried.number('modulusNow')]).toStrictEqual([species, tried.number('modulus')]);
      expect([species, tried.number('ruptureNow')]).toStrictEqual([species, tried.number('rupture')]);
    }
  });

  test.each(woodsHere)(
    '%s: wetter, it never needs more pull, and green it has the green values',
    (species) => {
      const pulls = ['6 %', '12 %', '16 %', '20 %', '24 %', '28 %', '60 %'].map((moisture) =>
        tryCell(bend, { species, moisture }).number('force'),
      );
      for (let i = 1; i < pulls.length; i++) expect(pulls[i]).toBeLessThanOrEqual(pulls[i - 1]!);
      const green = tryCell(bend, { species, moisture: '80 %' });
      const column = hasGreen(species) ? 'Green' : '';
      expect(green.number('ruptureNow') / look(timber, species, `rupture${column}`)!.value).toBeCloseTo(
        1,
        12,
      );
      expect(green.number('modulusNow') / look(timber, species, `modulus${column}`)!.value).toBeCloseTo(
        1.1,
        12,
      );
      const said = green.warnings.map((warning) => warning.says).join();
      expect(said.includes('no green value')).toBe(!hasGreen(species));
    },
  );

  test('loses strength the longer the stress lasts, by the lesser of curve and code', () => {
    const kept = ['minutes', 'week', 'months', 'years', 'ever'].map((duration) =>
      tryCell(bend, { duration }),
    );
    expect(kept[0]!.number('kept')).toBe(1);
    for (let i = 1; i < kept.length; i++) {
      expect(kept[i]!.number('kept')).toBeLessThan(kept[i - 1]!.number('kept'));
      // Two roads to the same: a curve and a table that were made from one another's like.
      expect(Math.abs(kept[i]!.number('keptByCurve') - kept[i]!.number('keptByCode'))).toBeLessThan(0.03);
      expect(kept[i]!.number('share') * kept[i]!.number('kept')).toBeCloseTo(kept[0]!.number('share'), 12);
      expect(kept[i]!.number('force')).toBe(kept[0]!.number('force'));
    }
  });

  test('is stiffer and stronger cold than warm, damp wood more so in strength', () => {
    const at = (warmth: string, moisture: string, key: string) =>
      tryCell(bend, { warmth, moisture }).number(key);
    expect(at('20 °C', '20 %', 'warmStrength')).toBe(1);
    expect(at('0 °C', '12 %', 'modulusNow')).toBeGreaterThan(at('30 °C', '12 %', 'modulusNow'));
    expect(at('-15 °C', '12 %', 'warmStrength')).toBeCloseTo(1.175, 12); // half way to the change at -50 °C
    expect(at('-15 °C', '16.5 %', 'warmStrength')).toBeCloseTo((1.175 + 1.3) / 2, 12);
  });
});

describe('the chance of breaking', () => {
  test('rises with the share, and more boards break where stiff ones are no stronger', () => {
    let before = 0;
    for (let thickness = 4; thickness <= 22; thickness += 2) {
      const tried = tryCell(bend, { ...sitka, thickness: `${thickness} mm` });
      expect(tried.number('chance')).toBeGreaterThan(before);
      expect(tried.number('chanceApart')).toBeGreaterThan(tried.number('chance'));
      before = tried.number('chance');
    }
  });

  test('at a share of 1 it is near a half: means, not medians, are tabled', () => {
    // 70 MPa round R = E t / (2 x 70 MPa).
    const tried = tryCell(bend, { ...sitka, radius: `${(10.8e9 * 0.018) / (2 * 70e6)} m` });
    expect(tried.number('share')).toBeCloseTo(1, 12);
    // The median of stiffness lies further under its mean than that of strength, so fewer than half break.
    expect(tried.number('chance')).toBeLessThan(0.5);
    expect(tried.number('chance')).toBeGreaterThan(0.4);
  });

  test.each([
    ['9 mm', /fewer than 1 in 100000 would break/],
    ['20 mm', /about 1 in \d+ would break/],
    ['30 mm', /More boards break than hold/],
  ])('is said in words: %s', (thickness, words) => {
    expect(tryCell(bend, { ...sitka, thickness }).words).toMatch(words);
  });

  test.each([
    [1 / 28.3, 28],
    [1 / 283, 280],
    [1 / 2.4, 2],
    [1e-9, 100_000],
    [0, 100_000],
  ])('of %d is told as 1 in %d', (chance, boards) => expect(boardsForOne(chance)).toBe(boards));
});

describe('the free end', () => {
  const end = { ...sitka, thickness: '9 mm', loose: '1 m' };

  test('drawn in to a gentle curve pulls alike by both theories', () => {
    const tried = tryCell(bend, { ...end, standOff: '20 mm' });
    expect(tried.number('amiss')).toBeLessThan(0.001);
    expect(tried.number('endPull') / tried.number('gentlePull')).toBeCloseTo(1, 3);
    expect(tried.number('endReach')).toBeCloseTo(1, 3);
  });

  test('warns where the gentle slope is a tenth off, at some three tenths of the length', () => {
    const warned = (standOff: string) =>
      tryCell(bend, { ...end, standOff }).warnings.some(({ says: text }) => text.includes('gentle slopes'));
    expect(warned('290 mm')).toBe(false);
    expect(warned('330 mm')).toBe(true);
    expect(tryCell(bend, { ...end, standOff: '301.7 mm' }).number('amiss')).toBeCloseTo(0.1049, 3); // F L²/EI = 1
  });

  test('can’t be drawn in by more than it is long', () => {
    const tried = tryCell(bend, { ...end, standOff: '2 m' });
    expect(tried.number('drawnIn')).toBeCloseTo(0.9, 12);
    expect(tried.warnings.map((one) => one.warning.weight)).toContain('stop');
  });

  test('bends the board at the last frame held by half as much again as a circle would', () => {
    // Gentle: d = L²/(2R), so F L = 3 EI d/L² = 1.5 EI/R.
    const tried = tryCell(bend, { ...end, radius: '40 m' });
    expect(tried.number('rootShare') / tried.number('share')).toBeCloseTo(1.5, 3);
  });
});
