/**
 * Numbers of the boat that cells ask for as theirs, by name. It brings no table of the trade with
 * it, for it comes with the first cell; what has its options or its preset out of a table is in declared-tables.ts.
 */
import { putUp } from '../../measure';
import { lumberShelf } from '../../trade/lengths-sold';
import { draughtGivens } from './draught';
import { pieceEntries, pieceRules } from './piece-rules';
import type { Declared } from './quantity';
import { partKinds, sizesOf, skinKind } from './scantlings';

putUp('stockLength', lumberShelf);

export const declaredParts = [
  ...partKinds,
  ...['bottom', 'bilge', 'side'].map((panel) => skinKind(panel, panel)),
];

export const declared: readonly Declared[] = [
  ...declaredParts.flatMap(sizesOf),
  ...draughtGivens,
  ...pieceRules,
  ...pieceEntries,
];
