import { describe, expect, test } from 'vitest';
import { demoBoat } from '../../../src/boat';
import { createBook } from '../../../src/notebook/book';
import { looseCatalogue } from '../../../src/notebook/graph/loose-catalogue';
import { readSaved } from '../../../src/notebook/keeping/read-saved';
import { isUnusable, writeSaved } from '../../../src/notebook/keeping/saved-text';
import { nextEntry, writeEntry } from '../../../src/notebook/log/write-entry';
import { freshState, keepOnly, tryAnother } from '../../../src/notebook/state/state';
import { entry } from './entries';

const bare = freshState(demoBoat, { 'scarf.slope': '8' });
const one = writeEntry(bare, 'e1', entry({ note: 'Planed the scarfs.' }));

describe('an entry in the log', () => {
  test('is written, written over and taken out, and nothing else of the boat moves', () => {
    expect(one).toStrictEqual({ ...bare, log: { e1: entry({ note: 'Planed the scarfs.' }) } });
    expect(bare.log).toStrictEqual({});
    const two = writeEntry(one, 'e2', entry({ hours: '3' }));
    expect(Object.keys(two.log)).toStrictEqual(['e1', 'e2']);
    expect(writeEntry(two, 'e2', entry({ hours: '4' })).log['e2']).toStrictEqual(entry({ hours: '4' }));
    expect(writeEntry(two, 'e1', null).log).toStrictEqual({ e2: entry({ hours: '3' }) });
  });

  test('that stands there already is no change, and so no step', () => {
    expect(writeEntry(one, 'e1', entry({ note: 'Planed the scarfs.' }))).toBe(one);
    expect(writeEntry(one, 'e7', null)).toBe(one);
  });

  test('takes the number after the last', () => {
    expect(nextEntry({})).toBe('e1');
    expect(nextEntry({ e2: entry(), e10: entry() })).toBe('e11');
  });

  test('is of both versions: there is one boat in the shed', () => {
    const two = writeEntry(tryAnother(bare, { 'scarf.slope': '10' }), 'e1', entry({ hours: '2' }));
    expect(keepOnly(two, 'first').log).toStrictEqual({ e1: entry({ hours: '2' }) });
    expect(keepOnly(two, 'second').log).toStrictEqual({ e1: entry({ hours: '2' }) });
  });
});

test('letters of one field are one step of Undo, which is kept with the boat and leads back when she is opened again', () => {
  const book = createBook(bare, () => looseCatalogue([]));
  book.open(writeEntry(book.state.value, 'e1', entry()));
  for (const note of ['P', 'Pl', 'Planed'])
    book.open(writeEntry(book.state.value, 'e1', entry({ note })), 'log e1 note');
  book.settle();
  const read = readSaved(writeSaved({ ...book.kept(), revision: 1 }));
  if (isUnusable(read)) throw new Error(read.because);
  const again = createBook(freshState(demoBoat), () => looseCatalogue([]));
  again.take(read);
  const log = () => again.state.value.log;
  expect(log()).toStrictEqual({ e1: entry({ note: 'Planed' }) });
  again.undo();
  expect(log()).toStrictEqual({ e1: entry() });
  again.undo();
  expect([log(), again.canUndo.value]).toStrictEqual([{}, false]);
  again.redo();
  again.redo();
  expect(log()).toStrictEqual({ e1: entry({ note: 'Planed' }) });
});

test('a boat saved before there was a log opens with an empty one', () => {
  const { log: _, ...before } = JSON.parse(
    writeSaved({ state: bare, earlier: [], later: [], revision: 1 }),
  ) as Record<string, unknown>;
  const read = readSaved(JSON.stringify(before));
  expect(isUnusable(read) ? read.because : read.state).toStrictEqual(bare);
});
