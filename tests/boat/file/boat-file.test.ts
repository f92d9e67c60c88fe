import * as fc from 'fast-check';
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import {
  type Boat,
  boatQuantities,
  builtEntries,
  isUnread,
  nothingBuilt,
  readBoatFile,
  starter,
  starters,
  writeBoatFile,
} from '../../../src/boat';
import { inRoot } from '../../tools/root.mjs';

const boat = (entries: Boat['entries'] = {}): Boat => {
  const table = starter('class-skiff')!;
  return { name: table.name, table, entries };
};

const opened = (text: string): Boat => {
  const read = readBoatFile(text);
  if (isUnread(read)) throw new Error(read.faults.join('; '));
  return read;
};

const faultsOf = (text: string) => {
  const read = readBoatFile(text);
  return isUnread(read) ? read.faults : [];
};

const changed = (change: (file: Record<string, unknown>) => void) => {
  const file = JSON.parse(writeBoatFile(boat())) as Record<string, unknown>;
  change(file);
  return faultsOf(JSON.stringify(file));
};

describe('what is written reads back the same', () => {
  test.each(starters.map(({ id, table }) => [id, table] as const))('%s', (_, table) => {
    const kept = { name: 'Mine', table, entries: { 'side.thickness': '1/4 in', 'keelson.timber': 'teak' } };
    expect(opened(writeBoatFile(kept))).toStrictEqual(kept);
  });

  test('any entries, whatever they say', () => {
    const names = boatQuantities(starter('class-skiff')!).given.map(({ name }) => name);
    fc.assert(
      fc.property(fc.dictionary(fc.constantFrom(...names), fc.string({ maxLength: 60 })), (written) => {
        const entries = { ...written };
        expect(opened(writeBoatFile(boat(entries)))).toStrictEqual(boat(entries));
      }),
      { seed: 21, numRuns: 100 },
    );
  });

  test('both versions, and which is in hand', () => {
    const second = { 'keelson.thickness': '21 mm', 'side.thickness': null };
    const two: Boat = { ...boat({ 'side.thickness': '6 mm' }), second, inHand: 'second' };
    expect(opened(writeBoatFile(two))).toStrictEqual(two);
    expect(opened(writeBoatFile({ ...boat(), second: {} }))).toStrictEqual({ ...boat(), second: {} });
    // Nothing can be in hand that is not there.
    expect(opened(writeBoatFile({ ...boat(), inHand: 'second' }))).toStrictEqual(boat());
    expect(changed((file) => (file['second'] = { '__proto__.x': '6 mm' }))).toStrictEqual([
      'second: __proto__.x is not the name of a quantity',
    ]);
    expect(changed((file) => (file['inHand'] = 'first'))).toStrictEqual(['inHand can only be "second"']);
  });

  test('any numbers in the table', () => {
    const number = fc.oneof(
      fc.constant(null),
      fc.double({ min: -1e4, max: 1e4, noNaN: true }).map((x) => x + 0),
    );
    fc.assert(
      fc.property(number, number, number, (x, y, z) => {
        const { table } = boat();
        const stations = table.stations.map((station, i) =>
          i === 2 ? { ...station, points: station.points.map(() => ({ x, y, z })) } : station,
        );
        const kept = { ...boat(), table: { ...table, stations } };
        expect(opened(writeBoatFile(kept))).toStrictEqual(kept);
      }),
      { seed: 22, numRuns: 100 },
    );
  });
});

