/** What each part of a sum measures, found by walking its tree; and what can't be joined, as a sentence. */
import { type Dimension, over, plain, sameDimension, times, toPower } from './dimension';
import { type Issue, isIssue, issue } from './issue';
import { sayDimension } from './kinds';
import { wrongSort } from './names';
import type { Tree } from './parser';
import type { Meaning } from './tokens';
import { constants, functions, type MathFunction, NoAnswer, operations } from './vocabulary';

/** What a name measures; 'choice' if it is one, undefined if there is no such name. */
export type DimensionOf = (name: string) => Dimension | 'choice' | undefined;

export interface SortRules {
  readonly meanings: ReadonlyMap<string, Meaning>;
  readonly of: DimensionOf;
  /** Functions besides those of the vocabulary. */
  readonly called: ReadonlyMap<string, MathFunction>;
  /** The sentence for a name that is not there. */
  readonly unknown: (name: string) => string;
  /** What a name stands for, in words. */
  readonly meaningOf?: (name: string) => string | undefined;
}

/** A dimension; a yes or no; a choice; or a bare 0, which may stand beside any quantity. */
type Sort = Dimension | 'truth' | 'choice' | 'nothing';

type Conditional = Extract<Tree, { type: 'ConditionalNode' }>;

/** What the whole sum measures; a plain number for a yes or no. */
export function dimensionOfTree(tree: Tree, rules: SortRules): Dimension | Issue {
  const sort = sortOf(tree, rules);
  if (isIssue(sort)) return sort;
  if (sort === 'choice') return noNumber([tree], rules);
  return typeof sort === 'string' ? plain : sort;
}

/** True if the sum asks a question, so that its answer is yes or no. */
export function asksTruth(tree: Tree): boolean {
  if (tree.type === 'ParenthesisNode') return asksTruth(tree.content);
  if (tree.type === 'ConditionalNode') return asksTruth(tree.trueExpr);
  return tree.type === 'OperatorNode' && (tree.fn in comparisons || joiners.has(tree.fn));
}

const comparisons: Readonly<Record<string, string>> = {
  smaller: '<',
  larger: '>',
  smallerEq: '<=',
  largerEq: '>=',
  equal: '==',
  unequal: '!=',
};
const joiners = new Set(['and', 'or', 'not']);

function sortOf(tree: Tree, rules: SortRules): Sort | Issue {
  if (tree.type === 'ParenthesisNode') return sortOf(tree.content, rules);
  if (tree.type === 'SymbolNode') return sortOfMeaning(tree.name, rules);
  if (tree.type === 'ConditionalNode') return sortOfConditional(tree, rules);
  if (tree.type === 'FunctionNode') return sortOfCall(tree.fn.name, tree.args, rules);
  return sortOfOperator(tree.fn, tree.args, rules);
}

function sortOfMeaning(symbol: string, { meanings, of, unknown }: SortRules): Sort | Issue {
  const meaning = meanings.get(symbol);
  if (!meaning) throw new Error(`the parser made up a symbol: ${symbol}`);
  if (meaning.is === 'name') return of(meaning.name) ?? issue(unknown(meaning.name));
  if (meaning.is === 'choice') return 'choice';
  if (meaning.is === 'constant') return constants.get(meaning.name)?.dimension ?? plain;
  return meaning.made === 'bare' && meaning.value === 0 ? 'nothing' : meaning.dimension;
}

function sortOfConditional({ condition, trueExpr, falseExpr }: Conditional, rules: SortRules): Sort | Issue {
  const asked = sortOf(condition, rules);
  if (isIssue(asked)) return asked;
  if (asked !== 'truth') return issue('what stands before "?" must be a yes or no, as in a > b ? c : d');
  const answers = sortsOf([trueExpr, falseExpr], rules);
  if (isIssue(answers)) return answers;
  const [first = plain, second = plain] = answers;
  if (first === 'truth' && second === 'truth') return 'truth';
  return joined(first, second, (a, b) => `the two answers of "? :" are ${a} and ${b}`);
}

function sortOfCall(name: string, args: readonly Tree[], rules: SortRules): Sort | Issue {
  const sorts = sortsOf(args, rules);
  if (isIssue(sorts)) return sorts;
  const fn = functions.get(name) ?? rules.called.get(name);
  if (!fn) return issue(`there is no function "${name}"`);
  if (sorts.includes('truth')) return issue(`${name} can't take a yes or no`);
  if (sorts.includes('choice')) return noNumber(args, rules);
  const given = sorts.find((sort): sort is Dimension => typeof sort !== 'string') ?? plain;
  return fn.gives(sorts.map((sort) => (typeof sort === 'string' ? (fn.alike ? given : plain) : sort)));
}

