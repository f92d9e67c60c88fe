/**
 * Woods, typed once more from the printed tables: Wood Handbook, USDA FPL-GTR-190 (2010), Tables 5-3a, 5-5b, 4-3, 4-4
 * and 13-5, FPL-GTR-113 (1999), Table 4-5b, both as transcribed and in part from memory; National Design
 * Specification (2018), Table 12.3.3A, as transcribed.
 */
import { linesOf, type Printed, PSI, tableOf } from './units';

const MPA = 1e6;
const GPA = 1e9;

/** Table 5-3a: at 12 % G, MOR, E, compression across the grain, shear; the same green, from Table 5-3 for most. */
const native = `
douglasFirCoast    | 0.48 | 85   | 13.4 | 5.5 | 7.8  | 0.45 | 53 | 10.8 | 2.6 | 6.2
douglasFirInterior | 0.50 | 87   | 12.6 | 5.2 | 8.9
westernLarch       | 0.52 | 90   | 12.9 | 6.4 | 9.4  | 0.48 | 53 | 10.1 | 2.8 | 6.0
sitkaSpruce        | 0.40 | 70   | 10.8 | 4.0 | 7.9  | 0.37 | 39 | 8.5  | 1.9 | 5.2
whiteSpruce        | 0.36 | 65   | 9.6  | 3.0 | 6.7  | 0.33 | 34 | 7.9  | 1.4 | 4.4
portOrfordCedar    | 0.43 | 88   | 11.7 | 5.0 | 9.4  | 0.39 | 45 | 9.0  | 2.1 | 5.8
yellowCedar        | 0.44 | 77   | 9.8  | 4.3 | 7.8  | 0.42 | 44 | 7.9  | 2.4 | 5.8
westernRedCedar    | 0.32 | 51.7 | 7.7  | 3.2 | 6.8  | 0.31 | 36 | 6.5  | 1.7 | 5.3
northernWhiteCedar | 0.31 | 45   | 5.5  | 2.1 | 5.9
easternWhitePine   | 0.35 | 59   | 8.5  | 3.0 | 6.2  | 0.34 | 34 | 6.8  | 1.5 | 4.7
westernWhitePine   | 0.35 | 67   | 10.1 | 3.2 | 7.2  | 0.36 | 32 | 8.2  | 1.3 | 4.7
ponderosaPine      | 0.40 | 65   | 8.9  | 4.0 | 7.8  | 0.38 | 35 | 6.9  | 1.9 | 4.8
loblollyPine       | 0.51 | 88   | 12.3 | 5.4 | 9.6  | 0.47 | 50 | 9.7  | 2.7 | 5.9
shortleafPine      | 0.51 | 90   | 12.1 | 5.7 | 9.6  | 0.47 | 51 | 9.6  | 2.4 | 6.3
longleafPine       | 0.59 | 100  | 13.7 | 6.6 | 10.4 | 0.55 | 59 | 11.0 | 3.3 | 7.2
slashPine          | 0.59 | 112  | 13.7 | 7.0 | 11.6 | 0.54 | 60 | 10.5 | 3.7 | 6.6
baldcypress        | 0.46 | 73   | 9.9  | 5.0 | 6.9
whiteAsh           | 0.60 | 103  | 12.0 | 8.0 | 13.2 | 0.55 | 66 | 9.9  | 4.6 | 9.3
whiteOak           | 0.68 | 105  | 12.3 | 7.4 | 13.8 | 0.60 | 57 | 8.6  | 4.6 | 8.6
redOak             | 0.63 | 99   | 12.5 | 7.0 | 12.3
`;

/** Table 5-5b (mahoganies: 1999, Table 4-5b): G green, MOR psi, E 10^6 psi, shear psi. */
const imported = `
darkRedMeranti   | 0.46 | 12700 | 1.77 | 1450
lightRedMeranti  | 0.34 | 9500  | 1.23 | 970
yellowMeranti    | 0.46 | 11400 | 1.55 | 1520
spanishCedar     | 0.41 | 11500 | 1.44 | 1100
teak             | 0.55 | 14600 | 1.55 | 1890
africanMahogany  | 0.42 | 10700 | 1.40 | 1500
trueMahogany     | 0.45 | 11500 | 1.50 | 1230
iroko            | 0.54 | 12400 | 1.46 | 1800
okoume           | 0.33 | 7400  | 1.14 | 970
`;

/** Table 12.3.3A: Douglas-fir-larch, southern pine, spruce-pine-fir and the rest, oven-dry. */
const fastening = `
douglasFirCoast    | 0.50
douglasFirInterior | 0.50
westernLarch       | 0.50
loblollyPine       | 0.55
shortleafPine      | 0.55
longleafPine       | 0.55
slashPine          | 0.55
whiteSpruce        | 0.42
sitkaSpruce        | 0.43
easternWhitePine   | 0.36
westernWhitePine   | 0.40
ponderosaPine      | 0.43
westernRedCedar    | 0.36
yellowCedar        | 0.47
northernWhiteCedar | 0.31
whiteOak           | 0.73
redOak             | 0.67
`;

/** Chapter 5, moisture below which strength rises, per cent: 25 but for these. */
const fibre: Readonly<Record<string, number>> = {
  whiteAsh: 24,
  douglasFirCoast: 24,
  douglasFirInterior: 24,
  westernLarch: 28,
  loblollyPine: 21,
  longleafPine: 21,
  sitkaSpruce: 27,
};

