import { describe, expect, test } from 'vitest';
import { flotation } from '../../../src/cells/afloat/flotation';
import { box } from '../../boat/shapes';
import { testDrawings } from '../proofs';
import { tableThrough } from '../shape/table-through';
import { tryCell } from '../try-cell';

const WATER = (62.4 * 0.453_592_37) / 0.3048 ** 3;
const boxTable = tableThrough(box(4, 1.6, 0.6));
/** Four bays of a metre, with 0.072 m3 of room in each. */
const set = {
  drive: 'hand',
  weight: '300 kg',
  persons: '270 kg',
  finish: '30 kg',
  finishDensity: '1500 kg/m^3',
  metal: '10 kg',
  metalDensity: '7850 kg/m^3',
  wood: '100 kg',
  wetDensity: '650 kg/m^3',
  foamDensity: '32 kg/m^3',
  soak: '5 %',
  fills: '80 %',
  thick: '150 mm',
  stripDown: '300 mm',
  bay: 'frame1',
  person: '75 kg',
  peopleForward: '2.4 m',
  motorForward: '-0.2 m',
  hullForward: '2 m',
  rated: '10 hp',
  equipment: '84 kg',
};
const tried = (entries: Record<string, string> = {}) => tryCell(flotation, { ...set, ...entries }, boxTable);
const says = (entries: Record<string, string>) =>
  tried(entries)
    .warnings.map((one) => one.says)
    .join(' ');

const parts = 30 * (1 - WATER / 1500) + 10 * (1 - WATER / 7850);
const holds = WATER * 0.95 - 32;

describe('a box 4 by 1.6 by 0.6 m, by hand', () => {
  test('what hangs on the foam, and the foam', () => {
    const one = tried();
    expect(one.number('water')).toBeCloseTo(WATER, 9);
    expect(one.number('strict')).toBe(0);
    expect(one.number('peopleSink')).toBeCloseTo(36, 9);
    expect(one.number('dead')).toBeCloseTo(30, 9);
    expect(one.number('gearSinks')).toBeCloseTo(7.5, 9);
    expect(one.number('motorSinks')).toBe(0);
    expect(one.number('partsSink')).toBeCloseTo(parts, 9);
    expect(one.number('woodHolds')).toBe(0);
    expect(one.number('sinks')).toBeCloseTo(43.5 + parts, 9);
    expect(one.number('foamHolds')).toBeCloseTo(holds, 9);
    expect(one.number('foam')).toBeCloseTo((43.5 + parts) / holds, 9);
    expect(one.number('toBuy')).toBeCloseTo((1.1 * (43.5 + parts)) / holds, 9);
    expect(one.number('sheets')).toBe(1);
    expect(tried({ fitted: '0.28 m^3' }).number('sheets')).toBe(3);
    expect(one.number('motorFoam')).toBe(0);
  });

  test('wood counted on takes the place of foam', () => {
    const one = tried({ credit: '50 %' });
    const lift = 50 * (WATER / 650 - 1);
    expect(one.number('woodHolds')).toBeCloseTo(lift, 9);
    expect(one.number('foam')).toBeCloseTo((43.5 + parts - lift) / holds, 9);
    expect(tried({ credit: '100 %', wood: '500 kg' }).number('foam')).toBe(0);
  });

  test('foam goes into the bays nearest to the people, till each is full', () => {
    const one = tried({ fitted: '0.1 m^3' });
    expect(one.number('room')).toBeCloseTo(4 * 0.072, 9);
    expect(one.number('lacks')).toBe(0);
    expect(one.inRow('frame2', 'bayFoam')).toBeCloseTo(0.072, 9);
    expect(one.inRow('frame1', 'bayFoam')).toBeCloseTo(0.028, 9);
    expect(one.inRow('frame3', 'bayFoam')).toBe(0);
    expect(one.inRow('frame1', 'bayRoom')).toBeCloseTo(0.072, 9);
    expect(one.rows.map(({ id }) => id)).not.toContain('frame4');
    expect(one.number('bayThere')).toBe(1);
    expect(one.number('foamForward')).toBeCloseTo((0.072 * 2.5 + 0.028 * 1.5) / 0.1, 9);
  });

  test('the motor’s share goes to the stern', () => {
    const one = tried({ drive: 'outboard', fitted: '0.2 m^3' });
    // 94 + 5 + 11 lb
    expect(one.number('motorSinks')).toBeCloseTo(110 * 0.453_592_37, 9);
    const share = (110 * 0.453_592_37) / holds;
    expect(one.number('motorFoam')).toBeCloseTo(share, 9);
    expect(one.inRow('frame0', 'bayFoam')).toBeCloseTo(share, 9);
    expect(one.inRow('frame2', 'bayFoam')).toBeCloseTo(0.072, 9);
    expect(one.number('strict')).toBe(1);
    const [people, gear] = [0.5 * 249.4758035 + 0.125 * (270 - 249.4758035), 0];
    expect(one.number('peopleSink')).toBeCloseTo(people, 6);
    expect(one.number('hangsForward')).toBeCloseTo(
      ((people + gear) * 2.4 - 110 * 0.453_592_37 * 0.2 + parts * 2) / (people + 110 * 0.453_592_37 + parts),
      6,
    );
    expect(one.number('ahead')).toBeCloseTo(one.number('hangsForward') - one.number('foamForward'), 9);
    expect(one.number('aheadBy')).toBeCloseTo(Math.abs(one.number('ahead')), 12);
  });

  test('how many hang on, and how many sit in her', () => {
    const one = tried({ fitted: '0.2 m^3' });
    expect(one.number('holds')).toBeCloseTo(0.2 * holds, 9);
    expect(one.number('spare')).toBeCloseTo(0.2 * holds - parts, 9);
    expect(one.number('hands')).toBe(Math.floor((0.2 * holds - parts) / 10));
    expect(one.number('sitting')).toBe(Math.floor((0.2 * holds - parts) / 37.5));
    // What finds no place holds nobody.
    expect(tried({ fitted: '1 m^3' }).number('holds')).toBeCloseTo(4 * 0.072 * holds, 6);
    expect(tried({ fitted: '0 m^3' }).number('hands')).toBe(0);
  });

  test('iron for a trial weighs in water what the rule asks', () => {
    const one = tried();
    const iron = 1 - WATER / 7850;
    expect(one.number('ironMiddle') * iron).toBeCloseTo(43.5, 9);
    expect(one.number('ironSide') * iron).toBeCloseTo(18, 9);
  });

  test('says what is amiss', () => {
    expect(says({ fitted: '1 m^3' })).toContain('finds no place');
    expect(says({ fitted: '0.01 m^3' })).toContain('the rule asks for');
    expect(says({ where: 'under' })).toContain('roll over');
    expect(says({ peopleForward: '3.9 m', where: 'sides', fitted: '0.28 m^3' })).toContain('ahead of');
    expect(says({ aim: 'basic', where: 'under' })).toBe('');
    expect(tried({ weight: '-1 kg' }).issues['weight']).toBeDefined();
  });

  test('says which end floats lower', () => {
    expect(tried({ peopleForward: '3.6 m', fitted: '0.28 m^3' }).words).toContain('her bow floats lower');
    expect(tried({ drive: 'outboard', fitted: '0.28 m^3', peopleForward: '1 m' }).words).toContain(
      'her stern floats lower',
    );
  });
});

testDrawings(flotation, {
  'along the sides': {},
  'under the thwarts': { where: 'under' },
  none: { fitted: '0 m^3' },
});
