/** Changes the notebooks of the boat in hand, by a step of hers, whichever sheet lies on the bench. */
import { demoBoat } from '../../boat';
import { type BookState, freshState } from '../../notebook';
// A boat that is not on the bench must be read before she is changed.
import '../../notebook/keeping/read-saved';
import type { Bench } from '../bench';

export function amendBoat(bench: Bench, change: (state: BookState) => BookState): void {
  const { book, keeping, ownBoat, resting, sheet } = bench;
  const boat = ownBoat.peek();
  if (sheet.peek().key === boat) {
    book.settle();
    book.open(change(book.state.peek()));
    return;
  }
  const afresh = () => ({ state: freshState(demoBoat), earlier: [], later: [] });
  resting.value = { boat, notebooks: keeping.amend(boat, change, afresh).notebooks };
}
