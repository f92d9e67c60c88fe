/** Which cells stand under which names; and what is told where one can't. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { lists, starters } from '../../src/boat';
import type { Cell } from '../../src/cells';
import { cells } from '../../src/cells/all';
import { catalogueOf } from '../../src/notebook/graph/catalogue';
import { looseCatalogue } from '../../src/notebook/graph/loose-catalogue';
import { parseNotebook } from '../../src/notebook/markdown';
import { type Placing, placing } from '../../src/notebook/placing';
import { inRoot } from '../tools/root.mjs';

const all: ReadonlyMap<string, Cell> = new Map(cells.map((cell) => [cell.id, cell]));
const cell = (info: string, ...lines: string[]) => ['```cell ' + info, ...lines, '```', ''].join('\n');
const page = (text: string, name = 'a') => parseNotebook(text, name);
const none = () => false;
const said = ({ remarks }: Placing) => [...remarks].map(([{ line }, { says }]) => [line, says]);

test('a cell stands under its own name, and under each that a notebook gives it', () => {
  const one = page(cell('scarf') + cell('scarf as keelScarf', 'slope = 10'));
  const { instances, remarks } = placing(all, [one], [], none);
  expect([...instances.keys()]).toStrictEqual(['scarf', 'keelScarf']);
  expect(instances.get('keelScarf')).toStrictEqual({
    cell: all.get('scarf'),
    name: 'keelScarf',
    presets: { slope: '10' },
  });
  expect(remarks.size).toBe(0);
});

test('what stands where it stood is the same one, whatever is placed beside it', () => {
  const one = page(cell('scarf as s1x'));
  const alone = placing(all, [one], cells, none).instances;
  const beside = placing(all, [page(cell('bend as b1x'), 'b'), one], cells, none).instances;
  for (const name of ['s1x', 'scarf', 'bend']) expect(beside.get(name)).toBe(alone.get(name));
});

test('a cell that is still on its way has its name kept for it', () => {
  const pages = [page(cell('scarf as s1x')), page(cell('bend as s1x'), 'b')];
  const { instances, remarks } = placing(new Map([['bend', all.get('bend')!]]), pages, [], none);
  expect(instances.size).toBe(0);
  expect([...remarks.keys()]).toStrictEqual(pages[1]!.places);
});

describe('what can’t stand is told at its place, and the rest stands', () => {
  test('a cell that there is not', () => {
    const placed = placing(all, [page(cell('scraf') + cell('bend'))], [], none);
    expect(said(placed)).toStrictEqual([[1, 'there is no calculator cell called "scraf".']]);
    expect([...placed.instances.keys()]).toStrictEqual(['bend']);
  });

  test('the name of a line or a station of this boat', () => {
    const one = page(cell('scarf as frame3') + cell('bend as chine'));
    const { edges, stations } = lists(starters[0]!.table);
    const words = new Set([...edges, ...stations].map(({ id }) => id));
    const placed = placing(all, [one], [], (word) => words.has(word));
    expect(said(placed)).toStrictEqual([
      [1, expect.stringMatching(/"frame3" is a part of this boat/)],
      [3, expect.stringMatching(/"chine" is a part of this boat/)],
    ]);
    expect(placed.instances.size).toBe(0);
  });

  test('a name that another notebook has already for something else; the same may stand in both', () => {
    const first = page(`---\ntitle: First\n---\n${cell('scarf as s1x', 'slope = 8')}`);
    const same = page(cell('scarf as s1x', 'slope = 8'), 'b');
    const other = page(cell('scarf as s1x', 'slope = 9'), 'c');
    expect(placing(all, [first, same], [], none).remarks.size).toBe(0);
    const placed = placing(all, [first, same, other], [], none);
    expect(said(placed)).toStrictEqual([
      [1, expect.stringMatching(/"s1x" already stands in the notebook “First”/)],
    ]);
    expect(placed.instances.get('s1x')?.presets).toStrictEqual({ slope: '8' });
  });

  test('lines for what the cell does not ask: it stands without them', () => {
    const one = page(cell('scarf as s1x', 'slope = 8', 'colour = red', 'constructor = 3', 'toString = 4'));
    const placed = placing(all, [one], [], none);
    expect(said(placed)).toStrictEqual([
      [1, expect.stringMatching(/has no "colour" and no "constructor" and no "toString"; .*slope/)],
    ]);
    const { find } = looseCatalogue(placed.instances.values());
    expect(find('s1x.slope')).toMatchObject({ preset: '8' });
    expect(find('s1x.colour')).toBeUndefined();
  });
});

test.each(starters.map(({ id, table }) => [id, table] as const))(
  'no placing takes a word that quantities of the %s have for their first',
  (_, table) => {
    const { edges, stations } = lists(table);
    const words = new Set([...edges, ...stations].map(({ id }) => id));
    // With every cell in place, so that all that cells bring along is there too.
    const own = cells.map((one) => ({ cell: one, name: `${one.id}Own1`, presets: {} }));
    const first = new Set(
      catalogueOf(table, own)
        .names()
        .map((name) => name.split('.')[0]!),
    );
    const free = [...first].filter((word) => {
      if (word.endsWith('Own1')) return false;
      const one = page(cell(`scarf as ${word}`));
      return one.faults.length === 0 && placing(all, [one], [], (name) => words.has(name)).remarks.size === 0;
    });
    expect(free).toStrictEqual([]);
  },
);

test('of thirty notebooks of a hundred cells each, as many stand as a boat can carry', () => {
  const pages = Array.from({ length: 30 }, (_, n) =>
    page(Array.from({ length: 100 }, (_, k) => cell(`limber as n${n}c${k}`)).join('\n'), `n${n}`),
  );
  const { instances, remarks } = placing(all, pages, cells, none);
  expect(instances.size).toBe(500 + cells.length);
  expect(remarks.size).toBe(2500);
  expect(remarks.get(pages[5]!.places[0]!)?.says).toMatch(/more than 500 cells; put one of them away/);
  const names = catalogueOf(starters[0]!.table, instances.values()).names();
  const [asked] = Object.keys(all.get('limber')!.inputs);
  expect(names).toContain(`n4c99.${asked}`);
  expect(names).not.toContain(`n5c0.${asked}`);
});

describe('the notebooks that come along', () => {
  const built = import.meta.glob<unknown>('#notebooks/*.md', { eager: true, import: 'default' });
  const texts = readdirSync(inRoot('notebooks')).filter((name) => name.endsWith('.md'));
  const textOf = (name: string) => readFileSync(inRoot(`notebooks/${name}`), 'utf8');

  test.each(texts)('%s is read when the page is built as it would be where it runs', (name) => {
    const [, data] = Object.entries(built).find(([path]) => path.endsWith(`/${name}`)) ?? [];
    expect(data).toStrictEqual(parseNotebook(textOf(name), name));
    // And opened from a file, which may have other line ends.
    expect(data).toStrictEqual(parseNotebook(textOf(name).replaceAll('\n', '\r\n'), name.replace('.md', '')));
  });

  test.each(starters.map(({ id, table }) => [id, table] as const))('all stand on the %s', (_, table) => {
    const { edges, stations } = lists(table);
    const words = new Set([...edges, ...stations].map(({ id }) => id));
    const pages = texts.map((name) => parseNotebook(textOf(name), name));
    expect(said(placing(all, pages, cells, (word) => words.has(word)))).toStrictEqual([]);
  });
});
