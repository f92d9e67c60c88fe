/** The state of a wood, the force that bends a board and the elastica against handbooks, codes and closed forms. */
import { bend } from '../../src/cells/timber/bending/bend';
import { elasticaOf, findRoot } from '../../src/kernel';
import { steamed } from '../../src/trade/steam';
import { look } from '../../src/trade/table';
import { timber, type TimberColumn } from '../../src/trade/timber';
import { tryCell } from '../cells/try-cell';
import type { Check } from './check';

const HANDBOOK = 'Wood Handbook, USDA FPL-GTR-190 (2010)';
const MPA = 1e6;

const each =
  (key: string, unit: number, ...sets: readonly Readonly<Record<string, string>>[]) =>
  () =>
    sets.map((entries) => tryCell(bend, entries).number(key) / unit);

const tabled = (wood: string, column: TimberColumn, unit = 1) => [
  (look(timber, wood, column)?.value ?? NaN) / unit,
];

/** Where the end of a board stands under a load F L^2 / EI: over, and out, as shares of its length. */
function endUnder(load: number): readonly number[] {
  const over = findRoot((offset) => elasticaOf(offset).load - load, 0, 0.98) ?? NaN;
  return [over, elasticaOf(over).reach];
}

const wood: readonly Check[] = [
  {
    id: 'W01',
    cell: 'trade',
    what: 'density at 12 % moisture from specific gravity',
    input: 'Douglas-fir, coast: 0.48 at 12 %',
    expected: [537.6],
    unit: 'kg/m3',
    tolerance: 0.1,
    source: `${HANDBOOK}, ch. 4: 1000 G (1 + M/100)`,
    known: 'from memory',
    obtain: () => tabled('douglasFirCoast', 'density'),
  },
  {
    id: 'W02',
    cell: 'trade',
    what: 'modulus of rupture of an imported wood',
    input: 'dark red meranti, 12,700 psi',
    expected: [87.56],
    unit: 'MPa',
    tolerance: 0.05,
    source: `${HANDBOOK}, Table 5-5b`,
    known: 'published',
    obtain: () => tabled('darkRedMeranti', 'rupture', MPA),
  },
  {
    id: 'W03',
    cell: 'trade',
    what: 'specific gravity at 12 % moisture from that of green wood',
    input: 'true mahogany, 0.45 green, shrinking by 26.5 times that',
    expected: [0.485],
    unit: '',
    tolerance: 0.001,
    source: `${HANDBOOK}, ch. 4: G/(1 - S/100)`,
    known: 'from memory',
    obtain: () => tabled('trueMahogany', 'gravity'),
  },
  {
    id: 'W04',
    cell: 'bend',
    what: 'strength of drier wood',
    input: 'white ash, 103 MPa at 12 %, 66 green, gaining below 24 %; at 8 %',
    expected: [119.5],
    unit: 'MPa',
    tolerance: 0.1,
    source: `${HANDBOOK}, ch. 5, worked example`,
    known: 'from memory',
    obtain: each('ruptureNow', MPA, { species: 'whiteAsh', moisture: '8 %' }),
  },
  {
    id: 'W04a',
    cell: 'bend',
    what: 'strength of green wood, however wet',
    input: 'white ash; at 24 %, at 60 %',
    expected: [66, 66],
    unit: 'MPa',
    tolerance: 1e-9,
    source: `${HANDBOOK}, Table 5-3 and ch. 5: constant above the fibre point`,
    known: 'from memory',
    obtain: each(
      'ruptureNow',
      MPA,
      { species: 'whiteAsh', moisture: '24 %' },
      { species: 'whiteAsh', moisture: '60 %' },
    ),
  },
  {
    id: 'W05',
    cell: 'bend',
    what: 'stiffness of damp wood',
    input: 'Douglas-fir, 13.4 GPa at 12 %, 10.8 green, gaining below 24 %; at 20 %',
    expected: [11.61],
    unit: 'GPa',
    tolerance: 0.02,
    source: `${HANDBOOK}, ch. 5: P12 (P12/Pg)^((12 - M)/(Mp - 12))`,
    known: 'from memory',
    obtain: each('modulusNow', 1e9, { species: 'douglasFirCoast', modulus: '13.4 GPa', moisture: '20 %' }),
  },
  {
    id: 'W05a',
    cell: 'bend',
    what: 'stiffness and strength, cold and warm',
    input: '-50 °C and 50 °C at 12 %; strength of damp wood, 18 to 20 %, at the same',
    expected: [1.17, 0.93, 1.35, 0.8, 1.6, 0.75],
    unit: '',
    tolerance: 1e-9,
    source: `${HANDBOOK}, ch. 5, change of properties with temperature`,
    known: 'from memory',
    obtain: () => [
      ...each('warmStiffness', 1, { warmth: '-50 °C' }, { warmth: '50 °C' })(),
      ...each('warmStrength', 1, { warmth: '-50 °C' }, { warmth: '50 °C' })(),
      ...each(
        'warmStrength',
        1,
        { warmth: '-50 °C', moisture: '19 %' },
        { warmth: '50 °C', moisture: '19 %' },
      )(),
    ],
  },
  {
    id: 'W06',
    cell: 'bend',
    what: 'strength left under a stress that lasts',
    input: '450 s; ten years',
    expected: [99.97, 62.06],
    unit: '%',
    tolerance: 0.05,
    source: 'L. W. Wood, Forest Products Laboratory Report 1916 (1951), the Madison curve',
    known: 'from memory',
    obtain: each('keptByCurve', 0.01, { lasts: '450 s' }, { duration: 'years' }),
  },
  {
    id: 'W07a',
    cell: 'bend',
    what: 'the same by the load duration factors, over that for ten minutes',
    input: 'ten years, 1.0; for good, 0.9',
    expected: [62.5, 56.25],
    unit: '%',
    tolerance: 1e-9,
    source: 'National Design Specification for Wood Construction (2018), Table 2.3.2',
    known: 'published',
    obtain: each('keptByCode', 0.01, { duration: 'years' }, { duration: 'ever' }),
  },
];

