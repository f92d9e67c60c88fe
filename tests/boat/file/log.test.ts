/** The log in the boat file: it goes out and comes back as it was, and a stranger's does nothing. */
import { expect, test } from 'vitest';
import { type Boat, demoBoat, isUnread, readBoatFile, tooMuch, writeBoatFile } from '../../../src/boat';
import { LONGEST_LOG, MOST_IN_LOG } from '../../../src/boat/file/log';
import { entry } from '../../notebook/log/entries';

const boat: Boat = { name: 'Mine', table: demoBoat, entries: {} };
const opened = (text: string): Boat => {
  const read = readBoatFile(text);
  if (isUnread(read)) throw new Error(read.faults.join('; '));
  return read;
};
const withLog = (log: unknown) =>
  readBoatFile(JSON.stringify({ ...(JSON.parse(writeBoatFile(boat)) as object), log }));

test('what is written reads back the same, hostile or not', () => {
  const log = {
    e1: entry({
      day: '28 Nov 2026',
      cell: 'scarf',
      hours: '2.5',
      money: '12',
      measured: 'gap 3 mm',
      note: 'a\nb',
    }),
    e2: entry({ day: '31 Feb', hours: '=1+1', note: '<img src=x onerror=alert(1)>', cell: '__proto__' }),
  };
  expect(opened(writeBoatFile({ ...boat, log })).log).toStrictEqual(log);
});

test('a boat without entries has no log in her file, and a file of before opens', () => {
  expect(writeBoatFile({ ...boat, log: {} })).toBe(writeBoatFile(boat));
  expect(opened(writeBoatFile(boat))).not.toHaveProperty('log');
});

test('what an entry leaves out is empty', () => {
  const read = withLog({ e1: { note: 'Planed.' } });
  expect(isUnread(read) ? read.faults : read.log).toStrictEqual({ e1: entry({ note: 'Planed.' }) });
});

const many = Object.fromEntries(Array.from({ length: MOST_IN_LOG + 1 }, (_, at) => [`e${at + 1}`, {}]));
test.each([
  ['no object', 7, 'log must be an object'],
  ['an entry no object', { e1: 'x' }, 'log: e1 must be an entry'],
  ['hours a number', { e1: { hours: 3 } }, 'log: e1: hours must be a text'],
  ['no name of an entry', { note: {} }, 'log: note is not the name of an entry'],
  ['too many', many, `log must hold at most ${MOST_IN_LOG} entries`],
  [
    'too long',
    { e1: { note: 'x'.repeat(LONGEST_LOG + 1) } },
    `log must be at most ${LONGEST_LOG} letters long together`,
  ],
])('is refused with %s', (_, log, says) => {
  const read = withLog(log);
  expect(isUnread(read) ? read.faults : []).toStrictEqual([says]);
});

test('names of the language are no entries', () => {
  const text = writeBoatFile({ ...boat, log: { e1: entry() } }).replace('"e1":', '"__proto__":');
  const read = readBoatFile(text);
  expect(isUnread(read) ? [] : Object.keys(read.log ?? {})).toStrictEqual([]);
  expect(entry()).not.toHaveProperty('polluted');
});

test('exactly as much as is allowed is kept', () => {
  expect(tooMuch({ e1: entry({ note: 'x'.repeat(LONGEST_LOG) }) })).toBeNull();
  expect(tooMuch({ e1: entry({ note: 'x'.repeat(LONGEST_LOG), hours: '1' }) })).not.toBeNull();
});
