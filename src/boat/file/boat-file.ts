/**
 * The boat file: the plan's table, what the builder wrote over it, and what is built, as JSON. Described in
 * docs/boat-file.md.
 *
 * A file may come from anyone. It is held to a size, every part is checked, and what is wrong is told as
 * sentences that say where. Entries are kept as they are written: whether one can be read as a length or a
 * formula is the notebook's business, and never a reason to refuse the file.
 */
import * as v from 'valibot';
import type { AsBuilt } from '../as-built';
import { sentences } from '../table/file-faults';
import { type Lessons, lessonsForm } from './lessons';
import { type Sweeps, sweepsForm } from './sweeps';
import { type Log, logSchema } from './log';
import { notebooksSchema, type OwnNotebooks } from './own-notebooks';
import { underPresentNames } from './renamed';
import { tableSchema } from '../table/read-table';
import { type Table, type Unread, writeTable } from '../table/table';

export interface Boat {
  readonly name: string;
  readonly table: Table;
  /** Entry by the quantity's name; what is not there has its preset. */
  readonly entries: Readonly<Record<string, string>>;
  /** The entries in which a second version differs, null for back to the preset; left out where there is one version. */
  readonly second?: Readonly<Record<string, string | null>>;
  /** The version that edits go into; left out, the first. */
  readonly inHand?: 'second';
  /** What is measured and cut; left out where nothing is. */
  readonly asBuilt?: AsBuilt;
  /** Notebooks of the builder's own; left out where there is none. */
  readonly notebooks?: OwnNotebooks;
  /** What was done when; left out where nothing is written. */
  readonly log?: Log;
  /** What was said to the questions of notebooks; left out where nothing was. */
  readonly lessons?: Lessons;
  /** What is drawn against what in each cell; left out where nothing is. */
  readonly sweeps?: Sweeps;
}

export const BOAT_FILE = 'battenbook boat';
/** Version 1 knew no notebooks and had other names for some quantities; it opens as before. */
const BOAT_FILE_VERSION = 2;

/** A million for the boat, and twice the letters of her notebooks: marks and line ends take two in JSON. */
export const LONGEST_FILE = 3_000_000;
const MOST_ENTRIES = 5000;
/** The lines of a formula are one entry. */
const LONGEST_ENTRY = 20_000;
const LONGEST_ENTRY_NAME = 120;
const MOST_CUT = 200;

/** Two words or more, as quantities have them; `__proto__` and its like have one. */
const entryName = /^[a-z][A-Za-z0-9]*(\.[A-Za-z0-9]+)+$/;
/** One word; those of the language itself are kept out by being no parts of any boat. */
const partName = /^[a-z][A-Za-z0-9]*$/;

const ENTRY = `must be a text of at most ${LONGEST_ENTRY} letters, or a number`;
const entry = v.union(
  [
    v.pipe(v.string(), v.maxLength(LONGEST_ENTRY, ENTRY)),
    v.pipe(
      v.number(),
      v.finite(ENTRY),
      v.transform((bare) => String(bare)),
    ),
  ],
  ENTRY,
);

const entryNameText = v.pipe(
  v.string(),
  v.maxLength(LONGEST_ENTRY_NAME, `is longer than ${LONGEST_ENTRY_NAME} letters`),
  v.regex(entryName, 'is not the name of a quantity'),
);

const entries = v.pipe(
  v.record(entryNameText, entry, 'must be an object'),
  v.check((all) => Object.keys(all).length <= MOST_ENTRIES, `must hold at most ${MOST_ENTRIES} entries`),
);

const second = v.pipe(
  v.record(entryNameText, v.nullable(entry), 'must be an object'),
  v.check((all) => Object.keys(all).length <= MOST_ENTRIES, `must hold at most ${MOST_ENTRIES} entries`),
);

