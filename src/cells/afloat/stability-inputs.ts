/** What the cell of the stability asks for. */
import { choice, input, type ValuesOf } from '../form/define';
import { allAboard, floatsIn } from './all-aboard';

export const stabilityInputs = {
  heel: input('angle', 'Heel looked at', { preset: '15°', min: '0°', max: '90°', step: '1°' }),
  people: input('count', 'People to one side', {
    from: 'weights.people',
    preset: '2',
    min: '0',
    max: '20',
    step: '1',
  }),
  aside: input('length', 'Their middle, off the centreline', {
    from: '{self}.usualAside',
    preset: '400 mm',
    min: '0 mm',
    max: '3 m',
    step: '10 mm',
  }),
  deck: choice('She is', {
    options: [
      { id: 'open', label: 'open' },
      { id: 'decked', label: 'flush-decked or well-decked' },
      { id: 'protected', label: 'with a cockpit, sheltered water' },
      { id: 'exposed', label: 'with a cockpit, open water' },
    ],
    preset: 'open',
  }),
  person: input('mass', 'One of them weighs', {
    from: 'weights.person',
    preset: '75 kg',
    presetInch: '165 lb',
    min: '10 kg',
    max: '250 kg',
    step: '1 kg',
  }),
  usPerson: input('mass', 'One person by the US rule', {
    preset: '185 lb',
    min: '10 kg',
    max: '250 kg',
    step: '1 kg',
    note: '185 lb (84 kg) since December 2011: 46 CFR 170.090',
  }),
  breadth: input('length', 'Breadth that people can use', {
    from: '{self}.usualBreadth',
    preset: '1.2 m',
    min: '100 mm',
    max: '6 m',
    step: '50 mm',
  }),
  deckLength: input('length', 'Length over the weather deck', {
    from: 'hull.length',
    preset: '4 m',
    min: '500 mm',
    max: '30 m',
    step: '50 mm',
    when: 'deck == "protected" or deck == "exposed"',
  }),
  cockpit: input('length', 'Length of the cockpit', {
    preset: '2 m',
    min: '0 mm',
    max: '30 m',
    step: '50 mm',
    when: 'deck == "protected" or deck == "exposed"',
  }),
  sideDeck: input('length', 'Side deck, breadth', {
    preset: '0 mm',
    min: '0 mm',
    max: '2 m',
    step: '10 mm',
    note: 'from the sheer inboard; the water comes in over its inner edge',
  }),
  coaming: input('length', 'Coaming, height over the sheer', {
    preset: '0 mm',
    min: '0 mm',
    max: '500 mm',
    step: '10 mm',
  }),
  looseLength: input('length', 'Loose water, length', {
    preset: '1 m',
    min: '0 mm',
    max: '30 m',
    step: '50 mm',
    note: 'of its surface in the bilge, along the boat',
  }),
  looseBreadth: input('length', 'Loose water, breadth', {
    preset: '500 mm',
    min: '0 mm',
    max: '6 m',
    step: '50 mm',
  }),
  looseParts: input('count', 'Parts it is kept in, side by side', {
    preset: '1',
    min: '1',
    max: '10',
    step: '1',
    note: 'a keelson that stands proud of it makes two',
  }),
  swampedLift: input('mass', 'Lift left over', {
    from: 'flotation.spare',
    preset: '50 kg',
    min: '0 kg',
    max: '20 t',
    step: '5 kg',
    note: 'full of water: what foam and wood hold up beyond herself and her motor',
  }),
  swampedHands: input('count', 'People it holds up, hanging on', {
    from: 'flotation.hands',
    preset: '4',
    min: '0',
    max: '20000',
    step: '1',
  }),
  swampedAhead: input('length', 'Weight ahead of foam', {
    from: 'flotation.ahead',
    preset: '0 mm',
    min: '-40 m',
    max: '40 m',
    step: '50 mm',
    note: 'from the middle of the foam to that of what hangs on it; − abaft',
  }),
  ...allAboard({ mass: 'float.mass', forward: 'float.centreForward', height: 'float.centreHeight' }),
  density: floatsIn,
} as const;

export type StabilityAsked = ValuesOf<typeof stabilityInputs>;
