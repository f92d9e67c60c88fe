import { describe, expect, test } from 'vitest';
import { buildHull, type Hull, offsetsOf, starters } from '../../../src/boat';
import { outlineArea } from '../../../src/boat/joinery/cut-away';
import { chineLogNotch, keelsonSlot, sheerClampNotch } from '../../../src/boat/joinery/frame-notches';
import { frameOutline, type FrameStock } from '../../../src/boat/joinery/frame-outline';
import { type Fittings, framePieces } from '../../../src/boat/joinery/frame-pieces';
import { insideOf } from '../inside-of';
import { box, hullThrough, planeSided, radians, veePrism } from '../shapes';

const stock: FrameStock = {
  stands: 'forward',
  siding: 0.019,
  moulded: 0.07,
  joint: 'mitre',
  beyond: 0,
  skin: { bottom: 0.009, bilge: 0.009, side: 0.006 },
};
const fittings: Fittings = {
  slot: { width: 0.11, depth: 0.018, radius: 0.006 },
  chineLog: { thickness: 0.019, width: 0.038 },
  sheerClamp: { thickness: 0.019, width: 0.038 },
  gussetLeg: 0.2,
  moulded: 0.07,
  beyond: 0,
};
const frame = (hull: Hull, more: Partial<FrameStock> = {}, name = 'station2') =>
  frameOutline(hull, name, { ...stock, ...more });
const vee = (deadrise: number, flare: number) =>
  hullThrough(veePrism(3, 0.6, radians(deadrise), 0.4, radians(flare)));

describe('members of a frame', () => {
  test('of a box: one piece across, sides plumb, everything mitred at 45 deg', () => {
    const { corners, members } = frame(hullThrough(box(3, 1, 0.4)));
    expect(corners).toStrictEqual([
      [0, expect.closeTo(0.009, 12)],
      [expect.closeTo(0.494, 12), expect.closeTo(0.009, 12)],
      [expect.closeTo(0.494, 12), expect.closeTo(0.4, 12)],
    ]);
    const [bottom, side] = members;
    expect(bottom!.pieces).toBe(1);
    expect(bottom!.length).toBeCloseTo(0.988, 12);
    expect(bottom!.footCut).toBe(0);
    expect(bottom!.headCut).toBeCloseTo(radians(45), 12);
    expect(side!.pieces).toBe(2);
    expect(side!.length).toBeCloseTo(0.391, 12);
    expect(side!.footCut).toBeCloseTo(radians(45), 12);
    expect(side!.headCut).toBe(0);
  });

  test.each([
    [15, 25],
    [0, 20],
    [8, 0],
    [20, -10],
  ])('deadrise %i, flare %i: a mitre halves the angle 90 + both between the members', (deadrise, flare) => {
    const { members, angles } = frame(vee(deadrise, flare));
    const angle = 90 + deadrise + flare;
    expect(angles[0]).toBeCloseTo(radians(angle), 9);
    expect(members[0]!.headCut).toBeCloseTo(radians(90 - angle / 2), 9);
    expect(members[1]!.footCut).toBeCloseTo(radians(90 - angle / 2), 9);
    // On the centreline a bottom member is cut plumb: off square by the deadrise, longer on its inner edge's side.
    expect(members[0]!.footCut).toBeCloseTo(radians(deadrise), 9);
  });

  test('butted, the bottom runs out to the side and the side stands on its inner edge', () => {
    const { members } = frame(vee(0, 20), { joint: 'butt' });
    // Cut to the flare, and level, the upper and the inner edge are the longer ones.
    expect(members[0]!.headCut).toBeCloseTo(radians(-20), 9);
    expect(members[1]!.footCut).toBeCloseTo(radians(-20), 9);
    const corner = members[1]!.inner[0];
    expect(members[0]!.length / 2).toBeCloseTo(corner + 0.07 * Math.tan(radians(20)), 9);
    expect(members[1]!.outline[0]![1] - members[1]!.inner[1]).toBeCloseTo(0.07, 9);
  });

  test('flatter than 150 deg a butt is mitred, not run out to a feather', () => {
    const hull = vee(40, 25);
    expect(frame(hull, { joint: 'butt' }).members.map(({ outline }) => outline)).toStrictEqual(
      frame(hull).members.map(({ outline }) => outline),
    );
  });

  test('9 mm under a bevel of 20 deg: the frame is 9.578 mm smaller than the offsets', () => {
    const hull = hullThrough(
      planeSided({ flare: 0, plan: -Math.tan(radians(20)), profile: 0, rake: 0, height: 0.4 }),
    );
    const { corners } = frame(hull, { skin: { bottom: 0.012, side: 0.009 } });
    expect((hull.edge('chine').points[2]![1] - corners[1]![0]) * 1000).toBeCloseTo(9.578, 3);
  });

  test('the other face lies frame thickness × slope further along each line; its members’ ends likewise', () => {
    const plan = -0.2;
    const hull = hullThrough(planeSided({ flare: 0, plan, profile: 0.05, rake: 0, height: 0.4 }));
    for (const stands of ['forward', 'aft'] as const) {
      const { corners, farCorners, members } = frame(hull, { stands });
      const way = stands === 'forward' ? 1 : -1;
      expect(farCorners[1]![0] - corners[1]![0]).toBeCloseTo(way * 0.019 * plan, 9);
      expect(farCorners[1]![1] - corners[1]![1]).toBeCloseTo(way * 0.019 * 0.05, 9);
      expect(members[1]!.farther[0]).toBeCloseTo(way * 0.019 * plan, 9);
    }
  });

  test('what is left above the sheer lengthens the side member by as much', () => {
    const hull = vee(10, 20);
    const [, short] = frame(hull).members;
    const [, long] = frame(hull, { beyond: 0.025 }).members;
    expect(long!.length - short!.length).toBeCloseTo(0.025, 12);
  });

  test('the outlines of the members fill the band between the skin and the line the depth inside it', () => {
    for (const joint of ['mitre', 'butt'] as const) {
      const { members } = frame(vee(12, 18), { joint });
      const whole = members.reduce((sum, { outline }) => sum + outlineArea(outline), 0);
      // The skin's edge from the centreline to the sheer, and the members' inner edges back.
      const [bottom, side] = members;
      const inner = [side!.outline[2]!, side!.outline[3]!, bottom!.outline[2]!, bottom!.outline[3]!];
      const band = [bottom!.inner, bottom!.outer, side!.outer, ...inner];
      expect(whole).toBeCloseTo(outlineArea(band), 12);
    }
  });

  test('offsets to the inside of the skin are the frame', () => {
    for (const { table } of starters) {
      const hull = buildHull(offsetsOf(table));
      const inside = buildHull(insideOf(hull, (panel) => stock.skin[panel]!));
      for (const { name } of hull.frames) {
        const given = frame(inside, {}, name).corners;
        frame(hull, {}, name).corners.forEach(([y, z], i) => {
          expect(given[i]![0]).toBeCloseTo(y, 12);
          expect(given[i]![1]).toBeCloseTo(z, 12);
        });
      }
    }
  });

  test('members deeper than the section has room for are refused in a sentence', () => {
    expect(() => frame(hullThrough(box(3, 0.4, 0.4)), { moulded: 0.3 })).toThrow(/too deep for station 2/);
  });
});

