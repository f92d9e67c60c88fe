/** The nodes of a graph's quantities: one for the value of each, one for the entry of each that is given. */
import type { Derived, Given } from '../boat';
import type { Id } from './network';

export interface Places {
  readonly names: readonly string[];
  readonly quantity: (name: string) => Given | Derived | undefined;
  readonly given: (name: string) => Given | undefined;
  /** The node of a quantity's value; undefined where there is no such quantity. */
  readonly idOf: (name: string) => Id | undefined;
  readonly at: (id: Id) => Place;
}

/** What a node stands for. */
export type Place =
  | { readonly is: 'given' | 'entry'; readonly of: Given }
  | { readonly is: 'derived'; readonly of: Derived }
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
      return place && 'of' in place ? place.of : undefined;
    },
    given: (name) => {
      const place = placeOf(name);
      return place?.is === 'given' ? place.of : undefined;
    },
    idOf: (name) => ids.get(name),
    at: (id) => places[id]!, // ids come from here
  };
}
