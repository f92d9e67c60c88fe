/** A sweep drawn: both versions, the present point, the limits of the cell's warnings, and the table behind it. */
import type { SweepAsk } from '../../boat';
import type { Chart } from '../../cells';
import { type Issue, isIssue } from '../../measure';
import type { Graph } from '../../notebook';
import { type Sweep, sweepFrom, swept } from '../../notebook/sweep/sweep';
import { isDrawn, isSteady, sweepChart } from '../../notebook/sweep/sweep-chart';
import { type Bench, sayWith, useBench } from '../bench';
import { html, use } from '../html';
import { ChartView } from '../picture/chart-view';
import { sameData } from '../picture/same-data';
import { againstLimit } from '../told/limit';
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
  const lines = yield* swept(graph, sweep);
  return sweepChart(sweep, lines, graph, limitsOf(sweep, graph, bench), sayWith(bench));
}

/** Limits of warnings that are one comparison of a number drawn, and the same from end to end. */
function limitsOf(
  { result, against, span }: Sweep,
  graph: Graph,
  bench: Bench,
): NonNullable<Chart['limits']> {
  const instance = bench.instances.value.get(result.split('.')[0]!); // split gives at least one
  if (!instance) return [];
  const say = sayWith(bench);
  const at = (when: string, x: number) =>
    againstLimit(instance, when, (by) => graph.supposing(by)({ [against.name]: x }));
  const all = instance.cell.warnings.flatMap(({ when }) => {
    const [low, high] = [at(when, span.low), at(when, span.high)];
    if (!low || !high || !isSteady(low.limit, high.limit)) return [];
    const axis = low.name === result ? 'y' : low.name === against.name ? 'x' : null;
    if (axis === null || (axis === 'x' && (low.limit < span.low || low.limit > span.high))) return [];
    const word = low.isMost ? 'most' : 'least';
    return [
      { at: low.limit, axis, label: `at ${word} ${say(low.limit, low.kind, { bound: word })}` } as const,
    ];
  });
  return all.filter(
    (one, i) => all.findIndex(({ at: where, axis }) => where === one.at && axis === one.axis) === i,
  );
}
