/** The contents list: the notebooks by stage, and the headings of the one that is open. */
import type { NotebookPage } from '../notebook';
import { wayTo } from './hash-way';
import { html } from './html';

export function Contents({ notebooks, open }: { notebooks: readonly NotebookPage[]; open: NotebookPage }) {
  return html`<nav class="contents" aria-label="Notebooks">
    <details open=${matchMedia('(min-width: 62rem)').matches}>
      <summary>Contents</summary>
      <ul>
        ${notebooks.map(
          (page) => html`<li>
            <a href=${wayTo(page.id)} aria-current=${page === open ? 'page' : undefined}>${page.title}</a>
            ${page === open ? html`<ul class="within">${headingsOf(page).map(({ id, text }) => html`<li><a href=${wayTo(page.id, id)}>${text}</a></li>`)}</ul>` : null}
          </li>`,
        )}
      </ul>
    </details>
  </nav>`;
}

function headingsOf(page: NotebookPage): { id: string; text: string }[] {
  return page.blocks.flatMap((block) =>
    block.type === 'heading' && block.level === 2
      ? [{ id: block.id, text: block.inside.map((inline) => ('text' in inline ? inline.text : '')).join('') }]
      : [],
  );
}
