/** What the cell of the curves of form asks for. */
import { input, type ValuesOf } from '../form/define';
import { allAboard, floatsIn, heightOfCentre, whoMoves } from './all-aboard';

export const curvesInputs = {
  draught: input('length', 'Draught looked at', {
    from: '{self}.usualDraught',
    preset: '150 mm',
    min: '5 mm',
    max: '3 m',
    step: '10 mm',
    note: 'level, from her lowest point up to the water',
  }),
  laden: allAboard({
    mass: 'float.mass',
    forward: 'float.centreForward',
    height: 'float.centreHeight',
  }).mass,
  person: input('mass', 'Who moves weighs', whoMoves),
  centreHeight: heightOfCentre('Centre of all aboard, height', 'float.centreHeight'),
  density: floatsIn,
} as const;

export type CurvesAsked = ValuesOf<typeof curvesInputs>;
