/** All that a graph is worked out from, as it stands at one moment, and what differs between two of them. */
import type { Shown } from '../../measure';
import type { Catalogue } from './on-hand';
import type { Entries } from '../state/state';

/** Changes of entries to ask "what if": texts, or numbers in SI, which are held to no limit of an entry's. */
export type Supposed = Readonly<Record<string, string | number | null>>;

export interface Moment {
  /** That of the graph below; null at the bottom. */
  readonly below: Moment | null;
  /** What quantities there are. */
  readonly catalogue: Catalogue;
  /** What is written, over what is written below; null restores a preset, a number is in SI. */
  readonly written: Supposed;
  /** What was measured or cut to, in place of what is written. */
  readonly built: Entries;
  /** The units chosen. */
  readonly shown: Shown;
  /** Counts what searches have found. */
  readonly findings: number;
}

/** What is written for a quantity; undefined where its preset holds. */
export function writtenAt(moment: Moment, name: string): string | number | undefined {
  if (Object.hasOwn(moment.written, name)) return moment.written[name] ?? undefined;
  return moment.below ? writtenAt(moment.below, name) : undefined;
}

/** What was measured or cut to for a quantity; what is supposed over it stands in its place. */
export function builtAt(moment: Moment, name: string): string | undefined {
  if (Object.hasOwn(moment.built, name)) return moment.built[name];
  if (Object.hasOwn(moment.written, name)) return undefined;
  return moment.below ? builtAt(moment.below, name) : undefined;
}

/** Tells of each quantity for which something else may be written, or measured, than before. */
export function tellDifferences(was: Moment, is: Moment, tell: (name: string) => void): void {
  if (was === is) return;
  differingIn(was.written, is.written, tell);
  differingIn(was.built, is.built, tell);
  if (was.below && is.below) tellDifferences(was.below, is.below, tell);
}

function differingIn(was: Supposed, is: Supposed, tell: (name: string) => void): void {
  if (was === is) return;
  for (const name of Object.keys(is)) if (was[name] !== is[name] || !Object.hasOwn(was, name)) tell(name);
  for (const name of Object.keys(was)) if (!Object.hasOwn(is, name)) tell(name);
}
