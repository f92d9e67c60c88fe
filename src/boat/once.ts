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
