/** Starts the page: the boat kept in this browser or the demo boat, the notebooks, and the frame round them. */
import './dress/fonts.css';
import './dress/colours.css';
import './dress/page.css';
import './dress/cell.css';
import './dress/drawing.css';
import './dress/print.css';
import { effect, signal } from '@preact/signals';
import { render } from 'preact';
import { demoBoat } from '../boat';
import { plainShown, type Shown } from '../measure';
import { catalogueOf, createBook, createStore, freshState, shelfFrom } from '../notebook';
import { App } from './app';
import type { Bench } from './bench';
import { dress, wearDress } from './dress-choice';
import { goToQuantity } from './go-to';
import { followHash } from './hash-way';
import { use } from './html';
import { type Conflict, keepSaved } from './keeping';
import { fetchTheRest, instances } from './library';

const shelf = shelfFrom(() => localStorage);
const store = createStore(shelf);
const opened = store.open();
const start = opened.kept?.state ?? freshState(demoBoat);
const book = createBook(start, (table) => catalogueOf(table, [...instances.value.values()]));
const shown = signal<Shown>(opened.kept?.shown ?? plainShown);
const notice = signal<string | null>(opened.says ?? null);
const conflict = signal<Conflict | null>(null);
const boatOpen = signal(false);

const bench: Bench = {
  book,
  shown,
  dress,
  instances,
  inHand: signal(null),
  boatOpen,
  notice,
  conflict,
  goTo: (name) => goToQuantity(name, boatOpen),
  openBoat: (table, entries) => book.open(freshState(table, entries)),
};

wearDress(shelf);
followHash();
keepSaved({ book, shown, store, notice, conflict });
effect(() => {
  document.title = `${book.state.value.table.name} · Battenbook`;
});
render(use(App, { bench }), document.getElementById('page')!);

requestIdleCallback(() => void fetchTheRest(), { timeout: 1500 });

if (import.meta.env.PROD && 'serviceWorker' in navigator && location.protocol !== 'file:') {
  void import('./new-build').then(({ watchForNewBuild }) => watchForNewBuild(notice));
}
