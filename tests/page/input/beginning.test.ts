/** Where a note is too long for its place its beginning stands there, and reads as a piece of English; tried on every note there is. */
import { expect, test } from 'vitest';
import { demoBoat } from '../../../src/boat';
import { cells } from '../../../src/cells/all';
import { wholeCatalogue } from '../../../src/notebook/graph/whole-catalogue';
import { beginning } from '../../../src/page/input/beginning';

test.each([
  ['the straight piece under one panel of the skin', 'the straight piece under one panel'],
  ['lines are drawn to 1/32 to 1/16 in (0.8 to 1.6 mm)', 'lines are drawn to 1/32 to 1/16 in'],
  ['than the port rail, measured over the jig’s length', 'than the port rail, measured'],
  ['off the centreline on a level line, + outward', 'off the centreline on a level line'],
  ['short enough', 'short enough'],
])('"%s" begins "%s"', (note, says) => {
  expect(beginning(note)).toBe(says);
});

test('no note of a field is broken off in the middle of a phrase or a bracket', () => {
  const { find, names } = wholeCatalogue(demoBoat);
  const notes = [
    ...cells.flatMap(({ inputs }) => Object.values(inputs).map(({ note }) => note)),
    ...names()
      .map((name) => find(name))
      .flatMap((one) => (one && 'note' in one ? [one.note] : [])),
  ].filter((note) => typeof note === 'string');
  expect(notes.length).toBeGreaterThan(400);
  const begun = notes.filter((note) => beginning(note) !== note).map(beginning);
  expect(begun.length).toBeGreaterThan(100);
  // No ending of an article, a joining word, a preposition or an owner.
  const open = / (the|a|an|of|and|or|than|that|which|under|between|until|its|their|\S+’s|[+−])$/;
  expect(begun.filter((one) => open.test(one))).toStrictEqual([]);
  expect(begun.filter((one) => one.split('(').length !== one.split(')').length)).toStrictEqual([]);
  expect(begun.filter((one) => one.trim().length < 8)).toStrictEqual([]);
});
