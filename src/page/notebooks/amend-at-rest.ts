/** Changes the boat in hand while another sheet lies on the bench, by a step of hers. */
import { demoBoat } from '../../boat';
import { type BookState, freshState } from '../../notebook';
// A boat that is not on the bench must be read before she is changed.
import '../../notebook/keeping/read-saved';
import type { Bench } from '../bench';

/** @returns her notebooks as they are now */
export function amendAtRest(
  { keeping, ownBoat, resting }: Bench,
  change: (state: BookState) => BookState,
): BookState['notebooks'] {
  const boat = ownBoat.peek();
  const afresh = () => ({ state: freshState(demoBoat), earlier: [], later: [] });
  const { notebooks } = keeping.amend(boat, change, afresh);
  resting.value = { boat, notebooks };
  return notebooks;
}
