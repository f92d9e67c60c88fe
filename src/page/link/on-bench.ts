/** What lies on the bench and where the reader is in it, as a link would bring it. */
import type { OwnNotebooks } from '../../boat';
import { boatOf } from '../../notebook/state/boat-state';
import type { BoatLink } from '../../notebook/link/link';
import { way } from '../address';
import type { Bench } from '../bench';
import { isOwn, openHead } from '../library';

/** Tracked. */
export function linkOnBench({ book, boatless, inHand, ownNotebooks, sheet }: Bench): BoatLink {
  const head = openHead();
  const boat = boatOf(book.state.value);
  // Her own come along with her; to any other sheet only that from which it is read.
  const own = ownNotebooks.value ?? {};
  const mine = sheet.value.kind === 'boat' ? own : head && isOwn(head.id) ? { [head.id]: own[head.id]! } : {};
  const notebooks: OwnNotebooks = Object.fromEntries(Object.entries(mine).filter(([, { away }]) => !away));
  const cell = inHand.value;
  const isHere = cell !== null && head && !head.form && Object.hasOwn(head.cells, cell);
  return {
    boat: { ...boat, notebooks },
    isBoatless: boatless.value,
    notebook: head?.id ?? null,
    place: isHere ? cell : way.value.place,
  };
}
