/**
 * The parser, which is that of mathjs: it knows the order of operations and compiles the tree.
 *
 * Of mathjs only the parser and six kinds of node are taken, wired by hand to our operations on plain numbers.
 * That is half the size of the smallest instance which `create` can make, runs without its dispatch on types,
 * and leaves no node for what a sum must not hold: assignment, property access, ranges, matrices, objects.
 */
import {
  createConditionalNode,
  createConstantNode,
  createFunctionNode,
  createNode,
  createOperatorNode,
  createParenthesisNode,
  createParse,
  createSymbolNode,
} from 'mathjs/number';
import { functions, operations } from './vocabulary';

/** A node of the tree, as far as we look into it. Numbers stand as symbols, so there are no constants. */
export type Tree =
  | { readonly type: 'SymbolNode'; readonly name: string }
  | { readonly type: 'ParenthesisNode'; readonly content: Tree }
  | {
      readonly type: 'OperatorNode';
      readonly op: string;
      readonly fn: string;
      readonly args: readonly Tree[];
    }
  | { readonly type: 'FunctionNode'; readonly fn: { readonly name: string }; readonly args: readonly Tree[] }
  | {
      readonly type: 'ConditionalNode';
      readonly condition: Tree;
      readonly trueExpr: Tree;
      readonly falseExpr: Tree;
    };

/** Runs a compiled tree over the values of its symbols. */
export type Run = (values: Map<string, unknown>) => unknown;

interface MathjsNode {
  transform(change: (node: MathjsNode) => MathjsNode): MathjsNode;
  compile(): { evaluate: Run };
}
type NodeClass = new (...parts: never[]) => MathjsNode;
type Wiring = Readonly<Record<string, unknown>>;

// mathjs types its instances, not the factories they are made of.
declare module 'mathjs/number' {
  export function createNode(wiring: Wiring): NodeClass;
  export function createSymbolNode(wiring: Wiring): NodeClass;
  export function createConstantNode(wiring: Wiring): new (value: number) => MathjsNode;
  export function createFunctionNode(wiring: Wiring): NodeClass;
  export function createOperatorNode(wiring: Wiring): NodeClass;
  export function createParenthesisNode(wiring: Wiring): NodeClass;
  export function createConditionalNode(
    wiring: Wiring,
  ): new (...parts: [MathjsNode, MathjsNode, MathjsNode]) => MathjsNode;
  export function createParse(wiring: Wiring): (text: string) => MathjsNode;
}

/** The node for what a sum must not hold. mathjs calls it with `new`. */
function Forbidden(): never {
  throw new Error('a sum holds no such thing');
}

const ours: Readonly<Record<string, unknown>> = {
  ...operations,
  ...Object.fromEntries([...functions].map(([name, { run }]) => [name, run])),
};
const Node = createNode({ mathWithTransform: ours });
const SymbolNode = createSymbolNode({ math: ours, Node });
const ConstantNode = createConstantNode({ Node, isBounded: Number.isFinite });
const ConditionalNode = createConditionalNode({ Node });

const parseText = createParse({
  // Stands in for mathjs's dispatch on the types of arguments: a text is all we parse.
  typed: Object.assign((_name: string, by: { string: (text: string) => MathjsNode }) => by.string, {
    addConversion: () => {},
  }),
  numeric: Number,
  config: { number: 'number', numberFallback: 'number' },
  SymbolNode,
  ConstantNode,
  ConditionalNode,
  FunctionNode: createFunctionNode({ math: ours, Node, SymbolNode }),
  OperatorNode: createOperatorNode({ Node }),
  ParenthesisNode: createParenthesisNode({ Node }),
  AccessorNode: Forbidden,
  ArrayNode: Forbidden,
  AssignmentNode: Forbidden,
  BlockNode: Forbidden,
  FunctionAssignmentNode: Forbidden,
  IndexNode: Forbidden,
  ObjectNode: Forbidden,
  RangeNode: Forbidden,
  RelationalNode: Forbidden,
});

/** The tree of a sum and the way to run it. Throws what mathjs throws for a text that is none. */
export function parse(text: string): { tree: Tree; run: Run } {
  const node = parseText(text);
  const tree = node as unknown as Tree;
  return { tree, run: runOf(tree) };
}

/** The way to run a tree, or a part of one. */
export const runOf = (tree: Tree): Run =>
  (tree as unknown as MathjsNode).transform(lookOnlyWhereNeeded).compile().evaluate;

/** `a and b` as `a ? b : 0`, `a or b` as `a ? 1 : b`, so that `n != 0 and m / n > 2` never divides by zero. */
function lookOnlyWhereNeeded(node: MathjsNode): MathjsNode {
  const { type, op, args } = node as unknown as { type: string; op?: string; args?: readonly MathjsNode[] };
  if (type !== 'OperatorNode' || !(op === 'and' || op === 'or')) return node;
  // mathjs does not go on into what has been replaced.
  const [first, second] = (args ?? []).map((arg) => arg.transform(lookOnlyWhereNeeded));
  if (!first || !second) return node;
  return op === 'and'
    ? new ConditionalNode(first, second, new ConstantNode(0))
    : new ConditionalNode(first, new ConstantNode(1), second);
}
