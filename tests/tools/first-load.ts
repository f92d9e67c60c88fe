/** What a browser fetches of the built site: read from the page itself, since a manifest need not name its entry. */
import { readFileSync } from 'node:fs';

export interface Chunk {
  readonly file: string;
  readonly name?: string;
  readonly imports?: readonly string[];
  readonly dynamicImports?: readonly string[];
  readonly css?: readonly string[];
}
export type Manifest = Readonly<Record<string, Chunk>>;

export function manifestOf(site: string): Manifest {
  return JSON.parse(readFileSync(`${site}/.vite/manifest.json`, 'utf8')) as Manifest;
}

/** Keys of the chunks that `index.html` runs at once. Throws where it runs none: a budget on nothing holds nothing. */
export function entriesOf(site: string, manifest: Manifest): string[] {
  const html = readFileSync(`${site}/index.html`, 'utf8');
  const scripts = new Set([...html.matchAll(/<script[^>]*\bsrc="\.\/([^"]+)"/g)].map(([, file]) => file));
  const keys = Object.keys(manifest).filter((key) => scripts.has(manifest[key]?.file));
  if (keys.length === 0 || keys.length < scripts.size)
    throw new Error(`index.html runs ${scripts.size} scripts; the manifest knows ${keys.length} of them`);
  return keys;
}

/** Styles that `index.html` asks for. */
export function stylesOf(site: string): string[] {
  const html = readFileSync(`${site}/index.html`, 'utf8');
  return [...html.matchAll(/<link[^>]*\bhref="\.\/([^"]+\.css)"/g)].map(([, file = '']) => file);
}

/** Files that must be there before these chunks run: they and all they import at once. */
export function neededBy(manifest: Manifest, keys: readonly string[], seen = new Set<string>()): Set<string> {
  for (const key of keys) {
    const chunk = manifest[key];
    if (!chunk || seen.has(chunk.file)) continue;
    seen.add(chunk.file);
    neededBy(manifest, chunk.imports ?? [], seen);
  }
  return seen;
}

/** What the page fetches by itself before a visitor can read it: the notebook it opens on, and the list that this is. */
export const opensOn: readonly string[] = ['notebooks/quick-answers.md', 'src/page/quick/questions.ts'];

/** What comes with the first answer that is asked of it. */
export const firstAnswer: readonly string[] = [...opensOn, 'src/cells/timber/joints/scarf.ts'];
