/** The contents list: the notebooks in order, and the headings of the one that is open. */
import { signal } from '@preact/signals';
import type { NotebookHead } from '../../notebook';
import { html, use } from '../html';
import { later } from '../later';
import { isOwn, notebooks, openText } from '../library';
import { wayTo } from '../address';

const NotebookKeys = later(
  async () => (await import('../writing/notebook-keys')).NotebookKeys,
  'notebook-keys',
);

/** The heading under which the cell in hand stands. */
export const here = signal<string | null>(null);

export function Contents({ open }: { open: NotebookHead | undefined }) {
  const headings = openText()?.headings ?? [];
  return html`<nav class="contents" aria-label="Notebooks">
    <details open=${matchMedia('(min-width: 78rem)').matches}>
      <summary>Contents</summary>
      <ul>
        ${notebooks.value.map(
          (page) => html`<li>
            <a href=${wayTo(page.id)} aria-current=${page === open ? 'page' : undefined}>${page.title}${isOwn(page.id) ? html` <span class="yours">yours</span>` : null}</a>
            ${
              page === open && headings.length > 0
                ? html`<ul class=${headings.every(({ text }) => text.length === 1) ? 'within letters' : 'within'}>${headings.map(({ id, text }) => html`<li><a href=${wayTo(page.id, id)} aria-current=${id === here.value ? 'location' : undefined}>${text}</a></li>`)}</ul>`
                : null
            }
          </li>`,
        )}
      </ul>
      ${use(NotebookKeys, {})}
    </details>
  </nav>`;
}
