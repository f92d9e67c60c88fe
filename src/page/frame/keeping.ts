/** Saves the boat by itself after each edit, and says so when it can't or when another window has. */
import { effect, type Signal } from '@preact/signals';
import type { Shown } from '../../measure';
import type { Book, Kept, Outcome, Store } from '../../notebook';
import type { Notice } from '../bench';

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
  readonly notice: Signal<Notice | null>;
  readonly conflict: Signal<Conflict | null>;
}

export function keepSaved({ book, shown, store, notice, conflict }: Keeping): void {
  let timer = 0;
  let first = true;
  let told = '';
  const kept = (): Kept => ({ state: book.state.peek(), shown: shown.peek() });
  // What can't be helped is said once, not at every letter.
  const tell = ({ says = '' }: { readonly says?: string }) => {
    if (says !== '' && says !== told) notice.value = { says };
    told = says;
  };
  const save = () => {
    clearTimeout(timer);
    timer = 0;
    const outcome = store.save(kept());
    if (outcome.done === 'conflict') conflict.value = conflictOf(outcome.says, outcome.theirs);
    else tell(outcome);
  };
  const conflictOf = (says: string, theirs: Kept): Conflict => ({
    says,
    keepMine: () => {
      conflict.value = null;
      tell(store.saveOver(kept()) satisfies Outcome);
    },
    takeTheirs: () => {
      conflict.value = null;
      store.open();
      book.open(theirs.state);
      shown.value = theirs.shown;
    },
  });
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
  addEventListener('beforeunload', (event) => {
    // Until one of two boats is chosen, this window's lives nowhere else.
    if (conflict.peek()) event.preventDefault();
  });
}
