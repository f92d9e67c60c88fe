/** A notebook's text laid out: plain JSON in, vnodes out. Nothing is ever set as HTML. */
import { signal } from '@preact/signals';
import type { NotebookPage } from '../notebook';
import { blockViews } from './blocks/kinds';
import { html } from './html';

/** Leads from words of the trade to what they mean, once that is there. */
export const wordLinks = signal((page: NotebookPage) => page);

export function Prose({ page }: { page: NotebookPage }) {
  return html`<article class="prose">${blockViews(wordLinks.value(page).blocks, page.id)}</article>`;
}
