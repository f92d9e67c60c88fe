/** Flotation: what people, gear and motor weigh in water by the US federal rule, and the foam that holds them up. */
import { flotation } from '../../src/cells/afloat/flotation';
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
];
