/** The way to what was found. */
import { wayTo } from '../address';
import type { Bench } from '../bench';
import { showPlace } from '../go-to';
import type { Thing } from './things';

export function goTo({ notebook, place }: Pick<Thing, 'notebook' | 'place'>, bench: Bench): void {
  if (notebook === null) {
    bench.goTo(place);
    return;
  }
  const way = wayTo(notebook, place);
  // The address leads there by itself, and back again; but not twice to the same place.
  if (location.hash === way) showPlace(place);
  else location.hash = way;
}
