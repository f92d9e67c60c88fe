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
  return {
    name,
    kind: spec.kind,
    meaning: spec.meaning,
    source: spec.source,
    ...written(cell, key),
    ...(isTold(spec) && spec.options && lists ? { options: lists[spec.options] } : {}),
    from: (read) => runStep(cell, spec, scopeBy(read)),
  };
}

/** How it is written, where that is not as all numbers are. */
export function written(cell: Cell, key: string): Pick<Given, 'manner'> {
  const manner = mannerOf(cell, key);
  return manner ? { manner } : {};
}
