/** Promises about the project's files as a whole: what they may name and what they may claim. */
import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { inRoot } from './tools/root.mjs';

const registry = /registry\.(npmjs|yarnpkg|npmmirror)/;
const machinePath = /(?<![\w.:/!*-])\/(home|root|Users|tmp|work|opt)\/\w/;
const outsideFolder = /\.\.\/shared\b/;
const looseEnd = /\b(TO[D]O|FIX[M]E)\b/;
// A limit that is met is named together with whose limit it is; this word claims more than
// anyone can know. The one exception is the name of a CSS variable.
const claim = /\bsafe\b(?!-area-inset)/i;

const notOurs = new Set(['.git', 'node_modules', 'dist', 'coverage']);
const thisFile = 'tests/project.test.ts';
const pictures = /\.(png|woff2|ico)$/;

interface Line {
  readonly file: string;
  readonly at: number;
  readonly text: string;
}

const lines: readonly Line[] = readdirSync(inRoot(''), { withFileTypes: true })
  .filter((entry) => !notOurs.has(entry.name))
  .flatMap((entry) =>
    entry.isFile()
      ? [entry.name]
      : readdirSync(inRoot(entry.name), { recursive: true, withFileTypes: true })
          .filter((inner) => inner.isFile())
          .map((inner) => `${inner.parentPath.slice(inRoot('').length)}/${inner.name}`),
  )
  .filter((file) => file !== thisFile && !pictures.test(file))
  .flatMap((file) =>
    readFileSync(inRoot(file), 'utf8')
      .split('\n')
      .map((text, index) => ({ file, at: index + 1, text })),
  );

function found(pattern: RegExp, where: RegExp): string[] {
  return lines
    .filter(({ file, text }) => where.test(file) && pattern.test(text))
    .map(({ file, at, text }) => `${file}:${at}: ${text.trim().slice(0, 120)}`);
}

const anywhere = /./;
const whatBuildersRead = /^(src|notebooks|docs)\/|^(README|DEVELOPERS)\.md$|^index\.html$/;

test.each([
  ['a registry host', registry, anywhere, 'https://registry.yarnpkg.com/preact'],
  ['a path of one machine', machinePath, anywhere, 'see /home/builder/boat.json'],
  ['a folder outside the project', outsideFolder, anywhere, '../shared/starters'],
  ['a loose end', looseEnd, anywhere, ['// TO', 'DO: finish'].join('')],
  ['a claim that nobody can make', claim, whatBuildersRead, 'This load is safe.'],
])('no file holds %s', (_what, pattern, where, example) => {
  expect(example).toMatch(pattern);
  expect(found(pattern, where)).toStrictEqual([]);
});

interface Manifest {
  readonly dependencies: Record<string, string>;
  readonly devDependencies: Record<string, string>;
}
interface Lock {
  readonly packages: Record<string, { dev?: boolean; license?: string; resolved?: string }>;
}
const manifest = JSON.parse(readFileSync(inRoot('package.json'), 'utf8')) as Manifest;
const lock = JSON.parse(readFileSync(inRoot('package-lock.json'), 'utf8')) as Lock;

test('package versions are exact', () => {
  const versions = Object.entries({ ...manifest.dependencies, ...manifest.devDependencies });
  expect(versions.filter(([, version]) => !/^\d+\.\d+\.\d+$/.test(version))).toStrictEqual([]);
});

test('the lock file records no download address', () => {
  expect(Object.keys(lock.packages).filter((name) => lock.packages[name]?.resolved)).toStrictEqual([]);
});

test('what ships to the reader is under licences that allow it', () => {
  const free = new Set([
    'MIT',
    'ISC',
    '0BSD',
    'BSD-2-Clause',
    'BSD-3-Clause',
    'Apache-2.0',
    'BSL-1.0',
    'OFL-1.1',
    '(MIT OR Apache-2.0)',
    'Unlicense',
  ]);
  const shipped = Object.entries(lock.packages).filter(([name, { dev }]) => name && !dev);
  expect(shipped.filter(([, { license }]) => !free.has(license ?? ''))).toStrictEqual([]);
});
