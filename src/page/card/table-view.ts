/** A card's table: in as many parts as its columns need, and with as many rows as there is room for. */
import type { VNode } from 'preact';
import { html } from '../html';
import type { CardRow, CardTable } from './card-table';
import { headed } from './versions';

export interface TableSetting {
  /** Into how many the columns are parted, one part below the other. */
  readonly parts: number;
  /** Where the text in its columns may go on in a further line. */
  readonly breaks: 'nowhere' | 'between words' | 'anywhere';
  /** How many rows stand; the others are counted. */
  readonly rows: number;
}

export function tableView(table: CardTable, { parts, breaks, rows: room }: TableSetting): VNode {
  const each = Math.ceil(table.columns.length / parts);
  const starts = Array.from({ length: Math.ceil(table.columns.length / each) }, (_, part) => part * each);
  const rows = rowsWithin(table.rows, room);
  const left = table.rows.length - rows.length;
  return html`<div class="card-table" data-breaks=${breaks}>
    <p><b>${table.caption}</b></p>
    ${rows.length > 0 ? starts.map((start) => columnsView(table, rows, start, start + each)) : null}
    ${left > 0 ? html`<p>${left} ${rows.length > 0 ? 'more ' : ''}${left === 1 ? 'row' : 'rows'} in the notebook.</p>` : null}
  </div>`;
}

/** From the first on; the row in hand is among them, last if it stands further down. */
function rowsWithin(rows: readonly CardRow[], room: number): readonly CardRow[] {
  if (rows.length <= room) return rows;
  const first = rows.slice(0, room);
  const inHand = rows.find((row) => row.inHand);
  return !inHand || room === 0 || first.includes(inHand) ? first : [...first.slice(0, -1), inHand];
}

function columnsView(
  { over, columns }: CardTable,
  rows: readonly CardRow[],
  start: number,
  end: number,
): VNode {
  return html`<table>
    <thead>
      <tr>
        <th scope="col">${over}</th>
        ${columns.slice(start, end).map((label) => html`<th scope="col">${label}</th>`)}
      </tr>
    </thead>
    <tbody>
      ${rows.map(
        ({ head, inHand, cells }) => html`<tr class=${inHand ? 'in-hand' : ''}>
          <th scope="row">${head}${inHand ? ', in hand' : ''}</th>
          ${cells
            .slice(start, end)
            .map((said) => html`<td>${said.map((one) => html`<span>${headed(one)}</span>`)}</td>`)}
        </tr>`,
      )}
    </tbody>
  </table>`;
}
