/** What is written into a notebook while another sheet lies on the bench: Undo takes it back, and nothing else, in its order. */
import { signal } from '@preact/signals';
import { expect, test } from 'vitest';
import { demoBoat } from '../../../src/boat';
import { type BookState, freshState, noBoat, writeNotebook } from '../../../src/notebook';
import { createBook } from '../../../src/notebook/book';
import { looseCatalogue } from '../../../src/notebook/graph/loose-catalogue';
import type { Bench, Resting } from '../../../src/page/bench';
import { amendBoat } from '../../../src/page/notebooks/amend';

/** A sheet without a boat on the bench, and the builder's boat at rest: each time she is read anew, as from a shelf. */
function laid() {
  const book = createBook(freshState(noBoat), () => looseCatalogue([]));
  let kept: BookState = freshState(demoBoat);
  const resting = signal<Resting | null>({ boat: 'boat', notebooks: kept.notebooks });
  const keeping = {
    amend: (_: string, change: (state: BookState) => BookState) => {
      kept = structuredClone(change(structuredClone(kept)));
      return kept;
    },
  };
  const bench = {
    book,
    keeping,
    resting,
    ownBoat: signal('boat'),
    sheet: signal({ kind: 'loose', key: 'sheet', notebook: 'a', boat: null }),
    ownNotebooks: { peek: () => resting.peek()?.notebooks ?? null },
  } as unknown as Bench; // what writing asks for
  const write = (text: string, run?: string) =>
    amendBoat(bench, (state) => writeNotebook(state, 'a', text), run);
  const renamed = (name: string) => book.rename(name);
  return { book, write, rename: renamed, text: () => kept.notebooks['a']?.text ?? null };
}

test('Undo takes back what was written, and what was done on the bench before and after it, each in its turn', () => {
  const { book, write, rename, text } = laid();
  rename('before');
  write('one');
  write('two');
  rename('after');
  expect(book.state.peek().name).toBe('after');
  book.undo();
  expect([book.state.peek().name, text()]).toStrictEqual(['before', 'two']);
  book.undo();
  expect([book.state.peek().name, text()]).toStrictEqual(['before', 'one']);
  book.undo();
  expect([book.state.peek().name, text()]).toStrictEqual(['before', null]);
  book.undo();
  expect(book.state.peek().name).not.toBe('before');
  expect(book.canUndo.value).toBe(false);
  book.redo();
  book.redo();
  book.redo();
  expect([book.state.peek().name, text()]).toStrictEqual(['before', 'two']);
  book.redo();
  expect([book.state.peek().name, text()]).toStrictEqual(['after', 'two']);
});

test('what is typed in one go is one step', () => {
  const { book, write, text } = laid();
  write('a', 'run 1');
  write('ab', 'run 1');
  write('abc', 'run 1');
  write('abc d', 'run 2');
  book.undo();
  expect(text()).toBe('abc');
  book.undo();
  expect(text()).toBeNull();
  expect(book.canUndo.value).toBe(false);
  expect(book.canRedo.value).toBe(true);
});

test('what is written anew leaves nothing to redo', () => {
  const { book, write, text } = laid();
  write('one');
  book.undo();
  write('other');
  expect(book.canRedo.value).toBe(false);
  book.undo();
  expect(text()).toBeNull();
});
