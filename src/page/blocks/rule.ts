import { html } from '../html';
import type { Show } from './show';

export const rule: Show<'rule'> = () => html`<hr />`;
