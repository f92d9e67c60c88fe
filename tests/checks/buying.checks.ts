/** Buying: packs, boards and sheets as they are sold. */
import { buyList } from '../../src/cells/buying/buy-list';
import { tryCell } from '../cells/try-cell';
import type { Check } from './check';

const POUND = 0.45359237;
const of = (key: string, entries: Record<string, string>) => tryCell(buyList, entries).number(key);

export const rows: readonly Check[] = [
  {
    id: 'BL1',
    cell: 'buyList',
    what: 'mass of a sheet of plywood',
    input: '1.22 x 2.44 m, 6 mm at 480 kg/m³ and 9 mm at 600 kg/m³',
    expected: [8.57, 16.07],
    unit: 'kg',
    tolerance: 0.01,
    source: 'area times thickness times density, by hand',
    known: 'closed form',
    obtain: () =>
      [
        ['6 mm', '480 kg/m^3'],
        ['9 mm', '600 kg/m^3'],
      ].map(([sheetThickness = '', plyDensity = '']) =>
        of('oneSheet', { sheetLength: '2440 mm', sheetWidth: '1220 mm', sheetThickness, plyDensity }),
      ),
  },
  {
    id: 'BL2',
    cell: 'buyList',
    what: 'mass of a sheet of fir plywood',
    input: '4 x 8 ft, 1/4 in',
    expected: [24],
    unit: 'lb',
    tolerance: 0.1,
    source: 'a rule of the American plywood trade: 3 lb a square foot for each inch, which is 577 kg/m³',
    known: 'from memory',
    obtain: () => [
      of('oneSheet', {
        sheetLength: '8 ft',
        sheetWidth: '4 ft',
        sheetThickness: '1/4 in',
        plyDensity: '577 kg/m^3',
      }) / POUND,
    ],
  },
  {
    id: 'BL3',
    cell: 'buyList',
    what: 'price of a board by the board foot',
    input: '1 x 6 in, 8 ft, at 4 a board foot',
    expected: [16],
    unit: '',
    tolerance: 0.01,
    source: 'NIST Handbook 44: a board foot is 144 cubic inches, so that this board has four',
    known: 'from memory',
    obtain: () => [
      of('usualBoard', {
        boardThickness: '1 in',
        boardWidth: '6 in',
        roughLength: '8 ft',
        byVolume: `${4 / (144 * 0.0254 ** 3)} /m^3`,
      }),
    ],
  },
  {
    id: 'BL4',
    cell: 'buyList',
    what: 'cheapest tins for 13 L: small, large, price',
    input: 'tins of 4 L at 13 and of 15 L at 48',
    expected: [0, 1, 48],
    unit: '',
    tolerance: 0,
    source: 'by hand: four of the small ones hold 16 L and cost 52, one large holds 15 L and costs 48',
    known: 'closed form',
    obtain: () =>
      ['paintSmall', 'paintLarge', 'paintPlan'].map((key) =>
        of(key, {
          paintVolume: '13 L',
          smallTin: '4 L',
          smallTinPrice: '13',
          middleTin: '0 L',
          largeTin: '15 L',
          largeTinPrice: '48',
        }),
      ),
  },
];
