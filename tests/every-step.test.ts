/**
 * Every step of every cell, and every number that the boat works out, is held by value somewhere: by a second road, by
 * a row against the world outside, which a slip of one per cent fails, or by an assertion that asks for it by name.
 */
import { parseSync } from 'vite';
import { describe, expect, test } from 'vitest';
import { boatQuantities, starters } from '../src/boat';
import { cells } from '../src/cells/all';
import { roads } from './cells/roads';

const sources = import.meta.glob<string>(['./**/*.test.ts', './**/*.checks.ts'], {
  eager: true,
  query: '?raw',
  import: 'default',
});

type Node = Readonly<Record<string, unknown>> & { readonly type: string };
const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && 'type' in value;

/** A part of a program and all parts of it. */
function* partsOf(value: unknown): Generator<Node> {
  if (Array.isArray(value)) for (const one of value) yield* partsOf(one);
  if (!isNode(value)) return;
  yield value;
  for (const part of Object.values(value)) yield* partsOf(part);
}

const textOf = (node: Node, text: string) => text.slice(Number(node['start']), Number(node['end']));

/** Whether something is asserted here: a test that expects, or what a check obtains. */
function asserts(node: Node, text: string): boolean {
  if (node.type === 'CallExpression') {
    const call = textOf(node, text);
    return /^(test|it)\b/.test(call) && call.includes('expect(');
  }
  return node.type === 'Property' && textOf(node, text).startsWith('obtain');
}

/** Words that stand as names in a file's assertions: `taper`, `scarf.taper`, `frame2.taper`. */
function namesAsserted(path: string, text: string): ReadonlySet<string> {
  const names = new Set<string>();
  for (const part of partsOf(parseSync(path, text).program)) {
    if (!asserts(part, text)) continue;
    for (const { type, value } of partsOf(part)) {
      if (type === 'Literal' && typeof value === 'string') names.add(value);
      // The end of a template: `${option}.taper`.
      if (type === 'TemplateElement' && typeof value === 'object' && value !== null && 'cooked' in value)
        names.add(String(value.cooked));
    }
  }
  return names;
}

const files = Object.entries(sources).map(([path, text]) => ({
  path,
  text,
  names: namesAsserted(path, text),
}));
const fileName = (id: string) => id.replaceAll(/[A-Z]/g, (capital) => `-${capital.toLowerCase()}`);

describe.each(cells.map((cell) => [cell.id, cell] as const))('%s', (id, cell) => {
  const own = files.filter(({ text }) => text.includes(`/${fileName(id)}'`));
  const isHeld = (key: string) =>
    key in (roads[id] ?? {}) ||
    own.some(({ names }) => [...names].some((name) => name === key || name.endsWith(`.${key}`))) ||
    files.some(({ names }) => names.has(`${id}.${key}`));
  test('has no step that nobody holds', () => {
    expect(Object.keys(cell.steps).filter((key) => !isHeld(key))).toStrictEqual([]);
  });
});

test('the boat has no number that nobody holds', () => {
  const last = (name: string) => name.slice(name.lastIndexOf('.') + 1);
  const said = new Set(files.flatMap(({ names }) => [...names].map(last)));
  const names = starters.flatMap(({ table }) => boatQuantities(table).derived.map(({ name }) => last(name)));
  expect([...new Set(names)].filter((name) => !said.has(name))).toStrictEqual([]);
});
