/**
 * Notebooks of the builder's own, kept with a boat: each is the text of a file as it was opened, under a name made
 * from the file's, `keel-day`.
 */
import * as v from 'valibot';

export interface OwnNotebook {
  readonly text: string;
  /** Put away: out of the list, and kept as it is. */
  readonly away: boolean;
}
export type OwnNotebooks = Readonly<Record<string, OwnNotebook>>;

/** Letters of one: ten times a long notebook. */
export const LONGEST_NOTEBOOK = 300_000;
/** How many a boat may have, those put away among them, and their letters together: what a browser has room for. */
export const MOST_NOTEBOOKS = 30;
export const LONGEST_NOTEBOOKS = 1_000_000;

/** What stands in an address: letters and digits of any tongue, with `-` between. */
const notebookName = /^[\p{Letter}\p{Number}]+(-[\p{Letter}\p{Number}]+)*$/u;
const LONGEST_NAME = 60;

const TEXT = `must be a text of at most ${LONGEST_NOTEBOOK} letters`;

export const notebooksSchema = v.pipe(
  v.record(
    v.pipe(
      v.string(),
      v.maxLength(LONGEST_NAME, `is longer than ${LONGEST_NAME} letters`),
      v.regex(notebookName, 'is not the name of a notebook'),
    ),
    v.object(
      {
        text: v.pipe(v.string(TEXT), v.maxLength(LONGEST_NOTEBOOK, TEXT)),
        away: v.optional(v.boolean('must be true or false'), false),
      },
      'must hold a "text"',
    ),
    'must be an object',
  ),
  v.check((all) => Object.keys(all).length <= MOST_NOTEBOOKS, `must hold at most ${MOST_NOTEBOOKS}`),
  v.check(
    (all) => Object.values(all).reduce((sum, { text }) => sum + text.length, 0) <= LONGEST_NOTEBOOKS,
    `must be at most ${LONGEST_NOTEBOOKS} letters long together`,
  ),
);
