/** Is it square? The jig, a frame or a panel by its two diagonals, and which side to push. */
import { defineCell, input, step } from '../form/define';
import { fromShop } from '../form/from-shop';
import { words } from '../form/in-words';
import { squareView } from './square-check-drawing';
import { GEOMETRY } from '../../trade/sources';

const LONGER = { when: 'slide > 0 mm', says: 'A to C', otherwise: 'B to D' };
const TOWARDS = { when: 'slide > 0 mm', says: 'D', otherwise: 'C' };

export const squareCheck = defineCell({
  id: 'squareCheck',
  stage: 'frames',
  title: 'Square by its diagonals',
  question: 'I have taped both diagonals: is it square, and which side do I push, how far?',
  inputs: {
    first: input('length', 'Side A to B', {
      from: 'strongback.jigLength',
      preset: '2400 mm',
      min: '0 mm',
      max: '60 m',
      step: '1 mm',
      note: 'of the jig the port rail, A at its after end; of a frame the breadth at the chine',
    }),
    second: input('length', 'Side D to C, opposite', {
      from: '{self}.first',
      preset: '2400 mm',
      min: '1 mm',
      max: '60 m',
      step: '1 mm',
      note: 'of the jig the starboard rail; of a frame the breadth at the sheer, where the two differ',
    }),
    apart: input('length', 'Cross-piece between them', {
      from: 'strongback.gauge',
      preset: '1200 mm',
      min: '1 mm',
      max: '10 m',
      step: '1 mm',
      note: 'square from the one side to the other',
    }),
    diagonalAC: input('length', 'Diagonal A to C', {
      from: '{self}.trueDiagonal',
      preset: '2683 mm',
      min: '1 mm',
      max: '80 m',
      step: '1 mm',
      note: 'as taped, corner to corner',
    }),
    diagonalBD: input('length', 'Diagonal B to D', {
      from: '{self}.trueDiagonal',
      preset: '2683 mm',
      min: '1 mm',
      max: '80 m',
      step: '1 mm',
      note: 'as taped, corner to corner',
    }),
    accepted: fromShop('trueWithin', { hint: 'of the slide' }),
  },
  functions: {
    rackedBy: {
      takes: ['length', 'length'],
      gives: 'angle',
      how: 'the angle whose sine is slide / cross-piece',
      run: (slide: number, apart: number) => {
        if (Math.abs(slide) > apart)
          throw new Error('no figure with these sides has such diagonals: measure them again');
        return Math.asin(slide / apart);
      },
    },
  },
  groups: {
    'How true': ['second', 'accepted'],
  },
  steps: {
    trueDiagonal: step(
      'length',
      'sqrt(apart^2 + ((first + second) / 2)^2)',
      'both diagonals when it is square',
      'geometry: Pythagoras',
    ),
    difference: step('length', 'diagonalAC - diagonalBD', 'A to C longer than B to D by', GEOMETRY),
    slide: step(
      'length',
      '(diagonalAC^2 - diagonalBD^2) / (2 * (first + second))',
      'side D to C stands too far towards C by; − towards D',
      'geometry: Pythagoras for both diagonals, subtracted',
    ),
    outOfSquare: step('angle', 'rackedBy(slide, apart)', 'out of square', GEOMETRY),
    slideBy: step('length', 'abs(slide)', 'how far to push', GEOMETRY),
    reach: step(
      'length',
      'sqrt((diagonalAC^2 + diagonalBD^2) / 2)',
      'the two diagonals’ mean, by squares: what both will be when it is square',
      'geometry: racking a figure leaves the sum of the squares alone',
    ),
    misfit: step('length', 'reach - trueDiagonal', 'that mean beyond what the sides ask for', GEOMETRY),
  },
  answers: [
    {
      of: 'slide',
      label: 'side D to C, to push',
      from: 'along itself: + it stands too far towards C, push it back towards D; − the other way',
      tolerance: '1 mm',
    },
    {
      of: 'outOfSquare',
      label: 'out of square',
      from: 'at all four corners; + the corner at A is too sharp',
      tolerance: '0.05 deg',
    },
    {
      of: 'trueDiagonal',
      label: 'diagonals, when true',
      from: 'from corner to corner, both alike',
      tolerance: '1 mm',
    },
  ],
  inWords: {
    when: 'slideBy <= accepted',
    says: 'The diagonals differ by {difference}, which is a slide of {slideBy}: within the {accepted} accepted. Fix it so that it stays.',
    otherwise: words`${LONGER} is the longer: push side D to C along itself towards ${TOWARDS} by {slideBy}, and tape both again.`,
  },
  warnings: [
    {
      when: 'slideBy > accepted',
      says: 'Out of square by {outOfSquare}: side D to C stands {slideBy} off along itself. Nothing goes onto it before the diagonals agree.',
      limit: 'the slide accepted, typed or preset; common practice, no source',
      weight: 'mind',
    },
    {
      when: 'abs(misfit) > 2 * accepted',
      says: 'The diagonals average {reach}, but sides and cross-piece ask for {trueDiagonal}: one of the five was misread, or a side is not straight.',
      limit: 'twice the slide accepted; geometry',
      weight: 'mind',
    },
  ],
  cautions: [
    'Push, measure, then brace with a diagonal batten before you lean on it: what was squared by hand springs back.',
    'Hook the tape on the same kind of point at all four corners, outer corner to outer corner, and read it pulled to the same tension both times.',
    'Equal diagonals make a rectangle only where opposite sides are equal too, and they say nothing of a twist: sight across the two ends as well.',
  ],
  sources: [
    {
      text: 'Out of square from two diagonals, (AC² - BD²) / (2 × sum of the parallel sides): geometry',
      known: 'geometry',
    },
    { text: 'What difference is accepted: custom of the trade', known: 'common practice' },
  ],
  about: ['frame'],
  draw: squareView,
});
