/** How long the whole notebook takes without a page: every quantity of a boat, from nothing and after an edit. */
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { signal } from '@preact/signals-core';
import { buildHull, offsetsOf, partOf, starters, type Table } from '../../src/boat';
import { plainInstance } from '../../src/cells';
import { cells } from '../../src/cells/all';
import { plainShown } from '../../src/measure';
import { catalogueOf } from '../../src/notebook/graph/catalogue';
import { createGraph, type Graph } from '../../src/notebook/graph/graph';
import { wholeCatalogue } from '../../src/notebook/graph/whole-catalogue';
import { type Section, spread, timesOf } from './table';

const RUNS = 15;

export function recomputing(): Section {
  return {
    title: 'Every quantity of a boat, in Node',
    says: `Median of ${RUNS} runs, warm, ms. All quantities but the rows of tables, which are worked out where they are looked at: from nothing, catalogue and graph made anew, then read again after one entry is written. "A cell added" comes into the open book and is read; memory is that of a graph all of which was read, MB.`,
    head: [
      'boat',
      'quantities',
      'rows',
      'hull alone',
      'catalogue',
      'all',
      'all and rows',
      'after an offset',
      'after keelson.thickness',
      'after scarf.slope',
      'a cell added',
      'memory',
    ],
    rows: starters.map(({ id, table }) => [id, ...timesOn(table)]),
  };
}

const ofCells = new Set(cells.map(({ id }) => id));
const isRow = (name: string): boolean => ofCells.has(partOf(name)) && name.split('.').length > 2;

const read = (graph: Graph, names: readonly string[]) => names.map((name) => graph.peek(name));
/** Another table to the catalogue, which keeps what it made for one. */
const anew = (table: Table): Table => ({ ...table });
const graphOn = (table: Table): Graph => {
  const catalogue = wholeCatalogue(table);
  return createGraph({ catalogue: () => catalogue, entries: () => ({}), shown: plainShown });
};

function timesOn(table: Table): number[] {
  const median = (run: (i: number) => unknown) => spread(timesOf(RUNS, run)).median;
  const offsets = offsetsOf(table);
  const { graph, write } = editable(table);
  const all = graph.names;
  const names = all.filter((name) => !isRow(name));
  read(graph, names);
  const frame = offsets.stations[2]!.name; // no starter has fewer
  const height = `${frame}.sheer.height`;
  const at = (graph.value(height) as number) * 1000;
  const edit = (name: string, text: (i: number) => string) => (i: number) => {
    write(name, text(i));
    return read(graph, names);
  };
  return [
    names.length,
    all.length - names.length,
    // Asked for its volume and areas, since a hull works out what it is asked for only.
    median(() => {
      const hull = buildHull(offsets);
      return [hull.volume, hull.panels.map(({ area }) => area)];
    }),
    median(() => wholeCatalogue(anew(table))),
    median(() => read(graphOn(anew(table)), names)),
    median(() => read(graphOn(anew(table)), all)),
    // Never the same twice, or what was found for it before would stand.
    median(edit(height, (i) => `${at + (i + 1) / 10} mm`)),
    median(edit('keelson.thickness', (i) => `${18 + (i % 2)} mm`)),
    median(edit('scarf.slope', (i) => `${8 + (i % 2)}`)),
    spread(cellAdded(table, names)).median,
    memoryOf(() => {
      const one = graphOn(anew(table));
      read(one, names);
      return one;
    }),
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

/** The scarf comes into a book that is open and read; then its own quantities are read. */
function cellAdded(table: Table, names: readonly string[]): number[] {
  const others = cells.filter(({ id }) => id !== 'scarf').map(plainInstance);
  const whole = cells.map(plainInstance);
  const instances = signal(others);
  const graph = createGraph({
    catalogue: () => catalogueOf(table, instances.value),
    entries: () => ({}),
    shown: plainShown,
  });
  const own = names.filter((name) => partOf(name) === 'scarf');
  return Array.from({ length: RUNS }, () => {
    instances.value = others;
    read(graph, names);
    const start = performance.now();
    instances.value = whole;
    read(graph, own);
    return performance.now() - start;
  });
}

/** What a thing takes up, MB. */
function memoryOf(make: () => unknown): number {
  setFlagsFromString('--expose-gc');
  const gc = runInNewContext('gc') as () => void;
  make();
  gc();
  const before = process.memoryUsage().heapUsed;
  const kept = make();
  gc();
  const after = process.memoryUsage().heapUsed;
  // Held until it is measured.
  return kept === undefined ? 0 : (after - before) / 1e6;
}
