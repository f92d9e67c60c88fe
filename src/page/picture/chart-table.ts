/** The graph's numbers as a table, for whoever can't see it or wants to read one off. */
import type { Axis, Chart } from '../../cells';
import { write } from '../../measure';
import { useBench } from '../bench';
import { Disclosure } from '../disclosure';
import { html, use } from '../html';

/** Enough rows to read the trend. */
const ROWS = 12;

export function ChartTable({ chart }: { chart: Chart }) {
  const { shown } = useBench();
  const say = (axis: Axis, value: number) => write(value, axis.kind, shown.value).text;
  const none = chart.rows ? '–' : '';
  const inside = () => html`<div class="table-wrap" tabindex="0" role="group" aria-label=${chart.title}>
    <table>
      <thead>
        <tr><th scope="col">${chart.x.label}</th>${columnsOf(chart).map(({ name }) => html`<th scope="col">${name}</th>`)}</tr>
      </thead>
      <tbody>${rowsOf(chart).map(
        ({ x, ys }) =>
          html`<tr><th scope="row">${say(chart.x, x)}</th>${ys.map((y) => html`<td>${y === undefined ? none : say(chart.y, y)}</td>`)}</tr>`,
      )}</tbody>
    </table>
  </div>`;
  return use(Disclosure, { summary: 'The same as a table', className: 'chart-data', inside });
}

/** The lines, and the limits that move with what is below. */
const columnsOf = ({ lines, movingLimits = [] }: Chart) => [
  ...lines,
  ...movingLimits.map(({ label, points }) => ({ name: label, points })),
];

function rowsOf(chart: Chart): { x: number; ys: (number | undefined)[] }[] {
  const { lines, rows } = chart;
  const xs = rows ?? [...new Set(lines.flatMap((line) => line.points.map(([x]) => x)))].sort((a, b) => a - b);
  const every = rows ? 1 : Math.max(1, Math.ceil(xs.length / ROWS));
  return xs
    .filter((_, index) => index % every === 0 || index === xs.length - 1)
    .map((x) => ({ x, ys: columnsOf(chart).map(({ points }) => points.find(([at]) => at === x)?.[1]) }));
}
