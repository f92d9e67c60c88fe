/** The notebook in hand: entries into one or two versions, every change undone and redone, runs of edits. */
import { effect, signal } from '@preact/signals-core';
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  builtEntries,
  demoBoat,
  type Derived,
  type Given,
  ownerOf,
  type Read,
  starter,
  type Table,
} from '../../src/boat';
import { plainShown, type Shown } from '../../src/measure';
import { type Book, createBook } from '../../src/notebook/book';
import { type Catalogue, catalogueFrom } from '../../src/notebook/graph/on-hand';
import { createGraph, type Graph } from '../../src/notebook/graph/graph';
import { type BookState, freshState, type Version, writtenIn } from '../../src/notebook/state/state';
import { wholeCatalogue } from '../../src/notebook/graph/whole-catalogue';
import { choice, derived, given, sum } from './small-graph';
import { allOf } from './all-of';

const fewOf = (table: Table): readonly (Derived | Given)[] => [
  given('keelson.thickness', table.name === demoBoat.name ? '18 mm' : '25 mm'),
  given('scarf.thickness', 'keelson.thickness'),
  given('scarf.slope', '8', { kind: 'slope' }),
  choice('keelson.timber', 'oak'),
  derived('scarf.taper', (read) => read.number('scarf.slope') * read.number('scarf.thickness')),
  sum('scarf.both', 'scarf.taper', 'scarf.taper'),
];
const catalogueWith = (quantities: readonly (Derived | Given)[]): Catalogue =>
  catalogueFrom([ownerOf(quantities)], {
    hull: () => {
      throw new Error('nobody asks for the hull');
    },
  });
/** A few quantities; those of the vee launch have another preset. */
const catalogueOf = (table: Table): Catalogue => catalogueWith(fewOf(table));
const veeLaunch = starter('vee-launch')!;
const opened = (entries: Record<string, string> = {}) =>
  createBook(freshState(demoBoat, entries), catalogueOf);
const taper = (book: Book) =>
  [book.first.value, book.second.value].map((graph) => graph?.value('scarf.taper'));
const mm = (...values: number[]) => values.map((value) => expect.closeTo(value / 1000, 12) as number);

describe('one version', () => {
  test('is the boat as it is opened', () => {
    const book = opened({ 'scarf.slope': '1 in 10' });
    expect(taper(book)).toStrictEqual([...mm(180), undefined]);
    expect(book.second.value).toBeNull();
    expect(book.inHand.value).toBe(book.first.value);
    expect([book.canUndo.value, book.canRedo.value, book.step.value]).toStrictEqual([false, false, 0]);
  });

  test('takes entries, and presets again where they are cleared', () => {
    const book = opened();
    book.write({ 'scarf.slope': '10', 'keelson.thickness': '20 mm' });
    expect(taper(book)).toStrictEqual([...mm(200), undefined]);
    expect(book.first.value.entry('scarf.slope')).toMatchObject({ text: '10', written: true });
    book.write({ 'scarf.slope': null });
    expect(taper(book)).toStrictEqual([...mm(160), undefined]);
    expect(book.first.value.entry('scarf.slope')).toMatchObject({ text: '8', written: false });
  });

  test('keeps its graph while the table stays, and tells each reader once of an edit', () => {
    const book = opened();
    const graph = book.first.value;
    const seen: unknown[] = [];
    const stop = effect(() => void seen.push(book.inHand.value.value('scarf.both')));
    book.write({ 'scarf.slope': '10', 'keelson.thickness': '20 mm' });
    book.write({ 'keelson.timber': 'ash' });
    book.undo();
    book.undo();
    stop();
    expect(seen).toStrictEqual(mm(288, 400, 288));
    expect(book.first.value).toBe(graph);
  });
});

