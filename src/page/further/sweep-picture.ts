/** A sweep drawn: both versions, the present point, the limits of the cell's warnings, and the table behind it. */
import type { Read, SweepAsk } from '../../boat';
import type { Chart } from '../../cells';
import { type Issue, isIssue } from '../../measure';
import type { Graph } from '../../notebook';
import { type Sweep, sweepFrom, swept } from '../../notebook/sweep/sweep';
import type { SweptLimit } from '../../notebook/sweep/limits-along';
import { isDrawn, sweepChart } from '../../notebook/sweep/sweep-chart';
import { type Bench, sayWith, useBench } from '../bench';
import { html, use } from '../html';
import { ChartView } from '../picture/chart-view';
import { sameData } from '../picture/same-data';
import { comparisonIn } from '../told/limit';
import { capital } from '../words';
import { useSlices } from '../use-slices';
import './further.css';

interface Drawn {
  readonly first: Chart | Issue;
  readonly second: Chart | null;
  readonly cut: readonly string[];
}

export function SweepPicture({ ask, says }: { ask: SweepAsk; says: string }) {
  const bench = useBench();
  const { book, shown, findings } = bench;
  const { entries, second, asBuilt, table } = book.state.value;
  const on = [
    entries,
    second,
    asBuilt,
    table,
    book.catalogue.value,
    shown.value,
    findings.count.value,
    JSON.stringify(ask),
  ];
  const { made, done } = useSlices(() => drawing(ask, bench), on);
  return html`<div class="sweep-picture" aria-busy=${done === null ? undefined : 'true'}>
    ${done === null || done === 0 ? null : html`<progress value=${done} aria-label="Working it out"></progress>`}
    ${made ? drawnView(made, says, done !== null) : html`<p class="working-out">Working it out …</p>`}
  </div>`;
}

function drawnView({ first, second, cut }: Drawn, says: string, stale: boolean) {
  const held = cut.length > 0 ? html`<p class="note">Drawn no further: ${cut.join('; ')}.</p>` : null;
  if (isIssue(first)) return html`<p class="says" id=${says} role="alert">${capital(first.issue)}.</p>`;
  if (!isDrawn(first)) return html`${held}<p class="says" id=${says} role="status">${first.says}</p>`;
  return html`${held}${use(ChartView, { chart: first, second: second ?? undefined, stale })}`;
}

function* drawing(ask: SweepAsk, bench: Bench): Generator<number, Drawn> {
  const graph = bench.book.first.value;
  const other = bench.book.second.value;
  const sweep = sweepFrom(ask, graph, bench.shown.value);
  if (isIssue(sweep)) return { first: sweep, second: null, cut: [] };
  const first = yield* charted(sweep, graph, bench);
  const second = other && (yield* charted(sweep, other, bench));
  return {
    first,
    second: second && !sameData(second, first) && isDrawn(second) ? second : null,
    cut: sweep.cut,
  };
}

function* charted(sweep: Sweep, graph: Graph, bench: Bench): Generator<number, Chart> {
  const limits = limitsOf(sweep, bench);
  const lines = yield* swept(graph, sweep, limits);
  return sweepChart(sweep, lines, graph, limits, sayWith(bench));
}

/** Limits of the cell's warnings that are one comparison of a number drawn. */
function limitsOf({ result, against }: Sweep, bench: Bench): readonly SweptLimit[] {
  const instance = bench.instances.value.get(result.split('.')[0]!); // split gives at least one
  return (instance?.cell.warnings ?? []).flatMap(({ when }): SweptLimit[] => {
    const found = comparisonIn(instance!, when); // a cell with warnings
    const axis = found?.name === result ? 'y' : found?.name === against.name ? 'x' : null;
    if (!found || axis === null) return [];
    const by = (read: Read) => {
      const limit = found.limit(read);
      return isIssue(limit) ? null : limit;
    };
    return [{ axis, kind: found.kind, isMost: found.isMost, by }];
  });
}
