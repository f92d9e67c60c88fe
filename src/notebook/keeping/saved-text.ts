/** What the browser keeps of a boat, as text: a versioned JSON form, checked when it is read again. */
import * as v from 'valibot';
import { isUnread, nothingBuilt, readTable, type Table, underPresentNames, writeTable } from '../../boat';
import { changedBy, difference, type Difference } from '../state/difference';
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

/** Why a saved text is of no use, as the end of a sentence: `it is cut short`. */
export interface Unusable {
  readonly because: string;
}

const FORM = 'battenbook saved boat';
const VERSION = 1;

const stateFields = {
  // Boats saved before they had a name of their own go by their table's.
  name: v.optional(v.string()),
  table: v.unknown(),
  entries: v.record(v.string(), v.string()),
  second: v.nullable(v.record(v.string(), v.nullable(v.string()))),
  // Boats saved before anything could be measured or cut have none.
  asBuilt: v.optional(
    v.object({
      measured: v.record(v.string(), v.string()),
      cut: v.record(
        v.string(),
        v.object({
          held: v.record(v.string(), v.string()),
          numbers: v.record(v.string(), v.pipe(v.number(), v.finite())),
        }),
      ),
    }),
    nothingBuilt,
  ),
  // Boats saved before notebooks could be opened have none.
  notebooks: v.optional(v.record(v.string(), v.object({ text: v.string(), away: v.boolean() })), {}),
  // A boat is worth more than the version last held.
  inHand: v.fallback(v.picklist(['first', 'second']), 'first'),
};
const stateSchema = v.object(stateFields);

/** Each step is checked when it is taken; a boat is not given up for them. */
const stepsSchema = v.fallback(v.array(v.custom<Difference>((one) => typeof one === 'object')), []);

const savedSchema = v.object({
  ...stateFields,
  revision: v.pipe(v.number(), v.safeInteger(), v.minValue(0)),
  earlier: v.optional(stepsSchema, []),
  later: v.optional(stepsSchema, []),
});

const formSchema = v.object({ form: v.literal(FORM), version: v.number() });

export function writeSaved({ state, earlier, later, revision }: Saved): string {
  return JSON.stringify({ form: FORM, version: VERSION, revision, ...plain(state), earlier, later });
}

export function readSaved(text: string): Saved | Unusable {
  let json: unknown;
  try {
    json = underPresentNames(JSON.parse(text));
  } catch {
    return { because: 'it is cut short or is not a saved boat at all' };
  }
  const form = v.safeParse(formSchema, json);
  if (!form.success) return { because: 'it is not a saved boat' };
  if (form.output.version !== VERSION) return { because: 'another edition of this notebook saved it' };
  const read = v.safeParse(savedSchema, json);
  if (!read.success) {
    return { because: `its ${v.getDotPath(read.issues[0]) ?? 'form'} is not what a saved boat holds` };
  }
  const { revision, earlier, later } = read.output;
  const table = readTable(read.output.table);
  if (isUnread(table))
    return { because: `in its table of offsets, ${table.faults[0] ?? 'something is amiss'}` };
  return { revision, state: stateOf(read.output, table), earlier, later };
}

export function isUnusable(read: Saved | Unusable): read is Unusable {
  return 'because' in read;
}

/** The step from one state to another, to be kept. */
export function stepBetween(from: BookState, to: BookState): Difference {
  return difference(plain(from), plain(to));
}

/** The state that a kept step leads to; null where it leads to none. */
export function stepFrom(from: BookState, step: Difference): BookState | null {
  const read = v.safeParse(stateSchema, changedBy(plain(from), step));
  if (!read.success) return null;
  // What hangs on the table is worked out anew only where there is another.
  const table = 'table' in step ? readTable(read.output.table) : from.table;
  return isUnread(table) ? null : stateOf(read.output, table);
}

function stateOf(read: v.InferOutput<typeof stateSchema>, table: Table): BookState {
  const { name = table.name, entries, second, asBuilt, notebooks } = read;
  return { name, table, entries, second, inHand: second ? read.inHand : 'first', asBuilt, notebooks };
}

function plain({ table, ...rest }: BookState): Record<string, unknown> {
  const known = plainTables.get(table) ?? writeTable(table);
  plainTables.set(table, known);
  return { ...rest, table: known };
}
const plainTables = new WeakMap<Table, Record<string, unknown>>();
