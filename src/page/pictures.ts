/** A cell's drawing and chart, both versions; the last good ones stay while a number is missing. */
import { useRef } from 'preact/hooks';
import type { Hull } from '../boat';
import { type Chart, type Instance, onHand, valuesOf } from '../cells';
import type { Drawing } from '../drawing';
import { isIssue } from '../measure';
import type { Graph } from '../notebook';
import { type Bench, sayWith, useBench } from './bench';
import { ChartView } from './chart-view';
import { Figure } from './figure';
import { html, use } from './html';

export function Pictures({ instance }: { instance: Instance }) {
  const bench = useBench();
  const { book } = bench;
  const last = useRef<{ drawing?: Drawing; chart?: Chart }>({});
  const first = picturesOf(instance, book.first.value, bench);
  const graph2 = book.second.value;
  const second = graph2 ? picturesOf(instance, graph2, bench) : null;
  if (first) last.current = first;
  const { drawing, chart } = last.current;
  const drawing2 = second?.drawing && drawing && !same(second.drawing, drawing) ? second.drawing : undefined;
  const chart2 = second?.chart && chart && !same(second.chart, chart) ? second.chart : undefined;
  const stale = first === null;
  return html`<div class="pictures">
    ${drawing ? use(Figure, { drawing, second: drawing2, stale }) : null}
    ${chart ? use(ChartView, { chart, second: chart2, stale }) : null}
    ${!drawing && !chart ? html`<p class="no-picture">The drawing waits for the numbers it needs.</p>` : null}
  </div>`;
}

const same = (a: unknown, b: unknown) => JSON.stringify(a) === JSON.stringify(b);

interface PicturesDrawn {
  readonly drawing?: Drawing;
  readonly chart?: Chart;
}

function picturesOf(instance: Instance, graph: Graph, bench: Bench): PicturesDrawn | null {
  const { cell } = instance;
  const values = graph.work((read) => valuesOf(instance, read));
  if (isIssue(values)) return null;
  const on = onHand(cell, values, hullOrNull(graph), sayWith(bench));
  const drawing = cell.draw?.(values as never, on);
  const chart = cell.chart?.(values as never, on);
  return { ...(drawing ? { drawing } : {}), ...(chart ? { chart } : {}) };
}

function hullOrNull(graph: Graph): Hull | null {
  const hull = graph.hull();
  return isIssue(hull) ? null : hull;
}
