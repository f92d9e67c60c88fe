/** What was said to questions, in the boat file and in the browser: it goes out and comes back, and a stranger's does nothing. */
import { expect, test } from 'vitest';
import { type Boat, demoBoat, isUnread, nothingSaid, readBoatFile, writeBoatFile } from '../../../src/boat';
import { readSaved } from '../../../src/notebook/keeping/read-saved';
import { isUnusable, writeSaved } from '../../../src/notebook/keeping/saved-text';
import { saidIn, writeSaid, writeSeed } from '../../../src/notebook/lesson/write-lesson';
import { freshState } from '../../../src/notebook/state/state';

const boat: Boat = { name: 'Mine', table: demoBoat, entries: {} };
const withLessons = (lessons: unknown) =>
  readBoatFile(JSON.stringify({ ...(JSON.parse(writeBoatFile(boat)) as object), lessons }));
const start = freshState(demoBoat);

test('what is said reads back the same from the file and from the browser, hostile or not', () => {
  const said = {
    ...nothingSaid,
    draft: '<img src=x onerror=alert(1)>',
    guesses: ['__proto__', '12'],
    steps: { 0: '=1+1' },
  };
  const state = writeSeed(writeSaid(start, 'why', 'a', said), 'why', 'Anna');
  const read = readBoatFile(writeBoatFile({ ...boat, lessons: state.lessons }));
  expect(isUnread(read) ? read.faults : read.lessons).toStrictEqual(state.lessons);
  const kept = readSaved(writeSaved({ state, earlier: [], later: [], revision: 1 }));
  expect(isUnusable(kept) ? kept.because : kept.state.lessons).toStrictEqual(state.lessons);
});

test('where nothing is said the file has none, and what is taken back leaves none', () => {
  expect(writeBoatFile({ ...boat, lessons: {} })).toBe(writeBoatFile(boat));
  const state = writeSaid(writeSaid(start, 'why', 'a', { draft: '1' }), 'why', 'a', null);
  expect(state.lessons).toStrictEqual({});
  expect(saidIn(start, 'constructor', 'toString')).toStrictEqual(nothingSaid);
});

test('what stands there already is no change', () => {
  const state = writeSaid(start, 'why', 'a', { draft: '1' });
  expect(writeSaid(state, 'why', 'a', { draft: '1' })).toBe(state);
  expect(writeSeed(state, 'why', '')).toBe(state);
  expect(writeSaid(start, 'why', 'a', null)).toBe(start);
});

test.each([
  ['text', /must be an object/],
  [{ 'a b': { said: {} } }, /name of a notebook/],
  [{ why: { said: { 'A b': {} } } }, /name of a question/],
  [{ why: { said: { a: { guesses: 'many' } } } }, /must be a list/],
  [{ why: { said: { a: { sentence: 'x'.repeat(1001) } } } }, /1000 letters/],
  [
    {
      why: {
        said: Object.fromEntries(
          Array.from({ length: 300 }, (_, at) => [`a${at}`, { sentence: 'x'.repeat(1000) }]),
        ),
      },
    },
    /200000 letters/,
  ],
])('a stranger’s file is told what is wrong', (lessons, says) => {
  const read = withLessons(lessons);
  expect(isUnread(read) ? read.faults.join() : 'read').toMatch(says);
});

test('a kept boat is worth more than what was said to a question', () => {
  const text = writeSaved({ state: start, earlier: [], later: [], revision: 1 });
  const kept = readSaved(text.replace('"lessons":{}', '"lessons":{"a b":3}'));
  expect(isUnusable(kept) ? kept.because : kept.state.lessons).toStrictEqual({});
});
