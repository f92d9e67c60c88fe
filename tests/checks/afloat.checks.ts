/** Afloat: what she weighs and where, and how she floats, against the world outside. */
import { curves } from '../../src/cells/afloat/curves';
import { weights } from '../../src/cells/afloat/weights';
import { type Tried, tryCell } from '../cells/try-cell';
import { balance, below, type Mesh } from '../../src/kernel';
import { waterDensity } from '../../src/trade/sea-water';
import { float } from '../../src/cells/afloat/float';
import { stability } from '../../src/cells/afloat/stability';
import { box } from '../boat/shapes';
import { tableThrough } from '../cells/shape/table-through';
import { prism, wigley } from '../kernel/afloat/hulls';
import { boxMesh } from '../kernel/shapes';
import type { Check } from './check';

/** The dory of nothing but a keelson of so many kilograms. */
const noWood = Object.fromEntries(
  ['bottom', 'side', 'transom', 'stem', 'log', 'clamp', 'rail', 'frame', 'gusset', 'thwart'].map((part) => [
    `${part}Mass`,
    '0 kg',
  ]),
);
const bare = {
  ...noWood,
  people: '0',
  gearAMass: '0 kg',
  gearBMass: '0 kg',
  gearCMass: '0 kg',
  sheathing: '0 kg',
  glueLines: '0 L',
  filletPaste: '0 L',
  fillerPaste: '0 L',
  screwsIn: '0',
  painted: '0 m^2',
  moisture: '12 %',
};
const numbers = (tried: Tried, ...keys: readonly string[]) => keys.map((key) => tried.number(key));

const DEGREE = Math.PI / 180;
const DERRETT = 'D. R. Derrett, Ship Stability for Masters and Mates';

/** Righting lever of a body of so much volume, its centre on the centreline, m. */
const lever = (body: Mesh, volume: number, [x, z]: readonly [number, number], heel: number): number =>
  balance(body, { volume, centre: [x, 0, z] }, { heel: heel * DEGREE })!.lever;

const wigleyHull = () => wigley(64, { length: 10, beam: 1, draught: 0.625 }, 0.3);
const flared = prism(8, [
  [0, 0],
  [0.5, 0],
  [0.5 + Math.tan(25 * DEGREE), 1],
  [0, 1],
]);

/** A box in fresh water, its centre on the middle of its length, looked at by the cell of the stability. */
const boxHeeled = (
  [length, beam, depth]: readonly [number, number, number],
  entries: Readonly<Record<string, string>>,
): Tried =>
  tryCell(
    stability,
    { centreForward: `${length / 2} m`, density: '1000 kg/m3', ...entries },
    tableThrough(box(length, beam, depth)),
  );

/** Height of the centre that gives a box in fresh water its metacentric height: KB + BM - GM. */
const centreFor = ([length, beam]: readonly [number, number, number], mass: number, metacentric: number) => {
  const draught = mass / (1000 * length * beam);
  return `${draught / 2 + beam ** 2 / (12 * draught) - metacentric} m`;
};

/** List by the metacentric height alone, of people at so much off the centreline, degrees. */
const listOf = (
  size: readonly [number, number, number],
  mass: number,
  metacentric: number,
  moved: readonly [people: number, kilograms: number, metres: number],
): number =>
  boxHeeled(size, {
    mass: `${mass} kg`,
    centreHeight: centreFor(size, mass, metacentric),
    people: `${moved[0]}`,
    person: `${moved[1]} kg`,
    aside: `${moved[2]} m`,
  }).number('smallHeel') / DEGREE;

