/** From a result that is wanted back to what brings it: where, over all that an input may be, it comes to that. */
import { type Where, where } from '../../kernel';
import { isIssue, type Shown } from '../../measure';
import type { Graph } from '../graph/graph';
import { type SweepSpan, usualSpan, wholeSpan } from './span';
import type { SayNumber } from './say-number';
import { type NumberToWrite, numbersToWrite } from './to-write';
import type { Backwards } from './wanted';

export interface FoundBack extends Where {
  /** What was looked through: all that the entry takes. */
  readonly span: SweepSpan;
  /** A sentence why there is no value in some places; empty where there is one everywhere. */
  readonly why: string;
  readonly writes: readonly NumberToWrite[];
}

/** Stretches about the number as it is now, which are looked at closely too. */
const NEAR = 40;

/** @yields how much is done, 0 to 1 */
export function* foundBackwards(graph: Graph, asked: Backwards, shown: Shown): Generator<number, FoundBack> {
  const { result, by, wanted, value } = asked;
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
  const manners = { shown, by: graph.mannerOf(by.name), result: graph.mannerOf(result) };
  return { ...found, span, why, writes: numbersToWrite(found, asked, at, manners) };
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

/** What a number to write comes to, where that is not what is wanted; nothing where it is. */
export function comesToInWords(
  { comesTo }: NumberToWrite,
  { kind, wanted, value }: Backwards,
  say: SayNumber,
): string {
  if (comesTo === null) return '';
  const [is, was] = [say(comesTo, kind), say(value, kind)];
  const past = wanted === 'at most' ? 'more than' : 'less than';
  if (wanted !== 'exactly') return is === was ? `gives a hair ${past} ${was}` : `gives ${is}, ${past} ${was}`;
  return is === was ? '' : `gives ${is}, not ${was}`;
}

const placeOf = ({ at, turns }: NonNullable<Where['least']>, x: (at: number) => string): string =>
  turns ? `at ${x(at)}, where it turns` : `at ${x(at)}`;

const joined = (places: readonly string[]): string =>
  places.length < 2 ? places.join('') : `${places.slice(0, -1).join(', ')} and ${places.at(-1)}`;
