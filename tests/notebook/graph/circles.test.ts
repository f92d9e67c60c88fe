/** Links that go round in a circle: found, named, kept to what depends on them, and mended from anywhere. */
import { effect } from '@preact/signals-core';
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demoBoat, type Value } from '../../../src/boat';
import { isIssue } from '../../../src/measure';
import { wholeCatalogue } from '../../../src/notebook/graph/whole-catalogue';
import { bench, choice, derived, given, sentence, sum } from '../small-graph';
import { allOf } from '../all-of';

describe('circles', () => {
  const ring = (...names: string[]) =>
    bench(
      [...names.map((name, i) => given(name, `${i + 1} mm`)), given('ring.end', '7 mm')],
      [sum('ring.after', names[0]!), sum('ring.later', 'ring.after')],
    );
  const around = ['ring.one', 'ring.two', 'ring.three'];
  const named = /^goes round in a circle: (.*)$/;
  /** The names of the circle in the order told, once round. */
  const told = (value: Value) => named.exec(sentence(value))?.[1]?.split(' -> ') ?? [];

  test('of one are named', () => {
    const { graph, write } = ring('ring.one');
    write('ring.one', 'ring.one + 1 mm');
    expect(sentence(graph.value('ring.one'))).toBe('goes round in a circle: ring.one -> ring.one');
    write('ring.one', '2 mm');
    expect(graph.value('ring.one')).toBe(0.002);
  });

  test('of two are named from where one looks', () => {
    const { graph, write } = ring('ring.one', 'ring.two');
    write('ring.one', 'ring.two');
    write('ring.two', 'ring.one');
    expect(sentence(graph.value('ring.one'))).toBe(
      'goes round in a circle: ring.one -> ring.two -> ring.one',
    );
  });

  test('of three are named, and each in them tells the same circle', () => {
    const { graph, write } = ring(...around);
    around.forEach((name, i) => write(name, around[(i + 1) % 3]!));
    expect(sentence(graph.value('ring.two'))).toBe(
      'goes round in a circle: ring.two -> ring.three -> ring.one -> ring.two',
    );
    for (const name of around) {
      const value = graph.value(name);
      expect(told(value).slice(1).toSorted()).toStrictEqual(around.toSorted());
      expect(value).toMatchObject({ circle: expect.arrayContaining(around) as string[] });
      expect(value).not.toHaveProperty('waitsFor');
    }
  });

  test('made by an edit to what was worked out before are found', () => {
    const { graph, write } = ring(...around);
    write('ring.one', 'ring.two');
    write('ring.two', 'ring.three');
    expect(graph.value('ring.later')).toBe(0.003);
    write('ring.three', 'ring.one');
    expect(told(graph.value('ring.one'))).toHaveLength(4);
    expect(told(graph.value('ring.three'))).toHaveLength(4);
  });

  test('keep those downstream waiting, and nobody else', () => {
    const { graph, write } = ring('ring.one', 'ring.two');
    write('ring.one', 'ring.two');
    write('ring.two', 'ring.one');
    expect(graph.value('ring.later')).toMatchObject({ waitsFor: 'ring.one' });
    expect(graph.value('ring.later')).not.toHaveProperty('circle');
    expect(told(graph.value('ring.later'))).toHaveLength(3);
    expect(graph.value('ring.end')).toBe(0.007);
  });

  // Whoever is asked first notices the circle; whoever is mended must wake everyone.
  const places = around.flatMap((first) => around.map((mended) => [first, mended] as const));
  test.each(places)('first seen from %s are mended at %s', (first, mended) => {
    const { graph, write } = ring(...around);
    around.forEach((name, i) => write(name, around[(i + 1) % 3]!));
    expect(told(graph.value(first))).toHaveLength(4);
    expect(isIssue(graph.value('ring.later'))).toBe(true);
    write(mended, 'ring.end');
    for (const name of [...around, 'ring.later'])
      expect([name, graph.value(name)]).toStrictEqual([name, 0.007]);
    write(mended, around[(around.indexOf(mended) + 1) % 3]!);
    for (const name of [...around, 'ring.later'])
      expect([name, isIssue(graph.value(name))]).toStrictEqual([name, true]);
    write(mended, null);
    const expected = (around.indexOf(mended) + 1) / 1000;
    for (const name of [...around, 'ring.later'])
      expect([name, graph.value(name)]).toStrictEqual([name, expected]);
  });

  test.each(places)('watched by an effect from %s are mended at %s', (first, mended) => {
    const { graph, write } = ring(...around);
    around.forEach((name, i) => write(name, around[(i + 1) % 3]!));
    const seen: Value[] = [];
    const stop = effect(() => void seen.push(graph.value(first)));
    write(mended, 'ring.end');
    expect(seen.at(-1)).toBe(0.007);
    write(mended, around[(around.indexOf(mended) + 1) % 3]!);
    expect(isIssue(seen.at(-1))).toBe(true);
    stop();
  });

  test('through derived quantities and the hull are named', () => {
    const catalogue = wholeCatalogue(demoBoat);
    const { graph, write } = bench(allOf(catalogue).given, allOf(catalogue).derived, catalogue.hull);
    expect(graph.value('hull.depth')).toBeGreaterThan(0);
    write('frame3.sheer.height', 'hull.depth');
    expect(sentence(graph.value('hull.depth'))).toBe(
      'goes round in a circle: hull.depth -> the hull -> frame3.sheer.height -> hull.depth',
    );
    expect(isIssue(graph.hull())).toBe(true);
    write('frame3.sheer.height', '610 mm');
    expect(graph.value('hull.depth')).toBeGreaterThan(0);
    expect(isIssue(graph.hull())).toBe(false);
  });

  test('that a choice closes are mended by the choice, from either end', () => {
    for (const first of ['ply.thickness', 'screw.length', 'screw.through']) {
      const { graph, write } = bench(
        [
          given('ply.thickness', '9 mm'),
          given('rail.thickness', '19 mm'),
          choice('screw.into', 'ply', {
            options: [
              { id: 'ply', label: 'ply' },
              { id: 'rail', label: 'rail' },
            ],
          }),
          given('screw.through', '5 mm', { presetFrom: (read) => `${read.choice('screw.into')}.thickness` }),
        ],
        [sum('screw.length', 'screw.through')],
      );
      write('ply.thickness', 'screw.length');
      expect(told(graph.value(first))).toHaveLength(4);
      expect(isIssue(graph.value('screw.length'))).toBe(true);
      write('screw.into', 'rail');
      for (const name of ['ply.thickness', 'screw.length', 'screw.through'])
        expect([first, name, graph.value(name)]).toStrictEqual([first, name, 0.019]);
    }
  });

  test('that a derived quantity picks by a choice are mended by the choice, from either end', () => {
    for (const first of ['ply.thickness', 'screw.length']) {
      const { graph, write } = bench(
        [
          given('ply.thickness', 'screw.length'),
          given('rail.thickness', '19 mm'),
          choice('screw.into', 'ash'),
        ],
        [
          derived('screw.length', (read) =>
            read.number(read.choice('screw.into') === 'ash' ? 'ply.thickness' : 'rail.thickness'),
          ),
        ],
      );
      expect(told(graph.value(first))).toHaveLength(3);
      write('screw.into', 'oak');
      for (const name of ['ply.thickness', 'screw.length'])
        expect([first, name, graph.value(name)]).toStrictEqual([first, name, 0.019]);
      write('screw.into', 'ash');
      expect(isIssue(graph.value('ply.thickness'))).toBe(true);
    }
  });
});

