import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Quantity, Value } from '../../../src/boat';
import { issue } from '../../../src/measure';
import { rippleBetween, type Snapshot } from '../../../src/notebook/graph/ripple';

const names = ['bend.radius', 'bend.stress', 'scarf.taper', 'keelson.timber'];
const quantities: Quantity[] = names.map((name) => ({ name, kind: 'number', meaning: name }));
const snapshot = (values: Record<string, Value>, warnings: Record<string, string> = {}): Snapshot => ({
  values: new Map(Object.entries(values)),
  warnings: new Map(Object.entries(warnings)),
  unweighed: new Set(),
  hull: true,
});
const moved = (before: Record<string, Value>, after: Record<string, Value>) =>
  rippleBetween(snapshot(before), snapshot(after), quantities).moved.map(
    ({ quantity, size }) => [quantity.name, size] as const,
  );

describe('what moved', () => {
  test('stands largest first, by its share of the greater value', () => {
    expect(
      moved(
        { 'bend.radius': 2, 'bend.stress': 40e6, 'scarf.taper': 0.144 },
        { 'bend.radius': 2, 'bend.stress': 20e6, 'scarf.taper': 0.152 },
      ),
    ).toStrictEqual([
      ['bend.stress', 0.5],
      ['scarf.taper', expect.closeTo(0.008 / 0.152, 12) as number],
    ]);
  });

  test('keeps both values and the quantity', () => {
    const { moved: list } = rippleBetween(
      snapshot({ 'bend.radius': 2 }),
      snapshot({ 'bend.radius': 1 }),
      quantities,
    );
    expect(list).toStrictEqual([{ quantity: quantities[0], before: 2, after: 1, size: 0.5 }]);
  });

  test('leaves out rounding, but not the smallest true move', () => {
    expect(moved({ 'bend.radius': 0.1 + 0.2 }, { 'bend.radius': 0.3 })).toStrictEqual([]);
    expect(moved({ 'bend.radius': 1 }, { 'bend.radius': 1 + 1e-6 })).toHaveLength(1);
    expect(moved({ 'bend.radius': 0 }, { 'bend.radius': 1e-12 })).toStrictEqual([['bend.radius', 1]]);
    expect(moved({ 'bend.radius': 0 }, { 'bend.radius': -0 })).toStrictEqual([]);
  });

  test('a value that came or went, and another choice, outrank any number', () => {
    expect(
      moved(
        {
          'bend.radius': issue('waits'),
          'bend.stress': -1,
          'scarf.taper': 3,
          'keelson.timber': 'douglasFirCoast',
        },
        {
          'bend.radius': 2,
          'bend.stress': 1,
          'scarf.taper': issue('waits'),
          'keelson.timber': 'sitkaSpruce',
        },
      ),
    ).toStrictEqual([
      ['bend.radius', Infinity],
      ['keelson.timber', Infinity],
      ['scarf.taper', Infinity],
      ['bend.stress', 2],
    ]);
  });

  test('one reason for silence in place of another is no news', () => {
    expect(moved({ 'bend.radius': issue('one') }, { 'bend.radius': issue('another') })).toStrictEqual([]);
  });

  test('a quantity that only one side knows is passed over', () => {
    expect(moved({ 'bend.radius': 1 }, { 'bend.stress': 2 })).toStrictEqual([]);
  });

  test('is the same set, as large, either way round', () => {
    const value = fc.oneof(
      fc.double({ noNaN: true, noDefaultInfinity: true }),
      fc.constantFrom<Value>('oak', 'ash', issue('waits')),
    );
    const side = fc.record(Object.fromEntries(names.map((name) => [name, value])));
    fc.assert(
      fc.property(side, side, (one, other) => {
        const there = moved(one, other);
        expect(moved(other, one)).toStrictEqual(there);
        expect(there.every(([, size], i) => size > 0 && (i === 0 || size <= there[i - 1]![1]))).toBe(true);
        expect(moved(one, one)).toStrictEqual([]);
      }),
      { seed: 11, numRuns: 300 },
    );
  });
});

describe('warnings', () => {
  test('tell what is newly crossed and what is clear again, and not what changed only its numbers', () => {
    const ripple = rippleBetween(
      snapshot({}, { 'bend.1': 'Stress 60 MPa', 'scarf.0': 'Too steep' }),
      snapshot({}, { 'bend.1': 'Stress 70 MPa', 'limber.0': 'Little wood left' }),
      quantities,
    );
    expect(ripple).toStrictEqual({
      moved: [],
      nowWarned: ['Little wood left'],
      nowClear: ['Too steep'],
      hull: null,
    });
  });

  test('are past a limit only where that was kept before, and clear only where they are weighed', () => {
    const waits = (names: string[], warnings = {}): Snapshot => ({
      ...snapshot({}, warnings),
      unweighed: new Set(names),
    });
    expect(
      rippleBetween(waits(['bend.1']), snapshot({}, { 'bend.1': 'Too tight' }), quantities),
    ).toStrictEqual({
      moved: [],
      nowWarned: [],
      nowClear: [],
      hull: null,
    });
    const lost = rippleBetween(snapshot({}, { 'bend.1': 'Too tight' }), waits(['bend.1']), quantities);
    expect(lost.nowClear).toStrictEqual([]);
  });
});

test('while there is no hull, what gets a first number is no news, and what moves is', () => {
  const before = snapshot({ 'bend.radius': issue('no hull'), 'bend.stress': 5, 'scarf.taper': 3 });
  const after = snapshot({ 'bend.radius': 2, 'bend.stress': issue('no hull'), 'scarf.taper': 4 });
  const half = (moment: Snapshot) => ({ ...moment, hull: false });
  const { moved: told, hull } = rippleBetween(half(before), half(after), quantities);
  expect(hull).toBeNull();
  expect(told.map(({ quantity }) => quantity.name)).toStrictEqual(['scarf.taper']);
});

describe('a hull that comes or goes', () => {
  const empty = { ...snapshot({ 'bend.radius': issue('no hull'), 'scarf.taper': 3 }), hull: false };
  const drawn = snapshot({ 'bend.radius': 2, 'scarf.taper': 4 });

  test('is the news, and not every number that comes or goes with it', () => {
    const came = rippleBetween(empty, drawn, quantities);
    expect(came.hull).toBe('drawn');
    expect(came.moved.map(({ quantity }) => quantity.name)).toStrictEqual(['scarf.taper']);
    const went = rippleBetween(drawn, empty, quantities);
    expect(went.hull).toBe('lost');
    expect(went.moved.map(({ quantity }) => quantity.name)).toStrictEqual(['scarf.taper']);
  });

  test('is no news while she stays drawn', () => {
    expect(rippleBetween(drawn, { ...drawn }, quantities).hull).toBeNull();
  });
});
