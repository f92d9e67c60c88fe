/**
 * How much script a reader waits for, compressed as servers send it (brotli, best quality),
 * in thousands of bytes. The budgets are the design's: the first answer within 80, its graphs
 * within 180.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { brotliCompressSync } from 'node:zlib';
import { expect, inject, test } from 'vitest';
import { inRoot } from '../tools/root.mjs';

interface Chunk {
  readonly file: string;
  readonly isEntry?: boolean;
  readonly imports?: readonly string[];
  readonly dynamicImports?: readonly string[];
}

const site = inject('site');
const manifest = JSON.parse(readFileSync(`${site}/.vite/manifest.json`, 'utf8')) as Record<string, Chunk>;
const read = (file: string) => readFileSync(`${site}/${file}`);

/** The script files that must be there before these chunks run: they and all they import at once. */
function needed(keys: readonly string[], seen = new Set<string>()): Set<string> {
  for (const key of keys) {
    const chunk = manifest[key];
    if (!chunk || seen.has(chunk.file)) continue;
    seen.add(chunk.file);
    needed(chunk.imports ?? [], seen);
  }
  return seen;
}

function kilobytes(files: Iterable<string>): number {
  return [...files].reduce((sum, file) => sum + brotliCompressSync(read(file)).length, 0) / 1000;
}

const drawsGraphs = readdirSync(inRoot('src/page'), { recursive: true, encoding: 'utf8' }).some(
  (file) =>
    file.endsWith('.ts') && readFileSync(inRoot(`src/page/${file}`), 'utf8').includes('@observablehq/plot'),
);
const entry = Object.keys(manifest).filter((key) => manifest[key]?.isEntry && key === 'index.html');
// The class name that Plot gives its figures stands in whichever chunk holds Plot.
const holdsPlot = (file: string) => read(file).includes('plot-d6a7b5');
const lazy = Object.keys(manifest).filter((key) => [...needed([key])].some(holdsPlot));

/** What the page fetches by itself before a visitor can read the first answer: the notebook it opens on, and its first cell. */
const opensOn = ['notebooks/quick-answers.md', 'src/cells/timber/scarf.ts'];

test('the script before the first answer is within 80 kB', () => {
  expect(opensOn.filter((key) => !manifest[key])).toStrictEqual([]);
  const first = needed([...entry, ...opensOn]);
  expect(first.size).toBeGreaterThan(0);
  expect([...first].filter(holdsPlot)).toStrictEqual([]);
  expect(kilobytes(first)).toBeLessThanOrEqual(80);
});

test.runIf(drawsGraphs)('with the graphs it is within 180 kB', () => {
  expect(lazy).not.toStrictEqual([]);
  expect(kilobytes(needed([...entry, ...lazy]))).toBeLessThanOrEqual(180);
});
