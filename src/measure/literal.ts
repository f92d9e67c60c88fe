/**
 * Literals: the ways in which builders write one quantity.
 *
 *     19 mm   1,2 m   14.625 in   14 5/8   14-5/8 in   5' 3 1/2"   5 ft 3-1/2 in   5'3   2 lb 3 oz   12° 30'
 *     5-3-4   5-3-4+   5-3-4-   (feet, inches and eighths, with a sixteenth more or less: lengths only)
 */
import { type Dimension, plain } from './dimension';
import { add, compare, type Exact, exact, multiply, nearestDouble, negate } from './exact';
import { type Issue, isIssue, issue } from './issue';
import { type Amount, isAlone, isEnd, match, numberAt, skip } from './numeral';
import { knownUnit, type Unit, unitAt, unitOf } from './units';

export interface Literal {
  readonly end: number;
  /** In SI, but for the zero of °C and °F; as written for a bare number. */
  readonly amount: Exact;
  /** The unit written; undefined for a bare number. */
  readonly unit: Unit | undefined;
  readonly dimension: Dimension;
  /** Written as a fraction of a unit (`3/4 in`), which after a division sign could be meant in two ways. */
  readonly fraction: boolean;
}

/** What surrounds a literal and changes how it is read. */
export interface LiteralContext {
  /** In the field of a length `5-3-4` is feet, inches and eighths. */
  readonly length: boolean;
  /** The operator before it; empty where there is none. */
  readonly after: string;
  /** Among the arguments of a function a comma parts them, and is no decimal comma. */
  readonly commaParts: boolean;
}

/** The value of a literal, or of its negative. A bare number takes `unit`. */
export function valueOf(literal: Literal, negative: boolean, unit?: Unit): number {
  const taken = literal.unit ?? unit;
  const amount = literal.unit || !unit ? literal.amount : multiply(literal.amount, unit.factor);
  const signed = negative ? negate(amount) : amount;
  return nearestDouble(taken?.zero ? add(signed, taken.zero) : signed);
}

/** The literal that begins at `at`; undefined if no number begins there. */
export function literalAt(text: string, at: number, around: LiteralContext): Literal | Issue | undefined {
  if (around.length && !/[/^]/.test(around.after)) {
    const offset = eighthsAt(text, at);
    if (offset) return offset;
  }
  const sign = match(currency, text, at)?.[0] ?? '';
  const number = numberAt(text, at + sign.length, {
    comma: !around.commaParts,
    // `2*14-5/8` and `a/2-1/2 in` are sums; elsewhere `14-5/8 in` is a mixed number.
    hyphen: /[*/^]/.test(around.after)
      ? 'never'
      : around.length && isAlone(text, at)
        ? 'always'
        : 'with a unit',
    bareFraction: isAlone(text, at),
  });
  if (number === undefined || isIssue(number)) return number;
  if (sign) return priced(text, number);

  const found = unitAt(text, skip(text, number.end));
  if (!found)
    return { end: number.end, amount: number.amount, unit: undefined, dimension: plain, fraction: false };
  const { unit } = found;
  const joined = follow(text, at, { ...number, end: found.end }, unit, !around.commaParts);
  if (isIssue(joined)) return joined;
  const amount = multiply(joined.amount, unit.factor);
  return { end: joined.end, amount, unit, dimension: unit.dimension, fraction: number.fraction };
}

/** The smaller part of the same quantity, if one follows: the inches after the feet. */
function follow(
  text: string,
  start: number,
  first: Amount,
  unit: Unit,
  comma: boolean,
): Pick<Amount, 'amount' | 'end'> | Issue {
  const { smaller } = unit;
  const joint = smaller && match(/ *(?=[\d.])|-(?=[\d.])/y, text, first.end)?.[0];
  if (!smaller || joint === undefined) return first;
  const from = first.end + joint.length;
  const number = numberAt(text, from, { comma, hyphen: 'always', bareFraction: true });
  if (number === undefined || isIssue(number)) return number ?? first;
  const at = skip(text, number.end);
  // After degrees a prime is a minute of arc, not a foot.
  const minute = unit.symbol === '°' && text[at] === "'";
  const found = minute ? { unit: unitOf('arcmin'), end: at + 1 } : unitAt(text, at);
  // `6'-2` alone is six foot two; in a longer sum the hyphen takes two away.
  const fits = found
    ? found.unit?.symbol === smaller.unit
    : smaller.bare && (joint === '-' ? at >= text.length : isEnd(text, at));
  if (!fits) return first;
  const end = found?.end ?? number.end;
  const written = text.slice(start, end);
  if (!first.whole)
    return issue(`"${written}" has ${smaller.plural} after a broken number; write it in one unit`);
  if (compare(number.amount, exact(smaller.count)) >= 0) {
    return issue(
      `${smaller.plural} run from 0 to ${smaller.count - 1}; "${written}" has ${text.slice(from, number.end)}`,
    );
  }
  return { amount: add(first.amount, multiply(number.amount, exact(1, smaller.count))), end };
}

const currency = /[$€£¤] */y;
const eighths = /(\d+)-(\d+)-(\d+)(?![\d.,/]|-\d)([+-](?= *(?:$|[-+*/^),<>=!?:])))?/y;

/** Feet, inches and eighths, with `+` or `-` for a sixteenth more or less, as tables of offsets are written. */
function eighthsAt(text: string, at: number): Literal | Issue | undefined {
  const [all, feet, inches, parts, more] = match(eighths, text, at) ?? [];
  if (all === undefined || feet === undefined || inches === undefined || parts === undefined)
    return undefined;
  if (BigInt(inches) > 11n) return issue(`inches run from 0 to 11; "${all}" has ${inches}`);
  if (BigInt(parts) > 7n) return issue(`eighths run from 0 to 7; "${all}" has ${parts}`);
  const sixteenth = more === '+' ? 1n : more === '-' ? -1n : 0n;
  const sixteenths = (BigInt(feet) * 12n + BigInt(inches)) * 16n + BigInt(parts) * 2n + sixteenth;
  const inch = knownUnit('in');
  const amount = multiply(exact(sixteenths, 16), inch.factor);
  return { end: at + all.length, amount, unit: inch, dimension: inch.dimension, fraction: false };
}

/** An amount of money, or its price for a unit of something: `$12.50`, `$12.50/m`. */
function priced(text: string, number: Amount): Literal {
  const each = /^ ?(?:\/|per )/.test(text.slice(number.end))
    ? unitAt(text, skip(text, number.end))
    : undefined;
  const unit = knownUnit(each ? `money${each.unit.symbol}` : 'money');
  const amount = multiply(number.amount, unit.factor);
  return { end: each?.end ?? number.end, amount, unit, dimension: unit.dimension, fraction: false };
}
