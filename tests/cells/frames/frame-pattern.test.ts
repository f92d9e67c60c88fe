import { layoutOf } from '../../../src/boat/quantities/lists';
import { describe, expect, test } from 'vitest';
import { buildHull, lists, offsetsOf, starter, starters, type Table } from '../../../src/boat';
import { type Values } from '../../../src/cells';
import { keepOutQuantities } from '../../../src/boat/quantities/keep-out-quantities';
import { framePattern } from '../../../src/cells/frames/frame-pattern';
import { collisions, type Drawing, type Point, setOut } from '../../../src/drawing';
import { plainShown, write } from '../../../src/measure';
import { deriveBoat } from '../../boat/derive';
import { withoutChines, withTwoChines, withLeaningFrame } from '../odd-boats';
import { measured, provesItsDrawing, testDrawings } from '../proofs';
import { tryCell } from '../try-cell';
import { onHandAlone } from '../alone';

const boats = [
  ...starters,
  { id: 'two chines', table: withTwoChines },
  { id: 'no chine', table: withoutChines },
];
const frames = boats.flatMap(({ id, table }) =>
  lists(table).frames.map(({ id: frame }) => ({ id, table, frame })),
);
const vee = starter('vee-launch')!;
const dory = starter('ferry-dory')!;

function patterns(entries: Record<string, string>, table: Table): readonly Drawing[] {
  const values = tryCell(framePattern, entries, table).all as Values;
  const say = (value: number, kind: Parameters<typeof write>[1]) => write(value, kind, plainShown).text;
  return framePattern.patterns!.draw(
    values,
    onHandAlone(framePattern, values, buildHull(offsetsOf(table)), say),
  );
}

const outlinesOf = (drawing: Drawing) =>
  drawing.shapes.flatMap((shape) =>
    shape.shape === 'line' && shape.pen === 'outline' && shape.closed ? [shape.points] : [],
  );
function area(points: readonly Point[]): number {
  return Math.abs(
    points.reduce((sum, [x, y], i) => {
      const [x2, y2] = points[(i + 1) % points.length]!;
      return sum + (x * y2 - x2 * y) / 2;
    }, 0),
  );
}