describe('two versions', () => {
  test('stand side by side: edits go into the one in hand', () => {
    const book = opened();
    book.tryAnother();
    expect(taper(book)).toStrictEqual(mm(144, 144));
    book.write({ 'scarf.slope': '12' });
    expect(taper(book)).toStrictEqual(mm(144, 216));
    expect(book.inHand.value).toBe(book.second.value);
    book.hold('first');
    book.write({ 'keelson.thickness': '20 mm' });
    expect(book.inHand.value).toBe(book.first.value);
    // The second has no thickness of its own, so it follows.
    expect(taper(book)).toStrictEqual(mm(160, 240));
  });

  test('may differ in a preset that only one goes back to', () => {
    const book = opened({ 'scarf.slope': '10' });
    book.tryAnother({ 'scarf.slope': null });
    expect(taper(book)).toStrictEqual(mm(180, 144));
    expect(book.second.value?.entry('scarf.slope')).toMatchObject({ text: '8', written: false });
  });

  test('swapped, each has the numbers of the other', () => {
    const book = opened({ 'scarf.slope': '10' });
    book.tryAnother({ 'scarf.slope': null, 'keelson.thickness': '10 mm' });
    expect(taper(book)).toStrictEqual(mm(180, 80));
    book.swap();
    expect(taper(book)).toStrictEqual(mm(80, 180));
    book.swap();
    expect(taper(book)).toStrictEqual(mm(180, 80));
  });

  test.each([
    ['second', 216],
    ['first', 144],
  ] as const)('of which the %s is kept, leave no other', (version, expected) => {
    const book = opened();
    book.tryAnother({ 'scarf.slope': '12' });
    book.keepOnly(version);
    expect(taper(book)).toStrictEqual([...mm(expected), undefined]);
    expect(book.inHand.value).toBe(book.first.value);
    book.write({ 'keelson.thickness': '10 mm' });
    expect(book.state.value.second).toBeNull();
  });

  test('of the whole boat: an edit of one leaves the other as it was worked out', () => {
    let hulls = 0;
    const book = createBook(freshState(demoBoat), (table) => {
      const catalogue = wholeCatalogue(table);
      return {
        ...catalogue,
        hull: (read) => {
          hulls += 1;
          return catalogue.hull(read);
        },
      };
    });
    book.tryAnother();
    const areas = () =>
      [book.first.value, book.second.value].map((graph) => graph?.value('side.area') as number);
    const [before] = areas();
    // What nothing tells apart is worked out for both at once.
    expect(hulls).toBe(1);
    book.write({ 'frame3.sheer.height': '700 mm' });
    const [first, second] = areas();
    expect(first).toBe(before);
    expect(second).toBeGreaterThan(first! * 1.001);
    expect(hulls).toBe(2);
    book.write({ 'side.thickness': '9 mm' });
    areas();
    expect(hulls).toBe(2);
  });
});

