/**
 * Which pictures and tables follow the numbers: those near the window, and all of them while the page is
 * being printed. The others catch up when the page is at rest: they keep their place, and whoever
 * reads the page without a window finds no old number.
 */
import { effect, untracked } from '@preact/signals';
import type { VNode } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Bench } from '../bench';
import { watchNear } from '../near';
import { printing } from '../printing';
import { atRest } from './at-rest';

/**
 * Makes what stands in a place anew: at each change while it is near, and when it is far once at rest.
 * What is far reads no quantity, so that no edit wakes it at once; it keeps what it showed until its turn.
 * @param host the place, which stands whether there is something in it or not
 * @param atOnce whether it is made when the page first draws it, wherever it stands
 */
export function useLive(
  host: { current: Element | null },
  bench: Bench,
  make: () => VNode | null,
  { atOnce }: { readonly atOnce: boolean } = { atOnce: false },
): VNode | null {
  const [near, setNear] = useState(false);
  const [turn, setTurn] = useState(0);
  useEffect(() => {
    const element = host.current;
    if (!element) return undefined;
    let isIn = false;
    const leave = watchNear(element, (is) => setNear((isIn = is)));
    const dispose = effect(() => {
      void bench.rested.value;
      atRest(() => isIn || setTurn((last) => last + 1));
    });
    return () => {
      dispose();
      leave();
    };
  }, [host]);
  const kept = useRef<{ node: VNode | null; turn: number }>({ node: null, turn: atOnce ? -1 : 0 });
  if (near || printing.value) kept.current = { node: make(), turn };
  else if (turn > kept.current.turn) kept.current = { node: untracked(make), turn };
  return kept.current.node;
}
