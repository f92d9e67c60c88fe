/**
 * Formulas: the steps and warnings of a cell, and the builder's own. What is shown is what runs.
 *
 * A formula names the values around it (`slope * thickness`), may hold literals as entries do (`25 mm`, `1/4 in`),
 * the constants `pi`, `rad`, `K` and `g`, comparisons with `and`, `or`, `not`, a conditional `a > b ? c : d`, and
 * choices: `timber == "whiteOak"`. It is compiled once; evaluation is on plain SI numbers.
 */
import { type Dimension, sameDimension } from './dimension';
import { type Issue, isIssue, issue } from './issue';
import { type KindId, kindOf, sayDimension } from './kinds';
import { unknownName } from './names';
import { plainText } from './signs';
import type { DimensionOf } from './sorts';
import { type Sum, sumOf } from './sum';
import { constants, type MathFunction, NoAnswer } from './vocabulary';

/** A function that formulas may call, besides those of the vocabulary. What it throws as an Error is its sentence to the builder. */
export interface FormulaFunction {
  readonly takes: readonly KindId[];
  readonly gives: KindId;
  readonly run: (...values: number[]) => number;
}

export interface Formula {
  readonly text: string;
  /** Names of values, each once, in the order of the text. */
  readonly names: readonly string[];
  /** Functions called that are not of the vocabulary, each once. */
  readonly functions: readonly string[];
  /** 'truth' for a yes or no, which evaluates to 1 or 0. */
  readonly asks: 'number' | 'truth';
  /** The parsed sum, for printing. */
  readonly sum: Sum;
  /** The value for the values in `scope`: never NaN, never infinite. A missing name is an issue. */
  evaluate(scope: Readonly<Record<string, number | string>>): number | Issue;
  /** What the formula measures, from what its names measure; a plain number for a yes or no. */
  dimension(of: DimensionOf): Dimension | Issue;
}

/** Longer formulas are refused unread. */
export const longestFormula = 600;

/** Reads a formula once, to evaluate it often. `known` are names to offer in the place of one that is not there. */
export function formula(
  text: string,
  functions: Readonly<Record<string, FormulaFunction>> = {},
  known: () => Iterable<string> = () => [],
): Formula | Issue {
  const written = plainText(text);
  if (written.length > longestFormula)
    return issue(`the formula is too long: at most ${longestFormula} letters and signs are read`);
  const more = new Map(Object.entries(functions).map(([name, fn]) => [name, mathFunction(name, fn)]));
  const sum = sumOf(
    written,
    {
      length: false,
      unitWords: false,
      isName: (word) => !constants.has(word),
      isFunction: (name) => more.has(name),
      unknown: (name) => unknownName(name, known()),
      fault: issue,
    },
    more,
  );
  if (isIssue(sum)) return sum;
  return {
    text: written,
    names: sum.names,
    functions: sum.called,
    asks: sum.asksTruth ? 'truth' : 'number',
    sum,
    evaluate: (scope) =>
      sum.reckon((name) => (Object.hasOwn(scope, name) ? scope[name]! : issue(`${name} has no value`))), // asked for just before
    dimension: (of) => sum.dimension(of),
  };
}

function mathFunction(name: string, { takes, gives, run }: FormulaFunction): MathFunction {
  return {
    least: takes.length,
    most: takes.length,
    alike: false,
    gives: (of) => {
      const wrong = of.findIndex((given, i) => !sameDimension(given, kindOf(takes[i]!).dimension)); // counted beforehand
      if (wrong < 0) return kindOf(gives).dimension;
      return issue(
        `${name} takes ${kindOf(takes[wrong]!).noun} ${wrong === 0 ? 'first' : `in place ${wrong + 1}`}; this is ${sayDimension(of[wrong]!)}`,
      );
    },
    run: (...values) => sentenceOf(() => run(...values)),
  };
}

/** Turns a plain Error with its sentence into one for the builder. Other faults are ours, and pass. */
function sentenceOf(run: () => number): number {
  try {
    return run();
  } catch (thrown) {
    if (thrown instanceof Error && thrown.constructor === Error) throw new NoAnswer(thrown.message);
    throw thrown;
  }
}
