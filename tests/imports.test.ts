/**
 * Imports go down only. Each room of src/ may import the rooms listed for it and the packages
 * listed for it, and nothing else; a new package is given its room here on purpose. So inside a room:
 * the rooms in it are listed with those below them, and nowhere do files or rooms import each other in a circle.
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

/** A stage of the build, or one of its works: each draws on what cells have in common, and never on another. */
const stage = ['common', 'form'];

/** The rooms inside a room, and what of it each may import. `.` are the files that lie in the room itself. */
const inside: Record<string, Record<string, readonly string[]>> = {
  cells: {
    form: [],
    common: ['form'],
    shape: stage,
    frames: stage,
    'timber/wood': stage,
    'timber/bending': stage,
    'timber/joints': stage,
    'timber/fastening': stage,
    'timber/gluing': stage,
    finish: stage,
  },
  boat: {
    table: ['.'],
    hull: ['table', '.'],
    joinery: ['hull', 'table', '.'],
    quantities: ['joinery', 'hull', 'table', '.'],
    file: ['table', '.'],
    starters: ['table'],
  },
  drawing: { 'set-out': ['.'], export: ['set-out', '.'] },
  notebook: {
    state: [],
    graph: ['state'],
    keeping: ['state'],
    text: ['graph'],
    blocks: ['text'],
  },
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
  if (other === room) {
    const [from, to] = [innerRoom(file), innerRoom(target.slice('src/'.length))];
    const allowed = inside[room]?.[from];
    if (allowed && to !== from && !allowed.includes(to))
      return `${room}/${from} may not import ${room}/${to}`;
  }
  // A worker is named to the bundler by its file.
  if (room !== 'build' && /\.m?[jt]s$/.test(wanted) && !wanted.endsWith('.worker.ts'))
    return 'leave the extension out';
  return null;
}

