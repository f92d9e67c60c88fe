/** All quantities of a catalogue, rows of tables among them, as lists. */
import type { Derived, Given } from '../../src/boat';
import type { Catalogue } from '../../src/notebook/graph/on-hand';

export interface All extends Pick<Catalogue, 'hull' | 'onBoat'> {
  readonly given: readonly Given[];
  readonly derived: readonly Derived[];
}

export function allOf({ find, names, hull, onBoat }: Catalogue): All {
  const all = names().map((name) => find(name)!); // its own names
  const isGiven = (one: Given | Derived): one is Given => 'preset' in one;
  return {
    given: all.filter(isGiven),
    derived: all.filter((one): one is Derived => !isGiven(one)),
    hull,
    ...(onBoat && { onBoat }),
  };
}
