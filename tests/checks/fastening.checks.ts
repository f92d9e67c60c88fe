/** Screws and nails: sizes, holes, spacing, pull and push, against codes, handbooks and worked examples. */
import type { Cell } from '../../src/cells';
import { fasten } from '../../src/cells/timber/fastening/fasten';
import { screwStrength } from '../../src/cells/timber/fastening/screw-strength';
import { stiffnessBored } from '../../src/trade/bored';
import { embedmentByEurocode } from '../../src/trade/embedment';
import { spacingByEurocode, thinnestUndrilled } from '../../src/trade/screw-spacing';
import { screwSize } from '../../src/trade/screws';
import { tryCell } from '../cells/try-cell';
import type { Check } from './check';

const MM = 1e-3;
const INCH = 0.0254;
const POUND = 4.4482216152605;
const PSI = 6894.757293168361;
const DEGREE = Math.PI / 180;

const EC5 = 'EN 1995-1-1, Table 8.2';
const NDS = 'National Design Specification for Wood Construction (2018)';
const EXAMPLES = 'American Wood Council, Structural Wood Design Solved Example Problems';
const HANDBOOK = 'Wood Handbook, USDA FPL-GTR-190 (2010)';

type Entries = Readonly<Record<string, string>>;

/** A cell's value in the unit of the check, for each of several sets of entries. */
const each =
  (cell: Cell, key: string, unit: number, ...sets: readonly Entries[]) =>
  () =>
    sets.map((entries) => tryCell(cell, entries).number(key) / unit);

/** Allowed pull for each inch of thread, lb. */
const perInch = (...sets: readonly Entries[]) => each(screwStrength, 'perLength', POUND / INCH, ...sets);

/** The same by hand in the unit of the source, of several steps of one joint. */
const several =
  (entries: Entries, unit: number, ...keys: readonly string[]) =>
  () => {
    const tried = tryCell(screwStrength, entries);
    return keys.map((key) => tried.number(key) / unit);
  };

/** Of the first worked example: a nail of 0.148 in through 3/4 in, 2 1/4 in in the main part. */
const nailed = {
  fastener: 'smoothNail',
  diameter: '0.148 in',
  mainLength: '2.25 in',
  sideLength: '0.75 in',
  mainGravity: '0.5',
  sideGravity: '0.5',
};
/** Of the second: No. 10 screws in double shear. */
const doubled = {
  fastener: 'screw',
  diameter: '0.19 in',
  rootDiameter: '0.152 in',
  mainLength: '3 in',
  sideLength: '1.31 in',
  mainGravity: '0.55',
  sideGravity: '0.55',
  shear: 'double',
};
const eight = { fastener: 'screw', diameter: '0.164 in', rootDiameter: '0.131 in' };

const sizes: readonly Check[] = [
  {
    id: 'W49',
    cell: 'trade',
    what: 'diameter of wood screws',
    input: 'gauge 8; 10; 14',
    expected: [0.164, 0.19, 0.242],
    unit: 'in',
    tolerance: 5e-4,
    source: 'ASME B18.6.1, trade list',
    known: 'published',
    obtain: () => [8, 10, 14].map((gauge) => screwSize(gauge, 'diameter') / INCH),
  },
  {
    id: 'W50',
    cell: 'trade',
    what: 'flat heads',
    input: 'gauge 8; 12',
    expected: [0.332, 0.438],
    unit: 'in',
    tolerance: 5e-4,
    source: 'ASME B18.6.1, trade list',
    known: 'published',
    obtain: () => [8, 12].map((gauge) => screwSize(gauge, 'head') / INCH),
  },
  {
    id: 'W50a',
    cell: 'trade',
    what: 'root diameter',
    input: 'gauge 10',
    expected: [0.152],
    unit: 'in',
    tolerance: 5e-4,
    source: 'AWC, Structural Wood Design Solved Example Problems, screw example',
    known: 'published',
    obtain: () => [screwSize(10, 'root') / INCH],
  },
  {
    id: 'W51',
    cell: 'fasten',
    what: 'drill for the thread, 70 % and 90 % of the root',
    input: 'gauge 8; wood of gravity 0.5; 0.7',
    expected: [2.33, 2.99],
    unit: 'mm',
    tolerance: 0.01,
    source: `${NDS}, 12.1.5`,
    known: 'published',
    obtain: each(fasten, 'pilot', MM, { gravity: '0.5', gauge: '8' }, { gravity: '0.7', gauge: '8' }),
  },
];

