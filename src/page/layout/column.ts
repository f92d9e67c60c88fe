/** The notebook's column: notices, the boat's sheet while it is open, and the open notebook's text. */
import { useEffect } from 'preact/hooks';
import type { NotebookHead, NotebookPage } from '../../notebook';
import { type Bench, useBench } from '../bench';
import { html, use } from '../html';
import { later } from '../later';
import { isOwn, openNotebook, openText } from '../library';
import { isWritten, Prose } from '../prose';
import { way } from '../address';

const Notices = later(async () => (await import('./notices')).Notices, 'notices');
const PrintHead = later(async () => (await import('./print-head')).PrintHead, 'print-head');
const BoatSheet = later(async () => (await import('../boat/boat-sheet')).BoatSheet, 'boat-sheet');

const Questions = later(async () => (await import('../quick/questions')).Questions, 'questions');

const OwnLine = later(async () => (await import('../writing/own-line')).OwnLine, 'own-line');
const NotHere = later(async () => (await import('../notebooks/not-here')).NotHere, 'not-here');

/** Fetched when somebody goes somewhere: not before the first answer. */
const ways = () => import('../go-to');

export function Column({ head }: { head: NotebookHead }) {
  const bench = useBench();
  const text = useText(head);
  const page = bench.isLaid.value && isCovered(text, bench) ? text : undefined;
  useShowPlace(head, page, bench);
  const { notebook: asked } = way.value;
  const isOther = asked !== null && asked !== head.id;
  const closeSheet = () => {
    bench.boatOpen.value = false;
    void ways().then(({ goBack }) => goBack());
  };
  return html`<main class="column" id="notebook" tabindex="-1">
    ${use(Notices, {})}
    ${use(PrintHead, { head })}
    ${bench.boatOpen.value ? html`<div class="boat-sheet-place">${use(BoatSheet, { onClose: closeSheet })}</div>` : null}
    ${isOther ? use(NotHere, { asked: asked ?? '' }) : null}
    <h1 id="notebook-title" tabindex="-1">${head.title}</h1>
    ${text?.summary ? html`<p class="summary">${text.summary}</p>` : null}
    ${bench.ownNotebooks.value && isOwn(head.id) ? use(OwnLine, { id: head.id }) : null}
    ${page ? use(page.form && !isWritten(page.id) ? Questions : Prose, { page, key: page.id }) : fetching()}
  </main>`;
}

/** Nothing is to be seen before what a question asks for is covered. */
function isCovered(text: NotebookPage | undefined, bench: Bench): boolean {
  if (bench.asked.value || !text?.blocks.some(({ type }) => type === 'ask')) return true;
  void import('../blocks/seldom').then(({ coverAsked }) => coverAsked(bench));
  return false;
}

export const fetching = () => html`<p class="prose fetching" aria-busy="true">Fetching the notebook…</p>`;

/** The text of the notebook, once it is there. */
function useText(head: NotebookHead): NotebookPage | undefined {
  const { place } = way.value;
  useEffect(() => void openNotebook(head, place), [head, place]);
  return openText();
}

/** The notebook last shown; the column itself goes while one of the builder's own is fetched. */
let shown: string | null = null;

/** Goes to the place that the address names; a notebook newly opened begins at its top, and takes the focus there. */
function useShowPlace(head: NotebookHead, page: NotebookPage | undefined, bench: Bench): void {
  const { place } = way.value;
  const { id } = head;
  const isThere = page !== undefined;
  // A text that is read anew is the same notebook still, and nobody is led away from where they are.
  useEffect(() => {
    if (!isThere) return;
    const isFirst = shown === null;
    const isNew = shown !== id;
    shown = id;
    const to = place ?? (isNew && !isFirst ? 'notebook-title' : null);
    if (to !== null) void ways().then(({ goToNamed }) => goToNamed(to, bench));
  }, [id, isThere, place, bench]);
}
