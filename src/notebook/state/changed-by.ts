/** The way back from a difference to what it makes: only who reads what was saved asks for it, and that comes late. */
import { type Difference, isPlain, type Plain, type Splice } from './difference';

/** The other object: `changedBy(from, difference(from, to))` equals `to`. What is no difference changes nothing. */
export function changedBy(from: Plain, by: Difference): Record<string, unknown> {
  const next = new Map(Object.entries(from));
  for (const [key, change] of Object.entries(by)) {
    const was = next.get(key);
    if (!Array.isArray(change)) {
      if (isPlain(change)) next.set(key, changedBy(isPlain(was) ? was : {}, change));
    } else if (change.length === 0) next.delete(key);
    else if (change.length === 1) next.set(key, change[0]);
    else if (typeof was === 'string' && isSplice(change)) next.set(key, spliced(was, change));
  }
  return Object.fromEntries(next);
}

const spliced = (was: string, [at, gone, put]: Splice): string =>
  was.slice(0, at) + put + was.slice(at + gone);

function isSplice(change: readonly unknown[]): change is Splice {
  const [at, gone, put] = change;
  return typeof at === 'number' && typeof gone === 'number' && typeof put === 'string';
}
