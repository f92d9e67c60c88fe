/** Which questions of a notebook were opened last, remembered in this browser. */
import { type Shelf, textAt } from '../../notebook';

/** More than this is a list of its own. */
const MOST = 4;

const keyOf = (notebook: string) => `battenbook used last ${notebook}`;

/** Names of questions, the last used first. */
export function usedLast(shelf: Shelf | null, notebook: string): string[] {
  try {
    const read: unknown = JSON.parse(textAt(shelf, keyOf(notebook)) ?? '[]');
    return Array.isArray(read) ? read.filter((name) => typeof name === 'string').slice(0, MOST) : [];
  } catch {
    return [];
  }
}

export function noteUse(shelf: Shelf | null, notebook: string, name: string): void {
  const names = [name, ...usedLast(shelf, notebook).filter((other) => other !== name)].slice(0, MOST);
  try {
    shelf?.setItem(keyOf(notebook), JSON.stringify(names));
  } catch {
    // The list is a convenience; the sheet's own keeping says why nothing is saved.
  }
}
