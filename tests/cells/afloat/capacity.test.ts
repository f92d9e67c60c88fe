import { describe, expect, test } from 'vitest';
import { buildHull, offsetsOf } from '../../../src/boat';
import { sideLoadsOf } from '../../../src/boat/hull/float-plane';
import { capacity } from '../../../src/cells/afloat/capacity';
import { weights } from '../../../src/cells/afloat/weights';
import { transomCut } from '../../../src/cells/frames/transom-cut';
import { box, wedge } from '../../boat/shapes';
import { testDrawings } from '../proofs';
import { tableThrough } from '../shape/table-through';
import { tryCell } from '../try-cell';

const LB = 0.453_592_37;
const HP = 745.699_871_582_27;
const WATER = (62.4 * LB) / 0.3048 ** 3;
const boxTable = tableThrough(box(4, 1.6, 0.6));
const inBox = (entries: Readonly<Record<string, string>> = {}) => tryCell(capacity, entries, boxTable);

const noGear = Object.fromEntries(['A', 'B', 'C', 'D'].map((one) => [`weights.gear${one}Mass`, '0 kg']));

/** A boat of 16 by 5 ft whose figures are round. */
const set = {
  displacement: '2600 lb',
  boatWeight: '350 lb',
  margin: '0 %',
  length: '16 ft',
  breadth: '5 ft',
  beam: '6 ft',
  bottom: 'other',
  transom: '15 in',
  rated: '10 hp',
  sideLoad: '150 lb',
};
const tried = (entries: Record<string, string> = {}) => tryCell(capacity, { ...set, ...entries });
const says = (entries: Record<string, string>) =>
  tried(entries)
    .warnings.map((one) => one.says)
    .join(' ');

describe('what the hull of a box 4 by 1.6 by 0.6 m gives the rule', () => {
  test('water pushed aside up to the sheer or the cut-out', () => {
    expect(inBox({ drive: 'hand' }).number('displacement')).toBeCloseTo(WATER * 4 * 1.6 * 0.6, 6);
    // Where the transom's cell stands nowhere its cut-out is taken at 15 in.
    expect(inBox().number('displacement')).toBeCloseTo(WATER * 4 * 1.6 * 0.381, 6);
    expect(inBox({ drive: 'well' }).number('displacement')).toBeCloseTo(WATER * 4 * 1.6 * 0.6, 6);
    const cut = tryCell(capacity, { 'transomCut.motorHeight': '20 in' }, boxTable, undefined, [transomCut]);
    expect(cut.number('displacement')).toBeCloseTo(WATER * 4 * 1.6 * 0.508, 6);
    expect(cut.number('transom')).toBeCloseTo(0.508, 12);
  });

  test('the load along one side is that of her bare wood, of the seat where it is, and of the cut-out', () => {
    const hull = buildHull(offsetsOf(boxTable));
    const bare = tryCell(capacity, { drive: 'well', 'thwart.height': '300 mm' }, boxTable);
    const weighed = tryCell(
      capacity,
      {
        drive: 'well',
        'thwart.height': '300 mm',
        'weights.peopleForward': '2 m',
        'weights.moisture': '12 %',
        'weights.weighed': 'scales',
        'weights.aftReads': '60 kg',
        'weights.foreReads': '60 kg',
        'weights.aftAt': '1 m',
        'weights.foreAt': '3 m',
        ...noGear,
      },
      boxTable,
      undefined,
      [weights],
    );
    const height = tryCell(weights, { moisture: '12 %', 'thwart.height': '300 mm' }, boxTable).number(
      'hullHeight',
    );
    expect(weighed.number('boatWeight')).toBeCloseTo(120, 9);
    expect(weighed.number('sideLoad')).toBeCloseTo(
      sideLoadsOf(hull, { mass: 120, forward: 2, height }, { forward: 2, height: 0.3 }, WATER)(null),
      6,
    );
    const over = tryCell(capacity, { 'thwart.height': '300 mm' }, boxTable);
    expect(over.number('sideLoad')).toBeLessThanOrEqual(bare.number('sideLoad'));
  });

  test('the breadth of a full transom, or of the after quarter', () => {
    expect(inBox().number('breadth')).toBeCloseTo(1.6, 9);
    // Sharp aft: turned about, a wedge is broadest at the bow.
    const sharp = wedge(4, 1.6, 0.6);
    const turned = Object.fromEntries(
      Object.entries(sharp).map(([edge, points]) => [
        edge,
        points.map(([x, y, z]) => [4 - x, y, z] as const).toReversed(),
      ]),
    );
    expect(tryCell(capacity, { drive: 'well' }, tableThrough(turned)).number('breadth')).toBeCloseTo(0.4, 6);
  });

  test('a bottom without rise is flat', () => {
    expect(inBox().all['bottom']).toBe('flat');
  });
});

