/** Stations and edges added, removed, renamed and moved: the table then, and what becomes of the entries. */
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  buildHull,
  demoBoat,
  isUnread,
  offsetFaults,
  offsetsOf,
  readTable,
  starters,
  type Table,
  writeTable,
} from '../../../src/boat';
import { carriedEntries, carriedName, carriedText, namesGone } from '../../../src/boat/table/carry';
import {
  addEdge,
  addStation,
  move,
  nameFault,
  nextName,
  remove,
  rename,
  type TableEdit,
  toFace,
} from '../../../src/boat/table/table-edits';
import { fairRun } from '../../../src/kernel';

const hullOf = (table: Table) => buildHull(offsetsOf(table));
const stationNames = ({ table }: TableEdit) => table.stations.map(({ name }) => name);
const isSound = ({ table }: TableEdit) => offsetFaults(offsetsOf(table));

describe('names of quantities', () => {
  const words = { frame3: 'mould3', sheer: null };

  test.each([
    ['frame3.chine.x', 'mould3.chine.x'],
    ['frame3.spacing', 'mould3.spacing'],
    ['bevels.frame3.chineBevel', 'bevels.mould3.chineBevel'],
    ['frame3.sheer.x', null],
    ['sheer.length', null],
    ['frame30.chine.x', 'frame30.chine.x'],
    ['sheerClamp.thickness', 'sheerClamp.thickness'],
    // A cell's own input may be called as an edge is.
    ['bend.sheer', 'bend.sheer'],
  ])('%s', (name, now) => {
    expect(carriedName(name, words)).toBe(now);
  });

  test('follow in the middle of a text, and a text that names what went is left as it is', () => {
    expect(carriedText('2 * frame3.chine.halfBreadth + 1/4 in', words, false)).toBe(
      '2 * mould3.chine.halfBreadth + 1/4 in',
    );
    expect(carriedText('frame3.sheer.halfBreadth-3 mm', words, false)).toBe('frame3.sheer.halfBreadth-3 mm');
    expect(namesGone('frame3.sheer.halfBreadth-3 mm', words, false)).toBe(true);
    expect(namesGone('frame3.chine.x', words, false)).toBe(false);
  });

  test('answer choices between stations only where they are choices', () => {
    expect(carriedText('frame3', words, true)).toBe('mould3');
    expect(carriedText('frame3', words, false)).toBe('frame3');
    expect([namesGone('sheer', words, true), namesGone('sheer', words, false)]).toStrictEqual([true, false]);
  });

  test('of entries are carried, dropped with what went, and null stays null', () => {
    const entries = { 'frame3.chine.x': null, 'frame3.sheer.x': '1 m', 'fair.station': 'frame3' };
    expect(carriedEntries(entries, words, (name) => name === 'fair.station')).toStrictEqual({
      'mould3.chine.x': null,
      'fair.station': 'mould3',
    });
  });
});

describe('a station renamed', () => {
  test('keeps its points, and its word is told', () => {
    const edit = rename(demoBoat, 'station', 3, ' mould 3 ');
    expect(stationNames(edit)[3]).toBe('mould 3');
    expect(edit.table.stations[3]!.points).toStrictEqual(demoBoat.stations[3]!.points);
    expect(edit.words).toStrictEqual({ frame3: 'mould3' });
  });

  test('by signs alone carries nothing', () => {
    expect(rename(demoBoat, 'station', 3, 'Frame-3').words).toStrictEqual({});
  });

  test('that is the second of two of one name leaves the entries with the first', () => {
    const twice = { ...demoBoat, stations: [...demoBoat.stations, demoBoat.stations[3]!] };
    const last = twice.stations.length - 1;
    expect(rename(twice, 'station', last, 'frame 30').words).toStrictEqual({});
    expect(remove(twice, 'station', last).words).toStrictEqual({});
    expect(rename(twice, 'station', 3, 'frame 30').words).toStrictEqual({ frame3: 'frame30' });
  });

  test.each([
    ['', /needs a name/],
    ['x'.repeat(41), /at most 40 letters/],
    ['frame 2', /already/],
    ['Frame.2', /told apart only/],
    ['sheer', /already/],
    ['keelson', /needs for something else/],
    ['scarf', /needs for something else/],
    ['?!', /a letter or a figure/],
  ])('to "%s" is refused in words', (name, says) => {
    expect(nameFault(demoBoat, 'station', 3, name)).toMatch(says);
    expect(() => rename(demoBoat, 'station', 3, name)).toThrow(says);
  });

  test('an edge may not take the name of an end, a station may', () => {
    expect(nameFault(demoBoat, 'edge', 1, 'sternpost')).toMatch(/something else/);
    expect(nameFault(demoBoat, 'station', 3, 'sternpost')).toBeNull();
  });
});

test('a station or an edge removed goes with its points and its word', () => {
  const without = remove(demoBoat, 'station', 2);
  expect(stationNames(without)).toStrictEqual(
    demoBoat.stations.map(({ name }) => name).filter((_, i) => i !== 2),
  );
  expect(without.words).toStrictEqual({ frame2: null });
  const flat = remove(demoBoat, 'edge', 1);
  expect(flat.table.edges).toStrictEqual(['keel', 'sheer']);
  expect(flat.table.stations.map(({ points }) => points)).toStrictEqual(
    demoBoat.stations.map(({ points: [keel, , sheer] }) => [keel, sheer]),
  );
  expect(flat.words).toStrictEqual({ chine: null });
});

test('moved there and back the table is the same; no word changes', () => {
  for (const line of ['station', 'edge'] as const) {
    const there = move(demoBoat, line, 0, 2);
    expect(there.words).toStrictEqual({});
    expect(there.table).not.toStrictEqual(demoBoat);
    expect(move(there.table, line, 2, 0).table).toStrictEqual(demoBoat);
  }
});