function sortOfOperator(fn: string, args: readonly Tree[], rules: SortRules): Sort | Issue {
  const sorts = sortsOf(args, rules);
  if (isIssue(sorts)) return sorts;
  const [first = plain, second = plain] = sorts;
  if (joiners.has(fn)) {
    if (sorts.every((sort) => sort === 'truth')) return 'truth';
    return issue(
      fn === 'not'
        ? '"not" turns a yes or no about, as in not (a > b)'
        : `"${fn}" joins two of yes or no, as in a > b ${fn} c > d`,
    );
  }
  if (fn in comparisons) {
    if (first === 'truth' || second === 'truth') return issue('compare two at a time, joined by "and"');
    const both = first === 'choice' && second === 'choice';
    if (both && comparisons[fn] !== '==' && comparisons[fn] !== '!=')
      return issue(`choices have no order; compare them with "==" or "!="`);
    const same = both ? plain : joined(first, second, (a, b) => `can't compare ${a} with ${b}`);
    return isIssue(same) ? same : 'truth';
  }
  if (sorts.includes('truth')) return issue('a yes or no is no number to reckon with');
  if (sorts.includes('choice')) return noNumber(args, rules);
  const zeroed = args.map((arg) => zeroedLiteral(arg, rules)).find((text) => text !== undefined);
  if (zeroed !== undefined)
    return issue(
      `"${zeroed}" in a sum could be a temperature or a difference; write a difference in K or Δ°F`,
    );
  const [a, b] = [first, second].map((sort) => (typeof sort === 'string' ? plain : sort)) as [
    Dimension,
    Dimension,
  ];
  switch (fn) {
    case 'add':
      return joined(first, second, (one, other) => `can't add ${other} to ${one}`);
    case 'subtract':
      return joined(first, second, (one, other) => `can't take ${other} from ${one}`);
    case 'multiply':
      return times(a, b);
    case 'divide':
      return over(a, b);
    case 'pow':
      return sortOfPower(a, b, args[1], rules);
    default:
      return first;
  }
}

function sortOfPower(
  base: Dimension,
  exponent: Dimension,
  written: Tree | undefined,
  rules: SortRules,
): Dimension | Issue {
  if (!sameDimension(exponent, plain))
    return issue(`a power must be a plain number; this one is ${sayDimension(exponent)}`);
  if (sameDimension(base, plain)) return plain;
  const size = written && constantOf(written, rules);
  if (size === undefined) return issue(`the power of ${sayDimension(base)} must be written as a number`);
  return toPower(base, size);
}

/** The value of a part without names; undefined if it has any. */
function constantOf(tree: Tree, rules: SortRules): number | undefined {
  if (tree.type === 'ParenthesisNode') return constantOf(tree.content, rules);
  if (tree.type === 'SymbolNode') {
    const meaning = rules.meanings.get(tree.name);
    return meaning?.is === 'literal' ? meaning.value : undefined;
  }
  if (tree.type !== 'OperatorNode') return undefined;
  const values = tree.args.map((arg) => constantOf(arg, rules));
  if (!values.every((value) => value !== undefined)) return undefined;
  try {
    return operations[tree.fn]?.(...values);
  } catch (fault) {
    if (fault instanceof NoAnswer) return undefined;
    throw fault;
  }
}

/** Two sorts that must measure the same; a bare 0 goes with either. */
function joined(a: Sort, b: Sort, fault: (a: string, b: string) => string): Sort | Issue {
  // Nobody can tell which zero is meant of a temperature.
  const temperature = [a, b].some((sort) => typeof sort !== 'string' && sort[3] !== 0);
  if (a === 'nothing' && b === 'nothing') return a;
  if (a === 'nothing' && isDimension(b) && !temperature) return b;
  if (b === 'nothing' && isDimension(a) && !temperature) return a;
  if (isDimension(a) && isDimension(b) && sameDimension(a, b)) return a;
  const bare = [a, b].some((sort) => sort === 'nothing' || (isDimension(sort) && sameDimension(sort, plain)));
  return issue(fault(say(a), say(b)) + (bare && isQuantity(a, b) ? '; give the number its unit' : ''));
}

function isDimension(sort: Sort): sort is Dimension {
  return typeof sort !== 'string';
}

function isQuantity(...sorts: readonly Sort[]): boolean {
  return sorts.every((sort) => isDimension(sort) || sort === 'nothing');
}

function say(sort: Sort): string {
  if (sort === 'truth') return 'a yes or no';
  if (sort === 'choice') return 'a choice';
  return sayDimension(sort === 'nothing' ? plain : sort);
}

/** The issue for a choice among numbers, by its name where it has one. */
function noNumber(trees: readonly Tree[], rules: SortRules): Issue {
  for (const tree of trees) {
    const meaning = tree.type === 'SymbolNode' ? rules.meanings.get(tree.name) : undefined;
    if (meaning?.is === 'name' && rules.of(meaning.name) === 'choice')
      return issue(wrongSort(meaning.name, 'choice', rules.meaningOf?.(meaning.name)));
  }
  return issue('a choice is not a number');
}

function sortsOf(trees: readonly Tree[], rules: SortRules): Sort[] | Issue {
  const sorts: Sort[] = [];
  for (const tree of trees) {
    const sort = sortOf(tree, rules);
    if (isIssue(sort)) return sort;
    sorts.push(sort);
  }
  return sorts;
}

/** The text of a literal in °C or °F. */
function zeroedLiteral(tree: Tree, rules: SortRules): string | undefined {
  if (tree.type === 'ParenthesisNode') return zeroedLiteral(tree.content, rules);
  const meaning = tree.type === 'SymbolNode' ? rules.meanings.get(tree.name) : undefined;
  return meaning?.is === 'literal' && meaning.made === 'zeroed' ? meaning.text : undefined;
}
