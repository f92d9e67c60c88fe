/** Fetches what adds the builder's own formulas to what is on hand, once there are any. */
import { effect } from '@preact/signals';
import type { Catalogue } from '../../notebook';
import type { Bench } from '../bench';
import { addFormulas } from '../formulas-here';
import { allOnShelf } from '../library';

const none = (catalogue: Catalogue): Catalogue => catalogue;

export function watchFormulas(bench: Bench): void {
  effect(() => {
    const isWanted =
      Object.hasOwn(bench.book.state.value.entries, 'mine.lines') ||
      allOnShelf().pages.some(({ formulas }) => formulas);
    const now = addFormulas.peek();
    if (isWanted && (now === null || now === none))
      void import('./on-bench').then(({ formulasOn }) => formulasOn(bench));
    else if (now === null) addFormulas.value = none;
  });
}