const curves: readonly Check[] = [
  {
    id: 'W12a',
    cell: 'bend',
    what: 'radius and arc from a chord and its rise',
    input: 'chord 2.0 m, rise 0.25 m',
    expected: [2.125, 2.0823],
    unit: 'm',
    tolerance: 1e-4,
    source: 'geometry: R = c^2/(8s) + s/2, arc 2 R asin(c/2R)',
    known: 'closed form',
    obtain: () =>
      ['radius', 'chordArc'].map((key) =>
        tryCell(bend, { curve: 'chord', chord: '2 m', chordRise: '250 mm' }).number(key),
      ),
  },
  {
    id: 'W13',
    cell: 'bend',
    what: 'pull at the end of a board held fast at the other',
    input: '90 x 19 mm, 1200 mm free, E 10.8 GPa, drawn in by 150 mm',
    expected: [144.7],
    unit: 'N',
    tolerance: 0.1,
    source: 'beam theory, F = 3 E I d/L^3',
    known: 'closed form',
    obtain: each('gentlePull', 1, {
      thickness: '19 mm',
      width: '90 mm',
      modulus: '10.8 GPa',
      loose: '1200 mm',
      standOff: '150 mm',
    }),
  },
  ...(
    [
      ['W16', 1, [0.3017, 0.9436]],
      ['W17', 2, [0.4935, 0.8394]],
      ['W18', 5, [0.7138, 0.6124]],
      ['W19', 10, [0.8106, 0.445]],
    ] as const
  ).map(([id, load, expected]): Check => ({
    id,
    cell: 'kernel',
    what: 'end of a board under a pull, past gentle slopes: over, and out, over its length',
    input: `F L^2 / EI = ${load}`,
    expected,
    unit: '',
    tolerance: 2e-4,
    source:
      'K. E. Bisshopp and D. C. Drucker, Quarterly of Applied Mathematics 3 (1945), the elastica of a cantilever',
    known: 'from memory',
    obtain: () => endUnder(load),
  })),
];

const steam: readonly Check[] = [
  {
    id: 'W22',
    cell: 'bend',
    what: 'inner radius over thickness in a strap, shortened by a quarter',
    input: 'shortening 0.25, 1 mm thick',
    expected: [3],
    unit: 'mm',
    tolerance: 1e-9,
    source: 'E. C. Peck, Agriculture Handbook 125 (1957): t/(R + t) at most the shortening',
    known: 'from memory',
    obtain: each('strapRadius', 1e-3, { thickness: '1 mm' }),
  },
  {
    id: 'W23',
    cell: 'trade',
    what: 'radius over thickness for three near perfect bends in four, steamed and strapped',
    input: 'southern pine, 17 % moisture',
    expected: [16],
    unit: '',
    tolerance: 0,
    source: 'T. J. Lemoine and P. Koch, Forest Products Journal 21(4):34-42 (1971), abstract',
    known: 'published',
    obtain: () => [steamed.southernPineStrapped.value],
  },
];

export const rows: readonly Check[] = [...wood, ...curves, ...steam];
