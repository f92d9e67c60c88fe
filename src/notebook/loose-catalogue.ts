/** All quantities of cells on a sheet without a boat, and how those of cells join a boat's own. */
import { type BoatLists, type BoatQuantities, type Derived, type Given, type Layout, sorted } from '../boat';
import { type Cell, cellQuantities, type Instance, isChoice, optionsOf } from '../cells';
import type { Catalogue } from './book';

const noParts: Layout = { edges: [], chines: [], panels: [], stations: [] };

/** The tables of the trade come with the cells that read them; links to a boat leave their presets. */
export function looseCatalogue(instances: readonly Instance[]): Catalogue {
  const noHull = () => {
    throw new Error('there is no boat in this notebook');
  };
  const { given, derived } = brought(noParts, instances);
  return withCells({ given, derived, hull: noHull }, null, instances);
}

/** What these cells bring along for a boat of this layout: entries of the boat's own too, which a first page can do without. */
export function brought(
  layout: Layout,
  instances: readonly Instance[],
): { readonly given: readonly Given[]; readonly derived: readonly Derived[] } {
  // Cells may bring the same ones, and a cell stand several times.
  const bringers = new Set(instances.flatMap(({ cell }) => cell.brings ?? []));
  return sorted([...new Set([...bringers].flatMap((bring) => bring(layout)))]);
}

/** @param onBoat what there is to choose from; null without a boat */
export function withCells(
  boat: BoatQuantities,
  onBoat: BoatLists | null,
  instances: readonly Instance[],
): Catalogue {
  const names = new Set([...boat.given, ...boat.derived].map((quantity) => quantity.name));
  for (const { name, cell } of instances) {
    for (const key of [...Object.keys(cell.inputs), ...Object.keys(cell.steps)]) names.add(`${name}.${key}`);
    for (const row of rowsOf(cell, onBoat)) {
      for (const key of Object.keys(cell.steps)) names.add(`${name}.${row}.${key}`);
    }
  }
  const ofCells = instances.map((instance) => cellQuantities(instance, onBoat, (name) => names.has(name)));
  return {
    given: [...boat.given, ...ofCells.flatMap((cell) => cell.given)],
    derived: [...boat.derived, ...ofCells.flatMap((cell) => cell.derived)],
    hull: boat.hull,
  };
}

/** Rows of a cell's table, whose numbers other cells may link to: `strongback.frame3.leg`. */
function rowsOf({ table, inputs }: Cell, onBoat: BoatLists | null): readonly string[] {
  const over = table && inputs[table.over];
  return over && isChoice(over) ? optionsOf(over, onBoat).map(({ id }) => id) : [];
}
