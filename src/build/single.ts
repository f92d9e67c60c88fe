/**
 * The built site as one file that opens from a disk: its own scripts, styles, fonts, the searches' worker and the
 * solver's program, each where the page would have fetched it. Nothing is fetched from anywhere, and the policy says so.
 *
 * A page from a disk may load no module and start no worker from a file beside it. So all modules of the page become
 * one that stands in the page, and the worker's text is handed to the browser by the page itself.
 */
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { extname, join } from 'node:path';
import { type Plugin, rolldown } from 'rolldown';
import { policyText, rulesOfOneFile } from './policy.ts';

const mimes: Readonly<Record<string, string>> = {
  '.woff2': 'font/woff2',
  '.wasm': 'application/wasm',
  '.svg': 'image/svg+xml',
};

/** @param site the folder of a built site */
export async function singleFile(site: string): Promise<string> {
  const page = readFileSync(join(site, 'index.html'), 'utf8');
  const entry = theOne(page, /<script type="module"[^>]* src="\.\/([^"]+)"><\/script>/);
  const style = `${styles(site, page).join('\n')}\n`;
  const worker = readdirSync(join(site, 'assets')).find((name) => /^search\.worker-.*\.js$/.test(name));
  if (!worker) throw new Error('the site has no worker for searches');
  const program = programHere(site);
  const [script, search] = await Promise.all([
    oneScript(site, entry, 'es', workerHere(worker)),
    // A worker from a text may be no module where the page comes from a disk.
    oneScript(site, `assets/${worker}`, 'iife', program),
  ]);
  const policy = policyText(rulesOfOneFile(hashOf(script), hashOf(style)));
  return page
    .replace(
      /(http-equiv="Content-Security-Policy" content=")[^"]*/,
      (_, before: string) => before + quoted(policy),
    )
    .replace(/ *<link rel="(?:manifest|apple-touch-icon)"[^>]*>\n/g, '')
    .replace(
      /(<link rel="icon"[^>]*href=")\.\/([^"]+)/,
      (_, before: string, icon: string) => before + dataAddress(join(site, icon)),
    )
    .replace(/<link rel="stylesheet"[^>]*>/, '')
    .replace(/<script type="module".*<\/script>/, () =>
      [
        `<style>${style}</style>`,
        `<script type="text/plain" id="${WORKER}">${search}</script>`,
        `<script type="module">${script}</script>`,
      ].join('\n'),
    );
}

/** The place of the worker's text in the page. */
const WORKER = 'search-worker';

/** Modules of the site as one, in a form in which it may stand in a page. */
async function oneScript(site: string, file: string, format: 'es' | 'iife', plugin: Plugin): Promise<string> {
  const bundle = await rolldown({
    input: join(site, file),
    // What the build left in is needed.
    treeshake: false,
    plugins: [plugin],
  });
  const { output } = await bundle.generate({ format, codeSplitting: false, minify: true });
  await bundle.close();
  const [script] = output;
  if (output.length > 1) throw new Error(`${file} comes in ${output.length} parts`);
  // Whatever ends a script in a page, or opens another, stands in a text or a pattern: there it may be written so.
  return script.code.replace(/<(?=!--|\/?script)/gi, String.raw`\x3C`);
}

/** The page starts the worker by an address that it makes of the worker's text, once; and fetches no styles late. */
function workerHere(worker: string): Plugin {
  const address = `globalThis.searchWorker??=URL.createObjectURL(new Blob([document.getElementById("${WORKER}").textContent],{type:"text/javascript"}))`;
  let started = 0;
  return {
    name: 'worker-here',
    transform: (code) => ({
      code: code
        .replace(/^const __vite__mapDeps=.*$/m, 'const __vite__mapDeps=()=>[];')
        .replaceAll(/new Worker\(.*?`([^`]*)`.*?\{type:`module`\}\)/g, (whole, name) => {
          if (name !== worker) return whole;
          started += 1;
          return `new Worker(${address})`;
        }),
      map: null,
    }),
    generateBundle() {
      if (started !== 1) throw new Error(`the searches' worker is started in ${started} places`);
    },
  };
}

/** The worker finds the solver's program in its own text, where it stands once. */
const programHere = (site: string): Plugin => {
  const programs = readdirSync(join(site, 'assets')).filter((name) => name.endsWith('.wasm'));
  const [program, ...others] = programs;
  if (!program || others.length > 0)
    throw new Error(`the site has ${programs.length} programs for the solver`);
  return {
    name: 'program-here',
    transform: (code) => ({
      code: code
        .replaceAll(`new URL(\`${program}\`,import.meta.url).href`, 'solverProgram')
        // A worker that is no module knows its own address by this name.
        .replaceAll('import.meta.url', 'location.href'),
      map: null,
    }),
    renderChunk: (code) => `const solverProgram="${dataAddress(join(site, 'assets', program))}";${code}`,
  };
};

/** All stylesheets, the page's own first, with the fonts in them. */
function styles(site: string, page: string): string[] {
  const first = theOne(page, /<link rel="stylesheet"[^>]* href="\.\/assets\/([^"]+)">/);
  const all = readdirSync(join(site, 'assets')).filter((name) => name.endsWith('.css'));
  return [first, ...all.filter((name) => name !== first).sort()].map((name) =>
    readFileSync(join(site, 'assets', name), 'utf8').replaceAll(
      /url\(\.\/([^)]+)\)/g,
      (_, file: string) => `url(${dataAddress(join(site, 'assets', file))})`,
    ),
  );
}

function theOne(text: string, pattern: RegExp): string {
  const [found, ...others] = text.matchAll(new RegExp(pattern, 'g'));
  if (!found?.[1] || others.length > 0) throw new Error(`the page should hold one ${pattern.source}`);
  return found[1];
}

function dataAddress(file: string): string {
  const mime = mimes[extname(file)];
  if (!mime) throw new Error(`no kind of file is known for ${file}`);
  return `data:${mime};base64,${readFileSync(file).toString('base64')}`;
}

const hashOf = (text: string): string => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;
const quoted = (text: string): string => text.replaceAll("'", '&#39;');
