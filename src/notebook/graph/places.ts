/**
 * The nodes of a graph's quantities, given out as names are first asked for: one for the value of each, one for the
 * entry of what is given, one for what there is under the name, which may come and go.
 */
import { type Derived, type Given, partOf, type Read } from '../../boat';
import type { Id } from './network';
import { type Catalogue, wordsBetween } from './on-hand';

/** A name that has been asked for, with the nodes it has so far. */
export interface NamedNode {
  readonly name: string;
  /** What there is under the name; undefined where there is nothing. */
  of: Given | Derived | undefined;
  readonly value: Id;
  entry?: Id;
  there?: Id;
}

/** Something of any form that is no quantity, under the name of a cell or of a row of its table. */
export interface FactNode {
  readonly name: string;
  /** By who asked last. */
  find: (read: Read) => unknown;
  readonly id: Id;
}

/** What a node stands for. */
export type Place =
  | { readonly is: 'value' | 'entry' | 'there'; readonly named: NamedNode }
  | { readonly is: 'fact'; readonly fact: FactNode }
  | { readonly is: Other };

/** Nodes that are no quantity's, in the order of their ids. */
const others = ['hull', 'units', 'inches', 'findings', 'names'] as const;
type Other = (typeof others)[number];

export const otherId = (other: Other): Id => others.indexOf(other);

export interface Places {
  /** The name with its node, which it is given if it has none yet. */
  readonly named: (name: string) => NamedNode;
  /** The node of a name's value, likewise. */
  readonly idOf: (name: string) => Id;
  readonly namedAt: (valueId: Id) => NamedNode;
  readonly entryOf: (named: NamedNode) => Id;
  readonly thereOf: (named: NamedNode) => Id;
  /** The node of a fact, and how it is found by who asks now. */
  readonly fact: (name: string, find: FactNode['find']) => Id;
  readonly at: (id: Id) => Place;
  /** The names whose values the nodes are; empty for other nodes. */
  readonly names: readonly string[];
  /** What the nodes are the values of, where that is worked out by a function of its own; null for other nodes. */
  readonly derived: readonly (Derived | null)[];
  /** Goes over to another catalogue. */
  readonly follow: (catalogue: Catalogue) => void;
  /** Tells of each node of a name that is something else in one catalogue than in the other. */
  readonly tellBetween: (was: Catalogue, is: Catalogue, tell: (id: Id) => void) => void;
  /** The entry of a name, where somebody has asked for it. */
  readonly entryKnown: (name: string) => Id | undefined;
}

export function placesIn(start: Catalogue): Places {
  let catalogue = start;
  const places: Place[] = [];
  const names: string[] = [];
  const derived: (Derived | null)[] = [];
  const nextAfter: Id[] = [];
  const ids = new Map<string, Id>();
  const byWord = new Map<string, NamedNode[]>();
  const facts = new Map<string, FactNode>();

  function give(place: Place): Id {
    names.push(place.is === 'value' ? place.named.name : '');
    derived.push(place.is === 'value' ? derivedIn(place.named) : null);
    nextAfter.push(places.length);
    return places.push(place) - 1;
  }
  for (const is of others) give({ is });

  function come(name: string): Id {
    const named: NamedNode = { name, of: catalogue.find(name), value: places.length };
    ids.set(name, give({ is: 'value', named }));
    const alike = byWord.get(partOf(name));
    if (alike) alike.push(named);
    else byWord.set(partOf(name), [named]);
    return named.value;
  }

  // Names are asked for in the same order time and again: what came after the last one before is tried first.
  let last: Id = otherId('names');
  function idOf(name: string): Id {
    const guess = nextAfter[last]!; // ids come from here
    if (names[guess] === name) last = guess;
    else {
      const id = ids.get(name) ?? come(name);
      nextAfter[last] = id;
      last = id;
    }
    return last;
  }
  const namedAt = (id: Id): NamedNode => (places[id] as { readonly named: NamedNode }).named; // the node of a value
  const among = (words: Iterable<string>): NamedNode[] =>
    [...words].flatMap((word) => byWord.get(word) ?? []);

  return {
    named: (name) => namedAt(idOf(name)),
    idOf,
    namedAt,
    entryOf: (one) => (one.entry ??= give({ is: 'entry', named: one })),
    thereOf: (one) => (one.there ??= give({ is: 'there', named: one })),
    fact: (name, find) => {
      const known = facts.get(name);
      if (known) known.find = find;
      const fact = known ?? { name, find, id: places.length };
      if (!known) {
        facts.set(name, fact);
        give({ is: 'fact', fact });
      }
      return fact.id;
    },
    at: (id) => places[id]!, // ids come from here
    names,
    derived,
    follow: (next) => {
      if (next === catalogue) return;
      const words = wordsBetween(catalogue, next);
      catalogue = next;
      for (const one of among(words)) {
        one.of = next.find(one.name);
        derived[one.value] = derivedIn(one);
      }
    },
    tellBetween: (was, is, tell) => {
      const words = wordsBetween(was, is);
      for (const { name, value, entry, there } of among(words)) {
        if (was.find(name) === is.find(name)) continue;
        tell(value);
        if (entry !== undefined) tell(entry);
        if (there !== undefined) tell(there);
      }
      for (const { name, id } of facts.values()) if (words.has(partOf(name))) tell(id);
    },
    entryKnown: (name) => {
      const id = ids.get(name);
      return id === undefined ? undefined : namedAt(id).entry;
    },
  };
}

const derivedIn = ({ of }: NamedNode): Derived | null => (of && !('preset' in of) ? of : null);
