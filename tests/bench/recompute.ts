/** How long the whole notebook takes without a page: every quantity of a boat, from nothing and after an edit. */
import { signal } from '@preact/signals-core';
import { buildHull, offsetsOf, starters, type Table } from '../../src/boat';
import { plainShown } from '../../src/measure';
import { createGraph, type Graph } from '../../src/notebook/graph/graph';
import { wholeCatalogue } from '../../src/notebook/graph/whole-catalogue';
import { type Section, spread, timesOf } from './table';

const RUNS = 40;

export function recomputing(): Section {
  return {
    title: 'Every quantity of a boat, in Node',
    says: `Median of ${RUNS} runs, warm, ms. "All" reads every quantity of a new graph; the edits write one entry and read every quantity again.`,
    head: [
      'boat',
      'quantities',
      'hull alone',
      'catalogue',
      'all',
      'after an offset',
      'after keelson.thickness',
      'after scarf.slope',
    ],
    rows: starters.map(({ id, table }) => [id, ...timesOn(table)]),
  };
}

function timesOn(table: Table): number[] {
  const median = (run: (i: number) => unknown) => spread(timesOf(RUNS, run)).median;
  const catalogue = wholeCatalogue(table);
  const offsets = offsetsOf(table);
  const { graph, write } = editable(table);
  const readAll = (of: Graph) => of.names.map((name) => of.peek(name));
  readAll(graph);
  const frame = offsets.stations[2]!.name; // no starter has fewer
  const height = `${frame}.sheer.height`;
  const at = (graph.value(height) as number) * 1000;
  const edit = (name: string, text: (i: number) => string) => (i: number) => {
    write(name, text(i));
    return readAll(graph);
  };
  return [
    graph.names.length,
    // Asked for its volume and areas, since a hull works out what it is asked for only.
    median(() => {
      const hull = buildHull(offsets);
      return [hull.volume, hull.panels.map(({ area }) => area)];
    }),
    median(() => wholeCatalogue(table)),
    median(() =>
      readAll(createGraph({ catalogue: () => catalogue, entries: () => ({}), shown: plainShown })),
    ),
    median(edit(height, (i) => `${at + (i % 2)} mm`)),
    median(edit('keelson.thickness', (i) => `${18 + (i % 2)} mm`)),
    median(edit('scarf.slope', (i) => `${8 + (i % 2)}`)),
  ];
}

function editable(table: Table) {
  const entries = signal<Readonly<Record<string, string>>>({});
  const graph = createGraph({
    catalogue: () => wholeCatalogue(table),
    entries: () => entries.value,
    shown: plainShown,
  });
  const write = (name: string, text: string) => {
    entries.value = { ...entries.peek(), [name]: text };
  };
  return { graph, write };
}
