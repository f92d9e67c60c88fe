import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { buildHull, lists, offsetsOf, starter, starters, type Table } from '../../../../src/boat';
import type { Values } from '../../../../src/cells';
import { joints } from '../../../../src/cells/timber/joints/joints';
import { bestJoints } from '../../../../src/boat/joinery/best-joints';
import { type JointLayout, timberOf, verdictOf } from '../../../../src/boat/joinery/joint-layout';
import { layout, rules } from '../../../../src/cells/timber/joints/joints-facts';
import { curvatureAt } from '../../../../src/kernel';
import { parameterAtLength } from '../../../../src/kernel/along-batten';
import { askFact } from '../../alone';
import { withoutChines, withTwoChines } from '../../odd-boats';
import { measured, testBoats, testDrawings } from '../../proofs';
import { tryCell } from '../../try-cell';

const dory = starter('ferry-dory')!;
const hullOf = (table: Table) => buildHull(offsetsOf(table));
const thereIn = (tried: ReturnType<typeof tryCell>) => tried.rows.map(({ id }) => id);

/** Boards as they come, on the clamp of the dory, in 3/4 in at 1 in 8: tapers of 152.4 mm. */
const plain = {
  part: 'sheerClamp',
  portFirst: '8 ft',
  starboardFirst: '8 ft - 600 mm',
  thickness: '3/4 in',
  slope: '8',
  boardLength: '8 ft',
  trim: '0 mm',
};

test('pieces are counted a side, one as one', () => {
  const length = 1000 * tryCell(joints, plain).number('length');
  const tried = tryCell(joints, {
    ...plain,
    boardLength: '24 ft',
    portFirst: `${length + 300} mm`,
    starboardFirst: `${length - 1500} mm`,
  });
  expect(tried.words).toContain(': 1 piece to port and 2 to starboard make the ');
});

describe('boards laid as they come', () => {
  const tried = tryCell(joints, plain);
  const FOOT = 0.3048;

  test('stand half a taper short of every board’s end to port, and a stagger farther aft to starboard', () => {
    // 8 ft less half of 6 in; the next board adds 7.5 ft.
    expect(tried.number('port1.at')).toBeCloseTo(7.75 * FOOT, 9);
    expect(tried.number('port2.at')).toBeCloseTo(15.25 * FOOT, 9);
    expect(tried.number('starboard1.at')).toBeCloseTo(7.75 * FOOT - 0.6, 9);
    expect(tried.number('starboard2.at')).toBeCloseTo(15.25 * FOOT - 0.6, 9);
    expect(tried.number('port1.starts')).toBeCloseTo(7.5 * FOOT, 9);
    expect(thereIn(tried)).toEqual(['port1', 'port2', 'starboard1', 'starboard2']);
    expect(tried.number('leastApart')).toBeCloseTo(0.6, 9);
    expect(tried.number('tooNear')).toBe(0);
  });

  test('say of each joint how far its wood is from the wood of the nearest frame', () => {
    const edge = hullOf(dory).edge('sheer');
    const station = hullOf(dory).station('frame3');
    const line = edge.arcs[station.index]!;
    // The joint ends at 8 ft; frame 3, the widest, stands on one side of its line by its thickness.
    expect(tried.inRow('port1', 'frame')).toBe('frame3');
    const slope = edge.slopes[station.index]!;
    const thick = station.stands === 'aft' ? 0.019 * Math.hypot(1, slope.plan, slope.profile) : 0;
    expect(tried.number('port1.clear')).toBeCloseTo(line - thick - 8 * FOOT, 9);
  });

  test('give the radius the batten has there', () => {
    const { batten, leastRadius } = hullOf(dory).edge('sheer');
    for (const row of ['port1', 'port2', 'starboard1', 'starboard2']) {
      const [from, at] = [tried.number(`${row}.starts`), tried.number(`${row}.at`)];
      const bends = Array.from({ length: 200 }, (_, i) => {
        const along = from + ((at - from) * i) / 99.5;
        return curvatureAt(batten, parameterAtLength(batten, along)).magnitude;
      });
      const radius = 1 / Math.max(...bends);
      // Looked at in other places: a thousandth apart.
      expect(tried.number(`${row}.radius`) / radius).toBeCloseTo(1, 2);
      expect(tried.number(`${row}.share`)).toBeCloseTo(
        leastRadius!.radius / tried.number(`${row}.radius`),
        9,
      );
    }
  });
});

