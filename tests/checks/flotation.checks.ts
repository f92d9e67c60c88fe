/** Flotation: what people, gear and motor weigh in water by the US federal rule, and the foam that holds them up. */
import { flotation } from '../../src/cells/afloat/flotation';
import { box } from '../boat/shapes';
import { tableThrough } from '../cells/shape/table-through';
import { tryCell } from '../cells/try-cell';
import type { Check } from './check';

const LB = 0.453_592_37;
const CUBIC_FOOT = 0.3048 ** 3;
const HP = 745.699_871_582_27;
const HANDBOOK = 'Coast Guard, Boatbuilder’s Handbook, chapter on flotation, step 3';

/** Nothing but what the rule puts aboard; foam of 2 lb/ft3 that takes up no water. */
const bare = { finish: '0 kg', metal: '0 kg', soak: '0 %', foamDensity: '2 lb/ft^3', wood: '0 kg' };
const of = (more: Readonly<Record<string, string>>) => tryCell(flotation, { ...bare, ...more });
const pounds = (more: Readonly<Record<string, string>>, ...keys: readonly string[]) => {
  const tried = of(more);
  return keys.map((key) => tried.number(key) / LB);
};
/** Iron that stands for a weight under water, as the weight. */
const IRON = 1 - (62.4 * LB) / CUBIC_FOOT / 7850;
/** A box that nothing but foam bears, by hand. */
const boxTable = tableThrough(box(4, 1.6, 0.6));
const strips = {
  drive: 'hand',
  fills: '100 %',
  fitted: '0.36 m^3',
  seat: '200 mm',
  peopleForward: '2 m',
  foamDensity: '32 kg/m^3',
  thick: '150 mm',
  stripDown: '300 mm',
  below: '50 mm',
  hanging: '2',
  person: '75 kg',
};
const onStrips = (more: Readonly<Record<string, string>>) =>
  tryCell(flotation, { ...bare, ...strips, ...more }, boxTable);
const outboard = { drive: 'outboard', equipment: '160 lb', rated: '0 hp' };

const law = (
  id: string,
  what: string,
  input: string,
  expected: readonly number[],
  source: string,
  obtain: Check['obtain'],
  known: Check['known'] = 'published',
): Check => ({
  id,
  cell: 'flotation',
  what,
  input,
  expected,
  unit: 'lb',
  tolerance: 0.01,
  source,
  known,
  obtain,
});

