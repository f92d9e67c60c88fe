/** Misfits in the builder's words. */
import { isIssue, wordsOf, writeDifference } from '../../measure';
import type { Misfit } from '../../notebook/graph/misfits';
import { type Bench, optionsFor, sayValue } from '../bench';
import { inShort } from '../in-short';
import { capital, readable } from '../words';

/** What it is: `Half-breadth of the sheer at frame 3`; what follows, within the part: `Chine, side: bevel`. */
export function labelOf({ part, how, name, quantity }: Misfit, bench: Bench): string {
  if (!quantity) return capital(name === part ? wordsOf(part) : readable(name));
  if (how !== 'follows') return capital(quantity.meaning);
  return capital(name.startsWith(`${part}.`) ? readable(name.slice(part.length + 1)) : inShort(bench, name));
}

/** Where it is worked out: of a row in a cell's table, the same line of the cell itself. */
export function placeOf({ part, name }: Misfit): string {
  const words = name.split('.');
  return words[0] === part || words.length < 3 ? name : `${words[0]}.${words.at(-1)}`;
}

/** What is to be said of it, after its label. */
export function tell({ how, name, part, quantity, was, now }: Misfit, bench: Bench): string {
  if (!quantity) return name === part ? 'is no part of this boat any more' : 'is there no more';
  const shown = bench.shown.value;
  const say = (value: Misfit['was']) =>
    tied(sayValue(value, quantity.kind, shown, optionsFor(bench.book.inHand.value, name)));
  const difference =
    typeof was === 'number' && typeof now === 'number'
      ? ` (${tied(writeDifference(now - was, quantity.kind, shown))})`
      : '';
  if (isIssue(was)) return `is held as what can’t be read: ${was.issue}`;
  const before = how === 'follows' ? `was ${say(was)}` : `is cut to ${say(was)}`;
  if (isIssue(now))
    return how === 'designed'
      ? `${before}; the design has no number now: ${now.issue}`
      : `${before}, and can’t be reckoned now: ${now.issue}`;
  const after = {
    follows: ', now',
    measured: ', and measures',
    designed: '; the design now says',
    gone: ', now',
  }[how];
  return `${before}${after} ${say(now)}${difference}`;
}

/** A number must not part from its unit at the end of a line. */
export const tied = (text: string): string => (/^[−+\d]/.test(text) ? text.replaceAll(' ', '\u00a0') : text);

/** `3 no longer fit`; empty where all does. */
export function misfitsInBrief(misfits: readonly Misfit[]): string {
  if (misfits.length === 0) return '';
  return misfits.length === 1 ? '1 no longer fits' : `${misfits.length} no longer fit`;
}
