/** The keys in the head of a cell: to lay it at the bench, and to print it by itself. */
import type { Instance } from '../../cells';
import { BenchKey } from '../at-bench/bench-key';
import { CardKey } from '../card/card-key';
import { html, use } from '../html';

export function CellKeys({ instance }: { instance: Instance }) {
  return html`<div class="cell-keys">${use(BenchKey, { instance })} ${use(CardKey, { instance })}</div>`;
}
