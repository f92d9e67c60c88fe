/** What is asked of boat, trailer and straps. */
import { choice, input } from '../form/define';

const PRACTICE = 'common practice, no source';
const PLATE = 'from its plate';

const rated = (label: string, preset: string, presetInch: string, note = PLATE) =>
  input('mass', label, { preset, presetInch, min: '1 kg', max: '10000 kg', step: '10 kg', note });
const share = (label: string, preset: string, bound?: 'least' | 'most') =>
  input('share', label, {
    preset,
    ...(bound ? { bound } : {}),
    min: '1 %',
    max: '40 %',
    step: '1 %',
    note: `7 to 10 % aimed at, 5 % at the least: ${PRACTICE}`,
  });

export const trailerInputs = {
  boat: input('mass', 'The boat weighs', {
    from: 'weights.rigged',
    preset: '250 kg',
    presetInch: '550 lb',
    min: '1 kg',
    max: '5000 kg',
    step: '5 kg',
    note: 'with motor, fuel and gear, nobody aboard',
  }),
  balance: input('length', 'Her balance, forward', {
    from: 'weights.riggedForward',
    preset: '1900 mm',
    presetInch: '75 in',
    min: '0 mm',
    max: '20 m',
    step: '50 mm',
    note: 'her centre of mass, forward of the after end of her bottom',
  }),
  behind: input('length', 'Her after end behind the axle', {
    preset: '1650 mm',
    presetInch: '65 in',
    min: '0 mm',
    max: '10 m',
    step: '10 mm',
    note: 'level, from the middle of the wheels; of two axles from the middle between them',
  }),
  ball: input('length', 'Ball to axle', {
    preset: '3500 mm',
    presetInch: '11.5 ft',
    min: '500 mm',
    max: '15 m',
    step: '50 mm',
  }),
  empty: rated('The trailer weighs, empty', '180 kg', '400 lb', 'on a scale, or from its papers'),
  emptyTongue: input('mass', 'On its tongue then', {
    preset: '12 kg',
    presetInch: '26 lb',
    min: '0 kg',
    max: '1000 kg',
    step: '1 kg',
    note: 'a bathroom scale under the coupling, the trailer level',
  }),
  aimShare: share('Aimed at on the ball', '8 %'),
  leastShare: share('At the least', '5 %', 'least'),
  mostShare: share('At the most', '15 %', 'most'),
  grossRated: rated('Trailer, all together', '750 kg', '1650 lb'),
  axleRated: rated('Axle', '750 kg', '1650 lb', 'of two axles both together'),
  tyreRated: rated('One tyre', '400 kg', '880 lb', 'from its wall, at the pressure it says'),
  ballRated: rated('Ball and car, at the ball', '75 kg', '165 lb', 'the lesser of the hitch’s and the car’s'),
  aftBunk: input('length', 'After bunk, forward', {
    preset: '600 mm',
    presetInch: '24 in',
    min: '0 mm',
    max: '3 m',
    step: '10 mm',
    note: 'under a frame; from the after end of her bottom',
  }),
  foreBunk: input('length', 'Forward bunk, forward', {
    preset: '3000 mm',
    presetInch: '10 ft',
    min: '0 mm',
    max: '20 m',
    step: '10 mm',
    note: 'under a frame; from the after end of her bottom',
  }),
  long: input('length', 'Length of the boat', {
    from: 'hull.length',
    preset: '4.5 m',
    min: '1 m',
    max: '40 m',
    step: '100 mm',
  }),
  bow: choice('Her bow', {
    options: [
      { id: 'stopped', label: 'against a stop' },
      { id: 'free', label: 'free' },
    ],
    preset: 'stopped',
    note: 'a stop that keeps her from sliding forward when the car brakes',
  }),
  strapLimit: rated(
    'Working load of one strap',
    '400 kg',
    '880 lb',
    'the least of strap, hook, ratchet and eye',
  ),
  strapsThere: input('count', 'Straps you have', { preset: '3', min: '0', max: '20', step: '1' }),
  ramp: input('angle', 'Slope of the ramp', { preset: '9°', min: '0°', max: '45°', step: '1°' }),
  drag: input('ratio', 'Drag on bunks or rollers', {
    preset: '0.3',
    min: '0',
    max: '1',
    step: '0.05',
    note: `wet bunks 0.3 to 0.5, rollers 0.1: ${PRACTICE}`,
  }),
  winchRated: rated('Winch, rated', '500 kg', '1100 lb'),
  broad: input('length', 'Breadth of the boat', {
    from: 'hull.beam',
    preset: '1600 mm',
    presetInch: '63 in',
    min: '300 mm',
    max: '10 m',
    step: '10 mm',
  }),
  broadest: input('length', 'Broadest that your road allows', {
    preset: '2500 mm',
    presetInch: '8 ft',
    min: '1 m',
    max: '5 m',
    step: '10 mm',
    note: 'the load counts with the trailer; ask the law of the place',
  }),
} as const;