describe('notches', () => {
  test('in a prism the log is its own section: square to the side, its foot on the bottom', () => {
    const hull = vee(15, 25);
    const { depth, along, section } = chineLogNotch(hull, frame(hull), hull.edge('chine'), fittings.chineLog);
    expect(depth).toBeCloseTo(0.019, 9);
    expect(along).toBeCloseTo(0.038, 9);
    // A rectangle and the triangle that the bottom, 40 deg off square, adds at its foot.
    const area = 0.019 * 0.038 + (0.019 ** 2 * Math.tan(radians(40))) / 2;
    expect(Math.abs(outlineArea(section))).toBeCloseTo(area, 9);
  });

  test('under a bevel of 20 deg a log of 19 mm takes 20.219 mm', () => {
    const hull = hullThrough(
      planeSided({ flare: 0, plan: -Math.tan(radians(20)), profile: 0, rake: 0, height: 0.4 }),
    );
    const made = frame(hull);
    const log = chineLogNotch(hull, made, hull.edge('chine'), fittings.chineLog);
    const clamp = sheerClampNotch(hull, made, fittings.sheerClamp, 0);
    expect(log.depth * 1000).toBeCloseTo(19 / Math.cos(radians(20)), 6);
    expect(clamp.depth * 1000).toBeCloseTo(20.219, 3);
    // Level lines on a plumb side: the height of a notch is the timber's own width.
    expect(log.along).toBeCloseTo(0.038, 9);
    expect(clamp.along).toBeCloseTo(0.038, 9);
  });

  test('on a side that rises, the width along the edge is w / cos of the rise', () => {
    const profile = 0.3;
    const hull = hullThrough(planeSided({ flare: 0, plan: 0, profile, rake: 0, height: 0.4 }));
    const made = frame(hull);
    const log = chineLogNotch(hull, made, hull.edge('chine'), fittings.chineLog);
    expect(log.along).toBeCloseTo(0.038 * Math.hypot(1, profile), 9);
    const slot = keelsonSlot(hull, made, fittings.slot);
    expect(slot.depth).toBeCloseTo(0.018 * Math.hypot(1, profile), 9);
  });

  test('take from the members what they overlap, and no more than one outline is left', () => {
    for (const { table } of starters) {
      const hull = buildHull(offsetsOf(table));
      for (const { name } of hull.frames) {
        const made = frame(hull, { beyond: 0.025 }, name);
        const { members, notches, gussets } = framePieces(hull, made, { ...fittings, beyond: 0.025 });
        expect(members.map(({ outlines }) => outlines.length)).toStrictEqual(members.map(() => 1));
        const whole = made.members.reduce((sum, { outline }) => sum + outlineArea(outline), 0);
        const left = members.reduce((sum, { outlines }) => sum + outlineArea(outlines[0]!), 0);
        const sections = notches.reduce((sum, { section }) => sum + Math.abs(outlineArea(section)), 0);
        // Crown leaves slivers of the sections outside the straight members, deadrise part of the slot.
        const level = Math.abs(made.corners[1]![1] - made.corners[0]![1]) < 1e-3;
        expect(whole - left).toBeGreaterThan((level ? 0.93 : 0.5) * sections);
        expect(whole - left).toBeLessThan(1.03 * sections);
        expect(gussets.map(({ outlines }) => outlines.length)).toStrictEqual([1]);
      }
    }
  });

  test('a gusset with the least leg has its long edge upon the inner corner of the joint', () => {
    const hull = vee(12, 18);
    const made = frame(hull);
    const [{ leastLeg } = { leastLeg: 0 }] = framePieces(hull, made, fittings).gussets;
    const [bottom, side] = made.members;
    const ends = [
      side!.along.map((d, i) => side!.inner[i]! + leastLeg * d),
      bottom!.along.map((d, i) => bottom!.outer[i]! - leastLeg * d),
    ] as [[number, number], [number, number]];
    const inner = side!.outline[3]!;
    const area = outlineArea([...ends, inner]);
    expect(area).toBeCloseTo(0, 12);
  });
});
