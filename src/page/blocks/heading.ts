import { html } from '../html';
import { inlines } from './inlines';
import type { Show } from './show';

export const heading: Show<'heading'> = ({ level, id, inside }, showing) => {
  const words = inlines(inside, showing);
  if (level <= 1) return html`<h1 id=${id} tabindex="-1">${words}</h1>`;
  return level === 2
    ? html`<h2 id=${id} tabindex="-1">${words}</h2>`
    : html`<h3 id=${id} tabindex="-1">${words}</h3>`;
};
