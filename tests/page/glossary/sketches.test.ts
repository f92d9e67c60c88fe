/** The small drawings of words: each that is asked for is there, is asked for, and can be read. */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { collisions, setOut } from '../../../src/drawing';
import { plainShown, writeInPicture } from '../../../src/measure';
import { parseNotebook } from '../../../src/notebook/markdown';
import { sketches } from '../../../src/page/glossary/sketches';

const text = readFileSync(new URL('../../../notebooks/words.md', import.meta.url), 'utf8');
const asked = parseNotebook(text, 'words.md').blocks.flatMap((block) =>
  block.type === 'sketch' ? [block.of] : [],
);

test('those that stand in the notebook of words are there, and the others are not', () => {
  expect([...new Set(asked)].toSorted()).toStrictEqual(Object.keys(sketches).toSorted());
  expect(asked.length).toBeGreaterThanOrEqual(20);
});

test.each(Object.entries(sketches))('%s is drawn, named, and written on without collision', (_, draw) => {
  const drawing = draw((value, kind, options) => writeInPicture(value, kind, plainShown, options));
  expect(drawing.says).toMatch(/^[A-Z].{20,}[.]$/);
  const sheet = setOut(drawing, { width: 310, maxHeight: 190, bar: false, caption: false });
  expect(collisions(sheet)).toStrictEqual([]);
  expect(sheet.marks.filter(({ kind }) => kind === 'path').length).toBeGreaterThan(1);
  expect(sheet.height).toBeLessThan(300);
});
