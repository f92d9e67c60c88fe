/**
 * Solid timber: means of small, clear, straight-grained wood, as the *Wood Handbook* prints them.
 *
 * Units of the printed tables (GPa, MPa, psi) are kept in the rows and turned into SI once, below.
 * Single boards scatter about these means: see `timberSpread`. The modulus is printed from a beam of
 * span 14 times its depth and holds the shear deflection of that beam: see `bendingRaise`.
 */
import { PSI } from '../measure/si';
import type { Cited, TradeRow, TradeTable } from './table';

export type TimberColumn =
  | 'gravity'
  | 'density'
  | 'modulus'
  | 'rupture'
  | 'crushing'
  | 'shear'
  | 'gravityGreen'
  | 'modulusGreen'
  | 'ruptureGreen'
  | 'crushingGreen'
  | 'shearGreen'
  | 'fasteningGravity'
  | 'fibrePoint';

const HANDBOOK = 'Wood Handbook, USDA FPL-GTR-190 (2010)';
const DRY = `${HANDBOOK}, Table 5-3a, at 12 % moisture`;
const GREEN_READ = `${HANDBOOK}, Table 5-3a, green`;
const GREEN = `${HANDBOOK}, Table 5-3, green`;
const IMPORTED = `${HANDBOOK}, Table 5-5b, at 12 % moisture`;
const IMPORTED_1999 = 'Wood Handbook, USDA FPL-GTR-113 (1999), Table 4-5b, at 12 % moisture';
const FASTENING = 'National Design Specification for Wood Construction (2018), Table 12.3.3A, oven-dry basis';
const FIBRE = `${HANDBOOK}, ch. 5, moisture content below which strength rises`;

const MPa = 1e6;
const GPa = 1e9;

type Dry = readonly [gravity: number, rupture: number, modulus: number, crushing: number, shear: number];
type Green = readonly [...values: Dry, known: 'read' | 'remembered'];

/** Green: the rows not marked `read` are remembered from Table 5-3. */
const native: readonly (readonly [id: string, label: string, dry: Dry, green: Green | null])[] = [
  [
    'douglasFirCoast',
    'Douglas-fir, coast',
    [0.48, 85, 13.4, 5.5, 7.8],
    [0.45, 53, 10.8, 2.6, 6.2, 'remembered'],
  ],
  ['douglasFirInterior', 'Douglas-fir, interior west', [0.5, 87, 12.6, 5.2, 8.9], null],
  ['westernLarch', 'Larch, western', [0.52, 90, 12.9, 6.4, 9.4], [0.48, 53, 10.1, 2.8, 6.0, 'remembered']],
  ['sitkaSpruce', 'Spruce, Sitka', [0.4, 70, 10.8, 4.0, 7.9], [0.37, 39, 8.5, 1.9, 5.2, 'remembered']],
  [
    'whiteSpruce',
    'Spruce, white (also spruce-pine-fir)',
    [0.36, 65, 9.6, 3.0, 6.7],
    [0.33, 34, 7.9, 1.4, 4.4, 'remembered'],
  ],
  [
    'portOrfordCedar',
    'Cedar, Port-Orford',
    [0.43, 88, 11.7, 5.0, 9.4],
    [0.39, 45, 9.0, 2.1, 5.8, 'remembered'],
  ],
  [
    'yellowCedar',
    'Cedar, yellow (Alaska)',
    [0.44, 77, 9.8, 4.3, 7.8],
    [0.42, 44, 7.9, 2.4, 5.8, 'remembered'],
  ],
  [
    'westernRedCedar',
    'Cedar, western red',
    [0.32, 51.7, 7.7, 3.2, 6.8],
    [0.31, 36, 6.5, 1.7, 5.3, 'remembered'],
  ],
  ['northernWhiteCedar', 'Cedar, northern white', [0.31, 45, 5.5, 2.1, 5.9], null],
  [
    'easternWhitePine',
    'Pine, eastern white',
    [0.35, 59, 8.5, 3.0, 6.2],
    [0.34, 34, 6.8, 1.5, 4.7, 'remembered'],
  ],
  ['westernWhitePine', 'Pine, western white', [0.35, 67, 10.1, 3.2, 7.2], [0.36, 32, 8.2, 1.3, 4.7, 'read']],
  ['ponderosaPine', 'Pine, ponderosa', [0.4, 65, 8.9, 4.0, 7.8], [0.38, 35, 6.9, 1.9, 4.8, 'read']],
  [
    'loblollyPine',
    'Pine, loblolly (southern)',
    [0.51, 88, 12.3, 5.4, 9.6],
    [0.47, 50, 9.7, 2.7, 5.9, 'remembered'],
  ],
  [
    'shortleafPine',
    'Pine, shortleaf (southern)',
    [0.51, 90, 12.1, 5.7, 9.6],
    [0.47, 51, 9.6, 2.4, 6.3, 'read'],
  ],
  [
    'longleafPine',
    'Pine, longleaf (southern)',
    [0.59, 100, 13.7, 6.6, 10.4],
    [0.55, 59, 11.0, 3.3, 7.2, 'remembered'],
  ],
  ['slashPine', 'Pine, slash (southern)', [0.59, 112, 13.7, 7.0, 11.6], [0.54, 60, 10.5, 3.7, 6.6, 'read']],
  ['baldcypress', 'Baldcypress', [0.46, 73, 9.9, 5.0, 6.9], null],
  ['whiteAsh', 'Ash, white', [0.6, 103, 12.0, 8.0, 13.2], [0.55, 66, 9.9, 4.6, 9.3, 'remembered']],
  ['whiteOak', 'Oak, white', [0.68, 105, 12.3, 7.4, 13.8], [0.6, 57, 8.6, 4.6, 8.6, 'remembered']],
  ['redOak', 'Oak, northern red', [0.63, 99, 12.5, 7.0, 12.3], null],
];