describe('the verdict', () => {
  const verdicts = (entries: Readonly<Record<string, string>>) => {
    const tried = tryCell(joints, { ...plain, ...entries });
    return thereIn(tried).map((row) => tried.inRow(row, 'verdict') as string);
  };

  test('tells of the hard bend where the stock is stiff enough for it to be hard', () => {
    // Tightest radius of the sheer 4.45 m: 234 thicknesses of 19 mm, and 139 of 32 mm.
    expect(verdicts({}).join()).not.toContain('hard bend');
    expect(verdicts({ thickness: '32 mm' })[0]).toContain('in the hard bend');
    expect(verdicts({ thickness: '32 mm', easyBend: '130' }).join()).not.toContain('hard bend');
    expect(verdicts({ thickness: '32 mm', hardShare: '100 %' }).join()).not.toContain('hard bend');
  });

  test('tells of a frame under the joint, and of one nearer than asked', () => {
    expect(verdicts({ starboardFirst: '1838 mm' })).toContain('on frame 2');
    const near = { portFirst: '2438.4 mm', frameClearance: '170 mm' };
    expect(verdicts(near)[0]).toBe('too near frame 3');
    // There the sheer bends as hard as anywhere, but easily.
    expect(verdicts({ ...near, frameClearance: '150 mm' })[0]).toBe('clear: the bend is easy');
  });

  test('tells of a joint across', () => {
    expect(verdicts({ starboardFirst: '8 ft' })[0]).toContain('too near the joint across');
    // A keelson is one timber.
    expect(verdicts({ part: 'keelson', starboardFirst: '8 ft' }).join()).not.toContain('across');
  });
});

describe('the best pattern', () => {
  const keys = (table: Table, part: string, more: Readonly<Record<string, string>> = {}) =>
    tryCell(joints, { part, ...more }, table);
  const boats = starters.flatMap(({ id, table }) =>
    ['keelson', 'chineLog', 'sheerClamp'].map((part) => ({ id, part, table })),
  );

  test.each(boats)('keeps every joint of the $part of $id clear', ({ table, part }) => {
    const tried = keys(table, part);
    expect(tried.number('amiss')).toBe(0);
    for (const row of thereIn(tried)) expect(tried.inRow(row, 'verdict')).toMatch(/^clear/);
    expect(tried.number('shortest')).toBeGreaterThanOrEqual(0.6 - 1e-9);
  });

  test.each(boats)('breaks no more rules on the $part of $id than boards as they come', ({ table, part }) => {
    const more = { [`${part}.thickness`]: '40 mm', [`${part}.boardLength`]: '2.1 m' };
    const asTheyCome = {
      [`${part}.portFirst`]: `${part}.boardLength`,
      [`${part}.starboardFirst`]: `${part}.boardLength - ${part}.stagger`,
    };
    // A piece too short to be worth a joint breaks a rule too.
    const broken = (entries: Readonly<Record<string, string>>) => {
      const tried = keys(table, part, entries);
      return tried.number('amiss') + (tried.number('shortest') < 0.6 - 1e-9 ? 1 : 0);
    };
    expect(broken(more)).toBeLessThanOrEqual(broken({ ...more, ...asTheyCome }));
  });

  test('is as good as any of a thousand pairs drawn at random', () => {
    const hull = hullOf(dory);
    const all = keys(dory, 'chineLog', { 'chineLog.thickness': '28 mm' }).all as Values;
    const faults = (v: Values) => {
      const { port, starboard, joints: found } = askFact(layout, v, hull);
      const stub = Math.min(port.shortest, starboard?.shortest ?? Infinity) < 0.6;
      return stub ? Infinity : found.filter((joint) => !verdictOf(joint).startsWith('clear')).length;
    };
    const { boards } = bestJoints([timberOf(hull, hull.edge('chine'), askFact(rules, all, hull))], 1);
    expect(boards).toEqual({ port: all['portFirst'], starboard: all['starboardFirst'] });
    const best = faults(all);
    const first = fc.double({ min: 0.6, max: 2.4384, noNaN: true });
    const thrown = fc.sample(fc.tuple(first, first), { seed: 7, numRuns: 1000 });
    const others = thrown.map(([a, b]) => faults({ ...all, portFirst: a, starboardFirst: b }));
    expect(Math.min(...others)).toBeGreaterThanOrEqual(best);
    expect(best).toBeLessThan(Infinity);
  });

  test('takes no more pieces than need be when asked not to', () => {
    const skiff = starter('class-skiff')!;
    const count = (more: string) => {
      const tried = keys(skiff, 'sheerClamp', {
        'pieces.more': more,
        'pieces.slope': '8',
        'sheerClamp.boardLength': '8 ft',
      });
      return tried.number('piecesPort') + tried.number('piecesStarboard');
    };
    expect(count('0')).toBe(4);
    expect(count('1')).toBe(5);
  });

  test('is not sought where one board reaches', () => {
    const tried = keys(dory, 'sheerClamp', { 'sheerClamp.boardLength': '6 m' });
    expect(tried.number('jointsAll')).toBe(0);
    expect(tried.words).toContain('without a joint');
    expect(thereIn(tried)).toEqual([]);
  });

  test('lays the logs of two chines alike, all their joints clear', () => {
    const tried = ['lowerChine', 'upperChine'].map((along) => keys(withTwoChines, 'chineLog', { along }));
    expect(tried[0]!.number('portFirst')).toBe(tried[1]!.number('portFirst'));
    for (const one of tried) expect(one.number('amiss')).toBe(0);
  });
});