test('the face is said anew, the numbers stay', () => {
  const { table } = toFace(demoBoat, 'inside of skin');
  expect(table).toStrictEqual({ ...demoBoat, offsetsTo: 'inside of skin' });
});

describe.each(starters.map(({ id, table }) => [id, table] as const))('added to the %s', (_, table) => {
  const hull = hullOf(table);
  const last = table.stations.length - 1;

  test.each(table.stations.slice(1).map((__, i) => i + 1))(
    'a station before number %i lies on the battens',
    (at) => {
      const edit = addStation(table, at, nextName(table, 'station'), hull);
      const points = offsetsOf(edit.table).points.map((line) => line[at]!);
      const keel = hull.edges[0]!.points;
      points.forEach(([x, y, z], e) => {
        expect(x).toBeCloseTo((keel[at - 1]![0] + keel[at]![0]) / 2, 6);
        const batten = hull.edges[e]!.atX(x!)!.point;
        expect(y).toBeCloseTo(batten[1], 5);
        expect(z).toBeCloseTo(batten[2], 5);
      });
      expect(isSound(edit)).toStrictEqual([]);
      // Drawn anew, the boat is the same within what the ends of each spline differ by.
      const now = hullOf(edit.table);
      expect(now.length).toBeCloseTo(hull.length, 6);
      expect(Math.abs(now.volume - hull.volume) / hull.volume).toBeLessThan(2e-3);
    },
  );

  test('an edge between two lies midway, and the hull is still drawn', () => {
    const edit = addEdge(table, 2, nextName(table, 'edge'), hull);
    expect(isSound(edit)).toStrictEqual([]);
    const frame = edit.table.stations[2]!.points;
    for (const axis of ['x', 'y', 'z'] as const)
      expect(frame[2]![axis]).toBeCloseTo((frame[1]![axis]! + frame[3]![axis]!) / 2, 3);
  });

  test('a station at either end, or where no hull is, begins empty, the keel on the centreline', () => {
    for (const [at, on] of [
      [0, hull],
      [last + 1, hull],
      [2, null],
    ] as const) {
      const { points } = addStation(table, at, 'new one', on).table.stations[at]!;
      expect(points).toStrictEqual(table.edges.map((__, e) => ({ x: null, y: e === 0 ? 0 : null, z: null })));
    }
  });
});

test('an added station leaves a fair line fair: no third difference there that stands out of its neighbours’', () => {
  const hull = hullOf(demoBoat);
  const at = 3;
  const sheerOf = (table: Table) => {
    const line = offsetsOf(table).points.at(-1)!;
    return fairRun(
      line.map(([x]) => x!),
      line.map(([, y]) => y!),
      0.00075,
    );
  };
  const before = Math.max(...sheerOf(demoBoat).corrections.map(({ correction }) => Math.abs(correction)));
  const after = sheerOf(addStation(demoBoat, at, 'frame 9', hull).table).corrections[at]!;
  expect(Math.abs(after.correction)).toBeLessThan(before);
});

test('an edge with a fault leaves its own place empty, the others are read', () => {
  const offsets = offsetsOf(demoBoat);
  const broken = buildHull({
    ...offsets,
    points: offsets.points.map((line, e) => (e === 2 ? line.map(([x, , z]) => [x, null, z] as const) : line)),
  });
  const { points } = addStation(demoBoat, 3, 'frame 9', broken).table.stations[3]!;
  expect(points[1]!.y).toBeGreaterThan(0);
  expect(points[2]).toMatchObject({ y: null, z: null });
});

test('no more than a table takes', () => {
  const full = (table: Table, n: number): Table => ({
    ...table,
    stations: Array.from({ length: n }, (_, i) => ({
      name: `post ${i}`,
      points: demoBoat.stations[0]!.points,
    })),
  });
  expect(() => addStation(full(demoBoat, 40), 0, 'one more', null)).toThrow(/40 stations are the most/);
  const edges = Array.from({ length: 8 }, (_, i) => `line ${i}`);
  expect(() => addEdge({ ...demoBoat, edges }, 1, 'one more', null)).toThrow(/8 edges are the most/);
});

test('whatever is done, the table can be written to a file and read again as it is', () => {
  const hull = hullOf(demoBoat);
  type Act = (table: Table) => TableEdit;
  const pick = (n: number, count: number) => n % count;
  const acts = fc.array(
    fc.tuple(fc.integer({ min: 0, max: 5 }), fc.nat(60), fc.nat(60)).map(([what, a, b]): Act => (table) => {
      const line = b % 2 === 0 ? 'edge' : 'station';
      const count = line === 'edge' ? table.edges.length : table.stations.length;
      if (what === 0)
        return addStation(table, pick(a, table.stations.length + 1), nextName(table, 'station'), hull);
      if (what === 1) return addEdge(table, pick(a, table.edges.length + 1), nextName(table, 'edge'), hull);
      if (count === 0) return toFace(table, 'inside of skin');
      if (what === 2) return remove(table, line, pick(a, count));
      if (what === 3) return move(table, line, pick(a, count), pick(b, count));
      return rename(table, line, pick(a, count), nextName(table, line));
    }),
    { maxLength: 12 },
  );
  fc.assert(
    fc.property(acts, (all) => {
      let table = demoBoat;
      for (const act of all) {
        if (table.stations.length > 38 || table.edges.length > 7) break;
        table = act(table).table;
        const again = readTable(JSON.parse(JSON.stringify(writeTable(table))));
        expect(isUnread(again) ? again.faults : again).toStrictEqual(table);
      }
    }),
    { seed: 41, numRuns: 200 },
  );
});
