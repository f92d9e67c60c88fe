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
    expect(tried({ aim: 'basic' }).warnings).toStrictEqual([]);
    expect(tried({ weight: '-1 kg' }).issues['weight']).toBeDefined();
  });

  test('says which end floats lower', () => {
    expect(tried({ peopleForward: '3.2 m', fitted: '0.28 m^3' }).words).toMatch(/her bow [\d.]+° down/);
    expect(
      tried({ peopleForward: '0.5 m', weight: '600 kg', persons: '500 kg', fitted: '0.28 m^3' }).words,
    ).toMatch(/her stern [\d.]+° down/);
  });
});

/** Nothing but foam bears her: both strips 4 m long, 0.15 m broad, from 0.25 to 0.55 m up, of 32 kg/m3, full. */
const strips = {
  drive: 'hand',
  finish: '0 kg',
  metal: '0 kg',
  wood: '0 kg',
  soak: '0 %',
  fills: '100 %',
  fitted: '0.36 m^3',
  seat: '200 mm',
  peopleForward: '2 m',
  foamDensity: '32 kg/m^3',
  thick: '150 mm',
  stripDown: '300 mm',
  below: '50 mm',
};
const onStrips = (entries: Record<string, string>) => tryCell(flotation, { ...strips, ...entries }, boxTable);
const AREA = 2 * 4 * 0.15;
/** Of both strips about the centreline. */
const INERTIA = 2 * (4 * 0.15) * (0.725 ** 2 + 0.15 ** 2 / 12);
/** So much of it hangs at a height: how deep the strips are in the water, and how stiff she is. */
const onWater = (hangs: number, at: number) => {
  const mass = 0.36 * 32 + hangs;
  const volume = mass / WATER;
  const deep = volume / AREA;
  const centre = (0.36 * 32 * 0.4 + hangs * at) / mass;
  const radius = INERTIA / volume;
  return { mass, radius, out: 0.35 - deep, stiff: 0.25 + deep / 2 + radius - centre };
};

describe('full of water, on two strips of foam (closed form)', () => {
  test('two in the water at her gunwale: how deep, how stiff, level', () => {
    const one = onStrips({ lying: 'round', hanging: '2', person: '75 kg' });
    const { out, stiff } = onWater(20, 0.6);
    expect(one.number('hang')).toBe(2);
    expect(['fromSide', 'overSeat', 'endReach'].map((key) => one.number(key))).toStrictEqual(
      [6, 4, 24].map((inches) => expect.closeTo(inches * 0.0254, 9) as number),
    );
    expect(one.number('swampedLies')).toBe(1);
    expect(one.number('swampedLow')).toBeCloseTo(out, 6);
    expect(one.number('swampedBy')).toBeCloseTo(out, 6);
    expect(one.number('swampedStiff')).toBeCloseTo(stiff, 6);
    for (const key of ['swampedHeel', 'swampedTrim', 'swampedTilt', 'hangHeel', 'hangTrim'])
      expect(one.number(key)).toBeCloseTo(0, 6);
    expect(one.words).toContain('lies upright, level fore and aft');
  });

  test('on one side they heel her as plumb sides do', () => {
    const one = onStrips({ lying: 'abeam', hanging: '2', person: '75 kg' });
    const { mass, radius, stiff } = onWater(20, 0.6);
    let tan = 0;
    for (let i = 0; i < 100; i += 1) tan = (20 * 0.8) / mass / (stiff + (radius / 2) * tan ** 2);
    expect(one.number('swampedHeel')).toBeCloseTo(Math.atan(tan), 5);
    expect(one.words).toContain('on one side, she lies over by');
  });

  test('so many leave her gunwale out as the strips bear, and no more', () => {
    // 0.36 (62.4 lb/ft3 - 32 kg/m3) over 10 kg each, and the strips are under.
    const one = onStrips({ person: '75 kg' });
    expect(one.number('hands')).toBe(Math.floor((0.36 * (WATER - 32)) / 10));
    expect(one.number('dryHands')).toBe(24);
    expect(onStrips({ person: '200 kg' }).number('dryHands')).toBe(
      Math.floor((0.36 * (WATER - 32)) / ((2 / 15) * 200)),
    );
  });

  test('the three tests of the rule: 10°, 30°, one end out, the other 6 or 12 in under', () => {
    const load = { persons: '270 kg', weight: '300 kg' };
    const one = onStrips(load);
    const seat = 0.2 + 4 * 0.0254;
    expect(one.number('noneHeel')).toBeCloseTo(0, 6);
    expect(one.number('noneUnder')).toBeCloseTo(-onWater(0, 0).out, 6);
    expect(one.number('noneOut')).toBeCloseTo(onWater(0, 0).out, 6);
    const { out } = onWater(36 + 7.5, seat);
    expect(one.number('middleHeel')).toBeCloseTo(0, 6);
    expect([one.number('middleUnder'), one.number('middleOut')].map((v) => v.toFixed(6))).toStrictEqual(
      [-out, out].map((v) => v.toFixed(6)),
    );
    const half = onWater(18 + 7.5, seat);
    let tan = 0;
    for (let i = 0; i < 100; i += 1)
      tan = (18 * (0.8 - 6 * 0.0254)) / half.mass / (half.stiff + (half.radius / 2) * tan ** 2);
    expect(one.number('sideHeel')).toBeCloseTo(Math.atan(tan), 5);
    expect(one.number('sideUnder')).toBeCloseTo(-half.out * Math.cos(Math.atan(tan)), 2);
    expect(one.number('sideOut')).toBeGreaterThan(-one.number('sideUnder'));
    for (const key of ['noneMeets', 'middleMeets', 'sideMeets']) expect(one.number(key)).toBe(1);
  });

  test('what weighs nothing, foam and all, has no waterline, and the rest stands', () => {
    const one = onStrips({ fitted: '0 m^3', wood: '68e-323 kg', lying: 'none' });
    expect(one.issues['swampedHeel']).toBe('what weighs nothing has no waterline');
    expect(one.number('spare')).toBe(0);
  });

  test('held up by nothing she goes down; a great weight high up turns her over', () => {
    const down = onStrips({ fitted: '0.005 m^3', metal: '100 kg' });
    expect([down.number('swampedLies'), down.number('middleMeets')]).toStrictEqual([0, 0]);
    expect(down.words).toContain('she goes down');
    expect(down.warnings.map((one) => one.says).join(' ')).toContain('goes down');
    const over = onStrips({
      drive: 'outboard',
      rated: '90 hp',
      motorForward: '2 m',
      motorHeight: '5 m',
      lying: 'none',
    });
    expect(over.number('swampedStiff')).toBeLessThan(0);
    expect(over.number('swampedHeel')).toBeGreaterThan(Math.PI / 2);
    expect(over.words).toContain('turns her keel up');
    expect(over.warnings.map((one) => one.says).join(' ')).toContain('won’t stay upright');
  });
});

testDrawings(flotation, {
  'along the sides': {},
  'under the thwarts': { where: 'under' },
  none: { fitted: '0 m^3' },
  'to one side': { lying: 'side' },
});
