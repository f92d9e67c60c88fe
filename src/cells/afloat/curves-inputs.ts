/** What the cell of the curves of form asks for. */
import { input, type ValuesOf } from '../form/define';

export const curvesInputs = {
  draught: input('length', 'Draught looked at', {
    from: 'float.draught',
    preset: '150 mm',
    min: '5 mm',
    max: '3 m',
    step: '10 mm',
    note: 'level, from her lowest point up to the water',
  }),
  person: input('mass', 'Who moves weighs', {
    from: 'weights.person',
    preset: '75 kg',
    min: '10 kg',
    max: '250 kg',
    step: '1 kg',
  }),
  centreHeight: input('length', 'Centre of all aboard, height', {
    from: 'float.centreHeight',
    preset: '400 mm',
    min: '-2 m',
    max: '5 m',
    step: '50 mm',
    note: 'above the base line',
  }),
  density: input('density', 'Density of the water', {
    from: 'float.density',
    preset: '1000 kg/m3',
    min: '990 kg/m3',
    max: '1035 kg/m3',
    step: '5 kg/m3',
    note: 'fresh water 1000, sea water about 1025: round figures, common practice',
  }),
} as const;

export type CurvesAsked = ValuesOf<typeof curvesInputs>;
