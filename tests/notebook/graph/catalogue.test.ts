/** The catalogue of a boat: names, links that hold, instances under other names, and a value or a sentence for each. */
import { isInHand, rowsOf } from '../../../src/cells/form/rows';
import { describe, expect, test } from 'vitest';
import { type Derived, type Given, starters } from '../../../src/boat';
import { type Instance, plainInstance } from '../../../src/cells';
import { cells } from '../../../src/cells/all';
import { cellOf } from '../../cells/cell-of';
import { isIssue, kindOf, plainShown, read } from '../../../src/measure';
import type { Catalogue } from '../../../src/notebook/graph/on-hand';
import { catalogueOf } from '../../../src/notebook/graph/catalogue';
import { createGraph, type Graph } from '../../../src/notebook/graph/graph';
import { wholeCatalogue } from '../../../src/notebook/graph/whole-catalogue';
import { withoutChines, withTwoChines } from '../../cells/odd-boats';
import { allOf } from '../all-of';

const all = (catalogue: Catalogue): readonly (Given | Derived)[] => [
  ...allOf(catalogue).given,
  ...allOf(catalogue).derived,
];
const graphOf = (catalogue: Catalogue, entries: Readonly<Record<string, string>> = {}): Graph =>
  createGraph({ catalogue: () => catalogue, entries: () => entries, shown: plainShown });
const instance = (id: string, name = id, presets: Readonly<Record<string, string>> = {}): Instance => ({
  cell: cellOf(id)!,
  name,
  presets,
});
const dory = starters[0]!.table;

describe.each([
  ...starters,
  { id: 'a boat without chines', table: withoutChines },
  { id: 'a boat with two', table: withTwoChines },
])('$id', ({ table }) => {
  const catalogue = wholeCatalogue(table);
  const graph = graphOf(catalogue);

  test('has each name once, dotted and in camel case', () => {
    const names = all(catalogue).map(({ name }) => name);
    expect(names.length).toBeGreaterThan(300);
    expect(names.filter((name, i) => names.indexOf(name) !== i)).toStrictEqual([]);
    expect(names.filter((name) => !/^[a-z][A-Za-z0-9]*(\.[a-z][A-Za-z0-9]*)+$/.test(name))).toStrictEqual([]);
  });

  test('says of each quantity what it is', () => {
    const vague = all(catalogue).filter(
      ({ kind, meaning }) =>
        kindOf(kind).id !== kind ||
        meaning.trim() === '' ||
        /(?<!\bno)\.$/i.test(meaning) ||
        /undefined|[{}]/.test(meaning),
    );
    expect(vague.map(({ name }) => name)).toStrictEqual([]);
  });

  test('has a finite number, a choice or a sentence for each', () => {
    const amiss = graph.names.filter((name) => {
      const value = graph.value(name);
      if (isIssue(value)) return value.issue.length < 8 || /NaN|Infinity|undefined/.test(value.issue);
      return graph.quantity(name)?.kind === 'choice' ? typeof value !== 'string' : !Number.isFinite(value);
    });
    expect(amiss).toStrictEqual([]);
  });

  test('links only to what it has', () => {
    const { names } = graph;
    const amiss = allOf(catalogue).given.filter(({ name }) => {
      const entry = graph.entry(name)!;
      return entry.written || entry.names.some((linked) => !names.includes(linked));
    });
    expect(amiss.map(({ name }) => name)).toStrictEqual([]);
  });
});

test.each(starters)('$id goes round in no circle, and every entry of it has a value', ({ table }) => {
  const catalogue = wholeCatalogue(table);
  const graph = graphOf(catalogue);
  const silent = allOf(catalogue)
    .given.map(({ name }) => [name, graph.value(name)] as const)
    .filter(([, value]) => isIssue(value));
  expect(silent).toStrictEqual([]);
});

test('limits, steps and presets of the boat read as what they are', () => {
  const amiss = allOf(wholeCatalogue(dory)).given.flatMap(({ name, kind, min, max, step, preset }) => {
    if (kind === 'choice') return [];
    const number = (text: string | undefined) => {
      const reading =
        text === undefined
          ? undefined
          : read(text, { kind, shown: plainShown, field: name, kindOf: () => kind });
      const value =
        reading && !isIssue(reading) && reading.names.length === 0 ? reading.evaluate(() => 0) : undefined;
      return typeof value === 'number' ? value : undefined;
    };
    const [least, most, preset1, by] = [min, max, preset, step].map(number);
    const ordered =
      (least ?? -Infinity) <= (preset1 ?? least ?? 0) && (preset1 ?? most ?? 0) <= (most ?? Infinity);
    return ordered && (by === undefined || by > 0) && (min === undefined) === (least === undefined)
      ? []
      : [name];
  });
  expect(amiss).toStrictEqual([]);
});