const strength: readonly Check[] = [
  {
    id: 'W52',
    cell: 'screwStrength',
    what: 'withdrawal allowed for each inch of thread',
    input: 'gauge 10, gravity 0.45',
    expected: [109.65],
    unit: 'lb/in',
    tolerance: 0.1,
    source: `${NDS}, 2850 G^2 D; the table prints 109`,
    known: 'published',
    obtain: perInch({ fastener: 'screw', diameter: '0.19 in', mainGravity: '0.45' }),
  },
  {
    id: 'W53',
    cell: 'screwStrength',
    what: 'withdrawal allowed for each inch of thread',
    input: 'gauge 8, gravity 0.50',
    expected: [116.85],
    unit: 'lb/in',
    tolerance: 0.05,
    source: `${NDS}, 2850 G^2 D`,
    known: 'closed form',
    obtain: perInch({ ...eight, mainGravity: '0.5' }),
  },
  {
    id: 'W54',
    cell: 'screwStrength',
    what: 'pull that draws a screw out on average',
    input: 'gauge 8, gravity 0.48, 25 mm of thread',
    expected: [2597],
    unit: 'N',
    tolerance: 1,
    source: `${HANDBOOK}, ch. 8, 15,700 G^2 D L`,
    known: 'from memory',
    obtain: each(screwStrength, 'breaking', 1, { ...eight, dryGravity: '0.48', threadLength: '25 mm' }),
  },
  {
    id: 'W55',
    cell: 'screwStrength',
    what: 'withdrawal allowed for each inch of a smooth nail',
    input: 'nail of 0.131 in, gravity 0.42',
    expected: [20.67],
    unit: 'lb/in',
    tolerance: 0.03,
    source: `${EXAMPLES}, nail example; ${NDS}, 1380 G^2.5 D`,
    known: 'published',
    obtain: perInch({ fastener: 'smoothNail', diameter: '0.131 in', mainGravity: '0.42' }),
  },
  {
    id: 'W56',
    cell: 'screwStrength',
    what: 'withdrawal allowed for the whole nail',
    input: 'the same, 2.395 in in the wood',
    expected: [49.5],
    unit: 'lb',
    tolerance: 0.1,
    source: `${EXAMPLES}, nail example`,
    known: 'published',
    obtain: each(screwStrength, 'pull', POUND, {
      fastener: 'smoothNail',
      diameter: '0.131 in',
      mainGravity: '0.42',
      threadLength: '2.395 in',
    }),
  },
  {
    id: 'W57',
    cell: 'screwStrength',
    what: 'withdrawal allowed for each inch of a ring nail',
    input: 'nail of 0.12 in, gravity 0.50',
    expected: [54],
    unit: 'lb/in',
    tolerance: 0.1,
    source: `${NDS}, 1800 G^2 D`,
    known: 'from memory',
    obtain: perInch({ fastener: 'ringNail', diameter: '0.12 in', mainGravity: '0.5' }),
  },
  {
    id: 'W58',
    cell: 'screwStrength',
    what: 'withdrawal allowed for a lag screw',
    input: '1/2 in, gravity 0.55, 2.1875 in of thread',
    expected: [955],
    unit: 'lb',
    tolerance: 0.5,
    source: `${EXAMPLES}, lag screw example; ${NDS}, 1800 G^1.5 D^0.75`,
    known: 'published',
    obtain: each(screwStrength, 'pull', POUND, {
      fastener: 'lag',
      diameter: '0.5 in',
      mainGravity: '0.55',
      threadLength: '2.1875 in',
    }),
  },
  {
    id: 'W59',
    cell: 'screwStrength',
    what: 'push allowed on a nail in single shear, mode IIIs, which is the smallest',
    input: 'D 0.148 in, 2.25 in in the main part, 0.75 in on it, gravity 0.50 both, Fyb 90,000 psi',
    expected: [105.1, 105.1],
    unit: 'lb',
    tolerance: 0.1,
    source: `${EXAMPLES}, nail example, by ${NDS}, Table 12.3.1A`,
    known: 'published',
    obtain: several(nailed, POUND, 'bendsInMain', 'lateral'),
  },
  {
    id: 'W60',
    cell: 'screwStrength',
    what: 'push allowed on a screw in double shear, mode IV, which is the smallest',
    input:
      'root 0.152 in, 3 in in the middle, 1.31 in on either side, gravity 0.55, Fyb 80,000 psi, KD 2.4 of the shank',
    expected: [233.7, 233.7],
    unit: 'lb',
    tolerance: 0.1,
    source: `${EXAMPLES}, screw example, by ${NDS}, Table 12.3.1A`,
    known: 'published',
    obtain: several(doubled, POUND, 'bendsTwice', 'lateral'),
  },
  {
    id: 'W61',
    cell: 'screwStrength',
    what: 'push allowed on a No. 8 screw in single shear, mode IIIs, which is the smallest',
    input: 'root 0.131 in, 12 mm on 25.4 mm, gravity 0.50 both, Fyb 90,000 psi',
    expected: [71.4, 71.4],
    unit: 'lb',
    tolerance: 0.1,
    source: `${NDS}, Table 12.3.1A, worked by hand`,
    known: 'closed form',
    obtain: several(
      { ...eight, mainLength: '25.4 mm', sideLength: '12 mm', mainGravity: '0.5', sideGravity: '0.5' },
      POUND,
      'bendsInMain',
      'lateral',
    ),
  },
  {
    id: 'W62',
    cell: 'screwStrength',
    what: 'bearing strength under a thin fastening',
    input: 'gravity 0.50; 0.55',
    expected: [4637, 5526],
    unit: 'psi',
    tolerance: 1,
    source: `${NDS}, 16,600 G^1.84; its table rounds to 50`,
    known: 'published',
    obtain: each(screwStrength, 'mainEmbed', PSI, { mainGravity: '0.5' }, { mainGravity: '0.55' }),
  },
  {
    id: 'W63',
    cell: 'screwStrength',
    what: 'older push at the proportional limit',
    input: 'gauge 8, softwood of gravity 0.48 to 0.52',
    expected: [142],
    unit: 'lb',
    tolerance: 0.05,
    source: `${HANDBOOK}, Table 8-4, 5,280 D^2`,
    known: 'from memory',
    obtain: each(screwStrength, 'olderLimit', POUND, {
      ...eight,
      dryGravity: '0.48',
      species: 'douglasFirCoast',
    }),
  },
  {
    id: 'W68',
    cell: 'trade',
    what: 'embedment strength, undrilled; drilled',
    input: 'd 3 mm, 350 kg/m3',
    expected: [20.64, 27.84],
    unit: 'MPa',
    tolerance: 0.01,
    source: 'EN 1995-1-1, eq. 8.15 and 8.16, as transcribed',
    known: 'published',
    obtain: () => [false, true].map((drilled) => embedmentByEurocode(0.003, 350, drilled) / 1e6),
  },
  {
    id: 'W85',
    cell: 'screwStrength',
    what: 'older allowable push, woods of group II',
    input: 'gauge 8, 3,960 D^2',
    expected: [106.5],
    unit: 'lb',
    tolerance: 0.05,
    source: 'a civil-engineering formula handbook, eq. 6.38',
    known: 'published',
    obtain: each(screwStrength, 'olderAllowable', POUND, { ...eight, mainLength: '30 mm', group: 'two' }),
  },
  {
    id: 'W07',
    cell: 'screwStrength',
    what: 'what duration does to an allowable load',
    input: 'ten minutes; ten years; permanent',
    expected: [1.6, 1, 0.9],
    unit: '',
    tolerance: 0,
    source: `${NDS}, Table 2.3.2`,
    known: 'published',
    obtain: each(
      screwStrength,
      'durationFactor',
      1,
      { lasting: 'tenMinutes' },
      { lasting: 'tenYears' },
      { lasting: 'permanent' },
    ),
  },
];

