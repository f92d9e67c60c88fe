/**
 * The bench: what every part of the page reaches for. One book, the units and colours chosen,
 * the cell in hand, and the way to any quantity.
 */
import type { ReadonlySignal, Signal } from '@preact/signals';
import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { Boat, Option, OwnNotebooks, Table, Value } from '../boat';
import type { Instance, Say } from '../cells';
import {
  isIssue,
  type KindId,
  type Manner,
  type Shown,
  write,
  writeInPicture,
  type WriteOptions,
} from '../measure';
import type { Book, CellPlace, Findings, Graph, Shelf, Version } from '../notebook';
import type { Shelves } from '../notebook/keeping/boats';
import type { Misfit } from '../notebook/graph/misfits';
import type { Remark } from '../notebook/placing';
import type { Conflict, Keeping } from './keeping/keeping';
import type { BenchSheet } from './keeping/sheets';
import type { Notice } from './notice';
import type { AskCover, Wall } from './plate';
import type { ToldRipple } from './told/told';

export type Colours = 'by the light' | 'paper' | 'slate' | 'sun';

/** The notebooks of a boat that is not on the bench. */
export interface Resting {
  readonly boat: string;
  readonly notebooks: OwnNotebooks;
}

export interface Bench {
  readonly book: Book;
  /** What searches have found, while the page is open. */
  readonly findings: Findings;
  readonly shown: Signal<Shown>;
  /** Goes up when the page is at rest after an edit: what is far from the window catches up then, part by part. */
  readonly rested: Signal<number>;
  readonly colours: Signal<Colours>;
  /** What lies on the bench: the builder's boat, one that a notebook brings along, or no boat. */
  readonly sheet: ReadonlySignal<BenchSheet>;
  /** Whether the open notebook knows no boat: nothing of one is to be seen then. */
  readonly boatless: ReadonlySignal<boolean>;
  /** Whether the sheet of the open notebook is on the bench already; until then its text would show another's numbers. */
  readonly isLaid: ReadonlySignal<boolean>;
  /** Where on the shelf the builder's boat in hand lies. */
  readonly ownBoat: Signal<string>;
  /** What this browser keeps, and what it keeps for this window alone; null where it keeps nothing. */
  readonly shelf: Shelves | null;
  readonly windowShelf: Shelf | null;
  readonly keeping: Keeping;
  /** The boat chosen to read a notebook with, by the notebook's id: one it brings along, or with null the builder's. */
  readonly readWith: Signal<ReadonlyMap<string, string | null>>;
  /** What the builder calls the boat; without one, what the notebook is called. */
  readonly name: ReadonlySignal<string>;
  /** The plan's table of the boat in hand; changes only when another boat is opened. */
  readonly table: ReadonlySignal<Table>;
  /** The version that edits don't go into; null where there is only one. */
  readonly other: ReadonlySignal<OtherVersion | null>;
  /** Every cell that stands in a notebook, by its name. */
  readonly instances: ReadonlySignal<ReadonlyMap<string, Instance>>;
  /** What is amiss with a cell where a notebook places it. */
  readonly remarks: ReadonlySignal<ReadonlyMap<CellPlace, Remark>>;
  /** The notebooks of the builder's own that are kept with the boat in hand; null until she is known. */
  readonly ownNotebooks: ReadonlySignal<OwnNotebooks | null>;
  /** The same as last seen, for while another sheet lies on the bench. */
  readonly resting: Signal<Resting | null>;
  /** What covers the answers while the page is on the wall; null at a desk. */
  readonly wall: Signal<Wall | null>;
  /** What questions cover, once a notebook with questions was open. */
  readonly asked: Signal<AskCover<Bench> | null>;
  /** The cell spoken of: the one with focus, else the one in the middle of the window. */
  readonly inHand: Signal<string | null>;
  /** Whether the boat's own sheet (offsets, scantlings) is open. */
  readonly boatOpen: Signal<boolean>;
  /** Whether the list of the builder's boats is open. */
  readonly boatsOpen: Signal<boolean>;
  /** The station whose offsets the boat's sheet shows; null until one is chosen. */
  readonly station: Signal<string | null>;
  /** About saving, opening or a newer build; null when there is nothing to say. */
  readonly notice: Signal<Notice | null>;
  /** Another window saved the same boat; null when none did. */
  readonly conflict: Signal<Conflict | null>;
  /** What moved after the last edit; null until something has. */
  readonly ripple: Signal<ToldRipple | null>;
  /** What no longer fits the parts that are cut. */
  readonly misfits: Signal<readonly Misfit[]>;
  /** The same of the version that edits don't go into; empty where there is only one. */
  readonly otherMisfits: Signal<readonly Misfit[]>;
  /** Goes to where a quantity is written or worked out; `boat` is the boat's own sheet, `boats` the list of boats, `log` her log. */
  readonly goTo: (name: string) => void;
  /** Puts another boat on the bench, from the starters or a file. */
  readonly openBoat: (boat: NewBoat) => Promise<void>;
}

/** A boat to begin with; what is not said of her is not there. */
export type NewBoat = Pick<Boat, 'table'> & Partial<Boat>;

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

/** A writer of numbers for pictures, in the units chosen now; whoever calls follows the choice. */
export function sayWith(bench: Bench): (value: number, kind: KindId, options?: WriteOptions) => string {
  const shown = bench.shown.value;
  return (value, kind, options) => writeInPicture(value, kind, shown, options);
}

/** The same for a sentence, where a number must not part from its unit at the end of a line. */
export function tiedWith(bench: Bench): Say {
  const shown = bench.shown.value;
  return (value, kind, options) => {
    const written = write(value, kind, shown, options);
    return { ...written, told: written.told.replaceAll(' ', '\u00a0') };
  };
}

/** Any value as text; an issue gives its sentence. */
export function sayValue(
  value: Value,
  kind: KindId,
  shown: Shown,
  options: readonly Option[] = [],
  manner?: Manner,
): string {
  if (isIssue(value)) return value.issue;
  if (typeof value === 'string') return options.find((option) => option.id === value)?.label ?? value;
  return write(value, kind, shown, manner).told;
}

/** A value of a quantity as it is written wherever it stands. */
export function sayOf(graph: Graph, name: string, value: Value, shown: Shown): string {
  const quantity = graph.quantity(name);
  return sayValue(value, quantity?.kind ?? 'number', shown, optionsFor(graph, name), graph.mannerOf(name));
}

/** The answers a choice can take; none for what is no choice. */
export function optionsFor(graph: Graph, name: string): readonly Option[] {
  const quantity = graph.quantity(name);
  return quantity && 'options' in quantity ? (quantity.options ?? []) : [];
}
