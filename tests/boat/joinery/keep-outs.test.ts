import { layoutOf } from '../../../src/boat/quantities/lists';
import { describe, expect, test } from 'vitest';
import {
  attempt,
  buildHull,
  type Hull,
  lists,
  offsetsOf,
  type Read,
  starters,
  type Table,
} from '../../../src/boat';
import { outlineArea } from '../../../src/boat/joinery/cut-away';
import { keepOutQuantities } from '../../../src/boat/quantities/keep-out-quantities';
import { type KeepOut, keepOutsOf, type SizeOf } from '../../../src/boat/joinery/keep-outs';
import { clearOf, type Vec2 } from '../../../src/kernel';
import { isIssue } from '../../../src/measure';
import { withoutChines, withTwoChines } from '../../cells/odd-boats';
import { deriveBoat } from '../derive';
import { box, hullThrough, planeSided, radians, veePrism } from '../shapes';
import { clashes } from '../clashes';

const sizes: Readonly<Record<string, number>> = {
  'frame.siding': 0.019,
  'frame.moulded': 0.07,
  'frame.aboveSheer': 0.025,
  'frame.limberWidth': 0.0127,
  'frame.limberDrill': 0.0127,
  'frame.screwClearance': 0.0125,
  'keelson.width': 0.09,
  'keelson.thickness': 0.018,
  'chineLog.thickness': 0.019,
  'chineLog.width': 0.038,
  'sheerClamp.thickness': 0.019,
  'sheerClamp.width': 0.038,
  'bottom.thickness': 0.009,
  'bilge.thickness': 0.009,
  'side.thickness': 0.006,
};
const sizeOf: SizeOf = (name) => sizes[name]!;
const of = (hull: Hull, cut: KeepOut['cut'], at?: string, frame = 'station2') => {
  const found = keepOutsOf(hull, frame, sizeOf).find((one) => one.cut === cut && (at ?? one.at) === one.at);
  if (!found) throw new Error(`no ${cut}`);
  return found;
};
const boats: readonly (readonly [string, Table])[] = [
  ...starters.map(({ id, table }) => [id, table] as const),
  ['two chines', withTwoChines],
  ['no chine', withoutChines],
];

describe('in a box, 1 m wide inside a skin of 6 and 9 mm', () => {
  const hull = hullThrough(box(3, 1, 0.4));

  test('the slot is half the keelson, the limber and the clearance out, and the keelson and it up', () => {
    const { box: kept } = of(hull, 'slot');
    expect(kept.inboard).toBe(0);
    expect(kept.outboard).toBeCloseTo(0.045 + 0.0127 + 0.0125, 12);
    expect(kept.upper).toBeCloseTo(0.009 + 0.018 + 0.0125, 12);
  });

  test('the limber hole touches the side and the top of the slot', () => {
    const [slot, hole] = [of(hull, 'slot'), of(hull, 'limber')];
    expect(hole.box.outboard).toBeCloseTo(slot.box.outboard, 12);
    expect(hole.box.upper).toBeCloseTo(slot.box.upper, 12);
    expect(hole.box.outboard - hole.box.inboard).toBeCloseTo(0.0127 + 2 * 0.0125, 12);
  });

  test('the log and the clamp take their thickness inward and their width along the side', () => {
    const log = of(hull, 'notch', 'chine').box;
    expect(log.outboard).toBeCloseTo(0.494 + 0.0125, 12);
    expect(log.inboard).toBeCloseTo(0.494 - 0.019 - 0.0125, 12);
    expect(log.lower).toBeCloseTo(0.009 - 0.0125, 12);
    expect(log.upper).toBeCloseTo(0.009 + 0.038 + 0.0125, 12);
    const clamp = of(hull, 'notch', 'sheer').box;
    expect(clamp.lower).toBeCloseTo(0.4 - 0.038 - 0.0125, 12);
    expect(clamp.upper).toBeCloseTo(0.4 + 0.0125, 12);
  });

  test('what is trimmed stands above the sheer, right across the member', () => {
    const { box: kept, depth } = of(hull, 'trim');
    expect(kept.lower).toBeCloseTo(0.4 - 0.0125, 12);
    expect(kept.upper).toBeCloseTo(0.425 + 0.0125, 12);
    expect(depth).toBeCloseTo(0.07, 12);
  });

  test('nothing is planed off where nothing slopes', () => {
    expect(keepOutsOf(hull, 'station2', sizeOf).map(({ cut }) => cut)).not.toContain('planed');
  });
});

test('in a prism with flare the band of a log is its section, and its box far more', () => {
  const hull = hullThrough(veePrism(3, 0.6, radians(15), 0.4, radians(25)));
  const { outline, box: kept } = of(hull, 'notch', 'chine');
  expect(outlineArea(outline)).toBeCloseTo(0.019 * 0.038 + (0.019 ** 2 * Math.tan(radians(40))) / 2, 9);
  expect((kept.outboard - kept.inboard - 0.025) * (kept.upper - kept.lower - 0.025)).toBeGreaterThan(
    1.3 * outlineArea(outline),
  );
});

test('under a bevel of 20 deg the plane takes 6.92 mm of a frame 19 mm thick', () => {
  const hull = hullThrough(
    planeSided({ flare: 0, plan: -Math.tan(radians(20)), profile: 0, rake: 0, height: 0.4 }),
  );
  const planed = of(hull, 'planed', 'side');
  expect(planed.depth * 1000).toBeCloseTo(6.915, 3);
  expect((planed.box.outboard - planed.box.inboard) * 1000).toBeCloseTo(6.915 + 25, 3);
});

