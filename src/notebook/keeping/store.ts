/**
 * Saving by itself in the browser, and finding it again: a boat, or a sheet without one, under a key of its own.
 *
 * Several windows may hold the same one. Each save looks first whether the text on the shelf is
 * still the one this window last read or wrote; if not, another window has saved since, and the
 * page asks its builder which to keep. What is given up, and what can't be read, is set aside
 * under another key, never thrown away.
 */
import { savedReader } from './saved-reader';
import { isUnusable, type Kept, keptOf, writeSaved } from './saved-text';
import type { Shelf } from './shelf';

export interface Opened {
  /** What was kept; null where nothing was, or nothing that can be read. */
  readonly kept: Kept | null;
  /** What went wrong, as sentences for the builder. */
  readonly says?: string;
}

export type Outcome =
  | { readonly done: 'saved'; readonly says?: string }
  /** Work goes on, but lives only in this window. */
  | { readonly done: 'not saved'; readonly says: string }
  /** Another window has saved since. Open again to take its boat, or save over it. */
  | { readonly done: 'conflict'; readonly says: string; readonly theirs: Kept };

export interface Store {
  /** Takes what is kept as this window's own. */
  open(): Opened;
  save(kept: Kept): Outcome;
  /** Saves although another window has saved since; the other's boat is set aside. */
  saveOver(kept: Kept): Outcome;
  /** Whether another window has saved since this one last read or wrote. */
  isSavedElsewhere(): boolean;
}

const SHUT =
  'This browser keeps nothing for this page. Your work goes on, but save the boat to a file before you close the window.';
const FULL =
  "This browser's storage is full, so the last changes are not kept. Your work goes on; save the boat to a file, or clear other sites' data.";
const FULL_OF_STEPS =
  "This browser's storage is full. The boat is kept, but not the steps that Undo goes back by: they last until the window is closed.";
const CONFLICT = 'This was changed in another window since. Which of the two is to be kept?';

const isFull = (fault: unknown): boolean => fault instanceof DOMException && /quota/i.test(fault.name);

/** @param key where on the shelf the boat lies; what is set aside lies under `<key> aside 1` and so on */
export function createStore(shelf: Shelf | null, key = 'battenbook boat'): Store {
  if (!shelf) {
    return {
      open: () => ({ kept: null, says: SHUT }),
      save: () => ({ done: 'not saved', says: SHUT }),
      saveOver: () => ({ done: 'not saved', says: SHUT }),
      isSavedElsewhere: () => false,
    };
  }

  /** The text on the shelf as this window knows it, and how often the boat was saved by then. */
  let known: string | null = null;
  let revision = 0;

  function open(on: Shelf): Opened {
    const text = on.getItem(key);
    known = text;
    if (text === null) return { kept: null };
    const saved = savedReader().readSaved(text);
    if (!isUnusable(saved)) {
      revision = saved.revision;
      return { kept: keptOf(saved) };
    }
    const why = `What this browser keeps can't be read: ${saved.because}.`;
    try {
      setAside(on, text);
      return { kept: null, says: `${why} Its text is set aside, and the notebook begins afresh.` };
    } catch {
      // Forgetting it makes every save try again to set it aside first.
      known = null;
      return { kept: null, says: `${why} The notebook begins afresh, and nothing is saved over it.` };
    }
  }

  function save(on: Shelf, kept: Kept, over: boolean): Outcome {
    const there = on.getItem(key);
    let says: string | undefined;
    if (there !== null && there !== known) {
      const theirs = savedReader().readSaved(there);
      if (isUnusable(theirs)) {
        says = `What another window left in this browser can't be read: ${theirs.because}. Its text is set aside.`;
      } else {
        if (!over) return { done: 'conflict', says: CONFLICT, theirs: keptOf(theirs) };
        revision = Math.max(revision, theirs.revision);
      }
      setAside(on, there);
    }
    const write = (what: Kept) => {
      const text = writeSaved({ ...what, revision: revision + 1 });
      on.setItem(key, text);
      known = text;
      revision += 1;
    };
    try {
      write(kept);
    } catch (fault) {
      if (!isFull(fault)) throw fault;
      write({ ...kept, earlier: [], later: [] });
      says = FULL_OF_STEPS;
    }
    return says === undefined ? { done: 'saved' } : { done: 'saved', says };
  }

  function setAside(on: Shelf, text: string): void {
    for (let n = 1; ; n += 1) {
      const there = on.getItem(`${key} aside ${n}`);
      if (there === null) on.setItem(`${key} aside ${n}`, text);
      if (there === null || there === text) return;
    }
  }

  /** The browser may refuse the shelf at any time: it fills up, or the builder shuts it. */
  const unlessRefused = <T>(act: () => T, otherwise: (says: string) => T): T => {
    try {
      return act();
    } catch (fault) {
      if (!(fault instanceof DOMException)) throw fault;
      return otherwise(isFull(fault) ? FULL : SHUT);
    }
  };
  const notSaved = (says: string): Outcome => ({ done: 'not saved', says });

  return {
    open: () =>
      unlessRefused(
        () => open(shelf),
        (says) => ({ kept: null, says }),
      ),
    save: (kept) => unlessRefused(() => save(shelf, kept, false), notSaved),
    saveOver: (kept) => unlessRefused(() => save(shelf, kept, true), notSaved),
    isSavedElsewhere: () =>
      unlessRefused(
        () => {
          const there = shelf.getItem(key);
          return there !== null && there !== known;
        },
        () => false,
      ),
  };
}
