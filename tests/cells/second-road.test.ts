/**
 * Second roads: steps reckoned once more, otherwise than the cell does it, in many settings on every starter.
 *
 * What a builder reads off between a cell's entries and its answers is so held by value too, wherever no check against
 * the world outside turns on it.
 */
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { buildHull, demoBoat, type Hull, lists, offsetsOf, starters, type Table } from '../../src/boat';
import { type Cell, isChoice, optionsOf, plainInstance, type Values } from '../../src/cells';
import { cells } from '../../src/cells/all';
import { isIssue } from '../../src/measure';
import { catalogueOf } from '../../src/notebook/graph/catalogue';
import { bench } from '../notebook/small-graph';
import { withLeaningFrame, withoutChines, withTwoChines } from './odd-boats';
import { acceptedEntries } from './proofs';
import { roads, tried } from './roads';
import type { Setting } from './roads/road';
import { entriesAsValues } from './settings';
import { allOf } from '../notebook/all-of';
import { runSteps } from './alone';

const boats: readonly Table[] = [
  ...starters.map(({ table }) => table),
  withoutChines,
  withTwoChines,
  withLeaningFrame,
];

/** The cell's inputs as they stand on a boat. */
function standing(cell: Cell, table: Table): Values {
  const { given, derived, hull } = allOf(catalogueOf(table, [plainInstance(cell)]));
  const { graph } = bench(given, derived, hull);
  return Object.fromEntries(
    Object.keys(cell.inputs).map((key) => [key, graph.value(`${cell.id}.${key}`) as number | string]),
  );
}

function settingOf(cell: Cell, hull: Hull, inputs: Values): Setting | null {
  const values = runSteps(cell, inputs, hull);
  if (isIssue(values)) return null;
  const at = (key: string) => {
    const value = values[key];
    if (value === undefined) throw new Error(`${cell.id} has no ${key}`);
    return value;
  };
  return {
    hull,
    n: (key) => Number(at(key)),
    word: (key) => String(at(key)),
    is: (key, ...answers) => answers.includes(String(at(key))),
    rerun: (changes) => {
      const again = settingOf(cell, hull, { ...inputs, ...changes });
      if (!again) throw new Error(`${cell.id} has no values with ${JSON.stringify(changes)}`);
      return again;
    },
  };
}

/** Answers of a choice that are gone through; more of a long list would say the same again. */
const ANSWERS = 6;

/** As they stand on every boat; on the demo boat with other answers to each choice too, and as they may be typed. */
function* settingsOf(cell: Cell): Generator<Setting> {
  const written = (inputs: Values, entries: Readonly<Record<string, string>>) => ({
    ...inputs,
    ...entriesAsValues(cell, entries),
  });
  for (const table of boats) {
    const hull = buildHull(offsetsOf(table));
    const plain = standing(cell, table);
    const answers = Object.entries(cell.inputs).flatMap(([key, spec]) =>
      isChoice(spec)
        ? optionsOf(spec, lists(table))
            .slice(0, ANSWERS)
            .map(({ id }) => ({ [key]: id }))
        : [],
    );
    const typed = fc.sample(acceptedEntries(cell), { seed: 53, numRuns: 30 });
    const many = table === demoBoat ? [...answers, ...(tried[cell.id] ?? []), ...typed] : [];
    for (const entries of [{}, ...many]) {
      const setting = settingOf(cell, hull, written(plain, entries));
      if (setting) yield setting;
    }
  }
}

describe.each(cells.filter(({ id }) => id in roads).map((cell) => [cell.id, cell] as const))(
  '%s',
  (id, cell) => {
    const settings = [...settingsOf(cell)];
    test.each(Object.entries(roads[id]!))('%s', (key, road) => {
      const kind = cell.steps[key]!.kind;
      const seen = new Set<number | string>();
      const off = settings.flatMap((setting) => {
        const answer = road(setting);
        if (answer === null) return [];
        const [wanted, within] = typeof answer === 'object' ? answer : [answer, 1e-9];
        const is = kind === 'choice' ? setting.word(key) : setting.n(key);
        seen.add(is);
        const same =
          typeof wanted === 'number' && typeof is === 'number'
            ? Math.abs(is - wanted) <= within * Math.abs(wanted) + 1e-12
            : is === wanted;
        return same ? [] : [{ is, wanted }];
      });
      expect(off).toStrictEqual([]);
      // A slip of three per cent, or another word, must show somewhere.
      expect(
        [...seen].filter((value) => typeof value === 'string' || Math.abs(value) > 1e-9),
      ).not.toStrictEqual([]);
    });
  },
);
