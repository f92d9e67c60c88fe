/**
 * The bench: what every part of the page reaches for. One book, the units and dress chosen,
 * the cell in hand, and the way to any quantity.
 */
import type { ReadonlySignal, Signal } from '@preact/signals';
import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { Option, Table, Value } from '../boat';
import type { Instance } from '../cells';
import { isIssue, type KindId, type Shown, write } from '../measure';
import type { Book, Graph, Version } from '../notebook';
import type { Conflict } from './keeping';

export type Dress = 'by the light' | 'paper' | 'slate' | 'sun';

export interface Bench {
  readonly book: Book;
  readonly shown: Signal<Shown>;
  readonly dress: Signal<Dress>;
  /** Every cell that stands in a notebook, by its name. */
  readonly instances: ReadonlySignal<ReadonlyMap<string, Instance>>;
  /** The cell spoken of: the one with focus, else the one in the middle of the window. */
  readonly inHand: Signal<string | null>;
  /** Whether the boat's own sheet (offsets, scantlings) is open. */
  readonly boatOpen: Signal<boolean>;
  /** A sentence to the builder about saving, opening or another window; null when there is none. */
  readonly notice: Signal<string | null>;
  /** Another window saved the same boat; null when none did. */
  readonly conflict: Signal<Conflict | null>;
  /** Goes to where a quantity is written or worked out. */
  readonly goTo: (name: string) => void;
  /** Opens another boat from the starters or a file. */
  readonly openBoat: (table: Table, entries?: Readonly<Record<string, string>>) => void;
}

export const BenchContext = createContext<Bench | null>(null);

export function useBench(): Bench {
  const bench = useContext(BenchContext);
  if (!bench) throw new Error('this part of the page stands outside the bench');
  return bench;
}

/** The words for the two versions wherever they stand side by side. */
export const versionWords: Readonly<Record<Version, string>> = { first: 'Kept', second: 'Trying' };

/** The graph of a version, tracked. */
export function graphOf(book: Book, version: Version): Graph {
  return (version === 'second' ? book.second.value : null) ?? book.first.value;
}

/** A number in the units chosen. */
export function say(value: number, kind: KindId, shown: Shown): string {
  return write(value, kind, shown).text;
}

/** A writer in the units chosen now; whoever calls follows the choice. */
export function sayWith(bench: Bench): (value: number, kind: KindId) => string {
  const shown = bench.shown.value;
  return (value, kind) => say(value, kind, shown);
}

/** Any value as text; an issue gives its sentence. */
export function sayValue(value: Value, kind: KindId, shown: Shown, options: readonly Option[] = []): string {
  if (isIssue(value)) return value.issue;
  if (typeof value === 'string') return options.find((option) => option.id === value)?.label ?? value;
  return say(value, kind, shown);
}
