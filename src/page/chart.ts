/** A chart's data made into Observable Plot's marks. This module is fetched only when a graph is near. */
import { areaY, axisX, axisY, dot, gridX, gridY, line, plot, ruleX, ruleY, text } from '@observablehq/plot';
import type { Axis, Chart } from '../cells';
import { type Shown, write } from '../measure';
import type { Version } from '../notebook';

export interface ChartPlace {
  readonly width: number;
  readonly shown: Shown;
  readonly names: Readonly<Record<Version, string>>;
}

type Marks = NonNullable<Parameters<typeof plot>[0]>['marks'];

export function drawChart(chart: Chart, second: Chart | undefined, place: ChartPlace): Element {
  const figure = plot({
    width: place.width,
    height: Math.round(Math.min(300, Math.max(200, place.width * 0.55))),
    marginLeft: 62,
    marginRight: 18,
    marginTop: 26,
    marginBottom: 42,
    style: { fontSize: '13px', fontFamily: "'Source Sans 3', Arial, sans-serif", background: 'none' },
    x: { domain: domainOf(chart, second, 'x'), label: null },
    y: { domain: domainOf(chart, second, 'y'), label: null },
    marks: [
      gridX({ stroke: 'var(--chalk)', strokeOpacity: 1 }),
      gridY({ stroke: 'var(--chalk)', strokeOpacity: 1 }),
      axisX({
        ticks: Math.max(2, Math.floor((place.width - 80) / 95)),
        tickFormat: tick(chart.x, place),
        label: chart.x.label,
        labelAnchor: 'center',
        labelArrow: 'none',
        tickSize: 4,
      }),
      axisY({
        ticks: 5,
        tickFormat: tick(chart.y, place),
        label: chart.y.label,
        labelAnchor: 'top',
        labelArrow: 'none',
        tickSize: 4,
      }),
      ...limitMarks(chart, place),
      ...lineMarks(chart, 'first'),
      ...(second ? lineMarks(second, 'second') : []),
      ...pointMarks(chart, 'first', place),
      ...(second ? pointMarks(second, 'second', place) : []),
    ] as Marks & object[],
  });
  figure.setAttribute('role', 'img');
  figure.setAttribute(
    'aria-label',
    second ? `${chart.says} Dashed: ${place.names.second}. ${second.says}` : chart.says,
  );
  // Plot labels groups without a role; one label on the whole is what a screen reader can use.
  for (const part of figure.querySelectorAll('[aria-label]')) part.removeAttribute('aria-label');
  return figure;
}

function tick(axis: Axis, place: ChartPlace) {
  return (value: number) => write(value, axis.kind, place.shown).text;
}

/** The declared extents, else all data of both versions with a little air, from zero where that is near. */
function domainOf(chart: Chart, second: Chart | undefined, axis: 'x' | 'y'): [number, number] {
  const charts = second ? [chart, second] : [chart];
  const at = axis === 'x' ? 0 : 1;
  const data = charts.flatMap((one) => [
    ...one.lines.flatMap((each) => each.points.map((point) => point[at])),
    ...(one.points ?? []).map((point) => point[axis]),
    ...(one.limits ?? []).filter((limit) => limit.axis === axis).map((limit) => limit.at),
  ]);
  const low = chart[axis].from ?? Math.min(...data);
  const high = chart[axis].to ?? Math.max(...data);
  if (!(high > low)) return [low - 0.5 * Math.abs(low) - 1e-6, low + 0.5 * Math.abs(low) + 1e-6];
  const air = axis === 'y' ? 0.06 * (high - low) : 0;
  const floor = chart[axis].from === undefined && axis === 'y' && low > 0 && low < 0.5 * high ? 0 : low;
  return [chart[axis].from ?? (floor === 0 ? 0 : floor - air), chart[axis].to ?? high + air];
}

function lineMarks(chart: Chart, version: Version): object[] {
  const stroke = version === 'first' ? 'var(--ink)' : 'var(--bottom-blue)';
  const dash = version === 'first' ? {} : { strokeDasharray: '6 4' };
  return chart.lines.flatMap((each, index) => {
    const ownDash =
      version === 'first' && index > 0
        ? { strokeDasharray: ['none', '9 3 2 3', '2 3'][index % 3] ?? 'none' }
        : dash;
    if (each.as === 'dots')
      return [
        dot(each.points, {
          r: 4,
          stroke,
          strokeWidth: 1.5,
          fill: version === 'first' ? stroke : 'var(--sheet)',
        }),
      ];
    const drawn = line(each.points, {
      stroke,
      strokeWidth: 2,
      ...ownDash,
      curve: each.as === 'steps' ? 'step-after' : 'linear',
    });
    return index === 0 && version === 'first' && chart.lines.length === 1
      ? [areaY(each.points, { fill: 'var(--cedar)', fillOpacity: 0.18 }), drawn]
      : [drawn];
  });
}

function limitMarks(chart: Chart, place: ChartPlace): object[] {
  return (chart.limits ?? []).flatMap(({ at, axis, label }) => {
    const rule =
      axis === 'y'
        ? ruleY([at], { stroke: 'var(--red-lead)', strokeWidth: 1.5, strokeDasharray: '8 3' })
        : ruleX([at], { stroke: 'var(--red-lead)', strokeWidth: 1.5, strokeDasharray: '8 3' });
    const placed = {
      fill: 'var(--red-lead)',
      stroke: 'var(--sheet)',
      strokeWidth: 4,
      text: () => label,
      fontSize: 13,
    };
    const name =
      axis === 'y'
        ? text([at], { y: at, frameAnchor: 'right', textAnchor: 'end', dy: -9, ...placed })
        : text([at], {
            x: at,
            frameAnchor: 'top',
            textAnchor: place.width < 420 ? 'middle' : 'start',
            dx: 5,
            dy: 9,
            ...placed,
          });
    return [rule, name];
  });
}

function pointMarks(chart: Chart, version: Version, place: ChartPlace): object[] {
  const points = chart.points ?? [];
  if (points.length === 0) return [];
  const colour = version === 'first' ? 'var(--red-lead)' : 'var(--bottom-blue)';
  const [from, to] = domainOf(chart, undefined, 'x');
  return [
    dot(points, {
      x: 'x',
      y: 'y',
      r: 6,
      fill: version === 'first' ? colour : 'var(--sheet)',
      stroke: colour,
      strokeWidth: 2,
    }),
    ...points.map((point) => {
      const late = point.x > from + 0.6 * (to - from);
      return text([point], {
        x: 'x',
        y: 'y',
        text: 'label',
        dx: late ? -11 : 11,
        dy: version === 'first' ? -12 : 14,
        textAnchor: late ? 'end' : 'start',
        fill: 'var(--ink)',
        stroke: 'var(--sheet)',
        strokeWidth: 4,
        fontSize: place.width < 420 ? 13 : 14,
      });
    }),
  ];
}
