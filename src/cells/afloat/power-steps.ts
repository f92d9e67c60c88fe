/** Speed by three rules of thumb, each where it holds; fuel, pitch and shaft. */
import { step, type ValuesOf } from '../form/define';
import type { powerInputs } from './power-inputs';
import { CUSTOM } from '../../trade/sources';

const HULL_SPEED = 'speed of 1.34 times the root of the length, knots and feet: common practice, no source';
const PUSHING = 'from memory: Dave Gerr, Propeller Handbook (1989), displacement speed formula';
const PLANING = 'from memory: Dave Gerr, Propeller Handbook (1989), Crouch’s formula';
const FROUDE = 'D. Radojčić et al., Polish Maritime Research 2(82) (2014): wholly planing from about 3';

export const powerSteps = {
  volume: step(
    'displacement',
    'laden / (1000 kg/m^3)',
    'water that she pushes aside',
    'Archimedes’ principle',
  ),
  hullSpeed: step(
    'speed',
    '1.34 * sqrt(waterLong / (1 ft)) * 1 kn',
    'speed at which her own wave is as long as she is',
    HULL_SPEED,
  ),
  pushing: step(
    'speed',
    '10.665 * sqrt(waterLong / (1 ft)) * ((motorPower / (1 hp)) / (laden / (1 lb)))^(1/3) * 1 kn',
    'speed pushing water, by weight and power',
    PUSHING,
  ),
  planingLeast: step(
    'speed',
    '150 * sqrt((motorPower / (1 hp)) / (laden / (1 lb))) * 1 kn',
    'speed planing, as an average runabout',
    PLANING,
  ),
  planingMost: step(
    'speed',
    '190 * sqrt((motorPower / (1 hp)) / (laden / (1 lb))) * 1 kn',
    'speed planing, as a fast, light runabout',
    PLANING,
  ),
  deepSize: step('length', '(volume / (1 m^3))^(1/3) * 1 m', 'side of a cube of that water', 'geometry'),
  froude: step(
    'ratio',
    'planingLeast / sqrt(g * deepSize)',
    'Froude number of the slower planing speed, by that side',
    FROUDE,
  ),
  planes: step('count', 'froude >= 3 ? 1 : 0', '1 where she planes', FROUDE),
  slowest: step(
    'speed',
    'planes == 1 ? planingLeast : min(hullSpeed, pushing)',
    'speed, at the least',
    'the rule that holds there',
  ),
  fastest: step(
    'speed',
    'planes == 1 ? planingMost : pushing',
    'speed, at the most',
    'the rule that holds there',
  ),
  froudeLength: step(
    'ratio',
    'slowest / sqrt(g * waterLong)',
    'Froude number of the speed at the least, by her length',
    'W. Froude: speed over the root of gravity times length',
  ),
  enough: step(
    'power',
    '(1.34 / 10.665)^3 * (laden / (1 lb)) * 1 hp',
    'power that brings her to hull speed',
    PUSHING,
  ),
  toPlane: step(
    'power',
    '(3 * sqrt(g * deepSize) / (150 kn))^2 * (laden / (1 lb)) * 1 hp',
    'power at which she planes',
    `${PLANING}; ${FROUDE}`,
  ),

  fuelLeast: step(
    'volume',
    'burnLeast * motorPower / (1 hp)',
    'fuel in an hour at full throttle, at the least',
    CUSTOM,
  ),
  fuelMost: step(
    'volume',
    'burnMost * motorPower / (1 hp)',
    'fuel in an hour at full throttle, at the most',
    CUSTOM,
  ),
  hours: step(
    'time',
    'fuelMost > 0 L ? 2 / 3 * fuelAboard / fuelMost * 1 h : 0 h',
    'time at full throttle on two thirds of the tank, the last third kept',
    CUSTOM,
  ),
  miles: step('number', 'hours * slowest / (1 nmi)', 'nautical miles on that', 'speed times time'),

  turns: step('number', 'revs / gear', 'turns of the propeller in a minute', 'geometry'),
  pitchLeast: step(
    'length',
    'slowest * (60 s) / turns / (1 - slipLeast)',
    'pitch of the propeller, at the least',
    'speed over turns, and what slips',
  ),
  pitchMost: step(
    'length',
    'fastest * (60 s) / turns / (1 - slipMost)',
    'pitch of the propeller, at the most',
    'speed over turns, and what slips',
  ),

  shaft: step(
    'length',
    'transom < 17.5 in ? 15 in : transom < 22.5 in ? 20 in : transom < 27.5 in ? 25 in : 30 in',
    'height class of motor nearest to the transom',
    'height classes of motor makers’ guides; common practice, no source',
  ),
  plate: step('length', 'transom - shaftHeight', 'motor’s plate above the bottom, − below it', 'geometry'),
  plateOff: step('length', 'abs(plate)', 'the same, whichever way', 'geometry'),
} as const;

export type PowerValues = ValuesOf<typeof powerInputs, typeof powerSteps>;