/** The room in which a file lies inside its room, as `inside` lists it; `.` for a file of the room itself. */
function innerRoom(file: string): string {
  const [room = '', ...path] = file.split('/');
  const listed = Object.keys(inside[room] ?? {}).find((inner) =>
    `${path.join('/')}/`.startsWith(`${inner}/`),
  );
  return listed ?? (path.length > 1 ? path.slice(0, -1).join('/') : '.');
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

/** Every circle among things that import each other, each as the names on it in order of the alphabet. */
function circles(imports: ReadonlyMap<string, ReadonlySet<string>>): string[][] {
  const reach = (from: string): Set<string> => {
    const seen = new Set<string>();
    const ahead = [from];
    for (let one = ahead.pop(); one !== undefined; one = ahead.pop())
      for (const next of imports.get(one) ?? [])
        if (!seen.has(next)) {
          seen.add(next);
          ahead.push(next);
        }
    return seen;
  };
  const reached = new Map([...imports.keys()].map((one) => [one, reach(one)]));
  const rings = [...imports.keys()]
    .filter((one) => reached.get(one)!.has(one))
    .map((one) => [...reached.get(one)!].filter((other) => reached.get(other)?.has(one)).sort());
  return [...new Map(rings.map((ring) => [ring.join(' '), ring])).values()];
}

/** Who imports whom, by files or by the folders they lie in; a file that lies in a room of src itself stands for itself. */
function importing(of: readonly { file: string; text: string }[], by: (file: string) => string) {
  const files = new Set(of.map(({ file }) => file));
  const imports = new Map<string, Set<string>>();
  for (const { file, text } of of)
    for (const wanted of importsOf(text).filter((one) => one.startsWith('.'))) {
      const path = posix.join(posix.dirname(file), wanted);
      const target = [`${path}.ts`, `${path}/index.ts`, path].find((one) => files.has(one));
      const [from, to] = [by(file), target === undefined ? null : by(target)];
      if (to !== null && to !== from) imports.set(from, (imports.get(from) ?? new Set()).add(to));
    }
  return imports;
}

const folderOf = (file: string) => (file.split('/').length > 2 ? posix.dirname(file) : file);

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

test('every room inside a room that lists them is listed', () => {
  const found = sources().flatMap(({ file }) => {
    const [room = ''] = file.split('/');
    const inner = innerRoom(file);
    return inner === '.' || !inside[room] || inner in inside[room] ? [] : [`${room}/${inner}`];
  });
  expect([...new Set(found)]).toStrictEqual([]);
});

/** Where a test named after a file of its room should lie; null where it does, or is named after none. */
function astray(test: string, files: readonly string[]): string | null {
  const name = posix.basename(test, '.test.ts');
  const [room] = test.split('/');
  const twins = files.filter((file) => file.startsWith(`${room}/`) && posix.basename(file, '.ts') === name);
  const isAtHome = twins.some((file) => posix.dirname(file) === posix.dirname(test));
  return twins.length === 0 || isAtHome ? null : `${test} is of ${twins.join(' or ')}`;
}

test('a test lies where the file lies that it is named after', () => {
  const files = sources().map(({ file }) => file);
  const tests = readdirSync(inRoot('tests'), { recursive: true, encoding: 'utf8' })
    .map((file) => file.replaceAll('\\', '/'))
    .filter((file) => file.endsWith('.test.ts'));
  expect(
    tests
      .filter((one) => one.includes('/'))
      .map((one) => astray(one, files))
      .filter((one) => one !== null),
  ).toStrictEqual([]);
  expect(astray('boat/edge.test.ts', ['boat/hull/edge.ts'])).not.toBeNull();
  expect(astray('boat/hull/edge.test.ts', ['boat/hull/edge.ts', 'kernel/edge.ts'])).toBeNull();
});

/** A file of the cells that makes shapes and is neither a cell nor called a drawing. */
const drawsUnderAnotherName = ({ file, text }: { file: string; text: string }): boolean =>
  file.startsWith('cells/') &&
  !file.endsWith('-drawing.ts') &&
  !text.includes('defineCell(') &&
  /^import (?!type\b)[^;]*?from '[./]+\/drawing(\/[\w-]+)*';/m.test(text);

test('what cells draw lies in files called *-drawing.ts, or in the cell itself', () => {
  expect(
    sources()
      .filter(drawsUnderAnotherName)
      .map(({ file }) => file),
  ).toStrictEqual([]);
  const text = "import {\n  line,\n} from '../../drawing';";
  expect(drawsUnderAnotherName({ file: 'cells/frames/notch-view.ts', text })).toBe(true);
  expect(drawsUnderAnotherName({ file: 'cells/frames/notch-drawing.ts', text })).toBe(false);
});

test('no files import each other in a circle, and no folders', () => {
  expect(circles(importing(sources(), (file) => file))).toStrictEqual([]);
  expect(circles(importing(sources(), folderOf))).toStrictEqual([]);
});

test('a planted circle is found, of files and of folders', () => {
  const planted = [
    { file: 'boat/hull/hull.ts', text: "import type { Edge } from './edge';" },
    {
      file: 'boat/hull/edge.ts',
      text: "import { near } from '../table/near';\nimport { hull } from './hull';",
    },
    { file: 'boat/table/near.ts', text: "export { far } from './far';" },
    { file: 'boat/table/far.ts', text: "const ends = () => import('../hull/ends');" },
    { file: 'boat/hull/ends.ts', text: '' },
    { file: 'boat/index.ts', text: "export * from './hull/hull';" },
  ];
  expect(circles(importing(planted, (file) => file))).toStrictEqual([
    ['boat/hull/edge.ts', 'boat/hull/hull.ts'],
  ]);
  expect(circles(importing(planted, folderOf))).toStrictEqual([['boat/hull', 'boat/table']]);
});

test.each([
  ['kernel/beam.ts', "import { inch } from '../measure';"],
  ['kernel/beam.ts', "import { evaluate } from 'mathjs/number';"],
  ['measure/length.ts', "import type { Strip } from '../kernel/strip';"],
  ['boat/hull.ts', "import { drawn } from '../drawing';"],
  ['boat/hull.ts', "export { scarf } from '../cells/timber/scarf';"],
  ['cells/form/define.ts', "import { woods } from '../common/wood/woods';"],
  ['cells/common/glue/glues.ts', "import type { Scarf } from '../../timber/joints/scarf';"],
  ['cells/frames/limber.ts', "import { longLine } from '../shape/long-line';"],
  ['cells/timber/joints/butt.ts', "import { screwRules } from '../fastening/screw-rules';"],
  ['cells/timber/joints/butt.ts', "import { registry } from '../../registry';"],
  ['boat/hull/hull.ts', "import type { Quantity } from '../quantities/quantity';"],
  ['boat/table/table-edits.ts', "import type { Hull } from '../hull/hull';"],
  ['notebook/state/history.ts', "import { createGraph } from '../graph/graph';"],
  ['drawing/set-out/sheet.ts', "import { svg } from '../export/svg';"],
  ['cells/timber/scarf.ts', "import {\n  signal,\n} from '@preact/signals-core';"],
  ['cells/timber/scarf.ts', "const page = await import('../../page/main');"],
  ['notebook/graph/graph.ts', "import { useSignal } from '@preact/signals';"],
  ['notebook/graph/graph.ts', "import { lineY } from '@observablehq/plot';"],
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
  [
    'cells/timber/joints/scarf.ts',
    "import { defineCell } from '../../form/define';\nimport { woods } from '../../common/wood/woods';\nimport { timber } from '../../../trade';",
  ],
  ['cells/registry.ts', "const scarf = () => import('./timber/joints/scarf');"],
  ['kernel/beam.ts', "// import { inch } from '../measure';\nimport { brent } from './roots';"],
])('what is allowed in %s passes: %s', (file, text) => {
  expect(breaches(file, text)).toStrictEqual([]);
});
