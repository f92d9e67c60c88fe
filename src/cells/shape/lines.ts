/** The lines of the hull: drafted, measured, floated at a draught, and to be turned by hand. */
import { defineCell, type Offer, type OnHand } from '../form/define';
import { firstOf } from '../form/in-words';
import { tableOf } from '../form/row-quantities';
import { areasChart, drawLines, wallSheet } from './lines-drawing';
import { linesInputs } from './lines-inputs';
import { linesSteps, type LinesValues } from './lines-steps';

export const lines = defineCell({
  id: 'lines',
  stage: 'shape',
  title: 'Lines of the hull',
  question: 'What shape do these numbers make, how deep does she float, and what does she weigh then?',
  inputs: linesInputs,
  groups: {
    'The drawing': ['waterlines', 'buttocks', 'wall'],
  },
  steps: linesSteps,
  answers: [
    { of: 'length', label: 'length over all', from: 'between the extreme points of the hull, ends included' },
    {
      of: 'mass',
      label: 'displacement',
      from: 'boat, motor, gear and crew together, floating level',
      when: 'assumed == 0',
    },
    {
      of: 'deep',
      label: 'draught',
      from: 'from the lowest point of the hull up to the water, floating level',
      when: 'assumed == 0',
    },
  ],
  inWords: [
    'The hull is {length} long, {beam} broad and {depth} deep.',
    firstOf(
      [
        {
          when: 'assumed == 1',
          says: 'Type the draught that the plan states, or what she weighs with all aboard: until then the waterline is drawn {deep} up, a quarter of her least depth, which is only a guess.',
        },
        {
          when: 'freeboard > 0 m',
          says: 'Floating level and {deep} deep she displaces {volume} and weighs {mass} in all. Where the sheer is lowest {freeboard} of side is left above the water; another {sinkage} aboard sinks her by about 10 mm (3/8 in).',
        },
      ],
      'With her lowest point {deep} down the water stands over the sheer: no boat floats so.',
    ),
  ],
  table: tableOf({
    caption: 'Form by station',
    over: 'station',
    columns: [
      { of: 'place', label: 'forward' },
      { of: 'flare', label: 'flare' },
      { of: 'deadrise', label: 'deadrise', where: 'across' },
      { of: 'waterBreadth', label: 'half-breadth afloat' },
      { of: 'sectionArea', label: 'area under water' },
    ],
  }),
  warnings: [
    {
      when: 'freeboard <= 0 m',
      says: 'The water would stand {deep} above the lowest point of the hull, over the sheer where it is lowest: she would fill before she floated so deep.',
      limit: 'the sheer of this hull',
      weight: 'stop',
    },
    {
      when: 'sternDepth > deep / 2 and sternBreadth > 0 m and freeboard > 0 m and assumed == 0',
      says: 'The after end of the bottom is {sternDepth} under water. A boat for oars or sail drags water behind such a stern; one that is to plane wants it so.',
      limit: 'a transom clear of the water at rest for low speeds; common practice, no source',
      weight: 'mind',
    },
  ],
  cautions: [
    'The displacement says what the boat weighs at this line, not what she may carry. How much may go aboard is for the capacity rule of the place, for stability, and for the water she is used on.',
    'All this is of the face of the skin that the offsets are measured to, floating level. Offsets to the inside of the skin give a little less than what floats.',
  ],
  sources: [
    {
      text: 'Volume, wetted area and waterplane of the ruled panels by the divergence and Green’s theorems, any text of vector analysis',
      known: 'geometry',
    },
    {
      text: 'Displacement: the weight of the water pushed aside, Archimedes, On Floating Bodies',
      known: 'published',
    },
    {
      text: 'Block and prismatic coefficients: K. J. Rawson and E. C. Tupper, Basic Ship Theory, chapter 1',
      known: 'from memory',
    },
    {
      text: 'Forebody to the right, afterbody to the left in the body plan; bow to the right in profile',
      known: 'common practice',
    },
  ],
  about: ['{station}', '{panel}'],
  wide: true,
  tall: true,
  draw: drawLines,
  chart: areasChart,
  view: 'hull',
  offers: draughtOffer,
  patterns: { are: 'Lines plan for the wall, to scale', draw: wallSheet },
});

/** A draught found by the weight may become the boat's own. */
function draughtOffer({ by, deep }: LinesValues, { say }: Pick<OnHand, 'say'>): readonly Offer[] {
  if (by !== 'weight') return [];
  return [
    {
      turns: 'Make it her design draught',
      label: `At that weight she floats ${say(deep, 'length')} deep.`,
      changes: { 'hull.draught': `${+(1000 * deep).toFixed(1)} mm`, '{self}.by': 'draught' },
    },
  ];
}
