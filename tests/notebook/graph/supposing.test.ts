/** "What if" asked many times over: the same answers as a graph made for each, and whoever asked is woken by what they hang on. */
import { effect } from '@preact/signals-core';
import { describe, expect, test } from 'vitest';
import { demoBoat, type Read } from '../../../src/boat';
import { plainInstance, underName, valuesOf } from '../../../src/cells';
import { isIssue, plainShown, writeInPicture } from '../../../src/measure';
import { catalogueOf } from '../../../src/notebook/graph/catalogue';
import { createGraph } from '../../../src/notebook/graph/graph';
import { runSteps } from '../../cells/alone';
import { cellOf } from '../../cells/cell-of';
import { bench, choice, derived, given, sentence, sum } from '../small-graph';

const plank = () =>
  bench(
    [
      { ...given('plank.thickness', '18 mm'), min: '2 mm', max: '40 mm' },
      given('plank.width', '100 mm'),
      given('keelson.thickness', '30 mm'),
      choice('plank.wood', 'oak'),
    ],
    [
      sum('plank.both', 'plank.thickness', 'plank.width'),
      sum('plank.wide', 'plank.width', 'plank.width'),
      derived('plank.stiff', (read) =>
        read.choice('plank.wood') === 'oak' ? read.number('plank.both') : read.number('keelson.thickness'),
      ),
    ],
  );
const all = (read: Read) =>
  ['both', 'wide', 'stiff'].map((key) => Math.round(read.number(`plank.${key}`) * 1e6) / 1e3);

describe('supposing', () => {
  test('asks under one change after another, and works out only what differs', () => {
    const { graph, worked } = plank();
    const ask = graph.supposing(all);
    expect(ask({})).toStrictEqual([118, 200, 118]);
    expect(worked()).toStrictEqual({ 'plank.both': 1, 'plank.wide': 1, 'plank.stiff': 1 });
    expect(ask({ 'plank.thickness': 0.02 })).toStrictEqual([120, 200, 120]);
    expect(ask({ 'plank.thickness': 0.021 })).toStrictEqual([121, 200, 121]);
    expect(worked()).toStrictEqual({ 'plank.both': 2, 'plank.stiff': 2 });
    expect(ask({ 'plank.wood': 'ash', 'plank.width': '80 mm' })).toStrictEqual([98, 160, 30]);
    expect(ask({})).toStrictEqual([118, 200, 118]);
    expect([graph.value('plank.thickness'), graph.entry('plank.thickness')?.text]).toStrictEqual([
      0.018,
      '18 mm',
    ]);
  });

  test('holds a number to no limit, a text to its own', () => {
    const { graph } = plank();
    expect(graph.supposing(all)({ 'plank.thickness': 0.05 })).toStrictEqual([150, 200, 150]);
    expect(sentence(graph.supposing(all)({ 'plank.thickness': '50 mm' }))).toContain('at most 40 mm');
    const thick = graph.with(() => ({ 'plank.thickness': 0.05 }));
    expect([thick.value('plank.thickness'), thick.entry('plank.thickness')]).toStrictEqual([
      0.05,
      { text: '50 mm', written: true, names: [] },
    ]);
  });

  test('stands over what was measured', () => {
    const { graph } = plank();
    const built = graph.asBuilt(() => ({ 'plank.thickness': '17 mm' }));
    expect(built.supposing(all)({})).toStrictEqual([117, 200, 117]);
    expect(built.supposing(all)({ 'plank.thickness': 0.02 })).toStrictEqual([120, 200, 120]);
    expect(built.supposing(all)({ 'plank.thickness': null })).toStrictEqual([118, 200, 118]);
    expect(built.with(() => ({ 'plank.thickness': '19 mm' })).value('plank.thickness')).toBe(0.019);
    expect(built.value('plank.thickness')).toBe(0.017);
  });

  test('wakes who asked by what an answer hangs on, though the boat as she stands does not', () => {
    const { graph, write } = plank();
    const seen: unknown[] = [];
    const stop = effect(() => void seen.push(graph.supposing(all)({ 'plank.wood': 'ash' })));
    write('keelson.thickness', '31 mm');
    expect(seen).toStrictEqual([
      [118, 200, 30],
      [118, 200, 31],
    ]);
    stop();
    const others: unknown[] = [];
    const quiet = effect(() => void others.push(graph.supposing(all)({ 'plank.thickness': 0.02 })));
    write('keelson.thickness', '32 mm');
    expect(others).toStrictEqual([[120, 200, 120]]);
    quiet();
  });
});

/** What the charts of cells sweep. Inputs that are linked to the cell's own steps follow the change. */
const sweeps: readonly (readonly [id: string, changes: Readonly<Record<string, number | string>>])[] = [
  ['bend', { radius: 1.7 }],
  ['laminate', { layup: 'alike', thickness: 0.03, plies: 5 }],
  ['glue', { film: 0.001, bead: 0.004 }],
  ['moisture', { humidity: 0.4, air: 288.15 }],
  ['screwCount', { pitch: 0.09 }],
  ['screwStrength', { sideLength: 0.011 }],
];
test.each(sweeps)('%s swept in the graph comes to what its steps come to alone', (id, changes) => {
  const cell = cellOf(id)!;
  const instance = plainInstance(cell);
  const catalogue = catalogueOf(demoBoat, [instance]);
  const graph = createGraph({ catalogue: () => catalogue, entries: () => ({}), shown: plainShown });
  const values = graph.workOut((read) => valuesOf(instance, read));
  const hull = graph.hull();
  if (isIssue(values) || isIssue(hull)) throw new Error('the demo boat has values and a hull');
  const swept = graph.supposing((read) => valuesOf(instance, read))(underName(instance, changes));
  if (isIssue(swept)) throw new Error(`the demo boat has no values under the change: ${swept.issue}`);
  const alone = runSteps(cell, { ...swept, ...changes }, hull);
  if (isIssue(alone)) throw new Error(alone.issue);
  const differ = Object.keys(alone).filter((key) => {
    const [one, other] = [swept[key], alone[key]];
    if (typeof one !== 'number' || typeof other !== 'number') return one !== other;
    return writeInPicture(one, 'number', plainShown) !== writeInPicture(other, 'number', plainShown);
  });
  expect(differ).toStrictEqual([]);
  expect(Object.keys(changes).map((key) => swept[key])).toStrictEqual(Object.values(changes));
});
