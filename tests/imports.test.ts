/**
 * Imports go down only. Each room of src/ may import the rooms listed for it and the packages
 * listed for it, and nothing else; a new package is given its room here on purpose. So inside a room:
 * the rooms in it are listed with those below them.
 */
import { posix } from 'node:path';
import { expect, test } from 'vitest';
import { importsOf, sources } from './sources';

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
    skin: stage,
    finish: stage,
    afloat: stage,
    handling: stage,
    buying: stage,
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
    link: ['state'],
    log: ['state'],
    lesson: ['state', 'graph', 'text', 'link'],
    doubts: ['graph'],
    sweep: ['graph', 'state'],
    text: ['graph'],
    blocks: ['text'],
    formulas: ['state', 'graph', 'text'],
    writing: ['text'],
  },
};

const packages: Record<string, readonly string[]> = {
  mathjs: ['measure'],
  '@preact/signals-core': ['notebook', 'page'],
  '@preact/signals': ['page'],
  preact: ['page'],
  htm: ['page'],
  '@observablehq/plot': ['page'],
  '@panzoom/panzoom': ['page'],
  '@fontsource/source-sans-3': ['page'],
  '@fontsource/source-serif-4': ['page'],
  valibot: ['boat', 'notebook', 'page'],
  marked: ['notebook', 'page'],
  'dxf-writer': ['drawing'],
  qr: ['page'],
  three: ['page'],
  highs: ['search'],
  'clipper2-ts': ['search'],
  rolldown: ['build'],
  terser: ['build'],
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
