/** What a link brings, what it leaves out, and what it refuses. */
import { describe, expect, test } from 'vitest';
import { type Boat, boatQuantities, demoBoat, isUnread, starters } from '../../../src/boat';
import { freshState, noBoat, tryAnother, write } from '../../../src/notebook';
import { boatOf, stateOf } from '../../../src/notebook/state/boat-state';
import {
  type BoatLink,
  LONGEST_LINK,
  openLink,
  readLink,
  sumOf,
  writeLink,
} from '../../../src/notebook/link/link';
import { EASY, makeLink } from '../../../src/notebook/link/make';
import { packed } from '../../../src/notebook/link/pack';

const linkTo = (boat: Boat, more: Partial<BoatLink> = {}): BoatLink => ({
  boat,
  isBoatless: false,
  notebook: null,
  place: null,
  ...more,
});
const plain: Boat = { name: demoBoat.name, table: demoBoat, entries: {} };
const faultsOf = (read: Awaited<ReturnType<typeof openLink>>) => (isUnread(read) ? read.faults : []);

const built: Boat = {
  name: 'Evening dory',
  table: demoBoat,
  entries: { 'side.thickness': '1/4 in', 'keelson.thickness': 'side.thickness + 12 mm' },
  second: { 'keelson.thickness': null, 'scarf.slope': '10' },
  inHand: 'second',
  asBuilt: {
    measured: { 'bottom.thickness': '8.6 mm' },
    cut: {
      frame1: { held: { 'frame1.sheer.halfBreadth': '640 mm' }, numbers: { 'frame1.side.flare': 0.222 } },
    },
  },
  notebooks: { 'keel-day': { text: '# Keel day\n\n½ in, 竜骨 🛶\n', away: false } },
};

describe('what goes in comes out', () => {
  test.each(starters.map(({ id, table }) => [id, table] as const))('%s, as she comes', async (_, table) => {
    const link = linkTo(
      { name: table.name, table, entries: {} },
      { notebook: 'the-build', place: 'scarf.taper' },
    );
    expect(await openLink(await packed(writeLink(link)))).toStrictEqual(link);
  });

  test('a boat with all she may have', async () => {
    const link = linkTo(built, { notebook: 'keel-day', place: 'what-goes-wrong' });
    expect(await openLink((await makeLink(link))!.letters)).toStrictEqual(link);
  });

  test('a table of one’s own', () => {
    const table = { ...demoBoat, stations: demoBoat.stations.slice(1), note: '' };
    expect(readLink(writeLink(linkTo({ ...plain, table })))).toStrictEqual(linkTo({ ...plain, table }));
  });

  test('numbers of a notebook without a boat', () => {
    const link = linkTo(
      { name: noBoat.name, table: noBoat, entries: { 'quickScarf.slope': '9' } },
      { isBoatless: true, notebook: 'quick-answers', place: 'quickScarf' },
    );
    expect(readLink(writeLink(link))).toStrictEqual(link);
  });

  test('both versions as the page has them', () => {
    const state = write(tryAnother(freshState(demoBoat, { 'scarf.slope': '8' })), { 'scarf.slope': '12' });
    const read = readLink(writeLink(linkTo(boatOf(state))));
    expect(isUnread(read) ? read : stateOf(read.boat)).toStrictEqual(state);
  });

  test('the log stays at home', () => {
    const entry = { day: '', cell: '', hours: '2', money: '', measured: '', note: '' };
    expect(readLink(writeLink(linkTo({ ...plain, log: { e1: entry } })))).toStrictEqual(linkTo(plain));
  });

  test('a number that followed for a cut part is told far finer than it counts for a misfit', () => {
    const numbers = { 'frame1.side.flare': 1 / 3 };
    const read = readLink(
      writeLink(linkTo({ ...plain, asBuilt: { measured: {}, cut: { frame1: { held: {}, numbers } } } })),
    );
    const came = isUnread(read) ? 0 : read.boat.asBuilt!.cut['frame1']!.numbers['frame1.side.flare']!;
    // Misfits begin at half a percent, half a millimetre or a quarter of a degree.
    expect(Math.abs(came - 1 / 3)).toBeLessThan(1e-8);
  });
});

