/** Screws by rows in a piece of wood: rules kept, cuts cleared, moved no farther than needed, dropped only where they must. */
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { apart, type ScrewField, layOut, rowsIn } from '../../../src/boat/joinery/screw-layout';
import { chordAt, convexOutline, type Vec2 } from '../../../src/kernel';

/** Whether a place lies within what is allowed, but for rounding. */
function isAllowed([along, inward]: Vec2, allowed: readonly Vec2[]): boolean {
  const levels = allowed.map(([, level]) => level);
  const level = Math.min(Math.max(inward, Math.min(...levels)), Math.max(...levels));
  const chord = chordAt(allowed, level);
  return (
    chord !== null && Math.abs(level - inward) < 1e-9 && along > chord[0] - 1e-9 && along < chord[1] + 1e-9
  );
}

const strip = (length: number, depth: number): readonly Vec2[] => [
  [0, 0],
  [length, 0],
  [length, depth],
  [0, depth],
];
interface Hole {
  readonly at: Vec2;
  readonly radius: number;
}
const clearOfAll =
  (holes: readonly Hole[], need: number): ScrewField['clearance'] =>
  ([s, t]) => {
    const least = Math.min(
      ...holes.map(({ at, radius }) => Math.hypot(s - at[0], t - at[1]) - radius - need),
    );
    return holes.length === 0 ? { by: 1, of: '' } : { by: least, of: 'a cut' };
  };
const plain: ScrewField = {
  allowed: strip(0.3, 0.04),
  along: 0.04,
  across: 0.0125,
  rows: 2,
  rowGap: 0.02,
  pitch: 0.05,
  clearance: () => ({ by: 1, of: '' }),
};

describe('rows', () => {
  test('300 mm in spaces of 50 are seven screws, the next row six between them, 20 mm farther in', () => {
    const rows = rowsIn(plain);
    expect(rows).toHaveLength(13);
    rows.slice(0, 7).forEach(([along, inward], i) => {
      expect(along).toBeCloseTo(0.05 * i, 12);
      expect(inward).toBeCloseTo(0, 8);
    });
    rows.slice(7).forEach(([along, inward], i) => {
      expect(along).toBeCloseTo(0.025 + 0.05 * i, 12);
      expect(inward).toBeCloseTo(0.02, 8);
    });
  });

  test('stand no closer than the rule, whatever is asked', () => {
    // 300 / 40: at most eight.
    expect(rowsIn({ ...plain, rows: 1, pitch: 0.01 })).toHaveLength(8);
    expect(rowsIn({ ...plain, rowGap: 0.001 })[7]![1]).toBeCloseTo(0.0125, 8);
  });

  test('one screw in the middle where there is no room for two; none beyond the wood', () => {
    const [one, ...others] = rowsIn({ ...plain, allowed: strip(0.03, 0.01) });
    expect(one![0]).toBeCloseTo(0.015, 12);
    expect(others).toStrictEqual([]);
    expect(rowsIn({ ...plain, allowed: [] })).toStrictEqual([]);
  });
});

describe('a screw that meets a later cut', () => {
  const hole: Hole = { at: [0.1, 0], radius: 0.006 };
  const field: ScrewField = { ...plain, rows: 1, clearance: clearOfAll([hole], 0.01) };

  test('moves in from the edge as far as the cut asks, to the millimetre; the others stay', () => {
    const screws = layOut(field);
    expect(screws.filter(({ clash }) => clash !== '')).toHaveLength(1);
    const { wanted, at, clear } = screws[2]!;
    expect(wanted[0]).toBeCloseTo(0.1, 12);
    const away = Math.hypot(at![0] - wanted[0], at![1] - wanted[1]);
    expect(away).toBeGreaterThan(0.016 - 1e-4);
    expect(away).toBeLessThan(0.017);
    expect(clear).toBeGreaterThanOrEqual(-1e-9);
  });

  test('on a line moves along it, if its neighbours leave room, and else is dropped', () => {
    const line: readonly Vec2[] = [
      [0, 0],
      [0.3, 0],
    ];
    const roomy = layOut({ ...field, allowed: line, along: 0.02, pitch: 0.05 });
    expect(roomy.map(({ at }) => at !== null)).not.toContain(false);
    expect(Math.abs(roomy[2]!.at![0] - 0.1)).toBeCloseTo(0.016, 3);
    const tight = layOut({ ...field, allowed: line });
    expect(tight[2]).toMatchObject({ at: null, clash: 'a cut' });
    expect(tight[2]!.clear).toBeLessThan(0);
  });
});

const mm = (min: number, max: number) => fc.integer({ min, max }).map((value) => value / 1000);
const anyField = fc
  .record({
    corners: fc.array(fc.tuple(mm(0, 260), mm(0, 70)), { minLength: 4, maxLength: 8 }),
    along: mm(12, 50),
    across: mm(8, 20),
    rows: fc.integer({ min: 1, max: 4 }),
    rowGap: mm(5, 30),
    pitch: mm(10, 120),
    cuts: fc.array(fc.tuple(fc.tuple(mm(0, 260), mm(0, 70)), mm(3, 60)), { maxLength: 4 }),
    need: mm(0, 15),
  })
  .map(({ corners, cuts, need, ...rules }): ScrewField => ({
    ...rules,
    allowed: convexOutline(corners),
    clearance: clearOfAll(
      cuts.map(([at, radius]): Hole => ({ at, radius })),
      need,
    ),
  }));

