/** Which characters of a text each part of its sum stands on. */
import type { Tree } from './parser';
import { partsOf } from './sum';
import type { PlacedToken } from './tokens';

/** From the first character to the one after the last. */
export interface Letters {
  readonly from: number;
  readonly to: number;
}

/** The parser keeps no places, but the order of the text: its leaves are the values, one by one, its calls the functions. */
export function spansOf(tree: Tree, tokens: readonly PlacedToken[]): ReadonlyMap<Tree, Letters> {
  const values = tokens.filter(({ is }) => is === 'value').values();
  const calls = tokens.filter(({ is }) => is === 'call').values();
  const spans = new Map<Tree, Letters>();
  function place(node: Tree): Letters {
    const head = node.type === 'FunctionNode' ? calls.next().value : undefined;
    const leaf = node.type === 'SymbolNode' ? values.next().value : undefined;
    const parts = partsOf(node).map(place);
    const first = head ?? leaf;
    const from = first?.at ?? Math.min(...parts.map((part) => part.from));
    const to = Math.max(first?.end ?? 0, ...parts.map((part) => part.to));
    const span =
      head || node.type === 'ParenthesisNode' ? bracketed({ from, to }, head, tokens) : { from, to };
    spans.set(node, span);
    return span;
  }
  place(tree);
  return spans;
}

/** With its own brackets; a function's opens after its name. */
function bracketed(
  { from, to }: Letters,
  head: PlacedToken | undefined,
  tokens: readonly PlacedToken[],
): Letters {
  const open = head ?? tokens.findLast(({ is, end }) => is === '(' && end <= from);
  const close = tokens.find(({ is, at }) => is === ')' && at >= to);
  return { from: open?.at ?? from, to: close?.end ?? to };
}

/**
 * The place of the innermost part at fault, and of several the first; the whole where none is.
 * @param looksAt the parts of a node that count
 */
export function placeOfNode(
  tree: Tree,
  spans: ReadonlyMap<Tree, Letters>,
  isAtFault: (node: Tree) => boolean,
  looksAt: (node: Tree) => readonly Tree[] = partsOf,
): Letters {
  const part = looksAt(tree).find(isAtFault);
  return part ? placeOfNode(part, spans, isAtFault, looksAt) : (spans.get(tree) ?? { from: 0, to: 0 });
}

const WORD = /[A-Za-z_][\w.]*|\d[\w.,]*|[<>=!]=|[\s\S]/uy;

/** The word, the number or the sign that begins there. */
export function wordFrom(text: string, at: number): Letters {
  WORD.lastIndex = at;
  return { from: at, to: at + (WORD.exec(text)?.[0].length ?? 0) };
}