const distances: readonly Check[] = [
  {
    id: 'W70',
    cell: 'screwMap',
    what: 'stiffness left by a hole through the middle of the depth',
    input: '20 mm in 90 mm',
    expected: [0.989],
    unit: '',
    tolerance: 0.001,
    source: 'rectangle less rectangle: 1 - (h/d)^3',
    known: 'closed form',
    obtain: () => [stiffnessBored(0.09, 0.02, 0)],
  },
  {
    id: 'W64',
    cell: 'trade',
    what: 'spacing undrilled, pulled along the grain: along, across, loaded end, free end, free edge',
    input: 'd 4 mm, 350 kg/m3',
    expected: [40, 20, 60, 40, 20],
    unit: 'mm',
    tolerance: 1e-6,
    source: EC5,
    known: 'from memory',
    obtain: () => spacing(0, false, ['along', 'across', 'loadedEnd', 'freeEnd', 'freeEdge']),
  },
  {
    id: 'W65',
    cell: 'trade',
    what: 'the same, drilled',
    input: 'd 4 mm, 350 kg/m3',
    expected: [20, 12, 48, 28, 12],
    unit: 'mm',
    tolerance: 1e-6,
    source: EC5,
    known: 'from memory',
    obtain: () => spacing(0, true, ['along', 'across', 'loadedEnd', 'freeEnd', 'freeEdge']),
  },
  {
    id: 'W66',
    cell: 'trade',
    what: 'spacing undrilled, pulled across the grain: along, loaded end, loaded edge',
    input: 'd 4 mm, 350 kg/m3',
    expected: [20, 40, 28],
    unit: 'mm',
    tolerance: 1e-6,
    source: EC5,
    known: 'from memory',
    obtain: () => spacing(90, false, ['along', 'loadedEnd', 'loadedEdge']),
  },
  {
    id: 'W67',
    cell: 'trade',
    what: 'thickness below which timber must be drilled: normal; splitting easily',
    input: 'd 4 mm, 350 kg/m3',
    expected: [28, 56],
    unit: 'mm',
    tolerance: 1e-6,
    source: 'EN 1995-1-1, eq. 8.18 and 8.19',
    known: 'from memory',
    obtain: () => [false, true].map((easily) => thinnestUndrilled(0.004, 350, easily) / MM),
  },
];

function spacing(
  degrees: number,
  drilled: boolean,
  names: readonly (keyof ReturnType<typeof spacingByEurocode>)[],
): readonly number[] {
  const found = spacingByEurocode(0.004, degrees * DEGREE, drilled, 350);
  return names.map((name) => found[name] / MM);
}

export const rows: readonly Check[] = [...sizes, ...strength, ...distances];
