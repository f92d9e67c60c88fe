import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type AsBuilt, builtEntries, type CutPart, type Table } from '../../../src/boat';
import {
  type BookState,
  type Changes,
  type Entries,
  freshState,
  hold,
  keepOnly,
  markCut,
  measure,
  putNotebookAway,
  reshape,
  swap,
  tryAnother,
  write,
  writeNotebook,
  writtenIn,
} from '../../../src/notebook/state/state';

const table: Table = {
  name: 'raft',
  note: '',
  unit: 'mm',
  offsetsTo: 'outside of skin',
  edges: [],
  stations: [],
};
const names = ['keelson.thickness', 'scarf.slope', 'bend.radius'];
const written = (state: BookState, version: 'first' | 'second') =>
  names.map((name) => writtenIn(state, version, name));

const text = fc.constantFrom('18 mm', '12', '2 * keelson.width');
const name = fc.constantFrom(...names);
const entries: fc.Arbitrary<Entries> = fc.dictionary(name, text, { noNullPrototype: true });
const changes: fc.Arbitrary<Changes> = fc.dictionary(name, fc.option(text), { noNullPrototype: true });
/** States that can be reached, in either version. */
const states: fc.Arbitrary<BookState> = fc
  .tuple(entries, fc.option(changes), changes, fc.boolean())
  .map(([base, second, more, inFirst]) => {
    const start = freshState(table, base);
    if (!second) return write(start, more);
    const two = tryAnother(start, second);
    return write(inFirst ? { ...two, inHand: 'first' } : two, more);
  });
const run = (property: fc.IProperty<[BookState, Changes]>) => fc.assert(property, { seed: 7, numRuns: 300 });

describe('a notebook of the builder’s own', () => {
  const bare = freshState(table, { 'scarf.slope': '8' });
  const one = writeNotebook(bare, 'keel-day', '# Keel day');

  test('is its whole text, and nothing else of the boat moves', () => {
    expect(one).toStrictEqual({ ...bare, notebooks: { 'keel-day': { text: '# Keel day', away: false } } });
    expect(bare.notebooks).toStrictEqual({});
  });

  test('is written over, and thrown out, each without touching another', () => {
    const two = writeNotebook(one, 'sheer', '');
    expect(writeNotebook(two, 'sheer', '## New').notebooks).toStrictEqual({
      ...one.notebooks,
      sheer: { text: '## New', away: false },
    });
    expect(writeNotebook(two, 'sheer', null)).toStrictEqual(one);
  });

  test('that is put away keeps its text, and comes back as it was', () => {
    const away = putNotebookAway(one, 'keel-day', true);
    expect(away.notebooks).toStrictEqual({ 'keel-day': { text: '# Keel day', away: true } });
    expect(putNotebookAway(away, 'keel-day', false)).toStrictEqual(one);
    expect(writeNotebook(away, 'keel-day', '# Keel day')).toStrictEqual(one);
  });

  test('what stands already is no change, nor is anything done to one that there is not', () => {
    expect(writeNotebook(one, 'keel-day', '# Keel day')).toBe(one);
    expect(putNotebookAway(one, 'keel-day', false)).toBe(one);
    expect(writeNotebook(one, 'other', null)).toBe(one);
    expect(putNotebookAway(one, 'other', true)).toBe(one);
  });

  test('is the boat’s in both versions, and stays with whichever is kept', () => {
    const tried = writeNotebook(tryAnother(bare, { 'scarf.slope': '12' }), 'keel-day', '# Keel day');
    expect(keepOnly(tried, 'first').notebooks).toStrictEqual(one.notebooks);
    expect(keepOnly(tried, 'second').notebooks).toStrictEqual(one.notebooks);
    expect(swap(tried).notebooks).toStrictEqual(one.notebooks);
  });
});

describe('writing', () => {
  test('goes into the only version', () => {
    const state = write(freshState(table, { 'scarf.slope': '8' }), {
      'scarf.slope': '12',
      'bend.radius': '2 m',
    });
    expect(written(state, 'first')).toStrictEqual([undefined, '12', '2 m']);
    expect(state.second).toBeNull();
  });

  test('null restores the preset', () => {
    const state = write(freshState(table, { 'scarf.slope': '8' }), { 'scarf.slope': null });
    expect(writtenIn(state, 'first', 'scarf.slope')).toBeUndefined();
    expect(state.entries).toStrictEqual({});
  });

  test('leaves the state before it as it was', () => {
    run(
      fc.property(states, changes, (state, change) => {
        const before = structuredClone(state);
        write(state, change);
        expect(state).toStrictEqual(before);
      }),
    );
  });

  test('is what is read afterwards in the version in hand, and nothing else there moves', () => {
    run(
      fc.property(states, changes, (state, change) => {
        const after = write(state, change);
        for (const name of names) {
          const expected =
            name in change ? (change[name] ?? undefined) : writtenIn(state, state.inHand, name);
          expect(writtenIn(after, state.inHand, name)).toBe(expected);
        }
      }),
    );
  });

  test('in the second version leaves the first alone', () => {
    run(
      fc.property(states, changes, (state, change) => {
        const two = tryAnother(state);
        expect(written(write(two, change), 'first')).toStrictEqual(written(two, 'first'));
      }),
    );
  });
});

