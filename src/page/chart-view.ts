/**
 * A graph: its place is kept from the first paint, and Plot, which draws it, is fetched when the
 * graph comes near the window. Each change asks the animation-frame queue for one drawing, and
 * only while the graph is near the window.
 */
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Axis, Chart } from '../cells';
import { useBench, versionWords } from './bench';
import { useWidth } from './figure';
import { html } from './html';
import { redraw } from './redraw';
import { say } from './bench';

export interface ChartViewProps {
  readonly chart: Chart;
  readonly second?: Chart | undefined;
  readonly stale?: boolean;
}

export function ChartView({ chart, second, stale = false }: ChartViewProps) {
  const { shown } = useBench();
  const host = useRef<HTMLDivElement>(null);
  const width = useWidth(host);
  const near = useNear(host);
  const units = shown.value;
  useEffect(() => {
    if (!near) return;
    void import('./chart').then(({ drawChart }) =>
      redraw(() => {
        if (host.current)
          host.current.replaceChildren(
            drawChart(chart, second, { width, shown: units, names: versionWords }),
          );
      }),
    );
  });
  const last = chart.lines[0];
  return html`<figure class=${`chart ${stale ? 'stale' : ''}`}>
    <figcaption class="chart-title">${chart.title}</figcaption>
    <div class="chart-place" ref=${host}></div>
    <p class="chart-says">${chart.says}</p>
    ${
      last
        ? html`<details class="chart-data">
            <summary>The same as a table</summary>
            <div class="table-wrap" tabindex="0" role="region" aria-label=${chart.title}>
              <table>
                <thead><tr><th scope="col">${chart.x.label}</th>${chart.lines.map((line) => html`<th scope="col">${line.name}</th>`)}</tr></thead>
                <tbody>${rowsOf(chart).map(
                  ([x, ...ys]) =>
                    html`<tr><th scope="row">${sayOn(chart.x, x!)}</th>${ys.map((y) => html`<td>${y === undefined ? '' : sayOn(chart.y, y)}</td>`)}</tr>`,
                )}</tbody>
              </table>
            </div>
          </details>`
        : null
    }
  </figure>`;

  function sayOn(axis: Axis, value: number): string {
    return say(value, axis.kind, units);
  }
}

/** At most a dozen rows: enough to read the trend. */
function rowsOf(chart: Chart): (number | undefined)[][] {
  const xs = [...new Set(chart.lines.flatMap((line) => line.points.map(([x]) => x)))].sort((a, b) => a - b);
  const every = Math.max(1, Math.ceil(xs.length / 12));
  return xs
    .filter((_, index) => index % every === 0 || index === xs.length - 1)
    .map((x) => [x, ...chart.lines.map((line) => line.points.find(([at]) => at === x)?.[1])]);
}

/** True once the element is within a screen of the window; stays in step as it leaves and comes back. */
function useNear(host: { current: HTMLElement | null }): boolean {
  const [near, setNear] = useState(false);
  useEffect(() => {
    if (!host.current) return undefined;
    const observer = new IntersectionObserver(([entry]) => setNear(entry?.isIntersecting ?? false), {
      rootMargin: '300px',
    });
    observer.observe(host.current);
    return () => observer.disconnect();
  }, []);
  return near;
}
