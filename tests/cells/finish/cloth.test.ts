import { describe, expect, test } from 'vitest';
import { endWith, isPost, starter, starters } from '../../../src/boat';
import { buildHull } from '../../../src/boat/hull/hull';
import { offsetsOf } from '../../../src/boat/table/offsets';
import { cloth } from '../../../src/cells/finish/cloth';
import { sheets } from '../../../src/cells/skin/sheets';
import { plainShown } from '../../../src/measure';
import { testDrawings } from '../proofs';
import { tryCell } from '../try-cell';

const IN = 0.0254;
/** A face of its own, with nothing turned round and nothing to spare. */
const flat = (entries: Record<string, string>) =>
  tryCell(cloth, { over: 'flat', turn: '0 mm', trim: '0 mm', beyond: '0 %', soldBy: '1 mm', ...entries });
const plain = { runs: 'along', strips: 'none', turn: '0 mm', trim: '0 mm', lap: '0 mm' };
const sumOf = (tried: ReturnType<typeof tryCell>, column: string) =>
  tried.rows.reduce((sum, { id }) => sum + Number(tried.inRow(id, column)), 0);

describe('cloth on a flat face', () => {
  test('what laps, turned edges and strips come to, as a share of the bare layers', () => {
    const tried = tryCell(cloth);
    const number = (key: string) => tried.number(key);
    expect(number('lapShare')).toBeCloseTo((number('lapped') + number('stripArea')) / number('layered'), 9);
    expect(tryCell(cloth, { bottomLayers: '0', sideLayers: '0' }).number('lapShare')).toBe(0);
  });

  test('108 in from a roll of 38 in: three runs butted or lapped by 2 in, four lapped by 4 in', () => {
    const runs = (lap: string) =>
      flat({ flatLength: '120 in', flatWidth: '108 in', width: '38 in', lap, runs: 'along' }).number(
        'pieces',
      );
    expect(['0 in', '2 in', '4 in'].map(runs)).toStrictEqual([3, 3, 4]);
  });

  test('what is bought: the runs, their spare ends, ten per cent, and what the shop cuts', () => {
    const tried = tryCell(cloth, {
      over: 'flat',
      flatLength: '2 m',
      flatWidth: '2.5 m',
      width: '1.5 m',
      lap: '50 mm',
      turn: '25 mm',
      trim: '50 mm',
      runs: 'along',
      beyond: '10 %',
      soldBy: '1 m',
      price: '10 /m',
      weight: '200 g/m^2',
      layers: '1',
    });
    // (2.55 - 0.05) / 1.45 is 1.7: two runs, each 2 m with 25 mm turned round and 50 mm to spare at both ends.
    expect(tried.number('pieces')).toBe(2);
    expect(tried.number('seams')).toBe(1);
    expect(tried.number('cut')).toBeCloseTo(2 * 2.15, 12);
    expect(tried.number('length')).toBe(5);
    expect(tried.number('cost')).toBeCloseTo(50, 12);
    expect(tried.number('long')).toBeCloseTo(2.15, 12);
    expect(tried.number('wide')).toBeCloseTo(1.3, 12);
    expect(tried.number('laid')).toBeCloseTo(2.05 * 1.3, 12);
    expect(tried.number('layer')).toBe(1);
    expect(tried.number('area')).toBeCloseTo(2.05 * 2.6, 12);
    expect(tried.number('covered')).toBeCloseTo(5, 12);
    expect(tried.number('layered')).toBeCloseTo(5, 12);
    expect(tried.number('lapped')).toBeCloseTo(2.05 * 2.6 - 5, 12);
    expect(tried.number('mass')).toBeCloseTo(2.05 * 2.6 * 0.2, 12);
    expect(tried.number('offcuts')).toBeCloseTo(5 * 1.5 - 2.05 * 2.6, 12);
    expect([tried.inRow('piece2', 'along'), tried.inRow('piece2', 'inward')]).toStrictEqual([
      expect.closeTo(2.15, 12),
      0,
    ]);
  });

  test('a second layer reaches further round', () => {
    const tried = flat({ flatLength: '1 m', flatWidth: '1 m', turn: '20 mm', further: '30 mm', layers: '2' });
    expect(tried.number('area')).toBeCloseTo(1.04 ** 2 + 1.1 ** 2, 12);
    expect(tried.inRow('piece2', 'layer')).toBe(2);
  });

  test('no seam stands on one of the layer under it', () => {
    const face = {
      flatLength: '2 m',
      flatWidth: '2 m',
      lap: '50 mm',
      layers: '2',
      runs: 'along',
      further: '0 mm',
    };
    // Two runs of 1.025 m: the upper ones are 1.125 and 0.925 m.
    const wide = flat({ ...face, width: '1.2 m' });
    expect(wide.rows.map(({ id }) => wide.inRow(id, 'wide'))).toStrictEqual(
      [1.025, 1.025, 1.125, 0.925].map((one) => expect.closeTo(one, 12) as number),
    );
    expect(wide.number('seamsApart')).toBeCloseTo(0.1, 12);
    expect(wide.number('seams')).toBe(1);
    expect(flat({ ...face, width: '1.2 m', seamShift: '0 mm' }).number('seamsApart')).toBe(0);
    // Too narrow for that by a hair: three runs of 0.7 m above, seams at 0.675 and 1.325 m, and below at 1 m.
    const narrow = flat({ ...face, width: '1.124 m' });
    expect(narrow.rows.map(({ id }) => narrow.inRow(id, 'wide'))).toStrictEqual(
      [1.025, 1.025, 0.7, 0.7, 0.7].map((one) => expect.closeTo(one, 12) as number),
    );
    expect(narrow.number('seamsApart')).toBeCloseTo(0.325, 12);
    // A third layer lies over the second as the first does under it.
    const three = flat({ ...face, layers: '3', width: '1.2 m' });
    expect(three.number('seamsApart')).toBeCloseTo(0.1, 12);
    expect(three.inRow('piece5', 'wide')).toBeCloseTo(1.025, 12);
    // One layer, or runs without a seam: nothing stands on anything.
    expect(flat({ ...face, layers: '1' }).number('seamsApart')).toBeCloseTo(0.1, 12);
    expect(flat({ ...face, width: '2.1 m' }).number('seamsApart')).toBeCloseTo(0.1, 12);
  });

  test('every layer covers the whole face, whatever the shift', () => {
    for (const [width, seamShift] of [
      ['0.8 m', '100 mm'],
      ['1.1 m', '200 mm'],
      ['1.5 m', '50 mm'],
    ] as const) {
      const tried = flat({
        flatLength: '1 m',
        flatWidth: '3 m',
        layers: '2',
        further: '0 mm',
        runs: 'along',
        width,
        seamShift,
      });
      for (const layer of [1, 2]) {
        const wides = tried.rows
          .filter(({ id }) => tried.inRow(id, 'layer') === layer)
          .map(({ id }) => Number(tried.inRow(id, 'wide')));
        // Runs lapped by 50 mm.
        expect(wides.reduce((sum, one) => sum + one, 0) - 0.05 * (wides.length - 1)).toBeCloseTo(3, 12);
        expect(Math.max(...wides)).toBeLessThan(Number.parseFloat(width) + 1e-9);
      }
    }
  });

  test('no way of laying takes less of the roll than the bound, and one run after another takes just that', () => {
    const runs = flat({ flatLength: '2 m', flatWidth: '2.5 m', width: '1.5 m', lap: '50 mm', runs: 'along' });
    expect(runs.number('leastCut')).toBeCloseTo(4, 12);
    expect(runs.number('cut')).toBeCloseTo(4, 12);
    for (const { table } of starters) {
      const boat = tryCell(cloth, { bottomLayers: '2', strips: 'all' }, table);
      expect(boat.number('cut')).toBeGreaterThanOrEqual(boat.number('leastCut') - 1e-9);
      expect(boat.number('leastCut')).toBeGreaterThanOrEqual(
        boat.number('area') / boat.number('width') - 0.05,
      );
    }
  });

  test('runs the way that takes less, unless it is asked for', () => {
    const face = { flatLength: '1.4 m', flatWidth: '3 m', width: '1.5 m', lap: '50 mm' };
    // Across: one run of 3 m; along: three of 1.4 m.
    expect(flat(face).number('cut')).toBeCloseTo(3, 12);
    expect(flat(face).number('isAcross')).toBe(1);
    expect(flat({ ...face, runs: 'along' }).number('cut')).toBeCloseTo(4.2, 12);
  });

  test('no layer, no cloth', () => {
    const tried = flat({ layers: '0' });
    expect(tried.number('length')).toBe(0);
    expect(tried.words).toBe('No cloth is asked for.');
    expect(tried.all['name']).toBe('no such piece');
  });

  test('an edge is rounded by the weight of the cloth', () => {
    const round = (weight: string) => flat({ weight }).number('leastRound') * 1000;
    expect(['4 oz/yd^2', '6 oz/yd^2', '7.5 oz/yd^2', '12 oz/yd^2', '17 oz/yd^2'].map(round)).toStrictEqual([
      6, 6, 10, 10, 12,
    ]);
  });
});

