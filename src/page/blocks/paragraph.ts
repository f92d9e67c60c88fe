import { html } from '../html';
import { inlines } from './inlines';
import type { Show } from './show';

export const paragraph: Show<'paragraph'> = ({ inside }, showing) => html`<p>${inlines(inside, showing)}</p>`;