describe('for any board, on any side', () => {
  const hulls = [dory, withTwoChines].map(hullOf);
  const settings = fc.record({
    hull: fc.constantFrom(...hulls),
    board: fc.double({ min: 1, max: 4, noNaN: true }),
    port: fc.double({ min: 0.3, max: 1, noNaN: true }),
    starboard: fc.double({ min: 0.3, max: 1, noNaN: true }),
  });
  const base = tryCell(joints, { part: 'sheerClamp' }).all as Values;
  const laid = ({
    hull,
    board,
    port,
    starboard,
  }: typeof settings extends fc.Arbitrary<infer T> ? T : never) =>
    askFact(
      layout,
      { ...base, boardLength: board, portFirst: port * board, starboardFirst: starboard * board },
      hull,
    );
  const holds = (check: (layout: JointLayout) => void) =>
    fc.assert(
      fc.property(settings, (one) => check(laid(one))),
      { seed: 11 },
    );

  test('the pieces cover the edge, and every joint lies on it', () => {
    holds(({ timber, port, starboard, joints: found }) => {
      for (const side of [port, starboard!]) {
        // 25 mm to trim at each end.
        expect(side.pieces[0]!.from).toBeCloseTo(-0.025, 12);
        expect(side.pieces.at(-1)!.to).toBeCloseTo(timber.edge.length + 0.025, 12);
        expect(side.laps).toHaveLength(side.pieces.length - 1);
      }
      for (const { from, to } of found) {
        expect(from).toBeGreaterThan(timber.rough.from);
        expect(to).toBeLessThanOrEqual(timber.rough.to);
        expect(to - from).toBeCloseTo(timber.taper, 9);
      }
    });
  });

  test('a joint that is called clear keeps the stagger, the frames and the bend', () => {
    holds(({ timber, joints: found }) => {
      for (const joint of found.filter((one) => verdictOf(one).startsWith('clear'))) {
        const across = found.filter(({ side }) => side !== joint.side);
        for (const { at } of across)
          expect(Math.abs(at - joint.at)).toBeGreaterThanOrEqual(timber.stagger - 1e-6);
        for (const { from, to } of timber.frames)
          expect(from >= joint.to + 0.025 - 1e-6 || to <= joint.from - 0.025 + 1e-6).toBe(true);
        expect(joint.bend).toBeLessThan(timber.hardFrom);
      }
    });
  });
});

test('a longer board never needs more pieces', () => {
  const counts = ['1.2 m', '1.5 m', '2 m', '2.4 m', '3 m', '4 m', '6 m'].map((boardLength) =>
    tryCell(joints, { portFirst: boardLength, boardLength }).number('piecesPort'),
  );
  expect(counts).toStrictEqual(counts.toSorted((a, b) => b - a));
});

