/** The notebook's column: notices, the boat's sheet while it is open, and the open notebook's text. */
import { useEffect, useRef } from 'preact/hooks';
import type { NotebookHead, NotebookPage } from '../../notebook';
import { type Bench, useBench } from '../bench';
import { html, use } from '../html';
import { later } from '../later';
import { openNotebook, openText } from '../library';
import { Prose } from '../prose';
import { way } from '../address';

const Notices = later(async () => (await import('./notices')).Notices, 'notices');
const PrintHead = later(async () => (await import('./print-head')).PrintHead, 'print-head');
const BoatSheet = later(async () => (await import('../boat/boat-sheet')).BoatSheet, 'boat-sheet');

/** Fetched when somebody goes somewhere: not before the first answer. */
const ways = () => import('./go-to');

export function Column({ head }: { head: NotebookHead }) {
  const bench = useBench();
  const text = useText(head);
  const page = bench.isLaid.value ? text : undefined;
  useShowPlace(head, page);
  useCellInView(bench, page);
  const closeSheet = () => {
    bench.boatOpen.value = false;
    void ways().then(({ goBack }) => goBack());
  };
  return html`<main class="column" id="notebook" tabindex="-1">
    ${use(Notices, {})}
    ${use(PrintHead, { head })}
    ${bench.boatOpen.value ? html`<div class="boat-sheet-place">${use(BoatSheet, { onClose: closeSheet })}</div>` : null}
    <h1 id="notebook-title" tabindex="-1">${head.title}</h1>
    ${head.summary ? html`<p class="summary">${head.summary}</p>` : null}
    ${page ? use(Prose, { page, key: page.id }) : html`<p class="prose fetching" aria-busy="true">Fetching the notebook…</p>`}
  </main>`;
}

/** The text of the notebook, once it is there. */
function useText(head: NotebookHead): NotebookPage | undefined {
  useEffect(() => void openNotebook(head), [head]);
  return openText();
}

/** Goes to the place that the address names; a notebook newly opened begins at its top, and takes the focus there. */
function useShowPlace(head: NotebookHead, page: NotebookPage | undefined): void {
  const { place } = way.value;
  const shown = useRef<NotebookHead | null>(null);
  useEffect(() => {
    if (!page) return;
    const isFirst = shown.current === null;
    const isNew = shown.current !== head;
    shown.current = head;
    const to = place ?? (isNew && !isFirst ? 'notebook-title' : null);
    if (to !== null) void ways().then(({ showPlace }) => showPlace(to));
  }, [head, page, place]);
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
