/** The ripple in a few words. */
import type { Ripple } from '../../notebook';

export function isStill(ripple: Ripple<unknown> | null): boolean {
  return (
    !ripple ||
    (ripple.hull === null &&
      ripple.moved.length === 0 &&
      ripple.nowWarned.length === 0 &&
      ripple.nowClear.length === 0)
  );
}

/** What became of the hull, in the words of a headline. */
export const hullWords = { drawn: 'The hull is drawn', lost: 'The hull can’t be drawn now' } as const;

/** `12 moved, 1 past a limit`; empty when nothing did. */
export function inBrief(ripple: Ripple<unknown> | null): string {
  if (!ripple || isStill(ripple)) return '';
  const limits = ripple.nowWarned.length;
  const news = ripple.hull ? hullWords[ripple.hull].toLowerCase() : `${ripple.moved.length} moved`;
  return [news, limits > 0 ? `${limits} past a limit` : ''].filter(Boolean).join(', ');
}
