/** The way to a quantity: to its place on the page if it has one, to another notebook, or to the boat's own sheet. */
import { countsNow, lists, shopGroups } from '../boat';
import type { Bench } from './bench';
import type { NotebookHead } from '../notebook';
import { allOnShelf, notebooks, notebookWith, openHead } from './library';
import { mineOpen } from './mine-open';
import { wayTo } from './address';
import { logOpen } from './log-open';

/** How long a place may take to be fetched and drawn before the search ends, ms. */
const PATIENCE = 3000;

/** Where the last jump began, for the way back. */
let from: string | null = null;

/** `boat` names the sheet itself, `boats` the list of boats, `log` her log, `mine` the formulas of the builder's own. */
export function goToQuantity(wanted: string, bench: Bench): void {
  if (wanted === 'boats') {
    bench.boatsOpen.value = true;
    showPlace('own-boats-title');
    return;
  }
  if (wanted === 'log') {
    logOpen.value = true;
    showPlace('log-title');
    return;
  }
  if (/^mine(\.|$)/.test(wanted)) {
    mineOpen.value = true;
    showPlace(wanted === 'mine' ? 'mine-title' : wanted);
    return;
  }
  // What no quantity is called lies in the hull as a whole.
  const name = bench.book.inHand.peek().has(wanted) ? wanted : 'boat';
  from = document.activeElement?.closest<HTMLElement>('[data-quantity]')?.dataset['quantity'] ?? null;
  if (name !== 'boat' && show(placeOf(name))) return;
  if (name === 'boat' && bench.boatless.peek()) return;
  const [part = ''] = name.split('.');
  const head = homeOf(part);
  if (head && head !== openHead()) location.hash = wayTo(head.id, name);
  else if (head) showPlace(name);
  else openSheetAt(name, part, bench);
}

/**
 * The way to what an address names: where it stands in this notebook, in the one that has its cell, or on the boat's own
 * sheet. Nothing else goes by a name that a number could have.
 */
export function goToNamed(place: string, bench: Bench): void {
  const [part = ''] = place.replace(/^(?:cell|question)-/, '').split('.');
  const head = document.getElementById(place) ? undefined : homeOf(part);
  const isHers = !head && !bench.boatless.peek() && bench.book.inHand.peek().has(place);
  if (head && head !== openHead()) location.replace(wayTo(head.id, place));
  else if (isHers) goToQuantity(place, bench);
  else showPlace(place);
}

/** The notebook in which a cell or a formula stands; of a formula in several, the open one, else the first. */
function homeOf(part: string): NotebookHead | undefined {
  const withFormula = allOnShelf().pages.filter(({ formulas }) =>
    formulas?.some(({ name }) => name === part),
  );
  const open = openHead()?.id;
  const page = withFormula.find(({ id }) => id === open) ?? withFormula[0];
  return notebookWith(part) ?? notebooks.peek().find(({ id }) => id === page?.id);
}

function openSheetAt(name: string, part: string, bench: Bench): void {
  if (lists(bench.table.peek()).stations.some((station) => station.id === part)) bench.station.value = part;
  bench.boatOpen.value = true;
  showPlace(name === 'boat' ? 'boat-sheet-title' : askedFor(name, bench), [
    `part-${part}`,
    'boat-sheet-title',
  ]);
}

/** The number itself, or the choice that it hangs on where it is not asked as things stand. */
function askedFor(name: string, { book }: Bench): string {
  const graph = book.inHand.peek();
  const entry = Object.values(shopGroups)
    .flat()
    .find((one) => one.name === name);
  return entry?.asked && !countsNow(entry, (of) => graph.value(of)) ? entry.asked.by : name;
}

/** Back to the field that the last jump began at, or to the top of the notebook. */
export function goBack(): void {
  showPlace(from ?? 'notebook');
  from = null;
}

/**
 * Shows a place as soon as it is there: a quantity's, or an element's by its id. Until then its cell is shown, and for
 * good where the number has no place of its own there.
 */
export function showPlace(place: string, otherwise: readonly string[] = []): void {
  if (show(placeOf(place))) return;
  const isInCell = show(document.getElementById(`cell-${place.split('.')[0]}`));
  const stop = () => {
    watcher.disconnect();
    clearTimeout(timer);
  };
  const watcher = new MutationObserver(() => {
    if (show(placeOf(place))) stop();
  });
  watcher.observe(document.body, { childList: true, subtree: true });
  const timer = setTimeout(() => {
    stop();
    if (isInCell) return;
    [`cell-${place.split('.')[0]}`, ...otherwise].some((id) => show(document.getElementById(id)));
  }, PATIENCE);
}

function placeOf(place: string): Element | null {
  const found =
    document.getElementById(place) ??
    document.querySelector(`[data-quantity="${CSS.escape(place)}"]`) ??
    document.getElementById(`cell-${place}`);
  if (!found) openWhatHolds(place);
  return found;
}

/** Opens what makes its inside only when asked; the place is there in the next turn. */
function openWhatHolds(name: string): void {
  for (const details of document.querySelectorAll<HTMLDetailsElement>('details[data-holds]')) {
    if (name.startsWith(details.dataset['holds'] ?? '?')) details.open = true;
  }
}

/** On a longer way cells fill in as they go by, and the place is no longer where the glide was bound for. */
function mayGlide(element: Element): boolean {
  const { top, bottom } = element.getBoundingClientRect();
  const isNear = bottom > -innerHeight && top < 2 * innerHeight;
  return isNear && !matchMedia('(prefers-reduced-motion: reduce)').matches;
}

function show(element: Element | null): boolean {
  if (!(element instanceof HTMLElement)) return false;
  for (let at: Element | null = element; at; at = at.parentElement)
    if (at instanceof HTMLDetailsElement) at.open = true;
  const isField = element.dataset['quantity'] !== undefined;
  const block = isField ? 'center' : 'start';
  const glides = mayGlide(element);
  element.scrollIntoView({ block, behavior: glides ? 'smooth' : 'instant' });
  const target = (isField && element.querySelector<HTMLElement>('input, select')) || element;
  if (target === element && !element.matches('[tabindex], a, button, input, select')) element.tabIndex = -1;
  target.focus({ preventScroll: true });
  if (!glides) holdInView(element, block);
  return true;
}

/** Keeps the place where it was brought while what stands above it fills in, until the reader does anything. */
function holdInView(element: Element, block: ScrollLogicalPosition): void {
  const over = new AbortController();
  const { signal } = over;
  const watcher = new ResizeObserver(() => element.scrollIntoView({ block, behavior: 'instant' }));
  watcher.observe(document.body);
  signal.addEventListener('abort', () => watcher.disconnect());
  const stop = () => over.abort();
  for (const act of ['wheel', 'touchstart', 'pointerdown', 'keydown', 'input', 'focusin'])
    addEventListener(act, stop, { signal, capture: true, passive: true });
  setTimeout(stop, PATIENCE);
}
