/** The page looks through the veil: but for those who ask, judge and keep, nobody reaches for the bench without it. */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

const page = new URL('../../src/page/', import.meta.url);
const files = readdirSync(page, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.ts'));
const text = (name: string) => readFileSync(new URL(name.replaceAll('\\', '/'), page), 'utf8');

test('who looks at what is covered', () => {
  const bare = files.filter((name) => /\bbareOf\(|\.bare\b/.test(text(name)));
  expect(bare.toSorted()).toStrictEqual([
    'as-built/cut-mark.ts', // a cut part keeps its numbers, whoever may see them
    'ask/ask-view.ts',
    'ask/collect.ts',
    'ask/guess.ts',
    'ask/seed-view.ts',
    'ask/steps.ts',
    'ask/worksheets.ts',
    'bare.ts',
  ]);
});

test('all that is seen is given the covered bench', () => {
  const providers = files.filter((name) => /BenchContext\.Provider/.test(text(name)));
  expect(text('app.ts')).toContain('bench.asked.value?.bench ?? bench');
  // Each of these lays something over the bench that it was given.
  expect(providers.toSorted()).toStrictEqual([
    'app.ts',
    'ask/worksheet.ts',
    'at-bench/at-bench.ts',
    'blocks/paragraph.ts',
    'blocks/said-when.ts',
    'booklet/pieces.ts',
    'cell/cell-view.ts',
    'finder/open.ts', // opened by a key from outside; it lists names and no numbers
    'log/print-log.ts',
  ]);
  expect(text('finder/finder.ts') + text('finder/things.ts')).not.toMatch(/\.(?:value|peek)\(/);
});
