/**
 * The notebook in hand: a boat, one or two versions of it, and the graph of each.
 *
 * State is immutable and stepped through by the history; the graphs compare what is written with what was, so
 * that an edit wakes only what depends on it.
 */
import { batch, computed, type ReadonlySignal, type Signal, signal } from '@preact/signals-core';
import { type AsBuilt, builtEntries, type CutPart, type Ends, type Table } from '../boat';
import type { TableEdit } from '../boat/table/table-edits';
import { plainShown, type Shown } from '../measure';
import type { Difference } from './state/difference';
import { createFindings, type Findings } from './graph/findings';
import type { Graph } from './graph/graph';
import { advance, type History, redo, settle, startHistory, undo } from './state/history';
import type { Catalogue } from './graph/on-hand';
import { savedReader } from './keeping/saved-reader';
import { type Kept, MOST_STEPS, stepBetween } from './keeping/saved-text';
import { standing } from './graph/standing';
import {
  type BookState,
  type Changes,
  hold,
  keepOnly,
  markCut,
  measure,
  putNotebookAway,
  rename,
  reshape,
  swap,
  tryAnother,
  type Version,
  write,
  writeNotebook,
} from './state/state';

/** Steps done from here on what does not lie on the bench; tracked. Each says whether there was one to go. */
export interface Elsewhere {
  readonly canUndo: () => boolean;
  readonly canRedo: () => boolean;
  readonly undo: () => boolean;
  readonly redo: () => boolean;
}

export interface Book {
  readonly state: ReadonlySignal<BookState>;
  /** Of the version in hand. */
  readonly catalogue: ReadonlySignal<Catalogue>;
  /** What is measured and cut; changes only when that does. */
  readonly asBuilt: ReadonlySignal<AsBuilt>;
  /** Counts the steps of the history; an edit that goes on with a run keeps the number. */
  readonly step: ReadonlySignal<number>;
  readonly first: ReadonlySignal<Graph>;
  /** The second version's graph, or null where there is only one. */
  readonly second: ReadonlySignal<Graph | null>;
  /** The graph of the version that edits go into. */
  readonly inHand: ReadonlySignal<Graph>;
  /** Undo and redo go by these first; null until there are any. */
  readonly elsewhere: Signal<Elsewhere | null>;
  readonly canUndo: ReadonlySignal<boolean>;
  readonly canRedo: ReadonlySignal<boolean>;
  /** Writes entries into the version in hand; null restores a preset. `run` joins keystrokes into one step. */
  write(changes: Changes, run?: string): void;
  /** Writes what was measured, for both versions; null goes back to the design. */
  measure(changes: Changes, run?: string): void;
  /** Marks a part as cut to these values, or with null as not cut after all. */
  markCut(part: string, as: CutPart | null): void;
  /** Changes the table's stations or edges; what is written goes along with them. */
  reshape(edit: TableEdit): void;
  /** Ends a run of edits. */
  settle(): void;
  /** The state before the last step done since the boat was put on the bench; null before the first. */
  beforeStep(): BookState | null;
  undo(): void;
  redo(): void;
  tryAnother(changes?: Changes): void;
  keepOnly(version: Version): void;
  swap(): void;
  hold(version: Version): void;
  rename(name: string): void;
  /** Writes the whole text of a notebook of the builder's own; null throws it out. */
  writeNotebook(id: string, text: string | null, run?: string): void;
  putNotebookAway(id: string, away: boolean): void;
  /** Goes over to another state of the same boat, as a step that can be undone; `run` joins several into one. */
  open(state: BookState, run?: string): void;
  /** Puts another boat on the bench, with the steps that she brings along; none leads back to the boat before. */
  take(kept: Kept): void;
  /** The boat and her steps, as they are to be kept. */
  kept(): Kept;
}

/**
 * @param start the boat to begin with
 * @param catalogueOf the quantities of a boat with these ends, or with the plan's, tracked
 * @param findings what searches have found
 * @param chosen the units that the builder has chosen, tracked
 */
