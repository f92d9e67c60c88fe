/**
 * A graph: its place is kept from the first paint, and Plot, which draws it, is fetched when the
 * first graph is asked for. Each change asks the queue of redraw.ts for one drawing.
 */
import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { Chart } from '../../cells';
import { useBench, versionWords } from '../bench';
import { html, use } from '../html';
import type { drawChart } from './chart';
import type { Extents } from './chart-axis';
import { ChartTable } from './chart-table';
import { redraw } from './redraw';
import { useWidth } from './width';

export interface ChartViewProps {
  readonly chart: Chart;
  readonly second?: Chart | undefined;
  readonly stale?: boolean;
}

/** Plot, once it has come; drawing is then done at once, as printing needs. */
let draw: typeof drawChart | null = null;
/** Fetches what draws graphs. */
export const plotHere = () => import('./chart').then((module) => (draw = module.drawChart));

export function ChartView({ chart, second, stale = false }: ChartViewProps) {
  const { shown } = useBench();
  const host = useRef<HTMLDivElement>(null);
  const extents = useRef<Extents | null>(null);
  const [ready, setReady] = useState(draw !== null);
  const width = useWidth(host);
  const units = shown.value;
  useLayoutEffect(() => {
    if (!ready) void plotHere().then(() => setReady(true));
  }, [ready]);
  useLayoutEffect(() => {
    if (width === null) return;
    const show = () => {
      if (!host.current || !draw) return;
      const drawn = draw(chart, second, {
        width,
        shown: units,
        names: versionWords,
        extents: extents.current,
      });
      extents.current = drawn.extents;
      host.current.replaceChildren(drawn.figure);
    };
    if (matchMedia('print').matches) show();
    else redraw(show);
  }, [chart, second, width, units, ready]);
  return html`<figure class=${stale ? 'chart stale' : 'chart'}>
    <figcaption class="chart-title">${chart.title}</figcaption>
    <div class="chart-place" ref=${host}></div>
    <p class="chart-says">${chart.says}</p>
    ${second ? html`<p class="chart-says other second">${versionWords.second}: ${second.says}</p>` : null}
    ${use(ChartTable, { chart })}
  </figure>`;
}
