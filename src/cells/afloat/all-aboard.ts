/** What the cells of the floating boat ask in one way: what all aboard weigh, where its centre lies, who moves, and the water. */
import { input } from '../form/define';

/** @param from the quantities that fill them until they are typed over */
export const allAboard = (from: {
  readonly mass: string;
  readonly forward: string;
  readonly height: string;
}) => ({
  mass: input('mass', 'All aboard weigh', {
    from: from.mass,
    preset: '250 kg',
    min: '1 kg',
    max: '20 t',
    step: '10 kg',
    note: 'hull, motor, fuel, gear and people',
  }),
  centreForward: input('length', 'Its centre, forward', {
    from: from.forward,
    preset: '2 m',
    min: '-3 m',
    max: '30 m',
    step: '50 mm',
    note: 'from the after end of the bottom, forward',
  }),
  centreHeight: heightOfCentre('Its centre, height', from.height),
});

export const heightOfCentre = (label: string, from: string) =>
  input('length', label, {
    from,
    preset: '400 mm',
    min: '-2 m',
    max: '5 m',
    step: '50 mm',
    note: 'above the base line',
  });

export const whoMoves = {
  from: 'weights.person',
  preset: '75 kg',
  min: '10 kg',
  max: '250 kg',
  step: '1 kg',
} as const;

/** Of the water that she floats in, which *float* owns. */
export const floatsIn = input('density', 'Density of the water', {
  from: 'float.density',
  preset: '1000 kg/m3',
  min: '990 kg/m3',
  max: '1035 kg/m3',
  step: '5 kg/m3',
  note: 'fresh water 1000, sea water about 1025: round figures, common practice',
});