describe('what is measured and cut', () => {
  const asBuilt = {
    measured: { 'bottom.thickness': '11.4 mm', 'side.plywood': 'okoume' },
    cut: {
      frame3: {
        held: { 'frame3.sheer.halfBreadth': '650 mm' },
        numbers: { 'frame3.side.flare': 0.31, 'bevels.frame3.chineBevel': -0.02 },
      },
    },
  };
  const built = { ...boat({ 'bottom.thickness': '12 mm' }), asBuilt };
  const withBuilt = (json: unknown) =>
    faultsOf(JSON.stringify({ ...(JSON.parse(writeBoatFile(boat())) as object), asBuilt: json }));

  test('goes with the boat', () => {
    expect(opened(writeBoatFile(built))).toStrictEqual(built);
  });

  test('where there is nothing, the file does not speak of it', () => {
    expect(writeBoatFile({ ...boat(), asBuilt: nothingBuilt })).toBe(writeBoatFile(boat()));
    expect(withBuilt({})).toStrictEqual([]);
  });

  test.each<[string, unknown, string]>([
    ['no object', 7, 'asBuilt must be an object'],
    ['no list', null, 'asBuilt must be an object'],
    [
      'a measurement no text',
      { measured: { 'side.thickness': null } },
      'asBuilt: measured: side.thickness must be a text of at most 20000 letters, or a number',
    ],
    [
      'a measurement of no quantity',
      { measured: { side: '6 mm' } },
      'asBuilt: measured: side is not the name of a quantity',
    ],
    ['cut no object', { cut: 'frame3' }, 'asBuilt: cut must be an object'],
    [
      'a part of two words',
      { cut: { 'frame3.sheer': { held: {}, numbers: {} } } },
      'asBuilt: cut: frame3.sheer is not the name of a part',
    ],
    [
      'a part that holds nothing',
      { cut: { frame3: null } },
      'asBuilt: cut: frame3 must hold "held" and "numbers"',
    ],
    ['a part without numbers', { cut: { frame3: { held: {} } } }, 'asBuilt: cut: frame3: numbers is missing'],
    [
      'a number as a text',
      { cut: { frame3: { held: {}, numbers: { 'frame3.side.flare': '12°' } } } },
      'asBuilt: cut: frame3: numbers: frame3.side.flare must be a number',
    ],
    [
      'more parts than a boat has',
      {
        cut: Object.fromEntries(Array.from({ length: 201 }, (_, i) => [`a${i}`, { held: {}, numbers: {} }])),
      },
      'asBuilt: cut must hold at most 200 parts',
    ],
    [
      'more numbers than a part has',
      {
        cut: {
          side: {
            held: {},
            numbers: Object.fromEntries(Array.from({ length: 5001 }, (_, i) => [`a.b${i}`, 1])),
          },
        },
      },
      'asBuilt: cut: side: numbers must hold at most 5000 numbers',
    ],
  ])('%s is a fault that says where', (_, json, sentence) => {
    expect(withBuilt(json)).toContain(sentence);
  });

  test('a number beyond what can be held is refused', () => {
    expect(faultsOf(writeBoatFile(built).replace('0.31', '1e999'))).toStrictEqual([
      'asBuilt: cut: frame3: numbers: frame3.side.flare must be a finite number',
    ]);
  });

  test.each(['__proto__', 'constructor', 'prototype', 'toString'])('%s is no part', (name) => {
    const text = writeBoatFile(built).replace(
      '"frame3":',
      `"${name}": {"held": {"a.b": "1"}, "numbers": {}}, "frame3":`,
    );
    const read = opened(text);
    expect(({} as Record<string, unknown>)['held']).toBeUndefined();
    const entries = builtEntries(read.asBuilt!);
    expect(entries['a.b']).toBeUndefined();
    expect(entries['frame3.sheer.halfBreadth']).toBe('650 mm');
  });
});

