/** What lies on the bench for each notebook, and that a notebook without a boat knows none. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { demoBoat, starters } from '../../src/boat';
import { type Instance, isChoice } from '../../src/cells';
import { cells } from '../../src/cells/all';
import { cellOf } from '../cells/cell-of';
import { isIssue } from '../../src/measure';
import { createBook } from '../../src/notebook/book';
import { catalogueOf } from '../../src/notebook/graph/catalogue';
import { looseCatalogue } from '../../src/notebook/graph/loose-catalogue';
import { headOf, parseNotebook } from '../../src/notebook/markdown';
import type { NotebookPage } from '../../src/notebook/text/page-text';
import { liveValuesOf } from './places';
import { freshState, noBoat, tryAnother, write } from '../../src/notebook/state/state';
import { freshSheet, sheetFor } from '../../src/page/keeping/sheets';
import { inRoot } from '../tools/root.mjs';

const pages = readdirSync(inRoot('notebooks')).map((name) =>
  parseNotebook(readFileSync(inRoot(`notebooks/${name}`), 'utf8'), name),
);
const boatless = pages.filter(({ boat }) => boat === 'none');
const placed = (page: NotebookPage): Instance[] =>
  page.places.map(({ cell, instance, presets }) => ({ cell: cellOf(cell)!, name: instance, presets }));
const looseBook = (instances: readonly Instance[]) =>
  createBook(freshState(noBoat), () => looseCatalogue(instances));

describe('a notebook without a boat', () => {
  test('is there', () => {
    expect(boatless.map(({ id }) => id)).toContain('quick-answers');
  });

  test.each(boatless.map((page) => [page.id, page] as const))(
    '%s has a value for all that it asks',
    (_id, page) => {
      const graph = looseBook(placed(page)).first.value;
      const value = (name: string) => graph.value(name);
      for (const { cell, name } of placed(page))
        for (const key of [...Object.keys(cell.inputs), ...Object.keys(cell.steps)])
          expect([`${name}.${key}`, value(`${name}.${key}`)]).not.toStrictEqual([
            `${name}.${key}`,
            expect.objectContaining({ issue: expect.any(String) as string }),
          ]);
      expect(liveValuesOf(page).filter(({ of }) => isIssue(value(of)))).toStrictEqual([]);
    },
  );

  test.each(boatless.map((page) => [page.id, page] as const))(
    '%s links to nothing outside it',
    (_id, page) => {
      const book = looseBook(placed(page));
      const own = new Set(placed(page).map(({ name }) => name));
      const graph = book.first.value;
      const { names } = graph;
      // Beside its cells there are the tables of the trade, which belong to no boat.
      const parts = new Set(names.map((name) => name.split('.')[0]!));
      const ofTrade = ['adhesive', 'coating', 'fillers', 'hardener', 'paints', 'plywood', 'timber'];
      expect([...parts].filter((part) => !own.has(part) && !ofTrade.includes(part))).toStrictEqual([]);
      expect([...parts]).toEqual(expect.arrayContaining(page.form ? ofTrade : []));
      for (const name of names)
        for (const other of graph.entry(name)?.names ?? []) expect(names).toContain(other);
    },
  );

  test('leaves every cell its presets, plain ones too, whose links lead to a boat elsewhere', () => {
    const plain = cells.map((cell) => ({ cell, name: cell.id, presets: {} }));
    const onBoat = createBook(freshState(demoBoat), (table) => catalogueOf(table, plain)).first.value;
    const loose = looseBook(plain).first.value;
    const scarf = (graph: typeof loose) => graph.entry('scarf.thickness')?.text;
    expect(scarf(onBoat)).toBe('keelson.thickness');
    expect(scarf(loose)).toBe(cellOf('scarf')!.inputs['thickness']!.preset);
    expect(loose.hull()).toMatchObject({ issue: expect.stringMatching(/no boat/) as string });
  });

  test('keeps a choice among a boat’s parts as it is preset, with nothing else to choose', () => {
    const page = boatless.find(({ id }) => id === 'quick-answers')!;
    const graph = looseBook(placed(page)).first.value;
    const ofBoat = placed(page).flatMap(({ cell, name }) =>
      Object.entries(cell.inputs).flatMap(([key, spec]) =>
        isChoice(spec) && typeof spec.options === 'string' ? [[`${name}.${key}`, spec.preset]] : [],
      ),
    );
    expect(ofBoat.length).toBeGreaterThan(5);
    for (const [name, preset] of ofBoat) {
      const given = graph.quantity(name!)!;
      expect([name, graph.value(name!), 'options' in given ? given.options?.length : 0]).toStrictEqual([
        name,
        preset,
        1,
      ]);
    }
  });
});

describe('the sheet for a notebook', () => {
  const head = (boat: string) => headOf(parseNotebook(`---\ntitle: A\nboat: ${boat}\n---\n`, 'a.md'));
  const plain = headOf(parseNotebook('# A', 'a.md'));

  test('is the builder’s boat where it asks for none other', () => {
    const sheet = sheetFor(plain, 'mine', new Map());
    expect(sheet).toStrictEqual({ kind: 'boat', key: 'mine', notebook: null, boat: null });
    expect(freshSheet(sheet, plain, demoBoat, () => null).state).toStrictEqual(freshState(demoBoat));
  });

  test.each(starters.map(({ id, table }) => [id, table] as const))(
    'is the %s’s own, apart from the builder’s',
    (id, table) => {
      const sheet = sheetFor(head(id), 'mine', new Map());
      expect(sheet).toStrictEqual({
        kind: 'lesson',
        key: `battenbook lesson a ${id}`,
        notebook: 'a',
        boat: id,
      });
      expect(freshSheet(sheet, head(id), table, () => null).state).toStrictEqual(freshState(table));
      expect(sheetFor(plain, 'mine', new Map([['a', id]]))).toStrictEqual(sheet);
      expect(sheetFor(head(id), 'mine', new Map([['a', null]]))).toStrictEqual(
        sheetFor(plain, 'mine', new Map()),
      );
    },
  );

  test('is one without a boat where it knows none, and no boat can be read there', () => {
    const sheet = sheetFor(head('none'), 'mine', new Map());
    expect(sheet).toStrictEqual({ kind: 'loose', key: 'battenbook loose a', notebook: 'a', boat: null });
    expect(sheetFor(head('none'), 'mine', new Map([['a', null]]))).toStrictEqual(sheet);
  });

  test('is another for each boat whose own notebook it is', () => {
    const [none, boat] = ['none', 'ferry-dory'].map((which) =>
      sheetFor(head(which), 'mine', new Map(), true),
    );
    expect(none?.key).toBe('battenbook loose a of mine');
    expect(boat?.key).toBe('battenbook lesson a ferry-dory of mine');
    expect(sheetFor(plain, 'mine', new Map(), true)).toStrictEqual(sheetFor(plain, 'mine', new Map()));
  });

  test('without a boat takes over what its cells were given when that was kept with the boat', () => {
    const quick = headOf(
      parseNotebook('---\nboat: none\n---\n```cell scarf as quickScarf\n```\n', 'quick.md'),
    );
    const boat = write(tryAnother(freshState(demoBoat, { 'quickScarf.slope': '9', 'scarf.slope': '7' })), {
      'quickScarf.width': '80 mm',
      'bend.radius': '2 m',
    });
    const { state } = freshSheet(sheetFor(quick, 'mine', new Map()), quick, noBoat, () => boat);
    expect(state).toMatchObject({
      table: noBoat,
      entries: { 'quickScarf.slope': '9' },
      second: { 'quickScarf.width': '80 mm' },
    });
    expect(state.entries).toStrictEqual({ 'quickScarf.slope': '9' });
    expect(state.second).toStrictEqual({ 'quickScarf.width': '80 mm' });
  });
});

test('a notebook that asks for a boat there is not is told which there are', () => {
  const page = parseNotebook('---\nboat: tall ship\n---\n', 'a.md');
  expect(page.boat).toBeNull();
  expect(page.blocks).toStrictEqual([
    expect.objectContaining({
      type: 'fault',
      line: 2,
      says: expect.stringMatching(/none, ferry-dory.*tall ship/) as string,
    }),
  ]);
});

describe('a block that brings a boat', () => {
  const blocks = (text: string) => parseNotebook(text, 'a.md').blocks;

  test('stands where the story begins', () => {
    expect(blocks('A\n\n```boat creek-punt\n```\n')[1]).toStrictEqual({
      type: 'boat',
      boat: 'creek-punt',
      line: 3,
    });
  });

  test.each([
    '```boat\n```',
    '```boat tall ship\n```',
    '```boat creek-punt\nkeel = 3\n```',
    '```boat creek-punt',
  ])('%j is told what it lacks', (text) => {
    expect(blocks(`${text}\n`)).toStrictEqual([expect.objectContaining({ type: 'fault', line: 1 })]);
  });
});
