import { describe, expect, test } from 'vitest';
import { buildHull, offsetsOf, starters } from '../../../src/boat';
import { weights } from '../../../src/cells/afloat/weights';
import { type Tried, tryCell } from '../try-cell';
import { provesItsDrawing } from '../proofs';
import { deriveBoat } from '../../boat/derive';
import { box } from '../../boat/shapes';
import { withTwoChines } from '../odd-boats';
import { tableThrough } from '../shape/table-through';
import '../../kernel/near';

/** Only what is typed here weighs anything. */
const bare = {
  people: '0',
  motor: '0 kg',
  fuel: '0 kg',
  gearAMass: '0 kg',
  gearBMass: '0 kg',
  gearCMass: '0 kg',
  gearDMass: '0 kg',
  moisture: '12 %',
  sheathing: '0 kg',
  glueLines: '0 L',
  filletPaste: '0 L',
  fillerPaste: '0 L',
  screwsIn: '0',
  painted: '0 m^2',
};

/** Parts of the dory at nothing, so that one is typed alone. */
const noWood = Object.fromEntries(
  ['bottom', 'side', 'transom', 'keelson', 'stem', 'log', 'clamp', 'rail', 'frame', 'gusset', 'thwart'].map(
    (part) => [`${part}Mass`, '0 kg'],
  ),
);

/** Sum of masses and its centre, from the rows of the table. */
function fromRows(tried: Tried, without: readonly string[] = []) {
  const rows = tried.rows
    .filter(({ id }) => !without.includes(id))
    .map(
      ({ id }) =>
        ['partMass', 'partX', 'partZ'].map((key) => Number(tried.inRow(id, key))) as [number, number, number],
    );
  const mass = rows.reduce((sum, [m]) => sum + m, 0);
  const at = (axis: 1 | 2) => rows.reduce((sum, row) => sum + row[0] * row[axis], 0) / mass;
  return { mass, x: at(1), z: at(2) };
}

