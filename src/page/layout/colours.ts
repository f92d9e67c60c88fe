/** The page's colours: by the light (as the system says), paper, slate, or sun. Remembered in this browser. */
import { effect, signal } from '@preact/signals';
import type { Shelf } from '../../notebook';
import type { Dress } from '../bench';

const KEY = 'battenbook dress';
const known: readonly string[] = ['by the light', 'paper', 'slate', 'sun'] satisfies Dress[];

export const dress = signal<Dress>('by the light');

export function wearDress(shelf: Shelf | null): void {
  const kept = shelf?.getItem(KEY);
  if (kept && known.includes(kept)) dress.value = kept as Dress;
  effect(() => {
    const { dataset } = document.documentElement;
    if (dress.value === 'by the light') delete dataset['dress'];
    else dataset['dress'] = dress.value;
    try {
      shelf?.setItem(KEY, dress.value);
    } catch {
      // The choice holds for this window; the boat's own keeping says why nothing is saved.
    }
  });
}
