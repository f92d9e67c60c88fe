/**
 * The bench: what every part of the page reaches for. One book, the units and dress chosen,
 * the cell in hand, and the way to any quantity.
 */
import type { ReadonlySignal, Signal } from '@preact/signals';
import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { AsBuilt, Option, Table, Value } from '../boat';
import type { Instance } from '../cells';
import { isIssue, type KindId, type Shown, write } from '../measure';
import type { Book, Findings, Graph, Ripple, Version } from '../notebook';
import type { Misfit } from '../notebook/misfits';
import type { Conflict } from './frame/keeping';

export type Dress = 'by the light' | 'paper' | 'slate' | 'sun';

/** A sentence to the builder, with at most one thing to do about it. */
export interface Notice {
  readonly says: string;
  readonly key?: { readonly words: string; readonly act: () => void };
}

export interface Bench {
  readonly book: Book;
  /** What searches have found, while the page is open. */
  readonly findings: Findings;
  readonly shown: Signal<Shown>;
  readonly dress: Signal<Dress>;
  /** The plan's table of the boat in hand; changes only when another boat is opened. */
  readonly table: ReadonlySignal<Table>;
  /** The version that edits don't go into; null where there is only one. */
  readonly other: ReadonlySignal<OtherVersion | null>;
  /** Every cell that stands in a notebook, by its name. */
  readonly instances: ReadonlySignal<ReadonlyMap<string, Instance>>;
  /** The cell spoken of: the one with focus, else the one in the middle of the window. */
  readonly inHand: Signal<string | null>;
  /** Whether the boat's own sheet (offsets, scantlings) is open. */
  readonly boatOpen: Signal<boolean>;
  /** The station whose offsets the boat's sheet shows; null until one is chosen. */
  readonly station: Signal<string | null>;
  /** About saving, opening or a newer build; null when there is nothing to say. */
  readonly notice: Signal<Notice | null>;
  /** Another window saved the same boat; null when none did. */
  readonly conflict: Signal<Conflict | null>;
  /** What moved after the last edit; null until something has. */
  readonly ripple: Signal<Ripple | null>;
  /** What no longer fits the parts that are cut. */
  readonly misfits: Signal<readonly Misfit[]>;
  /** The same of the version that edits don't go into; empty where there is only one. */
  readonly otherMisfits: Signal<readonly Misfit[]>;
  /** Goes to where a quantity is written or worked out; `boat` is the boat's own sheet. */
  readonly goTo: (name: string) => void;
  /** Puts another boat on the bench, from the starters or a file. */
  readonly openBoat: (table: Table, entries?: Readonly<Record<string, string>>, asBuilt?: AsBuilt) => void;
}

export interface OtherVersion {
  readonly version: Version;
  readonly graph: Graph;
}

export const BenchContext = createContext<Bench | null>(null);

export function useBench(): Bench {
  const bench = useContext(BenchContext);
  if (!bench) throw new Error('this part of the page stands outside the bench');
  return bench;
}

/** The words for the two versions wherever they stand side by side. */
export const versionWords: Readonly<Record<Version, string>> = { first: 'Kept', second: 'Trying' };

/** A writer of numbers in the units chosen now; whoever calls follows the choice. */
export function sayWith(bench: Bench): (value: number, kind: KindId) => string {
  const shown = bench.shown.value;
  return (value, kind) => write(value, kind, shown).text;
}

/** The same for a sentence, where a number must not part from its unit at the end of a line. */
export function tiedWith(bench: Bench): (value: number, kind: KindId) => string {
  const say = sayWith(bench);
  return (value, kind) => say(value, kind).replaceAll(' ', '\u00a0');
}

/** Any value as text; an issue gives its sentence. */
export function sayValue(value: Value, kind: KindId, shown: Shown, options: readonly Option[] = []): string {
  if (isIssue(value)) return value.issue;
  if (typeof value === 'string') return options.find((option) => option.id === value)?.label ?? value;
  return write(value, kind, shown).text;
}

/** The answers a choice can take; none for what is no choice. */
export function optionsFor(graph: Graph, name: string): readonly Option[] {
  const quantity = graph.quantity(name);
  return quantity && 'options' in quantity ? (quantity.options ?? []) : [];
}
