// What the page's parser leaves out is nothing that a sum asks for: built without it, formulas read, measure and reckon
// as with the whole parser, and what can't be read is refused in the same words. Common practice, no source.

import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { array, assert, constantFrom, letrec, oneof, property, tuple } from 'fast-check';
import { build } from 'vite';
import { beforeAll, expect, test } from 'vitest';
import { leanParser } from '../../src/build/lean-parser';
import { cells } from '../../src/cells/all';
import { formula as whole, isIssue } from '../../src/measure';
import type { Tree } from '../../src/measure/parser';
import { inRoot } from '../tools/root.mjs';

type Read = typeof whole;
let lean: Read;
let code = '';

beforeAll(async () => {
  const built = await build({
    root: inRoot(''),
    configFile: false,
    logLevel: 'error',
    plugins: [leanParser()],
    build: { write: false, minify: false, lib: { entry: inRoot('src/measure/formula.ts'), formats: ['es'] } },
  });
  const [file] = [built].flat().flatMap((one) => ('output' in one ? one.output : []));
  code = file?.type === 'chunk' ? file.code : '';
  const folder = mkdtempSync(join(tmpdir(), 'battenbook-'));
  const path = join(folder, 'formula.mjs');
  writeFileSync(path, code);
  ({ formula: lean } = (await import(/* @vite-ignore */ pathToFileURL(path).href)) as { formula: Read });
  return () => rmSync(folder, { recursive: true });
});

/** A tree as plain data: what it is made of by its type. */
const plainOf = (tree: Tree): unknown =>
  tree.type === 'SymbolNode'
    ? tree.name
    : tree.type === 'ParenthesisNode'
      ? [tree.type, plainOf(tree.content)]
      : tree.type === 'OperatorNode'
        ? [tree.op, tree.fn, ...tree.args.map(plainOf)]
        : tree.type === 'FunctionNode'
          ? [tree.type, tree.fn.name, ...tree.args.map(plainOf)]
          : [tree.type, plainOf(tree.condition), plainOf(tree.trueExpr), plainOf(tree.falseExpr)];

/** Some value for every name, none of them round and none alike. */
const valueOf = (name: string): number =>
  Array.from(name).reduce((sum, letter, at) => sum + letter.charCodeAt(0) / (at + 7.3), 0.1);

/** All that a formula tells, as one text. */
function told(read: Read, text: string, functions: Parameters<Read>[1] = {}): string {
  const made = read(text, functions);
  if (isIssue(made)) return made.issue;
  const scope = Object.fromEntries(made.names.map((name) => [name, valueOf(name)]));
  let value: unknown;
  try {
    value = made.evaluate(scope);
  } catch (fault) {
    // A cell's own function may ask for what these values are not.
    value = String(fault);
  }
  const { names, functions: called, asks } = made;
  return JSON.stringify({ names, called, asks, value, tree: plainOf(made.sum.tree) });
}

/** Words in a row, which the scan refuses before the parser is asked. */
const isProse = (text: string) => /[a-z]{2} [a-z]{2,} [a-z]{2}/i.test(text);

/** Every text in a thing that may be a formula, whatever it is for. */
function* textsIn(thing: unknown, seen = new Set<unknown>()): Generator<string> {
  if (typeof thing === 'string' && !isProse(thing)) yield thing;
  if (typeof thing !== 'object' || thing === null || seen.has(thing)) return;
  seen.add(thing);
  for (const part of Object.values(thing)) yield* textsIn(part, seen);
}

test('every formula of every cell', () => {
  let formulas = 0;
  for (const cell of cells)
    for (const text of new Set(textsIn(cell))) {
      const wanted = told(whole, text, cell.functions);
      expect([text, told(lean, text, cell.functions)]).toStrictEqual([text, wanted]);
      if (wanted.startsWith('{') && wanted.includes('Node')) formulas += 1;
    }
  expect(formulas).toBeGreaterThan(200);
});

const parts = [
  'a b cell.taper pi 2 0 25mm 1/4in "oak" 3e9 1.5 sqrt( max( sin( ( ) ) , + - * / ^ ? : < <= > >= == !=',
  'and or not xor mod to in true null NaN end i % ! \' " [ ] { } ; = & | ~ << >>> .. . .^ ?? ?. # ° ² 0x1f 1e _ $ @ \\',
]
  .join(' ')
  .split(' ')
  .concat('\n', '5 ft 6 in');

test('whatever else is written: parts of sums in any order', () => {
  const text = array(constantFrom(...parts), { minLength: 1, maxLength: 9 }).map((some) => some.join(' '));
  assert(
    property(text, (some) => {
      expect(told(lean, some)).toBe(told(whole, some));
    }),
    { numRuns: 4000 },
  );
});

test('and sums that can be read, of any depth', () => {
  const value = constantFrom('a', 'b', 'cell.taper', 'pi', '2', '0', '25 mm', '-3', '1.5');
  const { sum } = letrec<{ sum: string }>((tie) => ({
    sum: oneof(
      { depthSize: 'medium', withCrossShrink: true },
      value,
      tuple(
        tie('sum'),
        constantFrom('+', '-', '*', '/', '^', '<', '<=', '==', '!=', 'and', 'or'),
        tie('sum'),
      ).map((some) => some.join(' ')),
      tie('sum').map((one) => `(${one})`),
      tie('sum').map((one) => `-${one}`),
      tie('sum').map((one) => `not ${one}`),
      tie('sum').map((one) => `sqrt(${one})`),
      tuple(tie('sum'), tie('sum')).map(([one, other]) => `max(${one}, ${other})`),
      tuple(tie('sum'), tie('sum'), tie('sum')).map(([a, b, c]) => `${a} ? ${b} : ${c}`),
    ),
  }));
  let read = 0;
  assert(
    property(sum, (some) => {
      const wanted = told(whole, some);
      if (wanted.startsWith('{')) read += 1;
      expect(told(lean, some)).toBe(wanted);
    }),
    { numRuns: 2000 },
  );
  expect(read).toBeGreaterThan(500);
});

test('what is left out is not there', () => {
  expect(code).toContain('parseConditional');
  expect(code).not.toMatch(/function parse(Matrix|Object|Number|StringToken|Rule2|Conversion)\b/);
  expect(code).not.toMatch(/_toTex|toHTML|PartitionedMap/);
});
