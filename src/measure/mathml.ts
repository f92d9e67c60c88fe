/** Formulas in print: a tree of MathML elements as plain data, which the page turns into its own nodes. */
import type { Formula } from './formula';
import type { Tree } from './parser';
import type { Meaning } from './tokens';
import { constants, functions } from './vocabulary';

/** A MathML element: with text, or with children. */
export interface MathNode {
  readonly tag: string;
  readonly attrs?: Readonly<Record<string, string>>;
  readonly children?: readonly MathNode[];
  readonly text?: string;
}

export interface Print {
  /** How a name is printed: `board thickness`. */
  readonly symbol: (name: string) => string;
  /** What stands for a name when numbers are put in: `19 mm`. Without it the formula is in symbols. */
  readonly value?: (name: string) => string;
}

/** The formula as one MathML row, in symbols or with its numbers put in. */
export function mathOf(formula: Pick<Formula, 'sum'>, print: Print): MathNode {
  return row([typeset(formula.sum.tree, { ...print, meanings: formula.sum.meanings })]);
}

interface Setting extends Print {
  readonly meanings: ReadonlyMap<string, Meaning>;
}

function typeset(tree: Tree, setting: Setting): MathNode {
  if (tree.type === 'SymbolNode') return symbol(tree.name, setting);
  if (tree.type === 'ParenthesisNode') return bracketed(typeset(tree.content, setting));
  if (tree.type === 'ConditionalNode') return cases(tree, setting);
  if (tree.type === 'FunctionNode') return call(tree.fn.name, tree.args, setting);
  return operation(tree.fn, tree.args, setting);
}

function symbol(name: string, { meanings, symbol, value }: Setting): MathNode {
  const meaning = meanings.get(name);
  if (meaning?.is === 'literal') return number(meaning.text);
  if (meaning?.is === 'choice') return { tag: 'mtext', text: symbol(meaning.id) };
  if (meaning?.is === 'constant') return word(constants.get(meaning.name)?.symbol ?? meaning.name);
  const named = meaning?.name ?? name;
  return value ? putIn(value(named)) : word(symbol(named));
}

/** A name, upright, its words a thin space apart. */
function word(text: string): MathNode {
  return { tag: 'mi', attrs: upright, text: text.replaceAll(' ', '\u2009') };
}

const upright = { mathvariant: 'normal' };

/** A value in the place of its name; one below zero goes into brackets. */
function putIn(text: string): MathNode {
  return /^[-−]/.test(text) ? bracketed(number(text)) : number(text);
}

const numeral = /^([-−+]?)(?:(?:(\d+)[ -])?(\d+)\/(\d+)|([\d.,]+(?:e[-+]?\d+)?))/;