test('a starter is named, and only what is written over her goes along', () => {
  const text = writeLink(linkTo({ ...plain, entries: { 'scarf.slope': '10' } }));
  expect(JSON.parse(text)).toStrictEqual({
    link: 1,
    starter: 'ferry-dory',
    sum: sumOf(demoBoat),
    version: 2,
    entries: { 'scarf.slope': '10' },
  });
});

test.each(starters.map(({ id, table }) => [id, table] as const))(
  '%s with 30 numbers changed is a link of under 4 kB, the address before it counted',
  async (_, table) => {
    // Every seventh thing that can be written of her, so of all her parts; sums, as builders write them, and whole offsets.
    const { given } = boatQuantities(table);
    const step = Math.floor(given.length / 30);
    const names = Array.from({ length: 30 }, (_, n) => given[n * step]!.name);
    expect(new Set(names).size).toBe(30);
    const entry = (n: number) =>
      [`${13 + 7 * n}-${n % 8}/16 in`, `${1203 + 37 * n}.5 mm`, `2 * keelson.thickness + ${n}/8 in`][n % 3]!;
    const entries = Object.fromEntries(names.map((name, n) => [name, entry(n)]));
    const link = linkTo(
      { name: 'The boat of the class of spring', table, entries },
      { notebook: 'bend-join-fasten', place: 'screwMap' },
    );
    const { letters } = (await makeLink(link))!;
    const address = `https://boatbuilding.example.org/school/battenbook/#link=${letters}`;
    expect(address.length).toBeLessThan(4000);
    // The table that it need not bring would take half as much again.
    const own = { ...link, boat: { ...link.boat, table: { ...table, note: 'another' } } };
    expect((await makeLink(own))!.letters.length).toBeGreaterThan(letters.length + 300);
    expect(await openLink(letters)).toStrictEqual(link);
  },
);

describe('notebooks go along where they fit', () => {
  /** Text that does not shrink, as prose of many words hardly does. */
  const long = (seed: number, letters: number) => {
    let at = seed;
    return Array.from({ length: letters }, () => {
      at = (at * 48271) % 2147483647; // Park and Miller's generator
      return String.fromCharCode(97 + (at % 26));
    }).join('');
  };
  const note = (text: string) => ({ text: `# A\n\n${text}`, away: false });

  test('the open one first; those that do not are named', async () => {
    const notebooks = { a: note(long(1, 6000)), b: note(long(2, 6000)), c: note('short') };
    const made = (await makeLink(linkTo({ ...plain, notebooks }, { notebook: 'b' })))!;
    expect(made.left).toStrictEqual(['a']);
    expect(made.letters.length).toBeLessThanOrEqual(EASY);
    const read = await openLink(made.letters);
    expect(isUnread(read) ? [] : Object.keys(read.boat.notebooks ?? {})).toStrictEqual(['b', 'c']);
  });

  test('none where the boat alone is longer, and no link at all where she is more than one holds', async () => {
    const entries = (n: number, length: number) =>
      Object.fromEntries(Array.from({ length: n }, (_, i) => [`side.a${i}`, long(i + 1, length)]));
    const made = (await makeLink(
      linkTo({ ...plain, entries: entries(20, 800), notebooks: { a: note('short') } }),
    ))!;
    expect(made.left).toStrictEqual(['a']);
    expect(made.letters.length).toBeGreaterThan(EASY);
    expect(await makeLink(linkTo({ ...plain, entries: entries(400, 900) }))).toBeNull();
  });
});

