/** SI of the few customary units that tables and pages count by, from the table of units: each stands there once. */
import { nearestDouble } from './exact';
import { unitOf } from './units';

/** SI units in one of this unit. @throws if there is no such unit */
function inSi(symbol: string): number {
  const unit = unitOf(symbol);
  if (!unit) throw new Error(`there is no unit ${symbol}`);
  return nearestDouble(unit.factor);
}

/** Metres. */
export const INCH: number = inSi('in');
export const FOOT: number = inSi('ft');
/** Kilograms, avoirdupois. */
export const OUNCE: number = inSi('oz');
export const POUND: number = inSi('lb');
/** Watts, of 550 ft·lbf/s. */
export const HORSEPOWER: number = inSi('hp');
/** Pascals. */
export const PSI: number = inSi('psi');
/** Millimetres. */
export const MM_PER_INCH: number = INCH * 1000;
