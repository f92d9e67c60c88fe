import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { nothingBuilt, type Table } from '../../../src/boat';
import { readSaved } from '../../../src/notebook/keeping/read-saved';
import { isUnusable, type Kept, stepBetween, writeSaved } from '../../../src/notebook/keeping/saved-text';
import { type BookState, freshState, tryAnother, write } from '../../../src/notebook/state/state';
import { type Shelf, shelfFrom } from '../../../src/notebook/keeping/shelf';
import { createStore } from '../../../src/notebook/keeping/store';

const table: Table = {
  name: 'Marsh punt',
  note: 'square ends',
  unit: 'in',
  offsetsTo: 'inside of skin',
  edges: ['keel', 'sheer'],
  stations: [
    {
      name: 'aft',
      points: [
        { x: 0, y: 0, z: 4 },
        { x: -2.5, y: 16, z: 15 },
      ],
    },
    {
      name: 'mid',
      points: [
        { x: 60, y: 0, z: 2 },
        { x: 60, y: null, z: 14 },
      ],
    },
  ],
};
const kept = (entries: Record<string, string> = {}): Kept => ({
  state: freshState(table, entries),
  earlier: [],
  later: [],
});

/** A browser's storage in memory, of a bounded number of characters. */
function shelfOf(room = Infinity): Shelf & { readonly texts: Map<string, string>; room: number } {
  const texts = new Map<string, string>();
  const shelf = {
    texts,
    room,
    getItem: (key: string) => texts.get(key) ?? null,
    setItem: (key: string, text: string) => {
      const others = [...texts].filter(([other]) => other !== key);
      const taken = others.reduce((sum, [, other]) => sum + other.length, 0);
      if (taken + text.length > shelf.room) throw new DOMException('no room', 'QuotaExceededError');
      texts.set(key, text);
    },
  };
  return shelf;
}

