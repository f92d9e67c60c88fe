/** What the yard sells, what it asks for it, and what the saw takes. */
import { pricedOtherwise, PRICES, priceWays } from './price-ways';
import type { Declared } from './quantity';
import { shop } from './shop-entry';

/** Which the yard sells; as many as a builder asks about. */
export const soldKeys = ['A', 'B', 'C', 'D'] as const;

/** By three tenths of a metre, or by two feet, as the yard of the place sells: common practice, no source. */
const soldLengths = {
  A: ['2.4 m', '8 ft'],
  B: ['3 m', '10 ft'],
  C: ['3.6 m', '12 ft'],
  D: ['4.2 m', '14 ft'],
} as const;

const MADE_UP = 'made up: write what your yard asks';

/** Boards that the yard sells, and what each costs. */
const soldBoards: readonly Declared[] = soldKeys.flatMap((key, i) => [
  shop(`length${key}`, 'stockLength', {
    label: `Board ${i + 1}: length sold`,
    meaning: `length of board sold, ${i + 1}`,
    source: '0 where it is not sold; sold by 0.3 m or by two feet: common practice',
    preset: soldLengths[key][0],
    presetInch: soldLengths[key][1],
    min: '0 mm',
    max: '12 m',
    step: '0.3 m',
  }),
  shop(`price${key}`, 'timberPrice', {
    label: `Board ${i + 1}: price by volume`,
    meaning: `price of that board, ${i + 1}`,
    source: MADE_UP,
    preset: 'shop.price',
    withoutBoat: '1500 /m³',
    otherwise: pricedOtherwise('timberPrice'),
    min: '0 /m³',
    max: '100000 /m³',
    step: '50 /m³',
  }),
]);

const SHEETS = 'sold as 1220 by 2440 mm or 4 by 8 ft: common practice';

const soldSheets: readonly Declared[] = [
  shop('sheetLength', 'length', {
    label: 'Length of a sheet of plywood',
    source: SHEETS,
    preset: '2440 mm',
    min: '500 mm',
    max: '4 m',
    step: '10 mm',
  }),
  shop('sheetWidth', 'length', {
    label: 'Width of a sheet of plywood',
    source: SHEETS,
    preset: '1220 mm',
    min: '300 mm',
    max: '3 m',
    step: '10 mm',
  }),
];

export const shopLumber: readonly Declared[] = [
  shop('quoted', 'choice', {
    label: PRICES,
    meaning: 'way in which the yard quotes its prices',
    source: 'as your yard quotes them',
    options: priceWays.map(({ id, label }) => ({ id, label })),
    preset: 'volume',
  }),
  shop('price', 'timberPrice', {
    label: 'Price of the wood',
    source: MADE_UP,
    preset: '1500 /m³',
    presetInch: '3.50 /bd ft',
    otherwise: pricedOtherwise('timberPrice'),
    min: '0 /m³',
    max: '100000 /m³',
    step: '50 /m³',
  }),
  ...soldBoards,
  ...soldSheets,
  shop('kerf', 'length', {
    label: 'Saw kerf',
    source: 'common practice: 3 mm (1/8 in) on a table saw; saw a scrap and measure',
    preset: '3 mm',
    min: '0 mm',
    max: '1 in',
    step: '0.5 mm',
  }),
];
