/** Where the builder's boats lie in the browser's storage, each under a key of its own, and which of them was last in hand. */
import type { Shelf } from './store';

/** Storage whose keys can be gone through; `localStorage` fits. */
export interface Shelves extends Shelf {
  readonly length: number;
  key(index: number): string | null;
  removeItem(key: string): void;
}

/** The first boat's, and of old the only one's. */
export const FIRST_BOAT = 'battenbook boat';
const BOAT = /^battenbook boat(?: (\d+))?$/;
const IN_HAND = 'battenbook boat in hand';

/** Keys of the builder's boats, oldest first. */
export function boatKeys(shelf: Shelves): string[] {
  const numberOf = (key: string) => Number(BOAT.exec(key)?.[1] ?? 1);
  return Array.from({ length: shelf.length }, (_, index) => shelf.key(index))
    .filter((key) => key !== null && BOAT.test(key))
    .map((key) => key!) // those that are null are left out
    .sort((a, b) => numberOf(a) - numberOf(b));
}

/** A key under which no boat lies; the first is left to the boat that the page opens on, kept or not yet. */
export function nextBoatKey(shelf: Shelves): string {
  const last = BOAT.exec(boatKeys(shelf).at(-1) ?? '')?.[1] ?? 1;
  return `${FIRST_BOAT} ${Number(last) + 1}`;
}

/** The boat last in hand in this window, else in any; the first where that one is gone. */
export function boatInHand(window: Shelf | null, shelf: Shelf | null): string {
  const key = window?.getItem(IN_HAND) ?? shelf?.getItem(IN_HAND) ?? FIRST_BOAT;
  return BOAT.test(key) && (shelf?.getItem(key) ?? null) !== null ? key : FIRST_BOAT;
}

export function takeInHand(key: string, ...shelves: (Shelf | null)[]): void {
  for (const shelf of shelves) {
    try {
      shelf?.setItem(IN_HAND, key);
    } catch {
      // The boat's own keeping says why nothing is saved.
    }
  }
}
