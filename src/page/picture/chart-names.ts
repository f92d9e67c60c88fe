/** What is named in a graph, and where; and the places along its lines, which names keep clear of. */
import type { Chart, ChartLine } from '../../cells';
import type { ChartName } from './chart-labels';
import { sameData } from './same-data';

/** The graph's field, px, and where a value lies in it. */
export interface GraphField {
  readonly width: number;
  readonly height: number;
  readonly toX: (x: number) => number;
  readonly toY: (y: number) => number;
}

/** The share of a curve, of what is in view, at which its name stands. */
const NAMED_AT = 0.6;

/** Names of limits and points; of a second version only points that lie elsewhere, in brackets as in drawings. */
export function namesIn(chart: Chart, field: GraphField, first?: Chart): ChartName[] {
  const { toX, toY, height } = field;
  const inIts = (name: string) => (first ? `[${name}]` : name);
  const pointOf = (text: string, x: number, y: number): ChartName => ({
    text: inIts(text),
    of: 'point',
    x: toX(x),
    y: toY(y),
  });
  const marked = (one: Chart) => [...(one.points ?? []), ...(one.crossings ?? [])];
  const seen = new Set(first && marked(first).map(({ x, y }) => `${x} ${y}`));
  const points = marked(chart).filter(({ x, y, label }) => label !== '' && !seen.has(`${x} ${y}`));
  const named = chart.lines.filter(({ end, points: along }) => end !== undefined && along.length > 0);
  const ends = named.map(({ end = '', points: along }, i): ChartName => {
    const [x, y] = whereApart(named, field)[i] ?? along[0]!; // those named have points
    return { ...pointOf(end, x, y), of: 'curve' };
  });
  const moving = (chart.movingLimits ?? []).flatMap(({ label, points: along }): ChartName[] => {
    const inView = along.filter(([, y]) => toY(y) >= 0 && toY(y) <= height);
    const named = inView[Math.floor(inView.length * NAMED_AT)];
    return named ? [{ ...pointOf(label, named[0], named[1]), of: 'curve' }] : [];
  });
  return [
    ...(chart.limits ?? []).map((limit): ChartName =>
      limit.axis === 'y'
        ? { text: inIts(limit.label), of: 'across', x: 0, y: toY(limit.at) }
        : { text: inIts(limit.label), of: 'upright', x: toX(limit.at), y: 0 },
    ),
    ...points.map(({ x, y, label }) => pointOf(label, x, y)),
    ...moving,
    ...ends,
  ];
}

/** Between the names of two lines, px, for both to be read. */
const CLEAR = 18;

/** A place on each line at which to name it: at their ends, or where these lie too close, where they are farthest apart. */
function whereApart(lines: readonly ChartLine[], { toX, toY, width }: GraphField) {
  const at = (share: number) =>
    lines.map(({ points }) =>
      points.reduce((near, one) =>
        Math.abs(toX(one[0]) - share * width) <= Math.abs(toX(near[0]) - share * width) ? one : near,
      ),
    );
  const gap = (share: number): number => {
    const ys = at(share)
      .map(([, y]) => toY(y))
      .toSorted((a, b) => a - b);
    return Math.min(...ys.slice(1).map((y, i) => y - ys[i]!)); // one before each but the first
  };
  const shares = Array.from({ length: 11 }, (_, i) => 1 - i / 10);
  return at(shares.reduce((best, share) => (gap(best) >= CLEAR || gap(best) >= gap(share) ? best : share)));
}

/** The second version's graph without the limits that the first one's draws for both. */
export function limitsOnlyIn(second: Chart, first: Chart): Chart {
  const own = <T>(limits: readonly T[] = [], others: readonly T[] = []) =>
    limits.filter((one) => !others.some((other) => sameData(one, other)));
  return {
    ...second,
    limits: own(second.limits, first.limits),
    movingLimits: own(second.movingLimits, first.movingLimits),
  };
}

/** Of a stretch that leaves the field, as a limit may, no more. */
const MOST_PLACES = 300;

/** Places every few px along the lines, which names keep clear of. */
export function alongLines({ lines, movingLimits = [] }: Chart, { toX, toY }: GraphField) {
  return [...lines, ...movingLimits].flatMap(runsOfLine).flatMap((points) =>
    points.flatMap((point, index) => {
      const [x, y] = [toX(point[0]), toY(point[1])];
      const next = points[index + 1] ?? point;
      const [dx, dy] = [toX(next[0]) - x, toY(next[1]) - y];
      const count = Math.min(MOST_PLACES, Math.max(1, Math.ceil(Math.hypot(dx, dy) / 6)));
      return Array.from({ length: count }, (_, i) => ({ x: x + (dx * i) / count, y: y + (dy * i) / count }));
    }),
  );
}

/** The stretches of a line between its gaps and jumps. */
export function runsOfLine({
  points,
  begins = [],
}: Pick<ChartLine, 'points' | 'begins'>): (readonly (readonly [number, number])[])[] {
  const starts = [0, ...begins];
  return starts.map((from, i) => points.slice(from, starts[i + 1]));
}
