/**
 * Lets the page import `notebooks/*.md` as ready-made data: each is parsed when the page is
 * built, so that a reader's browser need not, and a mistake in one stops the build.
 * `notebooks/*.md?head` is what the list of contents needs: titles and which cells, no text.
 */
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
  return {
    name: 'notebooks',
    config(config) {
      root = resolve(config.root ?? '');
      folder = normalizePath(join(root, from));
      return { resolve: { alias: { '#notebooks': folder } } };
    },
    transform: {
      filter: { id: /\.md(\?head)?$/ },
      async handler(text, id) {
        const [file = id, query] = id.split('?');
        if (dirname(file) !== folder) return null;
        parser ??= load();
        const { parseNotebook, headOf, packHead } = await parser;
        const name = basename(file);
        const notebook = parseNotebook(text, name);
        const faults = notebook.faults.map((fault) => `${name}:${fault.line}: ${fault.says}`);
        if (faults.length > 0) this.error(faults.join('\n'));
        const data = query === 'head' ? packHead(headOf(notebook)) : notebook;
        return { code: `export default ${JSON.stringify(data)};`, map: null, moduleType: 'js' };
      },
    },
  };
}
