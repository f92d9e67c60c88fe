/** The contents list: the notebooks in order, and the headings of the one that is open. */
import { headingsOf, type NotebookHead } from '../../notebook';
import { html } from '../html';
import { openText, shelf } from '../library';
import { wayTo } from '../address';

export function Contents({ open }: { open: NotebookHead }) {
  const text = openText();
  const headings = text ? headingsOf(text) : [];
  return html`<nav class="contents" aria-label="Notebooks">
    <details open=${matchMedia('(min-width: 62rem)').matches}>
      <summary>Contents</summary>
      <ul>
        ${shelf.map(
          (page) => html`<li>
            <a href=${wayTo(page.id)} aria-current=${page === open ? 'page' : undefined}>${page.title}</a>
            ${
              page === open && headings.length > 0
                ? html`<ul class="within">${headings.map(({ id, text }) => html`<li><a href=${wayTo(page.id, id)}>${text}</a></li>`)}</ul>`
                : null
            }
          </li>`,
        )}
      </ul>
    </details>
  </nav>`;
}
