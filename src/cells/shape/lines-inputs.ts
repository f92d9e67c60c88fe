/** What the cell `lines` asks for. */
import { choice, input, type ValuesOf } from '../form/define';
import { fromBoat } from '../form/from-boat';

export const linesInputs = {
  by: choice('The plan states', {
    options: [
      { id: 'neither', label: 'neither draught nor weight, so far' },
      { id: 'draught', label: 'the draught' },
      { id: 'weight', label: 'the weight' },
    ],
    preset: 'neither',
  }),
  draught: fromBoat('hull.draught', { when: 'by != "weight"' }),
  weight: input('mass', 'Weight with all aboard', {
    otherwise: [{ kind: 'length', says: 'choose “the draught” under “The plan states”' }],
    from: 'weights.loaded',
    preset: '250 kg',
    min: '1 kg',
    max: '20 t',
    step: '10 kg',
    when: 'by == "weight"',
    note: 'boat, motor, gear and crew',
  }),
  station: choice('Station looked at', { options: 'stations', preset: 'frame3' }),
  panel: choice('Panel measured', { options: 'panels', preset: 'side' }),
  waterlines: input('count', 'Waterlines drawn', { preset: '4', min: '0', max: '8', step: '1' }),
  buttocks: input('count', 'Buttocks drawn, each side', { preset: '2', min: '0', max: '5', step: '1' }),
  wall: input('count', 'Sheet for the wall, 1 to', {
    preset: '10',
    min: '5',
    max: '50',
    step: '5',
    note: 'scale of the plan that is printed on sheets to be joined; 1 to 20 is half as large as 1 to 10',
  }),
  density: input('density', 'Density of the water', {
    preset: '1000 kg/m3',
    min: '990 kg/m3',
    max: '1035 kg/m3',
    step: '5 kg/m3',
    note: 'fresh water 1000, sea water about 1025: round figures, common practice',
  }),
};

/** The inputs as facts read them. */
export type LinesAsked = ValuesOf<typeof linesInputs>;
