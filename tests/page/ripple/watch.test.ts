/** What the first edit moves is told as if the boat had been taken down before it; whoever only reads pays nothing. */
import { computed, signal } from '@preact/signals-core';
import { expect, test } from 'vitest';
import { demoBoat } from '../../../src/boat';
import { plainInstance } from '../../../src/cells';
import { cells } from '../../../src/cells/all';
import { plainShown } from '../../../src/measure';
import {
  type Book,
  createBook,
  freshState,
  type Graph,
  type Ripple,
  rippleBetween,
} from '../../../src/notebook';
import { catalogueOf } from '../../../src/notebook/graph/catalogue';
import type { Bench } from '../../../src/page/bench';
import { snapshotOf, toldOf } from '../../../src/page/ripple/snapshot';
import { rippleOf } from '../../../src/page/ripple/watch';
import type { Limit } from '../../../src/page/told/told';

const placed = new Map(
  cells
    .filter(({ id }) => ['scarf', 'bend', 'laminate'].includes(id))
    .map((one) => [one.id, plainInstance(one)]),
);

/** As much of a bench as the ripple looks at, and how often a quantity was looked at. */
function openBench(entries: Record<string, string> = {}) {
  let looks = 0;
  const counted = (graph: Graph): Graph => ({
    ...graph,
    peek: (name) => {
      looks += 1;
      return graph.peek(name);
    },
  });
  const book = createBook(freshState(demoBoat, entries), (table, ends) =>
    catalogueOf(table, [...placed.values()], ends),
  );
  const some: Pick<Bench, 'book' | 'sheet' | 'shown' | 'instances' | 'table'> = {
    book: { ...book, inHand: computed(() => counted(book.inHand.value)) },
    sheet: signal({ kind: 'boat', key: 'hers', notebook: '', boat: null }),
    shown: signal(plainShown),
    instances: signal(placed),
    table: computed(() => book.state.value.table),
  };
  const bench = some as Bench;
  let told: Ripple<Limit> | null = null;
  const look = rippleOf(bench, (ripple) => (told = ripple));
  return { bench, book, look, told: () => told, looks: () => looks };
}

/** All steps of something, to its end. */
function all<T>(steps: Generator<void, T>): T {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

const saidOf = (ripple: Ripple<Limit> | null) => ({
  moved: ripple?.moved.map(({ quantity: { name }, before, after }) => [name, before, after]),
  warned: ripple?.nowWarned.map(({ cell }) => cell),
  clear: ripple?.nowClear.map(({ cell }) => cell),
  hull: ripple?.hull,
});

const entries = { 'scarf.slope': '1 in 9', 'keelson.thickness': '21 mm' };
const firstEdits: readonly [string, (book: Book) => void][] = [
  ['an entry', (book) => book.write({ 'keelson.thickness': '40 mm' })],
  ['an entry taken back to its preset', (book) => book.write({ 'scarf.slope': null })],
  ['an offset', (book) => book.write({ 'frame2.sheer.height': '640 mm' })],
  ['what was measured', (book) => book.measure({ 'keelson.thickness': '24 mm' })],
  ['a second version with a change of its own', (book) => book.tryAnother({ 'scarf.slope': '1 in 12' })],
];

test.each(firstEdits)('the first edit, %s', (_, edit) => {
  const { bench, book, look, told, looks } = openBench(entries);
  all(look());
  expect(looks()).toBe(0);
  expect(told()).toBeNull();
  // Taken down beforehand from a bench of its own.
  const before = openBench(entries);
  const was = all(snapshotOf(before.bench, before.book.inHand.value, null));
  edit(book);
  all(look());
  const is = all(snapshotOf(bench, book.inHand.value, was));
  const expected = saidOf(rippleBetween(was, is, toldOf(book.catalogue.value)));
  expect(expected.moved?.length).toBeGreaterThan(0);
  expect(saidOf(told())).toStrictEqual(expected);
});

test.each<[string, (book: Book) => void, (book: Book) => void]>([
  [
    'measured once more',
    (book) => book.measure({ 'keelson.thickness': '24 mm' }),
    (book) => book.measure({ 'keelson.thickness': '26 mm' }),
  ],
  [
    'written where it is measured',
    (book) => book.measure({ 'keelson.thickness': '24 mm' }),
    (book) => book.write({ 'keelson.thickness': '30 mm', 'scarf.slope': '1 in 7' }),
  ],
  [
    'of two versions one kept',
    (book) => book.tryAnother({ 'scarf.slope': '1 in 12' }),
    (book) => book.keepOnly('first'),
  ],
])('the first edit of a boat that was worked on before: %s', (_, worked, edit) => {
  const { book: hers } = openBench(entries);
  worked(hers);
  const { bench, book, look, told } = openBench();
  book.take({ ...hers.kept(), earlier: [], later: [] });
  all(look());
  // The graph of the other book, which nobody edits, stays as it was.
  const was = all(snapshotOf(bench, hers.inHand.value, null));
  edit(book);
  all(look());
  const is = all(snapshotOf(bench, book.inHand.value, was));
  const expected = saidOf(rippleBetween(was, is, toldOf(book.catalogue.value)));
  expect(expected.moved?.length).toBeGreaterThan(0);
  expect(saidOf(told())).toStrictEqual(expected);
});

test('a look that is given up for a newer edit compares both with what was before them', () => {
  const { book, look, told } = openBench();
  all(look());
  book.write({ 'scarf.slope': '1 in 9' });
  const first = look();
  for (let step = 0; step < 3; step += 1) expect(first.next().done).toBe(false);
  book.write({ 'keelson.thickness': '40 mm' });
  all(look());
  const moved = told()?.moved.map(({ quantity: { name } }) => name) ?? [];
  expect(moved).toContain('scarf.taper');
  expect(moved).toContain('bend.force');
  // And the next is compared with where that one ended.
  book.write({ 'scarf.slope': '1 in 10' });
  all(look());
  expect(told()?.moved.map(({ quantity: { name } }) => name)).not.toContain('bend.force');
});
