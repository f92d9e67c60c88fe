/** A chart's data made into Observable Plot's marks. This module is fetched only when a graph is near. */
import { areaY, axisX, axisY, dot, gridX, gridY, line, plot, ruleX, ruleY, text } from '@observablehq/plot';
import type { Chart } from '../../cells';
import { textWidth } from '../../drawing';
import type { Shown } from '../../measure';
import type { Version } from '../../notebook';
import { type Extents, extentsOf, ticksOf } from './chart-axis';
import { placeNames } from './chart-labels';
import { alongLines, limitsOnlyIn, namesIn, runsOfLine } from './chart-names';
import './chart.css';

export interface ChartPlace {
  readonly width: number;
  readonly shown: Shown;
  readonly names: Readonly<Record<Version, string>>;
  /** Extents of the last drawing of this graph, held on to where they still fit. */
  readonly extents: Extents | null;
}

export interface DrawnChart {
  readonly figure: Element;
  readonly extents: Extents;
}

type Marks = NonNullable<Parameters<typeof plot>[0]>['marks'];

const SIZE = 13;
const FONT = "'Source Sans 3', Arial, sans-serif";
const ABOVE = 28;
const BELOW = 44;
/** Of the lower axis's name from the axis: less than there is below, so that no tail of a letter is cut. */
const NAME_BELOW = 37;

export function drawChart(chart: Chart, second: Chart | undefined, place: ChartPlace): DrawnChart {
  const { width, shown } = place;
  const height = Math.round(Math.min(300, Math.max(210, width * 0.55)));
  const high = height - ABOVE - BELOW;
  const extents = extentsOf(second ? [chart, second] : [chart], place.extents);
  const yTicks = ticksOf(chart.y, extents.y, shown, high, 'y', SIZE);
  const left = Math.ceil(Math.max(24, ...yTicks.map((tick) => textWidth(tick.text, SIZE)))) + 12;
  const xTicks = ticksOf(chart.x, extents.x, shown, width - left - 20, 'x', SIZE);
  // The last tick's text is centred on it and must not stick out.
  const right = Math.ceil(Math.max(14, textWidth(xTicks.at(-1)?.text ?? '', SIZE) / 2 + 2));
  const wide = width - left - right;
  const toX = (x: number) => ((x - extents.x[0]) / (extents.x[1] - extents.x[0])) * wide;
  const toY = (y: number) => (1 - (y - extents.y[0]) / (extents.y[1] - extents.y[0])) * high;
  const field = { width: wide, height: high, toX, toY };
  const names = placeNames(
    [...namesIn(chart, field), ...(second ? namesIn(limitsOnlyIn(second, chart), field, chart) : [])],
    (second ? [chart, second] : [chart]).flatMap((one) => alongLines(one, field)),
    field,
    SIZE,
  );
  const axis = { labelArrow: 'none', tickSize: 4 } as const;
  const figure = plot({
    className: 'plotted',
    width,
    height,
    marginLeft: left,
    marginRight: right,
    marginTop: ABOVE,
    marginBottom: BELOW,
    style: { fontSize: `${SIZE}px`, fontFamily: FONT, background: 'none' },
    x: { domain: [...extents.x], label: null },
    y: { domain: [...extents.y], label: null },
    marks: [
      gridX(at(xTicks), { stroke: 'var(--chalk)', strokeOpacity: 1 }),
      gridY(at(yTicks), { stroke: 'var(--chalk)', strokeOpacity: 1 }),
      axisX(at(xTicks), {
        ...axis,
        tickFormat: textAt(xTicks),
        label: chart.x.label,
        labelAnchor: 'center',
        labelOffset: NAME_BELOW,
      }),
      axisY(at(yTicks), { ...axis, tickFormat: textAt(yTicks), label: chart.y.label, labelAnchor: 'top' }),
      ...limitMarks(chart, 'first'),
      ...(second ? limitMarks(limitsOnlyIn(second, chart), 'second') : []),
      ...lineMarks(chart, 'first'),
      ...(second ? lineMarks(second, 'second') : []),
      ...crossingMarks(chart),
      ...(second ? crossingMarks(second) : []),
      ...pointMarks(chart, 'first'),
      ...(second ? pointMarks(second, 'second') : []),
      ...names.map(({ text: words, x, y, anchor }) =>
        text([words], {
          frameAnchor: 'top-left',
          textAnchor: anchor,
          lineAnchor: 'middle',
          dx: x,
          dy: y,
          fill: 'var(--ink)',
          stroke: 'var(--sheet)',
          strokeWidth: 4,
        }),
      ),
    ] as Marks & object[],
  });
  // Said once for all figures: see chart.css.
  figure.querySelector('style')?.remove();
  figure.setAttribute('role', 'img');
  const says = second
    ? `${chart.says} Dashed, ${place.names.second.toLowerCase()}: ${second.says}`
    : chart.says;
  // Plot labels groups without a role; one label on the whole is what a screen reader can use.
  for (const part of figure.querySelectorAll('[aria-label]')) part.removeAttribute('aria-label');
  figure.setAttribute('aria-label', `${chart.title}. ${says}`);
  return { figure, extents };
}

