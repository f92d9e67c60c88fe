/** The notation chosen for each boat, remembered in this browser: a plan goes on being written as it was begun. */
import { signal } from '@preact/signals';
import { notations, type Notation } from '../../boat/table/offset-notation';
import { shelfFrom } from '../../notebook';

const KEY = 'battenbook notations';
/** Boats remembered; the one chosen for longest ago is forgotten first. */
const MOST = 30;

const shelf = shelfFrom(() => localStorage);

type Kept = readonly (readonly [boat: string, notation: Notation])[];
const all = signal<Kept>(kept());

/** What was chosen for the boat of this name; null where nothing was, or what is kept can't be read. Tracked. */
export function keptNotation(boat: string): Notation | null {
  return all.value.find(([name]) => name === boat)?.[1] ?? null;
}

export function keepNotation(boat: string, notation: Notation): void {
  // Another window may have kept more in the meantime.
  const others = [...all.peek(), ...kept()].filter(
    ([name], i, both) => name !== boat && both.findIndex(([other]) => other === name) === i,
  );
  all.value = [...others, [boat, notation] as const].slice(-MOST);
  try {
    shelf?.setItem(KEY, JSON.stringify(all.peek()));
  } catch {
    // The choice holds for this window; the boat's own keeping says why nothing is saved.
  }
}

function kept(): Kept {
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