describe('a screw', () => {
  const hull = hullThrough(box(3, 1, 0.4));
  const cuts = keepOutsOf(hull, 'station2', sizeOf);
  // The inner face of the log lies at 475 mm, mid-height at 28 mm.
  const beside = (gap: number): Vec2 => [0.475 - gap, 0.028];

  test('clear of everything clashes with nothing', () => {
    expect(clashes(cuts, [0.455, 0.2], 0.0084)).toStrictEqual([]);
  });

  test('clashes by what its head and the clearance lack to the cut', () => {
    const clash = (gap: number) => clashes(cuts, beside(gap), 0.0084)[0];
    expect(clash(0.0125 + 0.0042 + 1e-6)).toBeUndefined();
    expect(clash(0.01)!.what).toBe('notch at the chine');
    expect(clash(0.01)!.by).toBeCloseTo(0.0125 + 0.0042 - 0.01, 12);
    // In the middle of the log the saw meets it whole.
    expect(clash(-0.0095)!.by).toBeCloseTo(0.0125 + 0.0042 + 0.0095, 12);
  });

  test('to starboard clashes as to port, and the worst cut comes first', () => {
    for (const side of [1, -1]) {
      const found = clashes(cuts, [side * 0.055, 0.025], 0.0084);
      expect(found.map(({ what }) => what)).toStrictEqual(['slot for the keelson', 'limber hole']);
      expect(found[0]!.by).toBeGreaterThan(found[1]!.by);
    }
  });

  test('off a corner of the cut is as far as the crow flies', () => {
    // 12 out and 9 up from the log's inner upper corner is 15 mm away.
    const [found] = clashes(cuts, [0.475 - 0.012, 0.047 + 0.009], 0.0084);
    expect(found!.by).toBeCloseTo(0.0125 + 0.0042 - 0.015, 12);
  });
});

describe.each(boats)('%s', (_, table) => {
  const hull = buildHull(offsetsOf(table));
  const { frames, chines } = lists(table);

  test('has its slot, a notch at every chine and the sheer, and a trim at every frame', () => {
    for (const { id } of frames) {
      const cuts = keepOutsOf(hull, id, sizeOf);
      const count = (cut: KeepOut['cut']) => cuts.filter((one) => one.cut === cut).length;
      expect([count('slot'), count('limber'), count('notch'), count('trim')]).toStrictEqual([
        1,
        1,
        chines.length + 1,
        1,
      ]);
      for (const { outline, box: kept, clearance } of cuts) {
        expect(outlineArea(outline)).toBeGreaterThan(0);
        // The box lies round the cut with its clearance, and touches it.
        for (const [y, z] of outline) {
          expect(y).toBeLessThanOrEqual(kept.outboard - clearance + 1e-12);
          expect(z).toBeGreaterThanOrEqual(kept.lower + clearance - 1e-12);
        }
        expect(clearOf(outline, outline[0]!)).toBeCloseTo(0, 12);
      }
    }
  });

  test('the quantities are the boxes, one name each', () => {
    const boat = deriveBoat(table);
    const made = keepOutQuantities(layoutOf(table));
    expect(new Set(made.map(({ name }) => name)).size).toBe(made.length);
    const number: SizeOf = (name) => boat.number(name);
    const read: Read = {
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
    };
    const value = (name: string) => made.find((one) => one.name === name)?.from(read);
    for (const { name } of made) expect([name, value(name)]).toStrictEqual([name, expect.any(Number)]);
    const { id } = frames[1]!;
    const notch = keepOutsOf(boat.hull(), id, number).find(
      ({ cut, at }) => cut === 'notch' && at === 'sheer',
    )!;
    expect(value(`${id}.sheer.notch.keepOut.upper`)).toBe(notch.box.upper);
    expect(value(`${id}.sheer.notch.keepOut.inboard`)).toBe(notch.box.inboard);
  });

  test('a frame is worked out once for its scantlings, and anew for others', () => {
    const { id } = frames[0]!;
    expect(keepOutsOf(hull, id, sizeOf)).toBe(keepOutsOf(hull, id, (name) => sizes[name]!));
    const wider = keepOutsOf(hull, id, (name) => (name === 'keelson.width' ? 0.12 : sizes[name]!));
    expect(wider[0]!.box.outboard - keepOutsOf(hull, id, sizeOf)[0]!.box.outboard).toBeCloseTo(0.015, 12);
  });
});

test('with nothing left above the sheer there is nothing to trim, and the quantity says so', () => {
  const hull = hullThrough(box(3, 1, 0.4));
  const flush: SizeOf = (name) => (name === 'frame.aboveSheer' ? 0 : sizes[name]!);
  expect(keepOutsOf(hull, 'station2', flush).map(({ cut }) => cut)).not.toContain('trim');
});

test('members too deep for the section are told in a sentence', () => {
  const hull = hullThrough(box(3, 0.4, 0.4));
  const deep: SizeOf = (name) => (name === 'frame.moulded' ? 0.3 : sizes[name]!);
  const told = attempt(() => keepOutsOf(hull, 'station2', deep).length);
  expect(isIssue(told) ? told.issue : '').toContain('too deep for station 2');
});