describe('the timber', () => {
  test.each([
    ['keelson', 'keel', 'one'],
    ['chineLog', 'chine', 'pair'],
    ['sheerClamp', 'sheer', 'pair'],
    ['rubRail', 'sheer', 'pair'],
  ])('a %s lies along the %s, %s of it', (part, along, sides) => {
    const { all } = tryCell(joints, { part });
    expect([all['along'], all['sides']]).toEqual([along, sides]);
  });

  test('a chine log of a boat without a chine is asked along the sheer', () => {
    const tried = tryCell(joints, { part: 'chineLog' }, withoutChines);
    expect(tried.issues).toEqual({});
    expect(tried.all['along']).toBe('sheer');
  });

  test('takes its section and its slope from the boat and the scarf', () => {
    const tried = tryCell(joints, { part: 'chineLog', 'chineLog.thickness': '30 mm', 'pieces.slope': '12' });
    expect(tried.number('taper')).toBeCloseTo(0.36, 12);
    expect(tried.number('stagger')).toBeCloseTo(0.72, 12);
  });

  test.each([withoutChines, withTwoChines])('stands on an odd boat, along every edge', (table) => {
    for (const { id: along } of lists(table).longEdges)
      expect(tryCell(joints, { along }, table).issues).toEqual({});
  });
});

describe('warnings', () => {
  const says = (entries: Readonly<Record<string, string>>) =>
    tryCell(joints, { ...plain, ...entries })
      .warnings.map((warning) => warning.says)
      .join(' ');
  test('none for a pattern that keeps clear', () =>
    expect(tryCell(joints, { part: 'sheerClamp' }).warnings).toEqual([]));
  test('a joint on a frame', () => expect(says({})).toContain('opens the glue line'));
  test('a joint in the hard bend', () => expect(says({ thickness: '32 mm' })).toContain('in the hard bend'));
  test('joints abreast', () => expect(says({ starboardFirst: '8 ft' })).toContain('apart; 600 mm is wanted'));
  test('a stub', () => expect(says({ portFirst: '1 m', starboardFirst: '700 mm' })).toContain('only'));
  test('a board too short for two tapers', () =>
    expect(says({ thickness: '100 mm', boardLength: '1.5 m' })).toContain('too short for a taper'));
  test('a board no longer than its taper is refused in a sentence', () => {
    const { issues } = tryCell(joints, { ...plain, thickness: '100 mm', boardLength: '700 mm' });
    expect(issues['piecesPort']).toContain('no longer than its taper');
    expect(issues['taper']).toBeUndefined();
  });
});

testBoats(joints);
testDrawings(joints, {
  'as it stands': {},
  'one timber': { part: 'keelson' },
  'many joints': { boardLength: '900 mm', leastPiece: '300 mm' },
  'no joint': { boardLength: '6 m' },
  'thick stock': { thickness: '60 mm', slope: '12', boardLength: '2 m' },
});

test('the drawing measures every joint from the after end', () => {
  const tried = tryCell(joints, plain);
  for (const [row, number] of [
    ['port1', 1],
    ['port2', 2],
    ['starboard1', 1],
  ] as const) {
    const at = tried.number(`${row}.at`) * 1000;
    expect(measured(tried.drawing, `${number}: ${Math.round(at)} mm`)).toBeCloseTo(at, 6);
  }
});

test('the chart holds the joints to the bend of the edge', () => {
  const { chart, ...tried } = tryCell(joints, plain);
  expect(chart?.points?.map(({ label }) => label)).toEqual([
    'port 1',
    'port 2',
    'starboard 1',
    'starboard 2',
  ]);
  expect(chart?.points?.[0]?.y).toBe(tried.number('port1.share'));
  expect(Math.max(...(chart?.lines[0]?.points ?? []).map(([, share]) => share))).toBeCloseTo(1, 9);
});

test('each pattern offers the other, as entries of the boat', () => {
  const offer = (entries: Readonly<Record<string, string>>) =>
    joints.offers!(tryCell(joints, { part: 'chineLog', ...entries }).all as Values, {} as never)[0]!.changes;
  const plainBoards = {
    'chineLog.portFirst': 'chineLog.boardLength',
    'chineLog.starboardFirst': 'chineLog.boardLength - chineLog.stagger',
  };
  expect(offer({})).toEqual(plainBoards);
  expect(offer(plainBoards)).toEqual({
    'chineLog.portFirst': 'chineLog.portBest',
    'chineLog.starboardFirst': 'chineLog.starboardBest',
  });
});
