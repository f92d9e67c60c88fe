/** The browser's storage, as far as the notebook keeps things there; it may be shut, and be shut at any time. */

/** The part of the browser's storage that is used; `localStorage` fits. */
export interface Shelf {
  getItem(key: string): string | null;
  setItem(key: string, text: string): void;
}

/** The shelf that `reach` gives, or null where the browser forbids it or has none. */
export function shelfFrom<S extends Shelf>(reach: () => S | null | undefined): S | null {
  try {
    const shelf = reach() ?? null;
    shelf?.getItem('');
    return shelf;
  } catch {
    return null;
  }
}

/** The text under a key; null where there is none, or where the browser has shut the shelf since. */
export function textAt(shelf: Shelf | null, key: string): string | null {
  try {
    return shelf?.getItem(key) ?? null;
  } catch (fault) {
    if (!(fault instanceof DOMException)) throw fault;
    return null;
  }
}
