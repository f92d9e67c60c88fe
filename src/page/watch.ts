/** What looks on while one works: fetched when the page is first at rest, all at once, since none of it is seen before. */
import { watchMisfits } from './as-built/watch';
import type { Bench } from './bench';
import { watchWords } from './glossary/watch';
import { watchHere } from './layout/here';
import { watchForNewBuild } from './layout/new-build';
import { listenForUndo } from './layout/undo-keys';
import { watchNotebooks } from './notebooks/watch';
import { watchRest } from './rest';
import { watchRipple } from './ripple/watch';

export function watch(bench: Bench): void {
  listenForUndo(bench.book);
  watchWords();
  watchNotebooks(bench);
  watchHere(bench);
  watchRipple(bench);
  watchMisfits(bench);
  watchRest(bench);
  if (import.meta.env.PROD && 'serviceWorker' in navigator && location.protocol !== 'file:')
    void watchForNewBuild(bench.notice);
}
