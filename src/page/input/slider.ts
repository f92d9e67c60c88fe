/** A native range input beside the field, never instead of it: the field's arrow keys do the same, so Tab passes it by. */
import type { TargetedEvent } from 'preact';
import { useRef } from 'preact/hooks';
import type { Given } from '../../boat';
import { write } from '../../measure';
import { useBench } from '../bench';
import { html } from '../html';
import { fieldValue, marksOf, sliderEnds } from './entry-text';

export interface SliderProps {
  readonly quantity: Given;
  readonly set: (next: number) => void;
}

export function Slider({ quantity, set }: SliderProps) {
  const { book, shown } = useBench();
  const value = fieldValue(book.inHand.value, quantity.name);
  // While the field holds what can't be read the slider stays where it was.
  const last = useRef<number | null>(null);
  if (typeof value === 'number') last.current = value;
  const marks = marksOf(quantity, null, shown.value);
  const ends = sliderEnds(marks);
  if (ends === null || last.current === null) return null;
  return html`<input
    class="slider"
    type="range"
    tabindex="-1"
    min=${ends.min}
    max=${ends.max}
    step=${marks.step}
    value=${last.current}
    aria-label=${`${quantity.meaning}, slider`}
    aria-valuetext=${write(last.current, quantity.kind, shown.value).spoken}
    onInput=${(event: TargetedEvent<HTMLInputElement>) => set(event.currentTarget.valueAsNumber)}
    onChange=${() => book.settle()}
  />`;
}
