/** A graph as a part of the page sees it that lies out of sight: told of edits while it follows, and else when the page is at rest. */
import { effect, signal } from '@preact/signals-core';
import { expect, test } from 'vitest';
import { bench, derived, given } from '../small-graph';

function far() {
  let worked = 0;
  const { graph, write } = bench(
    [given('scarf.thickness', '18 mm'), given('scarf.slope', '8', { kind: 'slope' })],
    [
      derived('scarf.taper', (read) => {
        worked += 1;
        return read.number('scarf.slope') * read.number('scarf.thickness');
      }),
    ],
  );
  const follows = signal(false);
  const rested = signal(0);
  const seen = graph.seenAt(follows, rested);
  const told: unknown[] = [];
  effect(() => void told.push(seen.value('scarf.taper')));
  const texts: unknown[] = [];
  effect(() => void texts.push(seen.entry('scarf.thickness')?.text));
  const sums: unknown[] = [];
  effect(() => void sums.push(seen.workOut((read) => 2 * read.number('scarf.taper'))));
  return { graph, write, follows, rested, seen, told, texts, sums, worked: () => worked };
}

test('what is far neither hears of an edit nor has it worked out, and catches up at rest', () => {
  const { write, rested, told, texts, sums, worked } = far();
  const before = worked();
  write('scarf.thickness', '20 mm');
  expect([told, texts, sums]).toStrictEqual([[0.144], ['18 mm'], [0.288]]);
  expect(worked()).toBe(before);
  rested.value += 1;
  expect([told, texts, sums]).toStrictEqual([
    [0.144, 0.16],
    ['18 mm', '20 mm'],
    [0.288, 0.32],
  ]);
});

test('what comes near is told at once of what it has missed, and of no more than that', () => {
  const { write, follows, told, sums } = far();
  follows.value = true;
  expect(told).toStrictEqual([0.144]);
  write('scarf.slope', '1 in 10');
  expect([told, sums]).toStrictEqual([
    [0.144, 0.18],
    [0.288, 0.36],
  ]);
  follows.value = false;
  write('scarf.slope', '1 in 9');
  expect(told).toStrictEqual([0.144, 0.18]);
  follows.value = true;
  expect(told[2]).toBeCloseTo(0.162, 12);
  expect(told).toHaveLength(3);
});

test('whoever looks once sees the numbers as they stand', () => {
  const { write, seen, graph } = far();
  write('scarf.thickness', '20 mm');
  expect(seen.peek('scarf.taper')).toBe(0.16);
  expect(graph.value('scarf.taper')).toBe(0.16);
});

test('a design under what was measured is seen alike', () => {
  const { graph, write, follows, rested } = far();
  const built = graph.asBuilt(() => ({ 'scarf.thickness': '19 mm' })).seenAt(follows, rested);
  const told: unknown[] = [];
  effect(() => void told.push([built.value('scarf.taper'), built.designed('scarf.taper')]));
  write('scarf.slope', '1 in 10');
  expect(told).toStrictEqual([[0.152, 0.144]]);
  rested.value += 1;
  expect(told.at(-1)).toStrictEqual([0.19, 0.18]);
});
