/** The page's colours: by the light (as the system says), paper, slate, or sun. Remembered in this browser. */
import { effect, signal } from '@preact/signals';
import type { Shelf } from '../../notebook';
import type { Colours } from '../bench';

/** As browsers have kept it from the first. */
const KEY = 'battenbook dress';
const known: readonly string[] = ['by the light', 'paper', 'slate', 'sun'] satisfies Colours[];

export const colours = signal<Colours>('by the light');

export function takeColours(shelf: Shelf | null): void {
  const kept = shelf?.getItem(KEY);
  if (kept && known.includes(kept)) colours.value = kept as Colours;
  effect(() => {
    const { dataset } = document.documentElement;
    if (colours.value === 'by the light') delete dataset['colours'];
    else dataset['colours'] = colours.value;
    try {
      shelf?.setItem(KEY, colours.value);
    } catch {
      // The choice holds for this window; the boat's own keeping says why nothing is saved.
    }
  });
}
