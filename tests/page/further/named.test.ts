/** What can be drawn or worked backwards is offered by what it is: each by a name of its own that reads as a whole, in every cell. */
import { expect, test } from 'vitest';
import { demoBoat } from '../../../src/boat';
import { cells } from '../../../src/cells/all';
import { plainInstance } from '../../../src/cells';
import { plainShown, upToComma } from '../../../src/measure';
import { createGraph } from '../../../src/notebook/graph/graph';
import { wholeCatalogue } from '../../../src/notebook/graph/whole-catalogue';
import { resultsOf } from '../../../src/page/further/named';

const graph = createGraph({
  catalogue: () => wholeCatalogue(demoBoat),
  entries: () => ({}),
  shown: plainShown,
});

test.each(cells.map((cell) => [cell.id, cell] as const))('%s', (_, cell) => {
  const labels = resultsOf(plainInstance(cell), graph).flatMap(({ of }) => of.map(({ label }) => label));
  expect(
    labels.filter((label) => / (the|a|an|of|and|or|than|which)$/i.test(label) || /^\S?$/.test(label)),
  ).toStrictEqual([]);
  expect(new Set(labels).size).toBe(labels.length);
});

test('what a number is goes up to its first comma, or to the next where the first breaks a phrase', () => {
  expect(upToComma('taper of the scarf, along the board')).toBe('taper of the scarf');
  expect(upToComma('or, where the stem is on the string: port corner')).toBe(
    'or, where the stem is on the string',
  );
  expect(upToComma('1 where it stays within 7° and, decked, leaves 75 mm')).toBe(
    '1 where it stays within 7° and, decked',
  );
  expect(upToComma('height (above the base)')).toBe('height');
  expect(upToComma('')).toBe('');
});
