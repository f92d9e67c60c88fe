import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demoBoat, starters } from '../../../../src/boat';
import { type Cell, aboutOf } from '../../../../src/cells';
import { clamps } from '../../../../src/cells/timber/gluing/clamps';
import { glue } from '../../../../src/cells/timber/gluing/glue';
import { inOrder } from '../../../../src/cells/timber/gluing/clamps-drawing';
import { withoutChines, withTwoChines } from '../../odd-boats';
import { measured, provesItsDrawing, testDrawings } from '../../proofs';
import { tryCell } from '../../try-cell';

const rigid = {
  glue: 'resorcinol',
  length: '4 m',
  width: '90 mm',
  ply: '18 mm',
  caul: '18 mm',
  radius: '50 m',
  capacity: '3000 N',
  shop: '22 °C',
  inHand: '200',
};
const says = (entries: Readonly<Record<string, string>>) =>
  tryCell(clamps, entries)
    .warnings.map((warning) => warning.says)
    .join(' | ');

describe('clamps', () => {
  test('a rigid glue on 4 m by 90 mm: 252 kN, 84 clamps by force, 56 by spread', () => {
    const tried = tryCell(clamps, rigid);
    expect(tried.number('force')).toBeCloseTo(0.7e6 * 0.09 * 4, 6);
    expect(tried.number('byForce')).toBe(84);
    expect(tried.number('spread')).toBeCloseTo(0.072, 12);
    expect(tried.number('byPitch')).toBe(56);
    expect(tried.number('clamps')).toBe(84);
    expect(tried.words).toContain('so many for the pressure');
  });

  test('thickened epoxy is only closed: the usual pitch, 23 clamps; 46 where the bend is tight', () => {
    const epoxy = { ...rigid, glue: 'epoxy' };
    expect(tryCell(clamps, epoxy).number('clamps')).toBe(Math.ceil(4 / 0.175));
    expect(tryCell(clamps, epoxy).words).toContain('so many to press it evenly');
    expect(tryCell(clamps, { ...epoxy, radius: '3 m' }).number('clamps')).toBe(Math.ceil(4 / 0.085));
    expect(tryCell(clamps, { ...epoxy, radius: '3.6 m' }).number('clamps')).toBe(Math.ceil(4 / 0.175));
  });

  test('a rigid glue takes the high end of its pressure on dense wood, the low end on light wood', () => {
    expect(tryCell(clamps, { ...rigid, species: 'whiteOak' }).number('pressure')).toBe(1.7e6);
    expect(tryCell(clamps, { ...rigid, species: 'westernRedCedar' }).number('pressure')).toBe(0.7e6);
    // A hardwood by name, and as light as cedar.
    expect(tryCell(clamps, { ...rigid, species: 'okoume' }).number('pressure')).toBe(0.7e6);
    expect(tryCell(clamps, { ...rigid, glue: 'epoxy', species: 'whiteOak' }).number('pressure')).toBe(0.06e6);
  });

  test('a solid timber is clamped where it is glued, at the frames and the ends', () => {
    // Five frames, stem and transom: seats of 57 mm, one clamp for each.
    const seats = {
      ...rigid,
      glue: 'epoxy',
      shop: '20 °C',
      length: `${7 * 57} mm`,
      width: '19 mm',
      places: '7',
    };
    const tried = tryCell(clamps, { ...seats, pieces: '2' });
    expect(tried.number('clamps')).toBe(7);
    expect(tried.words).toBe(
      'Each of the 2 pieces takes 7 clamps, 1 at each of 7 places. Leave them for 24 h.',
    );
    expect(tried.drawing?.says).toMatch(/^1 clamp at one place, on 57 mm of glue; each presses /);
    // A broad seat takes two, and a tight bend of the timber elsewhere asks for no more.
    expect(tryCell(clamps, { ...seats, length: `${7 * 0.2} m` }).number('clamps')).toBe(14);
    expect(tryCell(clamps, { ...seats, length: `${7 * 0.1} m`, radius: '1 m' }).number('clamps')).toBe(7);
    // What the pressure asks for stands at every place alike.
    const hard = tryCell(clamps, { ...seats, glue: 'resorcinol', pressure: '1.5 MPa', capacity: '1000 N' });
    expect(hard.number('clamps')).toBe(7 * Math.ceil((1.5e6 * 0.057 * 0.019) / 1000));
  });

  test('spreading and setting take their time together, and the open time says how many goes', () => {
    // 4 m at half a minute, 23 clamps at half a minute: 13.5 min.
    const tried = tryCell(clamps, { ...rigid, glue: 'epoxy', openAt20: '20 min', shop: '20 °C' });
    expect(tried.number('setting') / 60).toBeCloseTo(4 * 0.5 + 23 * 0.5, 9);
    expect(tried.number('goes')).toBe(1);
    expect(
      tryCell(clamps, { ...rigid, glue: 'epoxy', openAt20: '5 min', shop: '20 °C' }).number('goes'),
    ).toBe(3);
  });

  test('is enough for force and for spread, and one fewer is not', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 200, max: 8000 }),
        fc.integer({ min: 10, max: 300 }),
        fc.integer({ min: 500, max: 6000 }),
        fc.constantFrom('epoxy', 'resorcinol', 'polyurethane', 'pva'),
        (length, width, capacity, glue) => {
          const tried = tryCell(clamps, {
            ...rigid,
            glue,
            length: `${length} mm`,
            width: `${width} mm`,
            capacity: `${capacity} N`,
          });
          const n = tried.number('clamps');
          expect(n * capacity).toBeGreaterThanOrEqual(tried.number('force') * (1 - 1e-9));
          expect(tried.number('evenPitch')).toBeLessThanOrEqual(tried.number('pitch') * (1 + 1e-9));
          const fewer = n - 1;
          expect(
            fewer * capacity < tried.number('force') || fewer * tried.number('pitch') < length / 1000,
          ).toBe(true);
        },
      ),
      { seed: 11, numRuns: 40 },
    );
  });

  test('too few in hand: goes, or screws with a glue that fills gaps', () => {
    const few = { ...rigid, glue: 'polyurethane', inHand: '10' };
    const tried = tryCell(clamps, few);
    expect(tried.number('clamps')).toBe(23);
    expect(tried.number('wanting')).toBe(13);
    expect(tried.number('goes')).toBe(3);
    expect(tried.number('goLength')).toBeCloseTo(4 / 3, 12);
    expect(tried.number('screws')).toBe(Math.ceil((13 * 4) / 23 / 0.075));
    expect(tried.words).toContain('drive 31 screws in place of the missing clamps');
    const hard = tryCell(clamps, { ...rigid, inHand: '10' });
    expect(hard.number('screws')).toBe(0);
    expect(hard.words).toContain('screws do not press enough');
    expect(tryCell(clamps, { ...rigid, inHand: '0' }).number('goes')).toBe(84);
  });

  test('ten kelvin colder, twice as long', () => {
    const at = (shop: string) => tryCell(clamps, { ...rigid, glue: 'epoxy', shop });
    expect(at('20 °C').number('clamped')).toBe(24 * 3600);
    expect(at('10 °C').number('clamped') / at('20 °C').number('clamped')).toBeCloseTo(2, 12);
    expect(at('30 °C').number('open') / at('20 °C').number('open')).toBeCloseTo(0.5, 12);
  });

  test('the radius is that of the edge along which the joint runs', () => {
    const along = { keelsonLayers: 'keel', sideLogs: 'chine', clampFrames: 'sheer', rubRails: 'sheer' };
    for (const [joint, edge] of Object.entries(along)) {
      const typed = tryCell(clamps, { joint, radius: `${edge}.leastRadius` }).number('radius');
      expect(tryCell(clamps, { joint }).number('radius')).toBeCloseTo(typed, 12);
    }
  });

  describe('the order', () => {
    test('from the middle outward: each is as far out as the one before, or farther, and none is left out', () => {
      for (const count of [1, 2, 7, 8, 40]) {
        const places = inOrder({ clamps: count, pitch: 100, from: 'middle' });
        const out = places.map((x) => Math.abs(x - count * 50));
        expect(out).toEqual(out.toSorted((a, b) => a - b));
        expect(places.toSorted((a, b) => a - b)).toEqual(inOrder({ clamps: count, pitch: 100, from: 'end' }));
      }
    });

    test('from one end: one after the other, the first half a pitch in', () => {
      expect(inOrder({ clamps: 4, pitch: 100, from: 'end' })).toEqual([50, 150, 250, 350]);
    });
  });

  describe('warnings', () => {
    test('none for epoxy in a warm shop with clamps enough', () =>
      expect(says({ ...rigid, glue: 'epoxy' })).toBe(''));
    test('too cold', () => expect(says({ ...rigid, shop: '15 °C' })).toContain('may never cure'));
    test('too slow', () => expect(says(rigid)).toContain('must be closed within'));
    test('pressure outside the range', () =>
      expect(says({ ...rigid, pressure: '200 kPa' })).toContain('outside the range of this glue'));
    test('a face wider than one row presses', () => expect(says(rigid)).toContain('from both edges'));
    test('clamps wanting', () =>
      expect(says({ ...rigid, inHand: '5' })).toContain('You are 79 clamps short'));
  });

  test.each([
    ...starters,
    { id: 'no chines', table: withoutChines },
    { id: 'two chines', table: withTwoChines },
  ])('every part has a row on the $id', ({ table }) => {
    const tried = tryCell(clamps, {}, table);
    expect(tried.issues).toEqual({});
    expect(tried.number('clampLayers.clamps')).toBeGreaterThan(0);
    provesItsDrawing(tried.drawing);
  });

  test('lights the parts of the joint chosen and no others, as glue does', () => {
    const lit = (cell: Cell, joint: string) => aboutOf(cell, () => joint);
    for (const cell of [clamps, glue]) {
      expect(lit(cell, 'logFrames')).toStrictEqual(['chineLog', 'frame']);
      expect(lit(cell, 'bottomKeelson')).toStrictEqual(['keelson', 'bottom']);
      expect(lit(cell, 'clampLayers')).toStrictEqual(['sheerClamp']);
    }
    expect(lit(glue, 'all')).toStrictEqual(['keelson', 'chineLog', 'sheerClamp', 'rubRail']);
  });

  testDrawings(clamps, {
    'as it stands': {},
    'from one end': { order: 'end' },
    'at the frames': { places: '7', length: '400 mm' },
    'no such joint': { length: '0 m' },
    'one clamp': { length: '100 mm', glue: 'epoxy', width: '20 mm' },
    'a few': { length: '600 mm', glue: 'epoxy' },
    'no caul': { caul: '0 mm' },
    'very thick': { ply: '300 mm', caul: '100 mm' },
    'very close': { ply: '2 mm', caul: '0 mm', glue: 'pva' },
  });

  test('the drawing spans the pitch and the thicknesses it says', () => {
    const tried = tryCell(clamps, { ...rigid, glue: 'epoxy', length: '3.5 m', ply: '20 mm' }, demoBoat);
    expect(tried.number('evenPitch')).toBeCloseTo(0.175, 12);
    expect(measured(tried.drawing, '175 mm')).toBeCloseTo(175, 9);
    expect(measured(tried.drawing, '20 mm')).toBeCloseTo(20, 9);
    expect(measured(tried.drawing, '18 mm')).toBeCloseTo(18, 9);
    const numbers = tried.drawing!.shapes.flatMap((shape) =>
      shape.shape === 'note' && shape.at ? [[Number(shape.text), shape.at[0]] as const] : [],
    );
    expect(numbers.map(([number]) => number)).toEqual([1, 2, 3, 4, 5]);
    // Twenty clamps: the middle lies between the first two.
    expect((numbers[0]![1] + numbers[1]![1]) / 2).toBeCloseTo(1750, 9);
  });
});
