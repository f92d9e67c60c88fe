/** Steps a field's number by its marks, by whichever key. */
import type { Given } from '../../boat';
import type { Bench } from '../bench';
import { entryOf, fieldValue, keyFrom } from './entry-text';
import { holdInPlace } from './hold-in-place';

/**
 * @param count marks on; back below zero
 * @param at what stays where it stands in the window while what is above it grows or shrinks
 */
export function stepEntry({ book, shown }: Bench, quantity: Given, count: number, at: Element | null): void {
  const { name, kind } = quantity;
  const now = fieldValue(book.inHand.peek(), name);
  if (typeof now !== 'number') return;
  const entry = entryOf(keyFrom(now, count, quantity, shown.peek()), kind, shown.peek());
  const act = () => book.write({ [name]: entry }, `step ${name}`);
  if (at) holdInPlace(at, act);
  else act();
}