describe('a second version', () => {
  const first = freshState(table, { 'scarf.slope': '8', 'bend.radius': '2 m' });

  test('begins as a copy, holds only what differs, and is in hand', () => {
    const state = tryAnother(first, { 'scarf.slope': '12', 'bend.radius': '2 m' });
    expect(state).toMatchObject({
      inHand: 'second',
      second: { 'scarf.slope': '12' },
      entries: first.entries,
    });
  });

  test('goes back to a preset that the first version has written over', () => {
    const state = tryAnother(first, { 'scarf.slope': null });
    expect(writtenIn(state, 'second', 'scarf.slope')).toBeUndefined();
    expect(writtenIn(state, 'first', 'scarf.slope')).toBe('8');
    expect(write(state, { 'scarf.slope': '8' }).second).toStrictEqual({});
    expect(tryAnother(first, { 'keelson.thickness': null }).second).toStrictEqual({});
  });

  test('follows the first where it differs in nothing', () => {
    const two: BookState = { ...tryAnother(first, { 'scarf.slope': '12' }), inHand: 'first' };
    const state = write(two, { 'bend.radius': '3 m', 'scarf.slope': '10' });
    expect(written(state, 'second')).toStrictEqual([undefined, '12', '3 m']);
  });

  test('goes on with its changes when another is tried', () => {
    const state = tryAnother(tryAnother(first, { 'scarf.slope': '12' }), { 'bend.radius': '1 m' });
    expect(state.second).toStrictEqual({ 'scarf.slope': '12', 'bend.radius': '1 m' });
  });

  test('kept, it is all there is; dropped, it leaves no trace', () => {
    run(
      fc.property(states, changes, (state, change) => {
        const two = tryAnother(state, change);
        const kept = keepOnly(two, 'second');
        expect(kept).toMatchObject({ second: null, inHand: 'first' });
        expect(written(kept, 'first')).toStrictEqual(written(two, 'second'));
        expect(written(keepOnly(two, 'first'), 'first')).toStrictEqual(written(two, 'first'));
      }),
    );
  });

  test('swapped, each stands in the place of the other, and swapped again all is as before', () => {
    run(
      fc.property(states, changes, (state, change) => {
        const two = tryAnother(state, change);
        const swapped = swap(two);
        expect(written(swapped, 'first')).toStrictEqual(written(two, 'second'));
        expect(written(swapped, 'second')).toStrictEqual(written(two, 'first'));
        expect(swap(swapped)).toStrictEqual(two);
      }),
    );
  });

  test('there is nothing to swap with where there is none', () => {
    expect(swap(first)).toBe(first);
  });
});

describe('stations and edges changed', () => {
  const chooses = (one: string) => one === 'bend.edge';
  const start: BookState = {
    ...tryAnother(
      freshState(table, {
        'frame3.sheer.x': '1 m',
        'frame2.sheer.x': 'frame3.sheer.x - 0.5 m',
        'bend.edge': 'sheer',
      }),
      { 'frame3.sheer.x': null, 'frame2.sheer.height': 'frame3.sheer.height' },
    ),
    asBuilt: {
      measured: { 'frame3.sheer.height': '300 mm' },
      cut: { frame3: { held: { 'frame3.sheer.x': '1 m' }, numbers: { 'frame3.spacing': 0.5 } } },
    },
    sweeps: {
      bend: {
        result: 'bevels.frame3.chineBevel',
        against: 'frame3.sheer.x',
        from: '',
        to: '2 * frame3.sheer.x',
        lines: 'keelson.width',
        at: '20 mm or frame3.sheer.height',
      },
    },
  };
  const other = { ...table, name: 'other' };

  test('a new name is taken up in both versions, in what is measured and in what is cut', () => {
    expect(reshape(start, { table: other, words: { frame3: 'mould' } }, chooses)).toStrictEqual({
      name: start.name,
      table: other,
      entries: {
        'mould.sheer.x': '1 m',
        'frame2.sheer.x': 'mould.sheer.x - 0.5 m',
        'bend.edge': 'sheer',
      },
      second: { 'mould.sheer.x': null, 'frame2.sheer.height': 'mould.sheer.height' },
      inHand: 'second',
      asBuilt: {
        measured: { 'mould.sheer.height': '300 mm' },
        cut: { mould: { held: { 'mould.sheer.x': '1 m' }, numbers: { 'mould.spacing': 0.5 } } },
      },
      notebooks: start.notebooks,
      log: start.log,
      lessons: start.lessons,
      sweeps: {
        bend: {
          result: 'bevels.mould.chineBevel',
          against: 'mould.sheer.x',
          from: '',
          to: '2 * mould.sheer.x',
          lines: 'keelson.width',
          at: '20 mm or mould.sheer.height',
        },
      },
    });
  });

  test('what goes takes its entries along, and what named it keeps its text', () => {
    const gone = reshape(start, { table: other, words: { frame3: null } }, chooses);
    expect(gone.entries).toStrictEqual({ 'frame2.sheer.x': 'frame3.sheer.x - 0.5 m', 'bend.edge': 'sheer' });
    expect(gone.second).toStrictEqual({ 'frame2.sheer.height': 'frame3.sheer.height' });
    expect(gone.asBuilt).toStrictEqual({ measured: {}, cut: {} });
    expect(gone.sweeps).toStrictEqual(start.sweeps);
  });

  test('entries may be written with the same stroke, into the version in hand', () => {
    const writes = { 'frame2.sheer.x': '2 m' };
    const next = reshape(hold(start, 'first'), { table: other, words: { sheer: 'rail' }, writes }, chooses);
    expect(next.entries).toStrictEqual({
      'frame3.rail.x': '1 m',
      'frame2.rail.x': 'frame3.rail.x - 0.5 m',
      'bend.edge': 'rail',
      'frame2.sheer.x': '2 m',
    });
  });
});

