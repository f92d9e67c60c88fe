/** What cells ask for as the boat's or the shop's, tables of the trade behind it: woods, glue, spreads; and all choices. */
import { declaredParts } from './declared';
import { frameStands } from './frame-stands';
import { woodOf } from './part-woods';
import type { Declared } from './quantity';
import { shopEntries } from './shop';

export const declaredTables: readonly Declared[] = [
  ...declaredParts.map(woodOf),
  ...frameStands,
  ...shopEntries,
];
