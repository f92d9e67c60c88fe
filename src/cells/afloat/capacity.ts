/** Capacity: how many people, how much weight and what power, by the US federal method, as a yardstick for an amateur. */
import { floatPlaneQuantities } from '../../boat/quantities/float-plane-quantities';
import { defineCell } from '../form/define';
import { drawCapacity } from './capacity-drawing';
import { capacityInputs } from './capacity-inputs';
import { capacityFunctions, capacitySteps } from './capacity-steps';

const LIMITS =
  'The rule is for boats of one hull under 20 ft (6.1 m), and for no sailing boat, canoe, kayak or inflatable.';

export const capacity = defineCell({
  id: 'capacity',
  stage: 'afloat',
  title: 'Capacity',
  question: 'How many people, how much weight and how strong a motor does the US rule allow her?',
  inputs: capacityInputs,
  groups: {
    'Her power': ['bottom', 'steering', 'transom', 'rated', 'edition'],
    'Her load': ['margin', 'sideLoad', 'beam'],
  },
  functions: capacityFunctions,
  steps: capacitySteps,
  answers: [
    { of: 'persons', label: 'people', from: 'as the rule counts them, no more than their weight together' },
    { of: 'weight', label: 'weight', from: 'people, motor, fuel and gear together' },
    { of: 'power', label: 'power', from: 'at the motor’s propeller shaft, as rated' },
  ],
  inWords: [
    LIMITS,
    'Of {counted} pushed aside and {boatWeight} of boat it leaves {weight} for all aboard, and {personsWeight} of that for {persons} {persons?person:people}.',
    {
      when: 'outboards == 1 and horsepower > 0',
      says: 'Length times breadth is {factor} square feet: {horsepower} horsepower at the most.',
      otherwise: {
        when: 'outboards == 1',
        says: 'Length times breadth is {factor} square feet, and for a flat bottom the table has no power there.',
        otherwise: {
          when: 'drive == "small"',
          says: 'A motor of up to 2 horsepower is counted in.',
          otherwise: 'No motor is counted in.',
        },
      },
    },
  ],
  warnings: [
    {
      when: 'length >= 20 ft',
      says: 'She is {length} long, and the rule ends at 20 ft (6.1 m): none of these figures is for her.',
      limit: '33 CFR 183.21, 183.31 and 183.51',
      weight: 'stop',
    },
    {
      when: 'boatWeight >= counted',
      says: 'The boat alone weighs {boatWeight}, and {counted} is all that may be pushed aside: nothing is left for people.',
      limit: '33 CFR 183.35 and 183.37',
      weight: 'stop',
    },
    {
      when: 'boatWeight < counted and persons < 1',
      says: 'By the rule {personsWeight} is left for people: that is nobody.',
      limit: '33 CFR 183.41 and 183.43',
      weight: 'stop',
    },
    {
      when: 'outboards == 1 and horsepower == 0',
      says: 'For a flat bottom the table goes one step down, and below 3 horsepower it prints none: it rates her for no outboard of this kind.',
      limit: '33 CFR 183.53(a)(3)',
      weight: 'mind',
    },
    {
      when: 'outboards == 1 and rated > mostPower',
      says: 'You rate her for {rated}, and the rule allows {mostPower}.',
      limit: '33 CFR 183.53',
      weight: 'stop',
    },
    {
      when: 'outboards == 1 and (length < 14 ft or slender > 3)',
      says: 'The power rule was drawn from boats of 14 ft (4.3 m) and more, two to three times as long as broad. She is {length} long and {slender} times as long as broad: take less.',
      limit: 'about 150 stock boats of 1954 to 1967, by a Coast Guard letter of 2002',
      weight: 'mind',
    },
  ],
  cautions: [
    'A yardstick, not a certificate. The law of the place, the maker’s plate and the weather come before it; a boat loaded to these figures can still be swamped.',
    'The rule has the water pushed aside and the load along one side measured on the boat afloat. Here they come from the hull as drawn, the skin’s own thickness left out: try her in shallow water with people you trust.',
    'It binds makers who sell boats in the United States. Your state or country may ask something else.',
    'Inboards and sterndrives are left out: the law prints their two formulas (33 CFR 183.33) as a picture, and it could not be read.',
    'The load along one side goes by what stands in the weights: put motor, battery and tank there first.',
    'Level is taken with the sheer at stern and stem alike above the water. The rule also lets the bow go lower, which may give more.',
    'Boats of 13 ft (4.0 m) or less, with wheel steering and two people at the most, may be tried out in quick turns for up to 40 horsepower (33 CFR 183.53(b)). That is for a test driver.',
  ],
  sources: [
    {
      text: '33 CFR 183.31 to 183.53, annual edition 2015: weight, people and power. Read; only 183.33 was not',
      known: 'published',
    },
    {
      text: 'Weights of motors since June 2018: ABYC S-30 Table 1A, as a builders’ page reproduces it; those before: 33 CFR 183, Table 4 to Subpart H',
      known: 'published',
    },
    {
      text: 'Coast Guard, Boatbuilder’s Handbook, chapter on loading: margin of 5 %, worked figures',
      known: 'published',
    },
    {
      text: 'A bottom that rises less than 2° is taken as flat; weights along one side stand 75 mm (3 in) inside the skin',
      known: 'common practice',
    },
  ],
  about: ['sheer', 'transom'],
  brings: floatPlaneQuantities,
  draw: drawCapacity,
});
