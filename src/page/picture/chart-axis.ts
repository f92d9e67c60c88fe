/** Axes of a graph: extents that hold still while a slider moves, and ticks on round marks of the units chosen. */
import type { Axis, Chart } from '../../cells';
import { textWidth } from '../../drawing';
import { isIssue, type KindId, read, type Shown, shownUnit, unitWritten, write } from '../../measure';

export type Extent = readonly [low: number, high: number];
export interface Extents {
  readonly x: Extent;
  readonly y: Extent;
}

/** The extent of the data may shrink to this share before the axis follows, so that it does not jump at each move. */
const SHRINK = 0.5;
/** Room beyond the data for a value that goes on growing. */
const AIR = 0.08;

export function extentsOf(charts: readonly Chart[], last: Extents | null): Extents {
  return { x: extentOf(charts, 'x', last?.x), y: extentOf(charts, 'y', last?.y) };
}

function extentOf(charts: readonly Chart[], axis: 'x' | 'y', last: Extent | undefined): Extent {
  const at = axis === 'x' ? 0 : 1;
  const data = charts.flatMap((one) => [
    ...one.lines.flatMap((line) => line.points.map((point) => point[at])),
    ...(one.points ?? []).map((point) => point[axis]),
    ...(one.limits ?? []).filter((limit) => limit.axis === axis).map((limit) => limit.at),
    ...(axis === 'y' ? nearLimits(one) : []),
  ]);
  const declared = charts[0]?.[axis];
  const low = declared?.from ?? Math.min(...data);
  const high = declared?.to ?? Math.max(...data);
  const held =
    last && low >= last[0] && high <= last[1] && high - low > SHRINK * (last[1] - last[0]) ? last : null;
  if (held) return held;
  if (!(high > low)) return [low - 0.5 * Math.abs(low) - 1e-6, low + 0.5 * Math.abs(low) + 1e-6];
  const air = axis === 'y' ? AIR * (high - low) : 0;
  // An axis that nearly reaches zero begins there.
  const floor = axis === 'y' && low > 0 && low < 0.5 * high ? 0 : low - (low === 0 ? 0 : air);
  return [declared?.from ?? floor, declared?.to ?? high + air];
}

/** What of the limits that move lies near enough to the lines to be drawn with them; where nothing does, the nearest. */
function nearLimits({ lines, movingLimits = [] }: Chart): number[] {
  const ys = lines.flatMap(({ points }) => points.map(([, y]) => y));
  const [low, high] = [Math.min(...ys), Math.max(...ys)];
  const off = (y: number) => Math.max(0, low - y, y - high);
  return movingLimits.flatMap(({ points }) => {
    const all = points.map(([, y]) => y);
    const near = all.filter((y) => off(y) <= high - low);
    return near.length > 0 ? near : all.toSorted((a, b) => off(a) - off(b)).slice(0, 1);
  });
}

export interface Tick {
  readonly at: number;
  readonly text: string;
}

/**
 * Ticks on round marks of the unit chosen, as many as stand clear of each other.
 * @param room px along the axis
 * @param size px of the letters
 */
export function ticksOf(
  axis: Axis,
  extent: Extent,
  shown: Shown,
  room: number,
  along: 'x' | 'y',
  size: number,
): Tick[] {
  const [low, high] = extent;
  // A tape's own marks; all else in the unit of the largest, or one axis would be written in two.
  const own = unitWritten(Math.max(Math.abs(low), Math.abs(high)), axis.kind, shown);
  const manner = axis.kind === 'length' || own === '' ? {} : { unit: own };
  const { zero, unit } = unitOf(axis.kind, shown, manner);
  const isInches = shownUnit(axis.kind, shown) === 'in';
  // On a coarser tape two ticks might read alike.
  const fine: Shown = isInches ? { ...shown, fraction: 32 } : shown;
  for (const step of steps((high - low) / unit / 12, isInches)) {
    // There is no half of a thing that is counted.
    if (axis.kind === 'count' && step < 1) continue;
    const first = Math.ceil((low - zero) / unit / step - 1e-9);
    const last = Math.floor((high - zero) / unit / step + 1e-9);
    const ticks = Array.from({ length: Math.max(0, last - first + 1) }, (_, i): Tick => {
      const at = Number((zero + (first + i) * step * unit).toPrecision(12));
      return { at, text: write(at, axis.kind, fine, manner).text };
    });
    const need =
      along === 'y' ? size * 1.9 : Math.max(...ticks.map(({ text }) => textWidth(text, size)), 0) + size;
    if (ticks.length < 2 || (room / (high - low)) * step * unit >= need) return ticks;
  }
  return [];
}

/** The unit of a bare number in a field of this kind, SI, and where its zero lies. */
function unitOf(kind: KindId, shown: Shown, own: { unit?: string }): { zero: number; unit: number } {
  const value = (text: string) => {
    const reading = read(text, { kind, shown, field: kind, ...own });
    const found = isIssue(reading) ? reading : reading.evaluate(() => 0);
    return isIssue(found) ? null : found;
  };
  const zero = value('0') ?? 0;
  return { zero, unit: (value('1') ?? 1) - zero };
}

/** Round steps from `least` up: 1, 2, 5 by tens; in inches by feet and the halves of an inch. */
function* steps(least: number, inches: boolean): Generator<number> {
  const marks = inches ? [1 / 16, 1 / 8, 1 / 4, 1 / 2, 1, 2, 3, 6, 12, 24, 36, 60, 120, 240, 600] : [];
  for (const mark of marks) if (mark >= least) yield mark;
  for (let ten = 10 ** Math.floor(Math.log10(least)); ten < 1e30; ten *= 10) {
    for (const mark of [ten, 2 * ten, 5 * ten]) if (mark >= least && mark > (marks.at(-1) ?? 0)) yield mark;
  }
}
