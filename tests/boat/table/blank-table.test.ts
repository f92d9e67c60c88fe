/** A table to start from: names that stand, numbers that are missing and say so. */
import { describe, expect, test } from 'vitest';
import { buildHull, offsetFaults, offsetsOf, starter } from '../../../src/boat';
import { blankTable, type Wanted } from '../../../src/boat/table/blank-table';

const wanted: Wanted = { name: 'Punt', stations: 7, edges: 3, unit: 'mm', offsetsTo: 'outside of skin' };

test.each([
  [3, 2],
  [7, 3],
  [9, 4],
  [12, 5],
  [40, 8],
])(
  'of %i stations and %i edges: every number is missing but that the keel lies on the centreline',
  (stations, edges) => {
    const table = blankTable({ ...wanted, stations, edges });
    const faults = offsetFaults(offsetsOf(table));
    expect(faults).toHaveLength(stations * (3 * edges - 1));
    expect(faults.filter(({ says }) => !says.endsWith('is missing'))).toStrictEqual([]);
    expect(buildHull(offsetsOf(table)).edges).toHaveLength(edges);
  },
);

test('of the class skiff’s size it has the class skiff’s names', () => {
  const { edges, stations } = starter('class-skiff')!;
  const table = blankTable(wanted);
  expect(table.edges).toStrictEqual(edges);
  expect(table.stations.map(({ name }) => name)).toStrictEqual(stations.map(({ name }) => name));
});

describe('what can’t be', () => {
  test.each([
    [{ name: ' ' }, /needs a name/],
    [{ name: 'x'.repeat(41) }, /at most 40 letters/],
    [{ stations: 2 }, /takes 3 to 40 stations/],
    [{ stations: 41 }, /takes 3 to 40 stations/],
    [{ stations: 3.5 }, /takes 3 to 40 stations/],
    [{ stations: Number.NaN }, /takes 3 to 40 stations/],
    [{ edges: 1 }, /takes 2 to 8 edges/],
    [{ edges: 9 }, /takes 2 to 8 edges/],
  ])('%j is refused in words', (more, says) => {
    expect(() => blankTable({ ...wanted, ...more })).toThrow(says);
  });
});
