/** From a result that is wanted back to what brings it: where, over all that an input may be, it comes to that. */
import { type Where, type Aim, where } from '../../kernel';
import { isIssue, type KindId } from '../../measure';
import type { Graph } from '../graph/graph';
import type { Mover } from './movers';
import { type SweepSpan, usualSpan, wholeSpan } from './span';
import type { SayNumber } from './say-number';

export interface Backwards {
  readonly result: string;
  readonly kind: KindId;
  readonly by: Mover;
  readonly wanted: Aim;
  readonly value: number;
}

export interface FoundBack extends Where {
  /** What was looked through: all that the entry takes. */
  readonly span: SweepSpan;
  /** A sentence why there is no value in some places; empty where there is one everywhere. */
  readonly why: string;
}

/** Stretches about the number as it is now, which are looked at closely too. */
const NEAR = 40;

/** @yields how much is done, 0 to 1 */
export function* foundBackwards(
  graph: Graph,
  { result, by, wanted, value }: Backwards,
): Generator<number, FoundBack> {
  const ask = graph.supposing((read) => read.number(result));
  let why = '';
  const at = (x: number): number | null => {
    const y = ask({ [by.name]: x });
    if (!isIssue(y)) return y;
    why ||= y.issue;
    return null;
  };
  const span = wholeSpan(by);
  const { low, high } = usualSpan(by);
  const near = Array.from({ length: NEAR + 1 }, (_, i) => low + ((high - low) * i) / NEAR);
  const found = yield* where(at, wanted, value, span, [...near, by.value]);
  return { ...found, span, why };
}

/** Figures of an entry that a point makes: finer than any tool cuts. */
const FIGURES = 7;
const FEW = 4;

/** Numbers to write so that it is as wanted: of each stretch the one nearest to what is written now, rounded inward. */
export function toWrite({ met }: FoundBack, { by }: Backwards): readonly number[] {
  return met.map(({ from, to }) => {
    const near = Math.min(to, Math.max(from, by.value));
    if (from === to || near === by.value) return Number(near.toPrecision(FIGURES));
    const rounded = roundedInto(near, from, to);
    return rounded ?? Number(near.toPrecision(FIGURES));
  });
}

function roundedInto(near: number, from: number, to: number): number | null {
  if (near === 0) return 0;
  const unit = 10 ** (Math.floor(Math.log10(Math.abs(near))) - FEW + 1);
  const all = [Math.floor(near / unit) * unit, Math.ceil(near / unit) * unit].map((x) =>
    Number(x.toPrecision(12)),
  );
  return all.find((x) => x >= from && x <= to) ?? null;
}

/** What was found, in sentences. */
export function foundInWords(found: FoundBack, asked: Backwards, say: SayNumber): readonly string[] {
  const { met, stepsOver, least, most, span, hasGaps, why } = found;
  const { by, kind, wanted, value } = asked;
  const x = (at: number) => say(at, by.given.kind, { finer: 1 });
  const y = (at: number) => say(at, kind);
  const looked = `from ${say(span.low, by.given.kind)} to ${say(span.high, by.given.kind)}`;
  const is = wanted === 'exactly' ? y(value) : `${wanted} ${y(value)}`;
  const gaps = hasGaps ? [`In some places between there is no value: ${why}.`] : [];
  if (!least || !most) return [`There is no value anywhere ${looked}: ${why}.`];
  const places = met.map(({ from, to }) => (from === to ? `at ${x(from)}` : `from ${x(from)} to ${x(to)}`));
  const everywhere = met.length === 1 && !hasGaps && met[0]!.from === span.low && met[0]!.to === span.high;
  const first =
    met.length === 0
      ? `No: nowhere ${looked} is it ${is}.`
      : everywhere
        ? `It is ${is} everywhere ${looked}.`
        : `It is ${is} ${joined(places)}${met.length > 1 ? `: ${met.length} answers` : ''}.`;
  const over = stepsOver.map(
    ({ at, before, after }) => `At ${x(at)} it steps from ${y(before)} to ${y(after)}, past ${y(value)}.`,
  );
  const ends =
    least.value === most.value
      ? `It is ${y(least.value)} throughout.`
      : `The least it can be is ${y(least.value)}, ${placeOf(least, x)}; the most is ${y(most.value)}, ${placeOf(most, x)}.`;
  return [first, ...over, ends, ...gaps];
}

const placeOf = ({ at, turns }: NonNullable<Where['least']>, x: (at: number) => string): string =>
  turns ? `at ${x(at)}, where it turns` : `at ${x(at)}`;

const joined = (places: readonly string[]): string =>
  places.length < 2 ? places.join('') : `${places.slice(0, -1).join(', ')} and ${places.at(-1)}`;
