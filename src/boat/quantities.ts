/**
 * All that can be asked of a boat: its offsets and scantlings, which the builder may write, and what
 * follows from them.
 */
import { buildHull, type Hull } from './hull';
import { layoutOf } from './lists';
import { offsetEntries, offsetsAsWritten } from './offset-entries';
import { partGivens, partQuantities } from './part-quantities';
import type { Derived, Given, Read } from './quantity';
import { shapeQuantities } from './shape-quantities';
import { stationQuantities } from './station-quantities';
import type { Table } from './table';
import { tradeQuantities } from './trade-quantities';

export interface BoatQuantities {
  readonly given: readonly Given[];
  readonly derived: readonly Derived[];
  /** The hull drawn from the offsets as they are written. */
  readonly hull: (read: Read) => Hull;
}

/** The quantities of a boat with this table: which there are depends on its names, not on its numbers. */
export function boatQuantities(table: Table): BoatQuantities {
  const layout = layoutOf(table);
  return {
    given: [...offsetEntries(table), ...partGivens(layout)],
    derived: [
      ...shapeQuantities(layout),
      ...stationQuantities(layout),
      ...partQuantities(layout),
      ...tradeQuantities(),
    ],
    hull: (read) => buildHull(offsetsAsWritten(table, read)),
  };
}
