/** A boat is what her numbers say, however they came in: by a file, box by box over a new table, or as a pasted block. */
import { describe, expect, test } from 'vitest';
import { columns, offsetName, offsetsOf, starters, type Table } from '../../src/boat';
import { blankTable } from '../../src/boat/table/blank-table';
import { readOffset } from '../../src/boat/table/offset-notation';
import { pastedInto } from '../../src/boat/table/pasted-table';
import { rename } from '../../src/boat/table/table-edits';
import { isIssue, plainShown } from '../../src/measure';
import type { Graph } from '../../src/notebook/graph/graph';
import { standing } from '../../src/notebook/graph/standing';
import { wholeCatalogue } from '../../src/notebook/graph/whole-catalogue';

/** A new table with this boat's names and none of her numbers. */
function blankOf({ name, unit, offsetsTo, edges, stations }: Table): Table {
  const begun = blankTable({ name, unit, offsetsTo, edges: edges.length, stations: stations.length });
  const named = edges.reduce((table, edge, i) => rename(table, 'edge', i, edge).table, begun);
  // By way of names that nothing has: frame 2 may be called what frame 3 still is.
  const parked = stations.reduce((table, _, i) => rename(table, 'station', i, `parked ${i}`).table, named);
  return stations.reduce((table, station, i) => rename(table, 'station', i, station.name).table, parked);
}

/** What is typed into a box for each number of the table, by the offset's name. */
function numbersOf(table: Table): readonly (readonly [name: string, typed: string])[] {
  const { edges, stations } = offsetsOf(table);
  return stations.flatMap((station, s) =>
    edges.flatMap((edge, e) => {
      const { x, y, z } = table.stations[s]!.points[e]!; // in mm, as all starters are
      return [x, y, z].map(
        (value, c) => [offsetName(station.name, edge.name, columns[c]!), String(value)] as const,
      );
    }),
  );
}

function typedInto(table: Table): Record<string, string> {
  return Object.fromEntries(
    numbersOf(table).map(([name, typed]) => {
      const reading = readOffset(typed, { notation: 'mm', field: 'it' });
      if (isIssue(reading)) throw new Error(reading.issue);
      return [name, reading.text];
    }),
  );
}

function pastedOver(table: Table): Readonly<Record<string, string>> {
  const { edges, stations } = offsetsOf(table);
  const typed = new Map(numbersOf(table));
  const block = [
    [
      'Station',
      ...edges.flatMap(({ label }) => ['forward', 'half-breadth', 'height'].map((of) => `${label} ${of}`)),
    ],
    ...stations.map(({ name, label }) => [
      label,
      ...edges.flatMap((edge) => columns.map((column) => typed.get(offsetName(name, edge.name, column))!)),
    ]),
  ];
  const pasted = pastedInto(block.map((row) => row.join('\t')).join('\n'), {
    stations,
    edges,
    columns: edges.flatMap((edge) => columns.map((column) => ({ edge, column }))),
    row: 0,
    column: 0,
    notation: 'mm',
    isPlane: () => true,
    newName: (n) => `frame ${n}`,
  });
  if (!('writes' in pasted)) throw new Error('the block is not taken');
  return pasted.writes;
}

const graphOf = (table: Table, entries: Readonly<Record<string, string>> = {}): Graph =>
  standing(() => table, wholeCatalogue, { entries: () => entries, shown: plainShown })().value.graph;

/** Every quantity by name: its number, its choice or its sentence. */
const allOf = (graph: Graph): Record<string, unknown> =>
  Object.fromEntries(graph.names.toSorted().map((name) => [name, graph.value(name)]));

describe.each(starters)('$table.name', ({ table }) => {
  const fromFile = allOf(graphOf(table));
  const blank = blankOf(table);

  test('typed box by box over a new table, has every quantity as from the file', () => {
    expect(allOf(graphOf(blank, typedInto(table)))).toStrictEqual(fromFile);
  });
  test('pasted over a new table, has every quantity as from the file', () => {
    expect(allOf(graphOf(blank, pastedOver(table)))).toStrictEqual(fromFile);
  });
});

describe('a number that can’t be used', () => {
  const dory = starters[0]!.table;
  const name = 'frame2.sheer.halfBreadth';
  test.each([
    ['54O', /no unit "O"/],
    ['60 m', /must be at most/],
    ['-20 mm', /measured out from the centreline/],
  ])('%s: the hull says of it what its own box says', (typed, why) => {
    const graph = graphOf(dory, { [name]: typed });
    const hull = graph.hull();
    if (isIssue(hull)) throw new Error(hull.issue);
    const own = graph.value(name);
    const said = hull.faults.map(({ says }) => says).join('; ');
    expect(said).toMatch(why);
    expect(said).not.toMatch(/missing/);
    const length = graph.value('hull.length');
    expect(isIssue(length) && length.issue).toBe(isIssue(own) ? own.issue : hull.faults[0]!.says);
  });
  test('1e30 in a file is too much, and no metre', () => {
    const table = {
      ...dory,
      stations: dory.stations.map((station, s) =>
        s === 2
          ? { ...station, points: station.points.map((p, e) => (e === 2 ? { ...p, y: 1e30 } : p)) }
          : station,
      ),
    };
    const value = graphOf(table).value(name);
    expect(isIssue(value) && value.issue).toMatch(/must be at most/);
  });
});