describe('as built', () => {
  test('a measured value holds in both versions, with the design beneath it', () => {
    const book = opened();
    book.tryAnother({ 'keelson.thickness': '24 mm' });
    book.measure({ 'keelson.thickness': '17 mm' });
    expect(taper(book)).toStrictEqual(mm(136, 136));
    const [first, second] = [book.first.value, book.second.value!];
    expect([first.designed('keelson.thickness'), second.designed('keelson.thickness')]).toStrictEqual(
      mm(18, 24),
    );
    // What follows has a design of its own too.
    expect([first.designed('scarf.taper'), second.designed('scarf.taper')]).toStrictEqual(mm(144, 192));
    expect(second.entry('keelson.thickness')).toMatchObject({ text: '24 mm', written: true, built: '17 mm' });
    expect(second.entry('scarf.slope')).not.toHaveProperty('built');
    book.measure({ 'keelson.thickness': null });
    expect(taper(book)).toStrictEqual(mm(144, 192));
    expect([book.first.value, book.second.value]).toStrictEqual([first, second]);
  });

  test('written under a measurement, the design moves and the boat does not', () => {
    const book = opened();
    book.measure({ 'keelson.thickness': '17 mm' });
    const seen: unknown[] = [];
    const stop = effect(() => void seen.push(book.first.value.value('scarf.taper')));
    book.write({ 'keelson.thickness': '30 mm' });
    expect(book.first.value.designed('keelson.thickness')).toBe(0.03);
    book.measure({ 'keelson.thickness': '16 mm' });
    stop();
    expect(seen).toStrictEqual(mm(136, 128));
  });

  test('steps back and forth like every edit, and a run of letters is one step', () => {
    const book = opened();
    for (const text of ['1', '17', '17 mm'])
      book.measure({ 'keelson.thickness': text }, 'measure keelson.thickness');
    book.settle();
    book.markCut('scarf', { held: { 'scarf.slope': '12' }, numbers: {} });
    expect(taper(book)[0]).toBeCloseTo(0.204, 12);
    book.write({ 'scarf.slope': '6' });
    expect(taper(book)[0]).toBeCloseTo(0.204, 12);
    book.undo();
    book.undo();
    expect(taper(book)[0]).toBeCloseTo(0.136, 12);
    book.undo();
    expect(taper(book)[0]).toBeCloseTo(0.144, 12);
    expect(book.canUndo.value).toBe(false);
    while (book.canRedo.value) book.redo();
    expect(taper(book)[0]).toBeCloseTo(0.204, 12);
    expect(book.first.value.designed('scarf.slope')).toBe(6);
  });

  test('a text that can’t be read is kept, said at its place, and what needs it waits', () => {
    const book = opened();
    book.measure({ 'keelson.thickness': '17 furlong' });
    const graph = book.first.value;
    expect(graph.entry('keelson.thickness')).toMatchObject({ built: '17 furlong' });
    expect(graph.value('keelson.thickness')).toMatchObject({
      issue: expect.stringMatching(/furlong/) as string,
    });
    expect(graph.value('scarf.taper')).toMatchObject({ waitsFor: 'keelson.thickness' });
    expect(graph.designed('scarf.taper')).toBeCloseTo(0.144, 12);
  });

  test('a measurement follows nothing else, so it can stand in no circle and opens one that there is', () => {
    const book = opened();
    book.measure({ 'keelson.thickness': 'scarf.thickness + 1 mm', 'keelson.timber': 'keelson.timber' });
    const graph = book.first.value;
    for (const name of ['keelson.thickness', 'keelson.timber'])
      expect(graph.value(name)).toMatchObject({
        issue: expect.stringMatching(
          /read off the wood and follows nothing else; write the number without/,
        ) as string,
      });
    book.measure({ 'keelson.thickness': null, 'keelson.timber': 'elm' });
    expect(graph.value('keelson.timber')).toBe('elm');
    book.write({ 'keelson.thickness': '2 * scarf.thickness' });
    expect(graph.value('scarf.thickness')).toMatchObject({
      issue: expect.stringMatching(/circle/) as string,
    });
    book.measure({ 'keelson.thickness': '17 mm' });
    expect(graph.value('scarf.thickness')).toBe(0.017);
  });

  test('other answers given to the cells share the hull, and follow the book', () => {
    let hulls = 0;
    const book = createBook(freshState(demoBoat), (table) => {
      const catalogue = wholeCatalogue(table);
      return {
        ...catalogue,
        hull: (read) => {
          hulls += 1;
          return catalogue.hull(read);
        },
      };
    });
    book.write({ 'bevels.frame': 'frame1' });
    const aside = book.first.value.with(() => ({ 'bevels.frame': 'frame4' }));
    const bevel = () => aside.value('bevels.chineBevel');
    expect(bevel()).toBe(book.first.value.value('bevels.frame4.chineBevel'));
    expect(book.first.value.with(() => ({ 'bevels.frame': null })).value('bevels.frame')).toBe('frame3');
    expect(book.first.value.value('bevels.frame')).toBe('frame1');
    const before = bevel();
    expect(hulls).toBe(1);
    book.write({ 'frame4.chine.halfBreadth': '700 mm' });
    expect(bevel()).not.toBe(before);
    expect(bevel()).toBe(book.first.value.value('bevels.frame4.chineBevel'));
    expect(hulls).toBe(2);
  });
});

describe('undo and redo', () => {
  test('step through edits one by one', () => {
    const book = opened();
    book.write({ 'scarf.slope': '10' });
    book.write({ 'scarf.slope': '12' });
    book.undo();
    expect(taper(book)).toStrictEqual([...mm(180), undefined]);
    expect([book.canUndo.value, book.canRedo.value]).toStrictEqual([true, true]);
    book.undo();
    expect([book.canUndo.value, book.canRedo.value]).toStrictEqual([false, true]);
    book.redo();
    book.redo();
    expect(taper(book)).toStrictEqual([...mm(216), undefined]);
    expect(book.canRedo.value).toBe(false);
  });

  test('bring back another boat that was opened over this one, entries and all', () => {
    const book = opened({ 'scarf.slope': '10' });
    book.open(freshState(veeLaunch));
    expect(book.state.value.table).toBe(veeLaunch);
    expect(taper(book)).toStrictEqual([...mm(200), undefined]);
    book.undo();
    expect(taper(book)).toStrictEqual([...mm(180), undefined]);
    book.redo();
    expect(taper(book)).toStrictEqual([...mm(200), undefined]);
  });

  test('do nothing at either end', () => {
    const book = opened();
    book.undo();
    book.redo();
    expect([book.state.value.entries, book.step.value]).toStrictEqual([{}, 0]);
  });

  test('pass over what changes nothing', () => {
    const book = opened({ 'scarf.slope': '10' });
    book.write({ 'scarf.slope': '10' });
    book.write({ 'keelson.thickness': null });
    book.write({});
    book.hold('first');
    book.hold('second');
    book.keepOnly('first');
    book.swap();
    book.settle();
    expect([book.canUndo.value, book.step.value, book.state.value.inHand]).toStrictEqual([false, 0, 'first']);
  });
});

