/**
 * A sum of the builder's own, over any quantity: the sums that fields take, with the place of what is wrong in them.
 *
 * The text may be a stranger's. What a sum can hold is bounded by what the scan lets through: quantities, the signs and
 * functions of the vocabulary, brackets. There is no way in it to say a thing twice, to set or to call anything, so it
 * ends after as many steps as it has signs; and its length and depth are bounded here.
 */
import type { Dimension } from './dimension';
import { longestFormula } from './formula';
import { type Issue, isIssue, issue } from './issue';
import { type KindId, kindOf, sayDimension } from './kinds';
import { kindOfSum } from './kind-of-sum';
import { unknownName } from './names';
import { parse, runOf, type Tree } from './parser';
import { scan, type ScanRules } from './scan';
import { plainText } from './signs';
import { type DimensionOf, dimensionOfTree } from './sorts';
import { placeOfNode, type Letters, spansOf, wordFrom } from './spans';
import { faultOfCalls, partsOf, type Sum, sumOf } from './sum';
import type { Meaning } from './tokens';
import { constants, NoAnswer } from './vocabulary';

/** Why a text is no sum, or comes to nothing, and which of its characters say so. */
export interface Misread extends Letters {
  readonly says: string;
}

export const isMisread = (read: object): read is Misread => 'says' in read;

export interface OwnSum {
  readonly sum: Sum;
  /** Quantities it names, each once, as they are written. */
  readonly names: readonly string[];
  /** How its answer is told, 'choice' for a yes or no; or what can't be joined in it. */
  measure(kindNamed: (name: string) => KindId | undefined): KindId | Misread;
  /** The answer in SI, a yes as 1 and a no as 0: never NaN, never infinite. */
  reckon(get: (name: string) => number | string): number | Issue;
  /** Which part of it has no answer for these values, where it has none. */
  placeOf(get: (name: string) => number | string): Letters;
}

/** Brackets within brackets. */
export const DEEPEST_SUM = 30;

/** @param own the words without a dot that are names of quantities */
export function ownSum(text: string, own: ReadonlySet<string> = new Set()): OwnSum | Misread {
  const written = plainText(text);
  const asTyped = (span: Letters): Letters => placeIn(text, span);
  const amiss = (says: string, span: Letters): Misread => ({ says, ...asTyped(span) });
  if (written.length > longestFormula || text.length > 2 * longestFormula)
    return {
      says: `this sum is too long: at most ${longestFormula} letters and signs are read`,
      from: Math.min(longestFormula, text.length),
      to: text.length,
    };
  const deep = tooDeepAt(written);
  if (deep !== undefined)
    return amiss(`brackets stand too deep in each other: at most ${DEEPEST_SUM} are read`, {
      from: deep,
      to: deep + 1,
    });
  const rules: ScanRules = {
    length: false,
    unitWords: true,
    isName: (word) => own.has(word),
    isFunction: () => false,
    unknown: (name) => unknownName(name, own),
    fault: (predicate) => issue(`it ${predicate}`),
  };
  const sum = sumOf(written, rules);
  if (isIssue(sum)) return amiss(sum.issue, placeOfUnread(written, sum, rules));
  const { tree, meanings, names } = sum;
  const spans = () => spansIn(written, tree, rules);
  return {
    sum,
    names,
    measure: (kindNamed) => {
      const of: DimensionOf = (name) => {
        const kind = kindNamed(name);
        return kind === undefined || kind === 'choice' ? kind : kindOf(kind).dimension;
      };
      const sorts = { meanings, of, called: new Map(), unknown: rules.unknown };
      const measured = sum.dimension(of);
      if (isIssue(measured)) {
        const isPlace = (node: Tree) => {
          const own = dimensionOfTree(node, sorts);
          return isIssue(own) && own.issue === measured.issue;
        };
        return amiss(measured.issue, placeOfNode(tree, spans(), isPlace));
      }
      if (sum.asksTruth) return 'choice';
      const kind = kindOfSum(sum, measured, kindNamed);
      return kind ?? amiss(noUnit(measured), { from: 0, to: written.length });
    },
    reckon: (get) => sum.reckon(get),
    placeOf: (get) => {
      const values = new Map([...meanings].map(([symbol, meaning]) => [symbol, valueOf(meaning, get)]));
      const answer = (node: Tree) => answerOf(node, values);
      return asTyped(
        placeOfNode(
          tree,
          spans(),
          (node) => answer(node) === undefined,
          (node) => looksAt(node, answer),
        ),
      );
    },
  };
}

