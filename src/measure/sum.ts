/** A sum: an expression read, measured, and reckoned on plain SI numbers. */
import type { Dimension } from './dimension';
import { type Issue, isIssue, issue } from './issue';
import { parse, type Run, type Tree } from './parser';
import { scan, type ScanRules } from './scan';
import { asksTruth, type DimensionOf, dimensionOfTree } from './sorts';
import type { Meaning } from './tokens';
import { constants, functions, type MathFunction, NoAnswer } from './vocabulary';

export interface Sum {
  readonly tree: Tree;
  /** What each symbol of the tree stands for. */
  readonly meanings: ReadonlyMap<string, Meaning>;
  /** Names of quantities, each once, in the order of the text. */
  readonly names: readonly string[];
  /** Functions besides those of the vocabulary. */
  readonly called: readonly string[];
  /** True if the answer is a yes or no. */
  readonly asksTruth: boolean;
  /** What the sum measures, from what its names measure. */
  dimension(of: DimensionOf): Dimension | Issue;
  /** The answer for the values that `get` gives, a yes as 1 and a no as 0. What `get` throws passes through. */
  reckon(get: (name: string) => number | string | Issue): number | Issue;
}

/** Reads `text` as a sum. `more` are functions besides those of the vocabulary. */
export function sumOf(
  text: string,
  rules: ScanRules,
  more: ReadonlyMap<string, MathFunction> = new Map(),
): Sum | Issue {
  const scanned = scan(text, rules);
  if (isIssue(scanned)) return scanned;
  const { meanings, called } = scanned;
  const parsed = parseSafely(scanned.sum);
  if (isIssue(parsed)) return parsed;
  const { tree, run } = parsed;
  const fault = faultOfCalls(tree, more);
  if (fault) return fault;

  const names: (readonly [symbol: string, name: string])[] = [];
  const values = new Map<string, unknown>(called.map((name) => [name, more.get(name)?.run]));
  for (const [symbol, meaning] of meanings) {
    if (meaning.is === 'name') names.push([symbol, meaning.name]);
    else values.set(symbol, valueOfMeaning(meaning));
  }
  return {
    tree,
    meanings,
    names: [...new Set(names.map(([, name]) => name))],
    called,
    asksTruth: asksTruth(tree),
    dimension: (of) =>
      dimensionOfTree(tree, {
        meanings,
        of,
        called: more,
        unknown: rules.unknown,
        ...(rules.meaningOf && { meaningOf: rules.meaningOf }),
      }),
    reckon: (get) => {
      for (const [symbol, name] of names) {
        const value = get(name);
        if (isIssue(value)) return value;
        values.set(symbol, value);
      }
      return answerOf(run, values, rules.fault);
    },
  };
}

function parseSafely(sum: string): { tree: Tree; run: Run } | Issue {
  try {
    return parse(sum);
  } catch {
    // The scan has seen to all but comparisons in a row, and "?" without ":" or the other way about.
    if (sum.includes('?')) return issue('a choice between two takes both signs: a > b ? c : d');
    return issue(
      sum.includes(':')
        ? '":" has a meaning after "?" only, as in a > b ? c : d'
        : 'compare two at a time, joined by "and"',
    );
  }
}

/** A function with too few or too many arguments. */
export function faultOfCalls(tree: Tree, more: ReadonlyMap<string, MathFunction>): Issue | undefined {
  for (const part of partsOf(tree)) {
    const fault = faultOfCalls(part, more);
    if (fault) return fault;
  }
  if (tree.type !== 'FunctionNode') return undefined;
  const { name } = tree.fn;
  const { least, most } = functions.get(name) ?? more.get(name) ?? { least: 0, most: 0 };
  if (tree.args.length >= least && tree.args.length <= most) return undefined;
  const wanted =
    least === most ? `${least}` : tree.args.length < least ? `at least ${least}` : `at most ${most}`;
  return issue(
    `${name} takes ${wanted} ${wanted === '1' ? 'figure' : 'figures'}; here ${tree.args.length === 1 ? 'is' : 'are'} ${tree.args.length}`,
  );
}

/** The parts a node is made of. */
export function partsOf(tree: Tree): readonly Tree[] {
  if (tree.type === 'ParenthesisNode') return [tree.content];
  if (tree.type === 'ConditionalNode') return [tree.condition, tree.trueExpr, tree.falseExpr];
  return tree.type === 'OperatorNode' || tree.type === 'FunctionNode' ? tree.args : [];
}

function answerOf(run: Run, values: Map<string, unknown>, fault: ScanRules['fault']): number | Issue {
  try {
    const answer = run(values);
    if (typeof answer !== 'number' || Number.isNaN(answer)) return fault('comes to no number');
    return Number.isFinite(answer) ? answer : fault('comes to a number too large to reckon with');
  } catch (thrown) {
    if (thrown instanceof NoAnswer) return fault(thrown.message);
    throw thrown;
  }
}

function valueOfMeaning(meaning: Exclude<Meaning, { is: 'name' }>): number | string {
  if (meaning.is === 'literal') return meaning.value;
  if (meaning.is === 'choice') return meaning.id;
  return constants.get(meaning.name)?.value ?? Number.NaN; // the scan lets known constants through only
}
