/** Cells side by side: where two of them answer one question, they answer it alike on every boat. */
import { describe, expect, test } from 'vitest';
import { starters, type Table } from '../../src/boat';
import { isChoice, plainInstance, warningsOf } from '../../src/cells';
import { cells } from '../../src/cells/all';
import { singleJoints } from '../../src/cells/timber/glued-joints';
import { usualGlue } from '../../src/cells/timber/glues';
import { plainShown, write } from '../../src/measure';
import { createGraph } from '../../src/notebook/graph';
import { wholeCatalogue } from '../../src/notebook/whole-catalogue';
import { withoutChines, withTwoChines } from './odd-boats';

const boats = [
  ...starters,
  { id: 'no chines', table: withoutChines },
  { id: 'two chines', table: withTwoChines },
];

/** All cells on one boat, linked as in a notebook that holds them all. */
function together(table: Table, entries: Readonly<Record<string, string>> = {}) {
  const graph = createGraph({
    ...wholeCatalogue(table),
    written: (name) => entries[name],
    shown: plainShown,
  });
  const number = (name: string): number => {
    const value = graph.value(name);
    if (typeof value !== 'number') throw new Error(`${name}: ${JSON.stringify(value)}`);
    return value;
  };
  return { graph, number };
}

describe.each(boats)('on the $id', ({ table }) => {
  test('clamps and glue speak of one joint: its length, its pace, how much is closed at once', () => {
    const { number } = together(table);
    for (const { id } of singleJoints) {
      const [run, pieces] = [number(`glue.${id}.run`), number(`glue.${id}.pieces`)];
      const clamps = number(`clamps.${id}.clamps`);
      expect([id, clamps > 0]).toStrictEqual([id, run > 0]);
      if (run === 0) continue;
      expect(number(`clamps.${id}.evenPitch`) * clamps).toBeCloseTo(run / pieces, 9);
      // What the one says can be closed at once takes the other just its open time.
      const atOnce = number(`glue.${id}.atOnce`);
      expect((number(`clamps.${id}.pace`) * atOnce) / number(`clamps.${id}.open`)).toBeCloseTo(1, 9);
      expect(number(`glue.${id}.goes`)).toBe(pieces * Math.max(1, number(`clamps.${id}.goesByTime`)));
    }
  });

  test('glue, clamps and moisture warn of nothing as they stand', () => {
    const { graph } = together(table);
    for (const cell of cells.filter(({ id }) =>
      ['glue', 'clamps', 'moisture', 'fillet', 'resin'].includes(id),
    )) {
      const said = warningsOf(plainInstance(cell), graph.work, (value, kind, options) =>
        write(value, kind, plainShown, options),
      );
      expect([cell.id, said.map(({ says }) => says)]).toStrictEqual([cell.id, []]);
    }
  });
});

test('all cells ask about the same glue until another is chosen', () => {
  const asking = cells.flatMap(({ id, inputs }) => {
    const spec = inputs['glue'];
    return spec && isChoice(spec) ? [[id, spec.preset] as const] : [];
  });
  expect(asking.length).toBeGreaterThan(3);
  expect(asking.filter(([, preset]) => preset !== usualGlue)).toStrictEqual([]);
});
