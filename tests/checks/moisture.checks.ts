/** Moisture, movement, glue and clamps against handbooks, printed examples and closed forms. */
import type { Cell } from '../../src/cells';
import { clamps } from '../../src/cells/timber/gluing/clamps';
import { glue } from '../../src/cells/timber/gluing/glue';
import { moisture } from '../../src/cells/timber/wood/moisture';
import { movementFromShrinkage } from '../../src/trade/shrinkage';
import { tryCell } from '../cells/try-cell';
import type { Check } from './check';

const MM = 1e-3;
const INCH = 0.0254;
const PERCENT = 0.01;
const MINUTE = 60;
const HANDBOOK = 'Wood Handbook, USDA FPL-GTR-190 (2010)';
const SIMPSON = 'W. T. Simpson, USDA FPL-RN-0268 (1998), formula as transcribed';

const each =
  (cell: Cell, key: string, unit: number, ...sets: readonly Readonly<Record<string, string>>[]) =>
  () =>
    sets.map((entries) => tryCell(cell, entries).number(key) / unit);
const settles = (...airs: readonly (readonly [celsius: number, humidity: number])[]) =>
  each(
    moisture,
    'settled',
    PERCENT,
    ...airs.map(([celsius, humidity]) => ({ air: `${celsius} °C`, humidity: `${humidity} %` })),
  );

const settling: readonly Check[] = [
  {
    id: 'W73',
    cell: 'moisture',
    what: 'moisture at which wood settles, dry air',
    input: '21.1 °C, humidity 30 and 50 %',
    expected: [6.17, 9.24],
    unit: '%',
    tolerance: 0.02,
    source: SIMPSON,
    known: 'published',
    obtain: settles([21.1, 30], [21.1, 50]),
  },
  {
    id: 'W74',
    cell: 'moisture',
    what: 'moisture at which wood settles, damp air',
    input: '21.1 °C, humidity 65 and 80 %',
    expected: [11.96, 15.99],
    unit: '%',
    tolerance: 0.02,
    source: SIMPSON,
    known: 'published',
    obtain: settles([21.1, 65], [21.1, 80]),
  },
  {
    id: 'W74a',
    cell: 'moisture',
    what: 'moisture at which wood settles, the printed table',
    input: '70 °F, humidity 30, 50, 65 and 80 %',
    expected: [6.2, 9.2, 12, 16],
    unit: '%',
    tolerance: 0.06,
    source: `${HANDBOOK}, Table 4-2, printed to a tenth`,
    known: 'from memory',
    rough: { noticed: 0.02, finer: 'W73' },
    obtain: settles([21.1, 30], [21.1, 50], [21.1, 65], [21.1, 80]),
  },
  {
    id: 'W75',
    cell: 'moisture',
    what: 'moisture at which wood settles, hot',
    input: '60 °C, humidity 55 %',
    expected: [8.4],
    unit: '%',
    tolerance: 0.05,
    source: 'a drying example worked with the handbook’s formula, printed to a tenth',
    known: 'published',
    obtain: settles([60, 55]),
  },
  {
    id: 'W76',
    cell: 'moisture',
    what: 'moisture at which wood settles, cool and damp',
    input: '10 °C, humidity 80 %',
    expected: [16.38],
    unit: '%',
    tolerance: 0.02,
    source: SIMPSON,
    known: 'closed form',
    obtain: settles([10, 80]),
  },
];

const width = { sawn: 'flat', width: '100 mm' };

