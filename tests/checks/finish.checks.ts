/** Glass and resin: weights as sold, lay-ups, mix ratios, the published rule for epoxy, packs. */
import { resin } from '../../src/cells/finish/resin';
import { tryCell } from '../cells/try-cell';
import type { Check } from './check';

/** A job without areas of its own: what is written makes it. */
const bare = {
  bottomArea: '0 m^2',
  bilgeArea: '0 m^2',
  sideArea: '0 m^2',
  transomArea: '0 m^2',
  bowArea: '0 m^2',
  insideArea: '0 m^2',
  laps: '0 %',
  uptake: '0 mL/m^2',
  waste: '0 %',
  margin: '0 %',
};
const job = (entries: Record<string, string>) => tryCell(resin, { ...bare, ...entries });
/** One square metre of bottom under one layer. */
const oneMetre = (entries: Record<string, string>) =>
  job({ bottomArea: '0.5 m^2', fillCoats: '0', ...entries });
/** Both parts of one density, so that the mix has it whatever the ratio. */
const mixOf = (density: string) => ({ resinDensity: density, hardenerDensity: density });

const GALLON = 3.785411784e-3;
const UNITS = 'international avoirdupois ounce, foot and yard';
const ISO = 'ISO 12215-5, thickness from weight, with densities 2.56 and 1.20';
const SHARE = 'definition of the share of glass by mass';
const NIEDERER = 'B. Niederer, “Estimating Epoxy Amounts”, worked example';
/** What the published rule implies, net of its 15 % waste: film of a coat, density of the mix. */
const rule = {
  ...mixOf('1126 kg/m^3'),
  fillFilm: '88.6 µm',
  fillCoats: '3',
  waste: '15 %',
  glassShare: '50 %',
};

const weight = (id: string, entry: string, expected: number, tolerance: number): Check => ({
  id,
  cell: 'resin',
  what: 'weight of glass as sold',
  input: entry,
  expected: [expected],
  unit: 'g/m²',
  tolerance,
  source: UNITS,
  known: 'closed form',
  obtain: () => [job({ clothWeight: entry }).number('clothWeight') * 1000],
});
const thickness = (
  id: string,
  clothWeight: string,
  glassShare: string,
  expected: number,
  source = ISO,
): Check => ({
  id,
  cell: 'resin',
  what: 'thickness of one wetted layer',
  input: `${clothWeight}, ${glassShare} glass`,
  expected: [expected],
  unit: 'mm',
  tolerance: 0.0005,
  source,
  known: source === ISO ? 'from memory' : 'closed form',
  obtain: () => [oneMetre({ clothWeight, glassShare }).number('plyThickness') * 1000],
});
const packs = (id: string, litres: number, expected: readonly number[]): Check => ({
  id,
  cell: 'resin',
  what: 'packs of 1, 4 and 15 L at 30, 96 and 300: how many of each, and what they cost',
  input: `${litres} L`,
  expected,
  unit: '',
  tolerance: 1e-9,
  source: 'all purchases compared by hand',
  known: 'closed form',
  obtain: () => {
    const tried = job({ insideArea: `${litres * 10} m^2`, sealCoats: '1', uptake: '100 mL/m^2' });
    return ['small', 'middle', 'large', 'cost'].map((key) => tried.number(key));
  },
});

