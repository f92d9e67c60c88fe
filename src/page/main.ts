/** Starts the page: what is kept in this browser or the demo boat, the notebooks, and what stands round them. */
import './style/fonts.css';
import './style/colours.css';
import './style/page.css';
import './style/layout.css';
import './style/cell.css';
import './style/input.css';
import './style/drawing.css';
import './style/as-built.css';
import './style/print.css';
import { batch, computed, effect, type ReadonlySignal, signal, untracked } from '@preact/signals';
import { render } from 'preact';
import type { Table } from '../boat';
import {
  boatInHand,
  createBook,
  createFindings,
  fetchReader,
  freshState,
  isReaderHere,
  keepUnits,
  keptUnits,
  looseCatalogue,
  noBoat,
  savedReader,
  shelfFrom,
  takeInHand,
  textAt,
} from '../notebook';
import { App } from './app';
import type { Bench, Resting } from './bench';
import type { Notice } from './notice';
import type * as Boats from './boat/boats';
import { colours, takeColours } from './layout/colours';
import { type Conflict, keepSaved } from './keeping/keeping';
import { freshSheet, type BenchSheet, sheetFor } from './keeping/sheets';
import { listenForFinder } from './finder/listen';
import { followHash } from './address';
import { addFormulas } from './formulas-here';
import { use } from './html';
import { fetchTheRest, isOwn, openHead, ownTexts, placedOn } from './library';

const shelf = shelfFrom(() => localStorage);
const windowShelf = shelfFrom(() => sessionStorage);
const ownBoat = signal(boatInHand(windowShelf, shelf));
const readWith = signal<ReadonlyMap<string, string | null>>(new Map());
const wanted = computed(() => {
  const head = openHead();
  return sheetFor(head, ownBoat.value, readWith.value, head && isOwn(head.id));
});
// Until the first sheet is laid, there is one with nothing on it.
const sheet = signal<BenchSheet>({ kind: 'loose', key: '', notebook: '', boat: null });
const boats = signal<typeof Boats | null>(null);
const boatless = computed(() => sheet.value.kind === 'loose');
const table: ReadonlySignal<Table> = computed(() => book.state.value.table);
/** The words that her own lines and stations go by; those that every boat has, the reader of notebooks knows. */
const ownWords = computed(() => {
  const { edges, stations } = boats.value?.lists(table.value) ?? { edges: [], stations: [] };
  return new Set([...edges, ...stations].map(({ id }) => id));
});
const placing = computed(() =>
  placedOn(sheet.value.kind === 'loose' ? sheet.value.notebook : null, (word) => ownWords.value.has(word)),
);
const instances = computed(() => placing.value.instances);
const findings = createFindings();
const name: ReadonlySignal<string> = computed(() => book.state.value.name);
/** The notebooks of the builder's boat while another sheet lies on the bench. */
const resting = signal<Resting | null>(null);
const ownNotebooks = computed(() => {
  const { kind, key } = sheet.value;
  if (kind === 'boat' && key === ownBoat.value) return book.state.value.notebooks;
  return resting.value?.boat === ownBoat.value ? resting.value.notebooks : null;
});
ownTexts.value = () => ownNotebooks.value;
/** What the builder calls a boat goes before what her plan does. */
const called = computed(() =>
  table.value.name === name.value ? table.value : { ...table.value, name: name.value },
);
const shown = signal(keptUnits(shelf, ownBoat.peek()));
const book = createBook(
  freshState(noBoat),
  (_, ends) => {
    const placed = instances.value.values();
    const all =
      boatless.value || !boats.value
        ? looseCatalogue(placed)
        : boats.value.catalogueOf(called.value, placed, ends);
    return addFormulas.value?.(all) ?? all;
  },
  findings,
  () => shown.value,
);
const notice = signal<Notice | null>(null);
const conflict = signal<Conflict | null>(null);
const keeping = keepSaved({ book, shelf, notice, conflict });
const boatOpen = signal(false);
const station = signal<string | null>(null);

