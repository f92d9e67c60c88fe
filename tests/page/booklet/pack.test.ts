/** Pieces on pages: all of them, in their order, none over the edge that could stand on a page, no heading left behind. */
import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { packed } from '../../../src/page/booklet/pack';

const text = (height: number) => ({ height, heads: false });
const heading = (height: number) => ({ height, heads: true });

test.each([
  [[], []],
  [[text(40), text(60)], [[0, 1]]],
  [
    [text(40), text(61)],
    [[0], [1]],
  ],
  // A heading goes over with what it heads, and two headings with what they both head.
  [
    [text(70), heading(20), text(20)],
    [[0], [1, 2]],
  ],
  [
    [text(50), heading(20), heading(20), text(20), text(40)],
    [[0], [1, 2, 3, 4]],
  ],
  // One that nothing follows stands where it comes.
  [[text(40), heading(20)], [[0, 1]]],
  // What is higher than any page has one to itself.
  [
    [text(10), text(300), text(10)],
    [[0], [1], [2]],
  ],
])('case %#', (pieces, pages) => {
  expect(packed(pieces, 100)).toStrictEqual(pages);
});

test('any pieces', () => {
  const piece = fc.record({ height: fc.integer({ min: 1, max: 60 }), heads: fc.boolean() });
  fc.assert(
    fc.property(fc.array(piece, { maxLength: 40 }), (pieces) => {
      const pages = packed(pieces, 100);
      expect(pages.flat()).toStrictEqual(pieces.map((_, at) => at));
      for (const page of pages) {
        const last = page.at(-1)!;
        expect(!pieces[last]!.heads || last === pieces.length - 1).toBe(true);
        // Over the edge goes only a run of headings that is higher than a page by itself.
        const high = page.reduce((sum, at) => sum + pieces[at]!.height, 0);
        expect(high <= 100 || page.slice(0, -1).every((at) => pieces[at]!.heads)).toBe(true);
      }
      // Taken greedily: the first run of a page had no room on the page before.
      for (const [n, page] of pages.entries()) {
        if (n === 0) continue;
        const before = pages[n - 1]!.reduce((sum, at) => sum + pieces[at]!.height, 0);
        const end = page.findIndex((at) => !pieces[at]!.heads);
        const run = page
          .slice(0, end < 0 ? page.length : end + 1)
          .reduce((sum, at) => sum + pieces[at]!.height, 0);
        expect(before + run).toBeGreaterThan(100);
      }
    }),
    { seed: 9, numRuns: 200 },
  );
});
