/** The page: masthead, contents, the open notebook, and the hull alongside. */
import { useEffect, useState } from 'preact/hooks';
import type { NotebookPage } from '../notebook';
import { type Bench, BenchContext, useBench } from './bench';
import { BoatSheet } from './boat-sheet';
import { Contents } from './contents';
import { way } from './hash-way';
import { HullInSight } from './hull-in-sight';
import { html, use } from './html';
import { Masthead } from './masthead';
import { Prose } from './prose';
import { RippleView } from './ripple-view';
import { VersionsView } from './versions-view';

export function App({ bench, notebooks }: { bench: Bench; notebooks: readonly NotebookPage[] }) {
  const open = notebooks.find((page) => page.id === way.value.notebook) ?? notebooks[0];
  if (!open) return html`<p>There is no notebook on the shelf.</p>`;
  return use(
    BenchContext.Provider,
    { value: bench },
    html`<a class="skip" href="#notebook">To the notebook</a>
      `,
    use(Masthead, {}),
    html`<div class="frame">
      ${use(Contents, { notebooks, open })}
      ${use(Column, { page: open })}
      ${use(Alongside, {})}
    </div>`,
  );
}

function Column({ page }: { page: NotebookPage }) {
  const bench = useBench();
  useScrollToPlace(page);
  useCellInView(bench, page);
  return html`<main class="column" id="notebook" tabindex="-1">
    ${bench.notice.value === null ? null : html`<div class="notice" role="alert"><p>${bench.notice.value}</p><button type="button" onClick=${() => (bench.notice.value = null)}>Understood</button></div>`}
    ${use(Conflicted, {})}
    ${bench.boatOpen.value ? html`<div class="boat-sheet-place">${use(BoatSheet, {})}<button type="button" onClick=${() => (bench.boatOpen.value = false)}>Close the boat's sheet</button></div>` : null}
    ${use(Prose, { page, key: page.id })}
  </main>`;
}

function Conflicted() {
  const conflict = useBench().conflict.value;
  if (!conflict) return null;
  return html`<div class="notice" role="alert">
    <p>${conflict.says}</p>
    <button type="button" onClick=${conflict.keepMine}>Keep this window’s</button>
    <button type="button" onClick=${conflict.takeTheirs}>Take the other window’s</button>
  </div>`;
}

function Alongside() {
  const bench = useBench();
  const [open, setOpen] = useState(false);
  return html`<aside class=${`alongside ${open ? 'open' : ''}`} aria-label="The hull and what moves">
    ${use(HullInSight, { open, onOpen: () => setOpen(!open) })}
    <p class="sheet-key"><button type="button" aria-pressed=${bench.boatOpen.value} onClick=${() => bench.goTo('boat')}>The boat’s own sheet</button></p>
    ${use(VersionsView, {})}
    ${use(RippleView, {})}
  </aside>`;
}

function useScrollToPlace(page: NotebookPage): void {
  const { place } = way.value;
  useEffect(() => {
    if (place) document.getElementById(place)?.scrollIntoView();
    else scrollTo(0, 0);
  }, [page, place]);
}

/** The cell nearest the upper middle of the window is the one in hand. */
function useCellInView(bench: Bench, page: NotebookPage): void {
  useEffect(() => {
    const observer = new IntersectionObserver(
      (entries) => {
        for (const entry of entries) {
          if (entry.isIntersecting && !document.activeElement?.closest('.cell')) bench.inHand.value = (entry.target as HTMLElement).dataset['cell'] ?? null;
        }
      },
      { rootMargin: '-40% 0px -55% 0px' },
    );
    for (const cell of document.querySelectorAll('.cell')) observer.observe(cell);
    return () => observer.disconnect();
  }, [bench, page]);
}
