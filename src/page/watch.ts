/** What looks on while one works: fetched when the page is first at rest, all at once, since none of it is seen before. */
import type { Bench } from './bench';
import { watchFormulas } from './formulas/watch';
import { watchWords } from './glossary/watch';
import { watchHere } from './layout/here';
import { watchForNewBuild } from './layout/new-build';
import { listenForUndo } from './layout/undo-keys';
import { watchNotebooks } from './notebooks/watch';
import { watchRest } from './rest';

export function watch(bench: Bench): void {
  listenForUndo(bench.book);
  watchWords();
  watchNotebooks(bench);
  watchFormulas(bench);
  watchHere(bench);
  watchRest(bench);
  if (import.meta.env.PROD && 'serviceWorker' in navigator && location.protocol !== 'file:')
    void watchForNewBuild(bench.notice);
}
