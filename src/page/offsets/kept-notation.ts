/** The notation chosen for each boat, remembered in this browser: a plan goes on being written as it was begun. */
import { notations, type Notation } from '../../boat/offset-notation';
import { shelfFrom } from '../../notebook';

const KEY = 'battenbook notations';
/** Boats remembered; the one chosen for longest ago is forgotten first. */
const MOST = 30;

const shelf = shelfFrom(() => localStorage);

/** What was chosen for the boat of this name; null where nothing was, or what is kept can't be read. */
export function keptNotation(boat: string): Notation | null {
  return kept().find(([name]) => name === boat)?.[1] ?? null;
}

export function keepNotation(boat: string, notation: Notation): void {
  const others = kept().filter(([name]) => name !== boat);
  try {
    shelf?.setItem(KEY, JSON.stringify([...others, [boat, notation]].slice(-MOST)));
  } catch {
    // The choice holds for this window; the boat's own keeping says why nothing is saved.
  }
}

function kept(): readonly (readonly [string, Notation])[] {
  try {
    const found: unknown = JSON.parse(shelf?.getItem(KEY) ?? '[]');
    return Array.isArray(found) ? found.filter(isChoice) : [];
  } catch {
    return [];
  }
}

function isChoice(one: unknown): one is readonly [string, Notation] {
  return Array.isArray(one) && typeof one[0] === 'string' && Object.keys(notations).includes(String(one[1]));
}