const moving: readonly Check[] = [
  {
    id: 'W77',
    cell: 'moisture',
    what: 'width lost from green',
    input: 'Douglas-fir, tangential 7.6 %, at 12 % moisture',
    expected: [4.56],
    unit: '%',
    tolerance: 0.01,
    source: `${HANDBOOK}, Table 4-3, in proportion from 30 % down`,
    known: 'published',
    obtain: each(moisture, 'fromGreen', PERCENT, { species: 'douglasFirCoast', now: '12 %' }),
  },
  {
    id: 'W78',
    cell: 'trade',
    what: 'coefficient of movement from the shrinkage, Douglas-fir',
    input: 'tangential 7.6 %, radial 4.8 %',
    expected: [0.00267, 0.00165],
    unit: '',
    tolerance: 1e-5,
    source: `${HANDBOOK}, Tables 4-3 and 13-5; the radial one from memory`,
    known: 'published',
    obtain: () => [0.076, 0.048].map(movementFromShrinkage),
  },
  {
    id: 'W79',
    cell: 'trade',
    what: 'coefficient of movement from the shrinkage, white ash',
    input: 'tangential 7.8 %, radial 4.9 %',
    expected: [0.00274, 0.00169],
    unit: '',
    tolerance: 1e-5,
    source: `${HANDBOOK}, Tables 4-3 and 13-5`,
    known: 'published',
    obtain: () => [0.078, 0.049].map(movementFromShrinkage),
  },
  {
    id: 'W80',
    cell: 'moisture',
    what: 'change of a flat-sawn width',
    input: 'northern red oak, 11.25 in, coefficient 0.00369, moisture 8 to 12 %',
    expected: [0.166],
    unit: 'in',
    tolerance: 0.001,
    source: 'a published example with the handbook’s coefficient',
    known: 'published',
    obtain: each(moisture, 'change', INCH, {
      ...width,
      species: 'redOak',
      width: '11.25 in',
      now: '8 %',
      later: '12 %',
    }),
  },
  {
    id: 'W81',
    cell: 'moisture',
    what: 'change of a narrow board',
    input: '5 in, coefficient 0.00129, moisture 6 to 9 %',
    expected: [5 * 0.00129 * 3],
    unit: 'in',
    tolerance: 0.00001,
    source:
      'a flooring trade’s worked example, which prints 0.019: width times coefficient times points of moisture',
    known: 'published',
    obtain: each(moisture, 'change', INCH, {
      ...width,
      width: '5 in',
      moveTangential: '0.00129',
      now: '6 %',
      later: '9 %',
    }),
  },
  {
    id: 'W82',
    cell: 'moisture',
    what: 'change of a sheet of plywood',
    input: '1220 mm, moisture up by 6 %, 0.0002 for each per cent',
    expected: [1.46],
    unit: 'mm',
    tolerance: 0.01,
    source: `${HANDBOOK}, ch. 12, as quoted`,
    known: 'published',
    obtain: each(moisture, 'change', MM, {
      sawn: 'plywood',
      width: '1220 mm',
      now: '8 %',
      later: '14 %',
    }),
  },
  {
    id: 'W01c',
    cell: 'moisture',
    what: 'density with its water',
    input: 'specific gravity 0.48 at 12 % moisture',
    expected: [537.6],
    unit: 'kg/m³',
    tolerance: 0.1,
    source: `${HANDBOOK}, ch. 4: 1000 G (1 + M/100)`,
    known: 'from memory',
    obtain: each(moisture, 'density', 1, { gravity: '0.48', now: '12 %' }),
  },
  {
    id: 'W03c',
    cell: 'moisture',
    what: 'specific gravity on the green volume',
    input: '0.485 at 12 % moisture',
    expected: [0.45],
    unit: '',
    tolerance: 0.001,
    source: `${HANDBOOK}, ch. 4: shrinkage in volume 26.5 x the green one`,
    known: 'from memory',
    obtain: each(moisture, 'gravityGreen', 1, { gravity: '0.485' }),
  },
];

const pressed = {
  length: '1000 mm',
  width: '40 mm',
  pressure: '700 kPa',
  capacity: '4000 N',
  glue: 'resorcinol',
};

const gluing: readonly Check[] = [
  {
    id: 'W29c',
    cell: 'clamps',
    what: 'force on a glue line',
    input: '40 x 1000 mm at 0.7 MPa',
    expected: [28],
    unit: 'kN',
    tolerance: 1e-9,
    source: 'pressure times area',
    known: 'closed form',
    obtain: each(clamps, 'force', 1000, pressed),
  },
  {
    id: 'W29d',
    cell: 'clamps',
    what: 'clamps for that force',
    input: '28 kN, 4 kN each',
    expected: [7],
    unit: '',
    tolerance: 0,
    source: 'pressure times area',
    known: 'closed form',
    obtain: each(clamps, 'byForce', 1, pressed),
  },
  {
    id: 'W83',
    cell: 'measure',
    what: 'a spread in the American trade’s unit',
    input: '60 lb to 1000 ft²',
    expected: [292.9],
    unit: 'g/m²',
    tolerance: 0.1,
    source: 'definition: 1 lb = 0.45359237 kg, 1 ft = 0.3048 m',
    known: 'closed form',
    obtain: each(glue, 'spread', 1e-3, { spread: '60 lb / (1000 * 1 ft * 1 ft)' }),
  },
  {
    id: 'W84',
    cell: 'glue',
    what: 'bead from one cartridge',
    input: '300 mL, bead 6 mm',
    expected: [10.61],
    unit: 'm',
    tolerance: 0.01,
    source: 'length of a cylinder',
    known: 'closed form',
    obtain: each(glue, 'fromPack', 1, { glue: 'polyurethane', pack: '300 mL', bead: '6 mm' }),
  },
  {
    id: 'W84a',
    cell: 'glue',
    what: 'time to close, ten kelvin colder',
    input: '20 min at 20 °C, shop at 10 °C',
    expected: [40],
    unit: 'min',
    tolerance: 0.1,
    source: "epoxy makers' sheets: times double for each 10 °C colder",
    known: 'published',
    obtain: each(glue, 'open', MINUTE, { glue: 'epoxy', openAt20: '20 min', shop: '10 °C' }),
  },
];

export const rows: readonly Check[] = [...settling, ...moving, ...gluing];
