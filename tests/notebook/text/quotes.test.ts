/** Quotes of prose, as printed English sets them: common practice, no source. */
import { expect, test } from 'vitest';
import { parseNotebook } from '../../../src/notebook/markdown';
import { wordsOf } from '../../../src/notebook/text/page-text';
import { curled } from '../../../src/notebook/text/quotes';

test.each([
  ["the plan's numbers can't move", 'the plan’s numbers can’t move'],
  ["the frames' sides", 'the frames’ sides'],
  ['she says: "Saw it down." Then', 'she says: “Saw it down.” Then'],
  ["he calls it ('the whale') and 'tis so", 'he calls it (‘the whale’) and ’tis so'],
  ["'tis cut", '’tis cut'],
  ['"Lay it on 12"', '“Lay it on 12”'],
  ["1970's wood", '1970’s wood'],
  ['Why a scarf is 1 in 8', 'Why a scarf is 1\u00a0in\u00a08'],
  ['put 1 in each of 8', 'put 1 in each of 8'],
])('%s', (typed, set) => {
  expect(curled(typed)).toBe(set);
  expect(curled(set)).toBe(set); // once is enough
});

test.each([['5\' 3 1/2" long'], ['a 3/4" board and a 1½" log'], ["8' boards"]])(
  '%s: feet and inches stay',
  (typed) => {
    expect(curled(typed)).toBe(typed);
  },
);

const inside = (text: string): string =>
  parseNotebook(text, 'a-page.md')
    .blocks.map((block) => ('inside' in block ? wordsOf(block.inside) : ''))
    .join('');

test('a mark, a link or code between them changes nothing', () => {
  expect(inside(`a "*long*" plank, *"so"*, the "[boat](#boat)'s"`)).toBe(
    'a “long” plank, “so”, the “boat’s”',
  );
});

test('code, what is escaped and raw text stay as typed; title, summary and headings are set', () => {
  const page = parseNotebook(
    `---\ntitle: The plan's\nsummary: What can't be\n---\n\n## Who's who\n\n\`it's\` \\'so\\'\n\n\`\`\`\nit's\n\`\`\`\n`,
    'a-page.md',
  );
  expect([page.title, page.summary, page.headings]).toStrictEqual([
    'The plan’s',
    'What can’t be',
    [{ id: 'whos-who', text: 'Who’s who' }],
  ]);
  expect(JSON.stringify(page.blocks.slice(1))).toMatch(/"it's".*'so'.*it's/);
});
