import { html } from '../html';
import type { Show } from './show';

/** What could not be read, where it stands. */
export const fault: Show<'fault'> = ({ line, says, text }) =>
  html`<p class="notice">Line ${line}: ${says} ${text === '' ? null : html`<code>${text}</code>`}</p>`;