export const rows: readonly Check[] = [
  law(
    'R16',
    'people and gear under water, basic flotation',
    'maximum weight 900 lb, people 700 lb',
    [143.33],
    '33 CFR 183.105: 2/15 P and 25 % of (W - P)',
    () => {
      const tried = of({ ...outboard, aim: 'basic', weight: '900 lb', persons: '700 lb' });
      return [tried.number('sinks') / LB];
    },
  ),
  ...(
    [
      ['R17', '700 lb', '760 lb', 308.75, 5.112],
      ['R18', '400 lb', '460 lb', 215, 3.56],
    ] as const
  ).map(([id, persons, weight, sinks, foam]): Check => ({
    ...law(
      id,
      'people and gear under water, level flotation, and the foam for them',
      `people ${persons}, ${weight} without the motor, foam that holds up 60.4 lb/ft³`,
      [sinks, foam],
      HANDBOOK,
      () => {
        const tried = of({ ...outboard, equipment: '0 kg', weight, persons });
        return [tried.number('sinks') / LB, tried.number('foam') / CUBIC_FOOT];
      },
    ),
    unit: 'lb, ft³',
    tolerance: 0.001,
  })),
  {
    ...law(
      'R20',
      'what a thing weighs in water, over its dry weight',
      'specific gravity 1.5 and 2.73; of wood of 0.55, what it holds up',
      [0.3333, 0.6337, 0.8182],
      '(SG - 1)/SG; the first two also 0.33 and 0.63 in the Coast Guard’s table for glass laminate and aluminium',
      () => {
        const density = (gravity: number) => `${gravity * 62.4} lb/ft^3`;
        return [
          of({ finish: '1 kg', finishDensity: density(1.5) }).number('partsSink'),
          of({ metal: '1 kg', metalDensity: density(2.73) }).number('partsSink'),
          of({ wood: '1 kg', wetDensity: density(0.55), credit: '100 %' }).number('woodHolds'),
        ];
      },
      'closed form',
    ),
    unit: '',
    tolerance: 1e-4,
  },
  law(
    'Q4',
    'people, gear, and what half of the people weigh on one side with the gear, all under water: outboard',
    'maximum weight 950 lb, people 700 lb, motor and gear of 160 lb',
    [293.75, 22.5, 169.375],
    '33 CFR 183.220 and 183.230',
    () => {
      const more = { ...outboard, weight: '950 lb', persons: '700 lb' };
      const [people = 0, gear = 0, side = 0] = pounds(more, 'peopleSink', 'gearSinks', 'ironSide');
      return [people, gear, side * IRON + gear];
    },
  ),
  law(
    'Q5',
    'people and gear under water, and half of the people with the gear: outboard',
    'maximum weight 660 lb, people 400 lb, motor and gear of 160 lb',
    [225, 125],
    '33 CFR 183.220 and 183.230',
    () => {
      const more = { ...outboard, weight: '660 lb', persons: '400 lb' };
      const [middle = 0, side = 0, gear = 0] = pounds(more, 'ironMiddle', 'ironSide', 'gearSinks');
      return [middle * IRON, side * IRON + gear];
    },
  ),
  law(
    'Q6',
    'people, gear, and half of the people with the gear, under water: by hand',
    'maximum weight 234 lb, people 210.6 lb',
    [28.08, 5.85, 19.89],
    '33 CFR 183.320 and 183.330',
    () => {
      const more = { drive: 'hand', weight: '234 lb', persons: '210.6 lb' };
      const [people = 0, gear = 0, side = 0] = pounds(more, 'peopleSink', 'gearSinks', 'ironSide');
      return [people, gear, side * IRON + gear];
    },
  ),
  law(
    'Q7',
    'people and gear under water: up to 2 hp',
    'maximum weight 234 lb, people 185.6 lb, motor of 25 lb',
    [24.747, 5.85],
    '33 CFR 183.320',
    () =>
      pounds(
        { drive: 'small', equipment: '25 lb', weight: '234 lb', persons: '185.6 lb' },
        'peopleSink',
        'gearSinks',
      ),
  ),
  {
    ...law(
      'Q8',
      'people and gear under water over the maximum weight, by hand',
      'people 0.9 of it',
      [0.145, 0.145],
      '2/15 × 0.9 + 0.25 × 0.1',
      () =>
        (
          [
            ['400 lb', '360 lb', 400],
            ['250 lb', '225 lb', 250],
          ] as const
        ).map(([weight, persons, all]) => of({ drive: 'hand', weight, persons }).number('sinks') / LB / all),
      'closed form',
    ),
    unit: '',
    tolerance: 1e-9,
  },
  {
    ...law(
      'Q9',
      'gear under water where motor and people weigh more than is allowed',
      'maximum weight 500 lb, people 400 lb, motor and gear of 160 lb',
      [0],
      '33 CFR 183.220: not less than zero',
      () => pounds({ ...outboard, weight: '500 lb', persons: '400 lb' }, 'gearSinks'),
    ),
    tolerance: 0,
  },
  {
    ...law(
      'Q10',
      'foam for people and gear of a hand-propelled boat',
      'maximum weight 234 lb, people 210.6 lb, foam that holds up 60.4 lb/ft³',
      [0.562],
      '33.93 lb over 60.4 lb/ft³',
      () => [of({ drive: 'hand', weight: '234 lb', persons: '210.6 lb' }).number('foam') / CUBIC_FOOT],
      'closed form',
    ),
    unit: 'ft³',
    tolerance: 0.001,
  },
  law(
    'Q12',
    'motor of 11 to 22.9 hp, its controls and battery, under water',
    '113, 6 and 25 lb',
    [144],
    'ABYC S-30 Table 1A, as a builders’ page reproduces it; 33 CFR 183.220 for what is counted',
    () => pounds({ ...outboard, rated: `${15 * HP} W` }, 'motorSinks'),
  ),
  {
    id: 'Q13',
    cell: 'flotation',
    what: 'a box full of water on two strips of foam: sheer out of the water, metacentric height, and heel with all on one side',
    input:
      'box 4 m by 1.6 m by 0.6 m; strips 4 m long, 0.15 m broad, 0.25 m to 0.55 m up, 32 kg/m³; two of 75 kg in the water, 2/15 of each at the sheer',
    // 31.52 kg push aside 31.534 L of 999.552 kg/m3: over 1.2 m2 they stand 26.278 mm in the water.
    expected: [323.7216, 19809.728, 1.46737],
    unit: 'mm, mm, °',
    tolerance: 0.01,
    source:
      'Archimedes’ principle; KB + I/V - KG of two strips, I = 2 (4 × 0.15) (0.725² + 0.15²/12) m⁴; tan θ (GM + ½ BM tan² θ) = 20 kg × 0.8 m over 31.52 kg',
    known: 'closed form',
    obtain: () => {
      const round = onStrips({ lying: 'round' });
      const abeam = onStrips({ lying: 'abeam' });
      const degrees = (abeam.number('swampedHeel') * 180) / Math.PI;
      return [1000 * round.number('swampedLow'), 1000 * round.number('swampedStiff'), degrees];
    },
  },
  {
    id: 'Q14',
    cell: 'flotation',
    what: 'a box full of water on two strips of foam, by the test with half of the people on one side: heel, and what of both ends is out in the middle',
    input:
      'the same; people 270 kg and 300 kg in all, by hand: 18 kg of them on one side, 6 in from it, 4 in above a seat of 200 mm, and gear of 7.5 kg in the middle',
    expected: [1.05942, 319.0816],
    unit: '°, mm',
    tolerance: 0.01,
    source:
      '33 CFR 183.320 and 183.330: 2/15 of the people, halved, and 25 % of the rest; tan θ (GM + ½ BM tan² θ) = 18 kg × 0.6476 m over 37.02 kg',
    known: 'closed form',
    obtain: () => {
      const one = onStrips({ persons: '270 kg', weight: '300 kg' });
      return [(one.number('sideHeel') * 180) / Math.PI, -1000 * one.number('sideUnder')];
    },
  },
];