const numbers = v.pipe(
  v.record(
    entryNameText,
    v.pipe(v.number('must be a number'), v.finite('must be a finite number')),
    'must be an object',
  ),
  v.check((all) => Object.keys(all).length <= MOST_ENTRIES, `must hold at most ${MOST_ENTRIES} numbers`),
);

const asBuilt = v.object(
  {
    measured: v.optional(entries, {}),
    cut: v.optional(
      v.pipe(
        v.record(
          v.pipe(v.string(), v.regex(partName, 'is not the name of a part')),
          v.object({ held: entries, numbers }, 'must hold "held" and "numbers"'),
          'must be an object',
        ),
        v.check((all) => Object.keys(all).length <= MOST_CUT, `must hold at most ${MOST_CUT} parts`),
      ),
      {},
    ),
  },
  'must be an object',
);

const schema = v.object(
  {
    format: v.literal(BOAT_FILE, `must be "${BOAT_FILE}"`),
    version: v.picklist(
      [1, BOAT_FILE_VERSION],
      `must be 1 or ${BOAT_FILE_VERSION}; the file is of another edition`,
    ),
    name: v.optional(v.pipe(v.string('must be a text'), v.maxLength(80, 'must be at most 80 letters long'))),
    hull: tableSchema,
    entries: v.optional(entries, {}),
    second: v.optional(second),
    inHand: v.optional(v.literal('second', 'can only be "second"')),
    asBuilt: v.optional(asBuilt),
    notebooks: v.optional(notebooksSchema),
    log: v.optional(logSchema),
    lessons: v.optional(lessonsForm),
    sweeps: v.optional(sweepsForm),
  },
  'must hold a boat',
);

/** Reads a boat file; on faults, sentences that say where each one lies. */
export function readBoatFile(text: string): Boat | Unread {
  if (text.length > LONGEST_FILE)
    return { faults: [`the file is longer than ${LONGEST_FILE} letters; no boat is`] };
  let json: unknown;
  try {
    json = underPresentNames(JSON.parse(text));
  } catch {
    return { faults: ['the file is not JSON: it is cut short, or it is no boat file'] };
  }
  const read = v.safeParse(schema, json);
  if (!read.success) return { faults: sentences(read.issues) };
  const {
    hull,
    name,
    entries: written,
    second: other,
    inHand,
    asBuilt: built,
    notebooks,
    log,
    lessons,
    sweeps,
  } = read.output;
  return {
    name: name ?? hull.name,
    table: hull,
    entries: written,
    ...(other && { second: other }),
    ...(other && inHand && { inHand }),
    ...(built && { asBuilt: built }),
    ...(notebooks && { notebooks }),
    ...(log && { log }),
    ...(lessons && { lessons }),
    ...(sweeps && { sweeps }),
  };
}

/** The boat as a file; reading it gives the same boat. */
export const writeBoatFile = (boat: Boat): string => `${JSON.stringify(asFile(boat), null, 1)}\n`;

/** What a boat file holds, as plain data. */
export function asFile(boat: Boat): Record<string, unknown> {
  return {
    format: BOAT_FILE,
    version: BOAT_FILE_VERSION,
    name: boat.name,
    hull: writeTable(boat.table),
    entries: boat.entries,
    ...(boat.second && { second: boat.second }),
    ...(boat.second && boat.inHand && { inHand: boat.inHand }),
    ...(boat.asBuilt && !isNothing(boat.asBuilt) && { asBuilt: boat.asBuilt }),
    ...(boat.notebooks && Object.keys(boat.notebooks).length > 0 && { notebooks: boat.notebooks }),
    ...(boat.log && Object.keys(boat.log).length > 0 && { log: boat.log }),
    ...(boat.lessons && Object.keys(boat.lessons).length > 0 && { lessons: boat.lessons }),
    ...(boat.sweeps && Object.keys(boat.sweeps).length > 0 && { sweeps: boat.sweeps }),
  };
}

const isNothing = ({ measured, cut }: AsBuilt) =>
  Object.keys(measured).length === 0 && Object.keys(cut).length === 0;
