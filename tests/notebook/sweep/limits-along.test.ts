/** Limits along a sweep: straight where they stand, curves where they move, and where the graph comes to them, by closed forms. */
import { expect, test } from 'vitest';
import type { Read, SweepAsk } from '../../../src/boat';
import { isIssue, type KindId, plainShown, writeInPicture, type WriteOptions } from '../../../src/measure';
import type { SweptLimit } from '../../../src/notebook/sweep/limits-along';
import { sweepFrom, swept } from '../../../src/notebook/sweep/sweep';
import { sweepChart } from '../../../src/notebook/sweep/sweep-chart';
import { bench, derived, given } from '../small-graph';
import '../../kernel/near';

const { graph } = bench(
  [
    given('scarf.thickness', '18 mm', { min: '6 mm', max: '40 mm', label: 'Thickness' }),
    given('scarf.slope', '8', { kind: 'slope', min: '4', max: '20', label: 'Slope' }),
    given('scarf.boards', '3', { kind: 'count', min: '1', max: '9' }),
  ],
  [
    derived('scarf.taper', (read) => read.number('scarf.thickness') * read.number('scarf.slope')),
    derived('scarf.layers', (read) => Math.ceil(read.number('scarf.thickness') / 0.006 - 1e-9), 'count'),
    derived('scarf.area', (read) => read.number('scarf.boards') ** 2, 'number'),
  ],
);
const say = (value: number, kind: KindId, options?: WriteOptions) =>
  writeInPicture(value, kind, plainShown, options);

function drawn(part: Partial<SweepAsk>, ...limits: (Partial<SweptLimit> & Pick<SweptLimit, 'by'>)[]) {
  const ask = { result: 'scarf.taper', against: 'scarf.thickness', from: '', to: '', lines: '', at: '' };
  const sweep = sweepFrom({ ...ask, ...part }, graph, plainShown);
  if (isIssue(sweep)) throw new Error(sweep.issue);
  const all = limits.map((one): SweptLimit => ({ axis: 'y', kind: 'length', isMost: true, ...one }));
  const steps = swept(graph, sweep, all);
  let step = steps.next();
  for (; !step.done; step = steps.next()) expect(step.value).toBeLessThanOrEqual(1);
  return sweepChart(sweep, step.value, graph, all, say);
}
const thickness = (read: Read) => read.number('scarf.thickness');

test('one that stands is a straight line, and the place where the graph comes to it stands beside it', () => {
  const { limits, movingLimits, crossings, says } = drawn({}, { by: () => 0.2 });
  expect(limits).toStrictEqual([{ at: 0.2, axis: 'y', label: 'at most 200 mm' }]);
  expect(movingLimits).toStrictEqual([]);
  expect(crossings).toMatchObject([{ y: 0.2, label: '25 mm' }]);
  expect(crossings![0]!.x).toBeNear(0.2 / 8, 1e-7);
  expect(says).toContain('It comes to the limit, at most 200 mm, at 25 mm.');
});

test('one that moves is a curve: 8 t meets 50 mm + 4 t where t is 12.5 mm', () => {
  const { limits, movingLimits, crossings, says, rows } = drawn(
    {},
    { by: (read) => 0.05 + 4 * thickness(read) },
  );
  expect(limits).toStrictEqual([]);
  const [curve] = movingLimits!;
  expect(curve!.label).toBe('the most it may be');
  for (const [x, y] of curve!.points) expect(y).toBeNear(0.05 + 4 * x, 1e-12);
  expect(curve!.points.map(([x]) => x)).toStrictEqual(expect.arrayContaining([...rows!]));
  expect(crossings).toHaveLength(1);
  expect(crossings![0]!.x).toBeNear(0.0125, 1e-7);
  expect(crossings![0]!.y).toBeNear(0.1, 1e-7);
  expect(crossings![0]!.label).toBe('12.5 mm');
  expect(says).toContain('The limit moves too: at most 74 mm at 6 mm, at most 210 mm at 40 mm.');
  expect(says).toContain('It comes to that limit at 12.5 mm.');
});

test('a bent one is met where it is met, and one never met is past or kept', () => {
  // 8 t meets 0.1 + 250 (t - 0.02)² where 250 t² - 18 t + 0.2 = 0; the other place lies beyond 40 mm.
  const bent = drawn({}, { isMost: false, by: (read) => 0.1 + 250 * (thickness(read) - 0.02) ** 2 });
  const root = Math.sqrt(18 ** 2 - 4 * 250 * 0.2);
  expect(bent.crossings).toHaveLength(1);
  expect(bent.crossings![0]!.x).toBeNear((18 - root) / 500, 1e-7);
  expect(drawn({}, { by: (read) => 7 * thickness(read) }).says).toContain(
    'It is past that limit throughout.',
  );
  expect(drawn({}, { by: (read) => 9 * thickness(read) }).crossings).toStrictEqual([]);
});

test('one that hangs on the second number is drawn for each of its lines; one that does not, once', () => {
  const lines = { lines: 'scarf.slope', at: '6 or 12' };
  const each = drawn(lines, { by: (read) => read.number('scarf.slope') / 50 });
  expect(each.limits).toStrictEqual([
    { at: 0.12, axis: 'y', label: 'at most 120 mm, at 1 in 6' },
    { at: 0.24, axis: 'y', label: 'at most 240 mm, at 1 in 12' },
  ]);
  // slope t = slope / 50, on both lines at 20 mm; of several lines the words say where.
  expect(each.crossings!.map(({ label }) => label)).toStrictEqual(['', '']);
  for (const { x } of each.crossings!) expect(x).toBeNear(0.02, 1e-7);
  const one = drawn(lines, { by: (read) => 0.1 + thickness(read) });
  expect(one.movingLimits).toHaveLength(1);
  expect(one.crossings).toHaveLength(2);
  expect(one.says).toContain('At 1 in 6: it rises');
});

test('of the number below it stands upright, where that comes to it', () => {
  const still = drawn({}, { axis: 'x', by: () => 0.03 });
  expect(still.limits).toStrictEqual([{ at: 0.03, axis: 'x', label: 'at most 30 mm' }]);
  const moving = drawn({}, { axis: 'x', isMost: false, by: (read) => 0.01 + thickness(read) / 3 });
  expect(moving.limits).toMatchObject([{ axis: 'x', label: 'at least 15 mm' }]);
  expect(moving.limits![0]!.at).toBeNear(0.015, 1e-7);
  expect(drawn({}, { axis: 'x', by: () => 0.05 }).limits).toStrictEqual([]);
});

test('a step past a limit is found where it steps; none is found between whole numbers, and nothing is a limit of none', () => {
  const stepped = drawn({ result: 'scarf.layers' }, { kind: 'count', by: () => 4.5 });
  expect(stepped.crossings).toHaveLength(1);
  expect(stepped.crossings![0]!.x).toBeNear(0.024, 0, 1e-6);
  const counted = drawn({ result: 'scarf.area', against: 'scarf.boards' }, { kind: 'number', by: () => 20 });
  expect(counted.limits).toHaveLength(1);
  expect(counted.crossings).toStrictEqual([]);
  expect(drawn({}, { by: () => 0 }).limits).toStrictEqual([]);
  expect(drawn({}, { by: () => null }).movingLimits).toStrictEqual([]);
});