describe('cloth on a boat', () => {
  const hulls = starters.map(({ id, table }) => ({ id, table, hull: buildHull(offsetsOf(table)) }));

  test.each(hulls)(
    'covers all panels and transoms of $id, and no more where nothing laps',
    ({ table, hull }) => {
      const tried = tryCell(cloth, plain, table);
      const transoms = [hull.aft, hull.fore].filter(({ role }) => !isPost(role));
      const wood =
        2 * hull.panels.reduce((sum, { area }) => sum + area, 0) +
        transoms.reduce((sum, { area }) => sum + area, 0);
      expect(tried.number('covered')).toBeCloseTo(wood, 9);
      // Of a bottom in one piece that is cut open at the bow, the wedge between the halves is wrapped round too.
      const wedge = Math.abs(tried.number('dartGap')) * tried.number('dartLength');
      expect(tried.number('area') - wood).toBeGreaterThan(-2e-3);
      expect(tried.number('area') - wood).toBeLessThan(wedge + 2e-3);
    },
  );

  test.each(hulls)('counts laps by the length of the edges on $id', ({ table, hull }) => {
    const by = 0.02;
    const tried = tryCell(cloth, { ...plain, turn: '20 mm', sideLayers: '1', bottomLayers: '0' }, table);
    const bare = tryCell(cloth, { ...plain, sideLayers: '1', bottomLayers: '0' }, table);
    const others = hull.panels.slice(1);
    // Round chine and both ends of every panel above the bottom; nothing at the sheer.
    const edges = others.flatMap((panel) => [
      panel.inner.length,
      ...(panel === others.at(-1) ? [] : [panel.outer.length]),
      ...[hull.aft, hull.fore].map((end) =>
        Math.hypot(
          ...panel.inner.points[end.index]!.map(
            (value, axis) => panel.outer.points[end.index]![axis]! - value,
          ),
        ),
      ),
    ]);
    const wanted = 2 * by * edges.reduce((sum, one) => sum + one, 0);
    // Corners at four places a panel, each at most twice the square of the turn, and the edges' own bend.
    expect(Math.abs(tried.number('area') - bare.number('area') - wanted)).toBeLessThan(16 * by * by);
  });

  test('lays the pieces of its list, and every one lies on the roll', () => {
    const tried = tryCell(cloth, { bottomLayers: '2' }, starter('vee-launch')!);
    expect(tried.rows.length).toBe(tried.number('pieces'));
    expect(sumOf(tried, 'laid')).toBeCloseTo(tried.number('area'), 9);
    for (const { id } of tried.rows) {
      expect(Number(tried.inRow(id, 'along')) + Number(tried.inRow(id, 'long'))).toBeLessThan(
        tried.number('cut') + 1e-9,
      );
      expect(Number(tried.inRow(id, 'inward')) + Number(tried.inRow(id, 'wide'))).toBeLessThan(
        60 * IN + 1e-9,
      );
    }
  });

  test('a flat bottom keeps to a straight thread; one with a forefoot is cut open toward the bow', () => {
    const dory = tryCell(cloth, { runs: 'along' }, starter('ferry-dory')!);
    expect(dory.number('inOne')).toBe(1);
    expect([dory.number('dartFrom'), dory.number('dartLength'), dory.number('dartGap')]).toStrictEqual([
      0, 0, 0,
    ]);
    const launch = tryCell(cloth, { width: '2 m', runs: 'along' }, starter('vee-launch')!);
    const keel = buildHull(offsetsOf(starter('vee-launch')!)).edges[0]!.length;
    expect(launch.number('inOne')).toBe(1);
    expect(launch.number('dartGap')).toBeGreaterThan(0.05);
    // Along two straight lines to the bow, of which the keel is hardly longer.
    const along = launch.number('dartFrom') + launch.number('dartLength');
    expect(along).toBeLessThan(keel + 1e-9);
    expect(along).toBeGreaterThan(0.99 * keel);
    // In halves nothing is cut open.
    const halves = tryCell(cloth, { width: '1.2 m', runs: 'along' }, starter('vee-launch')!);
    expect([halves.number('inOne'), halves.number('dartLength')]).toStrictEqual([0, 0]);
  });

  test('strips: the sides’ joints by the plan of the sheets, the transom’s corners, and all edges where asked', () => {
    const table = starter('class-skiff')!;
    const hull = buildHull(offsetsOf(table));
    const tried = tryCell(cloth, { stripWidth: '100 mm', sideJoints: '0' }, table);
    const transom = endWith(hull, 'transom')!;
    const corners = 2 * hull.panels.reduce((sum, { name }) => sum + transom.girth(name), 0);
    expect(tried.number('stripLength')).toBeCloseTo(corners, 3);
    expect(tried.number('stripArea')).toBeCloseTo(0.1 * tried.number('stripLength'), 12);
    // The joints are those of the sheets as they are planned.
    const beside = tryCell(cloth, {}, table, plainShown, [sheets]);
    const planned = tryCell(sheets, {}, table).number('sideJoints');
    expect(planned).toBeGreaterThan(0);
    expect(beside.number('sideJoints')).toBe(planned);
    // Each as long as the side is high where its sheets are joined, which is near a frame's own girth.
    const side = hull.panels.at(-1)!;
    const high = hull.frames.map((frame) => frame.girth(side.name));
    expect(beside.number('sideJointLong')).toBeGreaterThan(Math.min(...high) - 5e-3);
    expect(beside.number('sideJointLong')).toBeLessThan(Math.max(...high) + 5e-3);
    expect(beside.number('stripLength') - corners).toBeCloseTo(
      2 * planned * beside.number('sideJointLong'),
      3,
    );
    // The bottom's joints stand on frames, of which they have the very girth.
    const whole = tryCell(cloth, { strips: 'allJoints' }, table, plainShown, [sheets]);
    const girths = hull.frames.map((frame) => frame.girth('bottom'));
    expect(whole.number('bottomJoints')).toBeGreaterThan(0);
    expect(whole.number('stripLength') - beside.number('stripLength')).toBeCloseTo(
      2 * whole.number('bottomJoints') * whole.number('bottomJointLong'),
      9,
    );
    // The joints stand in the middle of the frames' wood, half a frame off their station lines.
    expect(whole.number('bottomJointLong')).toBeGreaterThan(Math.min(...girths) - 5e-3);
    expect(whole.number('bottomJointLong')).toBeLessThan(Math.max(...girths) + 5e-3);
    const moved = tryCell(
      cloth,
      { 'sheets.length': '4 m', 'sheets.otherLength': '0 mm', 'sheets.least': '300 mm' },
      table,
      plainShown,
      [sheets],
    );
    expect(moved.number('sideJoints')).toBe(
      tryCell(sheets, { length: '4 m', least: '300 mm' }, table).number('sideJoints'),
    );
    const narrowed = tryCell(cloth, { 'sheets.only': 'bottom' }, table, plainShown, [sheets]);
    expect(narrowed.issues['stripLength']).toContain('joints');
    // Counted by the builder, they are as long as the side is high on average.
    const counted = tryCell(cloth, { 'sheets.only': 'bottom', sideJoints: '1' }, table, plainShown, [sheets]);
    expect(counted.number('sideJointLong')).toBeCloseTo(side.area / side.inner.length, 1);
    expect(counted.number('stripLength') - corners).toBeCloseTo(2 * counted.number('sideJointLong'), 3);
    expect(tryCell(sheets, { only: 'bottom' }, table).issues['sideJoints']).toContain(
      'count its joints yourself',
    );
    const all = tryCell(cloth, { strips: 'all', sideJoints: '0', bottomJoints: '0' }, table).number(
      'stripLength',
    );
    const stem = hull.fore.corners;
    const long =
      2 * hull.edges[1]!.length +
      hull.edges[0]!.length +
      Math.hypot(...stem[0]!.map((value, axis) => stem.at(-1)![axis]! - value));
    expect(all - tried.number('stripLength')).toBeCloseTo(long, 9);
  });

  test('on the bias the same strips are laid, from blocks cut at 45°', () => {
    const way = (stripCut: string) =>
      tryCell(
        cloth,
        { stripCut, sideLayers: '0', bottomLayers: '0', sideJoints: '0' },
        starter('creek-punt')!,
      );
    expect(way('bias').number('area')).toBeCloseTo(way('straight').number('area'), 12);
    // A corner of length l: a block l / √2 wide, and two strips of 150 mm take 2 × 150 √2 beyond its width.
    const [first] = way('straight').rows;
    const length = Number(way('straight').inRow(first!.id, 'long'));
    expect(Number(way('bias').inRow('piece1', 'wide'))).toBeCloseTo(length / Math.SQRT2, 12);
    expect(Number(way('bias').inRow('piece1', 'long'))).toBeCloseTo((length + 2 * 0.15 * 2) / Math.SQRT2, 12);
  });
});

