import { html } from '../html';
import type { Show } from './show';

export const quote: Show<'quote'> = (block, { blocks }) =>
  html`<blockquote>${blocks(block.blocks)}</blockquote>`;