describe('a run of edits', () => {
  const typed = () => {
    const book = opened();
    for (const text of ['1', '12', '12 ', '12 mm'])
      book.write({ 'keelson.thickness': text }, 'type keelson.thickness');
    return book;
  };

  test('is one step', () => {
    const book = typed();
    expect(taper(book)).toStrictEqual([...mm(96), undefined]);
    expect(book.step.value).toBe(1);
    book.undo();
    expect(taper(book)).toStrictEqual([...mm(144), undefined]);
    expect(book.canUndo.value).toBe(false);
    book.redo();
    expect(taper(book)).toStrictEqual([...mm(96), undefined]);
  });

  test.each([
    ['it is settled', (book: Book) => book.settle()],
    ['another field is typed in', (book: Book) => book.write({ 'scarf.slope': '9' }, 'type scarf.slope')],
    ['something else is done', (book: Book) => book.tryAnother()],
    ['it is undone and redone', (book: Book) => [book.undo(), book.redo()]],
  ])('ends when %s', (_what, interrupt) => {
    const book = typed();
    interrupt(book);
    const { step } = book;
    const before = [step.value, taper(book)[0]];
    book.write({ 'keelson.thickness': '30 mm' }, 'type keelson.thickness');
    book.undo();
    expect([step.value, taper(book)[0]]).toStrictEqual([(before[0] as number) + 2, before[1]]);
  });
});

/** Anything a reader can do, in any order. */
describe('whatever is done', () => {
  const name = fc.constantFrom('keelson.thickness', 'scarf.thickness', 'scarf.slope', 'keelson.timber');
  const text = fc.constantFrom(
    '12 mm',
    '2 * keelson.thickness',
    '9',
    'elm',
    'keelson.thickness',
    'nothing of sense',
  );
  const changes = fc.dictionary(name, fc.option(text), { maxKeys: 3, noNullPrototype: true });
  const held = fc.dictionary(name, text, { maxKeys: 3, noNullPrototype: true });
  const version = fc.constantFrom<Version>('first', 'second');
  type Deed = (book: Book) => void;
  const edits: fc.Arbitrary<Deed> = fc.oneof(
    changes.map(
      (change): Deed =>
        (book) =>
          book.write(change),
    ),
    fc.constant<Deed>((book) => book.settle()),
    changes.map(
      (change): Deed =>
        (book) =>
          book.tryAnother(change),
    ),
    changes.map(
      (change): Deed =>
        (book) =>
          book.measure(change),
    ),
    fc.tuple(fc.constantFrom('keelson', 'scarf'), fc.option(held)).map(
      ([part, as]): Deed =>
        (book) =>
          book.markCut(part, as && { held: as, numbers: {} }),
    ),
    version.map(
      (one): Deed =>
        (book) =>
          book.keepOnly(one),
    ),
    version.map(
      (one): Deed =>
        (book) =>
          book.hold(one),
    ),
  );
  const deeds: fc.Arbitrary<Deed> = fc.oneof(
    { weight: 5, arbitrary: edits },
    {
      weight: 5,
      arbitrary: fc.oneof(
        fc.tuple(changes, fc.constantFrom('type a', 'type b')).map(
          ([change, run]): Deed =>
            (book) =>
              book.write(change, run),
        ),
        fc.constant<Deed>((book) => book.swap()),
        fc.boolean().map(
          (vee): Deed =>
            (book) =>
              book.open(freshState(vee ? veeLaunch : demoBoat, { 'scarf.slope': '11' })),
        ),
        fc.constant<Deed>((book) => book.undo()),
        fc.constant<Deed>((book) => book.redo()),
      ),
    },
  );
  const names = allOf(catalogueOf(demoBoat))
    .given.map((one) => one.name)
    .concat('scarf.taper', 'scarf.both');
  const valuesIn = (graph: Graph | null) => graph && names.map((one) => graph.value(one));
  const allWritten = (state: BookState, of: Version): Readonly<Record<string, string>> =>
    Object.fromEntries(
      [...names, ...Object.keys(state.entries), ...Object.keys(state.second ?? {})].flatMap((one) => {
        const text = writtenIn(state, of, one);
        return text === undefined ? [] : [[one, text]];
      }),
    );
  /** What a graph that was never edited makes of the state. */
  const afresh = (state: BookState, of: Version) =>
    valuesIn(
      createGraph({
        catalogue: () => catalogueOf(state.table),
        entries: () => allWritten(state, of),
        shown: plainShown,
      }).asBuilt(() => builtEntries(state.asBuilt)),
    );
  /** Which circle is told depends on where one looked first. */
  const withoutSentences = (values: readonly unknown[] | null) =>
    values?.map((value) => (typeof value === 'object' ? 'an issue' : value)) ?? null;

  test('the graphs say what graphs made afresh would say', () => {
    fc.assert(
      fc.property(fc.array(deeds, { maxLength: 15 }), (done) => {
        const book = opened();
        for (const deed of done) {
          deed(book);
          const state = book.state.value;
          expect(withoutSentences(valuesIn(book.first.value))).toStrictEqual(
            withoutSentences(afresh(state, 'first')),
          );
          expect(withoutSentences(valuesIn(book.second.value))).toStrictEqual(
            state.second ? withoutSentences(afresh(state, 'second')) : null,
          );
          const held = state.second && state.inHand === 'second' ? book.second.value : book.first.value;
          expect(book.inHand.value).toBe(held);
        }
      }),
      { seed: 13, numRuns: 300 },
    );
  });

  test('undone to the beginning and redone to the end, nothing is lost', () => {
    fc.assert(
      fc.property(fc.array(deeds, { maxLength: 15 }), (done) => {
        const book = opened();
        const start = book.state.value;
        for (const deed of done) deed(book);
        while (book.canRedo.value) book.redo();
        const end = book.state.value;
        const states: BookState[] = [];
        while (book.canUndo.value) {
          states.unshift(book.state.value);
          book.undo();
        }
        expect(book.state.value).toBe(start);
        for (const state of states) {
          book.redo();
          expect(book.state.value).toBe(state);
        }
        expect(book.canRedo.value).toBe(false);
        expect(book.state.value).toBe(end);
      }),
      { seed: 14, numRuns: 300 },
    );
  });

  test('every step back over an edit changes something', () => {
    fc.assert(
      fc.property(fc.array(edits, { maxLength: 15 }), (done) => {
        const book = opened();
        for (const deed of done) deed(book);
        while (book.canUndo.value) {
          const after = book.state.value;
          book.undo();
          expect(book.state.value).not.toStrictEqual(after);
        }
      }),
      { seed: 15, numRuns: 300 },
    );
  });
});

