/** All quantities of a boat: its own, and those of the cells that stand in a notebook. */
import { type BoatLists, boatQuantities, type Ends, layoutOf, lists, type Table } from '../boat';
import { type Cell, cellQuantities, type Instance, isChoice, optionsOf } from '../cells';
import type { Catalogue } from './book';

/** @param ends what she ends in by her numbers as they stand; by the plan's, where none are given */
export function catalogueOf(table: Table, instances: readonly Instance[], ends?: Ends): Catalogue {
  const boat = boatQuantities(table, ends);
  const layout = layoutOf(table, ends);
  const onBoat = lists(table);
  // Cells may bring the same ones, and a cell stand several times.
  const bringers = new Set(instances.flatMap(({ cell }) => cell.brings ?? []));
  const brought = [...new Set([...bringers].flatMap((bring) => bring(layout)))];
  const names = new Set([...boat.given, ...boat.derived, ...brought].map((quantity) => quantity.name));
  for (const { name, cell } of instances) {
    for (const key of [...Object.keys(cell.inputs), ...Object.keys(cell.steps)]) names.add(`${name}.${key}`);
    for (const row of rowsOf(cell, onBoat)) {
      for (const key of Object.keys(cell.steps)) names.add(`${name}.${row}.${key}`);
    }
  }
  const ofCells = instances.map((instance) => cellQuantities(instance, onBoat, (name) => names.has(name)));
  return {
    given: [...boat.given, ...ofCells.flatMap((cell) => cell.given)],
    derived: [...boat.derived, ...brought, ...ofCells.flatMap((cell) => cell.derived)],
    hull: boat.hull,
  };
}

/** Rows of a cell's table, whose numbers other cells may link to: `strongback.frame3.leg`. */
function rowsOf({ table, inputs }: Cell, onBoat: BoatLists): readonly string[] {
  const over = table && inputs[table.over];
  return over && isChoice(over) ? optionsOf(over, onBoat).map(({ id }) => id) : [];
}
