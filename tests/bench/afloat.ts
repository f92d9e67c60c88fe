/** How long the floating boat takes: to come to rest, to be heeled through the whole curve, to follow a weight that is dragged, and full of water. */
import { signal } from '@preact/signals-core';
import { buildHull, offsetsOf, starters, type Table } from '../../src/boat';
import { floatingUnder } from '../../src/boat/hull/floating';
import { heldAt, leversOf } from '../../src/boat/hull/heeling';
import type { Burden } from '../../src/kernel';
import { plainShown } from '../../src/measure';
import { createGraph } from '../../src/notebook/graph/graph';
import { wholeCatalogue } from '../../src/notebook/graph/whole-catalogue';
import { type Section, spread, timesOf } from './table';

const RUNS = 60;
/** What the cell of the floating boat shows when a weight moves, and that of the flotation when she fills. */
const AFLOAT = ['draught', 'trim', 'heel', 'leastFreeboard', 'leastAt', 'stiffness'].map(
  (key) => `float.${key}`,
);
const FULL = [
  'swampedHeel',
  'swampedTrim',
  'swampedLow',
  'dryHands',
  'noneMeets',
  'middleMeets',
  'sideMeets',
].map((key) => `flotation.${key}`);

export function floating(): Section {
  return {
    title: 'Afloat, in Node',
    says: `Median and the time that 95 of 100 don’t pass, of ${RUNS} runs, warm, ms. At rest from upright; the righting curve in nineteen heels, free to trim; all that *float* tells after a piece of gear is moved; all that *flotation* tells of her full of water, with eight poses, after the same.`,
    head: ['boat', 'at rest', '95 %', 'curve', '95 %', 'gear moved', '95 %', 'full of water', '95 %'],
    rows: starters.map(({ id, table }) => [id, ...timesOn(table)]),
  };
}

function timesOn(table: Table): number[] {
  const hull = buildHull(offsetsOf(table));
  const entries = signal<Readonly<Record<string, string>>>({});
  const catalogue = wholeCatalogue(table);
  const graph = createGraph({ catalogue: () => catalogue, entries: () => entries.value, shown: plainShown });
  const number = (name: string) => graph.peek(name) as number;
  const [mass, forward, height] = ['mass', 'centreForward', 'centreHeight'].map((key) =>
    number(`float.${key}`),
  );
  // Never the same load twice.
  const burden = (i: number): Burden => ({
    volume: mass! / 1000,
    centre: [forward! + i / 1e4, 0.01, height!],
  });
  const moved = (names: readonly string[]) => (i: number) => {
    entries.value = { 'weights.gearAForward': `${1 + i / 200} m` };
    return names.map(number);
  };
  const both = (run: (i: number) => unknown) => {
    const { median, p95 } = spread(timesOf(RUNS, run));
    return [median, p95];
  };
  return [
    ...both((i) => floatingUnder(hull, burden(i))),
    ...both((i) => leversOf(hull, burden(i), heldAt(hull, burden(i), 0))),
    ...both(moved(AFLOAT)),
    ...both(moved(FULL)),
  ];
}
