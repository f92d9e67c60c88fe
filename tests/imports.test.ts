/**
 * Imports go down only. Each room of src/ may import the rooms listed for it and the packages
 * listed for it, and nothing else; a new package is given its room here on purpose.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { posix } from 'node:path';
import { expect, test } from 'vitest';
import { inRoot } from './tools/root.mjs';

const below: Record<string, readonly string[]> = {
  kernel: [],
  measure: [],
  trade: ['measure'],
  drawing: ['trade', 'kernel', 'measure'],
  boat: ['trade', 'kernel', 'measure'],
  cells: ['boat', 'drawing', 'trade', 'kernel', 'measure'],
  search: ['cells', 'boat', 'drawing', 'trade', 'kernel', 'measure'],
  notebook: ['search', 'cells', 'boat', 'drawing', 'trade', 'kernel', 'measure'],
  page: ['notebook', 'search', 'cells', 'boat', 'drawing', 'trade', 'kernel', 'measure'],
  // The command line is a second face beside the page.
  reckon: ['notebook', 'cells', 'boat', 'drawing', 'trade', 'kernel', 'measure'],
  // Plugins for vite; nothing of this room ships, and no room may import it.
  build: ['notebook'],
};

const packages: Record<string, readonly string[]> = {
  mathjs: ['measure'],
  '@preact/signals-core': ['notebook', 'page'],
  '@preact/signals': ['page'],
  preact: ['page'],
  htm: ['page'],
  '@observablehq/plot': ['page'],
  '@fontsource/source-sans-3': ['page'],
  '@fontsource/source-serif-4': ['page'],
  valibot: ['boat', 'notebook', 'page'],
  marked: ['notebook', 'page'],
  'dxf-writer': ['drawing'],
  three: ['page'],
  highs: ['search'],
  vite: ['build'],
  // The folder of notebooks, by the name that the build gives it.
  '#notebooks': ['page'],
  node: ['build', 'reckon'],
};

/** What is wrong with the imports of one file, as sentences. `file` is its path inside src/. */
function breaches(file: string, text: string): string[] {
  const room = file.split('/')[0] ?? '';
  return importsOf(text).flatMap((wanted) => {
    const problem = wanted.startsWith('.') ? wrongRoom(file, room, wanted) : wrongPackage(room, wanted);
    return problem ? [`${file} imports ${wanted}: ${problem}`] : [];
  });
}

/** What the page shows but did not write, beside the notebooks: the check book. */
const content = /^docs\/check-book\.json$/;

function wrongRoom(file: string, room: string, wanted: string): string | null {
  const target = posix.join('src', posix.dirname(file), wanted);
  if (!target.startsWith('src/')) {
    return room === 'page' && content.test(target) ? null : 'it lies outside src';
  }
  const [, other = ''] = target.split('/');
  if (other !== room && !below[room]?.includes(other)) return `${room} may not import ${other}`;
  // A worker is named to the bundler by its file.
  if (room !== 'build' && /\.m?[jt]s$/.test(wanted) && !wanted.endsWith('.worker.ts'))
    return 'leave the extension out';
  return null;
}

function wrongPackage(room: string, wanted: string): string | null {
  const name = wanted.startsWith('node:')
    ? 'node'
    : wanted.split('/', wanted.startsWith('@') ? 2 : 1).join('/');
  const rooms = packages[name];
  if (!rooms) return 'this test lists no room for that package';
  return rooms.includes(room) ? null : `only ${rooms.join(' and ')} may`;
}

/** What a file asks for: static, dynamic, re-exported, types, stylesheets, workers and globs. */
function importsOf(text: string): string[] {
  // A comment begins after white space; in `'notebooks/*.md'` nothing begins.
  const code = text.replaceAll(/(?<=^|\s)\/\*[\s\S]*?\*\/|^\s*\/\/.*$/gm, '');
  const forms = [
    /\b(?:import|export)\b[^'"`;()]*?\bfrom\s*['"]([^'"]+)['"]/g,
    /\bimport\s*['"]([^'"]+)['"]/g,
    /\bimport(?:\.meta\.glob(?:<[^(]*>)?)?\(\s*\[?\s*['"`]([^'"`]+)['"`]/g,
    /\bnew URL\(\s*['"`]([^'"`]+)['"`]\s*,\s*import\.meta\.url/g,
  ];
  return forms.flatMap((form) => [...code.matchAll(form)].map((match) => match[1] ?? ''));
}

function sources(): { file: string; text: string }[] {
  return readdirSync(inRoot('src'), { recursive: true, encoding: 'utf8' })
    .map((file) => file.replaceAll('\\', '/'))
    .filter((file) => file.endsWith('.ts'))
    .map((file) => ({ file, text: readFileSync(inRoot(`src/${file}`), 'utf8') }));
}

test('every room of src is in the arrow', () => {
  const rooms = new Set(sources().map(({ file }) => file.split('/')[0] ?? ''));
  expect([...rooms].filter((room) => !(room in below))).toStrictEqual([]);
});

test('imports go down only, and each package stays in its rooms', () => {
  expect(sources().flatMap(({ file, text }) => breaches(file, text))).toStrictEqual([]);
});

test.each([
  ['kernel/beam.ts', "import { inch } from '../measure';"],
  ['kernel/beam.ts', "import { evaluate } from 'mathjs/number';"],
  ['measure/length.ts', "import type { Strip } from '../kernel/strip';"],
  ['boat/hull.ts', "import { drawn } from '../drawing';"],
  ['boat/hull.ts', "export { scarf } from '../cells/timber/scarf';"],
  ['cells/timber/scarf.ts', "import {\n  signal,\n} from '@preact/signals-core';"],
  ['cells/timber/scarf.ts', "const page = await import('../../page/main');"],
  ['notebook/graph.ts', "import { useSignal } from '@preact/signals';"],
  ['notebook/graph.ts', "import { lineY } from '@observablehq/plot';"],
  ['search/start.ts', "new Worker(new URL('../page/worker', import.meta.url), { type: 'module' });"],
  ['reckon/main.ts', "import '../page/theme';"],
  ['page/main.ts', "import { policy } from '../build/policy';"],
  ['page/main.ts', "import { unheardOf } from 'unheard-of';"],
  ['page/main.ts', "import { scarf } from '../cells/timber/scarf.ts';"],
  ['page/main.ts', "import.meta.glob('../../tests/*.md', { eager: true });"],
  ['boat/hull.ts', "import.meta.glob('#notebooks/*.md', { eager: true });"],
  ['boat/file.ts', "import { readFileSync } from 'node:fs';"],
])('a planted breach in %s is found: %s', (file, text) => {
  expect(breaches(file, text)).toHaveLength(1);
});

test.each([
  ['page/figure.ts', "import * as Plot from '@observablehq/plot';\nimport './figure.css';"],
  ['page/main.ts', "import.meta.glob<Notebook>('#notebooks/*.md', { eager: true, import: 'default' });"],
  ['cells/timber/scarf.ts', "import { defineCell } from '../define';\nimport { timber } from '../../trade';"],
  ['kernel/beam.ts', "// import { inch } from '../measure';\nimport { brent } from './roots';"],
])('what is allowed in %s passes: %s', (file, text) => {
  expect(breaches(file, text)).toStrictEqual([]);
});
