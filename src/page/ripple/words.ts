/** The ripple in a few words. */
import type { Ripple } from '../../notebook';

export function isStill(ripple: Ripple | null): boolean {
  return (
    !ripple || (ripple.moved.length === 0 && ripple.nowWarned.length === 0 && ripple.nowClear.length === 0)
  );
}

/** `12 moved, 1 past a limit`; empty when nothing did. */
export function inBrief(ripple: Ripple | null): string {
  if (!ripple || isStill(ripple)) return '';
  const limits = ripple.nowWarned.length;
  return [`${ripple.moved.length} moved`, limits > 0 ? `${limits} past a limit` : '']
    .filter(Boolean)
    .join(', ');
}