describe('the saved text', () => {
  const entry = fc.string({ unit: 'grapheme', maxLength: 20 });
  const name = fc.constantFrom('keelson.thickness', 'frame 3.chine.x', 'a', 'äöü.ß');
  const states: fc.Arbitrary<BookState> = fc
    .tuple(
      fc.dictionary(name, entry, { noNullPrototype: true }),
      fc.option(fc.dictionary(name, fc.option(entry), { noNullPrototype: true })),
      fc.dictionary(name, entry, { noNullPrototype: true }),
      fc.dictionary(
        fc.constantFrom('frame3', 'side'),
        fc.record(
          {
            held: fc.dictionary(name, entry, { noNullPrototype: true }),
            numbers: fc.dictionary(
              name,
              fc.double({ noNaN: true, noDefaultInfinity: true }).map((x) => x + 0),
              { noNullPrototype: true },
            ),
          },
          { noNullPrototype: true },
        ),
        { noNullPrototype: true },
      ),
    )
    .map(([entries, second, measured, cut]) => {
      const state = freshState(table, entries, { measured, cut });
      return second ? tryAnother(state, second) : state;
    });
  test('gives back what was saved', () => {
    fc.assert(
      fc.property(states, states, fc.nat(), (state, before, revision) => {
        const saved = { state, earlier: [stepBetween(state, before)], later: [], revision };
        expect(readSaved(writeSaved(saved))).toStrictEqual(saved);
      }),
      { seed: 5, numRuns: 300 },
    );
  });

  const whole = () =>
    JSON.parse(writeSaved({ ...kept({ 'scarf.slope': '12' }), revision: 4 })) as Record<string, unknown>;

  test.each<[string, unknown, RegExp]>([
    ['form', 'something else', /not a saved boat/],
    ['version', 3, /another edition/],
    ['revision', -1, /its revision/],
    ['revision', 1.5, /its revision/],
    ['entries', { 'scarf.slope': 12 }, /its entries\.scarf\.slope/],
    ['entries', null, /its entries/],
    ['second', 'no', /its second/],
    ['asBuilt', [], /its asBuilt/],
    ['asBuilt', { measured: { 'side.thickness': 5 }, cut: {} }, /its asBuilt\.measured\.side\.thickness/],
    ['asBuilt', { measured: {}, cut: { side: { held: {} } } }, /its asBuilt\.cut\.side\.numbers/],
    ['asBuilt', { measured: {}, cut: { side: { held: {}, numbers: { a: null } } } }, /its asBuilt\.cut/],
    ['table', undefined, /its table/],
    ['table', { name: 'x' }, /table of offsets/],
  ])('with its %s as %j is of no use, and says why', (key, value, because) => {
    const read = readSaved(JSON.stringify({ ...whole(), [key]: value }));
    expect(read).toStrictEqual({ because: expect.stringMatching(because) as string });
  });

  test.each(['', 'null', '[]', '"battenbook"', '{"form":', '\u0000', '{"form":{"__proto__":null}}'])(
    '%j is of no use',
    (text) => {
      expect(isUnusable(readSaved(text))).toBe(true);
    },
  );

  test('cut short anywhere it is of no use, and nothing is thrown', () => {
    const text = writeSaved({ ...kept({ 'scarf.slope': '12' }), revision: 4 });
    for (let at = 0; at < text.length; at += 1) expect(isUnusable(readSaved(text.slice(0, at)))).toBe(true);
  });

  test('a boat is not given up for its steps, nor for the version that was held', () => {
    const read = readSaved(JSON.stringify({ ...whole(), earlier: [7], later: 'no', inHand: 'third' }));
    expect(read).toMatchObject({ revision: 4, earlier: [], later: [], state: { inHand: 'first' } });
  });

  test('a boat saved before anything could be measured or cut opens with nothing built', () => {
    const { asBuilt, ...older } = whole();
    expect(asBuilt).toStrictEqual(nothingBuilt);
    expect(readSaved(JSON.stringify(older))).toMatchObject({
      state: { entries: { 'scarf.slope': '12' }, asBuilt: nothingBuilt },
    });
  });

  test('a second version is not held where there is none', () => {
    expect(readSaved(JSON.stringify({ ...whole(), inHand: 'second' }))).toMatchObject({
      state: { inHand: 'first' },
    });
  });

  test('names that mean something to the language are no way in', () => {
    const hostile = JSON.stringify(whole()).replace(
      '"scarf.slope":"12"',
      '"__proto__":"x","constructor":"y","scarf.slope":"12"',
    );
    const read = readSaved(hostile);
    expect(isUnusable(read)).toBe(false);
    expect(Object.getPrototypeOf({})).toBe(Object.prototype);
    expect(({} as Record<string, unknown>)['x']).toBeUndefined();
    expect(read).toMatchObject({ state: { entries: { 'scarf.slope': '12' } } });
  });
});

