/** How a working reads others: a quantity without a value ends it, as an issue that says what it waits for. */
import { attempt, type Found, type Hull, type Read, type Value } from '../../boat';
import { type Issue, isIssue, issue, type Manner, wrongSort } from '../../measure';

/** What a reader looks at: the network from inside, or its rim. */
export interface Look {
  /** @throws Waiting where there is no such quantity, or the asker is in its own way */
  readonly value: (name: string) => Value;
  readonly has: (name: string) => boolean;
  /** What it is, in words. */
  readonly meaningOf: (name: string) => string | undefined;
  /** Whether something was written or measured for the quantity. */
  readonly isEntered: (name: string) => boolean;
  readonly mannerOf: (name: string) => Manner | undefined;
  readonly hull: () => Hull | Issue;
  readonly fact: <T>(name: string, find: (read: Read) => T | Issue) => T | Issue;
  readonly inches: () => boolean;
  readonly found: Found;
  /** The name of what is being worked out. */
  readonly asker: () => string;
}

/** Thrown by a read that finds no value, caught where the asking quantity is worked out. */
export class Waiting extends Error {
  readonly why: Issue;
  constructor(why: Issue) {
    super(why.issue);
    this.why = why;
  }
}

/** The hull has no name of its own among the quantities, but takes part in circles. */
export const HULL = 'the hull';

export function readerOf(look: Look): Read {
  /** Why the asker has no value, given why `name` has none: its own circle, or a wait for the first cause. */
  const waiting = (name: string, why: Issue) =>
    new Waiting(
      why.circle?.includes(look.asker()) ? why : { issue: why.issue, waitsFor: why.waitsFor ?? name },
    );
  /** Why there is no value of the sort that is asked for. */
  const amiss = (name: string, value: Value, is: 'choice' | 'number') =>
    isIssue(value) ? waiting(name, value) : new Waiting(issue(wrongSort(name, is, look.meaningOf(name))));
  return {
    number: (name) => {
      const value = look.value(name);
      if (typeof value === 'number') return value;
      throw amiss(name, value, 'choice');
    },
    choice: (name) => {
      const value = look.value(name);
      if (typeof value === 'string') return value;
      throw amiss(name, value, 'number');
    },
    maybe: (name) => {
      const value = look.has(name) ? look.value(name) : null;
      // Going on without it would hide a circle that closes here.
      if (isIssue(value) && value.circle?.includes(look.asker())) throw new Waiting(value);
      return typeof value === 'number' ? value : null;
    },
    why: (name) => {
      if (!look.isEntered(name)) return null;
      const value = look.value(name);
      return isIssue(value) ? value.issue : null;
    },
    mannerOf: look.mannerOf,
    has: look.has,
    hull: () => {
      const hull = look.hull();
      if (isIssue(hull)) throw waiting(HULL, hull);
      return hull;
    },
    fact: (name, find) => {
      const value = look.fact(name, find);
      // A fact has no name that is told: who asks for it waits for what it waits for.
      if (isIssue(value)) throw new Waiting(value);
      return value;
    },
    inches: look.inches,
    found: look.found,
  };
}

/** Runs a working; a read without a value, or a hull that can't give it, ends it as an issue. Slips of ours pass on. */
export function workFor<T>(by: () => T): T | Issue {
  try {
    return by();
  } catch (fault) {
    return whyOf(fault);
  }
}

/** Why a working that was broken off has no value. */
export function whyOf(fault: unknown): Issue {
  if (fault instanceof Waiting) return fault.why;
  return attempt(() => {
    throw fault;
  });
}