describe('a link that is no good says why', () => {
  const good = JSON.parse(writeLink(linkTo(built, { notebook: 'the-build' }))) as Record<string, unknown>;
  const withText = async (text: string) => faultsOf(await openLink(await packed(text)));
  const changed = (change: object) => withText(JSON.stringify({ ...good, ...change }));

  test('the one that is changed here is good', async () => {
    expect(await changed({})).toStrictEqual([]);
  });

  test.each<[string, object, RegExp]>([
    ['of another edition', { link: 2 }, /^it is of another edition/],
    ['of another kind', { link: undefined }, /^it is no link of this notebook/],
    [
      'a boat file of another edition',
      { version: 99 },
      /^version must be 1 or 2; the file is of another edition/,
    ],
    [
      'a starter that is not there',
      { starter: 'raft' },
      /^the boat that it begins from, “raft”, does not come/,
    ],
    ['a starter by a name of the language', { starter: '__proto__' }, /does not come along here/],
    ['a starter with other offsets', { sum: 'zzz' }, /^Ferry dory has other offsets here/],
    ['no boat', { starter: undefined, hull: undefined }, /^hull is missing/],
    [
      'no boat, and no notebook to go into',
      { starter: 'none', notebook: undefined },
      /^it names no notebook/,
    ],
    ['a notebook by no name', { notebook: '../../x' }, /^its notebook must be the name of a notebook/],
    ['a place that is none', { place: '"><script>' }, /^its place must be a place/],
    ['a place that is a number', { place: 7 }, /^its place must be a place/],
    [
      'entries that are a list',
      { entries: ['6 mm'] },
      /^entries: 0 is not the name of a quantity|^entries must/,
    ],
    [
      'an entry that is an object',
      { entries: { 'side.thickness': {} } },
      /^entries: side.thickness must be a text/,
    ],
    [
      'an entry far too long',
      { entries: { 'side.thickness': '1'.repeat(20_001) } },
      /must be a text of at most 20000/,
    ],
    ['a second version of numbers', { second: 7 }, /^second must be an object/],
    ['a version in hand that is none', { inHand: 'third' }, /^inHand can only be "second"/],
    [
      'a part by no name',
      { asBuilt: { cut: { 'a b': { held: {}, numbers: {} } } } },
      /is not the name of a part/,
    ],
    ['a notebook by a path', { notebooks: { '../x': { text: '' } } }, /is not the name of a notebook/],
  ])('%s', async (_, change, says) => {
    const faults = await changed(change);
    expect(faults.join('\n')).toMatch(says);
  });

  test('a huge table', async () => {
    const station = { name: 'frame', keel: { x: 0, y: 0, z: 0 } };
    const hull = {
      name: 'Long',
      unit: 'mm',
      offsetsTo: 'outside of skin',
      edges: ['keel'],
      stations: Array.from({ length: 5000 }, () => station),
    };
    expect(await changed({ starter: undefined, hull })).toContain(
      'hull: stations must list at most 40 stations',
    );
  });

  test.each(['{"link":1', '[]', 'null', '7', '""', '{}'])('%s is no link', async (text) => {
    expect(await withText(text)).toHaveLength(1);
  });

  test('lists within lists, deeper than any reader goes', async () => {
    const deep = (version: number) =>
      `{"link":1,"version":${version},"hull":${'['.repeat(200_000)}${']'.repeat(200_000)}}`;
    for (const version of [1, 2])
      // oxlint-disable-next-line no-await-in-loop
      expect(await withText(deep(version)), `version ${version}`).not.toStrictEqual([]);
  });

  test('names of the language itself change nothing', async () => {
    const text = JSON.stringify({ ...good, entries: { 'side.thickness': '6 mm' } }).replace(
      '"link":1,',
      '"link":1,"__proto__":{"polluted":true},"constructor":{"prototype":{"polluted":true}},',
    );
    const read = await openLink(await packed(text));
    expect(isUnread(read)).toBe(false);
    expect(Object.hasOwn(Object.prototype, 'polluted')).toBe(false);
    expect(await withText(text.replace('"side.thickness"', '"__proto__"'))).toStrictEqual([]);
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
  });

  test('one longer than any of ours is not even unfolded', async () => {
    expect(faultsOf(await openLink('A'.repeat(LONGEST_LINK + 1)))).toStrictEqual([
      `it is longer than ${LONGEST_LINK} letters; no link of ours is`,
    ]);
  });
});
