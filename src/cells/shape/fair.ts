/** Is a long line fair, and if not, which number is wrong and what is the least that mends it? */
import { defineCell } from '../form/define';
import { firstOf } from '../form/in-words';
import { tableOf } from '../form/row-quantities';
import { offersOf } from './fair-offers';
import { drawLine, runChart } from './fair-drawing';
import { wedgePatterns } from './fair-wedge-drawing';
import { BATTEN, LEAST } from './fair-facts';
import { fairInputs } from './fair-inputs';
import { fairSteps } from './fair-steps';
import { ALIKE } from './suspects';

const OVER_THE_SIDE =
  'over the {wedgeLength} of the frame side. The flare goes from {lean} to {leanAfter}, the skin changes by {areaChange}, the displacement by {volumeChange}.';

/** A number that stands out, with what mends it in wood. */
const FOUND = [
  'In {view} the {edge} stands about {error} too',
  {
    when: 'view == "plan"',
    says: { when: 'correction > 0 mm', says: 'far in', otherwise: 'far out' },
    otherwise: { when: 'correction > 0 mm', says: 'low', otherwise: 'high' },
  },
  'at {oddStation}:',
  { when: 'view == "plan"', says: 'half-breadth', otherwise: 'height' },
  '{corrected} instead of {stands}. Of the other signs, {signs}.',
  firstOf([
    {
      // Near an end two numbers can upset the run alike.
      when: `rivalNearly > ${ALIKE}`,
      says: 'Or, nearly as likely, {rival} is out by about {rivalError}: look up both before you move anything.',
    },
    {
      when: 'wedge > nearest',
      says: [
        'In wood that is a wedge {wood} thick there, tapering to nothing',
        OVER_THE_SIDE,
        {
          when: 'ownWood > 0 mm',
          says: 'With the same taper planed off inside, the frame side keeps its depth of {moulded} there, {ownWood} of it its own wood.',
        },
      ],
    },
    // Between the two the frame side runs along the move: the line is only marked elsewhere on it.
    {
      when: 'wedge < -nearest',
      says: ['In wood that is a cut {wood} deep there, running out to nothing', OVER_THE_SIDE],
    },
  ]),
];

export const fair = defineCell({
  id: 'fair',
  stage: 'shape',
  title: 'Is the line fair?',
  question: 'Is this line fair, or is one of its numbers wrong, and which?',
  inputs: fairInputs,
  groups: {
    'What stays': ['ends', 'keep', 'keepAnother', 'keepThird'],
    'The table of offsets': ['nearest', 'blunder', 'station'],
    'Wood and water': ['mostWedge', 'moulded', 'stiffness', 'draught'],
  },
  steps: fairSteps,
  answers: [
    {
      of: 'standsOut',
      label: 'stands out',
      from: 'the station of this line whose number disagrees with the others',
    },
    {
      of: 'proposed',
      label: 'move it by',
      from: 'at that station, + outboard or up',
      when: 'proof > 1',
    },
    {
      of: 'showsBest',
      label: 'an error shows from',
      from: 'at the frame of this line that shows it best; a smaller one is lost in the shape of the line itself',
    },
  ],
  inWords: [
    {
      when: 'suspectProof > 1 and (proof <= 1 or suspectLine != edge or suspectView != view)',
      says: 'Look first at {suspect}, the {suspectLine} in {suspectView}.',
    },
    {
      when: 'proof > 1',
      says: FOUND,
      otherwise:
        'No number of the {edge} stands out in {view}. With {stations} stations a small error stays hidden: it shows from about {showsBest} at the frame that shows it best, from {showsEverywhere} at the one that shows it least.',
    },
    'Hollows in the line: {hollowCount}.',
  ],
  table: tableOf({
    caption: 'The line at every station',
    over: 'station',
    columns: [
      { of: 'offset', label: 'offset' },
      { of: 'bend', label: 'bend' },
      { of: 'duck', label: 'duck' },
      { of: 'miss', label: 'proud when lifted' },
      { of: 'oneHere', label: 'move by, if it alone is wrong' },
      { of: 'clears', label: 'unfairness that takes away' },
      { of: 'move', label: 'move in the least mend' },
    ],
  }),
  warnings: [
    {
      when: 'proof > 1',
      says: 'The number at {oddStation} is out by about {error}; a fair line would show no more than {shows}. Look it up in the plan before you cut anything.',
      limit: 'what fair lines with these stations show; docs/fairness.md',
      weight: 'mind',
    },
    {
      when: 'hollowCount > 0 and meant == "no"',
      says: 'Part of the line bends the wrong way. Hollows: {hollowCount}, the deepest {hollowDepth}.',
      limit: 'a line bends one way unless a reverse is meant; common practice, no source',
      weight: 'mind',
    },
    {
      when: 'hollowCount > 1 and meant == "yes"',
      says: 'One reverse is meant, but {hollowCount} stretches of the line bend the other way.',
      limit: 'one reverse; common practice, no source',
      weight: 'mind',
    },
    {
      when: `wood > mostWedge and rivalNearly <= ${ALIKE}`,
      says: 'If {oddStation} is built already, {wood} of wood would have to go on or come off there, more than {mostWedge}: make a new one.',
      limit: 'a wedge of up to an inch (25 mm) at the thick end; common practice, no source',
      weight: 'stop',
    },
    {
      when: 'abs(shift) > 0 mm and abs(trial) == 0 mm',
      says: 'At {tried} the {edge} lies on the centreline, so in plan it is not moved there: look at it in profile, or try another station.',
      limit: 'the two sides of the boat meet there',
      weight: 'mind',
    },
  ],
  cautions: [
    'Mend both sides of the frame alike. Clamp it down before you plane it, keep both hands behind the iron, and sight along a batten over three frames before the last shavings.',
    'A suspect is not a verdict. Look up the number in the plan and measure the frame: the designer may have meant that shape.',
    'Two wrong numbers side by side can pass for one somewhere else. Look again after each correction.',
    'How far the batten springs when a duck is lifted is shown, but the cell does not judge by it: the neighbours of a wrong number spring as far as the wrong number does. At the two ends the batten only runs on straight, however fair the line.',
    'The two ends of a line show next to nothing: measure them by themselves. At a stem every half-breadth is nothing, and is not doubted.',
  ],
  sources: [
    { text: BATTEN, known: 'published' },
    { text: `${LEAST}: least change under conditions`, known: 'published' },
    {
      text: 'Divided differences: one error e shows in four third differences as e, −3e, 3e, −e',
      known: 'geometry',
    },
    {
      text: 'Fairing: 1/8 in (3 mm) is moved in silence, above 1/4 in (6 mm) one looks for a blunder; a wedge to nothing at the bottom and up to an inch (25 mm) at the top, the same taper taken off inside where the depth is to stay',
      known: 'common practice',
    },
  ],
  about: ['{edge}'],
  draw: drawLine,
  chart: runChart,
  offers: offersOf,
  patterns: { are: 'The wedge at full size', draw: wedgePatterns },
});
