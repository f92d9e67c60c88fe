/** Where the builder's boats lie in the browser's storage, each under a key of its own. */
import { BOAT, FIRST_BOAT } from './boat-in-hand';
import { keptAt } from './read-saved';
import type { Shelf } from './shelf';

/** Storage whose keys can be gone through; `localStorage` fits. */
export interface Shelves extends Shelf {
  readonly length: number;
  key(index: number): string | null;
  removeItem(key: string): void;
}

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

export interface OwnBoat {
  readonly key: string;
  readonly name: string;
  /** Put away: out of the way, and as she was left. */
  readonly away: boolean;
}

const AWAY = 'battenbook boats put away';

/** The builder's boats on the shelf, oldest first; one whose text can't be read is told when she is opened. */
export function ownBoats(shelf: Shelves): OwnBoat[] {
  const away = new Set(boatsAway(shelf));
  return boatKeys(shelf).flatMap((key) => {
    const kept = keptAt(shelf, key);
    return kept ? [{ key, name: kept.state.name, away: away.has(key) }] : [];
  });
}

/** Puts a boat away, or brings her back. */
export function putAway(shelf: Shelves, key: string, away: boolean): void {
  const others = boatsAway(shelf).filter((other) => other !== key);
  shelf.setItem(AWAY, JSON.stringify(away ? [...others, key] : others));
}

function boatsAway(shelf: Shelves): string[] {
  try {
    const read: unknown = JSON.parse(shelf.getItem(AWAY) ?? '[]');
    return Array.isArray(read) ? read.filter((key) => typeof key === 'string') : [];
  } catch {
    return [];
  }
}

/** The name, or with the first number after it that makes it another than these. */
export function nameBeside(names: readonly string[], name: string): string {
  const plain = name.replace(/ \d+$/, '');
  for (let n = 1; ; n += 1) {
    const one = n === 1 ? name : `${plain} ${n}`;
    if (!names.includes(one)) return one;
  }
}
