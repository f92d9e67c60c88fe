/** A cell's drawing and chart, both versions; the last good ones stay while a number is missing. */
import type { VNode } from 'preact';
import { useRef } from 'preact/hooks';
import type { Instance } from '../../cells';
import { useBench } from '../bench';
import { html, use } from '../html';
import { later } from '../later';
import { ChartView } from './chart-view';
import { Figure } from './figure';
import { useLive } from './live';
import { type CellPictures, type Made, picturesOf } from './pictures-of';
import { sameData } from './same-data';

const Patterns = later(async () => (await import('./patterns-row')).PatternsRow, 'patterns');

export function Pictures({ instance }: { instance: Instance }) {
  const host = useRef<HTMLDivElement>(null);
  const drawn = useLive(host, useBench(), useDrawing(instance));
  return html`<div class="pictures" ref=${host}>
    ${drawn} ${instance.cell.patterns ? use(Patterns, { instance }) : null}
  </div>`;
}

function useDrawing(instance: Instance): () => VNode {
  const bench = useBench();
  const made = useRef<Record<'first' | 'second', Made | null>>({ first: null, second: null });
  const boat = useRef('');
  return () => {
    const { book, table } = bench;
    // The last good picture of the boat before would pass for this one's.
    if (boat.current !== table.value.name) made.current = { first: null, second: null };
    boat.current = table.value.name;
    const first = picturesOf(instance, book.first.value, bench, made.current.first);
    const graph2 = book.second.value;
    const second = graph2 && picturesOf(instance, graph2, bench, made.current.second);
    made.current = { first: first ?? made.current.first, second };
    const shown = made.current.first?.drawn;
    if (!shown?.drawing && !shown?.chart)
      return html`<p class="no-picture">The drawing waits for the numbers it needs.</p>`;
    return picturesView(shown, second?.drawn ?? null, first === null, heightOf(instance.cell));
  };
}

/** Height that a drawing over the whole width may take, px, and a tall one. */
const WIDE = 640;
const TALL = 1000;

function heightOf({ wide = false }: Instance['cell']): number | undefined {
  if (wide === 'tall') return TALL;
  return wide ? WIDE : undefined;
}

function picturesView(
  { drawing, chart }: CellPictures,
  second: CellPictures | null,
  stale: boolean,
  maxHeight?: number,
): VNode {
  const drawing2 = second?.drawing && !sameData(second.drawing, drawing) ? second.drawing : undefined;
  const chart2 = second?.chart && !sameData(second.chart, chart) ? second.chart : undefined;
  return html`<div>
    ${drawing ? use(Figure, { drawing, second: drawing2, stale, ...(maxHeight ? { maxHeight } : {}) }) : null}
    ${chart ? use(ChartView, { chart, second: chart2, stale }) : null}
  </div>`;
}
