/** All quantities of a boat: its own, and those of every cell that stands in a notebook. */
import { boatQuantities, lists, type Table } from '../boat';
import { cellQuantities, cells, type Instance, plainInstance } from '../cells';
import type { Catalogue } from './book';

/** Every cell under its own name; notebooks may add instances under other names. */
export const plainInstances: readonly Instance[] = cells.map(plainInstance);

export function catalogueOf(table: Table, instances: readonly Instance[] = plainInstances): Catalogue {
  const boat = boatQuantities(table);
  const onBoat = lists(table);
  const names = new Set([...boat.given, ...boat.derived].map((quantity) => quantity.name));
  for (const { name, cell } of instances) {
    for (const key of [...Object.keys(cell.inputs), ...Object.keys(cell.steps)]) names.add(`${name}.${key}`);
  }
  const ofCells = instances.map((instance) => cellQuantities(instance, onBoat, (name) => names.has(name)));
  return {
    given: [...boat.given, ...ofCells.flatMap((cell) => cell.given)],
    derived: [...boat.derived, ...ofCells.flatMap((cell) => cell.derived)],
    hull: boat.hull,
  };
}
