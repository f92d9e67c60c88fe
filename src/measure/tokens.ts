/** Tokens: the parts of a sum, and the order in which they may stand. */
import type { Dimension } from './dimension';
import type { Issue } from './issue';

/** What stands behind a symbol. */
export type Meaning =
  | {
      readonly is: 'literal';
      readonly text: string;
      readonly value: number;
      readonly dimension: Dimension;
      readonly made: Made;
    }
  | { readonly is: 'name'; readonly name: string }
  | { readonly is: 'constant'; readonly name: string }
  | { readonly is: 'choice'; readonly id: string };

/** How a literal is made: of a bare number, of a number with its unit, or with a unit whose zero is not nothing (°C). */
type Made = 'bare' | 'united' | 'zeroed';

export type Token =
  | { readonly is: 'value'; readonly text: string; readonly meaning: Meaning }
  | { readonly is: 'call' | 'operator' | '(' | ')' | ','; readonly text: string };

/** A token with its place in the text: its first character, and the one after its last. */
export type PlacedToken = Token & { readonly at: number; readonly end: number };

/** What is wrong with the order of the tokens; undefined if nothing is. */
export function faultOfOrder(tokens: readonly PlacedToken[]): Issue | undefined {
  const brackets: Bracket[] = [];
  let last: PlacedToken | undefined;
  for (const token of tokens) {
    const fault = faultAfter(last, token, brackets);
    if (fault !== undefined) return { issue: fault, at: token.at };
    if (token.is === '(') brackets.push({ call: last?.is === 'call', at: token.at });
    if (token.is === ')') brackets.pop();
    last = token;
  }
  if (!last) return { issue: 'nothing is written here', at: 0 };
  if (wantsMore(last)) return { issue: `nothing stands after "${last.text}"`, at: last.at };
  const [open, ...more] = brackets;
  if (!open) return undefined;
  const says = more.length === 0 ? 'a bracket is' : `${brackets.length} brackets are`;
  return { issue: `${says} not closed`, at: open.at };
}

/** One that is open, and whether it is a function's. */
interface Bracket {
  readonly call: boolean;
  readonly at: number;
}

function faultAfter(last: Token | undefined, token: Token, brackets: readonly Bracket[]): string | undefined {
  const open = !last || wantsMore(last);
  if (token.is === 'value' || token.is === 'call' || token.is === '(' || token.text === 'not') {
    return open
      ? undefined
      : `a sign is missing between "${last.text}" and "${token.text}"; put + - * or / there`;
  }
  if (token.is === 'operator') {
    return open && !/^[-+]$/.test(token.text) ? `nothing stands before "${token.text}"` : undefined;
  }
  if (brackets.length === 0)
    return token.is === ')'
      ? 'a bracket is closed that was never opened'
      : 'a comma parts the figures of a function only; write decimals with a point';
  if (last?.is === '(') return 'nothing stands between the brackets';
  if (open) return `nothing stands after "${last?.text ?? ''}"`;
  return token.is === ',' && brackets.at(-1)?.call !== true
    ? 'a comma parts the figures of a function only; write decimals with a point'
    : undefined;
}

/** True if something must follow the token. */
function wantsMore(token: Token): boolean {
  return token.is !== 'value' && token.is !== ')';
}
