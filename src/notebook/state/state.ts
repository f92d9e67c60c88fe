/**
 * What the notebook remembers of a boat, and the ways it may change: pure functions on immutable data.
 *
 * The first version is the plan's table with the entries written over it. A second version is
 * only the entries in which it differs; null there means "back to the preset", which an absent
 * entry can't say. What is measured or cut stands in place of both: there is only one boat in the shed.
 */
import {
  type AsBuilt,
  type CutPart,
  type Lessons,
  type Log,
  nothingBuilt,
  type OwnNotebooks,
  type SweepAsk,
  type Sweeps,
  type Table,
} from '../../boat';
import { carriedEntries, carriedName } from '../../boat/table/carry';
import type { TableEdit } from '../../boat/table/table-edits';

export type Entries = Readonly<Record<string, string>>;
export type Changes = Readonly<Record<string, string | null>>;
export type Version = 'first' | 'second';

export interface BookState {
  /** The builder's name for the boat. */
  readonly name: string;
  readonly table: Table;
  readonly entries: Entries;
  /** The second version's changes, or null where there is only one version. */
  readonly second: Changes | null;
  /** Which version edits go into. */
  readonly inHand: Version;
  readonly asBuilt: AsBuilt;
  /** The texts of the builder's own notebooks, by their ids. */
  readonly notebooks: OwnNotebooks;
  /** What was done when, for both versions. `log/write-entry.ts` writes in it. */
  readonly log: Log;
  /** What was said to the questions of notebooks, for both versions. `lesson/write-lesson.ts` writes in it. */
  readonly lessons: Lessons;
  /** What is drawn against what, by the cell. `sweep/write-sweep.ts` writes in it. */
  readonly sweeps: Sweeps;
}

/** A boat with one version. `boat-state.ts` makes one of all that a file may say. */
export function freshState(
  table: Table,
  entries: Entries = {},
  asBuilt = nothingBuilt,
  name = table.name,
): BookState {
  const nothing = { notebooks: {}, log: {}, lessons: {}, sweeps: {} };
  return { name, table, entries, second: null, inHand: 'first', asBuilt, ...nothing };
}

/** The table of a sheet without a boat. */
export const noBoat: Table = {
  name: 'No boat',
  note: '',
  unit: 'mm',
  offsetsTo: 'outside of skin',
  edges: [],
  stations: [],
};

/** Calls the boat by another name. */
export function rename(state: BookState, name: string): BookState {
  return name === state.name ? state : { ...state, name };
}

/** The text written for a quantity in a version; undefined where the preset holds. */
export function writtenIn(state: BookState, version: Version, name: string): string | undefined {
  const change = version === 'second' ? state.second?.[name] : undefined;
  return change === undefined ? state.entries[name] : (change ?? undefined);
}

/** Writes entries into the version in hand; null restores a preset. What stands there already is no change. */
export function write(state: BookState, changes: Changes): BookState {
  const stands = ([name, text]: [string, string | null]) =>
    text === (writtenIn(state, state.inHand, name) ?? null);
  if (Object.entries(changes).every(stands)) return state;
  if (state.inHand === 'first' || !state.second) {
    return { ...state, entries: apply(state.entries, changes) };
  }
  const second: Record<string, string | null> = { ...state.second };
  for (const [name, text] of Object.entries(changes)) {
    // What the first version says anyway is no change, and must not linger as one.
    if (text === (state.entries[name] ?? null)) delete second[name];
    else second[name] = text;
  }
  return { ...state, second };
}

/** Writes what was measured, for both versions; null goes back to the design. */
export function measure(state: BookState, changes: Changes): BookState {
  const { measured } = state.asBuilt;
  if (Object.entries(changes).every(([name, text]) => text === (measured[name] ?? null))) return state;
  return { ...state, asBuilt: { ...state.asBuilt, measured: apply(measured, changes) } };
}

