/** The screws of frames on every boat: inside their wood, apart from each other and clear of every later cut. */
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { buildHull, type Hull, lists, offsetsOf, starters, type Table } from '../../../src/boat';
import { frameOutline, type FrameOutline } from '../../../src/boat/joinery/frame-outline';
import { frameNotches, plateAt } from '../../../src/boat/joinery/frame-pieces';
import {
  type FrameScrew,
  frameScrews,
  type ScrewedOn,
  type ScrewStock,
} from '../../../src/boat/joinery/frame-screws';
import { type KeepOut, keepOutsIn } from '../../../src/boat/joinery/keep-outs';
import { clearOf, distance2, type Vec2 } from '../../../src/kernel';
import { withoutChines, withTwoChines } from '../../cells/odd-boats';
import { box, hullThrough } from '../shapes';
import { clashes } from '../clashes';

const D = 0.164 * 0.0254;
const stock: ScrewStock = {
  along: 5 * D,
  across: 3 * D,
  end: 7 * D,
  edge: 3 * D,
  rows: 2,
  rowGap: 0.02,
  pitch: 0.04,
  head: 0.332 * 0.0254,
  diameter: D,
  hold: 0.016,
  plateLeg: 0.15,
  keelsonWidth: 0.09,
  siding: 0.019,
  bothFaces: true,
};
const cuts = {
  slot: { width: 0.09 + 0.0254, depth: 0.018, radius: 0.00635 },
  chineLog: { thickness: 0.019, width: 0.038 },
  sheerClamp: { thickness: 0.019, width: 0.038 },
  beyond: 0.025,
  clearance: 0.0125,
};
const boats: readonly (readonly [string, Table])[] = [
  ...starters.map(({ id, table }) => [id, table] as const),
  ['two chines', withTwoChines],
  ['no chine', withoutChines],
];

interface Laid {
  readonly frame: FrameOutline;
  readonly keepOuts: readonly KeepOut[];
  readonly screws: readonly FrameScrew[];
}
function laid(hull: Hull, name: string, joint: ScrewedOn, more: Partial<ScrewStock> = {}): Laid {
  const frame = frameOutline(hull, name, {
    stands: hull.station(name).stands,
    siding: 0.019,
    moulded: 0.07,
    joint: 'mitre',
    beyond: 0.025,
    skin: { bottom: 0.009, bilge: 0.009, side: 0.006 },
  });
  const notches = frameNotches(hull, frame, cuts);
  const keepOuts = keepOutsIn(frame, notches, cuts);
  return { frame, keepOuts, screws: frameScrews(frame, notches, keepOuts, joint, { ...stock, ...more }) };
}
const standing = (screws: readonly FrameScrew[]) =>
  screws.flatMap((screw) => (screw.at ? [{ ...screw, at: screw.at }] : []));
const offLine = (at: Vec2, a: Vec2, b: Vec2) =>
  ((b[0] - a[0]) * (at[1] - a[1]) - (b[1] - a[1]) * (at[0] - a[0])) / distance2(a, b);
const hulls = boats.map(([name, table]) => [name, buildHull(offsetsOf(table)), lists(table)] as const);

