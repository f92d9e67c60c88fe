/**
 * How much script a reader waits for, compressed as servers send it (brotli, best quality),
 * in thousands of bytes: 62 before the list of questions, 70 with the first answer, 180 with its graphs.
 */
import { readFileSync } from 'node:fs';
import { brotliCompressSync } from 'node:zlib';
import { expect, inject, test } from 'vitest';
import { entriesOf, firstAnswer, manifestOf, neededBy, opensOn } from '../tools/first-load';

const site = inject('site');
const manifest = manifestOf(site);
const entries = entriesOf(site, manifest);
const read = (file: string) => readFileSync(`${site}/${file}`);
const kilobytes = (files: Iterable<string>) =>
  [...files].reduce((sum, file) => sum + brotliCompressSync(read(file)).length, 0) / 1000;

// The class name that Plot gives its figures stands in whichever chunk holds Plot.
const holdsPlot = (file: string) => read(file).includes('plot-d6a7b5');
const readsSaved = (file: string) => read(file).includes('it is not a saved boat');
const withPlot = Object.keys(manifest).filter(
  (key) => manifest[key]?.file.endsWith('.js') && [...neededBy(manifest, [key])].some(holdsPlot),
);

test('the script of the page as it opens is within 62 kB, and with the first answer within 70', () => {
  expect(firstAnswer.filter((key) => !manifest[key])).toStrictEqual([]);
  const first = neededBy(manifest, [...entries, ...opensOn]);
  expect([...first].filter(holdsPlot)).toStrictEqual([]);
  // What reads saved boats waits until one is there to be read.
  expect([...first].filter(readsSaved)).toStrictEqual([]);
  expect(Object.values(manifest).filter(({ file }) => file.endsWith('.js') && readsSaved(file))).toHaveLength(
    1,
  );
  // The page alone is most of it: less would mean that it was not found.
  expect(kilobytes(first)).toBeGreaterThan(40);
  expect(kilobytes(first)).toBeLessThanOrEqual(62);
  expect(kilobytes(neededBy(manifest, [...entries, ...firstAnswer]))).toBeLessThanOrEqual(70);
});

test('with the graphs it is within 180 kB', () => {
  expect(withPlot).not.toStrictEqual([]);
  expect(kilobytes(neededBy(manifest, [...entries, ...firstAnswer, ...withPlot]))).toBeLessThanOrEqual(180);
});

test.each(['src/page/notebooks/open-files.ts', 'src/page/quick/take.ts'])(
  'what changes a boat that is not on the bench brings what reads her: %s',
  (key) => {
    expect(manifest[key]).toBeDefined();
    expect([...neededBy(manifest, [key])].filter(readsSaved)).toHaveLength(1);
  },
);
