/** Limits of a sweep as a graph has them, straight or as curves, with the places where they are met; and in words. */
import type { Chart } from '../../cells';
import { runsOf } from '../../kernel';
import type { Sweep, SweptLine } from './sweep';
import type { LimitAlong, SweptLimit } from './limits-along';
import type { SayNumber } from './say-number';

type Drawn = Required<Pick<Chart, 'limits' | 'movingLimits' | 'crossings'>>;

const SAME = 1e-9;
const isSame = (a: number, b: number): boolean =>
  Math.abs(a - b) <= SAME * Math.max(Math.abs(a), Math.abs(b));

const valuesOf = ({ samples }: LimitAlong): readonly number[] =>
  samples.flatMap(({ y }) => (y === null ? [] : [y]));
const isSteady = (values: readonly number[]): boolean => values.every((one) => isSame(one, values[0]!));

/** Limits that are nothing, at every place, only say that there should be none. */
const isThere = (along: readonly LimitAlong[]): boolean =>
  along.some((one) => valuesOf(one).some((limit) => limit !== 0));

export function limitsDrawn(
  sweep: Sweep,
  lines: readonly SweptLine[],
  limits: readonly SweptLimit[],
  say: SayNumber,
): Drawn {
  const all = limits.map((limit, index) => {
    const along = lines.map((line) => line.limits[index]!); // each line has all limits
    if (!isThere(along)) return { limits: [], movingLimits: [], crossings: [] };
    return limit.axis === 'x' ? upright(sweep, limit, along, say) : across(sweep, limit, along, say);
  });
  const straight = all.flatMap((one) => one.limits);
  return {
    limits: straight.filter(
      (one, i) => straight.findIndex(({ at, axis }) => at === one.at && axis === one.axis) === i,
    ),
    movingLimits: all.flatMap((one) => one.movingLimits),
    crossings: all.flatMap((one) => one.crossings),
  };
}

const sayLimit = ({ isMost, kind }: SweptLimit, at: number, say: SayNumber): string => {
  const word = isMost ? 'most' : 'least';
  return `at ${word} ${say(at, kind, { bound: word })}`;
};

/** Of the number below: one place, or each place that a moving one leaves. */
function upright({ span }: Sweep, limit: SweptLimit, along: readonly LimitAlong[], say: SayNumber): Drawn {
  const values = along.flatMap(valuesOf);
  const places = isSteady(values)
    ? values.slice(0, 1).filter((at) => at >= span.low && at <= span.high)
    : [...new Set(along.flatMap(({ met }) => met.map(({ x }) => x)))];
  const limits = places.map((at) => ({ at, axis: 'x' as const, label: sayLimit(limit, at, say) }));
  return { limits, movingLimits: [], crossings: [] };
}

/** Of what is drawn: one for all lines, or where it hangs on the second number too one for each. */
function across(
  { span, family, against }: Sweep,
  limit: SweptLimit,
  along: readonly LimitAlong[],
  say: SayNumber,
): Drawn {
  const one = along.every((other) => isAlike(other, along[0]!));
  const drawn = (one ? along.slice(0, 1) : along).map((each, i) => {
    const value = family?.values[i];
    const of = one || !family || value === undefined ? '' : `, at ${say(value, family.of.given.kind)}`;
    const values = valuesOf(each);
    if (isSteady(values)) {
      const limits = values
        .slice(0, 1)
        .map((at) => ({ at, axis: 'y' as const, label: sayLimit(limit, at, say) + of }));
      return { limits, movingLimits: [] };
    }
    const runs = runsOf(each.samples, span);
    const begins = runs.slice(1).map((_, run) => runs.slice(0, run + 1).flat().length);
    const points = runs.flat().map(({ x, y }) => [x, y!] as const); // a run has values
    const label = `${limit.isMost ? 'the most' : 'the least'} it may be${of}`;
    return { limits: [], movingLimits: [{ label, points, ...(begins.length > 0 && { begins }) }] };
  });
  const met = along.flatMap((each) => each.met);
  return {
    limits: drawn.flatMap((each) => each.limits),
    movingLimits: drawn.flatMap((each) => each.movingLimits),
    crossings: met.flatMap(({ x, y }) =>
      // Of several lines the words say where.
      y === null ? [] : [{ x, y, label: along.length === 1 ? say(x, against.given.kind) : '' }],
    ),
  };
}

/** Where both were looked at they are the same. */
function isAlike(a: LimitAlong, b: LimitAlong): boolean {
  const others = new Map(b.samples.map(({ x, y }) => [x, y]));
  return a.samples.every(({ x, y }) => {
    const other = others.get(x);
    return other === undefined || other === null || y === null || isSame(y, other);
  });
}

/** Where a line comes to its limits, and how a moving one goes, a sentence each. */
export function limitsInWords(
  { against }: Sweep,
  { limits: along, runs }: SweptLine,
  limits: readonly SweptLimit[],
  say: SayNumber,
): readonly string[] {
  const x = (at: number) => say(at, against.given.kind);
  return limits.flatMap((limit, index) => {
    const each = along[index]!; // each line has all limits
    if (limit.axis === 'x' || !isThere([each])) return [];
    const told = each.samples.flatMap(({ x: at, y }) => (y === null ? [] : [{ at, y }]));
    const [first, last] = [told[0]!, told.at(-1)!]; // one that is there has values
    const places = each.met.map((met) => `at ${x(met.x)}`);
    const isMoving = !isSteady(valuesOf(each));
    const going = isMoving
      ? [
          `The limit moves too: ${sayLimit(limit, first.y, say)} at ${x(first.at)}, ${sayLimit(limit, last.y, say)} at ${x(last.at)}.`,
        ]
      : [];
    const name = isMoving ? 'that limit' : `the limit, ${sayLimit(limit, first.y, say)},`;
    if (places.length > 0) return [...going, `It comes to ${name} ${joined(places)}.`];
    const at = runs[0]?.[0];
    const bound = at && each.samples.find((sample) => sample.x === at.x)?.y;
    const isPast =
      at && at.y !== null && typeof bound === 'number' && (limit.isMost ? at.y > bound : at.y < bound);
    return isPast ? [...going, `It is past ${name} throughout.`] : going;
  });
}

const joined = (places: readonly string[]): string =>
  places.length < 2 ? places.join('') : `${places.slice(0, -1).join(', ')} and ${places.at(-1)}`;
