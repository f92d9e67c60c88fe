/** What the cell of the sanding asks for. */
import { escapes, sanders, sandings, takenOff } from '../../trade/grits';
import { citation } from '../../trade/table';
import { choice, input } from '../form/define';
import { fromShop } from '../form/from-shop';

export const sandInputs = {
  work: choice('Sanded', {
    options: sandings.map(({ id, label }) => ({ id, label })),
    preset: 'paint',
    note: 'what it is, and what is to hold on it',
  }),
  area: input('area', 'Area to sand', {
    from: 'paint.area',
    preset: '10 m^2',
    min: '0 m^2',
    max: '2000 m^2',
    step: '0.1 m^2',
  }),
  times: input('count', 'Times over', {
    preset: '1',
    min: '1',
    max: '30',
    step: '1',
    note: 'between coats one time fewer than there are coats',
  }),
  sander: choice('Paper', {
    options: sanders.map(({ id, label }) => ({ id, label })),
    preset: 'disc5',
  }),
  state: choice('The face is', {
    options: [
      { id: 'hard', label: 'hard and clean' },
      { id: 'soft', label: 'soft or greasy' },
    ],
    preset: 'hard',
  }),
  reach: input('area', 'One piece of paper does', {
    from: '{self}.usualReach',
    preset: '0.75 m^2',
    min: '0.01 m^2',
    max: '50 m^2',
    step: '0.05 m^2',
    note: 'common practice, no source: 0.5 to 1 m² (5 to 11 ft²) to a disc of 125 mm (5 in)',
  }),
  marked: choice('Paper is marked', {
    options: [
      { id: 'fepa', label: 'P before the number' },
      { id: 'cami', label: 'the number alone' },
    ],
    preset: 'fepa',
    presetInch: 'cami',
    note: 'one number, two sizes of grain from 240 on',
  }),
  grit: input('count', 'Grit looked at', {
    preset: '80',
    min: '40',
    max: '400',
    step: '20',
    note: 'of the nearest grade sold',
  }),
  takenOff: input('film', 'Taken off with each grit', {
    preset: `${takenOff.value * 1e6} µm`,
    min: '1 µm',
    max: '2 mm',
    step: '10 µm',
    note: citation(takenOff),
  }),
  density: fromShop('epoxyDensity', { hint: 'of wood some 500 kg/m³ (31 lb/ft³)' }),
  bulk: input('density', 'Dust, as it lies', {
    preset: '300 kg/m^3',
    min: '20 kg/m^3',
    max: '2000 kg/m^3',
    step: '10 kg/m^3',
    note: 'an example: weigh a level cup of it',
  }),
  escapes: input('share', 'Of it goes into the air', {
    preset: `${escapes.value * 100} %`,
    min: '0 %',
    max: '100 %',
    step: '1 %',
    note: citation(escapes),
  }),
  lasts: input('time', 'You sand for', {
    from: '{self}.usualTime',
    preset: '8 h',
    min: '0.1 h',
    max: '5000 h',
    step: '0.5 h',
    note: 'all of it together',
  }),
  room: input('displacement', 'Room', {
    preset: '60 m^3',
    presetInch: '2000 ft^3',
    min: '5 m^3',
    max: '5000 m^3',
    step: '5 m^3',
    note: 'length times width times height',
  }),
  changes: input('ratio', 'Its air is changed an hour', {
    preset: '6',
    min: '0.1',
    max: '100',
    step: '1',
    note: 'flow of the fan over the room; with doors shut one or less',
  }),
} as const;
