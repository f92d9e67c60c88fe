/** The nodes of a graph's quantities: one for the value of each, one for the entry of each that is given. */
import type { Derived, Given, Read } from '../boat';
import type { Id } from './network';

export interface Places {
  readonly names: readonly string[];
  readonly quantity: (name: string) => Given | Derived | undefined;
  readonly given: (name: string) => Given | undefined;
  /** The node of a quantity's value; undefined where there is no such quantity. */
  readonly idOf: (name: string) => Id | undefined;
  /** The node of a fact; the first that asks for it says how it is found. */
  readonly fact: (name: string, find: Fact['find']) => Id;
  readonly at: (id: Id) => Place;
}

/** Something of any form that is no quantity. */
export interface Fact {
  readonly name: string;
  readonly find: (read: Read) => unknown;
}

/** What a node stands for. */
export type Place =
  | { readonly is: 'given' | 'entry'; readonly of: Given }
  | { readonly is: 'derived'; readonly of: Derived }
  | { readonly is: 'fact'; readonly of: Fact }
  | { readonly is: Other };

/** Nodes that are no quantity's, in the order of their ids. */
const others = ['hull', 'units', 'inches', 'findings'] as const;
type Other = (typeof others)[number];

export const otherId = (other: Other): Id => others.indexOf(other);

/** The node of a given quantity's entry, by that of its value. */
export const entryIdOf = (valueId: Id): Id => valueId + 1;

/** @throws TypeError where two quantities have one name: one of them would win in silence */
export function placesOf(given: readonly Given[], derived: readonly Derived[]): Places {
  const places: Place[] = others.map((is) => ({ is }));
  const ids = new Map<string, Id>();
  const facts = new Map<string, Id>();
  const place = (name: string, ...more: readonly Place[]) => {
    if (ids.has(name)) throw new TypeError(`two quantities of one name: ${name}`);
    ids.set(name, places.length);
    places.push(...more);
  };
  for (const of of given) place(of.name, { is: 'given', of }, { is: 'entry', of });
  for (const of of derived) place(of.name, { is: 'derived', of });
  const placeOf = (name: string): Place | undefined => {
    const id = ids.get(name);
    return id === undefined ? undefined : places[id];
  };
  return {
    names: [...ids.keys()],
    quantity: (name) => {
      const place = placeOf(name);
      return place && 'of' in place && place.is !== 'fact' ? place.of : undefined;
    },
    given: (name) => {
      const place = placeOf(name);
      return place?.is === 'given' ? place.of : undefined;
    },
    idOf: (name) => ids.get(name),
    fact: (name, find) => {
      const known = facts.get(name);
      if (known !== undefined) return known;
      facts.set(name, places.length);
      return places.push({ is: 'fact', of: { name, find } }) - 1;
    },
    at: (id) => places[id]!, // ids come from here
  };
}