/** Tables 4-3 and 4-4: green to oven dry, radial and tangential, per cent. */
const shrinks = `
douglasFirCoast    | 4.8 | 7.6
douglasFirInterior | 4.8 | 7.5
portOrfordCedar    | 4.6 | 6.9
yellowCedar        | 2.8 | 6.0
westernRedCedar    | 2.4 | 5.0
northernWhiteCedar | 2.2 | 4.9
whiteAsh           | 4.9 | 7.8
whiteOak           | 5.6 | 10.5
redOak             | 4.0 | 8.6
westernLarch       | 4.5 | 9.1
sitkaSpruce        | 4.3 | 7.5
easternWhitePine   | 2.1 | 6.1
westernWhitePine   | 4.1 | 7.4
ponderosaPine      | 3.9 | 6.2
loblollyPine       | 4.8 | 7.4
shortleafPine      | 4.6 | 7.7
longleafPine       | 5.1 | 7.5
slashPine          | 5.4 | 7.6
baldcypress        | 3.8 | 6.2
africanMahogany    | 2.5 | 4.5
trueMahogany       | 3.0 | 4.1
okoume             | 4.1 | 6.1
spanishCedar       | 4.2 | 6.3
teak               | 2.5 | 5.8
iroko              | 2.8 | 3.8
`;

/** Table 13-5: part of the width for each per cent, radial and tangential. */
const moves = `
whiteAsh         | 0.00169 | 0.00274
whiteOak         | 0.00180 | 0.00365
redOak           | 0.00158 | 0.00369
easternWhitePine | 0.00071 | 0.00212
douglasFirCoast  | 0.00165 | 0.00267
trueMahogany     | 0.00172 | 0.00238
sitkaSpruce      | 0.00148 | 0.00263
portOrfordCedar  | 0.00158 | 0.00241
yellowCedar      | 0.00095 | 0.00208
westernRedCedar  | 0.00111 | 0.00234
westernLarch     | 0.00155 | 0.00323
loblollyPine     | 0.00165 | 0.00259
longleafPine     | 0.00176 | 0.00263
ponderosaPine    | 0.00133 | 0.00216
westernWhitePine | 0.00141 | 0.00259
`;

const all = [...linesOf(native), ...linesOf(imported)].map(([id]) => id);
const column = (text: string, at: number) =>
  new Map(linesOf(text).map(([id, numbers]) => [id, numbers[at]!]));

/** Specific gravities from each other by shrinkage in volume, 26.5 x the green one per cent, in proportion from 30 %: ch. 4, from memory. */
const at12 = (green: number) => green / (1 - 0.265 * green * (18 / 30));
const ovenDry = (green: number) => green / (1 - 0.265 * green);
const greenOf = (dry: number) => dry / (1 + 0.265 * dry * (18 / 30));

const gravities = new Map<string, readonly [at12: number, green: number]>([
  ...linesOf(native).map(([id, n]) => [id, [n[0]!, n[5] ?? greenOf(n[0]!)]] as const),
  ...linesOf(imported).map(([id, n]) => [id, [at12(n[0]!), n[0]!]] as const),
]);

/** Eq. 13-3, from memory: 1 / (30 x 100 / S - 30 + 10), S in per cent. */
const moving = (percent: number) => 1 / (3000 / percent - 30 + 10);

/** The wood of which nothing is printed: 1 % of the width for each 4 % of moisture, American Wood Council. */
const ANY = 0.01 / 4;

function movement(at: 0 | 1, shrink: string, move: string): Printed {
  const [printed, stated] = [column(moves, at), column(shrinks, at)];
  return Object.fromEntries(
    all.flatMap((id) => {
      const percent = stated.get(id);
      const path = `shrinkage.shrinkage.${id}`;
      return [
        [`${path}.${shrink}`, percent === undefined ? 30 * ANY : percent / 100],
        [`${path}.${move}`, printed.get(id) ?? (percent === undefined ? ANY : moving(percent))],
      ] as const;
    }),
  );
}

const named = column(fastening, 0);

export const woods: Printed = {
  ...tableOf(
    'timber.timber',
    [
      ['gravity', 1],
      ['rupture', MPA],
      ['modulus', GPA],
      ['crushing', MPA],
      ['shear', MPA],
      ['gravityGreen', 1],
      ['ruptureGreen', MPA],
      ['modulusGreen', GPA],
      ['crushingGreen', MPA],
      ['shearGreen', MPA],
    ],
    native,
  ),
  ...tableOf(
    'timber.timber',
    [
      ['gravityGreen', 1],
      ['rupture', PSI],
      ['modulus', 1e6 * PSI],
      ['shear', PSI],
    ],
    imported,
  ),
  ...Object.fromEntries(
    all.flatMap((id) => {
      const [gravity, green] = gravities.get(id)!;
      return [
        [`timber.timber.${id}.gravity`, gravity],
        // 12 % of water on the oven-dry wood.
        [`timber.timber.${id}.density`, 1120 * gravity],
        [`timber.timber.${id}.fasteningGravity`, named.get(id) ?? ovenDry(green)],
        [`timber.timber.${id}.fibrePoint`, (fibre[id] ?? 25) / 100],
      ] as const;
    }),
  ),
  ...movement(0, 'shrinkRadial', 'moveRadial'),
  ...movement(1, 'shrinkTangential', 'moveTangential'),
  /** Footnote of Table 5-3, from memory: the printed modulus holds shear; a tenth more is that of bending alone. */
  'timber.bendingRaise': 1.1,
  /** Table 5-6, from memory. */
  'timber.timberSpread.rupture': 0.16,
  'timber.timberSpread.modulus': 0.22,
  'timber.timberSpread.crushing': 0.28,
  'timber.timberSpread.shear': 0.14,
  'timber.timberSpread.gravity': 0.1,
  /** Chapter 12, swelling in the plane of the sheet, as quoted. */
  'shrinkage.plywoodMovement': 0.0002,
};
