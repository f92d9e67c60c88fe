/** What the yard sells, what it asks for it, and what the saw takes. */
import { pricedOtherwise, PRICES, pricedBy, priceWays } from './price-ways';
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

const PRICED = 'by length and by the board; other sections cost the same by volume';

const perVolume = {
  source: MADE_UP,
  otherwise: pricedOtherwise('timberPrice'),
  asked: pricedBy('volume'),
  min: '0 /m³',
  max: '100000 /m³',
  step: '50 /m³',
} as const;

const perLength = {
  source: MADE_UP,
  otherwise: pricedOtherwise('pricePerLength'),
  asked: pricedBy('length'),
  min: '0 /m',
  max: '1000 /m',
  step: '0.1 /m',
} as const;

/** By the usual price per length, rounded. */
const usualEach = { A: '7', B: '9', C: '11', D: '13' } as const;

const soldBoards: readonly Declared[] = soldKeys.map((key, i) =>
  shop(`length${key}`, 'stockLength', {
    label: `Board ${i + 1}: length sold`,
    meaning: `length of board ${i + 1} as sold`,
    source: '0 where it is not sold; sold by 0.3 m or by two feet: common practice',
    preset: soldLengths[key][0],
    presetInch: soldLengths[key][1],
    min: '0 mm',
    max: '12 m',
    step: '0.3 m',
  }),
);

/** What each of those boards costs, as the yard quotes it. */
const boardPrices: readonly Declared[] = soldKeys.flatMap((key, i) => [
  shop(`price${key}`, 'timberPrice', {
    label: `Board ${i + 1}: price by volume`,
    meaning: `price of board ${i + 1} by volume`,
    preset: 'shop.price',
    withoutBoat: '1500 /m³',
    ...perVolume,
  }),
  shop(`perLength${key}`, 'pricePerLength', {
    label: `Board ${i + 1}: price by length`,
    meaning: `price of board ${i + 1} by length`,
    preset: 'shop.perLength',
    withoutBoat: '3 /m',
    ...perLength,
  }),
  shop(`each${key}`, 'money', {
    label: `Board ${i + 1}: price each`,
    meaning: `price of board ${i + 1} as it stands`,
    source: MADE_UP,
    preset: usualEach[key],
    otherwise: pricedOtherwise('money'),
    asked: pricedBy('each'),
    min: '0',
    max: '10000',
    step: '0.5',
  }),
]);

const SHEETS = 'sold as 1220 by 2440 mm or 4 by 8 ft: common practice';

const NOT_SOLD = 'as the tape reads it; 0 where no second size is sold';

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
  shop('otherSheetLength', 'length', {
    label: 'Length of a second size',
    meaning: 'length of a second size of plywood sheet',
    source: NOT_SOLD,
    preset: '0 mm',
    min: '0 mm',
    max: '6 m',
    step: '10 mm',
  }),
  shop('otherSheetWidth', 'length', {
    label: 'Width of a second size',
    meaning: 'width of a second size of plywood sheet',
    source: NOT_SOLD,
    preset: '1220 mm',
    min: '0 mm',
    max: '3 m',
    step: '10 mm',
  }),
];

const sheetPrice = {
  source: 'made up: write what your yard asks; other thicknesses by volume',
  min: '0.01',
  max: '10000',
  step: '1',
} as const;

/** By the sheet, as yards quote plywood. */
export const sheetPrices: readonly Declared[] = [
  shop('sheetPrice', 'money', {
    label: 'Price of a sheet',
    meaning: 'price of a sheet of plywood',
    preset: '60',
    ...sheetPrice,
  }),
  shop('otherSheetPrice', 'money', {
    label: 'Price of the second size',
    meaning: 'price of a sheet of the second size',
    preset: '80',
    ...sheetPrice,
  }),
  shop('sheetThickness', 'length', {
    label: 'Thickness of the sheets priced',
    source: 'other thicknesses cost the same by volume',
    preset: '9 mm',
    min: '1 mm',
    max: '60 mm',
    step: '1 mm',
  }),
];

export const woodPrices: readonly Declared[] = [
  shop('quoted', 'choice', {
    label: PRICES,
    meaning: 'way in which the yard quotes its prices',
    source: 'as your yard quotes them',
    options: priceWays.map(({ id, label }) => ({ id, label })),
    preset: 'volume',
  }),
  shop('price', 'timberPrice', {
    label: 'Price of the wood',
    meaning: 'price of the wood by volume',
    preset: '1500 /m³',
    presetInch: '3.50 /bd ft',
    ...perVolume,
  }),
  shop('perLength', 'pricePerLength', {
    label: 'Price of the wood by length',
    preset: '3 /m',
    presetInch: '0.90 /ft',
    ...perLength,
  }),
  shop('boardThickness', 'length', {
    label: 'Thickness of the boards priced',
    source: PRICED,
    asked: pricedBy('length', 'each'),
    preset: '19 mm',
    presetInch: '3/4 in',
    min: '1 mm',
    max: '150 mm',
    step: '1 mm',
  }),
  shop('boardWidth', 'length', {
    label: 'Width of the boards priced',
    source: PRICED,
    asked: pricedBy('length', 'each'),
    preset: '89 mm',
    presetInch: '3 1/2 in',
    min: '3 mm',
    max: '2 m',
    step: '1 mm',
  }),
  ...boardPrices,
];

export const soldWood: readonly Declared[] = [
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
