/** All that a graph is worked out from, as it stands at one moment, and what differs between two of them. */
import type { Shown } from '../../measure';
import type { Catalogue } from './on-hand';
import type { Changes, Entries } from '../state/state';

export interface Moment {
  /** That of the graph below; null at the bottom. */
  readonly below: Moment | null;
  /** What quantities there are. */
  readonly catalogue: Catalogue;
  /** What is written, over what is written below; null restores a preset. */
  readonly written: Changes;
  /** What was measured or cut to, in place of what is written. */
  readonly built: Entries;
  /** The units chosen. */
  readonly shown: Shown;
  /** Counts what searches have found. */
  readonly findings: number;
}

/** The text written for a quantity; undefined where its preset holds. */
export function writtenAt(moment: Moment, name: string): string | undefined {
  if (Object.hasOwn(moment.written, name)) return moment.written[name] ?? undefined;
  return moment.below ? writtenAt(moment.below, name) : undefined;
}

/** What was measured or cut to for a quantity. */
export function builtAt(moment: Moment, name: string): string | undefined {
  if (Object.hasOwn(moment.built, name)) return moment.built[name];
  return moment.below ? builtAt(moment.below, name) : undefined;
}

/** Tells of each quantity for which something else may be written, or measured, than before. */
export function tellDifferences(was: Moment, is: Moment, tell: (name: string) => void): void {
  if (was === is) return;
  differingIn(was.written, is.written, tell);
  differingIn(was.built, is.built, tell);
  if (was.below && is.below) tellDifferences(was.below, is.below, tell);
}

function differingIn(was: Changes, is: Changes, tell: (name: string) => void): void {
  if (was === is) return;
  for (const name of Object.keys(is)) if (was[name] !== is[name] || !Object.hasOwn(was, name)) tell(name);
  for (const name of Object.keys(was)) if (!Object.hasOwn(is, name)) tell(name);
}
