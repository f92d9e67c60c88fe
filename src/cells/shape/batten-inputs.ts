/** What the cell `batten` asks for. */
import { woods } from '../common/wood/woods';
import { choice, input } from '../form/define';
import { fromShop } from '../form/from-shop';
import { lineViews } from './long-line';

export const battenInputs = {
  edge: choice('Line', { options: 'edges', preset: 'sheer' }),
  view: choice('Bent in', { options: lineViews, preset: 'plan' }),
  species: choice('Wood', { options: woods, preset: 'sitkaSpruce', note: 'dry, 12 % moisture' }),
  thickness: input('length', 'Across the bend', {
    preset: '19 mm',
    presetInch: '3/4 in',
    min: '1 mm',
    max: '100 mm',
    step: '1 mm',
    slider: true,
    note: 'the side that is bent. A square batten of 3/4 in (19 mm) is common practice',
  }),
  width: input('length', 'The other way', {
    preset: '19 mm',
    presetInch: '3/4 in',
    min: '2 mm',
    max: '300 mm',
    step: '1 mm',
  }),
  allowed: fromShop('breakingShare', { bound: 'most' }),
  holds: input('force', 'What a duck or a nail holds', {
    preset: '50 N',
    presetInch: '10 lbf',
    min: '1 N',
    max: '2000 N',
    step: '5 N',
    note: 'common practice, no source: a small nail on each side of the batten, in a plywood floor. Pull on yours with a spring balance',
  }),
  past: input('length', 'Batten past each end', {
    preset: '750 mm',
    presetInch: '30 in',
    min: '0 mm',
    max: '3 m',
    step: '50 mm',
    note: 'common practice: 2 to 3 ft (600 to 900 mm) longer than the curve at each end',
  }),
  push: input('force', 'Push of a finger', {
    preset: '5 N',
    presetInch: '1 lbf',
    min: '0.1 N',
    max: '500 N',
    step: '1 N',
    note: 'common practice, no source: what a hand laid on the batten does without meaning to',
  }),
  gives: input('length', 'That may move it by', {
    preset: '3 mm',
    presetInch: '1/8 in',
    min: '0.1 mm',
    max: '50 mm',
    step: '1 mm',
    note: 'common practice: 1/8 in (3 mm) is faired away in silence',
  }),
  grip: input('ratio', 'Friction of a loose duck on the floor', {
    preset: '0.3',
    min: '0.05',
    max: '1.5',
    step: '0.05',
    note: 'common practice, no source: 0.2 to 0.5',
  }),
  modulus: input('stress', 'Bending modulus', {
    doubted: 'stiffness',
    from: 'timber.{species}.bendingModulus',
    preset: '11.9 GPa',
    min: '1 GPa',
    max: '40 GPa',
    step: '0.1 GPa',
    note: 'mean of clear wood, Wood Handbook, and a tenth more: the printed value has the shear of a short test beam in it',
  }),
  rupture: input('stress', 'Modulus of rupture', {
    doubted: 'breaking',
    from: 'timber.{species}.rupture',
    preset: '70 MPa',
    min: '5 MPa',
    max: '300 MPa',
    step: '1 MPa',
    note: 'mean of clear wood, Wood Handbook',
  }),
  density: input('density', 'Density', {
    from: 'timber.{species}.density',
    preset: '450 kg/m³',
    min: '100 kg/m³',
    max: '1500 kg/m³',
    step: '10 kg/m³',
  }),
  station: choice('Station looked at', { options: 'stations', preset: 'frame2' }),
};
