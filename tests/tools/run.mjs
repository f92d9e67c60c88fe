// Runs one of our TypeScript programs in Node: node tests/tools/run.mjs <file> [arguments].
// Bundles it with the site's own configuration (tens of milliseconds, so nothing is kept
// that could go stale), then imports it. The program's output and exit code pass through.

import './ready.mjs';
import { existsSync, rmSync } from 'node:fs';
import { basename, dirname, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { inRoot } from './root.mjs';

const [file, ...args] = process.argv.slice(2);
if (!file || !existsSync(inRoot(file))) {
  process.stderr.write(`There is no program at ${file ?? '(no file named)'}.\n`);
  process.exit(1);
}

const { build } = await import('vite');
const name = `${basename(file, '.ts')}-${process.pid}.mjs`;
const outDir = inRoot('node_modules/.cache/run');
await build({
  root: inRoot(''),
  logLevel: 'error',
  plugins: [toolsAsTheyLie()],
  build: {
    ssr: file,
    target: 'node20',
    outDir,
    emptyOutDir: false,
    copyPublicDir: false,
    manifest: false,
    minify: false,
    sourcemap: 'inline',
    rolldownOptions: { output: { entryFileNames: name, codeSplitting: false } },
  },
});

const program = `${outDir}/${name}`;
process.on('exit', () => rmSync(program, { force: true }));
process.setSourceMapsEnabled(true);
process.argv = [process.argv[0] ?? 'node', inRoot(file), ...args];
await import(pathToFileURL(program).href);

/**
 * Leaves our tools in plain Node out of the bundle: they find the project from where they lie.
 * @returns {import('vite').Plugin}
 */
function toolsAsTheyLie() {
  return {
    name: 'tools-as-they-lie',
    enforce: 'pre',
    resolveId(wanted, importer) {
      if (!importer || !/^\..*\.mjs$/.test(wanted)) return null;
      const path = resolve(dirname(importer), wanted);
      return path.startsWith(inRoot('tests/tools/'))
        ? { id: pathToFileURL(path).href, external: true }
        : null;
    },
  };
}