describe('one window', () => {
  test('finds nothing on a first visit, and afterwards what it saved', () => {
    const shelf = shelfOf();
    const store = createStore(shelf);
    expect(store.open()).toStrictEqual({ kept: null });
    const state = write(tryAnother(freshState(table), { 'scarf.slope': '12' }), { 'bend.radius': '2 m' });
    const mine: Kept = { ...kept(), state };
    expect(store.save(mine)).toStrictEqual({ done: 'saved' });
    expect(createStore(shelf).open()).toStrictEqual({ kept: mine });
  });

  test('saves as often as it likes', () => {
    const shelf = shelfOf();
    const store = createStore(shelf);
    store.open();
    for (let n = 1; n <= 5; n += 1) {
      expect(store.save(kept({ 'scarf.slope': `${n}` }))).toStrictEqual({ done: 'saved' });
      expect(store.isSavedElsewhere()).toBe(false);
    }
    expect(readSaved(shelf.getItem('battenbook boat') ?? '')).toMatchObject({ revision: 5 });
    expect(shelf.texts.size).toBe(1);
  });

  test('begins afresh on a broken text, and keeps it apart', () => {
    const shelf = shelfOf();
    shelf.setItem('battenbook boat', '{"form":"batt');
    const store = createStore(shelf);
    const opened = store.open();
    expect(opened).toStrictEqual({
      kept: null,
      says: expect.stringMatching(/can't be read: .*set aside/) as string,
    });
    expect(store.save(kept())).toStrictEqual({ done: 'saved' });
    expect(shelf.getItem('battenbook boat aside 1')).toBe('{"form":"batt');
    expect(createStore(shelf).open()).toStrictEqual({ kept: kept() });
  });

  test('each broken text has a place of its own, and none has two', () => {
    const shelf = shelfOf();
    for (const text of ['one', 'two', 'one']) {
      shelf.setItem('battenbook boat', text);
      createStore(shelf).open();
    }
    expect([...shelf.texts.keys()]).toStrictEqual([
      'battenbook boat',
      'battenbook boat aside 1',
      'battenbook boat aside 2',
    ]);
  });

  test('does not save over a broken text that it could not set aside', () => {
    const shelf = shelfOf(1000);
    const broken = 'x'.repeat(600);
    shelf.setItem('battenbook boat', broken);
    const store = createStore(shelf);
    expect(store.open().says).toMatch(/nothing is saved over it/);
    expect(store.save(kept())).toMatchObject({
      done: 'not saved',
      says: expect.stringMatching(/full/) as string,
    });
    expect(shelf.getItem('battenbook boat')).toBe(broken);
    shelf.room = Infinity;
    expect(store.save(kept())).toMatchObject({ done: 'saved' });
    expect(shelf.getItem('battenbook boat aside 1')).toBe(broken);
  });

  test('goes on when the storage fills up, and saves again when there is room', () => {
    const shelf = shelfOf();
    const store = createStore(shelf);
    store.open();
    store.save(kept());
    shelf.room = 10;
    expect(store.save(kept({ 'scarf.slope': '12' }))).toStrictEqual({
      done: 'not saved',
      says: expect.stringMatching(/storage is full/) as string,
    });
    expect(createStore(shelf).open()).toStrictEqual({ kept: kept() });
    shelf.room = Infinity;
    expect(store.save(kept({ 'scarf.slope': '12' }))).toStrictEqual({ done: 'saved' });
  });

  test('saves again after the builder has cleared the storage', () => {
    const shelf = shelfOf();
    const store = createStore(shelf);
    store.open();
    store.save(kept());
    shelf.texts.clear();
    expect(store.isSavedElsewhere()).toBe(false);
    expect(store.save(kept())).toStrictEqual({ done: 'saved' });
  });

  test('keeps boats under different keys apart', () => {
    const shelf = shelfOf();
    createStore(shelf, 'a').save(kept());
    expect(createStore(shelf, 'b').open()).toStrictEqual({ kept: null });
  });
});

describe('storage that is shut', () => {
  const refuse = () => {
    throw new DOMException('no', 'SecurityError');
  };

  test('is told as such, and nothing is thrown', () => {
    const shut = shelfFrom(refuse);
    expect(shut).toBeNull();
    for (const store of [createStore(shut), createStore({ getItem: refuse, setItem: refuse })]) {
      expect(store.open()).toStrictEqual({
        kept: null,
        says: expect.stringMatching(/keeps nothing/) as string,
      });
      const told = { done: 'not saved', says: expect.stringMatching(/keeps nothing.*file/) as string };
      expect(store.save(kept())).toStrictEqual(told);
      expect(store.saveOver(kept())).toStrictEqual(told);
      expect(store.isSavedElsewhere()).toBe(false);
    }
  });

  test('may be there but refuse to be read', () => {
    expect(shelfFrom(() => ({ getItem: refuse, setItem: refuse }))).toBeNull();
    expect(shelfFrom(() => undefined)).toBeNull();
    const shelf = shelfOf();
    expect(shelfFrom(() => shelf)).toBe(shelf);
  });

  test('a fault of ours is not taken for it', () => {
    const broken = {
      ...shelfOf(),
      getItem: () => {
        throw new TypeError('ours');
      },
    };
    expect(() => createStore(broken).open()).toThrow('ours');
  });
});

describe('two windows', () => {
  const two = () => {
    const shelf = shelfOf();
    const [one, other] = [createStore(shelf), createStore(shelf)];
    one.open();
    one.save(kept());
    other.open();
    return { shelf, one, other };
  };

  test('the second to save is told, and nothing is overwritten', () => {
    const { shelf, one, other } = two();
    one.save(kept({ 'scarf.slope': '10' }));
    expect(other.isSavedElsewhere()).toBe(true);
    const before = shelf.getItem('battenbook boat');
    expect(other.save(kept({ 'scarf.slope': '12' }))).toStrictEqual({
      done: 'conflict',
      says: expect.stringMatching(/another window/) as string,
      theirs: kept({ 'scarf.slope': '10' }),
    });
    expect(shelf.getItem('battenbook boat')).toBe(before);
    expect(other.save(kept({ 'scarf.slope': '12' }))).toMatchObject({ done: 'conflict' });
  });

  test('a window that never opened the boat does not overwrite it', () => {
    const { shelf } = two();
    expect(createStore(shelf).save(kept({ 'scarf.slope': '4' }))).toMatchObject({ done: 'conflict' });
  });

  test('taking the other boat ends the conflict', () => {
    const { one, other } = two();
    one.save(kept({ 'scarf.slope': '10' }));
    other.save(kept({ 'scarf.slope': '12' }));
    expect(other.open()).toStrictEqual({ kept: kept({ 'scarf.slope': '10' }) });
    expect(other.save(kept({ 'scarf.slope': '14' }))).toStrictEqual({ done: 'saved' });
    expect(one.save(kept())).toMatchObject({ done: 'conflict', theirs: kept({ 'scarf.slope': '14' }) });
  });

  test('saving over the other boat sets it aside, and that window is told in turn', () => {
    const { shelf, one, other } = two();
    one.save(kept({ 'scarf.slope': '10' }));
    const theirs = shelf.getItem('battenbook boat') ?? '';
    expect(other.saveOver(kept({ 'scarf.slope': '12' }))).toStrictEqual({ done: 'saved' });
    expect(shelf.getItem('battenbook boat aside 1')).toBe(theirs);
    expect(readSaved(shelf.getItem('battenbook boat') ?? '')).toMatchObject({ revision: 3 });
    expect(one.save(kept({ 'scarf.slope': '11' }))).toMatchObject({
      done: 'conflict',
      theirs: kept({ 'scarf.slope': '12' }),
    });
  });

  test('the same boat saved by both is still a conflict where the count of saves differs', () => {
    const { one, other } = two();
    one.save(kept({ 'scarf.slope': '10' }));
    one.save(kept());
    expect(other.save(kept())).toMatchObject({ done: 'conflict' });
  });

  test('what the other left broken is set aside, and saving goes on', () => {
    const { shelf, one } = two();
    shelf.setItem('battenbook boat', 'torn');
    expect(one.save(kept())).toStrictEqual({
      done: 'saved',
      says: expect.stringMatching(/set aside/) as string,
    });
    expect(shelf.getItem('battenbook boat aside 1')).toBe('torn');
  });

  test('saving over goes wrong whole when there is no room to set the other aside', () => {
    const { shelf, one, other } = two();
    one.save(kept({ 'scarf.slope': '10' }));
    const theirs = shelf.getItem('battenbook boat') ?? '';
    shelf.room = theirs.length + 10;
    expect(other.saveOver(kept())).toMatchObject({ done: 'not saved' });
    expect(shelf.getItem('battenbook boat')).toBe(theirs);
  });

  test('whatever they do, a boat goes from the shelf only by a window that has seen it, or is set aside', () => {
    const step = fc.tuple(fc.nat(1), fc.constantFrom('save' as const, 'saveOver' as const, 'open' as const));
    fc.assert(
      fc.property(fc.array(step, { maxLength: 20 }), (steps) => {
        const shelf = shelfOf();
        const windows = [createStore(shelf), createStore(shelf)];
        const seen: (string | null)[] = [null, null];
        steps.forEach(([who, what], n) => {
          const before = shelf.getItem('battenbook boat');
          const done =
            what === 'open'
              ? windows[who]!.open() && 'saved'
              : windows[who]![what](kept({ note: `${n}` })).done;
          const after = shelf.getItem('battenbook boat');
          const hadSeen = before === null || seen[who] === before;
          expect(done).toBe(what === 'save' && !hadSeen ? 'conflict' : 'saved');
          if (done === 'saved') seen[who] = after;
          const aside = [...shelf.texts].filter(([key]) => key !== 'battenbook boat').map(([, text]) => text);
          const isKept = after === before || (what !== 'open' && (hadSeen || aside.includes(before)));
          expect(isKept).toBe(true);
        });
      }),
      { seed: 13, numRuns: 500 },
    );
  });
});
