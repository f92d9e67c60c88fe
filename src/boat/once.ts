/**
 * Works something out when it is first asked for, and remembers it; a failure is remembered too.
 */
export function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | null = null;
  let failed: { readonly fault: unknown } | null = null;
  return () => {
    if (made) return made.value;
    if (failed) throw failed.fault;
    try {
      made = { value: make() };
      return made.value;
    } catch (fault) {
      failed = { fault };
      throw fault;
    }
  };
}

/** Makes a thing for each key when it is first asked for, and gives the same one ever after. */
export function onceEach<T extends {} | null, K>(make: (key: K) => T): (key: K) => T {
  const made = new Map<K, T>();
  return (key) => {
    const known = made.get(key);
    if (known !== undefined) return known;
    const fresh = make(key);
    made.set(key, fresh);
    return fresh;
  };
}

/** Makes a thing for each object when it is first asked for; it goes when the object does. */
export function onceFor<T extends {}, K extends WeakKey>(make: (key: K) => T): (key: K) => T {
  const made = new WeakMap<K, T>();
  return (key) => {
    const known = made.get(key) ?? make(key);
    made.set(key, known);
    return known;
  };
}
