/**
 * The quantities on hand: found by name when somebody asks, from whoever owns them. A cell that comes or goes is an
 * owner more or less, and what the others have stays as it is.
 */
import {
  type BoatLists,
  type Derived,
  type Ends,
  type Given,
  type Hull,
  type Owner,
  partOf,
  type Read,
} from '../../boat';

/** All that can be asked of a boat of a given table: its own quantities and those of the cells. */
export interface Catalogue {
  readonly find: (name: string) => Given | Derived | undefined;
  /** Every name there is, rows of tables among them; made when asked for. */
  readonly names: () => readonly string[];
  /** The names that begin with a word: `keelson`. */
  readonly namesOf: (word: string) => readonly string[];
  readonly owners: ReadonlySet<Owner>;
  readonly hull: (read: Read) => Hull;
  /** What the boat has to choose from; without a boat there is nothing. */
  readonly onBoat?: BoatLists;
  /** What these quantities take her to end in, and what she does end in as drawn. */
  readonly ends?: { readonly taken: Ends; readonly of: (hull: Hull) => Ends };
}

/**
 * @param owners in the order in which their names are listed; where two have one name, the first is found
 * @param rest what the catalogue has besides
 */
export function catalogueFrom(
  owners: Iterable<Owner>,
  rest: Pick<Catalogue, 'hull' | 'onBoat' | 'ends'>,
): Catalogue {
  const all = new Set(owners);
  const byWord = new Map<string, Owner[]>();
  for (const owner of all)
    for (const word of owner.words) {
      const known = byWord.get(word);
      if (known) known.push(owner);
      else byWord.set(word, [owner]);
    }
  let names: readonly string[] | null = null;
  return {
    ...rest,
    owners: all,
    find: (name) => {
      for (const owner of byWord.get(partOf(name)) ?? []) {
        const found = owner.find(name);
        if (found) return found;
      }
      return undefined;
    },
    names: () => (names ??= [...new Set([...all].flatMap((owner) => owner.names()))]),
    namesOf: (word) => {
      const own = (byWord.get(word) ?? []).flatMap((owner) => owner.names());
      return [...new Set(own.filter((name) => partOf(name) === word))];
    },
  };
}

/** First words of the names that may be found in one of two catalogues and not in the other, or as something else. */
export function wordsBetween(was: Catalogue, is: Catalogue): ReadonlySet<string> {
  const come = [...is.owners].filter((owner) => !was.owners.has(owner));
  const gone = [...was.owners].filter((owner) => !is.owners.has(owner));
  return new Set([...come, ...gone].flatMap(({ words }) => [...words]));
}
