/** Long work in short slices, so that the page goes on answering meanwhile. */

/** Longest slice, ms: half a frame. */
const SLICE = 8;

/**
 * Runs a work to its end, a slice at a time.
 *
 * @param work yields how much of it is done
 * @param onDone told after each slice
 * @param signal breaks it off
 * @returns what it came to; undefined where it was broken off
 */
export async function inSlices<T>(
  work: Generator<number, T>,
  onDone: (share: number) => void,
  signal: AbortSignal,
): Promise<T | undefined> {
  while (!signal.aborted) {
    const until = performance.now() + SLICE;
    let step = work.next();
    while (!step.done && performance.now() < until) step = work.next();
    if (step.done) return step.value;
    onDone(step.value);
    // oxlint-disable-next-line no-await-in-loop -- the pause is what a slice ends with
    await new Promise((go) => setTimeout(go));
  }
  return undefined;
}
