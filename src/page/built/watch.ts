/** Holds the boat against its cut parts after each edit, once the page has drawn what is in view. */
import { effect } from '@preact/signals';
import { type Misfit, misfits } from '../../notebook/misfits';
import type { Bench } from '../bench';

/** A pause in typing, ms, after which the page is taken to be at rest. */
const PAUSE = 60;
const none: readonly Misfit[] = [];

export function watchMisfits(bench: Bench): void {
  const { book, instances } = bench;
  let timer = 0;
  const look = () => {
    const found = misfits(book.asBuilt.peek(), book.inHand.peek(), instances.peek().values());
    bench.misfits.value = found.length === 0 ? none : found;
  };
  effect(() => {
    void book.state.value;
    void book.inHand.value;
    clearTimeout(timer);
    timer = window.setTimeout(() => requestIdleCallback(look, { timeout: 500 }), PAUSE);
  });
}
