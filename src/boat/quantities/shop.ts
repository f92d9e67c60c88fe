/**
 * The shop: what several cells share that is no part of the boat. Written once, in its own sheet or in any cell that
 * shows it.
 */
import type { Declared } from './quantity';
import { inSystem, shop } from './shop-entry';
import { shopBends } from './shop-bends';
import { shopFastening } from './shop-fastening';
import { shopEpoxy, shopGluing } from './shop-gluing';
import { sheetPrices, soldWood, woodPrices } from './shop-lumber';
import { shopPacks } from './shop-packs';

const PRACTICE = 'common practice, no source';

const air: readonly Declared[] = [
  shop('air', 'temperature', {
    label: 'Air in the shop',
    meaning: 'temperature of the air in the shop',
    preset: '20 °C',
    min: '-50 °C',
    max: '60 °C',
    step: '1 °C',
  }),
  shop('humidity', 'share', {
    label: 'Humidity of the air now',
    source: 'relative, by a hygrometer beside the work; not the mean of some weeks, in which wood settles',
    preset: '60 %',
    min: '5 %',
    max: '100 %',
    step: '1 %',
  }),
  shop('woodMoisture', 'share', {
    label: 'Moisture of the wood',
    source:
      'of its dry weight; by a meter, set for this wood, pushed into a fresh cut; lumber kept under cover about 12 %: common practice',
    preset: '12 %',
    min: '3 %',
    max: '150 %',
    step: '0.5 %',
  }),
];

const measuring: readonly Declared[] = [
  inSystem('sizesIn', 'Customary sizes in', 'system of customary sizes'),
  shop('trueWithin', 'length', {
    label: 'Difference accepted as true',
    meaning: 'difference in setting up that is accepted as true',
    source: `3 mm (1/8 in): ${PRACTICE}`,
    preset: '3 mm',
    min: '0.1 mm',
    max: '50 mm',
    step: '0.5 mm',
  }),
];

/** In the order of a build, under the names by which her sheet opens them. */
export const shopGroups: Readonly<Record<string, readonly Declared[]>> = {
  'Air and moisture': air,
  'Boards, sheets and saw': soldWood,
  'Prices of wood': woodPrices,
  'Prices of plywood': sheetPrices,
  Bending: shopBends,
  'Glue and clamps': shopGluing,
  'Epoxy and filler': shopEpoxy,
  'Packs of epoxy': shopPacks,
  Screws: shopFastening,
  Measuring: measuring,
};

export const shopEntries: readonly Declared[] = Object.values(shopGroups).flat();
