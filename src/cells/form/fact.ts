/**
 * Facts: what no formula can say because it asks the whole hull, a layout or a search.
 *
 * A fact is a function of a cell's values, worked out once for all that speak of it: steps tell parts of it, other
 * facts and the drawing ask for it whole. It is worked out again when something that it read has changed, so nothing
 * has to be said of what it hangs on.
 */
import type { Found, Hull } from '../../boat';
import type { Bound, Issue, KindId } from '../../measure';
import type { BoatList } from './boat-list';

/** @typeParam V the values of a cell that it reads, by key: numbers in SI, choices as ids */
export interface Fact<in V, out T> {
  /** How it is found, as the working tells it: `the one correction that makes the run of third differences smallest`. */
  readonly how: string;
  /** As of a formula. */
  readonly source: string;
  /** What it comes to, or why there is none; a plain Error's sentence is taken as one. */
  readonly find: (values: V, at: Asking) => T | Issue;
}

/** What a fact may ask for besides the cell's values; each is asked for only where it is named. */
export interface Asking {
  /** The hull as it stands. */
  readonly hull: Hull;
  /** The best answer of a search so far. */
  readonly found: Found;
  /** Another fact of the same values. */
  readonly ask: Ask;
  /** Facts of another cell, as it stands under its own name; null where it stands nowhere. */
  readonly beside: (cell: Beside) => Ask | null;
}

/** What is to be known of a cell whose facts are asked for: its name, and of what kind each of its values is. */
export interface Beside {
  readonly id: string;
  readonly inputs: Kinds;
  readonly steps: Kinds;
}

type Kinds = Readonly<Record<string, { readonly kind: KindId }>>;

/** Gives a fact; whoever asks for one that has no value has none either. */
export type Ask = <T>(fact: Fact<never, T>) => T;

export function fact<V, T>(
  how: string,
  source: string,
  find: (values: V, at: Asking) => T | Issue,
): Fact<V, T> {
  return { how, source, find };
}

/** A line of working that tells a part of a fact. */
export interface ToldStep<in V = never> {
  readonly kind: KindId;
  readonly meaning: string;
  readonly fact: Fact<V, unknown>;
  /** A word (kind `choice`), an SI number, or why there is none. */
  readonly part: (found: unknown, values: V) => number | string | Issue;
  /** How it is found and its source, where the fact's own words don't say it. */
  readonly how: string;
  readonly source: string;
  /** Of a limit: `at most` is never written larger than it is, `at least` never smaller. */
  readonly bound?: Bound;
  /** Of a word: the list of the boat's that it is from, so that it is written as there. */
  readonly options?: BoatList;
}

type PartOf<K extends KindId> = K extends 'choice' ? string : number;

type More = Partial<Pick<ToldStep, 'how' | 'source' | 'bound' | 'options'>>;

/** Tells a fact that is itself a word or a number. */
export function tell<K extends KindId, V>(
  of: Fact<V, PartOf<K>>,
  kind: K,
  meaning: string,
): ToldStep<V> & { readonly kind: K };
/**
 * Tells a part of a fact.
 * @param part given the fact, and the cell's values where it turns on them; those that the fact doesn't ask for itself
 * are named with their types
 */
export function tell<K extends KindId, V, T>(
  of: Fact<V, T>,
  kind: K,
  meaning: string,
  part: (found: T, values: V) => PartOf<NoInfer<K>> | Issue,
  more?: More,
): ToldStep<V> & { readonly kind: K };
export function tell<K extends KindId, V, T, W>(
  of: Fact<V, T>,
  kind: K,
  meaning: string,
  part: (found: T, values: W) => PartOf<NoInfer<K>> | Issue,
  more?: More,
): ToldStep<V & W> & { readonly kind: K };
export function tell(
  of: Fact<never, unknown>,
  kind: KindId,
  meaning: string,
  // What a fact finds goes back into its own parts alone.
  part: ToldStep['part'] = (found) => found as number | string,
  more: More = {},
): ToldStep {
  return { kind, meaning, fact: of, part, how: of.how, source: of.source, ...more };
}

/** What a fact, or the telling of a part of one, has been seen to ask for: keys of values, and facts. It only grows. */
export interface Reads {
  readonly keys: Set<string>;
  readonly facts: Set<Fact<never, unknown>>;
}

const reads = new WeakMap<object, Reads>();
let seen = 0;

export function readsOf(of: Fact<never, unknown> | ToldStep): Reads {
  const known = reads.get(of) ?? { keys: new Set(), facts: new Set() };
  reads.set(of, known);
  return known;
}

export function note<T>(among: Set<T>, asked: T): void {
  if (among.has(asked)) return;
  among.add(asked);
  seen += 1;
}

/** Goes up whenever something new is seen to be asked for. */
export const readsSeen = (): number => seen;

const labels = new WeakMap<object, string>();
let labelled = 0;

/** A word that is this fact's alone, for its node in the graph. */
export function labelOf(fact: Fact<never, unknown>): string {
  const known = labels.get(fact) ?? `fact ${(labelled += 1)}`;
  labels.set(fact, known);
  return known;
}