describe('notebooks of the builder’s own', () => {
  const notebooks = {
    'keel-day': { text: '# Keel day\n\nlaminate.glueWaste "quoted"\t\\\n', away: false },
    'übung-2': { text: '', away: true },
  };
  const withNotebooks = (json: unknown) =>
    faultsOf(JSON.stringify({ ...(JSON.parse(writeBoatFile(boat())) as object), notebooks: json }));
  const one = (text: string) => ({ text, away: false });

  test('go with the boat, to the letter', () => {
    expect(opened(writeBoatFile({ ...boat(), notebooks }))).toStrictEqual({ ...boat(), notebooks });
  });

  test('where there is none, the file does not speak of them', () => {
    expect(writeBoatFile({ ...boat(), notebooks: {} })).toBe(writeBoatFile(boat()));
    expect(withNotebooks({})).toStrictEqual([]);
  });

  test('as many and as long as a boat may have come back from her file, whatever their letters', () => {
    // Line ends, quotes and tabs take two letters each in the file.
    const all = Object.fromEntries(
      Array.from({ length: 30 }, (_, n) => [`n${n}`, one('"\n\t'.repeat(33_333 / 3))]),
    );
    expect(opened(writeBoatFile({ ...boat(), notebooks: all })).notebooks).toStrictEqual(all);
  });

  test.each<[string, unknown, string]>([
    ['no object', 7, 'notebooks must be an object'],
    ['a notebook no object', { a: '# A' }, 'notebooks: a must hold a "text"'],
    ['without a text', { a: {} }, 'notebooks: a: text is missing'],
    ['a text no text', { a: { text: 7 } }, 'notebooks: a: text must be a text of at most 300000 letters'],
    [
      'a text too long',
      { a: one('x'.repeat(300_001)) },
      'notebooks: a: text must be a text of at most 300000 letters',
    ],
    ['away neither way', { a: { text: '', away: 1 } }, 'notebooks: a: away must be true or false'],
    ['a way out of its folder', { '../a': one('') }, 'notebooks: ../a is not the name of a notebook'],
    ['a name too long', { ['a'.repeat(61)]: one('') }, 'is longer than 60 letters'],
    [
      'too many',
      Object.fromEntries(Array.from({ length: 31 }, (_, n) => [`n${n}`, one('')])),
      'notebooks must hold at most 30',
    ],
    [
      'too long together',
      Object.fromEntries(Array.from({ length: 5 }, (_, n) => [`n${n}`, one('x'.repeat(250_000))])),
      'notebooks must be at most 1000000 letters long together',
    ],
  ])('%s is a fault that says where', (_, json, sentence) => {
    expect(withNotebooks(json).join('\n')).toContain(sentence);
  });

  test.each(['__proto__', 'constructor', 'prototype'])('%s is none, and changes nothing', (name) => {
    const text = writeBoatFile({ ...boat(), notebooks }).replace('"keel-day":', `"${name}":`);
    const read = readBoatFile(text);
    expect(isUnread(read) ? [] : Object.keys(read.notebooks ?? {})).not.toContain(name);
    expect(({} as Record<string, unknown>)['text']).toBeUndefined();
  });
});

describe('a file of version 1', () => {
  const file = readFileSync(inRoot('tests/boat/file/version-1.boat.json'), 'utf8');

  test('opens with nothing lost', () => {
    const { version, name, entries, asBuilt } = JSON.parse(file) as Record<string, unknown>;
    const read = opened(file);
    expect(version).toBe(1);
    expect([read.name, read.entries, read.asBuilt]).toStrictEqual([name, entries, asBuilt]);
    expect(read).not.toHaveProperty('notebooks');
  });

  test('is of version 2 when it is saved again, and otherwise the same', () => {
    expect(JSON.parse(writeBoatFile(opened(file)))).toStrictEqual({
      ...(JSON.parse(file) as object),
      version: 2,
    });
  });
});

test('a bare number is kept as a bare entry; name and entries may be left out', () => {
  const file = JSON.parse(writeBoatFile(boat())) as Record<string, unknown>;
  delete file['name'];
  expect(opened(JSON.stringify({ ...file, entries: { 'side.thickness': 6.5 } }))).toStrictEqual({
    ...boat({ 'side.thickness': '6.5' }),
    name: 'Class skiff',
  });
  delete file['entries'];
  expect(opened(JSON.stringify(file)).entries).toStrictEqual({});
});

