/** The choices of units that the page offers, by the words for them. */
import type { Shown } from '../measure';

type Units = Pick<Shown, 'length' | 'fraction' | 'mass'>;

export const unitChoices: Readonly<Record<string, Units>> = {
  'mm, kg': { length: 'mm', fraction: 16, mass: 'kg' },
  'ft-in 1/8, lb': { length: 'feet', fraction: 8, mass: 'lb' },
  'ft-in 1/16, lb': { length: 'feet', fraction: 16, mass: 'lb' },
  'ft-in 1/32, lb': { length: 'feet', fraction: 32, mass: 'lb' },
  'decimal in, lb': { length: 'inches', fraction: 16, mass: 'lb' },
  'ft-in 1/16, kg': { length: 'feet', fraction: 16, mass: 'kg' },
};

/** The words for the units chosen; for a pair that is not offered, the nearest. */
export function unitWords(shown: Shown): string {
  const fits = (units: Units) =>
    units.length === shown.length &&
    units.mass === shown.mass &&
    (units.length !== 'feet' || units.fraction === shown.fraction);
  const same = Object.entries(unitChoices).find(([, units]) => fits(units));
  return same?.[0] ?? (shown.length === 'mm' ? 'mm, kg' : 'ft-in 1/16, lb');
}
