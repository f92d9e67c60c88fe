/** The page: masthead, contents, the open notebook, and the hull alongside. */
import { useEffect, useState } from 'preact/hooks';
import type { NotebookHead, NotebookPage } from '../notebook';
import { type Bench, BenchContext, useBench } from './bench';
import { Contents } from './contents';
import { way } from './hash-way';
import { html, use } from './html';
import { later } from './later';
import { openNotebook, shelf } from './library';
import { Masthead } from './masthead';
import { Prose } from './prose';
import { VersionsView } from './versions-view';

const HullInSight = later(async () => (await import('./hull-in-sight')).HullInSight, 'hull-in-sight');
const BoatSheet = later(async () => (await import('./boat-sheet')).BoatSheet, 'boat-sheet');
const RippleView = later(async () => (await import('./ripple-view')).RippleView, 'ripple');

export function App({ bench }: { bench: Bench }) {
  const open = shelf.find((head) => head.id === way.value.notebook) ?? shelf[0];
  if (!open) return html`<p>There is no notebook on the shelf.</p>`;
  return use(
    BenchContext.Provider,
    { value: bench },
    html`<a class="skip" href="#notebook">To the notebook</a>
      `,
    use(Masthead, {}),
    html`<div class="frame">
      ${use(Contents, { open })}
      ${use(Column, { head: open })}
      ${use(Alongside, {})}
    </div>`,
  );
}

function Column({ head }: { head: NotebookHead }) {
  const bench = useBench();
  const page = useText(head);
  useScrollToPlace(page);
  useCellInView(bench, page);
  return html`<main class="column" id="notebook" tabindex="-1">
    ${bench.notice.value === null ? null : html`<div class="notice" role="alert"><p>${bench.notice.value}</p><button type="button" onClick=${() => (bench.notice.value = null)}>Understood</button></div>`}
    ${use(Conflicted, {})}
    ${bench.boatOpen.value ? html`<div class="boat-sheet-place">${use(BoatSheet, {})}<button type="button" onClick=${() => (bench.boatOpen.value = false)}>Close the boat's sheet</button></div>` : null}
    <h1>${head.title}</h1>
    ${page ? use(Prose, { page, key: page.id }) : html`<p aria-busy="true">Fetching the notebook…</p>`}
  </main>`;
}

/** The text of the notebook; while the next one is fetched, the last one goes. */
function useText(head: NotebookHead): NotebookPage | undefined {
  const [page, setPage] = useState<NotebookPage | undefined>(undefined);
  useEffect(() => {
    let wanted = true;
    void openNotebook(head).then((text) => {
      if (wanted) setPage(text);
    });
    return () => {
      wanted = false;
    };
  }, [head]);
  return page?.id === head.id ? page : undefined;
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

function useScrollToPlace(page: NotebookPage | undefined): void {
  const { place } = way.value;
  useEffect(() => {
    if (!page) return;
    if (place) document.getElementById(place)?.scrollIntoView();
    else scrollTo(0, 0);
  }, [page, place]);
}

/** The cell nearest the upper middle of the window is the one in hand. */
function useCellInView(bench: Bench, page: NotebookPage | undefined): void {
  // Cells come one by one after the text; each arrival is a new element to watch.
  const arrived = bench.instances.value;
  useEffect(() => {
    const observer = new IntersectionObserver(
      (entries) => {
        for (const entry of entries) {
          if (entry.isIntersecting && !document.activeElement?.closest('.cell'))
            bench.inHand.value = (entry.target as HTMLElement).dataset['cell'] ?? null;
        }
      },
      { rootMargin: '-40% 0px -55% 0px' },
    );
    for (const cell of document.querySelectorAll('.cell')) observer.observe(cell);
    return () => observer.disconnect();
  }, [bench, page, arrived]);
}
