/**
 * Nothing is exported that nothing of src uses, in another file or in its own: what only tests call is checked in
 * vain, for it is not what ships. Types bear no code, and stand where a docstring points at them; but each has a name
 * of its own.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { posix } from 'node:path';
import { describe, expect, test } from 'vitest';
import { inRoot } from './tools/root.mjs';

const files = [
  'vite.config.ts',
  // Builds the one file.
  'tests/tools/single.ts',
  ...readdirSync(inRoot('src'), { recursive: true, encoding: 'utf8' })
    .map((file) => `src/${file.replaceAll('\\', '/')}`)
    // What a module of the build's making is like is declared for types alone.
    .filter((file) => file.endsWith('.ts') && !file.endsWith('.d.ts')),
];
/** Without comments, in which a name may stand that nobody calls. */
const codeOf = new Map(
  files.map((file) => [
    file,
    readFileSync(inRoot(file), 'utf8').replaceAll(/\/\*[\s\S]*?\*\/|(?<=^|\s)\/\/.*$/gm, ''),
  ]),
);

const VALUES = /^export (?:async )?(?:const|let|function\*?|class) (\w+)/gm;
const DECLARED =
  /^export (?:declare )?(?:async )?(?:const|let|function\*?|class|interface|type|enum) (\w+)/gm;
const PASSED_ON = /^export (?:type )?(?:\{([^}]*)\}|\*) from '([^']+)'/gm;
const IMPORTED = /\bimport\s+(?:type\s+)?(?:\w+,\s*)?\{([^}]*)\}\s+from\s+'([^']+)'/g;
const FETCHED = /\bimport\('([^']+)'\)(?:\)?\s*\.(?:then\(\(\{([^}]*)\}\)|(\w+)))?/g;

/** `a, type b as c` as the names where they come from. */
const namesIn = (list: string) =>
  list
    .split(',')
    .map((part) =>
      part
        .trim()
        .replace(/^type /, '')
        .replace(/\s+as\s+\w+$|:\s*\w+$/, ''),
    )
    .filter((name) => name !== '');

function resolved(from: string, target: string): string | null {
  if (!target.startsWith('.')) return null;
  const path = posix.join(posix.dirname(from), target);
  return [path, `${path}.ts`, `${path}/index.ts`].find((file) => codeOf.has(file)) ?? null;
}

/** Where a name imported from a file was declared; a room's index passes names on. */
function homeOf(file: string, name: string): string | null {
  const code = codeOf.get(file)!; // only files of the list are asked
  if ([...code.matchAll(DECLARED)].some(([, own]) => own === name)) return file;
  for (const [, list, target = ''] of code.matchAll(PASSED_ON)) {
    const next = resolved(file, target);
    if (next === null || (list !== undefined && !namesIn(list).includes(name))) continue;
    const home = homeOf(next, name);
    if (home !== null) return home;
  }
  return null;
}

const used = new Set<string>();
const use = (from: string, target: string, names: readonly string[] | null) => {
  const file = resolved(from, target.replace(/\?.*$/, ''));
  if (file === null) return;
  const asked = names ?? [...codeOf.get(file)!.matchAll(DECLARED)].map(([, name = '']) => name);
  for (const name of asked) used.add(`${homeOf(file, name) ?? file} ${name}`);
};
for (const [file, code] of codeOf) {
  for (const [, list = '', target = ''] of code.matchAll(IMPORTED)) use(file, target, namesIn(list));
  for (const [, target = '', list, name] of code.matchAll(FETCHED)) {
    // Fetched whole and taken apart later: all of it may be meant.
    const named = name === undefined || name === 'then' ? null : [name];
    use(file, target, list === undefined ? named : namesIn(list));
  }
}

/** It stands in place of a library's own files, which others of the library import from. */
const STAND_IN = 'src/build/lean-parser.ts';

/** What the build asks of a module that it loads by its path while it runs. */
for (const [file, code] of codeOf) {
  if (!file.startsWith('src/build/')) continue;
  for (const [, list = ''] of code.matchAll(/\bconst \{([^}]*)\} = await/g)) {
    for (const name of namesIn(list)) {
      for (const home of codeOf.keys()) used.add(`${homeOf(home, name) ?? home} ${name}`);
    }
  }
}

const exported = files
  .filter((file) => file !== 'vite.config.ts' && file !== STAND_IN)
  .flatMap((file) => [...codeOf.get(file)!.matchAll(VALUES)].map(([, name = '']) => ({ file, name })));

/** Named again in the file that declares it. */
const usedAtHome = (file: string, name: string) =>
  [...codeOf.get(file)!.matchAll(new RegExp(String.raw`\b${name}\b`, 'g'))].length > 1;

test('every export of src is used in src', () => {
  expect(exported.length).toBeGreaterThan(500);
  const idle = exported.filter(({ file, name }) => !used.has(`${file} ${name}`) && !usedAtHome(file, name));
  expect(idle.map(({ file, name }) => `${file}: ${name}`)).toStrictEqual([]);
});

/** A name that means two things must be looked up each time that it is read. */
const TYPES = /^export (?:declare )?(?:abstract )?(?:class|interface|type|enum) (\w+)/gm;

test('every type of src has a name of its own', () => {
  const homes = new Map<string, string[]>();
  for (const [file, code] of codeOf)
    for (const [, name = ''] of code.matchAll(TYPES)) homes.set(name, [...(homes.get(name) ?? []), file]);
  expect(homes.size).toBeGreaterThan(300);
  const twice = [...homes].filter(([, declaredIn]) => declaredIn.length > 1);
  expect(Object.fromEntries(twice)).toStrictEqual({});
});

describe('numbers that have a name', () => {
  /** By their home; the numbers of a table of sizes or of a drawing may be alike by chance. */
  const named: readonly (readonly [number: RegExp, home: string])[] = [
    [/(?<![\d.])0\.0254(?!\d)/, 'src/measure/unit-table.ts'],
    [/(?<![\d.])0\.3048(?!\d)/, 'src/measure/unit-table.ts'],
    [/(?<![\d.])25\.4(?![\d.])/, 'src/measure/unit-table.ts'],
    [/(?<![\d.])304\.8(?!\d)/, 'src/measure/unit-table.ts'],
    [/(?<![\d.])68(94\.7|948)\d*/, 'src/measure/unit-table.ts'],
    [/(?<![\d.])1\.645(?!\d)/, 'src/trade/embedment.ts'],
    [/(?<![\d.])81 ?(°|\* Math\.PI)/, 'src/trade/screws.ts'],
    [/codeFactor \/ 1\.6|(?<![\d.])1\.6\)? ?\/\/ load/, 'src/trade/load-duration.ts'],
  ];
  test.each(named)('%s stands in one file', (number, home) => {
    const others = [...codeOf].filter(([file, code]) => file !== home && number.test(code));
    expect(others.map(([file]) => file)).toStrictEqual([]);
  });
});
