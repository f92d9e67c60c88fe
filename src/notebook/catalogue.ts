/** All quantities of a boat: its own, and those of the cells that stand in a notebook. */
import { boatQuantities, type Ends, endsOf, layoutOf, lists, plannedEnds, type Table } from '../boat';
import type { Instance } from '../cells';
import type { Catalogue } from './book';
import { brought, withCells } from './loose-catalogue';

/** @param ends what she ends in by her numbers as they stand; by the plan's, where none are given */
export function catalogueOf(table: Table, instances: readonly Instance[], ends?: Ends): Catalogue {
  const { given, derived, hull } = boatQuantities(table, ends);
  const more = brought(layoutOf(table, ends), instances);
  const onBoat = lists(table);
  // Tables of the trade that her own parts read, cells bring too.
  const own = new Set(derived);
  const brings = more.derived.filter((one) => !own.has(one));
  const boat = { given: [...given, ...more.given], derived: [...derived, ...brings], hull };
  return {
    ...withCells(boat, onBoat, instances),
    onBoat,
    ends: { taken: ends ?? plannedEnds(table), of: endsOf },
  };
}
