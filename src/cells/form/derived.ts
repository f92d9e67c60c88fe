/** A step of a cell as a quantity. */
import type { BoatLists, Derived, Given, Read } from '../../boat';
import { type Cell, isTold } from './define';
import { mannerOf } from './manner';
import { runStep, type Scope } from './steps';

export function derivedOf(
  cell: Cell,
  name: string,
  key: string,
  lists: BoatLists | null,
  scopeBy: (read: Read) => Scope,
): Derived {
  const spec = cell.steps[key]!; // asked only for steps of the cell
  const { kind, meaning, source } = spec;
  const from: Derived['from'] = (read) => runStep(cell, spec, scopeBy(read));
  const plain = { name, kind, meaning, source, from };
  const manner = mannerOf(cell, key);
  const options = isTold(spec) && spec.options && lists?.[spec.options];
  // Most are plain, and made by thousands.
  return manner || options ? { ...plain, ...(manner && { manner }), ...(options && { options }) } : plain;
}

/** How it is written, where that is not as all numbers are. */
export function written(cell: Cell, key: string): Pick<Given, 'manner'> {
  const manner = mannerOf(cell, key);
  return manner ? { manner } : {};
}
