/** What the cell of the floating hull asks for. */
import { choice, input, type ValuesOf } from '../form/define';
import { allAboard, whoMoves } from './all-aboard';

export const floatInputs = {
  ...allAboard({ mass: 'weights.loaded', forward: 'weights.centreForward', height: 'weights.centreHeight' }),
  moves: choice('One of them', {
    options: [
      { id: 'still', label: 'sits still' },
      { id: 'side', label: 'moves to port' },
      { id: 'stands', label: 'stands up' },
      { id: 'forward', label: 'walks forward' },
    ],
    preset: 'still',
  }),
  station: choice('Station looked at', { options: 'stations', preset: 'frame3' }),
  mover: input('mass', 'Who moves weighs', {
    ...whoMoves,
    when: 'moves != "still"',
  }),
  far: input('length', 'Moves by', {
    preset: '400 mm',
    min: '0 mm',
    max: '5 m',
    step: '50 mm',
    when: 'moves != "still"',
    note: 'the middle of the body; who stands up raises it by about 400 mm (16 in): common practice, no source',
  }),
  centreSide: input('length', 'Its centre, to port', {
    from: 'weights.centreSide',
    preset: '0 mm',
    min: '-3 m',
    max: '3 m',
    step: '10 mm',
    note: 'from the centreline; less than 0 to starboard',
  }),
  water: choice('Water', {
    options: [
      { id: 'fresh', label: 'fresh' },
      { id: 'sea', label: 'salt' },
    ],
    preset: 'fresh',
  }),
  waterWarmth: input('temperature', 'The sea is', {
    preset: '15 °C',
    min: '0 °C',
    max: '40 °C',
    step: '1 °C',
    when: 'water == "sea"',
  }),
  waterSalt: input('number', 'Salt in a thousand parts', {
    preset: '35',
    min: '0',
    max: '42',
    step: '1',
    when: 'water == "sea"',
    note: 'the ocean has 35, an estuary a few',
  }),
  density: input('density', 'Density of the water', {
    from: 'lines.density',
    fromBy: { choice: 'water', links: { sea: '{self}.seaDensity' } },
    preset: '1000 kg/m3',
    min: '990 kg/m3',
    max: '1035 kg/m3',
    step: '5 kg/m3',
    note: 'fresh water 1000, sea water about 1025: round figures, common practice',
  }),
} as const;

export type FloatAsked = ValuesOf<typeof floatInputs>;
