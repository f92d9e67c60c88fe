/** The state a wood is in: how wet, how warm, how long under stress; and what that leaves of stiffness and strength. */
import type { Derived } from '../../../boat';
import { keptAfter, lastings, stiffnessAt, strengthAt, testFactor } from '../../../trade/load-duration';
import { citation, look, type TradeRow } from '../../../trade/table';
import { timber, type TimberColumn } from '../../../trade/timber';
import { type CellFunction, choice, input, type Source, step } from '../../form/define';
import { fromShop } from '../../form/from-shop';

const DRYING = 'Wood Handbook, USDA FPL-GTR-190 (2010), ch. 5, strength against moisture; from memory';

export const woodInputs = {
  moisture: fromShop('woodMoisture', { hint: 'from 25 to 30 % on it counts as green' }),
  duration: choice('How long the stress lasts', {
    options: lastings.map(({ id, label }) => ({ id, label })),
    preset: 'minutes',
    note: 'the hour of bending is mostly the worst: held to one shape, wood relaxes about as fast as it tires',
  }),
  warmth: fromShop('air', { hint: 'of the wood; not for steam, which alters the wood itself' }),
  modulusGain: input('ratio', 'Stiffness, 12 % over green', {
    from: 'timber.{species}.modulusGain',
    preset: '1',
    min: '1',
    max: '3',
    note: 'Wood Handbook; 1 where it has no green value',
  }),
  ruptureGain: input('ratio', 'Strength, 12 % over green', {
    from: 'timber.{species}.ruptureGain',
    preset: '1',
    min: '1',
    max: '3',
    note: 'Wood Handbook; 1 where it has no green value',
  }),
  fibrePoint: input('share', 'Moisture below which it gains', {
    from: 'timber.{species}.fibrePoint',
    preset: '25 %',
    min: '15 %',
    max: '40 %',
    step: '1 %',
    note: 'from memory: Wood Handbook, ch. 5; 25 % where a wood has no value of its own',
  }),
  lasts: input('time', 'Stress lasts', {
    from: 'timber.held.{duration}.time',
    preset: '5 min',
    min: '1 s',
    max: '40000 d',
    note: 'where the curve is read; for good: fifty years',
  }),
  codeFactor: input('ratio', 'Load duration factor', {
    from: 'timber.held.{duration}.codeFactor',
    preset: '1.6',
    min: '0.5',
    max: '2',
    step: '0.05',
    note: 'National Design Specification, Table 2.3.2: 1 for ten years, 1.6 for ten minutes',
  }),
};

export const woodSteps = {
  dried: step(
    'ratio',
    '(12 % - min(moisture, fibrePoint)) / (fibrePoint - 12 %)',
    'how far dried: 0 at 12 %, -1 green, above 0 drier still',
    DRYING,
  ),
  moistStiffness: step('ratio', 'modulusGain^dried', 'stiffness at this moisture over that at 12 %', DRYING),
  moistStrength: step('ratio', 'ruptureGain^dried', 'strength at this moisture over that at 12 %', DRYING),
  warmStiffness: step(
    'ratio',
    'stiffnessByWarmth(warmth)',
    'stiffness at this temperature over that at 20 °C (68 °F)',
    'from memory: Wood Handbook, ch. 5: +17 % at -50 °C (-58 °F), -7 % at 50 °C (122 °F)',
  ),
  warmStrength: step(
    'ratio',
    'strengthByWarmth(warmth, moisture)',
    'strength at this temperature over that at 20 °C (68 °F)',
    'from memory: Wood Handbook, ch. 5: +35 % at -50 °C (-58 °F), -20 % at 50 °C (122 °F); at 18 to 20 % moisture +60 %, -25 %',
  ),
  keptByCurve: step(
    'share',
    'keptAfter(lasts)',
    'strength left under a stress that lasts, by the Madison curve',
    'from memory: L. W. Wood, Forest Products Laboratory Report 1916 (1951): 108.4 t^-0.04635 + 18.3 per cent, t in seconds',
  ),
  keptByCode: step(
    'share',
    `min(1, codeFactor / ${testFactor.value})`,
    'the same by the American code, over its factor for ten minutes',
    'National Design Specification (2018), Table 2.3.2',
  ),
  kept: step('share', 'min(keptByCurve, keptByCode)', 'the lesser of the two', 'the lesser holds'),
  modulusNow: step(
    'stress',
    'modulus * moistStiffness * warmStiffness',
    'bending modulus of the wood as it is',
    'product of the factors',
  ),
  ruptureNow: step(
    'stress',
    'rupture * moistStrength * warmStrength * kept',
    'mean modulus of rupture of the wood as it is, under a stress that lasts so long',
    'product of the factors',
  ),
};

export const woodFunctions: Readonly<
  Record<'stiffnessByWarmth' | 'strengthByWarmth' | 'keptAfter', CellFunction>
> = {
  stiffnessByWarmth: {
    takes: ['temperature'],
    gives: 'ratio',
    how: 'straight lines from 20 °C (68 °F) to the changes printed for -50 °C (-58 °F) and 50 °C (122 °F)',
    run: stiffnessAt,
  },
  strengthByWarmth: {
    takes: ['temperature', 'share'],
    gives: 'ratio',
    how: 'the same; up to 15 % moisture by the row for 11 to 15 %, from 18 % on by that for 18 to 20 %',
    run: strengthAt,
  },
  keptAfter: {
    takes: ['time'],
    gives: 'share',
    how: 'the Madison curve, at most 1',
    run: keptAfter,
  },
};

export const woodSources: readonly Source[] = [
  {
    text: 'Wood Handbook, ch. 5: strength between green and 12 % moisture, change with temperature, relaxing to 60 to 70 % in some months',
    known: 'from memory',
  },
  {
    text: 'National Design Specification (2018), Table 2.3.2: load duration, as transcribed',
    known: 'published',
  },
  {
    text: 'L. W. Wood, Forest Products Laboratory Report 1916 (1951): load duration, the Madison curve',
    known: 'from memory',
  },
];

/** What each wood gains in drying from green to 12 %, and each answer to how long a stress lasts, as quantities. */
export function woodStateQuantities(): readonly Derived[] {
  return state;
}

const state: readonly Derived[] = [
  ...timber.rows.flatMap((row) => [
    gainOf(row, 'modulus', 'modulusGreen', 'stiffness'),
    gainOf(row, 'rupture', 'ruptureGreen', 'strength'),
  ]),
  ...lastings.flatMap(({ id, label, seconds, codeFactor }): Derived[] => [
    {
      name: `timber.held.${id}.time`,
      kind: 'time',
      meaning: `time under stress: ${label}`,
      source: 'by the name; for good: fifty years',
      from: () => seconds,
    },
    {
      name: `timber.held.${id}.codeFactor`,
      kind: 'ratio',
      meaning: `load duration factor: ${label}`,
      source: citation(codeFactor),
      from: () => codeFactor.value,
    },
  ]),
];

function gainOf(
  { id, label }: TradeRow<TimberColumn>,
  dry: TimberColumn,
  green: TimberColumn,
  what: string,
): Derived {
  const [at12, wet] = [look(timber, id, dry), look(timber, id, green)];
  const known = at12 && wet;
  return {
    name: `timber.${id}.${dry}Gain`,
    kind: 'ratio',
    meaning: `${what} of ${label} at 12 % moisture over green; 1 where the table has no green value`,
    source: known ? `${citation(at12)}; ${citation(wet)}` : 'the table has no green value',
    from: () => (known ? at12.value / wet.value : 1),
  };
}
