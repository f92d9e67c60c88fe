/** Starts the page: the boat kept in this browser or the demo boat, the notebooks, and the frame round them. */
import './dress/fonts.css';
import './dress/colours.css';
import './dress/page.css';
import './dress/frame.css';
import './dress/cell.css';
import './dress/input.css';
import './dress/drawing.css';
import './dress/built.css';
import './dress/print.css';
import { computed, effect, signal } from '@preact/signals';
import { render } from 'preact';
import { demoBoat } from '../boat';
import { plainShown, type Shown } from '../measure';
import { catalogueOf, createBook, createFindings, createStore, freshState, shelfFrom } from '../notebook';
import { App } from './app';
import type { Bench, Notice } from './bench';
import { dress, wearDress } from './frame/dress-choice';
import { type Conflict, keepSaved } from './frame/keeping';
import { listenForUndo } from './frame/undo-keys';
import { followHash } from './frame/way';
import { use } from './html';
import { fetchTheRest, instances } from './library';

const shelf = shelfFrom(() => localStorage);
const store = createStore(shelf);
const opened = store.open();
const start = opened.kept?.state ?? freshState(demoBoat);
const findings = createFindings();
const shown = signal<Shown>(opened.kept?.shown ?? plainShown);
const book = createBook(
  start,
  (table, ends) => catalogueOf(table, [...instances.value.values()], ends),
  findings.found,
  () => shown.value.length !== 'mm',
);
const notice = signal<Notice | null>(opened.says === undefined ? null : { says: opened.says });
const conflict = signal<Conflict | null>(null);

const bench: Bench = {
  book,
  findings,
  shown,
  dress,
  table: computed(() => book.state.value.table),
  other: computed(() => {
    const second = book.second.value;
    if (!second) return null;
    return book.inHand.value === second
      ? { version: 'first', graph: book.first.value }
      : { version: 'second', graph: second };
  }),
  instances,
  inHand: signal(null),
  boatOpen: signal(false),
  station: signal(null),
  notice,
  conflict,
  ripple: signal(null),
  misfits: signal([]),
  otherMisfits: signal([]),
  goTo: (name) => void import('./frame/go-to').then(({ goToQuantity }) => goToQuantity(name, bench)),
  openBoat: (table, entries, asBuilt) => {
    const before = book.state.peek().table.name;
    book.open(freshState(table, entries, asBuilt));
    notice.value = { says: `${table.name} is on the bench now. Undo brings ${before} back.` };
  },
};

wearDress(shelf);
followHash();
keepSaved({ book, shown, store, notice, conflict });
listenForUndo(book);
effect(() => {
  document.title = `${bench.table.value.name} · Battenbook`;
});
render(use(App, { bench }), document.getElementById('page')!);

requestIdleCallback(
  () => {
    void fetchTheRest();
    void import('./ripple/watch').then(({ watchRipple }) => watchRipple(bench));
    void import('./built/watch').then(({ watchMisfits }) => watchMisfits(bench));
  },
  { timeout: 1500 },
);

if (import.meta.env.PROD && 'serviceWorker' in navigator && location.protocol !== 'file:') {
  void import('./frame/new-build').then(({ watchForNewBuild }) => watchForNewBuild(notice));
}