describe('frame pattern', () => {
  test.each(frames)(
    '$id, $frame: every member has its numbers, a drawing and patterns',
    ({ table, frame }) => {
      for (const { id: member } of lists(table).panels) {
        const tried = tryCell(framePattern, { frame, member }, table);
        expect(tried.issues).toStrictEqual({});
        provesItsDrawing(tried.drawing);
      }
      const made = patterns({ frame }, table);
      const { panels, chines } = lists(table);
      expect(made).toHaveLength(1 + panels.length + chines.length);
      for (const drawing of made) {
        const sheet = setOut(drawing, { width: 320, scale: 96 / 25.4, text: 16, bar: false, caption: false });
        expect(collisions(sheet)).toStrictEqual([]);
      }
    },
  );

  test('corners agree with the offsets by hand: dory, frame 1', () => {
    // Level, flat bottom 442 wide at 115 high, side up to 727 at 668; ply 9 and 6 mm.
    const tried = tryCell(framePattern, { frame: 'frame1', member: 'side' }, dory);
    const [footTaken, headTaken] = [tried.number('footTaken'), tried.number('headTaken')];
    expect(footTaken).toBeCloseTo(0.006 / Math.cos(tried.number('footBevel')), 12);
    const bottom = tryCell(framePattern, { frame: 'frame1', member: 'bottom' }, dory);
    expect(tried.number('footHeight')).toBeCloseTo(0.115 + bottom.number('headTaken'), 5);
    // Square to the side’s chord the corner at the sheer has moved by the deduction, a crown’s turn apart.
    const run = [0.727 - 0.442, 0.668 - 0.115] as const;
    const length = Math.hypot(...run);
    const off = [0.727 - tried.number('headHalfBreadth'), 0.668 - tried.number('headHeight')] as const;
    expect((off[0] * run[1] - off[1] * run[0]) / length).toBeCloseTo(headTaken, 4);
  });

  test('a piece right across is as long as both halves and the points of its mitres', () => {
    const tried = tryCell(framePattern, { frame: 'frame3', member: 'bottom' }, dory);
    expect(tried.number('pieces')).toBe(1);
    expect(tried.number('cutLength')).toBeCloseTo(2 * tried.number('headHalfBreadth'), 5);
    expect(tried.words).toContain('one bottom member');
  });

  test('a vee bottom takes two members, cut plumb on the centreline, off square by their slope', () => {
    const tried = tryCell(framePattern, { frame: 'frame3', member: 'bottom' }, vee);
    expect(tried.number('pieces')).toBe(2);
    expect(tried.number('footCut')).toBeCloseTo(tried.number('slope'), 9);
    expect(tried.words).toContain('two bottom members');
  });

  test('the stock of the frame is the sum over its members, both sides', () => {
    for (const table of [dory, vee, withTwoChines]) {
      const tried = tryCell(framePattern, { frame: 'frame2' }, table);
      const sum = lists(table).panels.reduce(
        (all, { id }) => all + tried.number(`${id}.cutLength`) * tried.number(`${id}.pieces`),
        0,
      );
      expect(tried.number('lumber')).toBeCloseTo(sum, 9);
    }
  });

  test('follows the boat: thicker skin, smaller frame; a typed thickness cuts the link', () => {
    const usual = tryCell(framePattern, { member: 'side' }).number('headHalfBreadth');
    const thick = tryCell(framePattern, { member: 'side', 'side.thickness': '12 mm' }).number(
      'headHalfBreadth',
    );
    const typed = tryCell(framePattern, {
      member: 'side',
      'side.thickness': '12 mm',
      sideThickness: '6 mm',
    }).number('headHalfBreadth');
    expect(thick).toBeLessThan(usual - 0.004);
    expect(typed).toBeCloseTo(usual, 12);
  });

  test('offsets to the inside of the skin lose nothing', () => {
    const tried = tryCell(framePattern, { frame: 'frame1' }, { ...dory, offsetsTo: 'inside of skin' });
    expect(tried.number('footTaken')).toBe(0);
    expect(tried.number('footHalfBreadth')).toBeCloseTo(0.442, 12);
    expect(tried.number('headHeight')).toBeCloseTo(0.668, 12);
  });

  test('before the widest frame it stands forward of its line and is drawn on its after face', () => {
    const tried = tryCell(framePattern, { frame: 'frame5' }, dory);
    expect(tried.all['stands']).toBe('forward');
    expect(tried.words).toContain('draw on its after face');
    expect(tried.drawing?.title).toContain('after face');
    expect(tryCell(framePattern, { frame: 'frame1' }, dory).words).toContain('draw on its forward face');
  });

  test('the mark of the level line stands where the straight side is that high', () => {
    const tried = tryCell(framePattern, { frame: 'frame1', member: 'side', levelLine: '400 mm' }, dory);
    const n = (key: string) => tried.number(key);
    const share = (0.4 - n('footHeight')) / (n('headHeight') - n('footHeight'));
    expect(n('markHalfBreadth')).toBeCloseTo(
      n('footHalfBreadth') + share * (n('headHalfBreadth') - n('footHalfBreadth')),
      12,
    );
  });

  test('a boat without a chine has no log to notch for', () => {
    const tried = tryCell(framePattern, {}, withoutChines);
    expect(tried.number('logDepth')).toBe(0);
    expect(tried.number('leastLeg')).toBe(0);
    expect(tried.number('clampDepth')).toBeGreaterThanOrEqual(0.019);
  });

  describe('warnings', () => {
    const says = (entries: Record<string, string>, table = dory) =>
      tryCell(framePattern, entries, table).warnings.map((one) => one.says);
    test('none on a frame of straight sections with large gussets', () => {
      expect(says({ frame: 'frame3', gussetLeg: '200 mm' })).toStrictEqual([]);
    });
    test.each([
      ['crowned bottom', { frame: 'frame6', member: 'bottom' }, vee, 'off the straight bottom member'],
      ['stood on the wrong side', { frame: 'frame5', side: 'aft' }, dory, 'plane back'],
      ['gusset short of the joint', { frame: 'frame3', gussetLeg: '100 mm' }, dory, 'inner corner'],
      ['log too thick', { frame: 'frame3', logThickness: '30 mm' }, dory, 'more than a third'],
      ['level line over the sheer', { frame: 'frame3', levelLine: '2 m' }, dory, 'does not cross'],
    ])('%s', (_what, entries, table, wanted) => {
      expect(says(entries, table).join(' ')).toContain(wanted);
    });
  });

  describe('drawings', () => {
    testDrawings(framePattern, {
      'as it stands': {},
      butted: { joint: 'butt', member: 'bottom' },
      'deep members': { moulded: '140 mm' },
      'nothing above the sheer': { beyond: '0 mm' },
      'small members': { moulded: '20 mm', gussetLeg: '600 mm' },
    });

    test('dimensions of the view read as the figures and span them', () => {
      const tried = tryCell(framePattern, { frame: 'frame1', member: 'side' }, dory);
      const text = (key: string) => write(tried.number(key), 'length', plainShown).text;
      for (const key of ['headHalfBreadth', 'headHeight', 'footHalfBreadth', 'footHeight', 'edgeLength']) {
        // Keel and chine stand alike but for what the text rounds.
        expect(measured(tried.drawing, text(key))).toBeCloseTo(tried.number(key) * 1000, 3);
      }
    });

    test('a member’s pattern is as long as the piece, and lies within its depth', () => {
      const [, bottom, side] = patterns({ frame: 'frame2' }, dory);
      const tried = tryCell(framePattern, { frame: 'frame2' }, dory);
      const span = (drawing: Drawing, axis: 0 | 1) => {
        const along = outlinesOf(drawing)
          .flat()
          .map((point) => point[axis]);
        return Math.max(...along) - Math.min(...along);
      };
      // A piece right across is drawn by half. Notches take no corner that makes a member long.
      expect(span(bottom!, 0)).toBeLessThan((tried.number('bottom.cutLength') / 2) * 1000 + 1e-6);
      expect(span(bottom!, 1)).toBeCloseTo(70, 6);
      expect(span(side!, 0)).toBeLessThanOrEqual(tried.number('side.cutLength') * 1000 + 1e-6);
      expect(span(side!, 1)).toBeCloseTo(70, 6);
    });

    test('members of the half frame and their own patterns have the same areas', () => {
      for (const [frame, table] of [
        ['frame2', dory],
        ['frame4', vee],
        ['frame3', withTwoChines],
      ] as const) {
        const [half, ...own] = patterns({ frame }, table);
        const members = own.slice(0, lists(table).panels.length);
        const whole = outlinesOf(half!).map(area);
        const apart = members.flatMap(outlinesOf).map(area);
        expect(whole).toHaveLength(apart.length);
        expect(Math.max(...whole.map((mm2, i) => Math.abs(mm2 - apart[i]!)))).toBeLessThan(1e-6);
      }
    });
  });

  describe('what is kept free of screws', () => {
    const dashed = (drawing: Drawing | undefined) =>
      drawing?.shapes.flatMap((shape) =>
        shape.shape === 'line' && shape.layer === 'keep screws out' ? [shape] : [],
      ) ?? [];

    test('lies in the wood of a member, in the view and on the full-size pattern, and follows the clearance', () => {
      const [half] = patterns({ frame: 'frame2' }, dory);
      const view = tryCell(framePattern, { frame: 'frame2' }, dory).drawing;
      // Slot, log in both members, clamp, trim; and a line for each bevelled edge.
      expect(dashed(view)).toHaveLength(7);
      // A point twice at one place, by rounding, is no other outline.
      const areas = (drawing: Drawing | undefined) => dashed(drawing).map(({ points }) => area(points));
      const [drawn, printed] = [areas(view), areas(half)];
      expect(printed).toHaveLength(drawn.length);
      expect(Math.max(...drawn.map((mm2, i) => Math.abs(mm2 - printed[i]!)))).toBeLessThan(1e-3);
      const most = (drawing: Drawing | undefined, axis: 0 | 1) =>
        Math.max(...dashed(drawing).flatMap(({ points }) => points.map((point) => point[axis])));
      const tried = tryCell(framePattern, { frame: 'frame2', member: 'side' }, dory);
      expect(most(view, 0)).toBeLessThan(tried.number('headHalfBreadth') * 1000 + 25);
      const wider = tryCell(framePattern, { frame: 'frame2', screwClear: '30 mm' }, dory).drawing;
      expect(dashed(wider).map(({ points }) => area(points))[0]).toBeGreaterThan(
        area(dashed(view)[0]!.points),
      );
    });

    test('in from the edge as far as the boat’s own quantity says', () => {
      for (const [id, table] of [
        ['frame5', dory],
        ['frame4', vee],
      ] as const) {
        for (const member of ['bottom', 'side']) {
          const wanted = keepOutQuantities(layoutOf(table)).find(
            ({ name }) => name === `${id}.${member}.planed.keepOut`,
          );
          const boat = deriveBoat(table);
          const number = (name: string) => boat.number(name);
          const told = wanted!.from({
            number,
            maybe: number,
            choice: String,
            has: () => true,
            hull: () => boat.hull(),
            inches: () => false,
            found: () => null,
            fact: () => {
              throw new Error('no quantity of a keep-out asks for a fact');
            },
          });
          expect(told).toBeCloseTo(tryCell(framePattern, { frame: id, member }, table).number('screwsIn'), 9);
        }
      }
    });

    test('wood left above the sheer follows the boat', () => {
      expect(tryCell(framePattern, { 'frame.aboveSheer': '40 mm' }, dory).number('beyond')).toBeCloseTo(
        0.04,
        12,
      );
    });
  });
});

test('a frame that leans stops: its pattern would be too low', () => {
  const says = (frame: string) =>
    tryCell(framePattern, { frame }, withLeaningFrame).warnings.map((one) => one.says);
  expect(says('frame3').join(' ')).toMatch(/leans by 100 mm/);
  expect(says('frame2').join(' ')).not.toMatch(/leans/);
});
