/** Trailer: where the boat sits on it, what hangs on the ball, what is rated for what, and how she is held down. */
import { defineCell } from '../form/define';
import { trailerView } from './trailer-drawing';
import { trailerInputs } from './trailer-inputs';
import { trailerFunctions, trailerSteps } from './trailer-steps';

const PRACTICE = 'common practice, no source';
const PLATES = 'the plates of trailer, axle, tyres, hitch and car';
const SECUREMENT = '49 CFR 393.102 to 393.110, a rule for commercial vehicles, here a yardstick';

export const trailer = defineCell({
  id: 'trailer',
  stage: 'handling',
  title: 'On the trailer',
  question: 'Where does she sit on the trailer, how much hangs on the ball, and how many straps hold her?',
  inputs: trailerInputs,
  groups: {
    'The trailer': ['empty', 'emptyTongue', 'aimShare', 'leastShare', 'mostShare'],
    'What is rated': ['grossRated', 'axleRated', 'tyreRated', 'ballRated'],
    'The bunks': ['aftBunk', 'foreBunk'],
    'The straps': ['long', 'bow', 'strapLimit', 'strapsThere'],
    'The winch': ['ramp', 'drag', 'winchRated'],
    'The road': ['broad', 'broadest'],
  },
  functions: trailerFunctions,
  steps: trailerSteps,
  answers: [
    { of: 'tongueShare', label: 'on the ball', from: 'of trailer and boat together' },
    { of: 'shift', label: 'move her forward', from: 'on the trailer, to have the share aimed at; − aft' },
    { of: 'straps', label: 'straps', from: 'from boat to trailer, besides the winch strap' },
  ],
  inWords: [
    'Boat and trailer weigh {total}; {tongue} of it hangs on the ball, {axleLoad} on the axle.',
    {
      when: 'abs(shift) < 5 mm',
      says: 'She sits where she should.',
      otherwise: {
        when: 'shift > 0 mm',
        says: 'Move her {shiftBy} forward for {aimShare}.',
        otherwise: 'Move her {shiftBy} aft for {aimShare}.',
      },
    },
    'The bunks bear {aftBears} aft and {foreBears} forward. {straps} {straps?strap holds:straps hold} her by length and weight.',
  ],
  warnings: [
    {
      when: 'tongueShare < leastShare',
      says: 'Only {tongueShare} hangs on the ball: a trailer so light in front swings behind the car, and it may lift the car’s wheels. Move her {shiftBy} forward.',
      limit: `the least share, by your entry: 5 % for a boat trailer is ${PRACTICE}`,
      weight: 'stop',
    },
    {
      when: 'tongueShare > mostShare',
      says: '{tongueShare} hangs on the ball, more than the {mostShare} you allow: move her aft, and look at what the car’s hitch bears.',
      limit: `the most share, by your entry: 15 % is ${PRACTICE}`,
      weight: 'mind',
    },
    {
      when: 'fullest > 1',
      says: 'The part nearest to its rating carries {fullest} of it: take weight off, or another trailer.',
      limit: PLATES,
      weight: 'stop',
    },
    {
      when: 'min(aftBears, foreBears) < 0 kg',
      says: 'Her balance, {balance} forward, lies beyond the bunks: she tips over one of them. Move a bunk.',
      limit: 'statics: moments about a bunk',
      weight: 'stop',
    },
    {
      when: 'strapsThere < straps',
      says: 'She asks for {straps} straps: {byLength} by her length, {byLoad} by her weight.',
      limit: SECUREMENT,
      weight: 'stop',
    },
    {
      when: 'winchPull > winchRated',
      says: 'Up this ramp the winch pulls {winchPull}, and it is rated for {winchRated}.',
      limit: 'the plate of the winch, its strap and its hook',
      weight: 'stop',
    },
    {
      when: 'broad > broadest',
      says: 'She is {broad} broad and passes the {broadest} entered for your road.',
      limit: 'the law of the place',
      weight: 'stop',
    },
  ],
  cautions: [
    'Never stand in line with the winch strap, or between trailer and car; chock the wheels before she is moved on her bunks.',
    'The weakest part rules: plates of trailer, axle, tyres, coupling and car outrank every figure here. A figure is not on the plate? Ask its maker.',
    'The winch strap and the bow’s eye are no tie-down. Straps go from the boat to the frame of the trailer, and each counts as its weakest part: strap, hook, ratchet or eye.',
    'Width, lights, brakes, chains, plates and speed: the law of the place rules.',
    'Weigh the tongue before each season: motor, fuel, water in the bilge and gear all move it.',
  ],
  sources: [
    { text: 'Shares of ball, axle and bunks: statics', known: 'geometry' },
    {
      text: 'Ratings: 49 CFR 571.3; the axles’ ratings come to the vehicle’s at least',
      known: 'published',
    },
    { text: `Straps: ${SECUREMENT}`, known: 'published' },
    {
      text: 'Five to fifteen per cent on the ball, seven to ten aimed at; bunks under frames: custom of the trade',
      known: 'common practice',
    },
  ],
  about: ['transom', 'frame'],
  draw: trailerView,
});