const at = (ticks: readonly { at: number }[]) => ticks.map((tick) => tick.at);

const textAt =
  (ticks: readonly { text: string }[]) =>
  (_: number, index: number): string =>
    ticks[index]?.text ?? '';

/** Dashes of further lines, which tell them apart without colour; the second version has a dash of its own. */
const DASHES = ['none', '9 3 2 3', '2 3'];
const SECOND_DASH = '6 4';

function lineMarks(chart: Chart, version: Version): object[] {
  const isFirst = version === 'first';
  const stroke = isFirst ? 'var(--ink)' : 'var(--bottom-blue)';
  return chart.lines.flatMap((each, index) => {
    if (each.as === 'dots')
      return [dot(each.points, { r: 4, stroke, strokeWidth: 1.5, fill: isFirst ? stroke : 'var(--sheet)' })];
    const isAlone = isFirst && chart.lines.length === 1;
    return runsOfLine(each).flatMap((points) => {
      const drawn = line(points, {
        stroke,
        strokeWidth: 2,
        strokeDasharray: isFirst ? (DASHES[index % DASHES.length] ?? 'none') : SECOND_DASH,
        curve: each.as === 'steps' ? 'step-after' : 'linear',
      });
      return isAlone ? [areaY(points, { fill: 'var(--cedar)', fillOpacity: 0.18 }), drawn] : [drawn];
    });
  });
}

function limitMarks(chart: Chart, version: Version): object[] {
  const style = {
    stroke: 'var(--red-lead)',
    strokeWidth: 1.5,
    strokeDasharray: version === 'first' ? '8 3' : SECOND_DASH,
  };
  const straight = (chart.limits ?? []).map((limit) =>
    limit.axis === 'y' ? ruleY([limit.at], style) : ruleX([limit.at], style),
  );
  const moving = (chart.movingLimits ?? []).flatMap((limit) =>
    runsOfLine(limit).map((points) => line(points, { ...style, clip: true })),
  );
  return [...straight, ...moving];
}

/** Where a line comes to a limit: an open ring, for a filled one is where it stands. */
function crossingMarks({ crossings = [] }: Chart): object[] {
  const ring = { x: 'x', y: 'y', r: 4, fill: 'var(--sheet)', stroke: 'var(--red-lead)', strokeWidth: 2 };
  return crossings.length > 0 ? [dot(crossings, ring)] : [];
}

function pointMarks(chart: Chart, version: Version): object[] {
  const isFirst = version === 'first';
  const stroke = isFirst ? 'var(--red-lead)' : 'var(--bottom-blue)';
  const fill = isFirst ? stroke : 'var(--sheet)';
  return chart.points?.length
    ? [dot(chart.points, { x: 'x', y: 'y', r: 6, fill, stroke, strokeWidth: 2 })]
    : [];
}
