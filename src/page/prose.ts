/** A notebook's text laid out: plain JSON in, vnodes out. Nothing is ever set as HTML. */
import type { NotebookPage } from '../notebook';
import { blockViews } from './blocks/kinds';
import { html } from './html';
import { wordLinks } from './word-links';

export function Prose({ page }: { page: NotebookPage }) {
  return html`<article class="prose">${blockViews(wordLinks.value(page).blocks, page.id)}</article>`;
}
