/** A long working of a part of the page, in slices: begun anew when what it hangs on is another, and never waited for. */
import { useEffect, useRef, useState } from 'preact/hooks';
import { toTheEnd } from '../kernel/to-the-end';
import { printing } from './printing';
import { inSlices } from './slices';

export interface Sliced<T> {
  /** The last that was finished; null before the first. */
  readonly made: T | null;
  /** How much of the next is done, 0 to 1; null when nothing is under way. */
  readonly done: number | null;
}

/**
 * @param make begins the working, which yields how much is done
 * @param on begins it anew where any of these is another; what was made before stays until then
 */
export function useSlices<T>(make: () => Generator<number, T>, on: readonly unknown[]): Sliced<T> {
  const [sliced, tell] = useState<Sliced<T>>({ made: null, done: 0 });
  const latest = useRef(make);
  latest.current = make;
  useEffect(() => {
    const over = new AbortController();
    const { signal } = over;
    tell(({ made }) => ({ made, done: 0 }));
    void inSlices(latest.current(), (done) => tell(({ made }) => ({ made, done })), signal).then((made) => {
      if (made !== undefined && !signal.aborted) tell({ made, done: null });
    });
    return () => over.abort();
  }, on);
  // Paper waits for nothing.
  if (printing.value && sliced.made === null) return { made: toTheEnd(make()), done: null };
  return sliced;
}
