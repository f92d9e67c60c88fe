/** How long a notebook of the builder's own stays with her boat, after “It”. */
import type { Bench } from '../bench';

export const keptWith = (shelf: Bench['shelf'], boat: string): string =>
  shelf
    ? `is kept with ${boat}`
    : `stays with ${boat} until the page is closed, for this browser keeps nothing`;