describe('faults', () => {
  test.each([
    ['', 'the file is not JSON: it is cut short, or it is no boat file'],
    ['{"format":', 'the file is not JSON: it is cut short, or it is no boat file'],
    ['null', 'the file must hold a boat'],
    ['[]', 'format is missing'],
    ['{}', 'format is missing'],
    [' '.repeat(3_000_001), 'the file is longer than 3000000 letters; no boat is'],
  ])('%#', (text, sentence) => {
    expect(faultsOf(text)).toContain(sentence);
  });

  test.each([
    [
      'another format',
      (f: Record<string, unknown>) => (f['format'] = 'other'),
      'format must be "battenbook boat"',
    ],
    [
      'another edition',
      (f: Record<string, unknown>) => (f['version'] = 3),
      'version must be 1 or 2; the file is of another edition',
    ],
    ['no hull', (f: Record<string, unknown>) => delete f['hull'], 'hull is missing'],
    [
      'a name too long',
      (f: Record<string, unknown>) => (f['name'] = 'x'.repeat(81)),
      'name must be at most 80 letters long',
    ],
    ['entries no object', (f: Record<string, unknown>) => (f['entries'] = 7), 'entries must be an object'],
    [
      'an entry no text',
      (f: Record<string, unknown>) => (f['entries'] = { 'side.thickness': null }),
      'entries: side.thickness must be a text of at most 20000 letters, or a number',
    ],
    [
      'an entry too long',
      (f: Record<string, unknown>) => (f['entries'] = { 'side.thickness': '1+'.repeat(10_001) }),
      'entries: side.thickness must be a text of at most 20000 letters, or a number',
    ],
    [
      'a name without a dot',
      (f: Record<string, unknown>) => (f['entries'] = { side: '6 mm' }),
      'entries: side is not the name of a quantity',
    ],
    [
      'too many entries',
      (f: Record<string, unknown>) =>
        (f['entries'] = Object.fromEntries(Array.from({ length: 5001 }, (_, i) => [`a${i}.b`, '1']))),
      'entries must hold at most 5000 entries',
    ],
  ])('%s', (_, change, sentence) => {
    expect(changed((file) => void change(file))).toContain(sentence);
  });

  test('inside the hull they say the whole way', () => {
    expect(
      changed((file) => {
        const hull = file['hull'] as { stations: { chine: { y: unknown } }[] };
        hull.stations[2]!.chine.y = '526';
      }),
    ).toStrictEqual(['hull: stations: frame 2: chine y must be a number']);
  });
});

describe('hostile files', () => {
  test('names of the language itself are no entries', () => {
    const text = writeBoatFile(boat()).replace('"entries": {}', '"entries": {"toString": "6 mm"}');
    expect(faultsOf(text)).toStrictEqual(['entries: toString is not the name of a quantity']);
  });

  test.each(['__proto__', 'constructor', 'prototype'])('%s is left out and changes nothing', (name) => {
    const text = writeBoatFile(boat()).replace(
      '"entries": {}',
      `"entries": {"${name}": {"side.thickness": "6 mm"}}`,
    );
    const { entries } = opened(text);
    expect(Object.keys(entries)).toStrictEqual([]);
    expect(entries['side.thickness']).toBeUndefined();
    expect(({} as Record<string, unknown>)['side.thickness']).toBeUndefined();
  });

  test('numbers beyond what can be held are refused', () => {
    const text = writeBoatFile(boat()).replace('"y": 526', '"y": 1e999');
    expect(faultsOf(text)).toStrictEqual(['hull: stations: frame 1: chine y must be a finite number']);
  });

  test('nothing that JSON can say throws', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (json) => {
        const read = readBoatFile(
          JSON.stringify({ format: 'battenbook boat', version: 1, hull: json, entries: json, asBuilt: json }),
        );
        expect(isUnread(read)).toBe(true);
      }),
      { seed: 23, numRuns: 300 },
    );
  });

  test('deep nesting is told, not a crash', () => {
    const deep = `${'['.repeat(100_000)}${']'.repeat(100_000)}`;
    expect(faultsOf(`{"format":"battenbook boat","version":1,"hull":${deep}}`).length).toBeGreaterThan(0);
  });
});

test('the example in the description of the boat file opens', () => {
  const text = readFileSync(inRoot('docs/boat-file.md'), 'utf8');
  const examples = [...text.matchAll(/```json\n([\s\S]*?)```/g)].map((match) => match[1] ?? '');
  expect(examples.length).toBeGreaterThan(0);
  const read = opened(examples[0] ?? '');
  expect(read.entries).not.toStrictEqual({});
});
