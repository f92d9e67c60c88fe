/** Reads what a builder types into a field: one quantity in any notation, or a sum over quantities. */
import { type Dimension, dimension, over, plain, sameDimension, times } from './dimension';
import { divide as quotient, nearestDouble } from './exact';
import { type Issue, isIssue, issue } from './issue';
import { type Kind, type KindId, kindOf, sayDimension } from './kinds';
import { type Literal, literalAt, valueOf } from './literal';
import { unknownName, wrongSort } from './names';
import { type Shown, shownUnit } from './shown';
import { numbersOf } from './sold';
import { plainText } from './signs';
import { type Sum, sumOf } from './sum';
import { knownUnit, type Unit, withUnit } from './units';

/** A text understood. */
export interface Expression {
  /** The text as it is kept: a bare number has its unit, so that it means the same under any choice of units. */
  readonly text: string;
  readonly dimension: Dimension;
  /** Quantities it names, each once. */
  readonly names: readonly string[];
  /**
   * The value in SI: never NaN, never infinite. `get` gives the value of a named quantity, or why there is none,
   * which is then the answer; what it throws passes through.
   */
  evaluate(get: (name: string) => number | Issue): number | Issue;
}

export type Reading = Expression | Issue;

export interface ReadOptions {
  readonly kind: KindId;
  readonly shown: Shown;
  /** What the field holds, as the subject of a sentence: `thickness`. */
  readonly field: string;
  /** The kind of a named quantity; undefined if there is none of that name. */
  readonly kindOf?: (name: string) => KindId | undefined;
  /** Names to offer in the place of one that is not there. */
  readonly known?: () => Iterable<string>;
  /** What a name to offer stands for, in words. */
  readonly meaningOf?: (name: string) => string | undefined;
  /** The units that sentences are told in, where they are not those that bare numbers take. */
  readonly told?: () => Shown;
  /** The unit that a bare number takes, where the field has one of its own. */
  readonly unit?: string;
}

/** Longer texts are refused unread. */
export const longestEntry = 300;

/** Reads `text`. Whatever it is, the answer is an expression or a sentence that says what is wrong. */
export function read(text: string, options: ReadOptions): Reading {
  const field = fieldOf(options);
  const written = plainText(text);
  if (written === '') return issue(`${field.name} is empty`);
  if (written.length > longestEntry)
    return issue(`${field.name} is too long: at most ${longestEntry} letters and signs are read`);
  if (field.kind.id === 'choice') return issue(wrongSort(field.name, 'choice', field.name));
  const plainly = asQuoted(written, field);
  if (isIssue(plainly)) return plainly;
  return (
    readName(plainly, text.trim(), field, options) ??
    readNumber(plainly, field) ??
    readShape(plainly, field) ??
    readLiteral(plainly, text.trim(), field) ??
    readSum(plainly, text.trim(), field, options)
  );
}

interface Field {
  readonly name: string;
  readonly kind: Kind;
  readonly length: boolean;
  /** What a bare number takes; undefined for plain numbers and money. */
  readonly unit: Unit | undefined;
}

function fieldOf({ kind: id, shown, field, unit }: ReadOptions): Field {
  const kind = kindOf(id);
  const symbol = unit ?? shownUnit(id, shown);
  const taken = symbol === '' ? undefined : knownUnit(symbol);
  return {
    name: field,
    kind,
    length: sameDimension(kind.dimension, metre),
    unit: taken && unitIn(kind, taken),
  };
}

/** The unit as it is meant in a field: of a difference, 5 °C are 5 K from any zero. */
function unitIn(kind: Kind, unit: Unit): Unit {
  if (kind.id !== 'warmth' || !unit.zero) return unit;
  const { zero: _, ...rest } = unit;
  return rest;
}

const metre = dimension({ length: 1 });
const currency = dimension({ money: 1 });

/** What shops sell one of: `6.49 each`, `12 per sheet`, `$4/box`. */
const piece =
  /(?: ?(?<![a-z])(?:each|ea\.?|apiece)| ?(?:\/|\ban? |\bper ) ?(?:piece|sheet|box|board|length|tin|can|tub|tube|cartridge|bottle|pack|packet|kit|roll|pair|joint))$/i;

/** A price as shops say it, in the notation that is read: without `each`, and `per foot` for `a foot`. */
function asQuoted(text: string, { name, kind }: Field): string | Issue {
  if (kind.dimension[5] === 0) return text;
  const one = text.replace(piece, '');
  if (one === text) return text.replace(/ an? (?=[a-z])/i, ' per ');
  return sameDimension(kind.dimension, currency)
    ? one
    : issue(`${name} is ${kind.noun}; "${quote(text)}" is for one piece`);
}