const bench: Bench = {
  book,
  findings,
  shown,
  rested: signal(0),
  colours: colours,
  name: computed(() => (boatless.value ? openHead()?.title : undefined) ?? name.value),
  table,
  other: computed(() => {
    const second = book.second.value;
    if (!second) return null;
    return book.inHand.value === second
      ? { version: 'first', graph: book.first.value }
      : { version: 'second', graph: second };
  }),
  sheet,
  boatless,
  isLaid: computed(() => sheet.value.key === wanted.value.key),
  ownBoat,
  shelf,
  windowShelf,
  keeping,
  readWith,
  instances,
  remarks: computed(() => placing.value.remarks),
  ownNotebooks,
  resting,
  wall: signal(null),
  asked: signal(null),
  inHand: signal(null),
  boatOpen,
  boatsOpen: signal(false),
  station,
  notice,
  conflict,
  ripple: signal(null),
  misfits: signal([]),
  otherMisfits: signal([]),
  goTo: (name) => void import('./go-to').then(({ goToQuantity }) => goToQuantity(name, bench)),
  openBoat: async (boat) => (await import('./boat/other-boat')).beginBoat(bench, boat),
};

// A window stays with its boat, whatever others take up.
takeInHand(ownBoat.peek(), windowShelf);
takeColours(shelf);
followHash((letters) => void import('./link/arrive').then(({ arrive }) => arrive(letters, bench)));
let onBench: string | null = null;
effect(() => {
  const next = wanted.value;
  if (next.key === onBench) return;
  onBench = next.key;
  untracked(() => bring(next));
});

/** Lays a sheet: at once where all is here that it asks for, else when that has come. */
function bring(next: BenchSheet): void {
  const asksBoats = next.kind !== 'loose' && !boats.peek();
  const asksReader = !isReaderHere() && [next.key, ownBoat.peek()].some((key) => textAt(shelf, key) !== null);
  if (asksBoats || asksReader) void fetchFor(next, asksBoats, asksReader);
  else lay(next);
}

/** For a sheet on which nothing is kept yet: the boat that the open notebook brings along, else the one to begin with. */
function boatFor({ kind, boat }: BenchSheet): Table {
  const fetched = boats.peek();
  if (kind === 'loose' || !fetched) return noBoat;
  return fetched.starter(boat ?? '') ?? fetched.demoBoat;
}

async function fetchFor(next: BenchSheet, asksBoats: boolean, asksReader: boolean): Promise<void> {
  const isHere = await Promise.all([
    asksBoats && import('./boat/boats').then((fetched) => (boats.value = fetched)),
    asksReader && fetchReader(),
  ]).then(
    () => true,
    () => false,
  );
  // By now another may be wanted.
  if (onBench !== next.key) return;
  if (isHere) lay(next);
  else {
    onBench = null;
    notice.value = {
      says: `${asksBoats ? 'The boat' : 'What reads your numbers'} did not arrive. Load the page again when you are online.`,
    };
  }
}

function lay(next: BenchSheet): void {
  const boat = boatFor(next);
  const ownState = () =>
    isReaderHere() ? (savedReader().keptAt(shelf, ownBoat.peek())?.state ?? null) : null;
  batch(() => {
    const { kind, key } = sheet.peek();
    if (kind === 'boat') resting.value = { boat: key, notebooks: book.state.peek().notebooks };
    sheet.value = next;
    boatOpen.value = false;
    station.value = null;
    keeping.take(next.key, () => {
      const head = openHead();
      // No number was kept with the boat for one of the builder's own.
      return freshSheet(next, head && isOwn(head.id) ? undefined : head, boat, ownState);
    });
  });
}

effect(() => keepUnits(shelf, shown.value));
listenForFinder(bench);
effect(() => {
  document.title = `${bench.name.value} · Battenbook`;
});
const start = () => render(use(App, { bench }), document.getElementById('page')!);
// Nothing is to be seen before it is covered.
if (/[?&]wall\b/.test(location.search) || shelf?.getItem('battenbook wall') === 'on')
  void import('./on-wall/wall').then(({ putOnWall }) => putOnWall(bench)).finally(start);
else start();

requestIdleCallback(
  () => {
    void fetchTheRest();
    void import('./watch').then(({ watch }) => watch(bench));
  },
  { timeout: 1500 },
);
