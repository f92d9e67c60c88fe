import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bend } from '../../../../src/cells/timber/bending/bend';
import { laminate } from '../../../../src/cells/timber/bending/laminate';
import { tryCell } from '../../try-cell';
import { measured, testBoats, testDrawings } from '../../proofs';

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
    expect(two.number('springBack')).toBeCloseTo(0.25, 12);
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

  // Each run sets up a boat several times over.
  test('the layers proposed keep within the share, one fewer would not', { timeout: 30_000 }, () => {
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
      { seed: 13, numRuns: 30 },
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
    const one = { layup: 'listed', layer1: '12 mm', layer2: '0 mm' };
    expect(tryCell(laminate, one).issues['layers']).toContain('two layers or more');
  });

  describe('layers that differ', () => {
    const millimetres = fc.integer({ min: 2, max: 60 });

    test('that are alike after all give what layers alike give', { timeout: 30_000 }, () => {
      const keys =
        'whole layers ply share ownShare solidShare leastRadius springBack formRadius force stiffer glueArea clamps bought cost chanceAny chanceAll';
      fc.assert(
        fc.property(millimetres, fc.integer({ min: 2, max: 4 }), (ply, plies) => {
          const even = { ...stack, thickness: `${ply * plies} mm`, plies: `${plies}` };
          const list = Object.fromEntries(
            [1, 2, 3, 4].map((i) => [`layer${i}`, i <= plies ? `${ply} mm` : '0 mm']),
          );
          const alike = tryCell(laminate, { ...even, radius: '700 mm' });
          const listed = tryCell(laminate, { ...even, radius: '700 mm', layup: 'listed', ...list });
          for (const key of keys.split(' ')) {
            expect(listed.number(key) / alike.number(key)).toBeCloseTo(1, 9);
          }
        }),
        { seed: 11, numRuns: 25 },
      );
    });

    test('spring back more than as many alike, and less than one board', { timeout: 30_000 }, () => {
      fc.assert(
        fc.property(millimetres, millimetres, millimetres, (a, b, c) => {
          const tried = tryCell(laminate, {
            ...stack,
            layup: 'listed',
            layer1: `${a} mm`,
            layer2: `${b} mm`,
            layer3: `${c} mm`,
          });
          expect(tried.number('springBack')).toBeGreaterThanOrEqual(1 / 9 - 1e-12);
          expect(tried.number('springBack')).toBeLessThan(1);
          expect(tried.number('ply')).toBeCloseTo(Math.max(a, b, c) / 1000, 12);
          expect(tried.number('share')).toBeLessThan(tried.number('solidShare'));
        }),
        { seed: 12, numRuns: 25 },
      );
    });

    test('take part in their order: a thick one on the hollow side has most to bear', () => {
      const tight = { ...stack, radius: '300 mm', layup: 'listed', layer3: '0 mm' };
      const inside = tryCell(laminate, { ...tight, layer1: '30 mm', layer2: '10 mm' });
      const outside = tryCell(laminate, { ...tight, layer1: '10 mm', layer2: '30 mm' });
      expect(inside.number('ownShare')).toBeGreaterThan(outside.number('ownShare'));
      expect(inside.number('share')).toBe(outside.number('share'));
    });

    test('are drawn as thick as they are, and told in their order', () => {
      const { drawing } = tryCell(laminate, {
        ...stack,
        layup: 'listed',
        layer1: '6 mm',
        layer2: '6 mm',
        layer3: '12 mm',
      });
      expect(measured(drawing, '12 mm')).toBeCloseTo(12, 6);
      expect(measured(drawing, '24 mm')).toBeCloseTo(24, 6);
      expect(drawing?.says).toContain('6 mm, 6 mm, 12 mm');
    });
  });

  test('the form rises so much more that what is lost leaves the curve wanted', () => {
    const tried = tryCell(laminate, { ...stack, plies: '3', held: 'form', wholeRise: '90 mm' });
    const form = tried.number('formRise');
    expect(form * (1 - tried.number('springBack'))).toBeCloseTo(0.09, 12);
    expect(tried.number('moreRise')).toBeCloseTo(0.09 / 8, 12);
    // As much rounder in radius as in rise.
    expect(tried.number('formRadius') / 2.5).toBeCloseTo(0.09 / form, 12);
  });

  test('fastened on the frames, they are held by as many fastenings as the pull takes, and pull less as months go', () => {
    const tried = tryCell(laminate, { ...stack, plies: '2', width: '300 mm', screwHolds: '400 N' });
    const pull = tried.number('force');
    expect(tried.number('fastenings')).toBe(Math.ceil(pull / 400));
    expect(tried.number('fastenings')).toBeGreaterThan(1);
    expect(tried.number('solidFastenings')).toBe(Math.ceil((4 * pull) / 400));
    expect(tried.number('lockedMoment')).toBeCloseTo(pull * 0.6, 9);
    expect(tried.number('laterForce') / pull).toBeCloseTo(0.65, 12);
  });

  describe('the chance of breaking', () => {
    const doubtful = { ...stack, radius: '2 m', plies: '2' };

    test('lies, for the weakest layer of several boards, between that of one layer and its multiple', () => {
      const tried = tryCell(laminate, { ...doubtful, plies: '3', thickness: '57 mm' });
      const [one, any, all] = ['chance', 'chanceAny', 'chanceAll'].map((key) => tried.number(key));
      expect(one).toBeGreaterThan(0.01);
      expect(any).toBeGreaterThan(one!);
      expect(any).toBeLessThan(3 * one!);
      expect(all! / one! ** 3).toBeCloseTo(1, 9);
    });

    test('falls with more layers, and is that of one board for the board', () => {
      const rows = [2, 3, 4, 5, 6].map((plies) => tryCell(laminate, { ...doubtful, plies: `${plies}` }));
      const values = [rows[0]!.number('solidChance'), ...rows.map((row) => row.number('chanceAny'))];
      for (let i = 1; i < values.length; i += 1) expect(values[i]).toBeLessThan(values[i - 1]!);
      const board = tryCell(laminate, { ...doubtful, beside: 'one' });
      expect(board.number('besideChance')).toBeCloseTo(board.number('solidChance'), 12);
    });

    test('grows with how much boards differ where they hold on average', () => {
      const chance = (more: Readonly<Record<string, string>>) =>
        tryCell(laminate, { ...doubtful, ...more }).number('chance');
      expect(chance({ ruptureSpread: '30 %' })).toBeGreaterThan(chance({}));
      expect(chance({ together: '0' })).toBeGreaterThan(chance({}));
    });
  });

  describe('glue', () => {
    const glued = { ...stack, plies: '3', width: '100 mm', length: '4 m' };

    test('two lines of 0.4 m2 at 500 g/m2 and a tenth left in the pot: 440 g, 0.4 L', () => {
      const tried = tryCell(laminate, {
        ...glued,
        glue: 'resorcinol',
        spread: '500 g/m^2',
        waste: '10 %',
        density: '1100 kg/m^3',
        line: '0.25 mm',
      });
      expect(tried.number('glueMass')).toBeCloseTo(0.44, 12);
      expect(tried.number('volume')).toBeCloseTo(0.0004, 12);
      // 0.8 m2 of 0.25 mm stays: 0.2 of the 0.4 L.
      expect(tried.number('inLines')).toBeCloseTo(0.0002, 12);
      expect(tried.number('squeezedOut')).toBeCloseTo(0.5, 12);
      expect(tried.number('thicker')).toBeCloseTo(0.0005, 12);
    });

    test.each([
      // 20 to 100 kPa, the middle; a paste fills its line
      ['epoxy', 60e3, 0.0005],
      ['polyurethane', 125e3, 0.0005],
      ['resorcinol', 0.7e6, 0.000115],
      ['pva', 0.7e6, 0.0001],
    ])('of %s is pressed and thick as is usual', (glue, pressure, line) => {
      const tried = tryCell(laminate, { ...glued, glue });
      expect(tried.number('pressure')).toBeCloseTo(pressure, 3);
      expect(tried.number('line')).toBeCloseTo(line, 9);
    });

    test('of a thin glue is spread what is usual', () => {
      expect(tryCell(laminate, { ...glued, glue: 'resorcinol' }).number('spread')).toBeCloseTo(0.325, 9);
      expect(tryCell(laminate, { ...glued, glue: 'pva' }).number('spread')).toBeCloseTo(0.2, 9);
    });

    test('epoxy primes both faces of each line and fills it with paste, a part of which is filler', () => {
      const tried = tryCell(laminate, { ...glued, glue: 'epoxy', waste: '0 %', fillerShare: '0 %' });
      // 0.8 m2: 2 x 125 g on each, and 0.5 mm of it, all at the density of epoxy.
      expect(tried.number('priming') * tried.number('glueMass')).toBeCloseTo(
        0.2 * tried.number('volume'),
        12,
      );
      expect(tried.number('volume') - tried.number('priming')).toBeCloseTo(0.0004, 12);
      const filled = tryCell(laminate, { ...glued, glue: 'epoxy', waste: '0 %' });
      expect(filled.number('glueMass')).toBeLessThan(tried.number('glueMass'));
      expect(filled.number('filler')).toBeGreaterThan(0);
    });

    test('too little of it starves the joint, and is told', () => {
      const thin = { ...glued, glue: 'resorcinol', line: '0.5 mm' };
      expect(says({ ...thin, spread: '200 g/m^2' })).toContain('starve');
      expect(says({ ...thin, spread: '600 g/m^2' })).not.toContain('starve');
    });
  });

  describe('clamps', () => {
    const run = { ...stack, plies: '2', width: '40 mm', length: '2 m', caul: '19 mm' };

    test('of a glue that wants contact go by the pitch, and the words say so', () => {
      const tried = tryCell(laminate, { ...run, glue: 'epoxy', pitch: '160 mm' });
      expect(tried.number('clampPitch')).toBeCloseTo(0.16, 12);
      // 2000 / 160 = 12.5
      expect(tried.number('clamps')).toBe(13);
      expect(tried.words).toContain(', one every 160 mm, to press it evenly');
    });

    test('of a glue that wants pressure go by force where that is more, and the words say so', () => {
      const tried = tryCell(laminate, { ...run, glue: 'resorcinol', width: '150 mm', clampForce: '3 kN' });
      // 0.7 MPa x 150 x 2000 = 210 kN; pitch 2 (19 + 19) = 76 mm
      expect(tried.number('clampsByForce')).toBe(70);
      expect(tried.number('clampsByPitch')).toBe(27);
      expect(tried.number('clamps')).toBe(70);
      expect(tried.words).toContain('Put on 70 clamps for the pressure;');
    });

    test('stand closer on a tight curve: below 200 thicknesses of a layer, as of a joint', () => {
      const pitchAt = (radius: string) => tryCell(laminate, { ...run, radius }).number('clampPitch');
      expect(pitchAt('3.7 m')).toBeCloseTo(0.085, 12);
      expect(pitchAt('3.9 m')).toBeCloseTo(0.175, 12);
    });

    test('press evenly only through wood enough: the thinnest of listed layers sets the pitch', () => {
      const listed = { ...run, layup: 'listed', layer1: '25 mm', layer2: '5 mm', layer3: '8 mm' };
      expect(tryCell(laminate, { ...listed, glue: 'pva' }).number('clampPitch')).toBeCloseTo(0.048, 12);
    });
  });

  test('wood: each layer eats a kerf and a planing; money follows wood and glue', () => {
    const tried = tryCell(laminate, {
      ...stack,
      plies: '2',
      width: '100 mm',
      kerf: '3 mm',
      planing: '1 mm',
      price: '2000 /m^3',
      glue: 'resorcinol',
      spread: '500 g/m^2',
      waste: '0 %',
      gluePrice: '30 /kg',
    });
    // (38 + 2 x 4) x 100 mm x 4 m
    expect(tried.number('bought')).toBeCloseTo(0.0184, 12);
    expect(tried.number('dust')).toBeCloseTo(8 / 46, 12);
    // 36.80 of wood, 0.2 kg of glue
    expect(tried.number('cost')).toBeCloseTo(36.8 + 6, 9);
    expect(tried.number('solidCost')).toBeCloseTo(0.0152 * 2000, 9);
  });

  // Made-up prices; by hand: 8 ft of 3/4 by 3 1/2 in are 1.75 board feet.
  test.each([
    { quoted: 'each', each: '6.49 each', boardSold: '8 ft' },
    { quoted: 'length', perLength: '(6.49/8)/ft' },
    { quoted: 'volume', price: '(6.49/1.75) /bf' },
  ])('its wood costs by volume what a board of it does: %o', (quoted) => {
    const board = { boardThickness: '3/4 in', boardWidth: '3 1/2 in' };
    const tried = tryCell(laminate, { ...stack, ...board, ...quoted });
    expect(tried.issues).toEqual({});
    const boards = tried.number('bought') / (1.75 * 144 * 0.0254 ** 3);
    expect(tried.number('woodCost')).toBeCloseTo(6.49 * boards, 9);
  });

  describe('set beside the stack', () => {
    const names = ['two', 'three', 'four', 'five', 'six', 'seven', 'eight'];
    test.each(['epoxy', 'resorcinol'])(
      'each row is the cell with that many layers, glued with %s',
      (glue) => {
        names.forEach((beside, i) => {
          const tried = tryCell(laminate, { ...stack, glue, plies: '2', beside });
          const itself = tryCell(laminate, { ...stack, glue, plies: `${i + 2}` });
          const pairs = {
            besideLayers: 'layers',
            besidePly: 'ply',
            besideShare: 'share',
            besideChance: 'chanceAny',
            besideForce: 'force',
            besideSpring: 'springBack',
            besideGlue: 'glueMass',
            besideClamps: 'clamps',
            besideBought: 'bought',
            besideCost: 'cost',
          };
          for (const [row, own] of Object.entries(pairs)) {
            expect(tried.number(row) / itself.number(own)).toBeCloseTo(1, 9);
            // The table's row says what the choice of it says.
            expect(tried.all[`${beside}.${row}`]).toBe(tried.all[row]);
          }
        });
      },
    );

    test('one solid board needs neither glue nor clamps nor saw, and springs all the way back', () => {
      const tried = tryCell(laminate, { ...stack, beside: 'one' });
      expect(tried.number('besideShare')).toBe(tried.number('solidShare'));
      expect(tried.number('besideForce')).toBe(tried.number('solidForce'));
      expect(tried.number('besideSpring')).toBe(1);
      expect(tried.number('besideGlue')).toBe(0);
      expect(tried.number('besideClamps')).toBe(0);
      expect(tried.number('besideCost')).toBe(tried.number('solidCost'));
    });
  });

  describe('warnings', () => {
    test('none for thin layers', () =>
      expect(says({ ...stack, plies: '6', radius: '4 m', width: '40 mm' })).toBe(''));
    test('over the share allowed', () => expect(says({ ...stack, plies: '2' })).toContain('over the 50'));
    test('near breaking', () =>
      expect(says({ ...stack, plies: '2', radius: '2 m' })).toContain('breaks this wood on average'));
    test('thicker than the code lets this wood: 1/125 of the radius for Douglas-fir, 1/100 for oak', () => {
      // Layers of 19 mm: National Design Specification 5.3.8, from memory.
      const two = { ...stack, plies: '2' };
      expect(says({ ...two, species: 'douglasFirCoast', radius: '2.3 m' })).toContain('at most 18.4 mm');
      expect(says({ ...two, species: 'douglasFirCoast', radius: '2.4 m' })).not.toContain('at most 19');
      expect(says({ ...two, species: 'whiteOak', radius: '1.95 m' })).not.toContain('glued laminated timber');
      expect(says({ ...two, species: 'whiteOak', radius: '1.85 m' })).toContain('glued laminated timber');
    });
    test('too thick to go round', () =>
      expect(says({ ...stack, plies: '24', thickness: '300 mm', radius: '250 mm' })).toContain(
        'does not fit round',
      ));
    test('more than one person holds', () =>
      expect(says({ ...stack, plies: '2', width: '300 mm' })).toContain('one person holds 250 N'));
    test('an inner layer on a tighter curve', () =>
      expect(says({ ...stack, plies: '4', radius: '250 mm' })).toContain('on a tighter curve'));
    test('two layers on a form', () =>
      expect(says({ ...stack, plies: '2', held: 'form' })).toContain('take three or more'));
    test('a glue that screws on the frames do not press', () => {
      expect(says({ ...stack, glue: 'resorcinol' })).toContain('screws do not press so hard');
      expect(says({ ...stack, glue: 'resorcinol', held: 'form' })).not.toContain('screws');
      expect(says({ ...stack, glue: 'epoxy' })).not.toContain('screws');
    });
    test('a list that does not come to the thickness', () =>
      expect(says({ ...stack, layup: 'listed', layer1: '12 mm', layer2: '12 mm' })).toContain(
        'come to 24 mm',
      ));
  });

  testBoats(laminate);

  testDrawings(laminate, {
    'as it stands': {},
    'two layers': { ...stack, plies: '2' },
    'many layers': { ...stack, plies: '24' },
    'nearly straight': { ...stack, radius: '50 m' },
    tight: { ...stack, plies: '12', radius: '400 mm' },
    'thicker than its curve': { ...stack, thickness: '300 mm', radius: '100 mm' },
    wide: { ...stack, width: '1 m' },
    'on a form': { ...stack, held: 'form', plies: '3' },
    'on a form, tight': { ...stack, held: 'form', plies: '12', radius: '400 mm' },
    'layers that differ': { ...stack, layup: 'listed', layer1: '6 mm', layer2: '20 mm', layer3: '12 mm' },
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
    // The same dots are the pull, over that of one board.
    expect(tried.number('force') / tried.number('solidForce')).toBeCloseTo(0.04, 12);
    expect(tried.chart?.limits).toContainEqual({
      at: tried.number('pliesNeeded'),
      axis: 'x',
      label: 'enough',
    });
  });

  test('the chart draws the chance of breaking where there is some to see', () => {
    const tight = tryCell(laminate, { ...stack, radius: '2 m' });
    expect(tight.chart?.lines[2]?.points[0]).toEqual([1, tight.number('solidChance')]);
    expect(tight.chart?.lines[2]?.points[1]?.[1]).toBeCloseTo(tight.number('chanceAny'), 12);
    expect(tryCell(laminate, { ...stack, radius: '8 m' }).chart?.lines).toHaveLength(2);
  });

  test('the chart runs on layers alike even where the stack has others, which stand where they are', () => {
    const listed = { ...stack, layup: 'listed', layer1: '30 mm', layer2: '8 mm' };
    const { chart, ...tried } = tryCell(laminate, listed);
    expect(chart?.lines[1]?.points[1]).toEqual([2, expect.closeTo(0.25, 12)]);
    expect(chart?.points?.[1]).toMatchObject({ x: 2, y: tried.number('springBack') });
    expect(tried.number('springBack')).toBeGreaterThan(0.25);
  });
});
