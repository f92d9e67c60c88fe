/** How the cell was checked against the outside world; fetched when asked for. */
import { useEffect, useState } from 'preact/hooks';
import { html } from '../html';

interface CheckRow {
  readonly id: string;
  readonly cell: string;
  readonly what: string;
  readonly input: string;
  readonly expected: readonly number[];
  readonly obtained: readonly number[];
  readonly unit: string;
  readonly source: string;
  readonly known: string;
}

/** @param of words that tell this cell's table from those of the others on the page */
export function Checks({ cell, of }: { cell: string; of: string }) {
  const [rows, setRows] = useState<readonly CheckRow[] | null>(null);
  useEffect(() => {
    void import('../../../docs/check-book.json').then((book) => {
      setRows((book.default as readonly CheckRow[]).filter((row) => row.cell === cell));
    });
  }, [cell]);
  if (rows === null) return html`<p>Fetching the checks…</p>`;
  if (rows.length === 0) return html`<p>No check against an outside source is recorded for this cell.</p>`;
  return html`<div class="table-wrap" tabindex="0" role="group" aria-label=${`Checks: ${of}`}>
    <table>
      <caption>Checked against</caption>
      <thead>
        <tr><th scope="col">What</th><th scope="col">Given</th><th scope="col">Expected</th><th scope="col">Obtained</th><th scope="col">Source</th></tr>
      </thead>
      <tbody>
        ${rows.map(
          (row) => html`<tr>
            <th scope="row">${row.what}</th>
            <td>${row.input}</td>
            <td>${row.expected.join('; ')} ${row.unit}</td>
            <td>${row.obtained.join('; ')} ${row.unit}</td>
            <td>${row.source} (${row.known})</td>
          </tr>`,
        )}
      </tbody>
    </table>
  </div>`;
}
