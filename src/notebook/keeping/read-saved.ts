/** Reads what the browser keeps of a boat, and checks its form. `fetch-reader.ts` fetches it. */
import * as v from 'valibot';
import {
  isUnread,
  lessonsForm,
  sweepsForm,
  logForm,
  nothingBuilt,
  readTable,
  type Table,
  underPresentNames,
} from '../../boat';
import { changedBy } from '../state/changed-by';
import type { Difference } from '../state/difference';
import { standBy } from './saved-reader';
import { FORM, isUnusable, type Kept, keptOf, plain, type Saved, type Unusable, VERSION } from './saved-text';
import type { BookState } from '../state/state';
import { type Shelf, textAt } from './shelf';

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
  // Boats saved before there was a log have none.
  log: v.optional(logForm, {}),
  // Nor had they questions; a boat is worth more than what was said to one.
  lessons: v.fallback(v.optional(lessonsForm, {}), {}),
  // Nor is it for what was drawn.
  sweeps: v.fallback(v.optional(sweepsForm, {}), {}),
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

export function readSaved(text: string): Saved | Unusable {
  let json: unknown;
  try {
    json = underPresentNames(JSON.parse(text));
  } catch {
    return { because: 'it is cut short or is not a saved boat at all' };
  }
  const form = v.safeParse(formSchema, json);
  if (!form.success) return { because: 'it is not a saved boat' };
  if (form.output.version !== 1 && form.output.version !== VERSION)
    return { because: 'another edition of this notebook saved it' };
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

/** The state that a kept step leads to; null where it leads to none. */
export function stepFrom(from: BookState, step: Difference): BookState | null {
  const read = v.safeParse(stateSchema, changedBy(plain(from), step));
  if (!read.success) return null;
  // What hangs on the table is worked out anew only where there is another.
  const table = 'table' in step ? readTable(read.output.table) : from.table;
  return isUnread(table) ? null : stateOf(read.output, table);
}

function stateOf(read: v.InferOutput<typeof stateSchema>, table: Table): BookState {
  const { name = table.name, entries, second, asBuilt, notebooks, log, lessons, sweeps } = read;
  const inHand = second ? read.inHand : 'first';
  return { name, table, entries, second, inHand, asBuilt, notebooks, log, lessons, sweeps };
}

/** What is kept under a key, left as it is; null where there is nothing, or nothing that can be read. */
export function keptAt(shelf: Shelf | null, key: string): Kept | null {
  const text = textAt(shelf, key);
  if (text === null) return null;
  const saved = readSaved(text);
  return isUnusable(saved) ? null : keptOf(saved);
}

standBy({ keptAt, readSaved, stepFrom });