describe('in a box, 1 m wide and 400 mm deep inside its skin', () => {
  const hull = hullThrough(box(3, 1, 0.4));

  test('plates are screwed into the side and into the bottom, mitred at 45 degrees', () => {
    const { screws } = laid(hull, 'station2', { fastened: 'plate', chine: 1 });
    expect(new Set(screws.map(({ member }) => member.panel.name))).toStrictEqual(new Set(['side', 'bottom']));
    // Corner of the skin's inside 494 mm out, 9 mm up.
    for (const { at, member, along, inward } of standing(screws)) {
      const [a, b] =
        member.panel.name === 'side' ? [at[1] - 0.009, 0.494 - at[0]] : [0.494 - at[0], at[1] - 0.009];
      expect(along).toBeCloseTo(a, 12);
      expect(inward).toBeCloseTo(b, 12);
      // The mitre runs at 45 degrees: along the grain it lies as far from the corner as the screw stands in.
      expect(along - inward).toBeGreaterThanOrEqual(stock.end - 1e-9);
    }
  });

  test('the first row stands at the edge the rule allows, and is moved in off the log where it must be', () => {
    const { screws } = laid(hull, 'station2', { fastened: 'plate', chine: 1 });
    const rows = screws.filter(({ member }) => member.panel.name === 'side');
    const outer = rows.filter(({ wanted }) => Math.abs(0.494 - wanted[0] - stock.edge) < 1e-8);
    expect(outer.length).toBeGreaterThan(1);
    // Log to 47 mm up the inside of the skin; head and clearance on top.
    const low = outer.filter(({ wanted }) => wanted[1] < 0.009 + 0.038 + 0.0125 + stock.head / 2);
    expect(low.length).toBeGreaterThan(0);
    for (const screw of low) expect(screw.clash).toBe('notch at the chine');
  });

  test('both faces take screws by turns, or one alone', () => {
    const joint = { fastened: 'plate', chine: 1 } as const;
    const faces = laid(hull, 'station2', joint).screws.map(({ from }) => from);
    expect(faces.slice(0, 4)).toStrictEqual(['line', 'other', 'line', 'other']);
    const single = laid(hull, 'station2', joint, { bothFaces: false }).screws.map(({ from }) => from);
    expect(new Set(single)).toStrictEqual(new Set(['line']));
  });

  test('through the skin the first stands an end distance below the sheer or clear of its trimming and the clamp', () => {
    const { screws } = laid(hull, 'station2', { fastened: 'skin', panel: 'side' }, { pitch: 0.1 });
    const [top] = standing(screws);
    // The clamp's notch reaches 38 mm down; the shank keeps the clearance and half its diameter.
    expect(top!.along).toBeGreaterThanOrEqual(0.038 + 0.0125 + D / 2 - 1e-9);
    expect(top!.along).toBeLessThan(0.038 + 0.0125 + D / 2 + 0.0011);
    expect(top!.clash).toBe('notch at the sheer');
    expect(top!.inward).toBe(0.0095);
  });

  test('through the keelson they stand in from its edges, clear of the limber, on both sides of the centreline', () => {
    const { screws } = laid(hull, 'station2', { fastened: 'keelson' });
    expect(screws.length).toBeGreaterThan(0);
    for (const { at } of standing(screws)) {
      expect(at[0]).toBeGreaterThanOrEqual(stock.along / 2 - 1e-9);
      expect(at[0]).toBeLessThanOrEqual(0.045 - stock.edge + 1e-9);
      expect(at[1]).toBeCloseTo(0.009 + 0.018, 12);
      // The hole's near side is at 45 mm.
      expect(0.045 - at[0]).toBeGreaterThanOrEqual(0.0125 + D / 2 - 1e-4);
    }
  });

  test('a plate at a chine that is not there is refused in a sentence', () => {
    expect(() => laid(hull, 'station2', { fastened: 'plate', chine: 2 })).toThrow('has no gussets');
    expect(() => laid(hull, 'station2', { fastened: 'skin', panel: 'bilge' })).toThrow('no member under');
  });
});

