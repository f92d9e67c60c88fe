/**
 * The draught that she is drawn to float at: one number of the boat's, which every cell reads that speaks of water.
 * The plan states it; until it is typed she is drawn afloat at a share of her depth, which follows her shape without
 * a leap.
 */
import type { Hull } from '../hull/hull';
import { fromHull } from './make-derived';
import type { Declared, Derived } from './quantity';

/** A quarter of the least depth, keel to sheer, of any station, m. */
export function usualDraught({ stations }: Hull): number {
  return Math.min(...stations.map(({ corners }) => corners.at(-1)![2] - corners[0]![2])) / 4; // keel and sheer at least
}

export const draughtGivens: readonly Declared[] = [
  {
    name: 'hull.draught',
    kind: 'length',
    label: 'Design draught',
    meaning: 'design draught, from the lowest point of the hull up to the water',
    source: 'the plan; until typed a quarter of the least depth: common practice, no source',
    preset: 'hull.usualDraught',
    withoutBoat: '150 mm',
    min: '1 mm',
    max: '2 m',
    step: '5 mm',
  },
];

export const draughtQuantities: readonly Derived[] = [
  fromHull('hull.usualDraught', 'length', 'a quarter of the least depth of any station', usualDraught),
];
