/** The builder's choice of units. It decides how values are written and what a bare number means; never what is kept. */
import { type Kind, type KindId, kindOf, type Ladder } from './kinds';

export interface Shown {
  /** 'feet': feet, inches and fractions; 'inches': decimal inches. */
  readonly length: 'feet' | 'inches' | 'mm';
  /** The finest fraction of an inch on the tape: eighths, sixteenths or thirty-seconds. Used with 'feet'. */
  readonly fraction: 8 | 16 | 32;
  readonly mass: 'lb' | 'kg';
  /** Sign written before amounts of money; any currency, all the same to the reckoning. */
  readonly money: '' | '$' | '€' | '£';
}

/** What holds until the builder chooses, and in files that name no units: millimetres and kilograms. */
export const plainShown: Shown = { length: 'mm', fraction: 16, mass: 'kg', money: '' };

/** The units of a kind under the builder's choice. */
export function ladderOf(kind: Kind, shown: Shown): Ladder {
  const metric = kind.follows === 'length' ? shown.length === 'mm' : shown.mass === 'kg';
  return metric ? kind.metric : kind.customary;
}

/** The unit that a bare number takes in a field of this kind: `mm`, `in`, `°C`; empty for plain numbers. */
export function shownUnit(kind: KindId, shown: Shown): string {
  return ladderOf(kindOf(kind), shown).entry;
}