/** Inch-pound rows; the specific gravity printed is the green one. Modulus in 10^6 psi. */
const imported: readonly (readonly [
  id: string,
  label: string,
  gravityGreen: number,
  rupture: number,
  modulus: number,
  shear: number,
  from: 'read' | 'read 1999' | 'remembered',
])[] = [
  ['darkRedMeranti', 'Meranti, dark red', 0.46, 12700, 1.77, 1450, 'read'],
  ['lightRedMeranti', 'Meranti, light red', 0.34, 9500, 1.23, 970, 'read'],
  ['yellowMeranti', 'Meranti, yellow', 0.46, 11400, 1.55, 1520, 'read'],
  ['spanishCedar', 'Spanish-cedar', 0.41, 11500, 1.44, 1100, 'read'],
  ['teak', 'Teak', 0.55, 14600, 1.55, 1890, 'read'],
  ['africanMahogany', 'Mahogany, African', 0.42, 10700, 1.4, 1500, 'read 1999'],
  ['trueMahogany', 'Mahogany, true', 0.45, 11500, 1.5, 1230, 'read 1999'],
  ['iroko', 'Iroko', 0.54, 12400, 1.46, 1800, 'remembered'],
  ['okoume', 'Okoume (gaboon)', 0.33, 7400, 1.14, 970, 'remembered'],
];

/** Table 12.3.3A names groups of species; for a wood that no group names it is worked out. */
const fasteningGravity: Readonly<Record<string, number>> = {
  douglasFirCoast: 0.5,
  douglasFirInterior: 0.5,
  westernLarch: 0.5,
  sitkaSpruce: 0.43,
  whiteSpruce: 0.42,
  yellowCedar: 0.47,
  westernRedCedar: 0.36,
  northernWhiteCedar: 0.31,
  easternWhitePine: 0.36,
  westernWhitePine: 0.4,
  ponderosaPine: 0.43,
  loblollyPine: 0.55,
  shortleafPine: 0.55,
  longleafPine: 0.55,
  slashPine: 0.55,
  whiteOak: 0.73,
  redOak: 0.67,
};

/** Percent; 25 for a wood without a value of its own. */
const fibrePoint: Readonly<Record<string, number>> = {
  douglasFirCoast: 24,
  douglasFirInterior: 24,
  whiteAsh: 24,
  westernLarch: 28,
  loblollyPine: 21,
  longleafPine: 21,
  sitkaSpruce: 27,
};

const published = (value: number, source: string): Cited => ({ value, source, known: 'published' });
const remembered = (value: number, source: string): Cited => ({ value, source, known: 'from memory' });
const calculated = (value: number, source: string): Cited => ({ value, source, known: 'calculated' });

/** Specific gravity at 12 % from that of green wood, by the shrinkage in volume down to 12 %. */
function gravityFromGreen(green: number): number {
  const shrinkage = 26.5 * green * (1 - 12 / 30);
  return green / (1 - shrinkage / 100);
}

/** Oven-dry mass over volume at 12 %, with the 12 % of water put back, on water at 1000 kg/m3. */
const densityFrom = (gravity: number) => 1000 * gravity * 1.12;

/** Oven-dry mass over oven-dry volume, from the volume when green; shrinkage 26.5 x it %. */
const ovenDryFromGreen = (green: number) => green / (1 - 0.265 * green);

/** The inverse of the formula for 12 %: green volume from that at 12 %. */
const greenFromDry = (dry: number) => dry / (1 + (0.265 * (30 - 12) * dry) / 30);