export function createBook(
  start: BookState,
  catalogueOf: (table: Table, ends?: Ends) => Catalogue,
  findings: Findings = createFindings(),
  chosen: () => Shown = () => plainShown,
): Book {
  const history = signal<History<BookState>>(startHistory(start));
  const step = signal(0);
  // Steps kept with the boat lie ready as they were written, and are read one by one as they are gone back to.
  const earlier = signal<readonly Difference[]>([]);
  const later = signal<readonly Difference[]>([]);
  const elsewhere = signal<Elsewhere | null>(null);
  const state = computed(() => history.value.present);
  const table = computed(() => state.value.table);
  const asBuilt = computed(() => state.value.asBuilt);
  const built = computed(() => builtEntries(asBuilt.value));
  const stands = standing(() => table.value, catalogueOf, {
    entries: () => state.value.entries,
    findings,
    chosen,
    shown: plainShown,
  });
  const firstStands = stands((design) => design.asBuilt(() => built.value));
  const secondStands = stands((design) =>
    design.with(() => state.value.second ?? {}).asBuilt(() => built.value),
  );
  const isTwo = computed(() => state.value.second !== null);
  const first = computed(() => firstStands.value.graph);
  const second = computed(() => (isTwo.value ? secondStands.value.graph : null));
  const stand = computed(() =>
    state.value.inHand === 'second' && isTwo.value ? secondStands.value : firstStands.value,
  );
  const inHand = computed(() => stand.value.graph);
  const catalogue = computed(() => stand.value.catalogue());

  function go(next: History<BookState>): void {
    const before = history.peek();
    if (next === before) return;
    batch(() => {
      history.value = next;
      if (next.present === before.present) return;
      const goesOn = next.run !== null && next.run === before.run && next.past === before.past;
      if (!goesOn) step.value += 1;
    });
  }
  const change = (next: BookState, run?: string) =>
    batch(() => {
      if (next !== history.peek().present) later.value = [];
      go(advance(history.peek(), next, run));
    });

  /** Brings the next kept step into the history; where it leads nowhere, that way ends. */
  function reach(side: 'past' | 'future') {
    const back = side === 'past';
    const steps = back ? earlier : later;
    const next = steps.peek().at(back ? -1 : 0);
    if (next === undefined || history.peek()[side].length > 0) return;
    // Steps were kept: by what read them they are gone back to.
    const reached = savedReader().stepFrom(history.peek().present, next);
    if (reached) history.value = { ...history.peek(), [side]: [reached] };
    steps.value = reached ? (back ? steps.peek().slice(0, -1) : steps.peek().slice(1)) : [];
  }

  function take({ state: present, earlier: back, later: forth }: Kept): void {
    batch(() => {
      earlier.value = back;
      later.value = forth;
      go(startHistory(present));
    });
  }

  function kept(): Kept {
    const { past, present, future } = history.peek();
    const back = past.map((to, at) => stepOf(past[at + 1] ?? present, to));
    const forth = future.map((to, at) => stepOf(future[at - 1] ?? present, to));
    return {
      state: present,
      earlier: [...earlier.peek(), ...back].slice(-MOST_STEPS),
      later: [...forth, ...later.peek()].slice(0, MOST_STEPS),
    };
  }

  return {
    state,
    catalogue,
    asBuilt,
    step,
    first,
    second,
    inHand,
    elsewhere,
    canUndo: computed(
      () => elsewhere.value?.canUndo() || history.value.past.length > 0 || earlier.value.length > 0,
    ),
    canRedo: computed(
      () => elsewhere.value?.canRedo() || history.value.future.length > 0 || later.value.length > 0,
    ),
    write: (changes, run) => change(write(history.peek().present, changes), run),
    measure: (changes, run) => change(measure(history.peek().present, changes), run),
    markCut: (part, as) => change(markCut(history.peek().present, part, as)),
    reshape: (edit) => change(reshape(history.peek().present, edit, choosing(catalogue.peek()))),
    settle: () => go(settle(history.peek())),
    beforeStep: () => history.peek().past.at(-1) ?? null,
    undo: () =>
      batch(() => {
        if (elsewhere.value?.undo()) return;
        reach('past');
        go(undo(history.peek()));
      }),
    redo: () =>
      batch(() => {
        if (elsewhere.value?.redo()) return;
        reach('future');
        go(redo(history.peek()));
      }),
    tryAnother: (changes) => change(tryAnother(history.peek().present, changes)),
    keepOnly: (version) => change(keepOnly(history.peek().present, version)),
    swap: () => change(swap(history.peek().present)),
    hold: (version) => change(hold(history.peek().present, version)),
    rename: (name) => change(rename(history.peek().present, name)),
    writeNotebook: (id, text, run) => change(writeNotebook(history.peek().present, id, text), run),
    putNotebookAway: (id, away) => change(putNotebookAway(history.peek().present, id, away)),
    open: change,
    take,
    kept,
  };
}

/** The step between two states, worked out once however often it is saved. */
function stepOf(from: BookState, to: BookState): Difference {
  const known = steps.get(from)?.get(to) ?? stepBetween(from, to);
  steps.set(from, (steps.get(from) ?? new WeakMap<BookState, Difference>()).set(to, known));
  return known;
}
const steps = new WeakMap<BookState, WeakMap<BookState, Difference>>();

/** Whether a quantity answers a choice between stations or edges of the table. */
function choosing({ find, onBoat }: Catalogue): (name: string) => boolean {
  const { stations = [], edges = [] } = onBoat ?? {};
  const places = new Set([...stations, ...edges].map(({ id }) => id));
  return (name) => {
    const of = find(name);
    const { options = [] } = of && 'preset' in of ? of : {};
    return (
      options.some(({ id }) => places.has(id)) && options.every(({ id }) => places.has(id) || id === 'none') // or none of them
    );
  };
}
