/** Tokens: the parts of a sum, and the order in which they may stand. */
import type { Dimension } from './dimension';
import { type Issue, issue } from './issue';

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

/** What is wrong with the order of the tokens, with the place of the one that is, but where the end is; undefined if nothing is. */
export function faultOfOrder(tokens: readonly PlacedToken[]): Issue | undefined {
  const brackets: ('call' | 'group')[] = [];
  let last: Token | undefined;
  for (const token of tokens) {
    const fault = faultAfter(last, token, brackets);
    if (fault !== undefined) return { issue: fault, at: token.at };
    if (token.is === '(') brackets.push(last?.is === 'call' ? 'call' : 'group');
    if (token.is === ')') brackets.pop();
    last = token;
  }
  if (!last) return issue('nothing is written here');
  if (wantsMore(last)) return issue(`nothing stands after "${last.text}"`);
  if (brackets.length > 0)
    return issue(
      brackets.length === 1 ? 'a bracket is not closed' : `${brackets.length} brackets are not closed`,
    );
  return undefined;
}

function faultAfter(
  last: Token | undefined,
  token: Token,
  brackets: readonly ('call' | 'group')[],
): string | undefined {
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
  return token.is === ',' && brackets.at(-1) !== 'call'
    ? 'a comma parts the figures of a function only; write decimals with a point'
    : undefined;
}

/** True if something must follow the token. */
function wantsMore(token: Token): boolean {
  return token.is !== 'value' && token.is !== ')';
}