describe('the units that the builder works in', () => {
  const sold = {
    ...given('shop.length', '4.8 m'),
    presetFrom: (read: Read) => (read.inches() ? '16 ft' : '4.8 m'),
  };
  const limited = { ...given('shop.thickness', '18 mm'), min: '2 mm', max: '150 mm' };
  const air = { ...given('shop.air', '20 °C'), kind: 'temperature' as const, min: '0 °C' };
  const feet: Shown = { length: 'feet', fraction: 16, mass: 'lb', money: '' };
  const chosen = signal(plainShown);
  const book = createBook(
    freshState(demoBoat),
    () => catalogueWith([sold, limited, air]),
    undefined,
    () => chosen.value,
  );

  test('are those of a refusal, with the limit on its own side', () => {
    const why = (name: string) => (book.first.value.value(name) as { issue: string }).issue;
    book.write({ 'shop.thickness': '200 mm', 'shop.air': '-1 °C' });
    expect([why('shop.thickness'), why('shop.air')]).toStrictEqual([
      'shop thickness as given must be at most 150 mm',
      'shop air as given must be at least 0 °C',
    ]);
    chosen.value = feet;
    // 150 mm are 5.906 in, 14 1/2 sixteenths past 5: down to 7/8.
    expect([why('shop.thickness'), why('shop.air')]).toStrictEqual([
      'shop thickness as given must be at most 5 7/8 in',
      'shop air as given must be at least 32 °F',
    ]);
    book.write({ 'shop.thickness': '1 mm' });
    expect(why('shop.thickness')).toBe('shop thickness as given must be at least 3/32 in');
    book.write({ 'shop.thickness': null, 'shop.air': null });
    chosen.value = plainShown;
  });

  test('move a preset that has a size of its own in inches, and nothing that is typed', () => {
    const length = () => book.first.value.value('shop.length');
    expect(length()).toBe(4.8);
    chosen.value = feet;
    expect(length()).toBeCloseTo(16 * 0.3048, 12);
    book.write({ 'shop.length': '5.1 m' });
    expect(length()).toBe(5.1);
    book.write({ 'shop.length': null });
    chosen.value = plainShown;
    expect(length()).toBe(4.8);
  });
});
