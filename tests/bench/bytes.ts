/** What a first visit fetches, compressed as servers send it. */
import { readdirSync, readFileSync } from 'node:fs';
import { brotliCompressSync, gzipSync } from 'node:zlib';
import { builtSite } from './site';
import type { Section } from './table';

interface Chunk {
  readonly file: string;
  readonly isEntry?: boolean;
  readonly imports?: readonly string[];
  readonly dynamicImports?: readonly string[];
  readonly css?: readonly string[];
}
type Manifest = Readonly<Record<string, Chunk>>;

export function firstLoad(): Section {
  const site = builtSite();
  const manifest = JSON.parse(readFileSync(`${site}/.vite/manifest.json`, 'utf8')) as Manifest;
  const entry = Object.keys(manifest).filter((key) => manifest[key]?.isEntry);
  const first = filesOf(manifest, entry);
  const everything = readdirSync(site, { recursive: true, withFileTypes: true })
    .filter((file) => file.isFile() && !file.parentPath.endsWith('.vite'))
    .map((file) => `${file.parentPath.slice(site.length + 1)}/${file.name}`.replace(/^\//, ''));
  const scripts = (files: Iterable<string>) => [...files].filter((file) => file.endsWith('.js'));
  const rows: readonly (readonly [string, readonly string[]])[] = [
    ['script before the first answer', scripts(first)],
    ['styles before the first answer', [...first].filter((file) => file.endsWith('.css'))],
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

/** The files of these chunks and of all that they import at once. */
function filesOf(manifest: Manifest, keys: readonly string[], seen = new Set<string>()): Set<string> {
  for (const key of keys) {
    const chunk = manifest[key];
    if (!chunk || seen.has(chunk.file)) continue;
    seen.add(chunk.file);
    for (const style of chunk.css ?? []) seen.add(style);
    filesOf(manifest, chunk.imports ?? [], seen);
  }
  return seen;
}
