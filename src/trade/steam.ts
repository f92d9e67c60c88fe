/** What steamed wood takes: limits of stretch and of shortening, and bends that were tried. */
import type { Cited } from './table';

const PECK = 'E. C. Peck, Bending solid wood to form, Agriculture Handbook 125, USDA (1957)';

/** How far hot, wet wood stretches along the grain before it parts, and how far a strap can shorten it. */
export const steamed = {
  stretch: { value: 0.015, source: `${PECK}: 1 to 2 %`, known: 'from memory' },
  shortening: { value: 0.25, source: `${PECK}: 25 to 30 %`, known: 'from memory' },
  /** Radius over thickness at which three pieces in four came out near perfect: strap and end pressure, 17 % moisture. */
  southernPineStrapped: {
    value: 16,
    source: 'T. J. Lemoine and P. Koch, Forest Products Journal 21(4):34-42 (1971), abstract',
    known: 'published',
  },
} as const satisfies Record<string, Cited>;

/** Inner radius over thickness at which a strap on the outer face shortens the inner one by so much. */
export function strappedRadius(shortening: number): number {
  if (!(shortening > 0 && shortening < 1)) throw new Error('wood is shortened by a share between 0 and 1');
  return 1 / shortening - 1;
}
