/**
 * Whose quantities they are: a boat's own, what a cell brings along for her, a cell's under one name. They are
 * found by name when somebody asks, and listed only where names are listed.
 */
import { partOf } from '../as-built';
import type { Derived, Given } from './quantity';

export interface Owner {
  /** First words of the names: `keelson`, `scarf`. */
  readonly words: Iterable<string>;
  /** The quantity of this name, and the same one each time; undefined where there is none. */
  readonly find: (name: string) => Given | Derived | undefined;
  /** Every name that is listed; made when asked for. */
  readonly names: () => readonly string[];
}

/**
 * The owner of quantities that are at hand.
 * @throws TypeError where two of them have one name: one would win in silence
 */
export function ownerOf(quantities: Iterable<Given | Derived>): Owner {
  const byName = new Map<string, Given | Derived>();
  const words = new Set<string>();
  for (const quantity of quantities) {
    const { name } = quantity;
    if (byName.has(name)) throw new TypeError(`two quantities of one name: ${name}`);
    byName.set(name, quantity);
    words.add(partOf(name));
  }
  return { words, find: (name) => byName.get(name), names: () => [...byName.keys()] };
}
