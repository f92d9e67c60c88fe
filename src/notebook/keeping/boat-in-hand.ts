/** Which of the builder's boats was last in hand, and where on the shelf it lies. */
import type { Shelf } from './shelf';

/** The first boat's, and of old the only one's. */
export const FIRST_BOAT = 'battenbook boat';
/** Keys of the builder's boats, with their number from the second on. */
export const BOAT = /^battenbook boat(?: (\d+))?$/;
const IN_HAND = 'battenbook boat in hand';

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
