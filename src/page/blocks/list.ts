import { html } from '../html';
import type { Show } from './show';

export const list: Show<'list'> = ({ from, items }, { blocks }) => {
  const all = items.map((item) => html`<li>${blocks(item)}</li>`);
  return from === null ? html`<ul>${all}</ul>` : html`<ol start=${from}>${all}</ol>`;
};
