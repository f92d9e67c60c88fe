/**
 * All that can be asked of a boat: its offsets and scantlings, which the builder may write, and what
 * follows from them.
 */
import { buildHull, type Hull } from '../hull/hull';
import { draughtGivens, draughtQuantities } from './draught';
import type { Ends } from '../hull/ends';
import { layoutOf } from './lists';
import { offsetEntries, offsetsAsWritten } from './offset-entries';
import { partGivens, partQuantities } from './part-quantities';
import { type Derived, type Given, type Read, sorted } from './quantity';
import { piecePlanQuantities } from './piece-plan-quantities';
import { shopEntries } from './shop';
import { shapeQuantities } from './shape-quantities';
import { stationQuantities } from './station-quantities';
import type { Table } from '../table/table';
import { tradeQuantities } from './trade-quantities';
import { waterQuantities } from './water-quantities';

export interface BoatQuantities {
  readonly given: readonly Given[];
  readonly derived: readonly Derived[];
  /** The hull drawn from the offsets as they are written. */
  readonly hull: (read: Read) => Hull;
}

/**
 * The quantities of a boat with this table: which there are depends on its names and on what she ends in.
 * @param ends by her numbers as they stand; by the plan's, where none are given
 */
export function boatQuantities(table: Table, ends?: Ends): BoatQuantities {
  const layout = layoutOf(table, ends);
  const plan = sorted(piecePlanQuantities(layout));
  return {
    given: [...offsetEntries(table), ...draughtGivens, ...partGivens(layout), ...plan.given, ...shopEntries],
    derived: [
      nameOf(table),
      ...shapeQuantities(layout),
      ...draughtQuantities,
      ...stationQuantities(layout),
      ...partQuantities(layout),
      ...waterQuantities(layout),
      ...plan.derived,
      ...tradeQuantities(),
    ],
    hull: (read) => buildHull(offsetsAsWritten(table, read)),
  };
}

/** What the boat is called, for a sentence that names her. */
const nameOf = (table: Table): Derived => ({
  name: 'hull.name',
  kind: 'choice',
  meaning: 'name of the boat',
  source: 'the table of offsets',
  from: () => table.name,
});
