/** What a first visit fetches, compressed as servers send it. */
import { readdirSync, readFileSync } from 'node:fs';
import { brotliCompressSync, gzipSync } from 'node:zlib';
import { entriesOf, manifestOf, firstAnswer, neededBy, opensOn, stylesOf } from '../tools/first-load';
import { builtSite } from '../tools/site.mjs';
import type { Section } from './table';

export async function firstLoad(): Promise<Section> {
  const site = await builtSite();
  const manifest = manifestOf(site);
  const first = neededBy(manifest, [...entriesOf(site, manifest), ...opensOn]);
  const everything = readdirSync(site, { recursive: true, withFileTypes: true })
    .filter((file) => file.isFile() && !file.parentPath.endsWith('.vite'))
    .map((file) => `${file.parentPath.slice(site.length + 1)}/${file.name}`.replace(/^\//, ''));
  const scripts = (files: Iterable<string>) => [...files].filter((file) => file.endsWith('.js'));
  const rows: readonly (readonly [string, readonly string[]])[] = [
    ['script of the page as it opens', scripts(first)],
    [
      'script before the first answer',
      scripts(neededBy(manifest, [...entriesOf(site, manifest), ...firstAnswer])),
    ],
    ['styles of the page as it opens', stylesOf(site)],
    ['all script, fetched when needed', scripts(everything)],
    ['the whole site, for use offline', everything],
  ];
  return {
    title: 'Bytes',
    says: 'In thousands of bytes.',
    head: ['', 'files', 'plain', 'gzip', 'brotli'],
    rows: rows.map(([name, files]) => {
      const texts = files.map((file) => readFileSync(`${site}/${file}`));
      const sum = (size: (text: Buffer) => number) =>
        texts.reduce((total, text) => total + size(text), 0) / 1000;
      return [
        name,
        String(files.length),
        sum((text) => text.length),
        sum((text) => gzipSync(text).length),
        sum((text) => brotliCompressSync(text).length),
      ];
    }),
  };
}
