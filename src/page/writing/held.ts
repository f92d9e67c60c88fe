/** What is being typed, held back for a moment: the page follows when the fingers pause, and nothing is lost if it is left. */
import { useEffect, useRef } from 'preact/hooks';
import { useBench } from '../bench';

/** ms: shorter than it takes to look up; and after which what is typed is another step for Undo. */
const PAUSE = 200;
const STEP = 2000;

export interface TypedAhead {
  /** Typed and not written yet; null where all is. */
  readonly typed: () => string | null;
  readonly type: (text: string) => void;
  /** Writes at once what is held back. */
  readonly flush: () => void;
}

let runs = 0;

/** @param write is given the text, and the name of the run that it goes on with */
export function useHeld(write: (text: string, run: string) => void): TypedAhead {
  const { keeping } = useBench();
  const latest = useRef(write);
  latest.current = write;
  const at = useRef({ text: null as string | null, timer: 0, last: -Infinity, run: 0 });
  const held = useRef<TypedAhead>({
    typed: () => at.current.text,
    type: (text) => {
      const now = performance.now();
      // By the letters, not by what is written of them: who types on without a pause takes one step, however long.
      if (now - at.current.last > STEP) at.current.run = runs += 1;
      clearTimeout(at.current.timer);
      at.current.text = text;
      at.current.last = now;
      at.current.timer = window.setTimeout(held.current.flush, PAUSE);
    },
    flush: () => {
      const { text, timer, run } = at.current;
      clearTimeout(timer);
      if (text === null) return;
      at.current.text = null;
      latest.current(text, `write ${run}`);
    },
  });
  useEffect(() => {
    const leave = () => {
      held.current.flush();
      keeping.save();
    };
    addEventListener('pagehide', leave);
    return () => {
      removeEventListener('pagehide', leave);
      held.current.flush();
    };
  }, [keeping]);
  return held.current;
}
