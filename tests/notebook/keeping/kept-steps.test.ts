/** Steps kept with a boat: undo and redo go on where they ended, however often the page is closed between. */
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demoBoat, type Table } from '../../../src/boat';
import { addStation } from '../../../src/boat/table/table-edits';
import { type Book, createBook } from '../../../src/notebook/book';
import { changedBy } from '../../../src/notebook/state/changed-by';
import { type Difference, difference } from '../../../src/notebook/state/difference';
import { looseCatalogue } from '../../../src/notebook/graph/loose-catalogue';
import { readSaved, stepFrom } from '../../../src/notebook/keeping/read-saved';
import { isUnusable, stepBetween, stepOn, writeSaved } from '../../../src/notebook/keeping/saved-text';
import { type BookState, freshState, noBoat, writeNotebook } from '../../../src/notebook/state/state';

const bookOf = (state: BookState): Book => createBook(state, () => looseCatalogue([]));

/** As the page does it: saved, closed, and opened again. */
function closedAndOpened(book: Book): Book {
  const read = readSaved(writeSaved({ ...book.kept(), revision: 1 }));
  if (isUnusable(read)) throw new Error(read.because);
  const opened = bookOf(freshState(noBoat));
  opened.take(read);
  return opened;
}

/** The present and all before it, latest first. */
function allTheWayBack(book: Book): BookState[] {
  const states = [book.state.value];
  while (book.canUndo.value) {
    book.undo();
    states.push(book.state.value);
  }
  return states;
}

describe('the difference between two objects', () => {
  const value = fc.letrec((tie) => ({
    any: fc.oneof(
      { maxDepth: 4 },
      fc.constantFrom<unknown>(null, 0, 1, '', 'x', true),
      tie('list'),
      tie('object'),
    ),
    list: fc.array(tie('any'), { maxLength: 3 }),
    object: fc.dictionary(fc.constantFrom('a', 'b', 'c', 'length', '0'), tie('any'), {
      noNullPrototype: true,
    }),
  }));
  const { object } = value;

  test('turns the one into the other, also after being written and read', () => {
    fc.assert(
      fc.property(object, object, (from, to) => {
        const by = difference(from, to);
        expect(changedBy(from, by)).toStrictEqual(to);
        expect(changedBy(from, JSON.parse(JSON.stringify(by)) as typeof by)).toStrictEqual(to);
        expect(difference(from, from)).toStrictEqual({});
      }),
      { seed: 3, numRuns: 1000 },
    );
  });

  test('of a long text is what comes in its place, to the letter', () => {
    const long = 'A taper of one in eight.\n'.repeat(100);
    const letters = fc.string({ unit: 'grapheme', maxLength: 9 });
    fc.assert(
      fc.property(fc.nat(long.length), fc.nat(long.length), letters, (a, b, put) => {
        const [at, until] = [Math.min(a, b), Math.max(a, b)];
        const [from, to] = [{ text: long }, { text: long.slice(0, at) + put + long.slice(until) }];
        for (const [one, other] of [
          [from, to],
          [to, from],
        ] as const) {
          const by = difference(one, other);
          expect(changedBy(one, JSON.parse(JSON.stringify(by)) as typeof by)).toStrictEqual(other);
        }
        expect(JSON.stringify(difference(from, to)).length).toBeLessThan(put.length * 6 + 40);
      }),
      { seed: 4, numRuns: 500 },
    );
  });

  test.each([[{ text: [1, 2] }], [{ text: ['1', 2, 'x'] }], [{ text: [1, 2, 3] }], [{ other: [1, 2, 'x'] }]])(
    '%j is no change of a text, and changes nothing',
    (by) => {
      expect(changedBy({ text: 'abc' }, by as unknown as Difference)).toStrictEqual({ text: 'abc' });
    },
  );

  test('is as short as the change', () => {
    const from = { entries: { a: '1', b: '2' }, second: null, rest: { deep: { deeper: 1, other: 2 } } };
    const to = { entries: { b: '3', c: '4' }, second: {}, rest: { deep: { deeper: 1, other: 5 } } };
    expect(difference(from, to)).toStrictEqual({
      entries: { a: [], b: ['3'], c: ['4'] },
      second: [{}],
      rest: { deep: { other: [5] } },
    });
  });
});