/** A quantity: its number and, a thin space away, its unit. Notations in feet and inches stand as they are. */
function number(text: string): MathNode {
  const [all = '', sign, whole, top, bottom, decimal] = numeral.exec(text) ?? [];
  const unit = text.slice(all.length).trim();
  if (all === '' || /^\d|['"]/.test(unit)) return { tag: 'mtext', text: text.replaceAll('-', '−') };
  const figures: MathNode[] = [];
  if (sign) figures.push({ tag: 'mo', text: sign === '-' ? '−' : sign });
  for (const part of [whole, decimal]) if (part !== undefined) figures.push(digits(part));
  if (top !== undefined && bottom !== undefined)
    figures.push({ tag: 'mfrac', children: [digits(top), digits(bottom)] });
  if (unit !== '') {
    if (unit !== '°' && !unit.startsWith('/')) figures.push({ tag: 'mspace', attrs: { width: '0.167em' } });
    figures.push({ tag: 'mi', attrs: upright, text: unit });
  }
  const [only] = figures;
  return only && figures.length === 1 ? only : row(figures);
}

function digits(text: string): MathNode {
  return { tag: 'mn', text: text.replaceAll('-', '−') };
}

const signs: Readonly<Record<string, string>> = {
  add: '+',
  subtract: '−',
  unaryMinus: '−',
  unaryPlus: '+',
  smaller: '<',
  larger: '>',
  smallerEq: '≤',
  largerEq: '≥',
  equal: '=',
  unequal: '≠',
  and: 'and',
  or: 'or',
  not: 'not',
};

function operation(fn: string, args: readonly Tree[], setting: Setting): MathNode {
  const [first, second] = args;
  if (!first) return row([]);
  if (!second) return row([sign(fn), typeset(first, setting)]);
  if (fn === 'divide') return { tag: 'mfrac', children: [bare(first, setting), bare(second, setting)] };
  if (fn === 'pow') return { tag: 'msup', children: [base(first, setting), bare(second, setting)] };
  const [left, right] = [typeset(first, setting), typeset(second, setting)];
  return row([left, fn === 'multiply' ? product(setting) : sign(fn), right]);
}

function sign(fn: string): MathNode {
  const text = signs[fn] ?? fn;
  return /[a-z]/.test(text)
    ? { tag: 'mtext', text: `\u00A0${text}\u00A0`.replace(/^\u00A0not/, 'not') }
    : { tag: 'mo', text };
}

/** Symbols are words, so their product needs a sign: a dot; numbers take a cross. */
function product({ value }: Setting): MathNode {
  return { tag: 'mo', text: value ? '×' : '·' };
}

/** The brackets that a fraction bar or a raised place makes needless are dropped. */
function bare(tree: Tree, setting: Setting): MathNode {
  return tree.type === 'ParenthesisNode' ? bare(tree.content, setting) : typeset(tree, setting);
}

/** What is raised to a power: anything but one symbol goes into brackets, and so does a number with its unit. */
function base(tree: Tree, setting: Setting): MathNode {
  const set = bare(tree, setting);
  return ['mi', 'mn'].includes(set.tag) ? set : bracketed(set);
}

const around: Readonly<Record<string, readonly [string, string]>> = {
  abs: ['|', '|'],
  floor: ['⌊', '⌋'],
  ceil: ['⌈', '⌉'],
};

function call(name: string, args: readonly Tree[], setting: Setting): MathNode {
  const [first] = args;
  if (first && name === 'sqrt') return { tag: 'msqrt', children: [bare(first, setting)] };
  const fences = args.length === 1 ? around[name] : undefined;
  if (first && fences) return fenced(fences, bare(first, setting));
  const inside = args.flatMap((arg, i) =>
    i === 0 ? [typeset(arg, setting)] : [comma, typeset(arg, setting)],
  );
  return row([
    word(functions.has(name) ? name : setting.symbol(name)),
    { tag: 'mo', text: '\u2061' },
    bracketed(row(inside)),
  ]);
}

const comma: MathNode = { tag: 'mo', attrs: { separator: 'true' }, text: ',' };

/** A conditional as a brace with one line for each answer. */
function cases(
  { condition, trueExpr, falseExpr }: Extract<Tree, { type: 'ConditionalNode' }>,
  setting: Setting,
): MathNode {
  const line = (...cells: MathNode[]): MathNode => ({
    tag: 'mtr',
    children: cells.map((cell) => ({ tag: 'mtd', children: [cell] })),
  });
  const when = row([{ tag: 'mtext', text: 'if\u00A0' }, bare(condition, setting)]);
  const table: MathNode = {
    tag: 'mtable',
    attrs: { columnalign: 'left' },
    children: [
      line(bare(trueExpr, setting), when),
      line(bare(falseExpr, setting), { tag: 'mtext', text: 'otherwise' }),
    ],
  };
  return row([{ tag: 'mo', attrs: { fence: 'true' }, text: '{' }, table]);
}

function bracketed(inside: MathNode): MathNode {
  return fenced(['(', ')'], inside);
}

function fenced([before, after]: readonly [string, string], inside: MathNode): MathNode {
  const fence = { fence: 'true' };
  return row([{ tag: 'mo', attrs: fence, text: before }, inside, { tag: 'mo', attrs: fence, text: after }]);
}

function row(children: readonly MathNode[]): MathNode {
  const [only] = children;
  return only && children.length === 1 && only.tag === 'mrow' ? only : { tag: 'mrow', children };
}
