/** A cell's drawing and chart, both versions; the last good ones stay while a number is missing. */
import type { FunctionComponent, VNode } from 'preact';
import { useRef } from 'preact/hooks';
import type { Instance } from '../../cells';
import type { Grip, Sheet } from '../../drawing';
import { useBench } from '../bench';
import { html, use } from '../html';
import { ChartView } from './chart-view';
import { Figure } from './figure';
import { useLive } from './live';
import { type CellPictures, type Made, picturesOf, type Which } from './pictures-of';
import { sameData } from './same-data';

interface PicturesProps {
  readonly instance: Instance;
  readonly which: readonly Which[];
  /** By what things are moved in the drawing of the version in hand, where it has such. */
  readonly over?: FunctionComponent<{ instance: Instance; grips: readonly Grip[]; sheet: Sheet }>;
}

export function Pictures(props: PicturesProps) {
  const host = useRef<HTMLDivElement>(null);
  const drawn = useLive(host, useBench(), useDrawing(props));
  return html`<div class="pictures" ref=${host}>${drawn}</div>`;
}

function useDrawing({ instance, which, over }: PicturesProps): () => VNode {
  const bench = useBench();
  const made = useRef<Record<'first' | 'second', Made | null>>({ first: null, second: null });
  const boat = useRef('');
  return () => {
    const { book, table } = bench;
    // The last good picture of the boat before would pass for this one's.
    if (boat.current !== table.value.name) made.current = { first: null, second: null };
    boat.current = table.value.name;
    const first = picturesOf(which, instance, book.first.value, bench, made.current.first);
    const graph2 = book.second.value;
    const second = graph2 && picturesOf(which, instance, graph2, bench, made.current.second);
    made.current = { first: first ?? made.current.first, second };
    const shown = made.current.first?.drawn;
    if (!shown?.drawing && !shown?.chart)
      return html`<p class="no-picture">The drawing waits for the numbers it needs.</p>`;
    const inHand = graph2 && book.inHand.value === graph2 ? second : first;
    const grips = inHand?.drawn.drawing?.grips;
    const gripped = over && grips ? (sheet: Sheet) => use(over, { instance, grips, sheet }) : undefined;
    return picturesView(shown, second?.drawn ?? null, first === null, heightOf(instance.cell), gripped);
  };
}

/** What a drawing over the whole width may take in height, px, and a tall one, there or beside the fields. */
const WIDE = 480;
const WIDE_AND_TALL = 690;
const TALL = 540;

function heightOf({ wide = false, tall = false }: Instance['cell']): number | undefined {
  if (wide) return tall ? WIDE_AND_TALL : WIDE;
  return tall ? TALL : undefined;
}

function picturesView(
  { drawing, chart }: CellPictures,
  second: CellPictures | null,
  stale: boolean,
  maxHeight: number | undefined,
  over: ((sheet: Sheet) => VNode) | undefined,
): VNode {
  const drawing2 = second?.drawing && !sameData(second.drawing, drawing) ? second.drawing : undefined;
  const chart2 = second?.chart && !sameData(second.chart, chart) ? second.chart : undefined;
  return html`<div>
    ${drawing ? use(Figure, { drawing, second: drawing2, stale, over, ...(maxHeight ? { maxHeight } : {}) }) : null}
    ${chart ? use(ChartView, { chart, second: chart2, stale }) : null}
  </div>`;
}
