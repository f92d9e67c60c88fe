/**
 * Lets the page import `notebooks/*.md` as ready-made data: each is parsed when the page is
 * built, so that a reader's browser need not, and a mistake in one stops the build.
 * `#notebooks/shelf` is what the list of contents needs, titles and which cells, no text, and how each text is fetched.
 */
import { readdir, readFile } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import { normalizePath, type Plugin, runnerImport } from 'vite';
import type * as Markdown from '../notebook/markdown';

type Parser = typeof Markdown;

/** @param from the folder of notebooks, from the root of the project */
export function notebooks(from = 'notebooks'): Plugin {
  let folder = '';
  let root = '';
  let parser: Promise<Parser> | undefined;
  // Loaded on first need: most runs (unit tests, the command line) import no notebook.
  const load = async (): Promise<Parser> => {
    const file = join(root, 'src/notebook/markdown.ts');
    const { module } = await runnerImport<Parser>(file, { root, configFile: false, logLevel: 'error' });
    return module;
  };
  const read = async (build: { error: (says: string) => never }, text: string, name: string) => {
    const { parseNotebook } = await (parser ??= load());
    const notebook = parseNotebook(text, name);
    const faults = notebook.faults.map((fault) => `${name}:${fault.line}: ${fault.says}`);
    if (faults.length > 0) build.error(faults.join('\n'));
    return notebook;
  };
  return {
    name: 'notebooks',
    config(config) {
      root = resolve(config.root ?? '');
      folder = normalizePath(join(root, from));
      return { resolve: { alias: { '#notebooks': folder } } };
    },
    resolveId: (id) => (id === `${folder}/shelf` ? id : null),
    async load(id) {
      if (id !== `${folder}/shelf`) return null;
      const names = (await readdir(folder)).filter((name) => name.endsWith('.md')).sort();
      const { headOf, packHead } = await (parser ??= load());
      const heads = await Promise.all(
        names.map(async (name) => {
          const file = join(folder, name);
          this.addWatchFile(file);
          return packHead(headOf(await read(this, await readFile(file, 'utf8'), name)));
        }),
      );
      const texts = names.map((name, at) => {
        const file = JSON.stringify(normalizePath(join(folder, name)));
        return `${JSON.stringify(heads[at]!.id)}: () => import(${file}).then((one) => one.default)`; // one for each name
      });
      return `export const heads = ${JSON.stringify(heads)};\nexport const texts = {${texts.join(',')}};`;
    },
    transform: {
      filter: { id: /\.md$/ },
      async handler(text, id) {
        if (dirname(id) !== folder) return null;
        const notebook = await read(this, text, basename(id));
        return { code: `export default ${JSON.stringify(notebook)};`, map: null, moduleType: 'js' };
      },
    },
  };
}
