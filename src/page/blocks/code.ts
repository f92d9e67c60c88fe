import { html } from '../html';
import type { Show } from './show';

export const code: Show<'code'> = ({ text }) => html`<pre><code>${text}</code></pre>`;
