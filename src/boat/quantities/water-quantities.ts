/**
 * Where the water stands at the design draught, on the hull and at her transoms. On an even keel, as the plan draws
 * it; how deep she sits loaded is another matter.
 */
import { nameOf } from '../../measure';
import type { Hull } from '../hull/hull';
import type { Layout } from './lists';
import { fromBoth } from './make-derived';
import type { Derived, Read } from './quantity';
import { isPost } from '../hull/station';

/** Points of each edge that are looked at: between neighbours a batten sags by less than a hundredth of a millimetre. */
const ALONG = 257;

const lowestOf = (hull: Hull): number =>
  Math.min(...hull.edges.flatMap((edge) => edge.polyline(ALONG).map(([, , z]) => z)));

const waterline = (hull: Hull, read: Read): number => lowestOf(hull) + read.number('hull.draught');

export function waterQuantities({ stations }: Layout): readonly Derived[] {
  const LEVEL = 'the design draught, on an even keel';
  return [
    fromBoth(
      'hull.waterline',
      'length',
      'height of the design waterline above the base line',
      LEVEL,
      waterline,
    ),
    ...stations
      .filter(({ role }) => role !== 'frame' && !isPost(role))
      .map(({ name, label, role }) =>
        fromBoth(
          `${nameOf(role)}.waterDepth`,
          'length',
          `water above the bottom of the ${label} on the centreline; below 0 it is clear of the water`,
          LEVEL,
          (hull, read) => waterline(hull, read) - hull.station(name).corners[0]![2], // every station has a keel
        ),
      ),
  ];
}
