/** What must hold of every plan, by a polygon library of another make: no overlap, nothing off the sheet, kerf kept. */
import { difference, type Geom, intersection, union } from 'polyclip-ts';
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  faultsOfNest,
  laidOutline,
  type NestPlan,
  type NestProblem,
  type Quarter,
} from '../../../src/kernel/nest';
import { nestCostAtLeast } from '../../../src/kernel/nest-bound';
import { shopNest } from '../../../src/kernel/nest-shop';
import { searchNest } from '../../../src/search/nest/search-nest';
import { rectangle } from './instances';

type Pair = [number, number];
type Poly = Pair[][];

const poly = (outline: readonly (readonly [number, number])[]): Poly => [
  outline.map(([x, y]): Pair => [x, y]),
];

const areaOf = (multi: Geom): number =>
  (multi as Poly[]).reduce(
    (sum, rings) =>
      sum +
      rings.reduce((area, ring, at) => {
        const own = ring.reduce((twice, [x, y], i) => {
          const [nx, ny] = ring[(i + 1) % ring.length]!;
          return twice + x * ny - nx * y;
        }, 0);
        return area + ((at === 0 ? 1 : -1) * Math.abs(own)) / 2;
      }, 0),
    0,
  );

/** An outline with a disc of a radius about each of its points, from within: its sides moved, and discs at its corners. */
function letOut(outline: readonly (readonly [number, number])[], by: number): Geom {
  const parts = outline.flatMap((a, i): Poly[] => {
    const b = outline[(i + 1) % outline.length]!;
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
    const n: Pair = [(by * (b[1] - a[1])) / length, (-by * (b[0] - a[0])) / length];
    const side = poly([a, b, [b[0] + n[0], b[1] + n[1]], [a[0] + n[0], a[1] + n[1]]]);
    const disc = poly(
      Array.from({ length: 10 }, (_, k): Pair => {
        const way = (k / 10) * 2 * Math.PI;
        return [a[0] + by * Math.cos(way), a[1] + by * Math.sin(way)];
      }),
    );
    return [side, disc];
  });
  return union(poly(outline), ...(parts as Geom[]));
}

/** Square metres: a tenth of a millimetre along a metre. */
const HAIR = 1e-4;

function holds(plan: NestPlan, problem: NestProblem): void {
  const { pieces, stocks, gap, edge } = problem;
  expect(
    plan.sheets.flatMap(({ laid }) => laid.map(({ piece }) => piece)).toSorted((a, b) => a - b),
  ).toStrictEqual([...pieces.keys()]);
  for (const { stock, laid } of plan.sheets) {
    const { length, width } = stocks[stock]!;
    const room = poly([
      [edge, edge],
      [length - edge, edge],
      [length - edge, width - edge],
      [edge, width - edge],
    ]);
    const there = laid.map((one) => laidOutline(one, pieces[one.piece]!));
    there.forEach((outline, i) => {
      expect(areaOf(difference(poly(outline) as Geom, room as Geom))).toBeLessThan(HAIR);
      const kept = letOut(outline, Math.max(0, gap - 2e-4));
      for (const other of there.slice(i + 1))
        expect(areaOf(intersection(kept, poly(other) as Geom))).toBeLessThan(HAIR);
    });
  }
}

/** A panel of a kind: long, bowed on both sides, hollow on one. */
const bowed = (length: number, width: number, bow: number, taper: number) => {
  const along = Array.from({ length: 7 }, (_, i) => i / 6);
  const low = along.map((s): Pair => [s * length, 4 * bow * s * (1 - s)]);
  const high = along.map((s): Pair => [s * length, 4 * bow * s * (1 - s) + width * (1 - taper * s)]);
  return [...low, ...high.toReversed()];
};

const piece = fc.oneof(
  fc
    .record({ w: fc.integer({ min: 5, max: 90 }), h: fc.integer({ min: 5, max: 60 }) })
    .map(({ w, h }) => rectangle(w / 100, h / 100)),
  fc
    .record({
      length: fc.integer({ min: 40, max: 110 }),
      width: fc.integer({ min: 12, max: 35 }),
      bow: fc.integer({ min: -12, max: 12 }),
      taper: fc.integer({ min: 0, max: 9 }),
    })
    .map(({ length, width, bow, taper }) => bowed(length / 100, width / 100, bow / 100, taper / 10)),
  // An ell: others may lie in its hollow.
  fc.record({ a: fc.integer({ min: 30, max: 80 }), t: fc.integer({ min: 5, max: 20 }) }).map(({ a, t }) => {
    const [long, thick] = [a / 100, t / 100];
    return [
      [0, 0],
      [long, 0],
      [long, thick],
      [thick, thick],
      [thick, long],
      [0, long],
    ] as Pair[];
  }),
);

