/** The words and signs of a sum: its constants, its functions and operators on plain SI numbers, and what they do to dimensions. */
import { type Dimension, dimension, plain, sameDimension, toPower } from './dimension';
import { type Issue, issue } from './issue';
import { sayDimension } from './kinds';

export interface Constant {
  readonly value: number;
  readonly dimension: Dimension;
  /** As it stands in print. */
  readonly symbol: string;
}

/** Standard gravity: 3rd General Conference on Weights and Measures, 1901. */
const gravity: Constant = { value: 9.80665, dimension: dimension({ length: 1, time: -2 }), symbol: 'g' };

/** `rad` and `K` turn an angle into a number and back: `radius * angle / rad` is the length of an arc. */
export const constants: ReadonlyMap<string, Constant> = new Map([
  ['pi', { value: Math.PI, dimension: plain, symbol: 'π' }],
  ['rad', { value: 1, dimension: dimension({ angle: 1 }), symbol: 'rad' }],
  ['K', { value: 1, dimension: dimension({ temperature: 1 }), symbol: 'K' }],
  ['g', gravity],
]);

export interface MathFunction {
  readonly least: number;
  readonly most: number;
  /** True if the arguments measure the same, so that a bare 0 among them does too. */
  readonly alike: boolean;
  /** Dimension of the result, from those of the arguments. */
  readonly gives: (of: readonly Dimension[]) => Dimension | Issue;
  readonly run: (...values: number[]) => number;
}

/** Thrown by an operation on numbers for which it has no answer; the message goes to the builder. */
export class NoAnswer extends Error {}

function noAnswer(sentence: string): never {
  throw new NoAnswer(sentence);
}

const angle = dimension({ angle: 1 });

/** One argument of dimension `takes`. */
function of(
  name: string,
  takes: Dimension,
  gives: Dimension,
  run: (x: number) => number,
): [string, MathFunction] {
  const check = ([given = plain]: readonly Dimension[]) =>
    sameDimension(given, takes)
      ? gives
      : issue(`${name} takes ${sayDimension(takes)}; this is ${sayDimension(given)}`);
  return [name, { least: 1, most: 1, alike: false, gives: check, run }];
}

/** Several arguments of one dimension. */
function alike(
  name: string,
  [least, most]: readonly [number, number],
  run: (...values: number[]) => number,
  gives: (of: Dimension) => Dimension = (of) => of,
): [string, MathFunction] {
  const check = ([first = plain, ...rest]: readonly Dimension[]) => {
    const other = rest.find((dimension) => !sameDimension(dimension, first));
    return other
      ? issue(
          `${name} takes quantities of one kind; here are ${sayDimension(first)} and ${sayDimension(other)}`,
        )
      : gives(first);
  };
  return [name, { least, most, alike: true, gives: check, run }];
}

/** Rounds a number, or a quantity to a step: `ceil(length, 100 mm)`. */
function rounding(name: string, round: (x: number) => number): [string, MathFunction] {
  const [, { gives }] = alike(name, [1, 2], round);
  const check = (of: readonly Dimension[]) =>
    of.length === 1 && !sameDimension(of[0] ?? plain, plain)
      ? issue(`${name} of ${sayDimension(of[0] ?? plain)} wants a step to round to, as in ${name}(a, 1 mm)`)
      : gives(of);
  const run = (x: number, step = 1) => round(divide(x, step)) * step;
  return [name, { least: 1, most: 2, alike: true, gives: check, run }];
}

// A length that divides into whole parts on paper may miss a whole number by its last bits.
const slack = (x: number) => 1e-9 * Math.max(1, Math.abs(x));
const halfUp = (x: number) => Math.sign(x) * Math.floor(Math.abs(x) + 0.5 + slack(x));

/** asin and acos: beyond one by no more than rounding is one. */
function arc(name: string, run: (x: number) => number): [string, MathFunction] {
  return of(name, plain, angle, (x) =>
    Math.abs(x) > 1 + 1e-12
      ? noAnswer(`takes ${name} of ${Number(x.toPrecision(4))}, which is beyond 1`)
      : run(Math.max(-1, Math.min(1, x))),
  );
}

function logarithm(name: string, run: (x: number) => number): [string, MathFunction] {
  return of(name, plain, plain, (x) =>
    x > 0 ? run(x) : noAnswer('takes the logarithm of a number that is not above zero'),
  );
}

export const functions: ReadonlyMap<string, MathFunction> = new Map([
  ['sqrt', { least: 1, most: 1, alike: true, gives: ([of = plain]) => toPower(of, 0.5), run: squareRoot }],
  of('sin', angle, plain, Math.sin),
  of('cos', angle, plain, Math.cos),
  of('tan', angle, plain, Math.tan),
  arc('asin', Math.asin),
  arc('acos', Math.acos),
  of('atan', plain, angle, Math.atan),
  alike('atan2', [2, 2], Math.atan2, () => angle),
  alike('hypot', [2, 9], Math.hypot),
  alike('abs', [1, 1], Math.abs),
  alike('min', [1, 99], Math.min),
  alike('max', [1, 99], Math.max),
  rounding('round', halfUp),
  rounding('ceil', (x) => Math.ceil(x - slack(x))),
  rounding('floor', (x) => Math.floor(x + slack(x))),
  of('exp', plain, plain, Math.exp),
  logarithm('ln', Math.log),
  logarithm('log10', Math.log10),
]);

function squareRoot(x: number): number {
  return x < 0 ? noAnswer('takes the square root of a number below zero') : Math.sqrt(x);
}

function divide(a: number, b: number): number {
  return b === 0 ? noAnswer('divides by zero') : a / b;
}

function raise(a: number, b: number): number {
  if (a === 0 && b < 0) return noAnswer('divides by zero');
  const raised = a ** b;
  return Number.isNaN(raised) ? noAnswer('takes a broken power of a number below zero') : raised;
}

/** Equal to within the rounding of a sum. Choices are equal when they are the same word. */
function equal(a: number | string, b: number | string): boolean {
  if (typeof a === 'string' || typeof b === 'string') return a === b;
  return Math.abs(a - b) <= 1e-12 * Math.max(Math.abs(a), Math.abs(b));
}

const truth = (said: boolean) => (said ? 1 : 0);

/**
 * What the parser's operators do, under the names it knows them by. Truths are 1 and 0. `and` and `or` are not
 * here: they look at their second half only where it matters, and so become conditionals.
 */
export const operations: Readonly<Record<string, (...values: number[]) => number>> = {
  add: (a: number, b: number) => a + b,
  subtract: (a: number, b: number) => a - b,
  multiply: (a: number, b: number) => a * b,
  divide: (a: number, b: number) => divide(a, b),
  pow: (a: number, b: number) => raise(a, b),
  unaryMinus: (a: number) => -a,
  unaryPlus: (a: number) => a,
  smaller: (a: number, b: number) => truth(a < b && !equal(a, b)),
  larger: (a: number, b: number) => truth(a > b && !equal(a, b)),
  smallerEq: (a: number, b: number) => truth(a < b || equal(a, b)),
  largerEq: (a: number, b: number) => truth(a > b || equal(a, b)),
  equal: (a: number, b: number) => truth(equal(a, b)),
  unequal: (a: number, b: number) => truth(!equal(a, b)),
  not: (a: number) => truth(a === 0),
};