/** Marks a part as cut to these values, or with null as not cut after all. */
export function markCut(state: BookState, part: string, as: CutPart | null): BookState {
  const { [part]: was, ...others } = state.asBuilt.cut;
  if (JSON.stringify(was ?? null) === JSON.stringify(as)) return state;
  return { ...state, asBuilt: { ...state.asBuilt, cut: as ? { ...others, [part]: as } : others } };
}

/** Writes the whole text of a notebook, or with null throws it out. One that was put away comes back with its new text. */
export function writeNotebook(state: BookState, id: string, text: string | null): BookState {
  const { [id]: was, ...others } = state.notebooks;
  if (text === null) return was ? { ...state, notebooks: others } : state;
  if (was?.text === text && !was.away) return state;
  return { ...state, notebooks: { ...state.notebooks, [id]: { text, away: false } } };
}

/** Puts a notebook away, out of the list, or brings it back. */
export function putNotebookAway(state: BookState, id: string, away: boolean): BookState {
  const was = state.notebooks[id];
  if (!was || was.away === away) return state;
  return { ...state, notebooks: { ...state.notebooks, [id]: { ...was, away } } };
}

/**
 * Changes the table's stations or edges; all that is written goes along with them.
 * @param chooses whether an entry answers a choice between stations or edges
 */
export function reshape(state: BookState, edit: TableEdit, chooses: (name: string) => boolean): BookState {
  const { table, words, writes = {} } = edit;
  const carried = <T extends string | null>(entries: Readonly<Record<string, T>>) =>
    carriedEntries(entries, words, chooses);
  const cut = Object.entries(state.asBuilt.cut).flatMap(([part, { held, numbers }]): [string, CutPart][] => {
    // As a part has it for a first word: `frame3.`.
    const now = carriedName(`${part}.all`, words)?.split('.')[0];
    return now === undefined ? [] : [[now, { held: carried(held), numbers: renamed(numbers, words) }]];
  });
  const next: BookState = {
    ...state,
    table,
    entries: carried(state.entries),
    second: state.second && carried(state.second),
    asBuilt: { measured: carried(state.asBuilt.measured), cut: Object.fromEntries(cut) },
    sweeps: Object.fromEntries(
      // What went stays as it was asked, and the graph says that there is no such number.
      Object.entries(state.sweeps).map(([cell, ask]) => [
        cell,
        carried({ ...ask }) as Record<keyof SweepAsk, string>,
      ]),
    ),
  };
  return write(next, writes);
}

function renamed<T>(byName: Readonly<Record<string, T>>, words: TableEdit['words']): Record<string, T> {
  return Object.fromEntries(
    Object.entries(byName).flatMap(([name, value]): [string, T][] => {
      const now = carriedName(name, words);
      return now === null ? [] : [[now, value]];
    }),
  );
}

/** Keeps the version in hand as the first and starts a second one to change. */
export function tryAnother(state: BookState, changes: Changes = {}): BookState {
  const two: BookState = state.second ? hold(state, 'second') : { ...state, second: {}, inHand: 'second' };
  return write(two, changes);
}

/** Takes a version in hand, so that edits go into it. */
export function hold(state: BookState, version: Version): BookState {
  return !state.second || state.inHand === version ? state : { ...state, inHand: version };
}

/** Makes one of the two versions the only one. */
export function keepOnly(state: BookState, version: Version): BookState {
  if (!state.second) return state;
  const entries = version === 'second' ? apply(state.entries, state.second) : state.entries;
  return { ...state, entries, second: null, inHand: 'first' };
}

/** The second version becomes the first and the first the second. */
export function swap(state: BookState): BookState {
  if (!state.second) return state;
  const back: Record<string, string | null> = {};
  for (const name of Object.keys(state.second)) back[name] = state.entries[name] ?? null;
  return { ...state, entries: apply(state.entries, state.second), second: back };
}

function apply(entries: Entries, changes: Changes): Entries {
  const next: Record<string, string> = { ...entries };
  for (const [name, text] of Object.entries(changes)) {
    if (text === null) delete next[name];
    else next[name] = text;
  }
  return next;
}
