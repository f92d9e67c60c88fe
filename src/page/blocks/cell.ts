import { Fragment } from 'preact';
import { useBench } from '../bench';
import { CellView } from '../cell/cell-view';
import { html, use } from '../html';
import { openText } from '../library';
import type { Show } from './show';

/** Keyed by its name, so that it stays the same element when the text above it changes. */
export const cell: Show<'cell'> = ({ instance, again = 0, line }) =>
  use(PlacedCell, { key: `${instance} ${again}`, instance, line });

function PlacedCell({ instance, line }: { instance: string; line: number }) {
  const bench = useBench();
  const text = openText();
  const place = text?.places.find((one) => one.instance === instance);
  const remark = place && bench.remarks.value.get(place);
  const placed = bench.instances.value.get(instance);
  const told = remark && html`<p class="notice">Line ${line}: ${remark.says}</p>`;
  if (remark?.stops) return told;
  return html`<${Fragment}>
    ${told}
    ${
      placed
        ? // Whether a heading of the second level stands above it; one that is open alone has none.
          use(CellView, { instance: placed, under: !text?.form && (text?.headings.length ?? 0) > 0 })
        : html`<p class="cell fetching" aria-busy="true">Fetching the cell…</p>`
    }
  <//>`;
}
