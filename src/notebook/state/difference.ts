/**
 * What turns one plain object into another, as plain data: short where little has changed. A new value stands in
 * a list of its own, an empty list where there is none any more, and an object where the change lies deeper. In a
 * long text it is where the change begins, how many letters go, and what comes in their place.
 */
export interface Difference {
  readonly [key: string]: Difference | readonly [value?: unknown] | Splice;
}
type Splice = readonly [at: number, gone: number, put: string];

type Plain = Readonly<Record<string, unknown>>;

/** Letters of an entry; a text beyond them is a notebook's, of which each step would else keep the whole. */
const SHORT = 1000;

/** Lists are compared by being the same one, and taken over whole. */
export function difference(from: Plain, to: Plain): Difference {
  const keys = new Set([...Object.keys(from), ...Object.keys(to)]);
  return Object.fromEntries(
    [...keys].flatMap((key): [string, Difference[string]][] => {
      if (!Object.hasOwn(to, key)) return [[key, []]];
      const was = Object.hasOwn(from, key) ? from[key] : undefined;
      const is = to[key];
      if (was === is) return [];
      if (typeof was === 'string' && typeof is === 'string' && was.length > SHORT)
        return [[key, spliceOf(was, is)]];
      if (!isPlain(was) || !isPlain(is)) return [[key, [is]]];
      const deeper = difference(was, is);
      return Object.keys(deeper).length === 0 ? [] : [[key, deeper]];
    }),
  );
}

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

function spliceOf(was: string, is: string): Splice {
  const most = Math.min(was.length, is.length);
  let before = 0;
  while (before < most && was[before] === is[before]) before += 1;
  let after = 0;
  while (after < most - before && was.at(-1 - after) === is.at(-1 - after)) after += 1;
  return [before, was.length - after - before, is.slice(before, is.length - after)];
}

const spliced = (was: string, [at, gone, put]: Splice): string =>
  was.slice(0, at) + put + was.slice(at + gone);

function isSplice(change: readonly unknown[]): change is Splice {
  const [at, gone, put] = change;
  return typeof at === 'number' && typeof gone === 'number' && typeof put === 'string';
}

function isPlain(value: unknown): value is Plain {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
