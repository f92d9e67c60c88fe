/** Saves the boat by itself after each edit, and says so when it can't or when another window has. */
import { effect, type Signal } from '@preact/signals';
import type { Shown } from '../measure';
import type { Book, Store } from '../notebook';

/** Long enough to spare the storage while a key repeats, short enough that nothing is lost. */
const PAUSE_MS = 250;

export interface Conflict {
  readonly says: string;
  /** Puts this window's boat in place of the other's, which is set aside. */
  readonly keepMine: () => void;
  /** Takes the boat that the other window saved. */
  readonly takeTheirs: () => void;
}

export interface Keeping {
  readonly book: Book;
  readonly shown: Signal<Shown>;
  readonly store: Store;
  readonly notice: Signal<string | null>;
  readonly conflict: Signal<Conflict | null>;
}

export function keepSaved({ book, shown, store, notice, conflict }: Keeping): void {
  let timer = 0;
  let first = true;
  const save = () => {
    clearTimeout(timer);
    timer = 0;
    const kept = { state: book.state.peek(), shown: shown.peek() };
    const outcome = store.save(kept);
    if (outcome.done === 'conflict') {
      conflict.value = {
        says: outcome.says,
        keepMine: () => {
          const over = store.saveOver({ state: book.state.peek(), shown: shown.peek() });
          conflict.value = null;
          if (over.says) notice.value = over.says;
        },
        takeTheirs: () => {
          store.open();
          conflict.value = null;
          book.open(outcome.theirs.state);
          shown.value = outcome.theirs.shown;
        },
      };
      return;
    }
    if (outcome.says) notice.value = outcome.says;
  };
  effect(() => {
    void book.state.value;
    void shown.value;
    if (first) {
      first = false;
      return;
    }
    clearTimeout(timer);
    timer = window.setTimeout(save, PAUSE_MS);
  });
  // Leaving the page must not outrun the pause.
  addEventListener('pagehide', () => {
    if (timer) save();
  });
}
