/** Two figures of one quantity side by side, as short as they can be told apart. */
import type { Value } from '../../boat';
import { isIssue, type KindId, write } from '../../measure';
import { type Bench, sayOf } from '../bench';
import { withoutUnit } from './words';

interface Two {
  readonly quantity: { readonly name: string; readonly kind: KindId };
  readonly before: Value;
  readonly after: Value;
}

/** `565 N` and `71`: without what is said beside a figure, unless that is all they differ in, and with the unit once. */
export function figuresOf(bench: Bench, { quantity, before, after }: Two): { is: string; was: string } {
  const graph = bench.book.inHand.value;
  const shown = bench.shown.value;
  const full = (value: Value) => sayOf(graph, quantity.name, value, shown);
  const short = (value: Value) =>
    typeof value === 'number'
      ? write(value, quantity.kind, shown, graph.mannerOf(quantity.name)).text
      : full(value);
  const say = short(before) === short(after) ? full : short;
  const is = say(after);
  return { is, was: withoutUnit(say(before), isIssue(after) ? '' : is) };
}