describe('warnings', () => {
  const says = (entries: Record<string, string>) =>
    flat(entries)
      .warnings.map((one) => one.says)
      .join(' ');
  test('hardly any lap, and a piece that is not there', () => {
    const narrow = { flatWidth: '1.3 m', flatLength: '1 m', width: '0.6 m', runs: 'along' };
    expect(says({ ...narrow, lap: '24 mm' })).toContain('Runs lap by 24 mm only');
    expect(says({ ...narrow, lap: '25 mm' })).toBe('');
    expect(says({ ...narrow, pieceInHand: '4' })).toContain('3 in all');
  });
  test('seams that the roll is too narrow to shift', () => {
    const face = {
      flatWidth: '2 m',
      flatLength: '1 m',
      lap: '50 mm',
      layers: '2',
      runs: 'along',
      further: '0 mm',
    };
    expect(says({ ...face, width: '1.03 m', seamShift: '330 mm' })).toContain('too narrow to shift it');
    expect(says({ ...face, width: '1.03 m', seamShift: '320 mm' })).toBe('');
  });
  test('a narrow turn on the boat', () => {
    const of = (turn: string) =>
      tryCell(cloth, { turn })
        .warnings.map((one) => one.says)
        .join(' ');
    expect(of('24 mm')).toContain('hardly doubles');
    expect(of('25 mm')).toBe('');
  });
});

describe('drawing', () => {
  testDrawings(cloth, {
    'as the boat stands': {},
    'two layers on the bottom, along': { bottomLayers: '2', runs: 'along' },
    'a narrow roll, all strips on the bias': { width: '0.6 m', strips: 'all', stripCut: 'bias' },
    'a flat face': { over: 'flat' },
  });
});
