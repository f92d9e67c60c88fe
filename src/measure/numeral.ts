/**
 * Numerals: numbers as builders write them, without their unit: `14.625`, `1,2`, `3/4`, `14 5/8`, `14-5/8`.
 *
 * A comma before one, two or four and more figures is a decimal comma. Before exactly three it might part
 * thousands as well, and is refused unless only one reading is left: `0,125`, `1,234.5`, `1,234,567`.
 */
import { add, compare, type Exact, exact, exactDecimal } from './exact';
import { type Issue, isIssue, issue } from './issue';
import { unitAt } from './units';

/** A number without its unit, in units of whatever follows. */
export interface Amount {
  readonly amount: Exact;
  readonly end: number;
  readonly whole: boolean;
  readonly fraction: boolean;
}

export interface NumberRules {
  /** Commas belong to the number. */
  readonly comma: boolean;
  /** When `14-5/8` is a mixed number and not a difference. */
  readonly hyphen: 'always' | 'with a unit' | 'never';
  /** `3/4` is one number even without a unit, not a division. */
  readonly bareFraction: boolean;
}

const exponent = String.raw`(?:e[+-]?\d{1,3}(?![\d.A-Za-z]))?`;
const numberWithComma = new RegExp(String.raw`(?:\d+(?:[.,]\d+)*\.?|\.\d+)${exponent}`, 'iy');
const numberWithDot = new RegExp(String.raw`(?:\d+(?:\.\d+)*\.?|\.\d+)${exponent}`, 'iy');
const mixedTail = /( +|-)(\d+)\/(\d+)(?![\d.])/y;
const under = /\/(\d+)(?![\d.])/y;

export function numberAt(text: string, at: number, rules: NumberRules): Amount | Issue | undefined {
  const written = match(rules.comma ? numberWithComma : numberWithDot, text, at)?.[0];
  if (written === undefined) return undefined;
  const decimal = withPoint(written);
  if (isIssue(decimal)) return decimal;
  const end = at + written.length;
  const whole = /^\d+$/.test(written);
  const number: Amount = { amount: exactDecimal(decimal), end, whole, fraction: false };
  return whole
    ? (mixedFrom(text, at, number, rules) ?? fractionFrom(text, at, number, rules) ?? number)
    : number;
}

/** `14 5/8` and `14-5/8`, after the whole number. */
function mixedFrom(
  text: string,
  start: number,
  number: Amount,
  rules: NumberRules,
): Amount | Issue | undefined {
  const [all, joint, top, bottom] = match(mixedTail, text, number.end) ?? [];
  if (all === undefined || top === undefined || bottom === undefined) return undefined;
  const end = number.end + all.length;
  const part = fractionOf(top, bottom, text.slice(start, end));
  const proper = !isIssue(part) && compare(part, exact(1)) < 0;
  if (joint === '-') {
    const reads =
      rules.hyphen === 'always' || (rules.hyphen === 'with a unit' && unitAt(text, skip(text, end)));
    if (!reads || !proper) return undefined;
  }
  if (isIssue(part)) return part;
  if (!proper) return issue(`the fraction in "${text.slice(start, end)}" is not less than one`);
  return { amount: add(number.amount, part), end, whole: false, fraction: false };
}

/** `3/4`, after its upper figure. */
function fractionFrom(
  text: string,
  start: number,
  number: Amount,
  rules: NumberRules,
): Amount | Issue | undefined {
  const [all, bottom] = match(under, text, number.end) ?? [];
  if (all === undefined || bottom === undefined) return undefined;
  const end = number.end + all.length;
  const reads = unitAt(text, skip(text, end)) ?? (rules.bareFraction && isEnd(text, end));
  if (!reads) return undefined;
  const amount = fractionOf(text.slice(start, number.end), bottom, text.slice(start, end));
  return isIssue(amount) ? amount : { amount, end, whole: false, fraction: true };
}

function fractionOf(top: string, bottom: string, written: string): Exact | Issue {
  if (/^0+$/.test(bottom)) return issue(`"${written}" divides by zero`);
  return exact(BigInt(top), BigInt(bottom));
}

/** A decimal with a point, from one with points or commas. */
function withPoint(written: string): string | Issue {
  if (/^\d*\.?\d*$/.test(written)) return written;
  const [number = '', exponent] = written.toLowerCase().split('e');
  const decimal = withoutThousands(number);
  return isIssue(decimal) || exponent === undefined ? decimal : `${decimal}e${exponent}`;
}

function withoutThousands(number: string): string | Issue {
  if (/^\d*\.?\d*$/.test(number)) return number;
  if (/^[1-9]\d{0,2}((,\d{3})+\.\d+|(,\d{3}){2,})$/.test(number)) return number.replaceAll(',', '');
  if (/^[1-9]\d{0,2}((\.\d{3})+,\d+|(\.\d{3}){2,})$/.test(number))
    return number.replaceAll('.', '').replace(',', '.');
  if (/^[1-9]\d{0,2},\d{3}$/.test(number)) {
    return issue(
      `"${number}" could be ${number.replace(',', '.')} or ${number.replace(',', '')}; write one of these`,
    );
  }
  if (/^\d+,\d+$/.test(number)) return number.replace(',', '.');
  return issue(`"${number}" is not a number; write decimals after one point, and thousands without a sign`);
}

export function match(pattern: RegExp, text: string, at: number): RegExpExecArray | null {
  pattern.lastIndex = at;
  return pattern.exec(text);
}

/** Past the spaces at `at`. */
export function skip(text: string, at: number): number {
  let end = at;
  while (text[end] === ' ') end += 1;
  return end;
}

/** True if nothing but signs stands before. */
export function isAlone(text: string, at: number): boolean {
  return /^[-+ ]*$/.test(text.slice(0, at));
}

/** True if a quantity may end here: at the end of the text, or before a sign that does not bind to it more closely. */
export function isEnd(text: string, at: number): boolean {
  const next = text[skip(text, at)];
  return next === undefined || '-+),<>=!?:'.includes(next);
}
