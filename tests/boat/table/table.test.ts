import { describe, expect, test } from 'vitest';
import { isUnread, readTable, starters, type Table, writeTable } from '../../../src/boat';

const file = () => ({
  name: 'Box',
  unit: 'mm',
  offsetsTo: 'inside of skin',
  edges: ['keel', 'sheer'],
  stations: ['a', 'b', 'c'].map((name, i) => ({
    name,
    keel: { x: i * 1000, y: 0, z: 0 },
    sheer: { x: i * 1000, y: 400, z: 500 },
  })),
});

const faultsOf = (json: unknown) => {
  const read = readTable(json);
  return isUnread(read) ? read.faults : [];
};

test('reads points in the order of the edges', () => {
  const table = readTable(file()) as Table;
  expect(table.note).toBe('');
  expect(table.stations[1]).toStrictEqual({
    name: 'b',
    points: [
      { x: 1000, y: 0, z: 0 },
      { x: 1000, y: 400, z: 500 },
    ],
  });
});

test('what is written reads back the same', () => {
  for (const { table } of starters) {
    expect(readTable(JSON.parse(JSON.stringify(writeTable(table))))).toStrictEqual(table);
  }
});

test('a missing point or number is null and keeps its place', () => {
  const gap = file();
  const [first] = gap.stations as unknown as Record<string, unknown>[];
  delete first!['sheer'];
  const table = readTable(gap) as Table;
  expect(table.stations[0]!.points[1]).toStrictEqual({ x: null, y: null, z: null });
  expect(readTable(writeTable(table))).toStrictEqual(table);
});

describe('faults say where', () => {
  const change = (make: (json: ReturnType<typeof file>) => unknown) => {
    const json = file();
    return faultsOf(make(json) ?? json);
  };

  test.each([
    [null, 'the file must be an object'],
    [{ ...file(), name: '' }, 'name must not be empty'],
    [{ ...file(), name: undefined }, 'name is missing'],
    [{ ...file(), name: 7 }, 'name must be a text'],
    [{ ...file(), name: 'x'.repeat(41) }, 'name must be at most 40 letters long'],
    [{ ...file(), unit: 'furlong' }, 'unit must be one of mm, cm, m, in, ft'],
    [{ ...file(), offsetsTo: 'skin' }, 'offsetsTo must be "outside of skin" or "inside of skin"'],
    [
      { ...file(), axes: 'x aft' },
      'axes can only be "x forward from the after end of the bottom, y half-breadth, z height above base"',
    ],
    [{ ...file(), edges: 'keel' }, 'edges must be a list of names'],
    [{ ...file(), edges: ['keel', 'keel'] }, 'edges: "keel" stands in the list twice'],
    [{ ...file(), edges: ['keel', 'name'] }, 'edges: "name" can not be called "name"'],
    [{ ...file(), edges: Array.from({ length: 9 }, (_, i) => `e${i}`) }, 'edges must list at most 8 edges'],
    [{ ...file(), stations: {} }, 'stations must be a list'],
    [
      { ...file(), stations: Array.from({ length: 41 }, (_, i) => ({ name: `s${i}` })) },
      'stations must list at most 40 stations',
    ],
  ])('%#', (json, sentence) => {
    expect(faultsOf(json)).toContain(sentence);
  });

  test('in a station, by its name', () => {
    expect(
      change((json) => ({
        ...json,
        stations: json.stations.map((s, i) => (i === 1 ? { ...s, sheer: { x: 1, y: 'wide', z: 2 } } : s)),
      })),
    ).toStrictEqual(['stations: b: sheer y must be a number']);
    expect(
      change((json) => ({
        ...json,
        stations: json.stations.map((s, i) => (i === 1 ? { ...s, shear: { x: 1, y: 1, z: 2 } } : s)),
      })),
    ).toStrictEqual(['stations: b: shear is not one of the edges']);
    expect(change((json) => ({ ...json, stations: [{ keel: {} }, ...json.stations] }))).toStrictEqual([
      'stations: number 1: name is missing',
    ]);
    expect(
      change((json) => ({
        ...json,
        stations: json.stations.map((s, i) => (i === 0 ? { ...s, keel: 7 } : s)),
      })),
    ).toStrictEqual(['stations: a: keel must hold x, y and z']);
  });

  test('numbers that JSON can not write but a program can hand over', () => {
    expect(
      change((json) => ({
        ...json,
        stations: json.stations.map((s, i) => (i === 2 ? { ...s, keel: { x: Infinity, y: NaN, z: 0 } } : s)),
      })),
    ).toStrictEqual(['stations: c: keel x must be a finite number']);
  });

  test('at most twenty, and how many more', () => {
    const stations = Array.from({ length: 30 }, (_, i) => ({ name: `s${i}`, keel: 1 }));
    const faults = faultsOf({ ...file(), edges: ['keel'], stations });
    expect(faults).toHaveLength(21);
    expect(faults.at(-1)).toBe('and 10 more faults');
  });
});

test('names of the language itself are only names', () => {
  const json = JSON.parse(
    '{"name":"Trap","unit":"mm","offsetsTo":"outside of skin","edges":["keel","__proto__","constructor"],' +
      '"stations":[{"name":"toString","keel":{"x":0,"y":0,"z":0},"__proto__":{"x":1,"y":2,"z":3},"constructor":{"x":1,"y":2,"z":3}}]}',
  ) as unknown;
  const table = readTable(json) as Table;
  expect(table.edges).toStrictEqual(['keel', '__proto__', 'constructor']);
  expect(table.stations[0]!.points).toHaveLength(3);
  expect(({} as Record<string, unknown>)['x']).toBeUndefined();
});
