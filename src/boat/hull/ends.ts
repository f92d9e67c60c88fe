/**
 * What a boat ends in, by her half-breadths there. Which parts and quantities she has turns on it, so it is asked
 * of her numbers as they stand: a plan may be typed or pasted over a table that had none.
 */
import type { Hull } from './hull';
import { offsetsOf, type Offsets } from '../table/offsets';
import { roleOf } from './station';
import type { Table } from '../table/table';

export interface Ends {
  readonly aft: 'transom' | 'sternpost';
  readonly fore: 'bow transom' | 'stem';
}

/** One object for each pair, so that ends can be told apart by identity. */
const pairs: readonly Ends[] = (['transom', 'sternpost'] as const).flatMap((aft) =>
  (['bow transom', 'stem'] as const).map((fore): Ends => ({ aft, fore })),
);

export const plannedEnds = (table: Table): Ends => endsIn(offsetsOf(table));

export const endsOf = ({ offsets }: Hull): Ends => endsIn(offsets);

function endsIn({ stations, points }: Offsets): Ends {
  const last = stations.length - 1;
  const roleAt = (i: number) =>
    roleOf(
      i,
      stations.length,
      points.map((line) => line[i]?.[1] ?? null),
    );
  // A table of one station or none is drawn as nothing; its ends are named all the same.
  const [stern, bow] = [roleAt(0), last < 1 ? 'stem' : roleAt(last)];
  return pairs.find(({ aft, fore }) => aft === stern && fore === bow)!; // all pairs there are
}