describe('after the page is closed and opened again', () => {
  const name = fc.constantFrom('keelson.thickness', 'side.plywood', 'frame1.keel.x');
  const act = fc.oneof(
    fc.record({ do: fc.constant('write' as const), name, text: fc.option(fc.string({ maxLength: 5 })) }),
    fc.record({ do: fc.constant('measure' as const), name, text: fc.option(fc.string({ maxLength: 5 })) }),
    fc.record({ do: fc.constant('cut' as const), part: fc.constantFrom('side', 'frame1'), is: fc.boolean() }),
    fc.record({ do: fc.constantFrom('tryAnother', 'swap', 'undo', 'redo', 'station', 'close', 'close') }),
    fc.record({ do: fc.constantFrom('first' as const, 'second' as const) }),
    fc.record({ do: fc.constant('rename' as const), text: fc.string({ maxLength: 5 }) }),
    fc.record({
      do: fc.constant('notebook' as const),
      id: fc.constantFrom('keel-day', 'the-build'),
      words: fc.option(fc.string({ maxLength: 5 }).map((start) => start + 'Words.\n'.repeat(200))),
    }),
    fc.record({ do: fc.constant('away' as const), id: fc.constantFrom('keel-day', 'x'), is: fc.boolean() }),
  );

  test('whatever was done, undo and redo go where they would have gone', () => {
    fc.assert(
      fc.property(fc.array(act, { maxLength: 30 }), (acts) => {
        const whole = bookOf(freshState(demoBoat));
        let closed = bookOf(freshState(demoBoat));
        const both = (by: (book: Book) => void) => [whole, closed].forEach(by);
        for (const one of acts) {
          if (one.do === 'close') closed = closedAndOpened(closed);
          else
            both((book) => {
              if (one.do === 'write' && 'text' in one) book.write({ [one.name]: one.text });
              else if (one.do === 'measure' && 'text' in one) book.measure({ [one.name]: one.text });
              else if (one.do === 'cut' && 'part' in one)
                book.markCut(
                  one.part,
                  one.is ? { held: { [`${one.part}.x`]: '1 m' }, numbers: { a: 1.5 } } : null,
                );
              else if (one.do === 'rename' && 'text' in one) book.rename(one.text);
              else if (one.do === 'notebook' && 'words' in one) book.writeNotebook(one.id, one.words);
              else if (one.do === 'away' && 'id' in one && 'is' in one) book.putNotebookAway(one.id, one.is);
              else if (one.do === 'first' || one.do === 'second') book.hold(one.do);
              else if (one.do === 'station') {
                const { table } = book.state.value;
                if (table.stations.length < 12)
                  book.reshape(addStation(table, 1, `f${table.stations.length}`, null));
              } else if (one.do === 'tryAnother') book.tryAnother();
              else if (one.do === 'swap') book.swap();
              else if (one.do === 'undo') book.undo();
              else if (one.do === 'redo') book.redo();
            });
          expect(closed.state.value).toEqual(whole.state.value);
          expect([closed.canUndo.value, closed.canRedo.value]).toStrictEqual([
            whole.canUndo.value,
            whole.canRedo.value,
          ]);
        }
        closed = closedAndOpened(closed);
        const redone = bookOf(freshState(demoBoat));
        redone.take(closed.kept());
        while (whole.canRedo.value) {
          whole.redo();
          redone.redo();
          expect(redone.state.value).toEqual(whole.state.value);
        }
        expect(redone.canRedo.value).toBe(false);
        expect(allTheWayBack(redone)).toEqual(allTheWayBack(whole));
      }),
      { seed: 8, numRuns: 150 },
    );
  });

  test('two hundred steps and more lead back, and the oldest give way in the end', () => {
    const book = bookOf(freshState(demoBoat));
    for (let n = 1; n <= 400; n += 1) book.write({ 'keelson.thickness': `${n} mm` });
    const back = allTheWayBack(closedAndOpened(book)).map(({ entries }) => entries['keelson.thickness']);
    expect(back.length - 1).toBeGreaterThanOrEqual(200);
    expect(back).toStrictEqual(back.map((_, at) => `${400 - at} mm`));
  });

  test('a step undone is there to be redone; an edit gives it up', () => {
    const book = bookOf(freshState(demoBoat));
    for (const text of ['1 mm', '2 mm', '3 mm']) book.write({ 'keelson.thickness': text });
    book.undo();
    book.undo();
    const again = closedAndOpened(book);
    again.redo();
    expect(again.state.value.entries).toStrictEqual({ 'keelson.thickness': '2 mm' });
    const other = closedAndOpened(book);
    other.write({ 'side.thickness': '5 mm' });
    expect(other.canRedo.value).toBe(false);
    expect(closedAndOpened(other).canRedo.value).toBe(false);
  });

  test('a table that no step changed stays the same one, so that nothing is worked out anew', () => {
    const book = bookOf(freshState(demoBoat));
    book.write({ 'keelson.thickness': '20 mm' });
    const again = closedAndOpened(book);
    const { table } = again.state.value;
    again.undo();
    expect(again.state.value.table).toBe(table);
    expect(again.state.value.entries).toStrictEqual({});
  });

  test('a step that leads nowhere ends the way back, and the boat stays', () => {
    const book = bookOf(freshState(demoBoat, { 'keelson.thickness': '20 mm' }));
    const { state } = book.kept();
    book.take({
      state,
      earlier: [stepBetween(state, freshState(demoBoat)), { entries: { a: [7] } }],
      later: [],
    });
    expect(book.canUndo.value).toBe(true);
    book.undo();
    expect(book.state.value).toBe(state);
    expect(book.canUndo.value).toBe(false);
  });

  test.each<Difference>([
    { table: [7] },
    { second: ['no'] },
    { asBuilt: { cut: { side: [{}] } } },
    { entries: [] },
  ])('%j leads nowhere', (step) => {
    expect(stepFrom(freshState(demoBoat), step)).toBeNull();
  });
});

