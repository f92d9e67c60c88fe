/**
 * The notebook in hand: a boat, one or two versions of it, and the graph of each.
 *
 * State is immutable and stepped through by the history; the graphs read it through one small
 * signal a written entry, so an edit wakes only what depends on it.
 */
import { batch, computed, type ReadonlySignal, signal, type Signal } from '@preact/signals-core';
import type { Derived, Found, Given, Hull, Read, Table } from '../boat';
import { plainShown } from '../measure';
import { createGraph, type Graph } from './graph';
import { advance, type History, redo, settle, startHistory, undo } from './history';
import {
  type BookState,
  type Changes,
  hold,
  keepOnly,
  swap,
  tryAnother,
  type Version,
  write,
  writtenIn,
} from './state';

/** All that can be asked of a boat of a given table: its own quantities and those of the cells. */
export interface Catalogue {
  readonly given: readonly Given[];
  readonly derived: readonly Derived[];
  readonly hull: (read: Read) => Hull;
}

export interface Book {
  readonly state: ReadonlySignal<BookState>;
  readonly catalogue: ReadonlySignal<Catalogue>;
  /** Counts the steps of the history; an edit that goes on with a run keeps the number. */
  readonly step: ReadonlySignal<number>;
  readonly first: ReadonlySignal<Graph>;
  /** The second version's graph, or null where there is only one. */
  readonly second: ReadonlySignal<Graph | null>;
  /** The graph of the version that edits go into. */
  readonly inHand: ReadonlySignal<Graph>;
  readonly canUndo: ReadonlySignal<boolean>;
  readonly canRedo: ReadonlySignal<boolean>;
  /** Writes entries into the version in hand; null restores a preset. `run` joins keystrokes into one step. */
  write(changes: Changes, run?: string): void;
  /** Ends a run of edits. */
  settle(): void;
  undo(): void;
  redo(): void;
  tryAnother(changes?: Changes): void;
  keepOnly(version: Version): void;
  swap(): void;
  hold(version: Version): void;
  /** Puts another boat on the bench, as a step that can be undone. */
  open(state: BookState): void;
}

/**
 * @param start the boat to begin with
 * @param catalogueOf lists the quantities of a boat; asked again only when the table changes
 * @param found what searches have found, tracked
 */
export function createBook(
  start: BookState,
  catalogueOf: (table: Table) => Catalogue,
  found: Found = () => null,
): Book {
  const history = signal<History<BookState>>(startHistory(start));
  const step = signal(0);
  const state = computed(() => history.value.present);
  const table = computed(() => state.value.table);
  const catalogue = computed(() => catalogueOf(table.value));
  const written: Record<Version, Map<string, Signal<string | undefined>>> = {
    first: new Map(),
    second: new Map(),
  };

  const writtenSignal = (version: Version, name: string) => {
    const known = written[version].get(name);
    if (known) return known;
    const made = signal(writtenIn(history.peek().present, version, name));
    written[version].set(name, made);
    return made;
  };

  const graphOf = (version: Version) =>
    createGraph({
      ...catalogue.value,
      written: (name) => writtenSignal(version, name).value,
      found,
      shown: plainShown,
    });
  const first = computed(() => graphOf('first'));
  const isTwo = computed(() => state.value.second !== null);
  const second = computed(() => (isTwo.value ? graphOf('second') : null));
  const inHand = computed(() =>
    state.value.inHand === 'second' && second.value ? second.value : first.value,
  );

  function go(next: History<BookState>): void {
    const before = history.peek();
    if (next === before) return;
    batch(() => {
      history.value = next;
      if (next.present === before.present) return;
      for (const version of ['first', 'second'] as const) {
        for (const [name, entry] of written[version]) entry.value = writtenIn(next.present, version, name);
      }
      const goesOn = next.run !== null && next.run === before.run && next.past === before.past;
      if (!goesOn) step.value += 1;
    });
  }
  const change = (next: BookState, run?: string) => go(advance(history.peek(), next, run));

  return {
    state,
    catalogue,
    step,
    first,
    second,
    inHand,
    canUndo: computed(() => history.value.past.length > 0),
    canRedo: computed(() => history.value.future.length > 0),
    write: (changes, run) => change(write(history.peek().present, changes), run),
    settle: () => go(settle(history.peek())),
    undo: () => go(undo(history.peek())),
    redo: () => go(redo(history.peek())),
    tryAnother: (changes) => change(tryAnother(history.peek().present, changes)),
    keepOnly: (version) => change(keepOnly(history.peek().present, version)),
    swap: () => change(swap(history.peek().present)),
    hold: (version) => change(hold(history.peek().present, version)),
    open: change,
  };
}