const problems = fc.record({
  pieces: fc.array(
    fc.record({
      name: fc.constant('piece'),
      outline: piece,
      turns: fc.constantFrom<readonly Quarter[]>([0], [0, 2], [1, 3], [0, 1, 2, 3]),
      mirror: fc.boolean(),
    }),
    { minLength: 1, maxLength: 7 },
  ),
  stocks: fc.constantFrom(
    [{ length: 1.4, width: 1.3, price: 10 }],
    [
      { length: 1.4, width: 1.3, price: 10 },
      { length: 2.5, width: 1.3, price: 17 },
    ],
  ),
  gap: fc.constantFrom(0, 0.003, 0.02),
  edge: fc.constantFrom(0, 0.01),
});

describe('whatever is laid', () => {
  test('lies on its sheet, clear of the others by the kerf, and is there once', () => {
    fc.assert(
      fc.property(problems, (problem) => {
        const found = searchNest(problem, 300);
        holds(found.plan, problem);
        expect(faultsOfNest(found.plan, problem)).toStrictEqual([]);
        expect(found.least).toBeLessThanOrEqual(found.cost + 1e-9);
        expect(nestCostAtLeast(problem)).toBeLessThanOrEqual(found.least + 1e-9);
      }),
      { numRuns: 14, seed: 11 },
    );
  });

  test('by the rule of the shop too', () => {
    fc.assert(
      fc.property(problems, (problem) => {
        const plan = shopNest(problem);
        holds(plan, problem);
        expect(faultsOfNest(plan, problem)).toStrictEqual([]);
      }),
      { numRuns: 14, seed: 12 },
    );
  });

  test('the same problem is answered the same way again, better by better', () => {
    const [problem] = fc.sample(problems, { numRuns: 1, seed: 13 });
    const run = () => {
      const told: unknown[] = [];
      const found = searchNest(problem!, 500, (one) => told.push(one));
      return [...told, found];
    };
    expect(run()).toStrictEqual(run());
  });
});

test('two bowed pieces lie into one another, where their boxes do not', () => {
  const outline = bowed(1, 0.2, 0.2, 0);
  const problem: NestProblem = {
    pieces: ['one', 'other'].map((name) => ({ name, outline, turns: [0], mirror: false })),
    stocks: [{ length: 1, width: 0.65, price: 1 }],
    gap: 0.003,
    edge: 0,
  };
  expect(shopNest(problem).sheets).toHaveLength(2);
  const { plan } = searchNest(problem, 100);
  expect(plan.sheets).toHaveLength(1);
  holds(plan, problem);
});

describe('a plan that is not one', () => {
  const square = { name: 'a square', outline: rectangle(1, 1), turns: [0] as const, mirror: false };
  const problem: NestProblem = {
    pieces: [square, { ...square, name: 'its fellow' }],
    stocks: [{ length: 2.1, width: 1, price: 1 }],
    gap: 0.01,
    edge: 0,
  };
  const laid = (x: number, more = {}) => ({
    piece: 0,
    mirrored: false,
    quarter: 0 as const,
    at: [x, 0] as const,
    ...more,
  });
  const faults = (...places: ReturnType<typeof laid>[]) =>
    faultsOfNest({ sheets: [{ stock: 0, laid: places }] }, problem);

  test.each([
    ['a piece is left out', [laid(0)], 'its fellow is not cut'],
    ['one is cut twice', [laid(0), laid(1.05)], 'a square is cut more than once'],
    ['they overlap', [laid(0), laid(0.5, { piece: 1 })], 'sheet 1: a square and its fellow lie too close'],
    [
      'one lies on the other',
      [laid(0), laid(0, { piece: 1 })],
      'sheet 1: a square and its fellow lie too close',
    ],
    [
      'the kerf is not kept',
      [laid(0), laid(1.005, { piece: 1 })],
      'sheet 1: a square and its fellow lie too close',
    ],
    ['one reaches over', [laid(0), laid(1.2, { piece: 1 })], 'sheet 1: its fellow reaches over the edge'],
    ['one is turned', [laid(0), laid(1.05, { piece: 1, quarter: 1 })], 'sheet 1: its fellow may not lie so'],
    [
      'the back is up',
      [laid(0), laid(1.05, { piece: 1, mirrored: true })],
      'sheet 1: its fellow may not lie so',
    ],
  ])('is refused where %s', (_, places, says) => {
    expect(faults(...places)).toContain(says);
  });

  test('and one that is has no fault', () => {
    expect(faults(laid(0), laid(1.05, { piece: 1 }))).toStrictEqual([]);
  });
});
