/** Words about quantities that any part of the page may need at once: readable names, and what a missing value waits for. */
import { type Issue, upToComma, wordsOf } from '../measure';
import type { Bench } from './bench';

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** A dotted name as words: `frame3.chine.planSlope` reads "frame 3, chine: plan slope". */
export function readable(name: string): string {
  const words = name.split('.').map((part) => wordsOf(part));
  const last = words.pop() ?? '';
  return words.length > 0 ? `${words.join(', ')}: ${last}` : last;
}

/** What a missing value waits for, as the end of a sentence: `the board thickness`. */
export function waitsFor(bench: Bench, why: Issue): string {
  const { waitsFor: name } = why;
  if (name === undefined) return 'a number it can use';
  const quantity = bench.book.inHand.value.quantity(name);
  if (!quantity) return name.startsWith('the ') ? name : readable(name);
  const meaning = upToComma(quantity.meaning);
  return /^(what|how|whether|where) /.test(meaning) ? meaning : `the ${meaning}`;
}