describe('every layout', () => {
  test('keeps its edges and ends, its spaces, and clear of every cut; what is free of cuts stays', () => {
    let moved = 0;
    let dropped = 0;
    fc.assert(
      fc.property(anyField, (field) => {
        const screws = layOut(field);
        expect(screws.map(({ wanted }) => wanted)).toStrictEqual(rowsIn(field));
        const standing = screws.flatMap(({ at }) => (at ? [at] : []));
        expect(standing.filter((at) => !isAllowed(at, field.allowed))).toStrictEqual([]);
        expect(standing.filter((at) => field.clearance(at).by < -1e-9)).toStrictEqual([]);
        const near = standing.filter((a, i) => standing.slice(i + 1).some((b) => !apart(a, b, field)));
        expect(near).toStrictEqual([]);
        const stays = screws.filter(({ clash }) => clash === '');
        expect(stays.map(({ at }) => at)).toStrictEqual(stays.map(({ wanted }) => wanted));
        const clashing = screws.filter(({ clash }) => clash !== '');
        expect(clashing.filter(({ wanted }) => field.clearance(wanted).by >= 0)).toStrictEqual([]);
        moved += clashing.filter(({ at }) => at).length;
        dropped += clashing.filter(({ at }) => !at).length;
      }),
      { seed: 31, numRuns: 100 },
    );
    expect(moved).toBeGreaterThan(20);
    expect(dropped).toBeGreaterThan(5);
  });

  test('drops a screw only where no place of a finer grid is left in the end', () => {
    fc.assert(
      fc.property(anyField, (field) => {
        const screws = layOut(field);
        if (screws.every(({ at }) => at)) return;
        const standing = screws.flatMap(({ at }) => (at ? [at] : []));
        const free: Vec2[] = [];
        for (let s = 0; s <= 0.26; s += 0.0037)
          for (let t = 0; t <= 0.07; t += 0.0037) {
            const at: Vec2 = [s, t];
            const roomy = { along: field.along + 0.003, across: field.across + 0.003 };
            // A place with a millimetre or two to spare all round could not have been overlooked.
            const spare = [-1, 1].every((k) =>
              [0, 1].every((axis) =>
                isAllowed(axis === 0 ? [s + k * 0.0015, t] : [s, t + k * 0.0015], field.allowed),
              ),
            );
            if (
              spare &&
              field.clearance(at).by > 0.0015 &&
              standing.every((other) => apart(at, other, roomy))
            )
              free.push(at);
          }
        expect(free).toStrictEqual([]);
      }),
      { seed: 32, numRuns: 60 },
    );
  });

  test('moves to no place farther than another that it could have had', () => {
    fc.assert(
      fc.property(anyField, (field) => {
        const screws = layOut(field);
        const first = screws.find(({ clash, at }) => clash !== '' && at);
        if (!first?.at) return;
        const others = screws.filter(({ clash }) => clash === '').map(({ wanted }) => wanted);
        const away = Math.hypot(first.at[0] - first.wanted[0], first.at[1] - first.wanted[1]);
        for (let turn = 0; turn < 64; turn++) {
          const angle = (turn / 32) * Math.PI;
          const reach = away - 0.0015;
          if (reach <= 0) continue;
          const at: Vec2 = [
            first.wanted[0] + reach * Math.cos(angle),
            first.wanted[1] + reach * Math.sin(angle),
          ];
          const roomy = { along: field.along + 0.0015, across: field.across + 0.0015 };
          const spare = [-1, 1].every((k) =>
            [0, 1].every((axis) =>
              isAllowed(axis === 0 ? [at[0] + k * 1e-3, at[1]] : [at[0], at[1] + k * 1e-3], field.allowed),
            ),
          );
          const could =
            spare && field.clearance(at).by > 1e-3 && others.every((other) => apart(at, other, roomy));
          expect(could).toBe(false);
        }
      }),
      { seed: 33, numRuns: 80 },
    );
  });

  test('is the mirror of itself in a mirrored piece, where nothing is in the way', () => {
    fc.assert(
      fc.property(anyField, (field) => {
        const turned = convexOutline(field.allowed.map(([s, t]): Vec2 => [-s, t]));
        const there = rowsIn({ ...field, allowed: turned }).map(([s, t]) => [-s, t] as const);
        const here = rowsIn(field);
        expect(there).toHaveLength(here.length);
        const sorted = (places: readonly Vec2[]) => places.toSorted((a, b) => a[1] - b[1] || a[0] - b[0]);
        const [one, other] = [sorted(here), sorted(there)];
        one.forEach(([s, t], i) => {
          expect(other[i]![0]).toBeCloseTo(s, 9);
          expect(other[i]![1]).toBeCloseTo(t, 9);
        });
      }),
      { seed: 34 },
    );
  });
});
