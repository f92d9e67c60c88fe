/** A work that is done by steps, for who waits for it: all of them at once. */
export function toTheEnd<T>(steps: Generator<unknown, T>): T {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}