describe.each(hulls)('%s', (_, hull, { frames, chines, panels }) => {
  const joints: readonly ScrewedOn[] = [
    ...chines.map((_chine, i): ScrewedOn => ({ fastened: 'plate', chine: i + 1 })),
    ...panels.map(({ id }): ScrewedOn => ({ fastened: 'skin', panel: id })),
    { fastened: 'keelson' },
  ];
  const everywhere = (more: Partial<ScrewStock> = {}) =>
    frames.flatMap(({ id }) => joints.map((joint) => ({ joint, ...laid(hull, id, joint, more) })));

  test('under plates: in from edges and ends, and clear of later cuts to port and starboard', () => {
    let counted = 0;
    for (const { joint, frame, keepOuts, screws } of everywhere()) {
      if (joint.fastened !== 'plate') continue;
      const plate = plateAt(frame, joint.chine, stock.plateLeg);
      const amiss = standing(screws).filter(({ at, member, inward }) => {
        const depth = clearOf(member.outline, at);
        const longEdge = offLine(at, plate[1], plate[2]);
        return (
          inward < stock.edge - 1e-9 ||
          0.07 - inward < stock.edge - 1e-9 ||
          longEdge < stock.edge - 1e-9 ||
          depth > 1e-9 ||
          [1, -1].some((hand) => clashes(keepOuts, [hand * at[0], at[1]], stock.head).length > 0)
        );
      });
      expect(amiss).toStrictEqual([]);
      counted += standing(screws).length;
    }
    expect(counted).toBeGreaterThanOrEqual(chines.length === 0 ? 0 : 2 * frames.length);
  });

  test('through skin and keelson: no part of a shank comes too near a cut that is still to come', () => {
    for (const { joint, keepOuts, screws } of everywhere()) {
      if (joint.fastened === 'plate') continue;
      const later = keepOuts.filter(
        ({ cut }) => cut !== 'planed' && !(cut === 'slot' && joint.fastened === 'keelson'),
      );
      const amiss = standing(screws).filter(({ at, member }) => {
        const into: Vec2 = joint.fastened === 'skin' ? member.inward : [0, 1];
        return Array.from({ length: 17 }, (_unused, i) => (i / 16) * stock.hold).some((deep) =>
          clashes(later, [at[0] + deep * into[0], at[1] + deep * into[1]], stock.diameter).some(
            ({ by }) => by > 1e-6,
          ),
        );
      });
      expect(amiss).toStrictEqual([]);
    }
  });

  test('apart along the grain or across it, ends kept on every straight row', () => {
    for (const { joint, screws } of everywhere()) {
      const all = standing(screws);
      const near = all.filter((a, i) =>
        all.slice(i + 1).some((b) => {
          if (a.member !== b.member) return false;
          const across = joint.fastened === 'plate' ? Math.abs(a.inward - b.inward) : 0;
          return Math.abs(a.along - b.along) < stock.along - 1e-8 && across < stock.across - 1e-8;
        }),
      );
      expect(near).toStrictEqual([]);
      const throughSkin = joint.fastened === 'skin' ? all : [];
      expect(throughSkin.filter(({ along }) => along < stock.end - 1e-9)).toStrictEqual([]);
    }
  });

  test('what stays stands where the rows had it; what moves says for which cut', () => {
    for (const { keepOuts, screws } of everywhere()) {
      const names = keepOuts.map(({ what }) => what);
      const amiss = screws.filter(({ at, wanted, clash, moved }) =>
        clash === '' ? at?.[0] !== wanted[0] || at[1] !== wanted[1] || moved !== 0 : !names.includes(clash),
      );
      expect(amiss).toStrictEqual([]);
    }
  });
});

test('holds for any screw and any rule on frames of every boat', () => {
  const mm = (min: number, max: number) => fc.integer({ min, max }).map((value) => value / 1000);
  let stood = 0;
  fc.assert(
    fc.property(
      fc.constantFrom(...hulls),
      fc.nat(),
      fc.record({ along: mm(10, 80), across: mm(5, 25), end: mm(5, 70), edge: mm(4, 20), rowGap: mm(5, 40) }),
      fc.record({ pitch: mm(10, 150), head: mm(5, 13), hold: mm(5, 40), plateLeg: mm(60, 400) }),
      ([, hull, { frames, chines }], nth, rules, sizes) => {
        const name = frames[nth % frames.length]!.id;
        const joint: ScrewedOn =
          chines.length > 0 ? { fastened: 'plate', chine: 1 } : { fastened: 'keelson' };
        const { screws, keepOuts } = laid(hull, name, joint, { ...rules, ...sizes, rows: 3 });
        const all = standing(screws);
        stood += all.length;
        expect(all.filter(({ clear }) => clear < -1e-9)).toStrictEqual([]);
        const plated = joint.fastened === 'plate' ? all : [];
        expect(plated.filter(({ at }) => clashes(keepOuts, at, sizes.head).length > 0)).toStrictEqual([]);
        expect(plated.filter(({ inward }) => inward < rules.edge - 1e-9)).toStrictEqual([]);
      },
    ),
    { seed: 8, numRuns: 60 },
  );
  expect(stood).toBeGreaterThan(100);
});
