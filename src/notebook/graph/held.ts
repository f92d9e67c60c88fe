/** What the nodes of a graph hold, and when two of these are one. */
import type { Derived, Given, Hull, Value } from '../../boat';
import { type Issue, isIssue, issue, type Shown } from '../../measure';
import type { EntryReading } from './given';
import type { Catalogue } from './on-hand';

/** A quantity's value, the reading of an entry, a fact, or what is no quantity's. */
export type Held = Value | EntryHeld | FactHeld | Hull | Shown | boolean | Given | Derived | Catalogue | null;

export interface EntryHeld extends EntryReading {
  readonly written: boolean;
  /** What was measured or cut to: it stands in place of what is written. */
  readonly built?: EntryReading;
  /** A number that was put in place of the entry, SI. */
  readonly supposed?: number;
}

/** What a fact came to; another one each time that it is worked out. */
export class FactHeld {
  readonly found: unknown;
  constructor(found: unknown) {
    this.found = found;
  }
}

/** Whether two values of a node are one, so that nothing follows from working it out again. */
export function sameHeld(a: Held, b: Held): boolean {
  if (a === b) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if (isIssue(a)) return isIssue(b) && sameIssue(a, b);
  if ('means' in a && 'means' in b) return sameReading(a, b);
  return false;
}

function sameReading(a: EntryHeld, b: EntryHeld): boolean {
  if (a.text !== b.text || a.written !== b.written || a.built?.text !== b.built?.text) return false;
  if (a.supposed !== b.supposed) return false;
  return isIssue(a.means) ? isIssue(b.means) && sameIssue(a.means, b.means) : !isIssue(b.means);
}

const sameIssue = (a: Issue, b: Issue): boolean =>
  a.issue === b.issue && a.waitsFor === b.waitsFor && a.circle?.join() === b.circle?.join();

/** There is no NaN in a graph. */
export function finite(meaning: string, value: Value): Value {
  if (typeof value !== 'number' || Number.isFinite(value)) return value;
  return issue(
    `${meaning} has no value with these numbers: the working divides by zero or runs past what can be reckoned`,
  );
}