describe('the method step by step', () => {
  test('an outboard boat', () => {
    const one = tried({ margin: '5 %' });
    expect(one.number('counted')).toBeCloseTo(2470 * LB, 6);
    expect(one.number('spare')).toBeCloseTo(2120 * LB, 6);
    expect(one.number('outboards')).toBe(1);
    expect(one.number('weight')).toBeCloseTo(424 * LB, 6);
    expect(one.number('factor')).toBeCloseTo(80, 9);
    expect(one.number('whole')).toBe(80);
    expect(one.number('tabled')).toBe(15);
    expect(one.number('raw')).toBeCloseTo(39, 9);
    expect(one.number('horsepower')).toBe(40);
    expect(one.number('mostPower')).toBeCloseTo(40 * HP, 6);
    expect(one.number('power')).toBeCloseTo(10 * HP, 6);
    expect(one.number('equipment')).toBeCloseTo(185 * LB, 6);
    expect(one.number('byWeight')).toBeCloseTo(239 * LB, 6);
    expect(one.number('bySide')).toBeCloseTo(250 * LB, 6);
    expect(one.number('personsWeight')).toBeCloseTo(239 * LB, 6);
    // (239 + 32)/141 = 1.92
    expect(one.number('persons')).toBe(2);
    expect(one.number('slender')).toBeCloseTo(16 / 6, 9);
    expect(one.warnings).toStrictEqual([]);
  });

  test('with less beside her than by weight; past 550 lb that is not asked', () => {
    expect(tried({ margin: '5 %', sideLoad: '120 lb' }).number('personsWeight')).toBeCloseTo(200 * LB, 6);
    const heavy = tried({ displacement: '4100 lb', sideLoad: '120 lb' });
    expect(heavy.number('byWeight')).toBeCloseTo(565 * LB, 6);
    expect(heavy.number('personsWeight')).toBeCloseTo(565 * LB, 6);
  });

  test('the older table of motors, and the edges of a row', () => {
    expect(tried({ edition: 'before' }).number('equipment')).toBeCloseTo(160 * LB, 6);
    expect(tried({ rated: '10.9 hp' }).number('equipment')).toBeCloseTo(185 * LB, 6);
    expect(tried({ rated: '11 hp' }).number('equipment')).toBeCloseTo(234 * LB, 6);
    expect(tried({ rated: '0 hp' }).number('equipment')).toBe(0);
  });

  test('between 52 and 52.5 the table holds, as rounded', () => {
    const at = (length: string, bottom = 'other') =>
      tried({ length, breadth: '4 ft', bottom }).number('horsepower');
    expect(at('13.1 ft')).toBe(15);
    expect(at('13.1 ft', 'flat')).toBe(10);
    // 0.8 x 52.8 - 25 = 17.24
    expect(at('13.2 ft')).toBe(20);
    expect(at('8.875 ft')).toBe(5);
    expect(at('8.87 ft')).toBe(3);
    expect(at('10.5 ft')).toBe(7.5);
    expect(at('11.25 ft', 'flat')).toBe(7.5);
  });

  test('by oars, and with a motor of up to 2 hp', () => {
    const hand = tried({ drive: 'hand' });
    expect(hand.number('weight')).toBeCloseTo(675 * LB, 6);
    expect(hand.number('power')).toBe(0);
    expect(hand.number('equipment')).toBe(0);
    const small = tried({ drive: 'small' });
    expect(small.number('byWeight')).toBeCloseTo(582.5 * LB, 6);
    expect(small.number('power')).toBeCloseTo(2 * HP, 6);
    expect(small.words).toContain('up to 2 horsepower');
    expect(hand.words).toContain('No motor');
  });
});

describe('where the rule ends', () => {
  test('it says so first', () => {
    expect(tried().words).toMatch(/^The rule is for boats of one hull under 20 ft/);
    expect(says({ length: '20 ft' })).toContain('none of these figures is for her');
    expect(says({ length: '19 ft 11 in', beam: '7 ft' })).toBe('');
  });

  test('nothing is left for people', () => {
    expect(says({ boatWeight: '2700 lb' })).toContain('nothing is left for people');
    expect(tried({ boatWeight: '2700 lb' }).number('persons')).toBe(0);
    expect(says({ displacement: '1200 lb' })).toContain('nobody');
  });

  test('a motor stronger than it allows, a flat bottom below the table, and a narrow boat', () => {
    expect(says({ rated: '50 hp' })).toContain('the rule allows');
    expect(tried({ rated: '50 hp' }).number('power')).toBeCloseTo(40 * HP, 6);
    expect(says({ length: '10 ft', breadth: '3.5 ft', bottom: 'flat' })).toContain('no outboard');
    expect(says({ beam: '5 ft' })).toContain('take less');
    expect(tried({ rated: '351 hp' }).issues['rated']).toBeDefined();
  });
});

test('the plate says what stands beside it', () => {
  const notes = (entries: Record<string, string>) =>
    (tried(entries).drawing?.shapes ?? []).flatMap((shape) =>
      shape.shape === 'note' && shape.at ? [shape.text] : [],
    );
  expect(notes({})).toStrictEqual(['2 persons or 113 kg', '204 kg: persons, motor, gear', '7.45 kW: motor']);
  expect(notes({ drive: 'hand' }).at(-1)).toBe('not rated for a motor');
});

testDrawings(capacity, {
  'an outboard': {},
  'by hand': { drive: 'hand' },
  'little room': { boatWeight: '2 t' },
});