describe('weights', () => {
  test.each(starters.map(({ id, table }) => [id, table] as const))(
    'on %s the rows of the table add up to all aboard, and to its centre',
    (_, table) => {
      const tried = tryCell(
        weights,
        {
          motor: '30 kg',
          fuel: '12 kg',
          sheathing: '9 kg',
          glueLines: '1 L',
          moisture: '15 %',
          gearDMass: '3 kg',
        },
        table,
      );
      const all = fromRows(tried);
      expect(tried.number('loaded')).toBeNear(all.mass, 1e-12);
      expect(tried.number('centreForward')).toBeNear(all.x, 1e-12);
      expect(tried.number('centreHeight')).toBeNear(all.z, 1e-12);
      const rigged = fromRows(tried, ['people']);
      expect(tried.number('rigged')).toBeNear(rigged.mass, 1e-12);
      expect(tried.number('riggedForward')).toBeNear(rigged.x, 1e-12);
      expect(tried.number('riggedHeight')).toBeNear(rigged.z, 1e-12);
      const hull = fromRows(tried, ['people', 'outboard', 'petrol', 'gearA', 'gearB', 'gearC', 'gearD']);
      expect(tried.number('hull')).toBeNear(hull.mass, 1e-12);
      expect(tried.number('hullForward')).toBeNear(hull.x, 1e-12);
      expect(tried.number('hullHeight')).toBeNear(hull.z, 1e-12);
      const shares = tried.rows.reduce((sum, { id }) => sum + Number(tried.inRow(id, 'partShare')), 0);
      expect(shares).toBeNear(1, 1e-12);
    },
  );

  test.each([
    ...starters.map(({ id, table }) => [id, table] as const),
    ['two chines', withTwoChines] as const,
  ])('on %s her wood is that of the boat, and lies where it does', (_, table) => {
    const tried = tryCell(weights, {}, table);
    const boat = deriveBoat(table);
    expect(tried.number('bareWood')).toBeNear(boat.number('hull.structureMass'), 1e-12);
    expect(tried.number('woodForward')).toBeNear(boat.number('hull.structureCentre.x'), 1e-9);
    expect(tried.number('woodHeight')).toBeNear(boat.number('hull.structureCentre.z'), 1e-9);
  });

  test('a part that she has not got weighs nothing, whatever is typed in its field', () => {
    const dory = tryCell(weights);
    expect(dory.number('bowTransoms')).toBe(0);
    expect(tryCell(weights, { bowMass: '8 kg', bilgeMass: '5 kg' }).number('bareWood')).toBe(
      dory.number('bareWood'),
    );
    const punt = starters.find(({ id }) => id === 'creek-punt')!.table;
    const typed = (bowMass: string) => tryCell(weights, { bowMass }, punt).number('bareWood');
    expect(tryCell(weights, {}, punt).number('bowTransoms')).toBe(1);
    expect(typed('8 kg') - typed('3 kg')).toBeCloseTo(5, 9);
  });

  test('a part that she has not got has no row', () => {
    const listed = tryCell(weights, bare).rows.map(({ id }) => id);
    expect(listed).toContain('bottom');
    expect(listed).toContain('stem');
    expect(listed).not.toContain('bowTransom');
    expect(listed).not.toContain('coats');
    expect(listed).not.toContain('people');
    expect(tryCell(weights, { ...bare, part: 'bowTransom' }).number('listed')).toBe(0);
  });

  test('a share of water more in the wood weighs that share of its dry weight more', () => {
    const at = (moisture: string) => tryCell(weights, { ...bare, ...noWood, bottomMass: '112 kg', moisture });
    expect(at('12 %').number('wetness')).toBe(1);
    expect(at('22 %').number('wood')).toBeNear(122, 1e-12);
    expect(at('22 %').number('waterTaken')).toBeNear(5, 1e-12);
  });

  test('glue, fillets, filler, screws and paint by hand', () => {
    const tried = tryCell(weights, {
      ...bare,
      sheathing: '4 kg',
      glueLines: '2 L',
      glueWeight: '1100 kg/m^3',
      filletPaste: '3 L',
      fillerPaste: '1 L',
      pasteWeight: '1000 kg/m^3',
      screwsIn: '500',
      oneScrew: '3 g',
      painted: '10 m^2',
      dryPaint: '200 µm',
      paintWeight: '1500 kg/m^3',
    });
    expect(tried.number('pastes')).toBeNear(6.2, 1e-12);
    expect(tried.number('fastenings')).toBeNear(1.5, 1e-12);
    expect(tried.number('coats')).toBeNear(3, 1e-12);
    expect(tried.number('finish')).toBeNear(14.7, 1e-12);
    expect(tried.number('reckoned')).toBeNear(tried.number('wood') + 14.7, 1e-12);
  });

  test('doubts of wood and finish add as squares, and a scale ends them', () => {
    const typed = {
      ...bare,
      ...noWood,
      sideMass: '80 kg',
      sheathing: '20 kg',
      woodDoubt: '10 %',
      finishDoubt: '30 %',
    };
    const tried = tryCell(weights, typed);
    expect(tried.number('doubt')).toBeNear(10, 1e-12);
    expect(tried.number('hullLeast')).toBeNear(90, 1e-12);
    expect(tried.number('hullMost')).toBeNear(110 + (80 / 1.12) * 0.05, 1e-12);
    const known = tryCell(weights, { ...typed, weighed: 'scales', aftReads: '70 kg', foreReads: '50 kg' });
    expect(known.number('doubt')).toBe(0);
    expect(known.number('correction')).toBeNear(20, 1e-12);
    expect(known.number('correctionSize')).toBeNear(20, 1e-12);
    expect(known.words).toContain('20 kg more than reckoned');
    const less = tryCell(weights, { ...typed, weighed: 'scales', aftReads: '50 kg', foreReads: '30 kg' });
    expect(less.number('correctionSize')).toBeNear(20, 1e-12);
    expect(less.words).toContain('20 kg less than reckoned');
  });

  test('the scales move the centre to where their loads balance', () => {
    const tried = tryCell(weights, {
      ...bare,
      weighed: 'lever',
      leverage: '2',
      aftReads: '20 kg',
      foreReads: '30 kg',
      aftAt: '1 m',
      foreAt: '3 m',
    });
    expect(tried.number('arms')).toBe(2);
    expect(tried.number('onAft')).toBeNear(40, 1e-12);
    expect(tried.number('onFore')).toBeNear(60, 1e-12);
    expect(tried.number('weighedMass')).toBeNear(100, 1e-12);
    expect(tried.number('hullForward')).toBeNear(2.2, 1e-12);
    expect(tried.number('correctionForward')).toBeNear(2.2 - tried.number('reckonedForward'), 1e-12);
    expect(tried.number('correctionForwardSize')).toBe(Math.abs(tried.number('correctionForward')));
  });

  test('things to one side move the centre to that side', () => {
    const tried = tryCell(weights, {
      ...bare,
      ...noWood,
      keelsonMass: '50 kg',
      gearAMass: '30 kg',
      gearASide: '300 mm',
      people: '1',
      person: '80 kg',
      peopleSide: '-400 mm',
    });
    expect(tried.number('gear')).toBe(30);
    expect(tried.number('crew')).toBe(80);
    expect(tried.number('riggedSide')).toBeNear(9 / 80, 1e-12);
    expect(tried.number('centreSide')).toBeNear((9 - 32) / 160, 1e-12);
    expect(tried.number('centreAside')).toBe(-tried.number('centreSide'));
    expect(tried.warnings.map(({ says }) => says).join(' ')).toContain('to starboard');
  });

  test.each([
    ['keelHeight', 0],
    ['usualPeopleHeight', 0.43],
    ['usualLow', 0.1],
    ['sternTop', 0],
    ['usualStern', -0.15],
    ['usualMotorHeight', 0.4],
    ['usualMiddle', 2],
    ['usualBow', 3.2],
    ['usualTank', 0.8],
    ['skinForward', 2],
    // Two sides of 0.4 at half their height, and a bottom of 1.2.
    ['skinHeight', (0.8 * 0.2) / 2],
    ['seamForward', 2],
    ['seamHeight', (2 * 0.4) / 5],
    ['beam', 1.2],
    ['toSheer', 4 * 1.2 * 0.4],
    ['bears', 1000 * 4 * 1.2 * 0.4],
  ])('in a box of 4 by 1.2 by 0.4 m %s is %f by hand', (key, value) => {
    const tried = tryCell(weights, { seat: '180 mm' }, tableThrough(box(4, 1.2, 0.4)));
    expect(tried.number(key)).toBeNear(value, 1e-9, 1e-12);
  });

  test('the part looked at is told as its row tells it', () => {
    const tried = tryCell(weights, {
      ...bare,
      part: 'gearB',
      gearBMass: '7 kg',
      gearBForward: '2 m',
      gearBHeight: '0.3 m',
    });
    expect(tried.number('partMass')).toBe(7);
    expect(tried.number('partX')).toBe(2);
    expect(tried.number('partZ')).toBe(0.3);
    expect(tried.number('partShare')).toBeNear(7 / tried.number('loaded'), 1e-12);
  });

  test('the centre lies within the boat on every starter', () => {
    for (const { table } of starters) {
      const tried = tryCell(weights, {}, table);
      const { length, aft } = buildHull(offsetsOf(table));
      expect(tried.number('centreForward')).toBeGreaterThan(aft.x);
      expect(tried.number('centreForward')).toBeLessThan(length);
      expect(tried.number('hullLeast')).toBeLessThan(tried.number('hullMost'));
    }
  });

  test('the drawing bears the sums that stand beside it', () => {
    const drawing = provesItsDrawing(tryCell(weights, bare).drawing);
    expect(drawing.says).toContain('Hull 78.2 kg');
    const texts = drawing.shapes.flatMap((shape) => ('text' in shape ? [shape.text] : []));
    expect(texts.filter((text) => /^(hull|loaded) \d/.test(text))).toHaveLength(2);
  });
});
