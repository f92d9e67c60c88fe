/** The log of the build: what was done when, kept with the boat as it was written. What it comes to is read anew each time. */
import * as v from 'valibot';

/** One entry, all texts as they were typed; an empty one says nothing. */
export interface LogEntry {
  /** `2026-11-28` or `28 Nov 2026`. */
  readonly day: string;
  /** Name of the cell it belongs to; empty where it belongs to none. */
  readonly cell: string;
  readonly hours: string;
  readonly money: string;
  /** What was read off the tape that day. It is kept as words and moves no number. */
  readonly measured: string;
  readonly note: string;
}

/** Entries by their ids, `e1`, `e2`, in the order they were begun. */
export type Log = Readonly<Record<string, LogEntry>>;

export const MOST_IN_LOG = 2000;
/** Letters of all entries together. */
export const LONGEST_LOG = 400_000;

/** Why so much is not kept, as the end of a sentence; null where it is. */
export function tooMuch(log: Log): string | null {
  const entries = Object.values(log);
  if (entries.length > MOST_IN_LOG) return `must hold at most ${MOST_IN_LOG} entries`;
  const letters = entries
    .flatMap((entry) => Object.values<string>({ ...entry }))
    .reduce((sum, text) => sum + text.length, 0);
  return letters > LONGEST_LOG ? `must be at most ${LONGEST_LOG} letters long together` : null;
}

const text = v.optional(v.string('must be a text'), '');

/** In the form in which it is kept. */
export const logForm = v.record(
  v.pipe(v.string(), v.regex(/^e[1-9]\d{0,8}$/, 'is not the name of an entry')),
  v.object(
    { day: text, cell: text, hours: text, money: text, measured: text, note: text },
    'must be an entry',
  ),
  'must be an object',
);

/** As a stranger's file may have it. */
export const logSchema = v.pipe(
  logForm,
  v.check(
    (log) => tooMuch(log) === null,
    ({ input }) => tooMuch(input) ?? '',
  ),
);
