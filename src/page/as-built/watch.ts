/** Holds the boat, in both versions, against its cut parts. */
import { type Misfit, misfits } from '../../notebook/graph/misfits';
import type { Graph } from '../../notebook';
import type { Bench } from '../bench';

const none: readonly Misfit[] = [];

/** To be called when the page is at rest after an edit: it asks for all that is cut. */
export function tellMisfits({ book, instances, other, misfits: told, otherMisfits }: Bench): void {
  const of = (graph: Graph | undefined) => {
    const found = graph ? misfits(book.asBuilt.peek(), graph, instances.peek().values()) : none;
    return found.length === 0 ? none : found;
  };
  told.value = of(book.inHand.peek());
  otherMisfits.value = of(other.peek()?.graph);
}
