/** Changes the boat in hand, by a step of hers, whichever sheet lies on the bench. */
import type { BookState } from '../../notebook';
import type { Bench } from '../bench';
import { amendAtRest } from './amend-at-rest';
import { noteStep } from './steps-elsewhere';

/** @param run joins changes to her notebooks into one step for Undo */
export function amendBoat(bench: Bench, change: (state: BookState) => BookState, run?: string): void {
  const { book, ownBoat, ownNotebooks, sheet } = bench;
  if (sheet.peek().key === ownBoat.peek()) {
    book.settle();
    book.open(change(book.state.peek()));
    return;
  }
  const was = ownNotebooks.peek();
  const is = amendAtRest(bench, change);
  // What led back to her is a step of hers alone.
  if (was && sheet.peek().key !== ownBoat.peek()) noteStep(bench, was, is, run);
}