/**
 * Any links among six entries, two workings and a choice that turns one of them, edited in any order and
 * looked at in any order, against a plain recursion that starts afresh each time and knows nothing of signals.
 */
describe('whatever is edited and looked at, in whatever order', () => {
  const entered = ['q.a', 'q.b', 'q.c', 'q.d', 'q.e', 'q.f'];
  const names = [...entered, 'q.turned', 'q.both'];
  const turned = (wood: string) => (wood === 'oak' ? 'q.a' : 'q.b');
  const sumOf = (...of: string[]): Entry => ({ text: of.join(' + '), of, plus: 0 });
  const metres = (plus: number): Entry => ({ text: `${plus} m`, of: [], plus });
  const entries = fc.oneof(
    fc.constantFrom(...names).map((name) => sumOf(name)),
    fc.tuple(fc.constantFrom(...names), fc.constantFrom(...names)).map((of) => sumOf(...of)),
    fc.integer({ min: 1, max: 9 }).map(metres),
    fc.constant<Entry>({ text: 'no entry at all', of: null, plus: 0 }),
  );
  /** An entry and what it comes to: a sum of quantities and a number, or nothing. */
  interface Entry {
    readonly text: string;
    readonly of: readonly string[] | null;
    readonly plus: number;
  }

  function plainly(
    written: ReadonlyMap<string, Entry>,
    wood: string,
    name: string,
    above: readonly string[] = [],
  ): number | null {
    if (above.includes(name)) return null;
    const { of, plus } =
      { 'q.turned': sumOf(turned(wood)), 'q.both': sumOf('q.c', 'q.turned') }[name] ??
      written.get(name) ??
      metres(entered.indexOf(name) + 1);
    if (of === null) return null;
    let total = plus;
    for (const one of of) {
      const value = plainly(written, wood, one, [...above, name]);
      if (value === null) return null;
      total += value;
    }
    return total;
  }

  const edits = fc.oneof(
    { weight: 4, arbitrary: fc.record({ name: fc.constantFrom(...entered), entry: fc.option(entries) }) },
    {
      weight: 1,
      arbitrary: fc.record({
        name: fc.constant('q.wood'),
        entry: fc.constantFrom('oak', 'ash').map((text): Entry => ({ text, of: [], plus: 0 })),
      }),
    },
  );
  const steps = fc.array(fc.record({ edit: edits, look: fc.shuffledSubarray(names) }), {
    minLength: 1,
    maxLength: 14,
  });

  test.each([false, true])('the value is that of a plain recursion (watched by an effect: %s)', (watched) => {
    fc.assert(
      fc.property(steps, (all) => {
        const { graph, write } = bench(
          [...entered.map((name, i) => given(name, `${i + 1} m`)), choice('q.wood', 'oak')],
          [
            derived('q.turned', (read) => read.number(turned(read.choice('q.wood')))),
            sum('q.both', 'q.c', 'q.turned'),
          ],
        );
        const latest = new Map<string, Value>();
        const stops = watched
          ? names.map((name) => effect(() => void latest.set(name, graph.value(name))))
          : [];
        const written = new Map<string, Entry>();
        for (const { edit, look } of all) {
          if (edit.entry) written.set(edit.name, edit.entry);
          else written.delete(edit.name);
          write(edit.name, edit.entry?.text ?? null);
          const wood = written.get('q.wood')?.text ?? 'oak';
          const asked = watched ? names : look;
          const values = asked.map((name) => (watched ? latest.get(name)! : graph.value(name)));
          expect(values.map((value) => (isIssue(value) ? null : value))).toStrictEqual(
            asked.map((name) => plainly(written, wood, name)),
          );
        }
        for (const stop of stops) stop();
      }),
      { seed: 9, numRuns: 1500 },
    );
  });
});
