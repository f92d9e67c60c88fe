/** When the page is at rest after an edit, or after anything else that moves numbers: what is far from the window catches up then. */
import { effect } from '@preact/signals';
import type { Bench } from './bench';

/** After the last edit, ms. */
const PAUSE = 200;

export function watchRest({ book, shown, findings, rested }: Bench): void {
  let timer = 0;
  effect(() => {
    void [book.state.value, book.catalogue.value, shown.value, findings.count.value];
    clearTimeout(timer);
    timer = window.setTimeout(() => requestIdleCallback(() => (rested.value += 1), { timeout: 2000 }), PAUSE);
  });
}
