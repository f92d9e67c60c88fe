/** A bar to both sides of a middle line: how far an answer goes with a number taken less, and more. */
import type { Swing } from '../../kernel';
import { html } from '../html';

/** Of the whole bar, in its own units. */
const WIDE = 200;
const HIGH = 14;

/** @param most what fills half of the bar */
export function bar({ less, more }: Swing, most: number, label: string) {
  const at = (by: number) => WIDE / 2 + (most > 0 ? (by / most) * (WIDE / 2 - 2) : 0);
  const side = (by: number, name: string) => {
    const from = Math.min(at(0), at(by));
    return html`<rect class=${name} x=${from} y="2" width=${Math.abs(at(by) - at(0))} height=${HIGH - 4} />`;
  };
  return html`<svg class="swing" viewBox=${`0 0 ${WIDE} ${HIGH}`} preserveAspectRatio="none" role="img" aria-label=${label}>
    ${side(less, 'less')} ${side(more, 'more')}
    <line x1=${WIDE / 2} x2=${WIDE / 2} y1="0" y2=${HIGH} />
  </svg>`;
}
