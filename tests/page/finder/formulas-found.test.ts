/** The builder's own formulas, found by what their lines are. */
import { expect, test } from 'vitest';
import { formulaBlocks } from '../../../src/notebook/formulas/formula-quantities';
import { parseNotebook } from '../../../src/notebook/markdown';
import { thingsIn } from '../../../src/page/finder/things';

test('each line is found by what it is, where its block stands; one that can’t be used is not', () => {
  const text =
    '---\ntitle: Keel day\n---\n\n```formula keelDay\nwidth = 3 mm | breadth of the strip\nbad line\n```\n';
  const page = parseNotebook(text, 'keel-day');
  const blocks = formulaBlocks(
    [
      { name: 'keelDay', text: page.formulas![0]!.text }, // it has one
      { name: 'mine', text: 'half = 1 m' },
    ],
    () => undefined,
  );
  const things = thingsIn([page], new Map(), [], new Map(blocks.map((block) => [block.name, block])));
  const found = things.filter(({ kind }) => kind === 'answer');
  expect(found.map(({ title, notebook, place, where }) => [title, notebook, place, where])).toStrictEqual([
    ['Breadth of the strip', 'keel-day', 'keelDay.width', 'keel day · Keel day'],
    ['Half', null, 'mine.half', 'A formula of your own'],
  ]);
  expect(things.some(({ place }) => place === 'mine')).toBe(true);
});
