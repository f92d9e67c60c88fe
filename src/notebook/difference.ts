/**
 * What turns one plain object into another, as plain data: short where little has changed. A new value stands in
 * a list of its own, an empty list where there is none any more, and an object where the change lies deeper.
 */
export interface Difference {
  readonly [key: string]: Difference | readonly [value?: unknown];
}

type Plain = Readonly<Record<string, unknown>>;

/** Lists are compared by being the same one, and taken over whole. */
export function difference(from: Plain, to: Plain): Difference {
  const keys = new Set([...Object.keys(from), ...Object.keys(to)]);
  return Object.fromEntries(
    [...keys].flatMap((key): [string, Difference[string]][] => {
      if (!Object.hasOwn(to, key)) return [[key, []]];
      const was = Object.hasOwn(from, key) ? from[key] : undefined;
      const is = to[key];
      if (was === is) return [];
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
    if (!Array.isArray(change)) {
      const was = next.get(key);
      if (isPlain(change)) next.set(key, changedBy(isPlain(was) ? was : {}, change));
    } else if (change.length === 0) next.delete(key);
    else next.set(key, change[0]);
  }
  return Object.fromEntries(next);
}

function isPlain(value: unknown): value is Plain {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