/** One quantity, from end to end of the text; undefined if there is more to it. */
function readLiteral(text: string, kept: string, field: Field): Reading | undefined {
  const signed = /^[-+] */.exec(text)?.[0] ?? '';
  const literal = literalAt(text, signed.length, { length: field.length, after: '', commaParts: false });
  if (!literal) return undefined;
  if (isIssue(literal)) return issue(`${field.name}: ${literal.issue}`);
  if (literal.end < text.length) return undefined;
  const meant = literal.unit ? { ...literal, unit: unitIn(field.kind, literal.unit) } : literal;
  const value = valueOf(meant, signed.startsWith('-'), field.unit);
  if (!Number.isFinite(value)) return issue(`${field.name}: "${quote(kept)}" is too large a number`);
  if (field.kind.id === 'slope')
    return literal.unit
      ? (misfitOf(literal.dimension, kept, field) ?? askSlope(field))
      : slope(text, value, field);
  const misfit = literal.unit && misfitOf(literal.dimension, kept, field);
  return misfit ?? constant(literal.unit ? kept : withUnit(kept, field.unit), value, field);
}

function constant(text: string, value: number, field: Field): Reading {
  const checked = checkWhole(value, field);
  return isIssue(checked)
    ? checked
    : { text, dimension: field.kind.dimension, names: [], evaluate: () => checked };
}