test('a boat with three hundred steps takes a small part of what a browser keeps', () => {
  // Browsers keep five million letters for a site; twenty such boats are to have room in half of it.
  const table: Table = demoBoat;
  const entries = Object.fromEntries(
    Array.from({ length: 300 }, (_, n) => [`frame${n}.sheer.halfBreadth`, '712.5 mm']),
  );
  const book = bookOf(freshState(table, entries));
  const numbers = Object.fromEntries(
    Array.from({ length: 60 }, (_, n) => [`bevels.frame3.number${n}`, 0.123456789]),
  );
  for (let n = 0; n < 300; n += 1) {
    if (n % 30 === 0) book.markCut(`frame${n / 30}`, { held: { 'frame3.sheer.x': '1 m' }, numbers });
    else book.write({ [`frame${n}.sheer.halfBreadth`]: `${n} mm` });
  }
  expect(book.kept().earlier).toHaveLength(300);
  expect(writeSaved({ ...book.kept(), revision: 1 }).length).toBeLessThan(125_000);
});

test('three hundred keystrokes in a long notebook take little more than the notebook', () => {
  const book = bookOf(freshState(demoBoat));
  const long = 'Mark the taper on the board, square across.\n'.repeat(700);
  book.writeNotebook('keel-day', long);
  for (let n = 1; n < 300; n += 1)
    book.writeNotebook('keel-day', `${long.slice(0, 9000)}${n}${long.slice(9000)}`);
  const saved = writeSaved({ ...book.kept(), revision: 1 });
  expect(book.kept().earlier).toHaveLength(300);
  expect(saved.length).toBeLessThan(long.length * 1.1 + 30_000);
  const back = allTheWayBack(closedAndOpened(book));
  expect(back.at(-1)?.notebooks).toStrictEqual({});
  expect(back.at(-2)?.notebooks).toStrictEqual({ 'keel-day': { text: long, away: false } });
});

test('a boat that is not on the bench takes a step that can be undone when she is', () => {
  const book = bookOf(freshState(demoBoat));
  book.write({ 'keelson.thickness': '20 mm' });
  const kept = book.kept();
  const other = stepOn(kept, writeNotebook(kept.state, 'keel-day', '# Keel day'));
  book.take(other);
  expect(book.state.value.notebooks).toStrictEqual({ 'keel-day': { text: '# Keel day', away: false } });
  book.undo();
  expect(book.state.value).toEqual(kept.state);
  book.undo();
  expect(book.state.value.entries).toStrictEqual({});
  expect(stepOn(kept, kept.state)).toBe(kept);
});
