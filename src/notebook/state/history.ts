/**
 * Undo and redo without limit, as plain data. A run of edits with one key (the keystrokes in one
 * field, the movement of one slider) is a single step.
 */
export interface History<T> {
  readonly past: readonly T[];
  readonly present: T;
  readonly future: readonly T[];
  /** The run the present belongs to; null once it is settled. */
  readonly run: string | null;
}

export function startHistory<T>(present: T): History<T> {
  return { past: [], present, future: [], run: null };
}

/** Goes on to `next`. The same `run` as before goes on with the same step. */
export function advance<T>(history: History<T>, next: T, run: string | null = null): History<T> {
  if (next === history.present) return history;
  const sameStep = run !== null && run === history.run;
  const past = sameStep ? history.past : [...history.past, history.present];
  return { past, present: next, future: [], run };
}

/** Ends the run, so that the next edit is a step of its own. */
export function settle<T>(history: History<T>): History<T> {
  return history.run === null ? history : { ...history, run: null };
}

export function undo<T>(history: History<T>): History<T> {
  const last = history.past.at(-1);
  if (last === undefined) return history;
  return {
    past: history.past.slice(0, -1),
    present: last,
    future: [history.present, ...history.future],
    run: null,
  };
}

export function redo<T>(history: History<T>): History<T> {
  const [next, ...future] = history.future;
  if (next === undefined) return history;
  return { past: [...history.past, history.present], present: next, future, run: null };
}
