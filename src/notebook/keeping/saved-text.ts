/** What the browser keeps of a boat, as text: a versioned JSON form. How it is read again is in `read-saved.ts`. */
import { type Table, writeTable } from '../../boat';
import { difference, type Difference } from '../state/difference';
import type { BookState } from '../state/state';

/** A boat with its versions, and the steps that lead back from it and forth again. */
export interface Kept {
  readonly state: BookState;
  /** Each turns the state after it into the one before; the last leads back from the state itself. */
  readonly earlier: readonly Difference[];
  /** Each turns the state before it into the one after; the first leads on from the state itself. */
  readonly later: readonly Difference[];
}

/** Steps kept each way: as many as anyone goes back, and no more than the browser's storage can hold for each of many boats. */
export const MOST_STEPS = 300;

/** A boat that is not on the bench, one step on: what is taken up later can be undone. */
export function stepOn(kept: Kept, to: BookState): Kept {
  if (to === kept.state) return kept;
  const earlier = [...kept.earlier, stepBetween(to, kept.state)].slice(-MOST_STEPS);
  return { state: to, earlier, later: [] };
}

/** A kept boat with the count of times it was saved. */
export interface Saved extends Kept {
  readonly revision: number;
}

export const keptOf = ({ state, earlier, later }: Kept): Kept => ({ state, earlier, later });

/** Why a saved text is of no use, as the end of a sentence: `it is cut short`. */
export interface Unusable {
  readonly because: string;
}

export const FORM = 'battenbook saved boat';
/** Version 1 had other names for some quantities; otherwise it is the same, and is read as before. */
export const VERSION = 2;

export function writeSaved({ state, earlier, later, revision }: Saved): string {
  return JSON.stringify({ form: FORM, version: VERSION, revision, ...plain(state), earlier, later });
}

export function isUnusable(read: Saved | Unusable): read is Unusable {
  return 'because' in read;
}

/** The step from one state to another, to be kept. */
export function stepBetween(from: BookState, to: BookState): Difference {
  return difference(plain(from), plain(to));
}

/** As it stands in what is kept. */
export function plain({ table, ...rest }: BookState): Record<string, unknown> {
  const known = plainTables.get(table) ?? writeTable(table);
  plainTables.set(table, known);
  return { ...rest, table: known };
}
const plainTables = new WeakMap<Table, Record<string, unknown>>();
