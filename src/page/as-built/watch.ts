/** Holds the boat, in both versions, against its cut parts after each edit, once the page has drawn what is in view. */
import { effect } from '@preact/signals';
import { type Misfit, misfits } from '../../notebook/graph/misfits';
import type { Graph } from '../../notebook';
import type { Bench } from '../bench';

/** A pause in typing, ms, after which the page is taken to be at rest. */
const PAUSE = 60;
const none: readonly Misfit[] = [];

export function watchMisfits(bench: Bench): void {
  const { book, instances } = bench;
  let timer = 0;
  const of = (graph: Graph | undefined) => {
    const found = graph ? misfits(book.asBuilt.peek(), graph, instances.peek().values()) : none;
    return found.length === 0 ? none : found;
  };
  const look = () => {
    bench.misfits.value = of(book.inHand.peek());
    bench.otherMisfits.value = of(bench.other.peek()?.graph);
  };
  effect(() => {
    void book.state.value;
    void book.inHand.value;
    void book.catalogue.value;
    clearTimeout(timer);
    timer = window.setTimeout(() => requestIdleCallback(look, { timeout: 500 }), PAUSE);
  });
}