test('a boat without chines leaves the cells their numbers', () => {
  const graph = graphOf(wholeCatalogue(withoutChines));
  const inputs = Object.entries(cellOf('bevels')!.inputs).filter(([, { kind }]) => kind !== 'choice');
  expect(inputs.map(([key]) => [key, typeof graph.value(`bevels.${key}`)])).toStrictEqual(
    inputs.map(([key]) => [key, 'number']),
  );
  // A cell that can do without says so; one that is all about a chine has nothing to choose from.
  expect(graph.value('bevels.chine')).toBe('none');
  expect(graph.value('rollingBevel.chine')).toMatchObject({
    issue: expect.stringContaining('none to choose from') as string,
  });
});

describe('an instance under a name of its own', () => {
  const catalogue = catalogueOf(dory, [
    ...cells.map(plainInstance),
    instance('scarf', 'railScarf', { thickness: 'rubRail.thickness', slope: '1 in 12' }),
  ]);

  test('offers its quantities beside the plain one, with presets of its own', () => {
    const graph = graphOf(catalogue);
    expect(graph.value('railScarf.taper')).toBeCloseTo(12 * 0.019, 12);
    expect(graph.value('scarf.taper')).toBeCloseTo(0.144, 12);
    expect(graph.entry('railScarf.thickness')).toMatchObject({ text: 'rubRail.thickness', written: false });
  });

  test('follows its own choices and steps, not those of the plain one', () => {
    const graph = graphOf(catalogue, { 'railScarf.part': 'rubRail', 'railScarf.boardLength': '2 m' });
    expect(graph.value('railScarf.wanted')).toBe(graph.value('rubRail.roughLength'));
    expect(graph.value('scarf.wanted')).toBe(graph.value('keelson.roughLength'));
    expect(graph.entry('railScarf.boards')).toMatchObject({ text: 'railScarf.usualBoards' });
    expect(graph.value('railScarf.boards')).toBeGreaterThan(graph.value('scarf.boards') as number);
  });

  test('may be linked to by others, and a preset that cannot be read says so', () => {
    const linked = graphOf(
      catalogueOf(dory, [
        instance('scarf', 'one', { thickness: '20 mm' }),
        instance('scarf', 'other', { thickness: 'one.thickness', slope: 'wood' }),
      ]),
    );
    expect(linked.value('other.thickness')).toBe(0.02);
    expect(linked.value('other.slope')).toMatchObject({
      issue: expect.stringContaining('there is no quantity "wood"') as string,
    });
    expect(linked.value('other.taper')).toMatchObject({ waitsFor: 'other.slope' });
  });
});

describe('a cell alone', () => {
  test('has its presets where what it links to is not there', () => {
    const bare = graphOf(catalogueOf(dory, [plainInstance(cellOf('laminate')!)]));
    expect(bare.entry('laminate.thickness')).toMatchObject({ names: ['keelson.thickness'] });
    const ferry = starters.find(({ id }) => id === 'ferry-dory')!.table;
    const resin = graphOf(catalogueOf(ferry, [plainInstance(cellOf('resin')!)]));
    expect(resin.entry('resin.bilgeArea')?.text).toBe('0 m^2');
    expect(resin.entry('resin.bottomArea')?.text).toBe('bottom.area');
  });
});

describe('rows of a table', () => {
  const graph = graphOf(wholeCatalogue(dory));
  const frames = ['frame1', 'frame2', 'frame3', 'frame4', 'frame5'];

  test('stand for each answer of the choice, and the row of the answer given says what the cell says', () => {
    for (const cell of cells.filter(({ table }) => table)) {
      const placed = plainInstance(cell);
      const over = graph.quantity(`${cell.id}.${cell.table!.over}`)!;
      const rows = rowsOf(placed, ('options' in over && over.options) || [], graph);
      const inHand = rows.find((row) => isInHand(placed, row, graph));
      // A place that lies between the marks of a list has no row: there the first mark after the end is asked for.
      const { id, value } = inHand ?? rows[1]!;
      const asked = inHand
        ? graph
        : graphOf(wholeCatalogue(dory), { [`${cell.id}.${cell.table!.over}`]: `${value} m` });
      const keys = Object.keys(cell.steps);
      const inRow = keys.map((key) => asked.value(`${cell.id}.${id}.${key}`));
      expect(inRow).toStrictEqual(keys.map((key) => asked.value(`${cell.id}.${key}`)));
    }
  });

  test('follow the boat at their own place', () => {
    const vee = graphOf(wholeCatalogue(starters.find(({ id }) => id === 'vee-launch')!.table));
    const heights = frames.map((frame) => vee.value(`limber.${frame}.outerHeight`));
    expect(new Set(heights).size).toBeGreaterThan(3);
    const asked = frames.map((frame) =>
      graphOf(wholeCatalogue(starters.find(({ id }) => id === 'vee-launch')!.table), {
        'limber.frame': frame,
      }).value('limber.outerHeight'),
    );
    expect(heights).toStrictEqual(asked);
  });

  test('take what is typed into the cell', () => {
    const typed = graphOf(wholeCatalogue(dory), { 'limber.limberWidth': '25 mm' });
    const areas = frames.map((frame) => typed.value(`limber.${frame}.clearArea`) as number);
    expect(areas.every((area, i) => area > (graph.value(`limber.${frames[i]!}.clearArea`) as number))).toBe(
      true,
    );
  });
});
