import { describe, expect, test } from 'vitest';
import {
  offsetFaults,
  type OffsetPoint,
  type Offsets,
  offsetsOf,
  readTable,
  starter,
  type Table,
} from '../../../src/boat';
import { box, offsetsThrough, roundPrism, wedge } from '../shapes';

const says = (offsets: Offsets) => offsetFaults(offsets).map((fault) => fault.says);

/** The offsets with one point changed. */
function withPoint(offsets: Offsets, edge: number, station: number, point: OffsetPoint): Offsets {
  const points = offsets.points.map((line, e) =>
    e === edge ? line.map((p, s) => (s === station ? point : p)) : line,
  );
  return { ...offsets, points };
}

const good = offsetsThrough(wedge(4, 1.2, 0.5));

test('a good table has no faults', () => {
  expect(offsetFaults(good)).toStrictEqual([]);
  expect(offsetFaults(offsetsThrough(roundPrism(2)))).toStrictEqual([]);
});

describe('along an edge', () => {
  test.each([
    ['missing', [1, null, 0.5], 'halfBreadth', 'station 1, sheer: the half-breadth is missing'],
    ['missing', [null, 0.45, 0.5], 'x', 'station 1, sheer: the distance forward is missing'],
    ['missing', [1, 0.45, null], 'height', 'station 1, sheer: the height is missing'],
    ['not a number', [1, 0.45, NaN], 'height', 'station 1, sheer: the height is not a number'],
    ['not finite', [1, Infinity, 0.5], 'halfBreadth', 'station 1, sheer: the half-breadth is not a number'],
    [
      'too large',
      [1, 0.45, 450],
      'height',
      'station 1, sheer: the height is more than 50 m; is the unit right?',
    ],
    [
      'negative',
      [1, -0.45, 0.5],
      'halfBreadth',
      'station 1, sheer: a half-breadth is measured out from the centreline, so it can’t be below 0',
    ],
    [
      'standing still',
      [0, 0.45, 0.5],
      'x',
      'station 1, sheer: it stands exactly as far forward as station 0',
    ],
    [
      'going back',
      [-1, 0.45, 0.5],
      'x',
      'station 1, sheer: it stands aft of station 0, but stations go from aft forward',
    ],
  ] as const)('%s', (_, point, column, sentence) => {
    const faults = offsetFaults(withPoint(good, 2, 1, point));
    expect(faults).toContainEqual({ station: 'station1', edge: 'sheer', column, says: sentence });
  });

  test('one number out gives one fault, not one for each neighbour', () => {
    // Too far forward: the next station is the one that stands aft.
    expect(says(withPoint(good, 2, 1, [2.5, 0.45, 0.5]))).toStrictEqual([
      'station 2, sheer: it stands aft of station 1, but stations go from aft forward',
    ]);
  });

  test('an x that is no number is not held against its neighbours', () => {
    for (const x of [Infinity, -Infinity, NaN]) {
      expect(says(withPoint(good, 2, 1, [x, 0.45, 0.5]))).toStrictEqual([
        'station 1, sheer: the distance forward is not a number',
      ]);
    }
  });

  test('the keel off the centreline', () => {
    expect(says(withPoint(good, 0, 1, [1, 0.1, 0]))).toStrictEqual([
      'station 1, keel: the keel lies on the centreline, so its half-breadth is 0',
    ]);
  });
});

describe('across a station', () => {
  test('an edge lower than the one before', () => {
    const faults = offsetFaults(withPoint(good, 2, 1, [1, 0.45, -0.1]));
    expect(faults).toStrictEqual([
      {
        station: 'station1',
        edge: 'sheer',
        column: 'height',
        says: 'station 1: the sheer lies lower than the chine; from the keel outward each edge is higher',
      },
    ]);
  });

  test('edges that meet amidships', () => {
    expect(says(withPoint(good, 2, 1, [1, 0.45, 0]))).toStrictEqual([
      'station 1: the chine and the sheer meet before the end of the hull',
    ]);
  });

  test('edges may meet at the ends', () => {
    expect(offsetFaults(withPoint(good, 2, 4, [4.2, 0, 0]))).toStrictEqual([]);
  });

  test('up a stem each edge is higher', () => {
    expect(says(withPoint(good, 0, 4, [4, 0, 0.1]))).toStrictEqual([
      'station 4: the chine lies lower than the keel; from the keel outward each edge is higher',
    ]);
  });

  test('a bottom that hangs lower at its chine is a bottom', () => {
    expect(offsetFaults(withPoint(good, 1, 1, [1, 0.45, -0.05]))).toStrictEqual([]);
  });

  test('a side that folds back flat on the bottom', () => {
    expect(says(withPoint(good, 2, 1, [1, 0.2, 0]))).toStrictEqual([
      'station 1: the section crosses itself between the chine and the sheer',
    ]);
  });

  test('a side that cuts through the bottom', () => {
    // The bottom hangs from 0.4 down to 0; the bilge goes level, the side back in through the bottom.
    const section: readonly OffsetPoint[] = [
      [1, 0, 0.4],
      [1, 0.6, 0],
      [1, 0.7, 0.1],
      [1, 0.1, 0.25],
    ];
    const lines = box(4, 1, 0.5);
    const offsets = offsetsThrough({
      ...lines,
      deck: lines['sheer']!.map(([x, y, z]) => [x, y, z + 0.2] as const),
    });
    const crossed = section.reduce((all, point, edge) => withPoint(all, edge, 1, point), offsets);
    expect(says(crossed)).toStrictEqual([
      'station 1: the section crosses itself between the sheer and the deck',
    ]);
  });

  test('tumblehome is a shape', () => {
    expect(offsetFaults(withPoint(good, 2, 1, [1, 0.4, 0.5]))).toStrictEqual([]);
  });
});

