/** What the cell of speed and propeller asks for. */
import { input, type ValuesOf } from '../form/define';
import { CUSTOM } from '../../trade/sources';

export const powerInputs = {
  motorPower: input('power', 'Power of the motor', {
    from: 'capacity.power',
    preset: '10 hp',
    min: '0 hp',
    max: '350 hp',
    step: '1 hp',
    note: 'at the propeller’s shaft, as on its plate',
  }),
  laden: input('mass', 'She weighs, all aboard', {
    from: 'weights.loaded',
    preset: '400 kg',
    presetInch: '900 lb',
    min: '20 kg',
    max: '20 t',
    step: '10 kg',
    note: 'the motor is in it once it is typed among the weights',
  }),
  waterLong: input('length', 'Length on the waterline', {
    from: 'lines.waterlineLength',
    preset: '4 m',
    min: '1 m',
    max: '40 m',
    step: '50 mm',
  }),
  transom: input('length', 'Transom stands, plumb', {
    from: 'transomCut.cutHeight',
    preset: '380 mm',
    presetInch: '15 in',
    min: '5 in',
    max: '60 in',
    step: '1/4 in',
    note: 'from the bottom to the lowest place where water comes in over it, cut-out or well',
  }),
  fuelAboard: input('volume', 'Fuel in the tank', {
    preset: '20 L',
    presetInch: '5 gal',
    min: '0 L',
    max: '500 L',
    step: '1 L',
  }),
  shaftHeight: input('length', 'Transom the motor is made for', {
    from: 'transomCut.motorHeight',
    preset: '380 mm',
    presetInch: '15 in',
    min: '5 in',
    max: '40 in',
    step: '1/4 in',
    note: 'measure the motor in hand',
  }),
  revs: input('number', 'Motor turns in a minute', {
    preset: '5500',
    min: '500',
    max: '9000',
    step: '100',
    note: 'at full throttle, by its sheet',
  }),
  gear: input('ratio', 'To one turn of the propeller', {
    preset: '2.1',
    min: '1',
    max: '5',
    step: '0.05',
    note: 'the gear of its foot, by its sheet',
  }),
  slipLeast: input('share', 'Slip, at the least', {
    preset: '10 %',
    bound: 'least',
    min: '0 %',
    max: '80 %',
    step: '5 %',
    note: `a light boat that planes 10 to 20 %, one that pushes water 30 to 50 %; ${CUSTOM}`,
  }),
  slipMost: input('share', 'Slip, at the most', {
    preset: '30 %',
    bound: 'most',
    min: '0 %',
    max: '80 %',
    step: '5 %',
    note: CUSTOM,
  }),
  burnLeast: input('volume', 'Each hp burns in an hour', {
    preset: '0.25 L',
    presetInch: '0.065 gal',
    min: '0.05 L',
    max: '2 L',
    step: '0.05 L',
    note: `at full throttle, a motor that is sparing; ${CUSTOM}`,
  }),
  burnMost: input('volume', 'Or as much as', {
    preset: '0.45 L',
    presetInch: '0.12 gal',
    min: '0.05 L',
    max: '2 L',
    step: '0.05 L',
    note: `an older two-stroke; ${CUSTOM}`,
  }),
} as const;

export type PowerAsked = ValuesOf<typeof powerInputs>;
