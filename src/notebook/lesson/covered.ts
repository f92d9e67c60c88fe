/**
 * What is covered while a question waits for a guess, answered in one place: the number that is asked for, all that the
 * cell works out beside it, what says the same number under another name, and whatever follows from any of these. The
 * page looks through a graph in which none of them has a value, so that no part of it can tell one.
 */
import { computed } from '@preact/signals-core';
import type { Read } from '../../boat';
import { onceEach } from '../../boat/once';
import type { Issue } from '../../measure';
import type { Graph } from '../graph/graph';
import { Waiting } from '../graph/reader';

export interface Covering {
  /** The question that keeps a number covered, by its name; undefined where none does. Tracked. */
  readonly askOf: (name: string, graph: Graph) => string | undefined;
  /** The same graph with no value for what is covered; the same one each time. */
  readonly veiled: (graph: Graph) => Graph;
}

/** Why a covered number has no value. */
const COVERED = 'it is asked for, so write your guess first';

/**
 * @param waiting the numbers that questions wait for, each with its question; tracked
 * @param isTyped whether a name is that of a cell's entry: what is typed into a cell is no secret; tracked
 * @param isCell whether a word is the name of a cell; tracked
 */
export function covering(
  waiting: () => ReadonlyMap<string, string>,
  isTyped: (name: string) => boolean,
  isCell: (word: string) => boolean,
): Covering {
  /** By the cells that work the numbers out. */
  const own = (name: string): string | undefined => {
    if (isTyped(name)) return undefined;
    const asks = waiting();
    const word = wordOf(name);
    if (!isCell(word)) return asks.get(name);
    for (const [of, ask] of asks) if (wordOf(of) === word && !isTyped(of)) return ask;
    return undefined;
  };
  /** Numbers that an asked one is worked out from and that come to the same: they would tell it. */
  const twins = onceEach((graph: Graph) =>
    computed((): ReadonlyMap<string, string> => {
      const found = new Map<string, string>();
      for (const [of, ask] of waiting()) {
        const value = isTyped(of) ? null : graph.value(of);
        if (typeof value !== 'number') continue;
        const { kind } = graph.quantity(of)!; // it has a value
        for (const name of followed(of, graph)) {
          const other = graph.quantity(name);
          if (other?.kind === kind && !('preset' in other) && graph.value(name) === value)
            found.set(name, ask);
        }
      }
      return found;
    }),
  );
  /** An entry shows what fills it: the number that is asked for, or a sum of what is covered that somebody wrote. */
  const askOfEntry = (name: string, graph: Graph, way: ReadonlySet<string>): string | undefined => {
    const { names, written } = graph.entry(name) ?? { names: [], written: false };
    for (const from of names) {
      if (way.has(from)) continue;
      const ask = waiting().get(from) ?? twins(graph).value.get(from);
      if (ask !== undefined && !isTyped(from)) return ask;
      const further = isGiven(from, graph)
        ? askOfEntry(from, graph, new Set([...way, from]))
        : written
          ? askOf(from, graph)
          : undefined;
      if (further !== undefined) return further;
    }
    return undefined;
  };
  const askOf: Covering['askOf'] = (name, graph) => {
    if (waiting().size === 0) return undefined;
    if (isGiven(name, graph))
      return own(name) ?? twins(graph).value.get(name) ?? askOfEntry(name, graph, new Set([name]));
    const alike = twins(graph).value;
    for (const one of followed(name, graph)) {
      const ask = own(one) ?? alike.get(one);
      // What is reckoned from a size of the boat's tells little of it.
      if (ask !== undefined && !isGiven(one, graph)) return ask;
    }
    return undefined;
  };
  return {
    askOf,
    veiled: onceEach((graph: Graph) => veil(graph, (name) => askOf(name, graph) !== undefined)),
  };
}

const wordOf = (name: string): string => name.split('.', 1)[0]!; // split gives at least one

const isGiven = (name: string, graph: Graph): boolean => {
  const of = graph.quantity(name);
  return of !== undefined && 'preset' in of;
};

/** A quantity, and all that it was worked out from, nearest first. */
function followed(name: string, graph: Graph): ReadonlySet<string> {
  if (graph.has(name)) void graph.value(name); // worked out, so that what it asked is known
  const all = new Set([name]);
  for (const one of all) if (graph.has(one)) for (const asked of graph.dependsOn(one)) all.add(asked);
  return all;
}

function veil(graph: Graph, hides: (name: string) => boolean): Graph {
  // What is reckoned on from it says what it waits for.
  const why = (name: string): Issue => ({ issue: COVERED, waitsFor: name });
  const reading = (read: Read): Read => {
    const open = (name: string) => {
      if (hides(name)) throw new Waiting(why(name));
      return name;
    };
    return {
      ...read,
      number: (name) => read.number(open(name)),
      choice: (name) => read.choice(open(name)),
      maybe: (name) => (hides(name) ? null : read.maybe(name)),
      why: (name) => (hides(name) ? null : (read.why?.(name) ?? null)),
    };
  };
  const under = (other: Graph) => veil(other, hides);
  return {
    get names() {
      return graph.names;
    },
    namesOf: (word) => graph.namesOf(word),
    has: (name) => graph.has(name),
    quantity: (name) => graph.quantity(name),
    value: (name) => (hides(name) ? why(name) : graph.value(name)),
    peek: (name) => (hides(name) ? why(name) : graph.peek(name)),
    designed: (name) => (hides(name) ? why(name) : graph.designed(name)),
    mannerOf: (name) => graph.mannerOf(name),
    // What somebody wrote stands in its field; what fills it without that would tell.
    entry: (name) => {
      const entry = graph.entry(name);
      return entry && !entry.written && hides(name) ? { ...entry, text: '' } : entry;
    },
    hull: () => graph.hull(),
    dependsOn: (name) => graph.dependsOn(name),
    workOut: (by) => graph.workOut((read) => by(reading(read))),
    with: (changes) => under(graph.with(changes)),
    supposing: (by) => graph.supposing((read) => by(reading(read))),
    asBuilt: (built) => under(graph.asBuilt(built)),
    seenAt: (follows, rested) => under(graph.seenAt(follows, rested)),
  };
}