export const rows: readonly Check[] = [
  {
    id: 'A1',
    cell: 'weights',
    what: 'mass of three things and where their centre lies',
    input: '60 kg at 2.0 m, 25 kg at 4.4 m, 150 kg at 2.3 m',
    expected: [235, 2.4468],
    unit: 'kg, m',
    tolerance: 0.0001,
    source: 'Σ m x / Σ m = (120 + 110 + 345) / 235, by hand',
    known: 'closed form',
    obtain: () =>
      numbers(
        tryCell(weights, {
          ...bare,
          keelsonMass: '0.001 g',
          gearAMass: '60 kg',
          gearAForward: '2 m',
          gearBMass: '25 kg',
          gearBForward: '4.4 m',
          people: '2',
          person: '75 kg',
          peopleForward: '2.3 m',
        }),
        'loaded',
        'centreForward',
      ),
  },
  {
    id: 'A2',
    cell: 'weights',
    what: 'mass of a hull on two supports, and where its centre lies',
    input: '68 kg at 0.8 m, 52 kg at 3.8 m',
    expected: [120, 2.1],
    unit: 'kg, m',
    tolerance: 1e-9,
    source:
      'reactions of a body on two supports: 120 kg at 2.1 m gives 120 (3.8 - 2.1) / 3 and 120 (2.1 - 0.8) / 3',
    known: 'closed form',
    obtain: () =>
      numbers(
        tryCell(weights, {
          ...bare,
          weighed: 'scales',
          aftReads: '68 kg',
          foreReads: '52 kg',
          aftAt: '0.8 m',
          foreAt: '3.8 m',
        }),
        'hull',
        'hullForward',
      ),
  },
  {
    id: 'A3',
    cell: 'weights',
    what: 'what an end weighs that a lever holds',
    input: '25.714 kg on the scale, arms of 1.75 m and 0.25 m',
    expected: [180],
    unit: 'kg',
    tolerance: 0.01,
    source: 'the law of the lever, Archimedes: F = W a / b',
    known: 'closed form',
    obtain: () =>
      numbers(
        tryCell(weights, { ...bare, weighed: 'lever', leverage: '1.75 / 0.25', aftReads: '25.714 kg' }),
        'onAft',
      ),
  },
  {
    id: 'A4',
    cell: 'weights',
    what: 'weight of wood at 19 % moisture over that at 12 %',
    input:
      'specific gravity 0.5 oven-dry, on the volume at 12 %: 62.4 × 0.5 / (1 + 0.009 × 0.5 × 12) × (1 + M / 100)',
    expected: [33.1537, 35.2258],
    unit: 'lb/ft³',
    tolerance: 0.01,
    source: 'National Design Specification for Wood Construction, Supplement: density at a moisture',
    known: 'from memory',
    obtain: () =>
      ['12 %', '19 %'].map(
        (moisture) =>
          // Of a cubic foot of it, cut at 12 %.
          tryCell(weights, { ...bare, keelsonMass: '33.1537 lb', moisture }).number('wood') / 0.453_592_37,
      ),
  },
  {
    id: 'A5',
    cell: 'kernel',
    what: 'volume of the Wigley hull, and its two metacentric radii',
    input: '10 m by 1 m by 0.625 m, 64 cells along and 64 up each side',
    expected: [2.777_778, 0.137_143, 12],
    unit: 'm³, m, m',
    tolerance: 0.002,
    rough: { noticed: 0.02, finer: 'A7' },
    source:
      'C_B = 4/9, BM = 3 B² / 35 T, BM_L = 3 L² / 40 T; the form after W. C. S. Wigley, DREA TC 89/308 (Hally, 1989)',
    known: 'closed form',
    obtain: () => {
      const { volume, waterplane } = below(wigleyHull(), { normal: [0, 0, 1], height: 0 });
      return [volume, waterplane.transverse / volume, waterplane.longitudinal / volume];
    },
  },
  {
    id: 'A6',
    cell: 'float',
    what: 'metacentric height of a box, and what sinks it by a centimetre',
    input: 'box 6 m by 2 m floating 0.25 m deep in fresh water, its centre 0.4 m up',
    expected: [1.058_33, 120],
    unit: 'm, kg',
    tolerance: 1e-4,
    source: `${DERRETT}, summary of formulae: KB = T/2, BM = B² / 12 T`,
    known: 'published',
    obtain: () =>
      numbers(
        tryCell(
          float,
          { mass: '3000 kg', centreForward: '3 m', centreHeight: '0.4 m', station: 'frame2' },
          tableThrough(box(6, 2, 1)),
        ),
        'stiffness',
        'sinks',
      ),
  },
  {
    id: 'A7',
    cell: 'kernel',
    what: 'metacentric heights of a box, for heel and for trim',
    input: 'box 6 m by 2 m floating 0.25 m deep, its centre 0.4 m up',
    expected: [1.058_333, 11.725],
    unit: 'm',
    tolerance: 1e-5,
    source: `${DERRETT}, summary of formulae: KB + BM - KG`,
    known: 'published',
    obtain: () => {
      const at = balance(boxMesh([-3, -1, 0], [3, 1, 1]), { volume: 3, centre: [0, 0, 0.4] })!;
      return [at.metacentric.transverse, at.metacentric.longitudinal];
    },
  },
  {
    id: 'A8',
    cell: 'kernel',
    what: 'centre of buoyancy and metacentric radius of a triangular prism, apex down',
    input: 'breadth 2 m on the waterline, draught 0.5 m',
    expected: [0.333_33, 1.333_33],
    unit: 'm',
    tolerance: 1e-4,
    source: `${DERRETT}, summary of formulae: KB = 2 T/3, BM = B² / 6 T`,
    known: 'published',
    obtain: () => {
      const wedge = prism(8, [
        [0, 0],
        [1.5, 0.75],
        [0, 0.75],
      ]);
      const { centroid, volume, waterplane } = below(wedge, { normal: [0, 0, 1], height: 0.5 });
      return [centroid![2], waterplane.transverse / volume];
    },
  },
  {
    id: 'A9',
    cell: 'kernel',
    what: 'righting lever of a box at 20° and, its bilge out of the water, at 30°',
    input: 'breadth 2 m, draught 0.5 m, depth 1.2 m, KG 0.5 m',
    expected: [0.157_611, 0.257_835],
    unit: 'm',
    tolerance: 1e-5,
    source: 'GZ = sin θ (GM + ½ BM tan² θ); at 30° the triangle under water, by hand',
    known: 'closed form',
    obtain: () => [20, 30].map((heel) => lever(boxMesh([0, -1, 0], [8, 1, 1.2]), 8, [4, 0.5], heel)),
  },
  {
    id: 'A10',
    cell: 'kernel',
    what: 'righting moment of a box-shaped vessel at a small heel, by its metacentric height',
    input: '65 m by 12 m, draught 4 m in salt water of 1.025, KG 4 m, 5°',
    expected: [278.9],
    unit: 't·m',
    tolerance: 0.3,
    source: `${DERRETT}: W GM sin θ`,
    known: 'published',
    obtain: () => {
      const at = balance(boxMesh([0, -6, 0], [65, 6, 8]), { volume: 65 * 12 * 4, centre: [32.5, 0, 4] })!;
      return [1.025 * 65 * 12 * 4 * at.metacentric.transverse * Math.sin(5 * DEGREE)];
    },
  },
  {
    id: 'A11',
    cell: 'kernel',
    what: 'righting moments of a box-shaped vessel: at 6° by its metacentric height, at 24° by its lever',
    input: '55 m by 7.5 m by 6 m, draught 4 m in salt water of 1.025, KG 2.7 m',
    expected: [83.42, 404.5],
    unit: 't·m',
    tolerance: 0.05,
    source: `${DERRETT}, exercise 15.5, a worked solution`,
    known: 'published',
    obtain: () => {
      const body = boxMesh([0, -3.75, 0], [55, 3.75, 6]);
      const volume = 55 * 7.5 * 4;
      const at = balance(body, { volume, centre: [27.5, 0, 2.7] })!;
      return [
        1.025 * volume * at.metacentric.transverse * Math.sin(6 * DEGREE),
        1.025 * volume * lever(body, volume, [27.5, 2.7], 24),
      ];
    },
  },
  {
    id: 'A12',
    cell: 'kernel',
    what: 'section of a vee bottom with a chine under water',
    input: 'keel (0, 0), chine (0.6, 0.16), sheer (0.8, 0.6) m, water 0.25 m up, a metre of it',
    expected: [0.207_682],
    unit: 'm²',
    tolerance: 1e-6,
    source: 'polygon by its corners (0, 0), (0.6, 0.16), (0.640909, 0.25)',
    known: 'closed form',
    obtain: () => {
      const vee = prism(1, [
        [0, 0],
        [0.6, 0.16],
        [0.8, 0.6],
        [0, 0.6],
      ]);
      return [below(vee, { normal: [0, 0, 1], height: 0.25 }).volume];
    },
  },
  {
    id: 'A13',
    cell: 'kernel',
    what: 'righting lever of a flared section at 10°',
    input: 'flat bottom 1 m broad, sides flared 25°, draught 0.15 m, KG 0.35 m',
    expected: [0.088_616],
    unit: 'm',
    tolerance: 1e-5,
    source: 'heeled polygon of the same area, by its corners',
    known: 'closed form',
    obtain: () => [lever(flared, 8 * (0.15 + 0.0225 * Math.tan(25 * DEGREE)), [4, 0.35], 10)],
  },
  {
    id: 'A14',
    cell: 'float',
    what: 'load that sinks 50 ft² of waterplane by an inch, in fresh and in salt water',
    input: '62.4 and 64 lb/ft³',
    expected: [260, 266.67],
    unit: 'lb',
    tolerance: 0.02,
    source:
      'pounds an inch = waterplane × density / 12; trade figures of 62.4 and 64 lb/ft³, the first also in 33 CFR 183.105',
    known: 'closed form',
    obtain: () =>
      [62.4, 64].map((weight) => {
        const of = 0.453_592_37 / 0.3048 ** 3;
        const tried = tryCell(
          float,
          {
            mass: '900 kg',
            centreForward: '5 ft',
            centreHeight: '300 mm',
            density: `${weight * of} kg/m3`,
            station: 'frame2',
          },
          tableThrough(box(10 * 0.3048, 5 * 0.3048, 1)),
        );
        return (tried.number('sinks') * 2.54) / 0.453_592_37;
      }),
  },
  {
    id: 'A15',
    cell: 'trade',
    what: 'density of sea water of 35 parts of salt in a thousand, and of pure water',
    input: 'sea 25 °C and 15 °C; pure 5 °C and 15 °C',
    expected: [1023.3431, 1025.9728, 999.966_75, 999.1016],
    unit: 'kg/m³',
    tolerance: 1e-3,
    source:
      'N. P. Fofonoff and R. C. Millard, Algorithms for computation of fundamental properties of seawater, UNESCO Technical Papers in Marine Science 44, 1983',
    known: 'from memory',
    obtain: () => [waterDensity(25, 35), waterDensity(15, 35), waterDensity(5, 0), waterDensity(15, 0)],
  },
  {
    id: 'A16',
    cell: 'curves',
    what: 'what sinks a box by a centimetre, and what trims it by one',
    input: 'box 6 m by 2 m floating 0.25 m deep in fresh water, its centre 0.4 m up',
    expected: [120, 58.625],
    unit: 'kg, kg·m',
    tolerance: 1e-4,
    source: `${DERRETT}, summary of formulae: waterplane × density / 100, W GM_L / 100 L`,
    known: 'published',
    obtain: () =>
      numbers(
        tryCell(
          curves,
          { draught: '0.25 m', centreHeight: '0.4 m', density: '1000 kg/m3' },
          tableThrough(box(6, 2, 1)),
        ),
        'sinks',
        'trimMoment',
      ),
  },
  {
    id: 'A17',
    cell: 'curves',
    what: 'height of the metacentre of a box where it is least: as high as she is deep',
    input: 'box 2 m broad floating B / √6 deep',
    expected: [0.816_497],
    unit: 'm',
    tolerance: 1e-6,
    source: `${DERRETT}, summary of formulae: the least KM of a box is B / √6`,
    known: 'published',
    obtain: () =>
      numbers(
        tryCell(curves, { draught: '2 m / sqrt(6)', centreHeight: '0.4 m' }, tableThrough(box(6, 2, 1))),
        'metacentre',
      ),
  },
  {
    id: 'A18',
    cell: 'curves',
    what: 'load that sinks 50 ft² of waterplane by an inch in salt water',
    input: '64 lb/ft³',
    expected: [266.67],
    unit: 'lb',
    tolerance: 0.01,
    source: 'pounds an inch = waterplane × density / 12; 64 lb/ft³ for salt water, a trade figure',
    known: 'closed form',
    obtain: () => [
      (tryCell(
        curves,
        { draught: '1 ft', density: `${(64 * 0.453_592_37) / 0.3048 ** 3} kg/m3` },
        tableThrough(box(10 * 0.3048, 5 * 0.3048, 1)),
      ).number('sinks') *
        2.54) /
        0.453_592_37,
    ],
  },
  {
    id: 'A19',
    cell: 'stability',
    what: 'righting lever of a box at 20° and, its bilge out of the water, at 30°; the wall-sided formula there',
    input: 'breadth 2 m, draught 0.5 m, depth 1.2 m, KG 0.5 m',
    expected: [0.157_611, 0.257_835, 0.263_889],
    unit: 'm',
    tolerance: 1e-5,
    source: 'GZ = sin θ (GM + ½ BM tan² θ); at 30° the triangle under water, by hand',
    known: 'closed form',
    obtain: () => {
      const at = (heel: string) => boxHeeled([8, 2, 1.2], { mass: '8000 kg', centreHeight: '0.5 m', heel });
      return [...numbers(at('20°'), 'rightingLever'), ...numbers(at('30°'), 'rightingLever', 'wallLever')];
    },
  },
  {
    id: 'A20',
    cell: 'stability',
    what: 'heel by the metacentric height alone, of one person moved to the side',
    input: '75 kg at 0.6 m, 400 kg in all, GM 0.6 m',
    expected: [10.62],
    unit: '°',
    tolerance: 0.01,
    source: `${DERRETT}, list by a shifted weight: tan θ = w d / (W GM)`,
    known: 'closed form',
    obtain: () => [listOf([4, 1, 1], 400, 0.6, [1, 75, 0.6])],
  },
  {
    id: 'A30',
    cell: 'stability',
    what: 'heel of an inclining trial, by the metacentric height that its pendulum tells',
    input: '20 kg moved 0.6 m in 400 kg; plumb line 1200 mm long, off by 48 mm: GM 0.750 m',
    expected: [2.2906],
    unit: '°',
    tolerance: 0.001,
    source: 'a summary of the IS Code, chapter 7: GM = w d L / (W s); the heel is atan (48/1200)',
    known: 'closed form',
    obtain: () => [listOf([4, 1, 1], 400, 0.75, [1, 20, 0.6])],
  },
  {
    id: 'A21',
    cell: 'stability',
    what: 'list of a ship when a weight is moved across her, at a thousandth of her mass',
    input: '10 t moved 10 m in 1500 t, GM 0.4 m; here ten of 10 kg moved 1 m in 1500 kg',
    expected: [9.462],
    unit: '°',
    tolerance: 0.02,
    source: `${DERRETT}, exercise 14.4: 9° 27’`,
    known: 'published',
    obtain: () => [listOf([4, 2, 1], 1500, 0.4, [10, 10, 1])],
  },
  {
    id: 'A22',
    cell: 'stability',
    what: 'heeling moment of people by the US rule, and what side it may put under in a boat with a cockpit of 2.5 m in 4.5 m',
    input: '4 people of 75 kg on a breadth of 1.4 m; freeboard 0.45 m, sheltered and open water',
    expected: [70, 0.1625, 0.131_25],
    unit: 'kg·m, m, m',
    tolerance: 1e-5,
    source: '46 CFR 178.330: W B / 6; i = f (2 L - L’) / 4 L, and f (2 L - 1.5 L’) / 4 L',
    known: 'published',
    obtain: () => {
      const of = (deck: string) =>
        boxHeeled([4, 2, 0.55], {
          mass: '800 kg',
          centreHeight: '0.3 m',
          people: '4',
          usPerson: '75 kg',
          breadth: '1.4 m',
          deckLength: '4.5 m',
          cockpit: '2.5 m',
          deck,
        });
      return [...numbers(of('protected'), 'usMoment', 'usMay'), ...numbers(of('exposed'), 'usMay')];
    },
  },
  {
    id: 'A23',
    cell: 'stability',
    what: 'metacentric height that a half-full tank of salt water takes, at a tenth of its size',
    input: 'surface 15 m by 10 m in 8000 t; here 1.5 m by 1 m in 8 t',
    expected: [0.016_016],
    unit: 'm',
    tolerance: 1e-5,
    source: `${DERRETT}, chapter 20: loss = l b³ / 12 × density over mass; it goes as the size of the ship`,
    known: 'published',
    obtain: () => [
      boxHeeled([8, 2, 1.2], {
        mass: '8000 kg',
        centreHeight: '0.5 m',
        density: '1025 kg/m3',
        looseLength: '1.5 m',
        looseBreadth: '1 m',
      }).number('looseLost'),
    ],
  },
  {
    id: 'A31',
    cell: 'weights',
    what: 'height of a ship’s centre before half a double-bottom tank is pumped out, at a tenth of her size',
    input:
      '8000 t at 7.6153 m and the 153.75 t pumped out at 1.5 m: 8153.75 t at 7.5 m; here a ten-thousandth of the mass, and a tenth as high',
    expected: [815.375, 0.75],
    unit: 'kg, m',
    tolerance: 1e-4,
    source: `${DERRETT}, chapter 20, example 1: 8153.75 t, KG 7.5 m, rise 153.75 × 6 / 8000 = 0.1153 m`,
    known: 'published',
    obtain: () =>
      numbers(
        tryCell(weights, {
          ...bare,
          keelsonMass: '0.001 g',
          gearAMass: '800 kg',
          gearAHeight: '0.761531 m',
          gearBMass: '15.375 kg',
          gearBHeight: '0.15 m',
        }),
        'loaded',
        'centreHeight',
      ),
  },
  {
    id: 'A32',
    cell: 'stability',
    what: 'metacentric height of that ship when it is pumped out, less what the slack tank takes',
    input: '8000 t, KM 8 m, KG 7.6153 m, surface 15 m by 10 m in salt water; here a box of 8 t and KM 0.8 m',
    expected: [0.022_45],
    unit: 'm',
    tolerance: 1e-4,
    source: `${DERRETT}, chapter 20, example 1: 8 - 7.6153 - 0.1602 = 0.2245 m`,
    known: 'published',
    obtain: () => {
      // KM of a box half a metre deep: T/2 + B² / 12 T.
      const beam = Math.sqrt(12 * 0.5 * (0.8 - 0.25));
      const length = 8000 / (1025 * 0.5 * beam);
      return [
        boxHeeled([length, beam, 1], {
          mass: '8000 kg',
          centreHeight: '0.76153 m',
          density: '1025 kg/m3',
          looseLength: '1.5 m',
          looseBreadth: '1 m',
        }).number('looseLeft'),
      ];
    },
  },
  ...[
    { id: 'A28', long: 30, broad: 15, gravity: 1.8, tons: 968, lost: [0.437, 0.875] },
    { id: 'A29', long: 50, broad: 30, gravity: 0.8, tons: 7000, lost: [0.358, 0.716] },
  ].map(({ id, long, broad, gravity, tons, lost }): Check => ({
    id,
    cell: 'stability',
    what: 'metacentric height that a slack tank of a ship takes, and two of them, at a tenth of her size',
    input: `surface ${long} ft by ${broad} ft, specific gravity ${gravity}, in ${tons} long tons; here the same of fresh water in a ship lighter by that`,
    expected: lost.map((feet) => feet / 10),
    unit: 'ft',
    tolerance: 1e-4,
    source: 'worked pages on free surface: loss = r l b³ / (12 × 35.9 ft³ × long tons)',
    known: 'published',
    obtain: () =>
      [1, 2].map((tanks) => {
        const cell = boxHeeled([8, 2, 1.2], {
          mass: `${(tons * 2240) / 1000 / gravity} lb`,
          centreHeight: '0.5 m',
          density: '62.4 lb/ft^3',
          looseLength: `${(tanks * long) / 10} ft`,
          looseBreadth: `${broad / 10} ft`,
        });
        return cell.number('looseLost') / 0.3048;
      }),
  })),
  {
    id: 'A24',
    cell: 'stability',
    what: 'righting moment of a ship at 25°, at a tenth of her size',
    input: '6000 t, KB 3 m, KM 6 m, KG 5.5 m; here a box of 6 t, draught 0.6 m, KG 0.55 m',
    expected: [210],
    unit: 'kg·m',
    tolerance: 1,
    source: `${DERRETT}, wall-sided formula: 2100 t·m; it goes as the fourth power of the size`,
    known: 'published',
    obtain: () =>
      numbers(
        boxHeeled([6 / 0.6 / Math.sqrt(2.16), Math.sqrt(2.16), 1.2], {
          mass: '6000 kg',
          centreHeight: '0.55 m',
          heel: '25°',
        }),
        'rightingMoment',
      ),
  },
  {
    id: 'A25',
    cell: 'stability',
    what: 'list of two ships when a weight is moved across them, at a thousandth of their mass',
    input: '15 t moved 4.204 m in 4515 t, GM 0.4 m; 300 t·m in 8500 t, GM 1.35 m',
    expected: [2, 1.498],
    unit: '°',
    tolerance: 0.002,
    source: `${DERRETT}, exercise 14.2, and chapter 13: KM 8.70 m, KG 7.35 m`,
    known: 'published',
    obtain: () => [
      listOf([8, 2, 1.2], 4515, 0.4, [2, 15, 2.102]),
      listOf([8, 2, 1.2], 8500, 1.35, [4, 75, 1]),
    ],
  },
  {
    id: 'A26',
    cell: 'stability',
    what: 'heeling moment of four people by the US rule, and the list that it gives, by the metacentric height',
    input: '4 people of 75 kg on a breadth of 1.4 m; 600 kg in all, GM 0.55 m',
    expected: [70, 11.98],
    unit: 'kg·m, °',
    tolerance: 0.01,
    source: '46 CFR 178.330: W B / 6, never over 14°; tan θ = moment / (W GM)',
    known: 'closed form',
    obtain: () => [
      boxHeeled([4, 1, 1], { mass: '600 kg', people: '4', usPerson: '75 kg', breadth: '1.4 m' }).number(
        'usMoment',
      ),
      listOf([4, 1, 1], 600, 0.55, [4, 75, 1.4 / 6]),
    ],
  },
  {
    id: 'A27',
    cell: 'stability',
    what: 'metacentric height that loose water takes in an open boat, and with a keelson that keeps it in halves',
    input: 'surface 3 m by 1 m, fresh, 500 kg in all',
    expected: [0.5, 0.125],
    unit: 'm',
    tolerance: 1e-9,
    source: `${DERRETT}, chapter 20: l b³ / 12 × density over mass, over the square of the number of parts`,
    known: 'closed form',
    obtain: () =>
      ['1', '2'].map((looseParts) =>
        boxHeeled([4, 2, 1], {
          mass: '500 kg',
          looseLength: '3 m',
          looseBreadth: '1 m',
          looseParts,
        }).number('looseLost'),
      ),
  },
];
