/** Where along the real edge the scarfs of a long timber fall, and the pattern that keeps them clear. */
import { defineCell } from '../../form/define';
import { tableOf } from '../../form/row-quantities';
import { jointList } from './joints-facts';
import { jointInputs } from './joints-inputs';
import { bendChart, drawJoints } from './joints-drawing';
import { jointSteps } from './joints-steps';
import { GEOMETRY } from '../../../trade/sources';

const PRACTICE = 'common practice, no source';

/** What to do by hand where the best pattern is not wanted: numbers of the boat, as entries. */
const plainBoards = (part: string) => ({
  [`${part}.portFirst`]: `${part}.boardLength`,
  [`${part}.starboardFirst`]: `${part}.boardLength - ${part}.stagger`,
});
const bestBoards = (part: string) => ({
  [`${part}.portFirst`]: `${part}.portBest`,
  [`${part}.starboardFirst`]: `${part}.starboardBest`,
});

export const joints = defineCell({
  id: 'joints',
  stage: 'timber',
  title: 'Where the joints fall',
  question:
    'Where along the boat do the scarfs fall, and do they stand clear of the hard bend, of the frames and of each other?',
  inputs: jointInputs,
  groups: {
    'The timber': ['along', 'thickness'],
    'The scarfs': ['slope', 'trim', 'stagger', 'more', 'leastPiece'],
    'The hard bend': ['hardShare', 'easyBend'],
    'The frame': ['frameClearance', 'siding', 'stands'],
  },
  steps: jointSteps,
  answers: [
    {
      of: 'portFirst',
      label: 'first board to port',
      from: 'from the after end, along the outer face, its taper included',
      tolerance: '5 mm',
    },
    {
      of: 'starboardFirst',
      label: 'first board to starboard',
      from: 'from the after end, along the outer face, its taper included',
      tolerance: '5 mm',
    },
    {
      of: 'amiss',
      label: 'joints badly placed',
      from: 'in the hard bend, on a frame or too near the joint across',
    },
  ],
  inWords: {
    when: 'jointsAll == 0',
    says: 'One board of {boardLength} reaches the whole {length} along the {along} without a joint.',
    otherwise: [
      'Begin aft with {portFirst}',
      {
        when: 'sides == "one"',
        says: ', then whole boards: {piecesPort} pieces {piecesPort?makes:make}',
        otherwise:
          'to port and {starboardFirst} to starboard, then whole boards: {piecesPort} pieces to port and {piecesStarboard} to starboard make',
      },
      'the {length} along the {along}.',
      {
        when: 'amiss == 0',
        says: [
          'Every joint stands {leastClear} or more from a frame',
          { when: 'sides != "one"', says: 'and {leastApart} or more from the joint across' },
          '.',
          {
            when: 'bendRatio >= easyBend',
            says: 'The edge bends easily all along: its tightest radius is {bendRatio} thicknesses.',
          },
          {
            when: 'bendRatio < easyBend',
            says: 'The joint bent hardest takes {worstShare} of the edge’s hardest bend, whose radius is {bendRatio} thicknesses.',
          },
        ],
        otherwise: [
          'Badly placed, of {jointsAll} in all: {inHardBend} in the hard bend, {onFrames} at a frame',
          { when: 'sides != "one"', says: ', {tooNear} too near the joint across' },
          '.',
        ],
      },
    ],
  },
  table: tableOf({
    caption: 'The joints: running distances from the after end',
    over: 'joint',
    rows: jointList,
    columns: [
      { of: 'at', label: 'middle' },
      { of: 'verdict', label: 'the place is' },
      { of: 'share', label: 'of the hardest bend' },
      { of: 'radius', label: 'radius there' },
      { of: 'frame', label: 'nearest frame' },
      { of: 'clear', label: 'clear of it' },
      { of: 'starts', label: 'taper begins' },
    ],
  }),
  warnings: [
    {
      when: 'boardLength < length + trim and boardLength < 2 * taper',
      says: 'A board of {boardLength} is too short for a taper of {taper} at both ends.',
      limit: GEOMETRY,
      weight: 'stop',
    },
    {
      when: 'onFrames > 0',
      says: 'Joints on a frame or within {frameClearance} of one: {onFrames}. A notch cut there opens the glue line.',
      limit: `no joint at a frame notch: ${PRACTICE}`,
      weight: 'mind',
    },
    {
      when: 'inHardBend > 0',
      says: 'Joints in the hard bend: {inHardBend}, the worst at {worstShare} of the hardest bend. The tightest radius is {tightest}.',
      limit: `no joint at the peak of the bend: ${PRACTICE}`,
      weight: 'mind',
    },
    {
      when: 'tooNear > 0',
      says: 'Joints of the two sides stand {leastApart} apart; {stagger} is wanted.',
      limit: `600 mm (24 in) or 24 thicknesses: ${PRACTICE}`,
      weight: 'mind',
    },
    {
      when: 'jointsAll > 0 and shortest < leastPiece',
      says: 'One piece is only {shortest} long, under {leastPiece}: too short to bend with the rest.',
      limit: PRACTICE,
      weight: 'mind',
    },
    {
      when: 'joint > jointsAll and joint > 1',
      says: 'This timber has fewer joints than that: {jointsAll} in all.',
      limit: 'the boards as laid',
      weight: 'mind',
    },
  ],
  cautions: [
    'A joined board does not bend like a whole one: the joint is stiffer and weaker. Bend it slowly, clamp the joint itself, and stand out of its line.',
    'Old rules for planked boats ask for more: scarfs of neighbouring planks 1.2 m (4 ft) apart or more, and three whole planks between two in one section.',
    'Let the feather edge on the outside of a skin or a rail point aft, so that nothing catches it.',
    'The edge is measured on the lines; check on the jig with a tape along the bend before you cut, and cut the end of the last board last.',
  ],
  sources: [
    {
      text: 'Length, bend and frames of the edge from the hull; boards lapped by a taper',
      known: 'geometry',
    },
    {
      text: 'Joints 600 mm (24 in) or 24 thicknesses apart, none at the peak of the bend or at a frame notch; a bend hard from three quarters of the hardest on, easy from a radius of 200 thicknesses on',
      known: 'common practice',
    },
    {
      text: 'Lloyd’s rules for yachts, as quoted: plank scarfs 1.2 m (4 ft) apart, three strakes between',
      known: 'published',
    },
  ],
  about: ['{part}', '{along}'],
  draw: drawJoints,
  chart: bendChart,
  offers: ({ part, portFirst, starboardFirst, boardLength, stagger, sides }) => {
    const isPlain =
      Math.abs(portFirst - boardLength) < 1e-6 &&
      (sides === 'one' || Math.abs(starboardFirst - boardLength + stagger) < 1e-6);
    return isPlain
      ? [{ label: 'The best pattern found', changes: bestBoards(part) }]
      : [{ label: 'Whole boards from aft, as they come', changes: plainBoards(part) }];
  },
});
