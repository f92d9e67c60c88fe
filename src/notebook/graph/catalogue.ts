/** All quantities of a boat: its own, and those of the cells that stand in a notebook. */
import {
  boatQuantities,
  type Ends,
  endsOf,
  layoutOf,
  lists,
  ownerOf,
  plannedEnds,
  type Table,
} from '../../boat';
import type { Instance } from '../../cells';
import { placingOn } from './loose-catalogue';
import type { Catalogue } from './on-hand';

/** Boats are made once, as long as their tables are in use. */
const boats = new WeakMap<Table, Map<Ends, ReturnType<typeof placingOn>>>();

/** @param ends what she ends in by her numbers as they stand; by the plan's, where none are given */
export function catalogueOf(
  table: Table,
  instances: Iterable<Instance>,
  ends: Ends = plannedEnds(table),
): Catalogue {
  const byEnds = boats.get(table) ?? new Map<Ends, ReturnType<typeof placingOn>>();
  boats.set(table, byEnds);
  const placing = byEnds.get(ends) ?? onBoat(table, ends);
  byEnds.set(ends, placing);
  return placing(instances);
}

function onBoat(table: Table, ends: Ends): ReturnType<typeof placingOn> {
  const { given, derived, hull } = boatQuantities(table, ends);
  return placingOn({
    layout: layoutOf(table, ends),
    onBoat: lists(table),
    own: [ownerOf([...given, ...derived])],
    hull,
    ends: { taken: ends, of: endsOf },
  });
}
