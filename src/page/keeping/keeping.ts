/** Saves what lies on the bench by itself after each edit, and says so when it can't or when another window has. */
import { effect, type Signal } from '@preact/signals';
import {
  type Book,
  type BookState,
  createStore,
  fetchReader,
  isReaderHere,
  type Kept,
  type Outcome,
  type Shelf,
} from '../../notebook';
import { stepOn } from '../../notebook/keeping/saved-text';
import type { Notice } from '../notice';

/** Long enough to spare the storage while a key repeats, short enough that nothing is lost. */
const PAUSE_MS = 250;

const NOT_READ =
  'Another window has saved this too, and what reads it did not arrive. Your work goes on; load the page again in another window when you are online.';

export interface Conflict {
  readonly says: string;
  /** Puts this window's boat in place of the other's, which is set aside. */
  readonly keepMine: () => void;
  /** Takes the boat that the other window saved. */
  readonly takeTheirs: () => void;
}

interface Around {
  readonly book: Book;
  readonly shelf: Shelf | null;
  readonly notice: Signal<Notice | null>;
  readonly conflict: Signal<Conflict | null>;
}

export interface Keeping {
  /** Saves what is on the bench, and puts in its place what is kept under the key, or else what is made afresh. */
  take(key: string, afresh: () => Kept): void;
  /** Holds a boat ready for the key, to be saved as soon as it is taken. */
  hold(key: string, kept: Kept): void;
  /** Changes a boat that is not on the bench, by a step that can be undone when she is; says what she is then. */
  amend(key: string, change: (state: BookState) => BookState, afresh: () => Kept): BookState;
  /** Saves what the pause after an edit still holds back. */
  save(): void;
}

export function keepSaved({ book, shelf, notice, conflict }: Around): Keeping {
  let key = '';
  let store = createStore(null);
  /** The state that needs no saving. */
  let saved = book.state.peek();
  let isKept = true;
  // What is new, or could not be saved when another boat was taken up: it waits in this window.
  const unsaved = new Map<string, { readonly store: typeof store; readonly kept: Kept }>();
  let timer = 0;
  let told = '';
  // What can't be helped is said once, not at every letter.
  const tell = ({ says = '' }: { readonly says?: string }) => {
    if (says !== '' && says !== told) notice.value = { says };
    told = says;
  };
  const note = (outcome: Outcome) => {
    isKept = outcome.done === 'saved';
    if (outcome.done === 'conflict') conflict.value = conflictOf(outcome.says, outcome.theirs);
    else tell(outcome);
  };
  const save = () => {
    clearTimeout(timer);
    timer = 0;
    // What another window has saved must be read before anything is written in its place.
    if (!isReaderHere() && store.isSavedElsewhere()) {
      isKept = false;
      void fetchReader().then(save, () => tell({ says: NOT_READ }));
      return;
    }
    saved = book.state.peek();
    note(store.save(book.kept()));
  };
  const conflictOf = (says: string, theirs: Kept): Conflict => ({
    says,
    keepMine: () => {
      conflict.value = null;
      note(store.saveOver(book.kept()));
    },
    takeTheirs: () => {
      conflict.value = null;
      store.open();
      book.open(theirs.state);
    },
  });
  const saveWhatWaits = () => {
    if (timer) save();
  };
  const take = (next: string, afresh: () => Kept) => {
    saveWhatWaits();
    if (!isKept) unsaved.set(key, { store, kept: book.kept() });
    conflict.value = null;
    key = next;
    const waiting = unsaved.get(key);
    unsaved.delete(key);
    store = waiting?.store ?? createStore(shelf, key);
    const opened = waiting ?? store.open();
    if ('says' in opened) tell(opened);
    const kept = opened.kept ?? afresh();
    saved = kept.state;
    isKept = true;
    book.take(kept);
    if (waiting) save();
  };
  effect(() => {
    if (book.state.value === saved) return;
    clearTimeout(timer);
    timer = window.setTimeout(save, PAUSE_MS);
  });
  // Leaving the page must not outrun the pause.
  addEventListener('pagehide', saveWhatWaits);
  addEventListener('beforeunload', (event) => {
    // Until one of two boats is chosen, this window's lives nowhere else.
    if (conflict.peek() || unsaved.size > 0) event.preventDefault();
  });
  const hold = (at: string, kept: Kept) => {
    unsaved.set(at, { store: createStore(shelf, at), kept });
  };
  const amend = (at: string, change: (state: BookState) => BookState, afresh: () => Kept): BookState => {
    const waiting = unsaved.get(at);
    const its = waiting?.store ?? createStore(shelf, at);
    const was = waiting?.kept ?? its.open().kept ?? afresh();
    const kept = stepOn(was, change(was.state));
    const outcome = its.save(kept);
    if (outcome.done === 'saved') unsaved.delete(at);
    else unsaved.set(at, { store: its, kept });
    tell(outcome);
    return kept.state;
  };
  return { take, hold, amend, save: saveWhatWaits };
}