describe('the whole table', () => {
  const renamed = (
    offsets: Offsets,
    kind: 'edges' | 'stations',
    index: number,
    name: string,
    label = name,
  ): Offsets => ({
    ...offsets,
    [kind]: offsets[kind].map((named, i) => (i === index ? { name, label } : named)),
  });

  test('too few and too many stations', () => {
    expect(says(offsetsThrough(box(4, 1, 0.5, 2)))).toStrictEqual([
      'a hull needs at least 3 stations; the table has 2',
    ]);
    expect(says(offsetsThrough(box(4, 1, 0.5, 41)))).toStrictEqual([
      'the table has 41 stations; 40 are the most that can be drawn',
    ]);
    expect(offsetFaults(offsetsThrough(box(4, 1, 0.5, 40)))).toStrictEqual([]);
  });

  test('too few and too many edges', () => {
    const { keel } = box(4, 1, 0.5);
    expect(says(offsetsThrough({ keel: keel! }))).toStrictEqual([
      'a hull needs at least two edges, a keel and a sheer',
    ]);
    const many = Object.fromEntries(
      Array.from({ length: 9 }, (_, e) => [`edge ${e}`, keel!.map(([x]) => [x, e / 10, e / 10] as const)]),
    );
    expect(says(offsetsThrough(many))).toStrictEqual([
      'the table has 9 edges; 8 are the most that can be drawn',
    ]);
  });

  test('names that can not be told apart', () => {
    expect(says(renamed(good, 'stations', 2, 'station1', 'station 1'))).toContain(
      'the name "station 1" stands twice; edges and stations need names of their own',
    );
    expect(says(renamed(good, 'stations', 2, 'station1', 'Station-1'))).toContain(
      '"station 1" and "Station-1" are told apart only by signs or capitals; give one another name',
    );
    expect(says(renamed(good, 'stations', 2, 'chine'))).toContain(
      'the name "chine" stands twice; edges and stations need names of their own',
    );
  });

  test('names that are taken, and none', () => {
    for (const name of ['keelson', 'bottom', 'bilge2', 'hull', 'timber', 'constructor', 'toString']) {
      expect(says(renamed(good, 'edges', 1, name))).toStrictEqual([
        `the edge "${name}" has a name that the notebook needs for something else; give it another`,
      ]);
    }
    expect(says(renamed(good, 'stations', 1, '', '--'))).toStrictEqual([
      'the station "--" needs a letter or a figure in its name',
    ]);
  });
});

describe('from a table', () => {
  test('turns the unit of the table into metres', () => {
    const table = starter('ferry-dory')!;
    expect(offsetsOf(table).points[2]![3]).toStrictEqual([2.4, 0.865, 0.635]);
    const inches: Table = { ...table, unit: 'in' };
    expect(offsetsOf(inches).points[2]![3]![1]).toBeCloseTo(865 * 0.0254, 12);
  });

  test('a number the table lacks is missing, with its place', () => {
    const read = readTable({
      name: 'Gap',
      unit: 'mm',
      offsetsTo: 'outside of skin',
      edges: ['keel', 'sheer'],
      stations: [
        { name: 'transom', keel: { x: 0, y: 0, z: 0 }, sheer: { x: 0, y: 400, z: 500 } },
        { name: '1', keel: { x: 1000, y: 0, z: 0 }, sheer: { x: 1000, z: 500 } },
        { name: 'stem', keel: { x: 2000, y: 0, z: 0 }, sheer: { x: 2000, y: null, z: 500 } },
      ],
    }) as Table;
    expect(offsetFaults(offsetsOf(read))).toStrictEqual([
      {
        station: 'station1',
        edge: 'sheer',
        column: 'halfBreadth',
        says: '1, sheer: the half-breadth is missing',
      },
      {
        station: 'stem',
        edge: 'sheer',
        column: 'halfBreadth',
        says: 'stem, sheer: the half-breadth is missing',
      },
    ]);
  });
});
