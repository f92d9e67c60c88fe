/**
 * The reader of what is kept, which a first visit does without. Where something is kept the page fetches it before any
 * of it is asked for; parts of the page that come late and read import it, and so bring it.
 */
import type { Difference } from '../state/difference';
import type { Kept, Saved, Unusable } from './saved-text';
import type { BookState } from '../state/state';
import type { Shelf } from './shelf';

export interface SavedReader {
  readonly readSaved: (text: string) => Saved | Unusable;
  /** The state that a kept step leads to; null where it leads to none. */
  readonly stepFrom: (from: BookState, step: Difference) => BookState | null;
  /** What is kept under a key, left as it is; null where there is nothing, or nothing that can be read. */
  readonly keptAt: (shelf: Shelf | null, key: string) => Kept | null;
}

let reader: SavedReader | null = null;

/** Called by the reader itself, as it comes. */
export function standBy(arrived: SavedReader): void {
  reader = arrived;
}

export const isReaderHere = (): boolean => reader !== null;

/** @throws where it has not come yet: who has something to be read sees to that first */
export function savedReader(): SavedReader {
  if (!reader) throw new Error('the reader of what is kept was not fetched');
  return reader;
}
