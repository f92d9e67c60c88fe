/** The mark beside a field that another cell fills. */
import { expect, test } from 'vitest';
import { inBrief } from '../../../src/page/input/brief';

test.each([
  ['Cloth for the sheathing', 'Cloth'],
  ['Screws for the whole skin', 'Screws'],
  ['Screws along an edge', 'Screws'],
  ['Filler for holes and gaps', 'Filler'],
  // Short enough for two lines, or with nothing to leave out.
  ['Bevel of the stem', 'Bevel of the stem'],
  ['Paint and varnish', 'Paint and varnish'],
  ['Transom and motor cut-out', 'Transom and motor cut-out'],
])('“%s” stands beside a field as “%s”', (title, mark) => {
  expect(inBrief(title)).toBe(mark);
});
