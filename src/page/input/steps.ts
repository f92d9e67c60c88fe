/** Keys that step a field's number mark by mark, and between them a slider where there is one. */
import type { Given } from '../../boat';
import { useBench } from '../bench';
import { html, use } from '../html';
import { entryOf, fieldValue } from './entry-text';
import { Slider } from './slider';
import { StepKey } from './step-key';
import { stepEntry } from './step-entry';

export function Steps({ quantity, slider }: { quantity: Given; slider: boolean }) {
  const bench = useBench();
  const { book, shown } = bench;
  const { name, kind, meaning } = quantity;
  const slide = (next: number) => book.write({ [name]: entryOf(next, kind, shown.peek()) }, `slide ${name}`);
  const key = (sign: '−' | '+') =>
    use(StepKey, {
      sign,
      label: `${sign === '+' ? 'more' : 'less'}: ${meaning}`,
      disabled: typeof fieldValue(book.inHand.value, name) !== 'number',
      act: (at) => stepEntry(bench, quantity, sign === '+' ? 1 : -1, at),
    });
  return html`<div class="steps-of-field" onFocusOut=${() => book.settle()}>
    ${key('−')}${slider ? use(Slider, { quantity, set: slide }) : null}${key('+')}
  </div>`;
}