const noUnit = (measured: Dimension): string =>
  `it comes to ${sayDimension(measured)}, for which there is no unit; multiply or divide it in the same line`;

function valueOf(meaning: Meaning, get: (name: string) => number | string): unknown {
  if (meaning.is === 'literal') return meaning.value;
  if (meaning.is === 'name') return get(meaning.name);
  return meaning.is === 'choice' ? meaning.id : constants.get(meaning.name)?.value;
}

/** What a part comes to; undefined where it has no answer. */
function answerOf(node: Tree, values: Map<string, unknown>): unknown {
  try {
    const answer = runOf(node)(values);
    return typeof answer === 'number' && !Number.isFinite(answer) ? undefined : answer;
  } catch (thrown) {
    if (thrown instanceof NoAnswer) return undefined;
    throw thrown;
  }
}

/** Of a conditional only one answer is looked at: in the other anything may divide by zero. */
function looksAt(node: Tree, answer: (node: Tree) => unknown): readonly Tree[] {
  if (node.type !== 'ConditionalNode') return partsOf(node);
  const { condition, trueExpr, falseExpr } = node;
  return [condition, answer(condition) === 0 ? falseExpr : trueExpr];
}

function tooDeepAt(text: string): number | undefined {
  let depth = 0;
  for (let at = 0; at < text.length; at += 1) {
    if (text[at] === '(') depth += 1;
    if (text[at] === ')') depth -= 1;
    if (depth > DEEPEST_SUM) return at;
  }
  return undefined;
}

function spansIn(written: string, tree: Tree, rules: ScanRules): ReadonlyMap<Tree, Letters> {
  const scanned = scan(written, rules);
  return isIssue(scanned) ? new Map() : spansOf(tree, scanned.tokens);
}

/** Where a text ends too soon: at a bracket that is open, or at its last word. */
function endOf(written: string, says: string): Letters {
  const open: number[] = [];
  for (let at = 0; at < written.length; at += 1) {
    if (written[at] === '(') open.push(at);
    if (written[at] === ')') open.pop();
  }
  const [first] = open;
  if (says.endsWith('not closed') && first !== undefined) return wordFrom(written, first);
  const last = /(?:[A-Za-z_][\w.]*|[<>=!]=|.)?$/s.exec(written)?.index ?? 0;
  return { from: last, to: written.length };
}

/** Where a text is at fault that is no sum. */
function placeOfUnread(written: string, { issue: says, at }: Issue, rules: ScanRules): Letters {
  if (at !== undefined) return wordFrom(written, at);
  const scanned = scan(written, rules);
  if (isIssue(scanned)) return endOf(written, says);
  const { tokens, sum } = scanned;
  try {
    const { tree } = parse(sum);
    return placeOfNode(tree, spansOf(tree, tokens), (node) => faultOfCalls(node, new Map())?.issue === says);
  } catch {
    // A lone "?" or ":", or the second comparison in a row.
    const signs = tokens.filter(({ text }) => /^([?:]|[<>=!]=?|==)$/.test(text));
    const odd = signs.find(({ text }) => /[?:]/.test(text)) ?? signs[1] ?? signs[0];
    return odd ? { from: odd.at, to: odd.end } : { from: 0, to: written.length };
  }
}

/** A place in the plain text as one in the text as it was typed, where one sign may stand for several: `½`, `≤`. */
function placeIn(typed: string, { from, to }: Letters): Letters {
  const start = typed.length - typed.trimStart().length;
  const rest = typed.slice(start);
  if (plainText(rest) === rest.trimEnd()) return { from: start + from, to: start + to };
  const at = (place: number): number => {
    for (let i = 0; i < rest.length; i += 1) if (plainText(rest.slice(0, i + 1)).length > place) return i;
    return rest.length;
  };
  return { from: start + at(from), to: start + Math.max(at(to - 1) + 1, at(from) + 1) };
}
