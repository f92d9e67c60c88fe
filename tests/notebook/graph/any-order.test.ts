/** Whatever is written, comes, goes, is measured or supposed, in any order: a graph says what one made afresh says. */
import { signal } from '@preact/signals-core';
import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Derived, type Given, type Owner, ownerOf, type Read, type Value } from '../../../src/boat';
import { isIssue, plainShown } from '../../../src/measure';
import { createGraph, type Graph } from '../../../src/notebook/graph/graph';
import type { Supposed } from '../../../src/notebook/graph/moment';
import { catalogueFrom } from '../../../src/notebook/graph/on-hand';
import { given, sum } from '../small-graph';

/** Follows the other where there is one, else the preset. */
const linked = (name: string, to: string): Given =>
  given(name, '10 mm', { presetFrom: (read: Read) => (read.has(to) ? to : '10 mm') });
/** Of two others the second, where the first is more than 20 mm. */
const either = (name: string, first: string, second: string): Derived => ({
  ...sum(name),
  from: (read) => (read.number(first) > 0.02 ? read.number(second) : (read.maybe(second) ?? 0) + 1),
});
/** A part of what is found once for all that tell of it. */
const told = (name: string, of: string): Derived => ({
  ...sum(name),
  from: (read) => read.fact(`${of}.twice`, (by) => ({ twice: 2 * by.number(of) })).twice,
});

const quantities: Readonly<Record<string, readonly (Given | Derived)[]>> = {
  keel: [
    given('keel.depth', '30 mm'),
    linked('keel.width', 'rail.width'),
    sum('keel.sum', 'keel.depth', 'keel.width'),
  ],
  rail: [
    linked('rail.width', 'frame.width'),
    either('rail.or', 'keel.sum', 'frame.sum'),
    told('rail.told', 'keel.sum'),
  ],
  frame: [
    given('frame.width', '25 mm'),
    sum('frame.sum', 'frame.width', 'rail.or'),
    either('frame.or', 'rail.told', 'keel.width'),
  ],
};
const owners: Readonly<Record<string, Owner>> = Object.fromEntries(
  Object.entries(quantities).map(([name, of]) => [name, ownerOf(of)]),
);
const names = Object.values(quantities).flatMap((all) => all.map(({ name }) => name));
const entered = names.filter((name) => !/(sum|or|told)$/.test(name));
const hull = (): never => {
  throw new Error('the offsets are missing');
};

interface State {
  readonly here: readonly string[];
  readonly written: Readonly<Record<string, string>>;
  readonly second: Supposed;
  readonly built: Readonly<Record<string, string>>;
}
type Deed =
  | {
      readonly does: 'write' | 'second' | 'built' | 'suppose';
      readonly name: string;
      readonly as: string | number | null;
    }
  | { readonly does: 'come or go'; readonly owner: string };

const texts = fc.oneof(
  fc.integer({ min: 1, max: 40 }).map((mm) => `${mm} mm`),
  fc.constantFrom(...names, 'keel.length', '2 * rail.width', 'keel.depth + frame.or'),
);
const name = fc.constantFrom(...entered);
const deeds: fc.Arbitrary<Deed> = fc.oneof(
  fc.record({ does: fc.constantFrom('write' as const, 'second' as const), name, as: fc.option(texts) }),
  fc.record({ does: fc.constant('built' as const), name, as: fc.option(fc.constantFrom('11 mm', '31 mm')) }),
  fc.record({
    does: fc.constantFrom('suppose' as const, 'second' as const),
    name,
    as: fc.oneof(texts, fc.constantFrom(0.015, 0.035), fc.constant(null)),
  }),
  fc.record({ does: fc.constant('come or go' as const), owner: fc.constantFrom(...Object.keys(owners)) }),
);

const without = <T>(of: Readonly<Record<string, T>>, key: string): Record<string, T> =>
  Object.fromEntries(Object.entries(of).filter(([other]) => other !== key));

function after(state: State, deed: Deed): State {
  if (deed.does === 'come or go') {
    const { here } = state;
    const others = here.filter((other) => other !== deed.owner);
    return { ...state, here: others.length < here.length ? others : [...here, deed.owner] };
  }
  const { does, name: of, as } = deed;
  if (does === 'second') return { ...state, second: { ...without(state.second, of), [of]: as } };
  if (does === 'suppose') return state;
  const was = does === 'write' ? state.written : state.built;
  const now = typeof as === 'string' ? { ...was, [of]: as } : without(was, of);
  return does === 'write' ? { ...state, written: now } : { ...state, built: now };
}

/** The graphs of a state that may change: as written, a second version, both as built. */
function graphsOf(state: () => State): readonly Graph[] {
  const catalogues = new Map<string, ReturnType<typeof catalogueFrom>>();
  const catalogueOf = (here: readonly string[]) => {
    const key = here.join();
    const known =
      catalogues.get(key) ??
      catalogueFrom(
        here.map((owner) => owners[owner]!),
        { hull },
      ); // of the three
    catalogues.set(key, known);
    return known;
  };
  const first = createGraph({
    catalogue: () => catalogueOf(state().here),
    entries: () => state().written,
    shown: plainShown,
  });
  const second = first.with(() => state().second);
  return [first, second, first.asBuilt(() => state().built), second.asBuilt(() => state().built)];
}

/** Which circle is told, and what waits for it, depends on where one looked first. */
const plainly = (value: Value) => (isIssue(value) ? 'no value' : value);
const valuesIn = (graph: Graph) => names.map((one) => [one, plainly(graph.peek(one))]);
const valuesUnder = (graph: Graph, changes: Supposed) =>
  names.map((one) => [one, plainly(graph.supposing((read) => read.number(one))(changes))]);

test('a thousand edits, one after the other', () => {
  fc.assert(
    fc.property(fc.array(deeds, { minLength: 20, maxLength: 20 }), (all) => {
      const state = signal<State>({ here: ['keel', 'rail'], written: {}, second: {}, built: {} });
      const graphs = graphsOf(() => state.value);
      for (const deed of all) {
        state.value = after(state.peek(), deed);
        const afresh = graphsOf(() => state.peek());
        for (const [at, graph] of graphs.entries()) {
          expect([at, valuesIn(graph)]).toStrictEqual([at, valuesIn(afresh[at]!)]);
          if (deed.does !== 'suppose') continue;
          const changes = { [deed.name]: deed.as };
          const wanted = afresh[at]!.with(() => changes);
          expect([at, valuesUnder(graph, changes)]).toStrictEqual([at, valuesIn(wanted)]);
        }
      }
    }),
    { seed: 27, numRuns: 50 },
  );
});
