/**
 * The tables of woods as quantities: `timber.sitkaSpruce.modulus`, `plywood.okoume.density`.
 */
import { plywood } from '../../trade/plywood';
import { timber } from '../../trade/timber';
import { constantsOf } from './constants-of';
import type { Derived } from './quantity';

/** A number that the source does not give has no quantity. */
export function tradeQuantities(): readonly Derived[] {
  return woods;
}

const woods: readonly Derived[] = [...constantsOf(timber), ...constantsOf(plywood)];
