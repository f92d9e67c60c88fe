/** What the builder last drew one number against another for, in each cell: kept with the boat as it was asked. */
import * as v from 'valibot';

/** Texts as they were chosen or typed; an empty one leaves it to the notebook. */
export interface SweepAsk {
  /** Name of the number that is drawn: `scarf.taper`. */
  readonly result: string;
  /** Name of the number that it is drawn against. */
  readonly against: string;
  /** Entries of the ends. */
  readonly from: string;
  readonly to: string;
  /** Name of a second number, of which each value has a line of its own, and its values. */
  readonly lines: string;
  readonly at: string;
}

/** By the name of the cell. */
export type Sweeps = Readonly<Record<string, SweepAsk>>;

const MOST_SWEEPS = 500;
const LONGEST = 300;

const TEXT = `must be a text of at most ${LONGEST} letters`;
const text = v.optional(v.pipe(v.string(TEXT), v.maxLength(LONGEST, TEXT)), '');

/** In the form in which it is kept, and as a stranger's file may have it. */
export const sweepsForm = v.pipe(
  v.record(
    v.pipe(v.string(), v.regex(/^[a-z][A-Za-z0-9]{0,99}$/, 'is not the name of a cell')),
    v.object(
      { result: text, against: text, from: text, to: text, lines: text, at: text },
      'must be an object',
    ),
    'must be an object',
  ),
  v.check((all) => Object.keys(all).length <= MOST_SWEEPS, `must hold at most ${MOST_SWEEPS}`),
);
