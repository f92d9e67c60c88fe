/** Sweeps that a notebook places: the example of the guide drawn, what can't be read told, and what is asked kept with the boat. */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { demoBoat, isUnread, readBoatFile, type SweepAsk, writeBoatFile } from '../../../src/boat';
import { isIssue, plainShown, writeInPicture } from '../../../src/measure';
import { parseNotebook } from '../../../src/notebook/markdown';
import { boatOf, stateOf } from '../../../src/notebook/state/boat-state';
import { freshState } from '../../../src/notebook/state/state';
import { readSaved } from '../../../src/notebook/keeping/read-saved';
import { isUnusable, writeSaved } from '../../../src/notebook/keeping/saved-text';
import { sweepFrom, swept } from '../../../src/notebook/sweep/sweep';
import { sweepChart } from '../../../src/notebook/sweep/sweep-chart';
import { sweepIn, writeSweep } from '../../../src/notebook/sweep/write-sweep';
import { askedOf, fence } from '../lesson/asked-of';
import '../../kernel/near';

const guide = readFileSync(new URL('../../../docs/authoring.md', import.meta.url), 'utf8');
const [, example = ''] = /^````markdown\n(---\ntitle: Taper and thickness\n[^]*?)^````$/m.exec(guide) ?? [];

test('the example of the guide draws a line for each slope: slope times thickness', () => {
  const { page, book } = askedOf(example, 'taper-and-thickness.md');
  const [block] = page.blocks.filter(({ type }) => type === 'sweep');
  if (block?.type !== 'sweep') throw new Error('the example places no sweep');
  const graph = book.first.value;
  const sweep = sweepFrom(block.ask, graph, plainShown);
  if (isIssue(sweep)) throw new Error(sweep.issue);
  const steps = swept(graph, sweep);
  let step = steps.next();
  while (!step.done) step = steps.next();
  const say = (value: number, kind: Parameters<typeof writeInPicture>[1]) =>
    writeInPicture(value, kind, plainShown);
  const chart = sweepChart(sweep, step.value, graph, [], say);
  expect(chart.lines.map(({ name }) => name)).toStrictEqual(['1 in 6', '1 in 8', '1 in 12']);
  for (const [i, slope] of [6, 8, 12].entries())
    for (const [thickness, taper] of chart.lines[i]!.points) expect(taper).toBeNear(slope * thickness, 1e-9);
  expect(chart.points).toMatchObject([{ x: 0.018, label: 'now 144 mm' }]);
});

const read = (...lines: readonly string[]) => parseNotebook(fence('sweep', ...lines), 'page.md');
const faults = (...lines: readonly string[]) =>
  read(...lines).faults.map(({ line, says }) => `${line}: ${says}`);

test('a block is read, and what can’t be read is told with its line', () => {
  expect(read('result: scarf.taper', 'against: scarf.slope').blocks).toMatchObject([
    {
      type: 'sweep',
      ask: { result: 'scarf.taper', against: 'scarf.slope', from: '', to: '', lines: '', at: '' },
    },
  ]);
  expect(faults('result: scarf.taper')[0]).toContain('against which');
  expect(faults('result: scarf.taper', 'against: scarf.slope', 'from: 1', 'from: 2')[0]).toMatch(
    /^5: .*already said/,
  );
  expect(faults('result: scarf.taper', 'colour: red')[0]).toContain('begins with result, against');
  expect(faults('result: scarf.taper', 'against: scarf.slope', 'lines: 6 or 8')[0]).toContain(
    'second number',
  );
  expect(faults('result: scarf.taper', 'against: scarf.slope', `to: ${'9'.repeat(400)}`)[0]).toContain(
    'too long',
  );
  expect(parseNotebook(fence('sweep wide', 'result: a.b'), 'page.md').faults[0]?.says).toContain(
    'stands nothing',
  );
  const hostile = '<img src=x onerror=alert(1)>';
  expect(faults(`result: ${hostile}`, 'against: __proto__.x')).toHaveLength(1);
});

const ask: SweepAsk = {
  result: 'scarf.taper',
  against: 'scarf.slope',
  from: '6',
  to: '',
  lines: '',
  at: '',
};

test('what is drawn is kept with the boat: in her file, and in the browser', () => {
  const state = writeSweep(freshState(demoBoat), 'scarf', ask);
  expect(writeSweep(state, 'scarf', { ...ask })).toBe(state);
  const boat = readBoatFile(writeBoatFile(boatOf(state)));
  if (isUnread(boat)) throw new Error(boat.faults[0]);
  expect(sweepIn(stateOf(boat), 'scarf')).toStrictEqual(ask);
  const saved = readSaved(writeSaved({ state, earlier: [], later: [], revision: 1 }));
  if (isUnusable(saved)) throw new Error(saved.because);
  expect(sweepIn(saved.state, 'scarf')).toStrictEqual(ask);
  const none = writeSweep(state, 'scarf', null);
  expect(sweepIn(none, 'scarf')).toBeNull();
  expect(writeBoatFile(boatOf(none))).not.toContain('sweeps');
});

test.each([
  [{ scarf: { result: 7 } }, 'must be a text'],
  [{ scarf: { result: 'x'.repeat(400) } }, 'at most 300 letters'],
  [{ 'a.b': ask }, 'is not the name of a cell'],
  ['all', 'must be an object'],
])('a file with odd sweeps says where: %#', (sweeps, says) => {
  const file = JSON.parse(writeBoatFile(boatOf(freshState(demoBoat)))) as object;
  const boat = readBoatFile(JSON.stringify({ ...file, sweeps }));
  if (!isUnread(boat)) throw new Error('it was read');
  expect(boat.faults[0]).toContain('sweeps');
  expect(boat.faults[0]).toContain(says);
});
