/** A cell's fields: the few that decide stand in view, each other one in a group with a name of the trade. */
import { describe, expect, test } from 'vitest';
import { demoBoat } from '../../../src/boat';
import { type Cell, grouped, isAsked, isChoice, plainInstance } from '../../../src/cells';
import { cells } from '../../../src/cells/all';
import { createBook } from '../../../src/notebook/book';
import { catalogueOf } from '../../../src/notebook/graph/catalogue';
import { freshState } from '../../../src/notebook/state/state';

/** As many as are read at a glance. */
const DECIDING = 5;
const MOST = 8;

/** As it stands, and with each answer of each choice of its own. */
const settingsOf = (cell: Cell): readonly Readonly<Record<string, string>>[] => [
  {},
  ...Object.entries(cell.inputs).flatMap(([key, spec]) =>
    isChoice(spec) && typeof spec.options !== 'string'
      ? spec.options.map(({ id }) => ({ [`${cell.id}.${key}`]: id }))
      : [],
  ),
];

describe.each(cells.map((cell) => [cell.id, cell] as const))('%s', (_, cell) => {
  const instance = plainInstance(cell);
  const shown = settingsOf(cell).map((entries) => {
    const book = createBook(freshState(demoBoat, entries), (of) => catalogueOf(of, [instance]));
    const graph = book.first.value;
    const asked = Object.keys(cell.inputs).filter((key) => isAsked(instance, key, graph));
    return {
      entries,
      ...grouped(
        cell,
        asked.map((key) => [key, key] as const),
      ),
    };
  });

  test(`has one to ${DECIDING} deciding fields in view, however it is set`, () => {
    const amiss = shown.filter(({ deciding }) => deciding.length < 1 || deciding.length > DECIDING);
    expect(amiss.map(({ entries, deciding }) => ({ entries, deciding }))).toStrictEqual([]);
  });

  test('has each field in one place', () => {
    const { groups = {} } = cell;
    const placed = Object.values(groups).flat();
    expect(placed.filter((key) => !(key in cell.inputs))).toStrictEqual([]);
    expect(placed.filter((key, at) => placed.indexOf(key) !== at)).toStrictEqual([]);
  });

  test(`has groups of two to ${MOST} fields, each of use in some setting`, () => {
    for (const [name, keys] of Object.entries(cell.groups ?? {})) {
      expect(name).toMatch(/^[A-Z][a-z’ ]+$/i);
      expect(name.length).toBeLessThanOrEqual(24);
      expect([name, keys.length]).not.toStrictEqual([name, 1]);
      const sizes = shown.map(({ groups }) => groups.find((one) => one.name === name)?.fields.length ?? 0);
      expect([name, Math.max(...sizes) >= 1 && Math.max(...sizes) <= MOST]).toStrictEqual([name, true]);
    }
  });
});

// A row of keys is as high as a field on a phone: more of them than fields are a screen of their own.
test('more than twelve groups stand behind one name, and no fewer', () => {
  const many = cells.filter(({ groups = {} }) => Object.keys(groups).length > 12).map(({ id }) => id);
  expect(many).not.toStrictEqual([]);
  expect(cells.filter(({ folded }) => folded !== undefined).map(({ id }) => id)).toStrictEqual(many);
});

test('a group is called the same in every cell: no two names differ by an s alone', () => {
  const names = new Set(cells.flatMap(({ groups = {} }) => Object.keys(groups)));
  expect(names.size).toBeGreaterThan(20);
  expect([...names].filter((name) => names.has(`${name}s`))).toStrictEqual([]);
});
