/** The list of a cell's marks one by one: the one in hand large, the next under the thumb. */
import { useEffect, useRef } from 'preact/hooks';
import type { CardTable } from '../card/card-table';
import { headed } from '../card/versions';
import { html } from '../html';

export interface MarksProps {
  readonly table: CardTable;
  /** The mark in hand; null until one is: then it begins where the cell stands, else at the first. */
  readonly mark: number | null;
  readonly onMark: (mark: number) => void;
}

export function Marks({ table, mark, onMark }: MarksProps) {
  const { rows, columns } = table;
  const list = useRef<HTMLOListElement>(null);
  const begin = Math.max(
    0,
    rows.findIndex(({ inHand }) => inHand),
  );
  const at = Math.min(mark ?? begin, rows.length - 1);
  const row = rows[at]!; // there is a table only where there are rows
  useEffect(() => list.current?.querySelector('[aria-current]')?.scrollIntoView({ block: 'nearest' }), [at]);
  return html`<section class="bench-marks" aria-label=${table.caption}>
    <p class="bench-label">${table.caption}</p>
    <div class="bench-mark" role="status">
      <h2>${row.head} <span class="bench-of">${at + 1} of ${rows.length}</span></h2>
      <dl>
        ${columns.map(
          (column, index) => html`<div>
            <dt>${column}</dt>
            ${row.cells[index]?.map((said) => html`<dd>${headed(said)}</dd>`)}
          </div>`,
        )}
      </dl>
    </div>
    <ol class="bench-list" ref=${list}>
      ${rows.map(
        ({ head, cells }, index) => html`<li key=${head}>
          <button type="button" aria-current=${index === at ? 'true' : undefined} onClick=${() => onMark(index)}>
            <span>${head}</span> <span>${cells[0]?.map(headed)}</span>
          </button>
        </li>`,
      )}
    </ol>
    <div class="bench-turn">
      <button type="button" class="turn" disabled=${at === 0} onClick=${() => onMark(at - 1)}>Back</button>
      <button type="button" class="turn next" disabled=${at === rows.length - 1} onClick=${() => onMark(at + 1)}>Next</button>
    </div>
  </section>`;
}
