/** Is the stem on the centreline? Two lengths from the transom's corners tell how far off it stands, and to which side. */
import { defineCell, input, step } from '../form/define';
import { fromShop } from '../form/from-shop';
import { words } from '../form/in-words';
import { stemView } from './stem-check-drawing';
import { TWO_LENGTHS } from './two-lengths';
import { GEOMETRY } from '../../trade/sources';

const TRIANGLE = 'geometry: the triangle of the two corners and the stem';

const taped = (label: string) =>
  input('length', label, {
    from: '{self}.trueLength',
    preset: '5000 mm',
    min: '500 mm',
    max: '20 m',
    step: '1 mm',
    note: 'sheer mark to sheer mark, the tape straight and pulled as hard both times',
  });

const SHORTER = { when: 'off > 0 mm', says: 'port', otherwise: 'starboard' };
const LONGER = { when: 'off > 0 mm', says: 'starboard', otherwise: 'port' };
const OFF = { when: 'tooFar > 0 mm', says: 'forward', otherwise: 'aft' };
const BACK = { when: 'tooFar > 0 mm', says: 'aft', otherwise: 'forward' };

export const stemCheck = defineCell({
  id: 'stemCheck',
  stage: 'frames',
  title: 'Stem on the centreline',
  question:
    'From the transom’s corners to the stem I tape two lengths: is the stem true, and which way do I move it?',
  inputs: {
    portLength: taped('Port corner to stem'),
    starboardLength: taped('Starboard corner to stem'),
    accepted: fromShop('trueWithin', { hint: 'of the difference' }),
    cornerOut: input('length', 'Half-breadth at the corners', {
      from: 'strongback.cornerOut',
      preset: '500 mm',
      min: '20 mm',
      max: '3 m',
      step: '1 mm',
      note: 'sheer marks of the transom; of a boat that is sharp at both ends, of her first frame',
    }),
    ahead: input('length', 'Stem forward of them, by plan', {
      from: 'strongback.stemAhead',
      preset: '4975 mm',
      min: '500 mm',
      max: '20 m',
      step: '1 mm',
      note: 'sheer mark of the stem, along the boat; of a bow transom, the middle of its top',
    }),
    rise: input('length', 'Stem above them, by plan', {
      from: 'strongback.stemRise',
      preset: '0 mm',
      min: '-2 m',
      max: '2 m',
      step: '1 mm',
      note: '+ where the sheer is higher at the stem, boat the right way up',
    }),
    alongAccepted: input('length', 'Accepted along the boat', {
      from: '{self}.twiceAccepted',
      preset: '6 mm',
      presetInch: '1/4 in',
      min: '0.1 mm',
      max: '100 mm',
      step: '0.5 mm',
      note: 'twice as much as of the difference: it makes her longer, not crooked; common practice, no source',
    }),
  },
  functions: TWO_LENGTHS,
  groups: {
    'What is accepted': ['accepted', 'alongAccepted'],
  },
  steps: {
    twiceAccepted: step(
      'length',
      '2 * accepted',
      'accepted along the boat: twice what is accepted of the difference',
      'common practice, no source',
      'most',
    ),
    trueLength: step(
      'length',
      'sqrt(ahead^2 + cornerOut^2 + rise^2)',
      'either corner to the stem, by plan',
      'geometry: Pythagoras in space',
    ),
    difference: step('length', 'starboardLength - portLength', 'starboard longer than port by', GEOMETRY),
    off: step(
      'length',
      'towardPort(portLength, starboardLength, 2 * cornerOut)',
      'stem off the centreline, + to port: towards the shorter length',
      `${TRIANGLE}: (starboard² − port²) / (4 × half-breadth)`,
    ),
    found: step(
      'length',
      'levelPart(squareOff(portLength, starboardLength, 2 * cornerOut), rise)',
      'stem forward of the line between the corners, level, as taped',
      TRIANGLE,
    ),
    tooFar: step('length', 'found - ahead', 'stem too far forward', GEOMETRY),
    skew: step(
      'length',
      'cornerOut * off / sqrt(found^2 + off^2)',
      'or, where the stem is on the string: port corner of the transom too far forward, the starboard one as much too far aft',
      'geometry: the same triangle, turned',
    ),
    acceptedOff: step(
      'length',
      'accepted * (portLength + starboardLength) / (4 * cornerOut)',
      'how far off the centreline the accepted difference lets the stem stand',
      `${TRIANGLE}; the difference is common practice, no source`,
    ),
    differBy: step('length', 'abs(difference)', 'the two lengths differ by', GEOMETRY),
    offBy: step('length', 'abs(off)', 'stem off the centreline by', GEOMETRY),
    skewBy: step('length', 'abs(skew)', 'transom’s corners out by', GEOMETRY),
    tooFarBy: step('length', 'abs(tooFar)', 'stem out along the boat by', GEOMETRY),
  },
  answers: [
    {
      of: 'off',
      label: 'stem, off centre',
      from: 'at its sheer mark, square to the centreline: + to the boat’s port side, − to starboard',
      tolerance: '1/8 in',
    },
    {
      of: 'difference',
      label: 'lengths differ',
      from: 'starboard less port, sheer mark to sheer mark',
      tolerance: '1/8 in',
    },
    {
      of: 'tooFar',
      label: 'stem, forward',
      from: 'along the boat from the transom’s corners, against the plan: + too far forward',
      tolerance: '6 mm',
    },
  ],
  inWords: {
    when: 'differBy <= accepted',
    says: 'The lengths differ by {differBy}, within the {accepted} that is accepted as true. Brace the stem and leave it.',
    otherwise: words`The ${SHORTER} length is {differBy} shorter, so the stem stands {offBy} to ${SHORTER}: move it {offBy} to ${LONGER}, brace it, and tape both again.`,
  },
  warnings: [
    {
      when: 'differBy > accepted',
      says: words`Look at the string first. If the stem’s mark is on it, leave the stem: then the transom stands askew, its ${SHORTER} corner {skewBy} too far forward and its ${LONGER} corner as much too far aft.`,
      limit: 'a difference of 1/8 in (3 mm) is accepted as true; common practice, no source',
      weight: 'mind',
    },
    {
      when: 'tooFarBy > alongAccepted',
      says: words`Both lengths together put the stem {tooFarBy} farther ${OFF} than the plan: move it ${BACK} by that, or look for the error at the transom.`,
      limit: 'what is accepted along the boat, typed or preset; common practice, no source',
      weight: 'mind',
    },
    {
      when: 'acceptedOff > 25 mm',
      says: 'On a boat this narrow aft a difference of {accepted} hides an error of {acceptedOff} at the stem: trust the string, and tape from the widest frame’s sheer marks too.',
      limit: '25 mm (just under 1 in); common practice, no source',
      weight: 'mind',
    },
  ],
  cautions: [
    'Brace the stem to the jig both ways before the first long timber is bent to it, and measure again after each pair.',
    'Plumb and level do not see it: a stem can stand plumb, at its right height, and off the centreline.',
    'Port and starboard are the boat’s own. Upside down, looking forward, her port side lies to your right.',
    'Two people hold the tape, on the marks and not on the wood’s corners; read it, change ends, and read it again.',
  ],
  sources: [
    {
      text: 'Off-centre from two lengths, (starboard² − port²) / (4 × half-breadth): geometry',
      known: 'geometry',
    },
    {
      text: 'Two lengths from the transom’s corners to the stem that differ by 1/8 in (3 mm) are accepted as true: custom of the trade',
      known: 'common practice',
    },
  ],
  about: ['stem', 'transom', 'sheer'],
  draw: stemView,
});
