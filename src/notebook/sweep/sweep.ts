/** One number drawn against another that it hangs on: worked out over the graph, place by place. */
import type { SweepAsk } from '../../boat';
import { runsOf, type Sample, sampled, withTurns } from '../../kernel';
import { type Issue, isIssue, issue, type KindId, type Shown } from '../../measure';
import type { Graph } from '../graph/graph';
import { type LimitAlong, limitsAlong, type SweptLimit } from './limits-along';
import { type Mover, moversOf } from './movers';
import { type SweepSpan, spanBetween, valueIn } from './span';

/** A sweep that can be drawn. */
export interface Sweep {
  readonly result: string;
  readonly kind: KindId;
  readonly meaning: string;
  readonly against: Mover;
  readonly span: SweepSpan;
  /** What was cut off the ends that were asked for. */
  readonly cut: readonly string[];
  /** A second number and its values, each of which has a line of its own. */
  readonly family: { readonly of: Mover; readonly values: readonly number[] } | null;
}

export interface SweptLine {
  /** Value of the second number; null where there is but one line. */
  readonly value: number | null;
  /** The samples in runs through which a line can be drawn. */
  readonly runs: readonly (readonly Sample[])[];
  /** Where there is no value, and why. */
  readonly gaps: readonly Gap[];
  /** The limits that were asked for, in their order. */
  readonly limits: readonly LimitAlong[];
}
export interface Gap {
  readonly from: number;
  readonly to: number;
  readonly why: string;
}

const MOST_LINES = 6;

/** As when its station was taken out of the table. */
const noNumber = (name: string): string => `there is no number "${name}" on this boat; choose another`;

/** What is asked, held against the graph. @returns a sweep, or why it is none, as a sentence without its full stop */
export function sweepFrom(ask: SweepAsk, graph: Graph, shown: Shown): Sweep | Issue {
  const of = graph.quantity(ask.result);
  if (!of) return issue(noNumber(ask.result));
  if (of.kind === 'choice') return issue(`${of.meaning} is a choice; only numbers can be drawn`);
  const all = moversOf(graph, ask.result);
  const found = (name: string): Mover | Issue =>
    all.find((one) => one.name === name) ??
    issue(
      graph.has(name)
        ? `${of.meaning} does not hang on ${graph.quantity(name)?.meaning ?? name} as things stand`
        : noNumber(name),
    );
  const against = found(ask.against);
  if (isIssue(against)) return against;
  const between = spanBetween(against, ask.from, ask.to, graph, shown);
  if (isIssue(between)) return between;
  const second = ask.lines === '' ? null : found(ask.lines);
  if (isIssue(second)) return second;
  if (second?.name === against.name) return issue('the lines are to be of another number than the one below');
  const values = second && familyOf(second, ask.at, graph, shown);
  if (isIssue(values)) return values;
  const family = second && values ? { of: second, values } : null;
  return { result: ask.result, kind: of.kind, meaning: of.meaning, against, ...between, family };
}

function familyOf(of: Mover, at: string, graph: Graph, shown: Shown): readonly number[] | Issue {
  const texts = at
    .split(/\s+or\s+|[;,]\s+/)
    .map((text) => text.trim())
    .filter((text) => text !== '');
  if (texts.length === 0) return usualValues(of);
  if (texts.length > MOST_LINES) return issue(`${MOST_LINES} lines are the most that can be told apart`);
  const values: number[] = [];
  for (const text of texts) {
    const value = valueIn(text, of.given, graph, shown);
    if (isIssue(value)) return value;
    if (value < of.least || value > of.most)
      return issue(`${of.given.meaning} can't be ${text}: its entry does not take that`);
    values.push(value);
  }
  return [...new Set(values)].toSorted((a, b) => a - b);
}

/** The value now between a quarter less and a quarter more, in round figures; of counts, one less and one more. */
function usualValues({ value, given, least, most }: Mover): readonly number[] {
  const beside = given.kind === 'count' ? 1 : Number((Math.abs(value) / 4).toPrecision(1)) || 1;
  const round = (one: number) => Number(one.toPrecision(2));
  return [round(value - beside), value, round(value + beside)].filter((one) => one >= least && one <= most);
}

/**
 * @param graph one version's
 * @param limits followed along each line
 * @yields how much is done, 0 to 1
 */
export function* swept(
  graph: Graph,
  sweep: Sweep,
  limits: readonly SweptLimit[] = [],
): Generator<number, SweptLine[]> {
  const { result, against, span, family } = sweep;
  const ask = graph.supposing((read) => read.number(result));
  const askLimits = limits.map(({ by }) => graph.supposing(by));
  const values = family?.values ?? [null];
  const lines: SweptLine[] = [];
  for (const value of values) {
    const reasons = new Map<number, string>();
    const bounds = new Map<number, readonly (number | Issue | null)[]>();
    const others = family && value !== null ? { [family.of.name]: value } : {};
    const changes = (x: number) => ({ ...others, [against.name]: x });
    const at = (x: number): number | null => {
      const y = ask(changes(x));
      if (isIssue(y)) {
        reasons.set(x, y.issue);
        return null;
      }
      // At the same place: what both were worked out from is worked out once.
      bounds.set(
        x,
        askLimits.map((limit) => limit(changes(x))),
      );
      return y;
    };
    const limitAt = (x: number, limit: number) => {
      const bound = bounds.get(x)?.[limit];
      return typeof bound === 'number' ? bound : null;
    };
    const looking = sampled(at, span, [against.value]);
    let step = looking.next();
    for (; !step.done; step = looking.next()) yield (lines.length + step.value) / values.length;
    const samples = span.whole ? step.value : yield* withTurns(at, step.value);
    lines.push({
      value,
      runs: runsOf(samples, span),
      gaps: gapsOf(samples, reasons),
      limits: yield* limitsAlong(limits, samples, at, limitAt, span),
    });
  }
  return lines;
}

function gapsOf(samples: readonly Sample[], reasons: ReadonlyMap<number, string>): Gap[] {
  const gaps: { from: number; to: number; why: string }[] = [];
  let last: Sample | null = null;
  for (const sample of samples) {
    const { x, y } = sample;
    const why = reasons.get(x) ?? '';
    const gap = gaps.at(-1);
    if (y === null && gap && last?.y === null && gap.why === why) gap.to = x;
    else if (y === null) gaps.push({ from: x, to: x, why });
    last = sample;
  }
  return gaps;
}
