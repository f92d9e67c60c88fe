/** Packs of epoxy as the shop sells them, and what they cost. */
import { putUp } from '../../measure';
import { packShelf } from '../../trade/packs-sold';
import type { Declared } from './quantity';
import { shop } from './shop-entry';

putUp('pack', packShelf);

const packs = [
  { key: 'small', holds: ['1 L', '1 qt'], costs: ['30', '30'] },
  { key: 'middle', holds: ['4 L', '1 gal'], costs: ['96', '96'] },
  { key: 'large', holds: ['15 L', '5 gal'], costs: ['300', '380'] },
] as const;

export const shopPacks: readonly Declared[] = packs.flatMap(({ key, holds, costs }) => [
  shop(`${key}Pack`, 'pack', {
    label: `${key.charAt(0).toUpperCase()}${key.slice(1)} pack of epoxy`,
    source: 'resin and hardener together; 0 for a size that is not sold',
    preset: holds[0],
    presetInch: holds[1],
    min: '0 L',
    max: '250 L',
    step: '0.5 L',
  }),
  shop(`${key}Price`, 'money', {
    label: `${key.charAt(0).toUpperCase()}${key.slice(1)} pack costs`,
    meaning: `price of a ${key} pack of epoxy`,
    source: 'an example; put in your shop’s',
    preset: costs[0],
    presetInch: costs[1],
    min: '0',
    max: '100000',
    step: '1',
  }),
]);
