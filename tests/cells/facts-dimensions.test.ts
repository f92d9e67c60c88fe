/**
 * What a step tells of a fact measures what its kind says: in a boat twice as large, made of numbers that are all larger
 * by what their kinds say, it is larger by what its own kind says. Doubling loses no bit, so only a length that the
 * working has of its own makes a difference.
 */
import { describe, expect, test } from 'vitest';
import { buildHull, type Hull, offsetsOf, starter, type Table } from '../../src/boat';
import { type Cell, isTold, plainInstance, type Values } from '../../src/cells';
import { cells } from '../../src/cells/all';
import { runStep } from '../../src/cells/form/steps';
import { scopeAlone } from './alone';
import { isIssue, type KindId, kindOf, plainShown } from '../../src/measure';
import { catalogueOf } from '../../src/notebook/graph/catalogue';
import { createGraph } from '../../src/notebook/graph/graph';

/** How many times as large numbers of length, mass and time are made. */
const LARGER = [2, 4, 8] as const;

/**
 * Screws that are moved go to whole millimetres, in large plates to every second or third, m; boards are laid by the
 * micrometre; the edges of flat panels, from which cloth is cut, keep within 0.02 mm of the curve on any boat;
 * pieces cut from sheets have them within a pencil line, 0.25 mm.
 */
const grid: Readonly<Record<string, number>> = { screwMap: 3e-3, boards: 1e-5, cloth: 1e-4, sheets: 3e-3 };

/** Cells whose working goes by the clock: a day is as long for any boat, so time stays as it is. */
const byTheClock: ReadonlySet<string> = new Set(['cure']);
const TIME = 2;

/** What a sheet takes is looked up by its thickness in published rows, which are as they are for any boat. */
const byTable: ReadonlySet<string> = new Set(['sheets.takenAlong', 'sheets.takenAcross']);

const factorOf = (kind: KindId, id: string): number =>
  LARGER.reduce(
    (product, times, base) =>
      base === TIME && byTheClock.has(id) ? product : product * times ** kindOf(kind).dimension[base]!, // of six powers
    1,
  );

function doubled({ offsets }: Hull): Hull {
  const twice = (value: number | null) => (value === null ? null : value * LARGER[0]);
  const points = offsets.points.map((line) =>
    line.map(([x, y, z]) => [twice(x), twice(y), twice(z)] as unknown as (typeof line)[number]),
  );
  return buildHull({ ...offsets, points });
}

/** All values of the cell that it has on the boat. */
function valuesOn(table: Table, cell: Cell): Values {
  const catalogue = catalogueOf(table, [plainInstance(cell)]);
  const graph = createGraph({
    catalogue: () => catalogue,
    entries: () => ({}),
    shown: plainShown,
  });
  return Object.fromEntries(
    [...Object.keys(cell.inputs), ...Object.keys(cell.steps)].flatMap((key) => {
      const value = graph.value(`${cell.id}.${key}`);
      return isIssue(value) ? [] : [[key, value]];
    }),
  );
}

const boats = ['ferry-dory-misread', 'vee-launch'].map((id) => {
  const table = starter(id)!;
  const hull = buildHull(offsetsOf(table));
  return { id, table, large: doubled(hull) };
});

const told = cells.filter(({ steps }) => Object.values(steps).some(isTold));

describe.each(told.map((cell) => [cell.id, cell] as const))('%s', (id, cell) => {
  const larger = (value: number | string, kind: KindId) =>
    typeof value === 'number' ? value * factorOf(kind, id) : value;
  test.each(boats.map((boat) => [boat.id, boat] as const))('on the %s', (_id, { table, large }) => {
    const values = valuesOn(table, cell);
    const lookUp = (key: string) => {
      const kind = (cell.inputs[key] ?? cell.steps[key])!.kind; // a fact asks for keys of its cell
      const value = values[key];
      if (value === undefined) throw new Error(`${key} has no value`);
      return larger(value, kind);
    };
    const scope = scopeAlone(lookUp, large);
    const amiss = Object.entries(cell.steps).flatMap(([key, step]) => {
      const was = values[key];
      if (!isTold(step) || was === undefined || byTable.has(`${id}.${key}`)) return [];
      const is = runStep(cell, step, scope);
      const wanted = larger(was, step.kind);
      const same =
        typeof is === 'number' && typeof wanted === 'number'
          ? Math.abs(is - wanted) <= (grid[id] ?? 1e-9 * Math.max(Math.abs(wanted), 1e-6))
          : is === wanted;
      return same ? [] : [`${key}: ${JSON.stringify(is)} for ${wanted}`];
    });
    expect(amiss).toStrictEqual([]);
  });
});