/** `No. 8` and `#8`: a plain number, or the size that goes by it. */
function readNumber(text: string, field: Field): Reading | undefined {
  const [, digits] = /^(?:#|no\b\.?) ?(\d{1,3})$/i.exec(text) ?? [];
  if (digits === undefined) return undefined;
  const no = Number(digits);
  if (field.kind.id === 'number' || field.kind.id === 'count') return constant(digits, no, field);
  const sizeOf = numbersOf(field.kind.id);
  const size = sizeOf?.(no);
  return !sizeOf
    ? undefined
    : size === undefined
      ? issue(`${field.name}: no size goes by "${text}"`)
      : constant(text, size, field);
}

/** `1 in 8`, `8 to 1` and `8:1`, which mean something in the fields of slopes and ratios only; of slopes `1/8` too. */
function readShape(text: string, field: Field): Reading | undefined {
  if (!sameDimension(field.kind.dimension, plain)) return undefined;
  const slopes = field.kind.id === 'slope';
  const said = text.replaceAll(/ *: *|[- ]to[- ]/g, ':').replace('-in-', ' in ');
  const [, first, sign, second] =
    /^([\d.,/ ]+?)( in |:)([\d.,/ ]+)$/.exec(said) ??
    (slopes ? /^(1) ?(\/) ?([\d.,]+)$/.exec(said) : null) ??
    [];
  if (first === undefined || second === undefined) return undefined;
  if (sign === ' in ' && !slopes && field.kind.id !== 'ratio') return undefined;
  const [a, b] = [bareNumber(first), bareNumber(second)];
  if (!a || !b) return undefined;
  if (isIssue(a)) return issue(`${field.name}: ${a.issue}`);
  if (isIssue(b)) return issue(`${field.name}: ${b.issue}`);
  if (a.amount.top === 0n || b.amount.top === 0n)
    return issue(`${field.name}: neither side of "${text}" may be 0`);
  const ratio = nearestDouble(quotient(a.amount, b.amount));
  if (!slopes) return constant(text, ratio, field);
  // The trade writes the same scarf 8:1 and 1:8; the side that is not 1 is the run.
  const run = nearestDouble(quotient(b.amount, a.amount));
  if (sign === ' in ' || valueOf(a, false) === 1) return constant(text, run, field);
  return valueOf(b, false) === 1 ? constant(text, ratio, field) : askSlope(field);
}

/** One quantity by its name, as links are written: the sum of it alone, with nothing to work out. */
function readName(
  text: string,
  kept: string,
  field: Field,
  { kindOf: kindOfName }: ReadOptions,
): Reading | undefined {
  if (!/^[A-Za-z]\w*(?:\.\w+)+$/.test(text)) return undefined;
  const { kind } = field;
  const measured = dimensionOfKind(kindOfName?.(text));
  // What is no quantity or doesn't fit, and what would take the field's unit, is told and read as any sum.
  if (measured === undefined || measured === 'choice' || !sameDimension(measured, kind.dimension))
    return undefined;
  if (field.unit && sameDimension(measured, plain) && kind.id !== 'share') return undefined;
  return {
    text: kept,
    dimension: kind.dimension,
    names: [text],
    evaluate: (get) => {
      const value = get(text);
      return isIssue(value) ? value : checkWhole(value, field);
    },
  };
}

function bareNumber(text: string): Literal | Issue | undefined {
  const number = literalAt(text, 0, { length: false, after: '', commaParts: false });
  return number && !isIssue(number) && (number.unit || number.end < text.length) ? undefined : number;
}

function slope(text: string, run: number, field: Field): Reading {
  if (run <= 0) return issue(`${field.name} is a slope; its run must be more than 0`);
  return constant(`1 in ${text}`, run, field);
}

function askSlope(field: Field): Issue {
  return issue(`${field.name} is a slope; write it as 1 in 8`);
}

function readSum(text: string, kept: string, field: Field, options: ReadOptions): Reading {
  const sum = sumOf(text, {
    length: field.length,
    unitWords: true,
    isName: (word) => options.kindOf?.(word) !== undefined,
    isFunction: () => false,
    ...(options.meaningOf && { meaningOf: options.meaningOf }),
    unknown: (name) =>
      unknownName(name, fitting(options), options.meaningOf, `; write ${exampleOf(field, options)}`),
    fault: (predicate) => issue(`${field.name} ${predicate}`),
  });
  if (isIssue(sum)) return issue(`${field.name}: ${sum.issue}`);
  const measured = sum.dimension((name) => dimensionOfKind(options.kindOf?.(name)));
  if (isIssue(measured)) return issue(`${field.name}: ${measured.issue}`);
  if (sum.asksTruth) return issue(`${field.name} is ${field.kind.noun}; "${quote(kept)}" is a yes or no`);

  // A sum that measures nothing takes the field's unit as a whole; a share only if it is of bare numbers.
  const takes =
    sameDimension(measured, plain) && field.unit && (field.kind.id !== 'share' || isBare(sum))
      ? field.unit
      : undefined;
  if (takes?.zero)
    return issue(`${field.name} needs one temperature, as in 20 ${takes.symbol}; a sum must be in K`);
  const misfit = takes ? undefined : misfitOf(measured, kept, field);
  if (misfit) return misfit;
  const factor = takes ? nearestDouble(takes.factor) : 1;
  return {
    text: takes ? `(${kept}) * ${withUnit('1', field.unit)}` : kept,
    dimension: field.kind.dimension,
    names: sum.names,
    evaluate: (get) => {
      const value = sum.reckon(get);
      return isIssue(value) ? value : checkWhole(value * factor, field);
    },
  };
}

/** Names worth offering: those that measure what the field holds. */
function* fitting({ kind, known, kindOf: kindOfName }: ReadOptions): Iterable<string> {
  const wanted = dimensionOfKind(kind);
  for (const name of known?.() ?? []) {
    const given = dimensionOfKind(kindOfName?.(name));
    if (given !== undefined && given !== 'choice' && wanted !== 'choice' && sameDimension(given, wanted!))
      yield name;
  }
}

/** What can be typed instead: `a length, as 12 mm`. */
function exampleOf({ kind }: Field, { shown, told, unit }: ReadOptions): string {
  const symbol = unit ?? shownUnit(kind.id, told?.() ?? shown);
  const figures =
    kind.id === 'slope'
      ? '1 in 8'
      : symbol === 'in'
        ? '3/4 in'
        : withUnit('12', symbol === '' ? undefined : knownUnit(symbol));
  return `${kind.noun}, as ${figures}`;
}

function dimensionOfKind(id: KindId | undefined): Dimension | 'choice' | undefined {
  return id === undefined || id === 'choice' ? id : kindOf(id).dimension;
}

/** True if a sum is of bare numbers alone. */
function isBare({ meanings }: Sum): boolean {
  return [...meanings.values()].every((meaning) => meaning.is === 'literal' && meaning.made === 'bare');
}

/** Why a quantity of this dimension does not fit the field; undefined if it does. */
function misfitOf(given: Dimension, text: string, { name, kind }: Field): Issue | undefined {
  if (sameDimension(given, kind.dimension)) return undefined;
  // Amounts of money need no sign: `12.50/m` is a price.
  const asPrice = times(given, currency);
  if (sameDimension(asPrice, kind.dimension)) return undefined;
  const meant = sayDimension(
    kind.dimension[5] === 0 || given[5] !== 0 || given.some((power) => power > 0) ? given : asPrice,
  );
  const weight = sameDimension(over(kind.dimension, given), kindOf('acceleration').dimension);
  const hint = weight ? '; for a force write lbf, kgf or N' : '';
  return issue(`${name} is ${kind.noun}; "${quote(text)}" is ${meant}${hint}`);
}

/** Counts are whole; what misses a whole number by rounding is one. */
function checkWhole(value: number, { name, kind }: Field): number | Issue {
  if (Number.isNaN(value)) return issue(`${name} comes to no number`);
  if (!Number.isFinite(value)) return issue(`${name} comes to a number too large to reckon with`);
  if (kind.id !== 'count') return value;
  const whole = Math.round(value);
  return Math.abs(value - whole) <= 1e-9 * Math.max(1, Math.abs(whole))
    ? whole
    : issue(`${name} is a count; ${Number(value.toPrecision(6))} is not a whole number`);
}

/** A text short enough to stand in a sentence. */
function quote(text: string): string {
  return text.length > 40 ? `${text.slice(0, 39)}…` : text;
}