function shared(id: string, gravityGreen: number): TradeRow<TimberColumn>['cells'] {
  const listed = fasteningGravity[id];
  return {
    fasteningGravity:
      listed === undefined
        ? calculated(
            ovenDryFromGreen(gravityGreen),
            'no group of the code names it: from the green specific gravity by shrinkage of 26.5 x it % (Wood Handbook, ch. 4, from memory)',
          )
        : published(listed, FASTENING),
    fibrePoint: remembered((fibrePoint[id] ?? 25) / 100, FIBRE),
  };
}

function nativeRow([id, label, dry, green]: (typeof native)[number]): TradeRow<TimberColumn> {
  const [gravity, rupture, modulus, crushing, shear] = dry;
  const cells: TradeRow<TimberColumn>['cells'] = {
    ...shared(id, green?.[0] ?? greenFromDry(gravity)),
    gravity: published(gravity, DRY),
    density: calculated(densityFrom(gravity), '1.12 x specific gravity at 12 % moisture x 1000 kg/m³'),
    rupture: published(rupture * MPa, DRY),
    modulus: published(modulus * GPa, DRY),
    crushing: published(crushing * MPa, DRY),
    shear: published(shear * MPa, DRY),
  };
  if (!green) return { id, label, cells };
  const [gravityGreen, ruptureGreen, modulusGreen, crushingGreen, shearGreen, known] = green;
  const cite = (value: number) =>
    known === 'read' ? published(value, GREEN_READ) : remembered(value, GREEN);
  return {
    id,
    label,
    cells: {
      ...cells,
      gravityGreen: cite(gravityGreen),
      ruptureGreen: cite(ruptureGreen * MPa),
      modulusGreen: cite(modulusGreen * GPa),
      crushingGreen: cite(crushingGreen * MPa),
      shearGreen: cite(shearGreen * MPa),
    },
  };
}

function importedRow([
  id,
  label,
  gravityGreen,
  rupture,
  modulus,
  shear,
  from,
]: (typeof imported)[number]): TradeRow<TimberColumn> {
  const cite = (value: number) =>
    from === 'remembered'
      ? remembered(value, IMPORTED)
      : published(value, from === 'read 1999' ? IMPORTED_1999 : IMPORTED);
  const gravity = gravityFromGreen(gravityGreen);
  const how =
    'from the green specific gravity by shrinkage of 26.5 x it % (Wood Handbook, ch. 4, from memory)';
  return {
    id,
    label,
    cells: {
      ...shared(id, gravityGreen),
      gravity: calculated(gravity, how),
      density: calculated(densityFrom(gravity), `1.12 x specific gravity at 12 % x 1000 kg/m³, ${how}`),
      gravityGreen: cite(gravityGreen),
      rupture: cite(rupture * PSI),
      modulus: cite(modulus * 1e6 * PSI),
      shear: cite(shear * PSI),
    },
  };
}

export const timber: TradeTable<TimberColumn> = {
  id: 'timber',
  columns: {
    gravity: { kind: 'ratio', meaning: 'specific gravity at 12 % moisture' },
    density: { kind: 'density', meaning: 'density at 12 % moisture' },
    modulus: { kind: 'stress', meaning: 'bending modulus at 12 % moisture' },
    rupture: { kind: 'stress', meaning: 'modulus of rupture at 12 % moisture' },
    crushing: { kind: 'stress', meaning: 'crushing strength across the grain at 12 % moisture' },
    shear: { kind: 'stress', meaning: 'shear strength along the grain at 12 % moisture' },
    gravityGreen: { kind: 'ratio', meaning: 'specific gravity, green' },
    modulusGreen: { kind: 'stress', meaning: 'bending modulus, green' },
    ruptureGreen: { kind: 'stress', meaning: 'modulus of rupture, green' },
    crushingGreen: { kind: 'stress', meaning: 'crushing strength across the grain, green' },
    shearGreen: { kind: 'stress', meaning: 'shear strength along the grain, green' },
    fasteningGravity: { kind: 'ratio', meaning: 'specific gravity for fastening formulas' },
    fibrePoint: { kind: 'share', meaning: 'moisture content below which strength rises' },
  },
  rows: [...native.map(nativeRow), ...imported.map(importedRow)],
};

const SPREAD = `${HANDBOOK}, Table 5-6`;

/** Coefficients of variation between boards of one species, as ratios. */
export const timberSpread = {
  rupture: remembered(0.16, SPREAD),
  modulus: remembered(0.22, SPREAD),
  crushing: remembered(0.28, SPREAD),
  shear: remembered(0.14, SPREAD),
  gravity: remembered(0.1, SPREAD),
} as const satisfies Partial<Record<TimberColumn, Cited>>;

/** Modulus in bending alone over the printed one, which a short test beam's shear makes too small. */
export const bendingRaise = remembered(1.1, `${HANDBOOK}, footnote of Table 5-3: raise by 10 %`);
