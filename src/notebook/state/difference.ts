/**
 * What turns one plain object into another, as plain data: short where little has changed. A new value stands in
 * a list of its own, an empty list where there is none any more, and an object where the change lies deeper. In a
 * long text it is where the change begins, how many letters go, and what comes in their place.
 */
export interface Difference {
  readonly [key: string]: Difference | readonly [value?: unknown] | Splice;
}
export type Splice = readonly [at: number, gone: number, put: string];

export type Plain = Readonly<Record<string, unknown>>;

/** Letters of an entry; a text beyond them is a notebook's, of which each step would else keep the whole. */
const SHORT = 1000;

/** Lists are compared by being the same one, and taken over whole. `changed-by.ts` goes the other way. */
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

function spliceOf(was: string, is: string): Splice {
  const most = Math.min(was.length, is.length);
  let before = 0;
  while (before < most && was[before] === is[before]) before += 1;
  let after = 0;
  while (after < most - before && was.at(-1 - after) === is.at(-1 - after)) after += 1;
  return [before, was.length - after - before, is.slice(before, is.length - after)];
}

export function isPlain(value: unknown): value is Plain {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
