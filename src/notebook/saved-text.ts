/** What the browser keeps of a boat, as text: a versioned JSON form, checked when it is read again. */
import * as v from 'valibot';
import { isUnread, nothingBuilt, readTable, writeTable } from '../boat';
import { plainShown, type Shown } from '../measure';
import type { BookState } from './state';

/** A boat with its versions, and the units its builder reads. */
export interface Kept {
  readonly state: BookState;
  readonly shown: Shown;
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

const shownSchema = v.object({
  length: v.picklist(['feet', 'inches', 'mm']),
  fraction: v.picklist([8, 16, 32]),
  mass: v.picklist(['lb', 'kg']),
  money: v.picklist(['', '$', '€', '£']),
});

const savedSchema = v.object({
  revision: v.pipe(v.number(), v.safeInteger(), v.minValue(0)),
  table: v.unknown(),
  entries: v.record(v.string(), v.string()),
  second: v.nullable(v.record(v.string(), v.nullable(v.string()))),
  // A boat is worth more than the units it was shown in and the version last held.
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
  inHand: v.fallback(v.picklist(['first', 'second']), 'first'),
  shown: v.fallback(shownSchema, plainShown),
});

const formSchema = v.object({ form: v.literal(FORM), version: v.number() });

export function writeSaved({ state, shown, revision }: Saved): string {
  const { table, entries, second, inHand, asBuilt } = state;
  return JSON.stringify({
    form: FORM,
    version: VERSION,
    revision,
    table: writeTable(table),
    entries,
    second,
    inHand,
    asBuilt,
    shown,
  });
}

export function readSaved(text: string): Saved | Unusable {
  let json: unknown;
  try {
    json = JSON.parse(text);
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
  const { revision, entries, second, shown, asBuilt } = read.output;
  const table = readTable(read.output.table);
  if (isUnread(table))
    return { because: `in its table of offsets, ${table.faults[0] ?? 'something is amiss'}` };
  const inHand = second ? read.output.inHand : 'first';
  return { revision, shown, state: { table, entries, second, inHand, asBuilt } };
}

export function isUnusable(read: Saved | Unusable): read is Unusable {
  return 'because' in read;
}
