import { describe, expect, test } from 'vitest';
import { buildHull, offsetsOf, starter, starters, type Table } from '../../../src/boat';
import { answersOf, mannerOf, plainInstance, type Values } from '../../../src/cells';
import { transomCut } from '../../../src/cells/frames/transom-cut';
import { plainShown, type Shown, write } from '../../../src/measure';
import { catalogueOf } from '../../../src/notebook/graph/catalogue';
import { createGraph } from '../../../src/notebook/graph/graph';
import { withTwoChines } from '../odd-boats';
import { measured, provesItsDrawing, testDrawings } from '../proofs';
import { tryCell } from '../try-cell';
import { onHandAlone } from '../alone';

const INCH = 0.0254;
const feet: Shown = { length: 'feet', fraction: 16, mass: 'lb', money: '' };
const dory = starter('ferry-dory')!;
const punt = starter('creek-punt')!;
const launch = starter('vee-launch')!;

function patterns(entries: Record<string, string>, table: Table) {
  const values = tryCell(transomCut, entries, table).all as Values;
  const say = (value: number, kind: Parameters<typeof write>[1]) => write(value, kind, plainShown).text;
  return transomCut.patterns!.draw(values, onHandAlone(transomCut, values, buildHull(offsetsOf(table)), say));
}

describe('transom', () => {
  test('works from typed numbers: 25 in at 14° is 25.77 in up the slope', () => {
    const tried = tryCell(transomCut, { shaft: 'extraLong', rake: '14 deg' });
    expect(tried.number('alongFace') / INCH).toBeCloseTo(25.77, 2);
  });

  test('takes rake and corners from the boat: dory, 160 over 560', () => {
    const tried = tryCell(transomCut, {}, dory);
    expect(tried.number('rake')).toBeCloseTo(Math.atan(160 / 560), 9);
    expect(tried.number('chine.halfBreadth')).toBeLessThan(0.3);
    expect(tried.number('chine.halfBreadth')).toBeGreaterThan(0.29);
    expect(tried.number('sheer.upFace')).toBeCloseTo(
      tried.number('sheer.hullRise') / Math.cos(tried.number('rake')),
      12,
    );
  });

  test('the cut-out is measured to the outside of the bottom: the wood begins its thickness higher', () => {
    const thin = tryCell(transomCut, { bottomThickness: '6 mm' }, dory);
    const thick = tryCell(transomCut, { bottomThickness: '18 mm' }, dory);
    expect(thin.number('alongFace')).toBe(thick.number('alongFace'));
    const less = thin.number('cutAboveEdge') - thick.number('cutAboveEdge');
    // 12 mm more, plumb about 12 and up the slope a little more; the keel slopes there.
    expect(less).toBeGreaterThan(0.012);
    expect(less).toBeLessThan(0.0135);
  });

  test('cut-out, side and top add up', () => {
    const tried = tryCell(transomCut, { shaft: 'long' }, launch);
    const n = (key: string) => tried.number(key);
    expect(n('skinOnFace') + n('cutAboveEdge') + n('cutDepth')).toBeCloseTo(n('topUp'), 12);
    expect(2 * n('sideLeft') + n('cutWidth')).toBeCloseTo(2 * n('halfAtCut'), 12);
    expect(n('freeboard') + n('draught')).toBeCloseTo(0.508, 12);
  });

  test('a motor measured longer than its class holds', () => {
    const tried = tryCell(transomCut, { motorHeight: '17 1/2 in', rake: '0 deg' }, launch);
    expect(tried.number('alongFace') / INCH).toBeCloseTo(17.5, 12);
  });

  test('a plate above the bottom raises the cut-out by as much, plumb', () => {
    const level = tryCell(transomCut, { rake: '13 deg' }, launch);
    const high = tryCell(transomCut, { rake: '13 deg', plateAbove: '1 in' }, launch);
    expect(high.number('cutHeight') - level.number('cutHeight')).toBeCloseTo(INCH, 12);
    expect(high.number('freeboard') - level.number('freeboard')).toBeCloseTo(INCH, 12);
    expect(high.number('alongFace') - level.number('alongFace')).toBeCloseTo(
      INCH / Math.cos((13 * Math.PI) / 180),
      12,
    );
  });

  // The second road: the face as two points, top and bottom of the bracket; aft is +.
  test.each(['20 deg', '5 deg'])(
    'with the wedge where the words put it, a face raked %s stands as the bracket wants it',
    (rake) => {
      const tried = tryCell(transomCut, { rake, motorRake: '13 deg' }, launch);
      const along = tried.number('bracketHeight');
      const lean = tried.number('rake');
      const square = (thick: number) => [thick * Math.cos(lean), thick * Math.sin(lean)] as const;
      const words = tried.warnings.map(({ says }) => says).join(' ');
      const [low, high] = words.includes('thick at its lower end')
        ? [tried.number('wedge'), 0]
        : [0, tried.number('wedge')];
      const bottom = square(low);
      const top = [
        along * Math.sin(lean) + square(high)[0],
        along * Math.cos(lean) - square(high)[1],
      ] as const;
      const packed = Math.atan2(top[0] - bottom[0], top[1] + bottom[1]);
      expect((packed * 180) / Math.PI).toBeCloseTo(13, 9);
    },
  );

  test('both transoms of a punt, and both lean out', () => {
    const stern = tryCell(transomCut, {}, punt);
    const bow = tryCell(transomCut, { end: 'bowTransom' }, punt);
    expect(stern.number('rake')).toBeCloseTo(Math.atan(120 / 310), 9);
    expect(bow.number('rake')).toBeCloseTo(Math.atan(160 / 275), 9);
    expect(bow.number('blankWidth')).toBeLessThan(stern.number('blankWidth'));
    expect(bow.words).toContain('No motor hangs there.');
    expect(bow.warnings).toStrictEqual([]);
  });

  test('a boat with no transom at the bow says so', () => {
    const { issues } = tryCell(transomCut, { end: 'bowTransom' }, dory);
    expect(issues['hullRise']).toBe('this boat has no transom at the bow: it ends in a stem there');
  });

  test('every starter’s stern has numbers, drawing and pattern', () => {
    for (const { table } of [...starters, { table: withTwoChines }]) {
      const tried = tryCell(transomCut, {}, table);
      expect(tried.issues).toStrictEqual({});
      provesItsDrawing(tried.drawing);
      expect(patterns({}, table)).toHaveLength(1);
    }
    expect(patterns({ end: 'bowTransom' }, dory)).toStrictEqual([]);
  });

  describe('warnings', () => {
    const says = (entries: Record<string, string>, table = launch) =>
      tryCell(transomCut, { rake: '13 deg', ...entries }, table).warnings.map((one) => one.says);
    test('none for a long shaft on a high transom at 13°', () => {
      expect(says({ shaft: 'long' })).toStrictEqual([]);
    });
    test.each([
      ['too low', { shaft: 'longest' }, launch, 'Raise it by'],
      ['punt, short shaft', {}, punt, 'Raise it by'],
      ['too wide', { bracket: '1 m', swing: '400 mm' }, launch, 'breaks out at the corners'],
      ['under water', { draught: '600 mm' }, launch, 'over the cut-out'],
      ['little freeboard', { draught: '250 mm' }, launch, 'less than the 200 mm'],
      ['sharp corners', { radius: '10 mm' }, launch, 'let a crack start'],
      ['thin', { pads: '0 mm' }, launch, 'clamps would hold 18 mm'],
      ['thick', { pads: '60 mm' }, launch, 'clamps would hold 78 mm'],
      ['steep', { rake: '20 deg' }, launch, 'thick at its lower end'],
      ['upright', { rake: '5 deg' }, launch, 'thick at its upper end'],
      ['hung high', { plateAbove: '2 in' }, launch, 'draws air sooner'],
    ])('%s', (_what, entries, table, wanted) => {
      expect(says(entries, table).join(' ')).toContain(wanted);
    });
  });

  describe('drawing', () => {
    testDrawings(transomCut, {
      'as it stands': {},
      'no rake': { rake: '0 deg' },
      'leaning in': { rake: '-20 deg' },
      'wide cut': { bracket: '900 mm' },
      'inner face on the line': { face: 'inner', thickness: '60 mm' },
    });

    test('dimensions read as the figures and span them', () => {
      const tried = tryCell(transomCut, { shaft: 'long' }, launch, feet);
      const text = (key: string) => write(tried.number(key), 'length', feet, mannerOf(transomCut, key)).told;
      for (const key of ['blankWidth', 'cutWidth', 'cutDepth', 'alongFace', 'cutHeight', 'topUp']) {
        expect(measured(tried.drawing, text(key))).toBeCloseTo(tried.number(key) * 1000, 6);
      }
    });

    test('from the side the slope’s dimension is the plumb one over the cosine', () => {
      const tried = tryCell(transomCut, { rake: '13 deg' }, launch, feet);
      const [plumb, slope] = (['cutHeight', 'alongFace'] as const).map(
        (key) => write(tried.number(key), 'length', feet, mannerOf(transomCut, key)).told,
      ) as [string, string];
      expect(measured(tried.drawing, plumb) / measured(tried.drawing, slope, 1)).toBeCloseTo(
        Math.cos((13 * Math.PI) / 180),
        6,
      );
    });
  });

  test('the pattern’s larger face lies outside the other, and its cut-out where the figures say', () => {
    const [pattern] = patterns({}, launch);
    const closed = pattern!.shapes.flatMap((shape) =>
      shape.shape === 'line' && shape.closed ? [shape.points] : [],
    );
    const [larger, smaller] = closed;
    const reach = (points: typeof larger) => Math.max(...points!.map(([x]) => x));
    expect(reach(larger)).toBeGreaterThan(reach(smaller));
    const tried = tryCell(transomCut, {}, launch);
    const onCentre = larger!.filter(([x]) => Math.abs(x) < 1e-9).map(([, y]) => y);
    expect(Math.max(...onCentre)).toBeCloseTo(tried.number('alongFace') * 1000, 9);
  });
});

test('tells of a cut-out only where a motor hangs: not at the bow, not on a top that is too low', () => {
  const told = (entries: Record<string, string>, id: string) => {
    const table = starter(id)!;
    const instance = plainInstance(transomCut);
    const made = catalogueOf(table, [instance]);
    const graph = createGraph({
      catalogue: () => made,
      entries: () => entries,
      shown: plainShown,
    });
    return answersOf(instance, (by) => graph.workOut(by)).map(({ of }) => of);
  };
  expect(told({}, 'ferry-dory')).toContain('cutAboveEdge');
  expect(told({ 'transomCut.end': 'bowTransom' }, 'creek-punt')).toStrictEqual(['blankWidth', 'blankHeight']);
  expect(told({ 'transomCut.motorHeight': '900 mm' }, 'ferry-dory')).not.toContain('cutAboveEdge');
});
