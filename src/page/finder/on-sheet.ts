/** What stands in the boat's own sheet, to be found there: her sizes, the shop's numbers, and what follows from them. */
import { partOf } from '../../boat';
import { wordsOf } from '../../measure';
import type { Catalogue } from '../../notebook';
import { formulasIn } from '../../notebook/formulas/formulas-in';

export interface OnSheet {
  /** Name of the quantity. */
  readonly name: string;
  readonly label: string;
  /** Whether it is a field; else it follows from others. */
  readonly given: boolean;
}

/** @param instances the cells that stand in a notebook, by their names */
export function onSheet(catalogue: Catalogue, instances: ReadonlyMap<string, unknown>): readonly OnSheet[] {
  const { owners, find, onBoat } = catalogue;
  const formulas = new Set([...formulasIn(catalogue).values()].map(({ owner }) => owner));
  // What a station has is found under its number, and not by words.
  const stations = new Set(onBoat?.stations.map(({ id }) => id));
  const isListed = (name: string) =>
    name.split('.').length === 2 && !instances.has(partOf(name)) && !stations.has(partOf(name));
  const isBoats = ({ words }: { words: Iterable<string> }) => [...words].some((word) => !instances.has(word));
  const hers = [...owners].filter((owner) => isBoats(owner) && !formulas.has(owner));
  const names = new Set(hers.flatMap((owner) => owner.names()));
  return [...names].filter(isListed).map((name) => {
    const quantity = find(name)!; // its own names
    const given = 'preset' in quantity;
    const label = given ? (quantity.label ?? wordsOf(name.split('.')[1]!)) : quantity.meaning; // of two words
    return { name, label: label, given };
  });
}
