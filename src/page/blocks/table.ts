import { html } from '../html';
import { inlines } from './inlines';
import type { Show } from './show';

export const table: Show<'table'> = ({ align, head, rows }, showing) => {
  const at = (column: number) => ({ 'data-align': align[column] ?? 'left' });
  return html`<div class="table-wrap"><table>
    <thead><tr>${head.map((cell, column) => (cell.length === 0 ? html`<td></td>` : html`<th scope="col" ...${at(column)}>${inlines(cell, showing)}</th>`))}</tr></thead>
    <tbody>${rows.map((row) => html`<tr>${row.map((cell, column) => html`<td ...${at(column)}>${inlines(cell, showing)}</td>`)}</tr>`)}</tbody>
  </table></div>`;
};
