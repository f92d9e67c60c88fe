/**
 * Quantities: the named numbers that everything in the notebook is made of.
 *
 * A quantity is either *given* (the builder may write it; until then its preset holds)
 * or *derived* (it follows from others by a pure function). The boat offers both kinds,
 * and so does every calculator cell; the notebook's graph links them.
 */
import type { Issue, KindId, Manner } from '../../measure';
import type { Doubted } from '../../trade/doubts';
import type { Hull } from '../hull/hull';

/** What a quantity holds: an SI number, the id of a choice, or why there is none. Never NaN. */
export type Value = number | string | Issue;

/** One of the answers a choice can take. */
export interface Option {
  /** What is stored and named in formulas: `douglasFir`. */
  readonly id: string;
  /** What the builder reads: `Douglas-fir, coast`. */
  readonly label: string;
  /** Speaks of a boat: where there is none it is not offered. */
  readonly ofBoat?: boolean;
  /** What it reads where there is no boat: `a board` in place of `keelson`. */
  readonly withoutBoat?: string;
  /** Parts of the boat that it speaks of, where that is not the part of its own name. */
  readonly about?: readonly string[];
}

export interface Quantity {
  /** Dotted camelCase name, unique in the notebook: `keelson.thickness`. */
  readonly name: string;
  readonly kind: KindId;
  /** What it is, as a noun phrase without a full stop: `thickness of the keelson`. */
  readonly meaning: string;
  /** Where the number comes from, if a table or a rule stands behind it. */
  readonly source?: string;
  /** How it is written: a limit on its own side, and as finely as the work asks. */
  readonly manner?: Manner;
}

/** A quantity that the builder may write. */
export interface Given extends Quantity {
  /** What a field of it is called, wherever it is asked for: `Keelson thickness`. */
  readonly label?: string;
  /** The entry that holds until something is written: a value (`19 mm`) or a link (`keelson.thickness`). */
  readonly preset: string;
  /** A preset that depends on another answer: the edge chosen names the length linked to. */
  readonly presetFrom?: (read: Read) => string;
  /** Least and greatest value taken, as entries. */
  readonly min?: string;
  readonly max?: string;
  /** One useful step of the value, as an entry, for the + and - keys. */
  readonly step?: string;
  /** What of a wood it is, by which boards differ: how far it may be out goes by that. */
  readonly doubted?: Doubted;
  /** The answers offered when the kind is `choice`. */
  readonly options?: readonly Option[];
  /** What is asked in its place under another answer of a choice, and how to get there: a price of one board. */
  readonly otherwise?: readonly { readonly kind: KindId; readonly says: string }[];
}

/**
 * A number or a choice of the boat or of the shop, with all there is to say of it: its own sheet and every cell that
 * shows it say it in these words and hold it to these limits.
 */
export interface Declared extends Given {
  readonly label: string;
  /** What it is called where the part in hand is named beside it: `Thickness`. */
  readonly brief?: string;
  /** The preset of who works in feet and inches. */
  readonly presetInch?: string;
  /** The preset where there is no boat to work it out from. */
  readonly withoutBoat?: string;
  /** A choice, and those of its answers under which this counts; where it does not, its sheet does not ask it. */
  readonly asked?: { readonly by: string; readonly under: readonly string[] };
}

/**
 * Whether a number counts as things stand, and so is asked. What is written where it is not asked stays written.
 * @param valueOf the value of a quantity by its name
 */
export function countsNow({ asked }: Declared, valueOf: (name: string) => Value): boolean {
  const answer = asked && valueOf(asked.by);
  return typeof answer !== 'string' || asked!.under.includes(answer); // an answer has been asked for
}

/** A quantity that follows from others. */
export interface Derived extends Quantity {
  /** The answers it may take when the kind is `choice`, as they are read. */
  readonly options?: readonly Option[];
  readonly from: (read: Read) => number | string | Issue;
}

/** Those to be written, and those that follow. */
export function sorted(all: readonly (Derived | Given)[]): {
  readonly given: readonly Given[];
  readonly derived: readonly Derived[];
} {
  const isGiven = (one: Derived | Given): one is Given => 'preset' in one;
  return {
    given: all.filter(isGiven),
    derived: all.filter((one): one is Derived => !isGiven(one)),
  };
}

/**
 * The way a derived quantity looks at others. Each call notes the dependence.
 * If what is asked for has no value, the call does not return: the asking quantity
 * becomes an issue that says what it waits for.
 */
export interface Read {
  readonly number: (name: string) => number;
  /** The number, or null where there is none: for an asker that can go on without it. */
  readonly maybe: (name: string) => number | null;
  /** Why a number that is written can't be used, as a sentence; null where it can, or none is written. */
  readonly why?: (name: string) => string | null;
  /** How a quantity is written: in its own manner, or in that of the one that alone fills it. */
  readonly mannerOf?: (name: string) => Manner | undefined;
  readonly choice: (name: string) => string;
  /** Whether there is such a quantity; who asks is asked again when it comes or goes. */
  readonly has: (name: string) => boolean;
  /** The hull drawn from the offsets as they stand. */
  readonly hull: () => Hull;
  /** Whether the builder works in feet and inches, and so buys what is sold by them. */
  readonly inches: () => boolean;
  readonly found: Found;
  /**
   * Something of any form, worked out once for all that ask for it by this name. It is no quantity: it can be neither
   * written nor told, and nothing else lists it. Like a number it does not return where it has no value.
   * @param find works it out, whoever asks
   */
  readonly fact: <T>(name: string, find: (read: Read) => T | Issue) => T;
}

/**
 * The best answer that a search has found so far to a problem put as text; null while there is none.
 * Who asks checks the answer before it uses it.
 */
export type Found = (problem: string) => unknown;
