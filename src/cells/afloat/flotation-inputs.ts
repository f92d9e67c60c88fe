/** What the cell of the flotation asks for. */
import { choice, input, type ValuesOf } from '../form/define';
import { fromBoat } from '../form/from-boat';
import { driveOptions } from './capacity-inputs';
import { CUSTOM } from '../../trade/sources';

const WEIGHTS = 'forward of the after end of the bottom';

const place = (label: string, from: string, preset: string, note: string) =>
  input('length', label, { from, preset, min: '-5 m', max: '30 m', step: '50 mm', note });

export const flotationInputs = {
  aim: choice('Swamped she is to float', {
    options: [
      { id: 'level', label: 'level' },
      { id: 'basic', label: 'some way or other' },
    ],
    preset: 'level',
  }),
  drive: choice('Driven by', {
    options: driveOptions,
    from: 'capacity.drive',
    preset: 'outboard',
  }),
  weight: input('mass', 'All aboard, by the rule', {
    from: 'capacity.weight',
    preset: '200 kg',
    min: '0 kg',
    max: '5 t',
    step: '10 kg',
    note: 'people, motor and gear: her maximum weight capacity',
  }),
  persons: input('mass', 'People of that', {
    from: 'capacity.personsWeight',
    preset: '150 kg',
    min: '0 kg',
    max: '5 t',
    step: '10 kg',
  }),
  fitted: input('displacement', 'Foam that she gets', {
    from: '{self}.foam',
    preset: '0.1 m^3',
    min: '0 m^3',
    max: '10 m^3',
    step: '0.01 m^3',
    note: 'what the rule asks, until you type what stands in her',
  }),
  bay: choice('Bay forward of', { options: 'stations', preset: 'frame3' }),
  lying: choice('Full of water, with', {
    options: [
      { id: 'none', label: 'nobody aboard' },
      { id: 'middle', label: 'people and gear in the middle' },
      { id: 'side', label: 'half the people to one side' },
      { id: 'round', label: 'people in the water, all round' },
      { id: 'abeam', label: 'people in the water, on one side' },
    ],
    preset: 'middle',
  }),
  hanging: input('count', 'People in the water', {
    from: 'weights.people',
    preset: '2',
    min: '0',
    max: '20',
    step: '1',
    note: 'who hold on to her; no more than she holds up',
  }),

  rated: input('power', 'Power on her plate', {
    from: 'capacity.power',
    preset: '10 hp',
    min: '0 hp',
    max: '350 hp',
    step: '1 hp',
    when: 'drive != "hand"',
  }),
  equipment: input('mass', 'Motor, battery and full tank', {
    from: 'capacity.equipment',
    preset: '84 kg',
    presetInch: '185 lb',
    min: '0 kg',
    max: '1 t',
    step: '5 kg',
    when: 'drive != "hand"',
    note: 'in air: what the rule takes off her maximum weight',
  }),
  finish: input('mass', 'Glue, glass, screws, paint', {
    from: 'weights.finish',
    preset: '20 kg',
    min: '0 kg',
    max: '2 t',
    step: '1 kg',
  }),
  finishDensity: input('density', 'Their density', {
    preset: '1500 kg/m^3',
    min: '1010 kg/m^3',
    max: '9000 kg/m^3',
    step: '50 kg/m^3',
    note: 'glass and resin 1500, epoxy alone 1150',
  }),
  metal: input('mass', 'Metal built in', {
    preset: '0 kg',
    min: '0 kg',
    max: '1 t',
    step: '1 kg',
    note: 'keel bands, tanks, fittings',
  }),
  metalDensity: input('density', 'Its density', {
    preset: '7850 kg/m^3',
    min: '1010 kg/m^3',
    max: '12000 kg/m^3',
    step: '50 kg/m^3',
    note: 'steel 7850, aluminium 2730, bronze 8800, lead 11 300',
  }),
  wood: input('mass', 'Her wood', {
    from: 'weights.bareWood',
    preset: '80 kg',
    min: '0 kg',
    max: '5 t',
    step: '5 kg',
  }),
  wetDensity: input('density', 'Its density, wet', {
    preset: '650 kg/m^3',
    min: '100 kg/m^3',
    max: '1500 kg/m^3',
    step: '10 kg/m^3',
    note: `after months afloat wood is heavier than dry; ${CUSTOM}`,
  }),
  credit: input('share', 'Lift of the wood counted on', {
    preset: '0 %',
    min: '0 %',
    max: '100 %',
    step: '10 %',
    note: `none, unless it is sound and sealed all round; ${CUSTOM}`,
  }),

  where: choice('Foam stands', {
    options: [
      { id: 'sides', label: 'along both sides' },
      { id: 'under', label: 'under the thwarts' },
    ],
    preset: 'sides',
  }),
  below: input('length', 'Its top under the sheer', {
    preset: '50 mm',
    presetInch: '2 in',
    min: '0 mm',
    max: '500 mm',
    step: '10 mm',
    when: 'where == "sides"',
    note: 'clear of clamp and rail',
  }),
  stripDown: input('length', 'From there down', {
    preset: '300 mm',
    presetInch: '12 in',
    min: '20 mm',
    max: '1500 mm',
    step: '10 mm',
    when: 'where == "sides"',
  }),
  thick: input('length', 'In from the side', {
    preset: '150 mm',
    presetInch: '6 in',
    min: '10 mm',
    max: '600 mm',
    step: '10 mm',
    when: 'where == "sides"',
    note: 'within 6 in (150 mm) of the side, by the Coast Guard’s handbook',
  }),
  fills: input('share', 'Foam fills of that room', {
    preset: '80 %',
    min: '10 %',
    max: '100 %',
    step: '5 %',
    note: `frames, knees and gaps take the rest; ${CUSTOM}`,
  }),

  foamDensity: input('density', 'Foam weighs', {
    preset: '32 kg/m^3',
    presetInch: '2 lb/ft^3',
    min: '10 kg/m^3',
    max: '300 kg/m^3',
    step: '1 kg/m^3',
    note: 'its own sheet',
  }),
  soak: input('share', 'Water that it takes up', {
    preset: '5 %',
    min: '0 %',
    max: '50 %',
    step: '1 %',
    note: 'of its volume; the rule lets it lose 5 % of its lift in fuel and oil',
  }),
  waste: input('share', 'Offcuts', { preset: '10 %', min: '0 %', max: '100 %', step: '5 %', note: CUSTOM }),
  sheetLong: input('length', 'Sheet of foam, long', {
    preset: '2400 mm',
    presetInch: '8 ft',
    min: '200 mm',
    max: '5 m',
    step: '100 mm',
  }),
  sheetWide: input('length', 'Wide', {
    preset: '1200 mm',
    presetInch: '4 ft',
    min: '100 mm',
    max: '3 m',
    step: '50 mm',
  }),
  sheetThick: input('length', 'Thick', {
    preset: '50 mm',
    presetInch: '2 in',
    min: '5 mm',
    max: '500 mm',
    step: '5 mm',
  }),

  person: input('mass', 'One person weighs', {
    from: 'weights.person',
    preset: '75 kg',
    presetInch: '165 lb',
    min: '10 kg',
    max: '250 kg',
    step: '1 kg',
  }),
  peopleForward: place('People sit, forward', 'weights.peopleForward', '1 m', WEIGHTS),
  seat: fromBoat('thwart.height'),
  motorForward: place('Motor, forward', 'weights.motorForward', '1 m', WEIGHTS),
  motorHeight: input('length', 'Motor, height', {
    from: 'weights.motorHeight',
    preset: '300 mm',
    min: '-2 m',
    max: '5 m',
    step: '50 mm',
    note: 'above the base line',
  }),
  hullForward: place('Hull’s centre, forward', 'weights.hullForward', '1 m', WEIGHTS),
} as const;

export type FlotationAsked = ValuesOf<typeof flotationInputs>;