describe('as built', () => {
  const part = fc.constantFrom('keelson', 'scarf', 'frame3');
  const cutPart: fc.Arbitrary<CutPart> = fc.record(
    { held: entries, numbers: fc.dictionary(name, fc.double({ noNaN: true }), { noNullPrototype: true }) },
    { noNullPrototype: true },
  );
  const built: fc.Arbitrary<BookState> = fc
    .tuple(states, changes, fc.array(fc.tuple(part, cutPart), { maxLength: 3 }))
    .map(([state, measured, cut]) =>
      cut.reduce((so, [of, as]) => markCut(so, of, as), measure(state, measured)),
    );
  const runBuilt = <T extends unknown[]>(property: fc.IProperty<T>) =>
    fc.assert(property, { seed: 8, numRuns: 300 });

  test('what is measured holds, then what a part was cut to, then the design', () => {
    const asBuilt: AsBuilt = {
      measured: { 'keelson.thickness': '17 mm' },
      cut: {
        keelson: { held: { 'keelson.thickness': '18 mm', 'keelson.width': '90 mm' }, numbers: {} },
        scarf: { held: { 'bend.radius': '1 m' }, numbers: {} },
      },
    };
    const entries = builtEntries(asBuilt);
    const of = (one: string) => (Object.hasOwn(entries, one) ? entries[one] : undefined);
    expect(of('keelson.thickness')).toBe('17 mm');
    expect(of('keelson.width')).toBe('90 mm');
    expect(of('keelson.timber')).toBeUndefined();
    // A part holds nothing of another.
    expect(of('bend.radius')).toBeUndefined();
    for (const word of ['toString', 'constructor', '__proto__', 'keelson.toString', 'toString.length'])
      expect(of(word)).toBeUndefined();
  });

  test('measuring is what is read afterwards, in both versions, and writes into neither', () => {
    runBuilt(
      fc.property(built, changes, (state, change) => {
        const after = measure(state, change);
        for (const one of names) {
          const expected = one in change ? (change[one] ?? undefined) : state.asBuilt.measured[one];
          expect(after.asBuilt.measured[one]).toBe(expected);
        }
        for (const version of ['first', 'second'] as const)
          expect(written(after, version)).toStrictEqual(written(state, version));
        expect(after.asBuilt.cut).toBe(state.asBuilt.cut);
      }),
    );
  });

  test('measured again as it stands, or not at all, is no change', () => {
    runBuilt(
      fc.property(built, (state) => {
        expect(measure(state, state.asBuilt.measured)).toBe(state);
        expect(measure(state, {})).toBe(state);
        expect(measure(state, { 'never.measured': null })).toBe(state);
        expect(markCut(state, 'neverCut', null)).toBe(state);
      }),
    );
  });

  test('marked and unmarked, all is as before', () => {
    runBuilt(
      fc.property(built, cutPart, fc.constantFrom('18 mm', '2 m'), (state, as, reading) => {
        expect(markCut(markCut(state, 'thwart', as), 'thwart', null)).toStrictEqual(state);
        const once = measure(state, { 'thwart.width': reading });
        expect(once).not.toStrictEqual(state);
        expect(measure(once, { 'thwart.width': null })).toStrictEqual(state);
      }),
    );
  });

  test('stays as it is through edits, versions and swaps', () => {
    runBuilt(
      fc.property(built, changes, (state, change) => {
        const others = [
          write(state, change),
          tryAnother(state, change),
          swap(tryAnother(state, change)),
          keepOnly(tryAnother(state, change), 'second'),
        ];
        for (const other of others) expect(other.asBuilt).toBe(state.asBuilt);
      }),
    );
  });
});
