/** Between what values a number is looked at: never beyond what its entry takes. */
import { type Issue, isIssue, issue, plainShown, read, type Shown, write } from '../../measure';
import type { Mover } from './movers';
import type { Graph } from '../graph/graph';

export interface SweepSpan {
  readonly low: number;
  readonly high: number;
  readonly whole: boolean;
}

/** A range of this many times the present number is shown whole. */
const WIDE = 10;

/** Where nothing is said: all that the entry takes, or what lies about the number now where that is much. */
export function usualSpan({ value, least, most, given }: Mover): SweepSpan {
  const whole = given.kind === 'count';
  const size = Math.abs(value);
  if (most - least <= WIDE * size) return { low: least, high: most, whole };
  const round = (x: number) => (whole ? Math.round(x) : Number(x.toPrecision(2)));
  const [below, above] = size === 0 ? [-1, 1] : [value - size / 2, value + size];
  const low = Math.max(least, round(below));
  const high = Math.min(most, round(above));
  return low < high
    ? { low, high, whole }
    : { low: Math.max(least, value - 1), high: Math.min(most, value + 1), whole };
}

/** All that the entry takes; where it has no limit, ten times as far as it is now. */
export function wholeSpan({ value, least, most, given }: Mover): SweepSpan {
  const far = WIDE * Math.max(Math.abs(value), 1e-3);
  return {
    low: Math.max(least, Math.min(value, 0) - (value < 0 ? far : 0)),
    high: Math.min(most, Number.isFinite(most) ? most : Math.max(value, 0) + far),
    whole: given.kind === 'count',
  };
}

/**
 * From one entry to another, held to what the number may be; an empty entry leaves an end as it is by itself.
 * @returns the span and what was cut off it, or why it is none
 */
export function spanBetween(
  of: Mover,
  from: string,
  to: string,
  graph: Graph,
  shown: Shown,
): { readonly span: SweepSpan; readonly cut: readonly string[] } | Issue {
  const usual = usualSpan(of);
  const [first, last] = [from, to].map((text) =>
    text.trim() === '' ? null : valueIn(text, of.given, graph, shown),
  );
  if (isIssue(first)) return first;
  if (isIssue(last)) return last;
  const cut: string[] = [];
  const held = (value: number): number => {
    const { least, most, given } = of;
    const at = Math.min(most, Math.max(least, value));
    if (at !== value) {
      const says = write(at, given.kind, shown, { bound: at < value ? 'most' : 'least' }).told;
      cut.push(`${given.meaning} is at ${at < value ? 'most' : 'least'} ${says}`);
    }
    return at;
  };
  // An end that is left open lies by itself, or far enough from one that is written.
  const low = held(
    first ?? (typeof last === 'number' ? Math.min(usual.low, last - Math.abs(last) / 2) : usual.low),
  );
  const high = held(
    last ?? (typeof first === 'number' ? Math.max(usual.high, first + Math.abs(first) / 2) : usual.high),
  );
  if (!(low < high))
    return issue(
      `${of.given.meaning} is to go from the lesser to the greater value; write them the other way round`,
    );
  return { span: { ...usual, low, high }, cut };
}

/** What a text says of a number; it may name others. */
export function valueIn(
  text: string,
  { kind, meaning }: { readonly kind: Mover['given']['kind']; readonly meaning: string },
  graph: Graph,
  shown: Shown = plainShown,
): number | Issue {
  const reading = read(text, {
    kind,
    shown,
    field: meaning,
    kindOf: (name) => graph.quantity(name)?.kind,
    known: () => graph.names,
  });
  if (isIssue(reading)) return reading;
  return reading.evaluate((name) => {
    const value = graph.value(name);
    return typeof value === 'string' ? issue(`${name} is a choice and no number`) : value;
  });
}