export const rows: readonly Check[] = [
  weight('C01', '1 oz/yd^2', 33.9057, 0.0001),
  weight('C02', '4 oz/yd^2', 135.62, 0.01),
  weight('C03', '6 oz/yd^2', 203.43, 0.01),
  weight('C04', '7.5 oz/yd^2', 254.29, 0.01),
  weight('C05', '10 oz/yd^2', 339.06, 0.01),
  weight('C06', '12 oz/yd^2', 406.87, 0.01),
  weight('C07', '17 oz/yd^2', 576.4, 0.01),
  weight('C08', '1.5 oz/ft^2', 457.7, 0.1),
  thickness('C09', '6 oz/yd^2', '50 %', 0.249),
  thickness(
    'C10',
    '203.434 g/m^2',
    '50 %',
    0.249,
    'weight of glass and resin over their densities, 2.56 and 1.20',
  ),
  thickness('C11', '450 g/m^2', '30 %', 1.0508),
  thickness('C12', '600 g/m^2', '48 %', 0.776),
  thickness('C13', '17 oz/yd^2', '50 %', 0.7055),
  {
    id: 'C14',
    cell: 'resin',
    what: 'share of glass by volume',
    input: '50 % by weight',
    expected: [0.3191],
    unit: '',
    tolerance: 0.0001,
    source: SHARE,
    known: 'closed form',
    obtain: () => [oneMetre({ glassShare: '50 %' }).number('glassVolumeShare')],
  },
  {
    id: 'C15',
    cell: 'resin',
    what: 'share of glass by volume',
    input: '30 % by weight',
    expected: [0.1673],
    unit: '',
    tolerance: 0.0001,
    source: SHARE,
    known: 'closed form',
    obtain: () => [oneMetre({ glassShare: '30 %' }).number('glassVolumeShare')],
  },
  {
    id: 'C16',
    cell: 'resin',
    what: 'density of the laminate',
    input: '50 % glass by weight',
    expected: [1.634],
    unit: 'kg/L',
    tolerance: 0.001,
    source: SHARE,
    known: 'closed form',
    obtain: () => [oneMetre({ glassShare: '50 %' }).number('laminateDensity') / 1000],
  },
  {
    id: 'C17',
    cell: 'resin',
    what: 'resin that wets out mat',
    input: '1 m² of 450 g/m², 30 % glass',
    expected: [1050],
    unit: 'g',
    tolerance: 0.1,
    source: SHARE,
    known: 'closed form',
    obtain: () => [oneMetre({ clothWeight: '450 g/m^2', glassShare: '30 %' }).number('wetOutMass') * 1000],
  },
  {
    id: 'C18',
    cell: 'resin',
    what: 'resin that wets out cloth',
    input: '1 m² of 6 oz/yd², 50 % glass, mix of 1.10 kg/L',
    expected: [184.9],
    unit: 'mL',
    tolerance: 0.1,
    source: SHARE,
    known: 'closed form',
    obtain: () => [
      oneMetre({ clothWeight: '6 oz/yd^2', glassShare: '50 %', ...mixOf('1100 kg/m^3') }).number('wetOut') *
        1e6,
    ],
  },
  {
    id: 'C19',
    cell: 'resin',
    what: 'epoxy to sheathe, three fill coats and waste',
    input: '56 ft² of 12 oz/yd²',
    expected: [0.99],
    unit: 'US gal',
    tolerance: 0.01,
    source: NIEDERER,
    known: 'published',
    rough: { noticed: 0.025, finer: 'C21' },
    obtain: () => [
      job({ ...rule, bottomArea: '28 ft^2', clothWeight: '12 oz/yd^2' }).number('total') / GALLON,
    ],
  },
  {
    id: 'C20',
    cell: 'resin',
    what: 'epoxy to sheathe, three fill coats and waste',
    input: '61 ft² of 6 oz/yd²',
    expected: [0.77],
    unit: 'US gal',
    tolerance: 0.01,
    source: NIEDERER,
    known: 'published',
    rough: { noticed: 0.025, finer: 'C21' },
    obtain: () => [
      job({ ...rule, bottomArea: '30.5 ft^2', clothWeight: '6 oz/yd^2' }).number('total') / GALLON,
    ],
  },
  {
    id: 'C21',
    cell: 'resin',
    what: 'the same rule for a square metre',
    input: '1 m² of 6 oz/yd²',
    expected: [0.5134],
    unit: 'L',
    tolerance: 0.0005,
    source: 'B. Niederer, “Estimating Epoxy Amounts”, converted',
    known: 'published',
    obtain: () => [oneMetre({ ...rule, clothWeight: '6 oz/yd^2' }).number('total') * 1000],
  },
  {
    id: 'C22',
    cell: 'resin',
    what: 'weight of a film spread by a notched tool',
    input: '35 thou over 1 ft², mix of 1.098 g/mL',
    expected: [3.2],
    unit: 'oz',
    tolerance: 0.03,
    source: 'T. Monville, estimates of epoxy use: 3.2 oz/ft² at 35 thou',
    known: 'published',
    obtain: () => [
      (oneMetre({
        bottomArea: '0.5 ft^2',
        fillCoats: '1',
        fillFilm: '35 thou',
        ...mixOf('1098 kg/m^3'),
      }).number('filling') *
        1098) /
        0.028349523125,
    ],
  },
  {
    id: 'C23',
    cell: 'resin',
    what: 'density of mixed epoxy, converted',
    input: '9.23 lb/gal',
    expected: [1.106],
    unit: 'kg/L',
    tolerance: 0.0005,
    source: 'a composites supplier, “Coverage and yield per gallon”',
    known: 'published',
    obtain: () => [job({ resinDensity: '9.23 lb/gal' }).number('resinDensity') / 1000],
  },
  {
    id: 'C24',
    cell: 'resin',
    what: 'US fluid ounce and gallon',
    input: '1 fl oz; 1 gal',
    expected: [29.5735, 3785.4118],
    unit: 'mL',
    tolerance: 0.0001,
    source: 'US gallon of 231 cubic inches',
    known: 'closed form',
    obtain: () => ['1 fl oz', '1 gal'].map((inHand) => job({ inHand }).number('inHand') * 1e6),
  },
  {
    id: 'C25',
    cell: 'resin',
    what: 'hardener to 100 of resin by weight',
    input: '2:1 by volume, densities 1.16 and 1.00',
    expected: [43.1],
    unit: '',
    tolerance: 0.01,
    source: 'volumes times densities',
    known: 'closed form',
    obtain: () => [
      job({
        resinParts: '2',
        hardenerParts: '1',
        resinDensity: '1.16 kg/L',
        hardenerDensity: '1 kg/L',
      }).number('hardenerPer100'),
    ],
  },
  {
    id: 'C26',
    cell: 'resin',
    what: 'density of the mix',
    input: '2:1 by volume, densities 1.16 and 1.00',
    expected: [1.1067],
    unit: 'kg/L',
    tolerance: 0.0001,
    source: 'volumes times densities',
    known: 'closed form',
    obtain: () => [
      job({
        resinParts: '2',
        hardenerParts: '1',
        resinDensity: '1.16 kg/L',
        hardenerDensity: '1 kg/L',
      }).number('mixDensity') / 1000,
    ],
  },
  {
    id: 'C27',
    cell: 'resin',
    what: 'ratio by weight',
    input: '3:1 by volume, resin 1.1667 times as dense',
    expected: [3.5],
    unit: '',
    tolerance: 0.01,
    source: 'an epoxy maker’s dispensing and mixing page: 3:1 by volume, 3.5:1 by weight',
    known: 'published',
    obtain: () => [
      100 /
        job({
          resinParts: '3',
          hardenerParts: '1',
          resinDensity: '1.1667 kg/L',
          hardenerDensity: '1 kg/L',
        }).number('hardenerPer100'),
    ],
  },
  {
    id: 'C27b',
    cell: 'resin',
    what: 'the same label read by weight gives the ratio by volume',
    input: '3.5:1 by weight, resin 1.1667 times as dense',
    expected: [3],
    unit: '',
    tolerance: 0.01,
    source: 'an epoxy maker’s dispensing and mixing page: 3:1 by volume, 3.5:1 by weight',
    known: 'published',
    obtain: () => [
      job({
        basis: 'mass',
        resinParts: '3.5',
        hardenerParts: '1',
        resinDensity: '1.1667 kg/L',
        hardenerDensity: '1 kg/L',
      }).number('resinByVolume'),
    ],
  },
  packs('C35', 9, [1, 2, 0, 222]),
  packs('C36', 13, [0, 0, 1, 300]),
  {
    id: 'C83',
    cell: 'resin',
    what: 'waste as a share added on top',
    input: '10 L net, 15 %',
    expected: [11.5],
    unit: 'L',
    tolerance: 0.01,
    source: 'common practice, no source: added to the net amount, not taken from the purchase',
    known: 'common practice',
    obtain: () => [
      job({ insideArea: '100 m^2', sealCoats: '1', uptake: '100 mL/m^2', waste: '15 %' }).number('total') *
        1000,
    ],
  },
];
