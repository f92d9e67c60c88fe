/** What was found last, kept in this browser: the first to be offered while nothing is typed. */
import { type Shelf, textAt } from '../../notebook';
import type { Findable } from './search';

const KEY = 'battenbook found';
const MOST = 8;

/** By what makes them the same thing, the last first. */
export function lastFound(shelf: Shelf | null): readonly string[] {
  try {
    const read: unknown = JSON.parse(textAt(shelf, KEY) ?? '[]');
    return Array.isArray(read) ? read.filter((one) => typeof one === 'string').slice(0, MOST) : [];
  } catch {
    return [];
  }
}

export function keepFound(shelf: Shelf | null, { same }: Findable): void {
  const all = [same, ...lastFound(shelf).filter((one) => one !== same)].slice(0, MOST);
  try {
    shelf?.setItem(KEY, JSON.stringify(all));
  } catch {
    // It is offered no sooner than the others then.
  }
}
