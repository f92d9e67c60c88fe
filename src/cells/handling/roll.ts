/** Roll: the hull turned over, over her own edge or in two rope cradles: what it takes, and what must hold her. */
import { defineCell } from '../form/define';
import { drawRoll, rollChart } from './roll-drawing';
import { rollInputs } from './roll-inputs';
import { LIFTING, rollFunctions, rollSteps } from './roll-steps';

const PRACTICE = 'common practice, no source';
const ROPE =
  'a guideline of rope makers, by the share and the factor that stand entered; the maker’s sheet outranks it';

export const roll = defineCell({
  id: 'roll',
  stage: 'handling',
  title: 'Turning her over',
  question:
    'How hard is it to turn her over, where does she stand in balance, and what must hold her after that?',
  inputs: rollInputs,
  groups: {
    'The hands': ['handsOut', 'handsHigh', 'travel', 'turnAside', 'hold', 'rate'],
    'The rope': ['rope', 'ropeSize', 'knotTakes', 'ropeFactor', 'askew', 'turns', 'grips', 'drags'],
    'The cradles': ['centreForward', 'aftRope', 'foreRope', 'posts', 'postHigh', 'clear'],
    'The room': ['ceiling', 'floorFree', 'doorBroad', 'doorHigh'],
  },
  functions: rollFunctions,
  steps: rollSteps,
  answers: [
    {
      of: 'handForce',
      label: 'at her far sheer',
      from: 'square to the line from what bears, at this angle; − held back',
    },
    {
      of: 'balanceAngle',
      label: 'in balance',
      from: 'turned so far over her edge from lying upside down; beyond it she falls by herself',
      when: 'way == "edge"',
    },
    { of: 'ropeLoad', label: 'in the rope', from: 'in the hardest pulled part of it' },
  ],
  inWords: [
    {
      when: 'way == "edge"',
      says: [
        'To begin with {heaviest} hang at her far sheer: {people} {people?person:people} by the lifting guide. She stands in balance at {balanceAngle}.',
        {
          when: 'held > 0 kg',
          says: [
            'Then she falls by herself, {fall} till her side meets the floor at {landingAngle},',
            {
              when: 'restAngle - landingAngle > 0.5°',
              says: 'and on to {restAngle}.',
              otherwise: 'and there she rests.',
            },
            'The rope that holds her back bears {checkLoad}; behind {turns} turns round a post the hand holds {tail}.',
          ],
        },
      ],
      otherwise: [
        'The ropes lie {aftPlace} and {forePlace} forward of the after end of her bottom and bear {aftBears} and {foreBears}; the hardest pulled leg bears {legPull}.',
        {
          when: 'atSheer >= 0 kg',
          says: 'It takes {atSheerSize} at her sheer to turn her on.',
          otherwise: 'She goes on by herself: {atSheerSize} hold her back.',
        },
        {
          when: 'slipAngle < 180°',
          says: 'From {slipAngle} on friction no longer holds her for certain.',
        },
      ],
    },
    'She needs {roomUp} of height, and {roomAcross} of floor to roll right over.',
  ],
  warnings: [
    {
      when: 'way == "edge" and people > 4',
      says: 'By the guide it takes {people} people, and more than four rarely lift as one: take rope and blocks, or the cradles.',
      limit: `${LIFTING}; HSE on teams`,
      weight: 'mind',
    },
    {
      when: 'way == "edge" and angle > balanceAngle - 5° and angle < restAngle + 1°',
      says: 'At {balanceAngle} she stands in balance, and past it she goes by herself: no hands on her now. Only the rope holds her, and she is not left here.',
      limit: `from 5° before the balance until she rests; ${PRACTICE}`,
      weight: 'stop',
    },
    {
      when: 'ropeLoad > ropeBears',
      says: 'The rope is pulled by {ropeLoad}, and knotted it is good for {ropeBears}: take a thicker one.',
      limit: ROPE,
      weight: 'stop',
    },
    {
      when: 'way == "ropes" and legLean > 45°',
      says: 'A leg leans {legLean} out of plumb: it is pulled half as hard again as a plumb one, and more. Set the posts closer, or the ropes higher.',
      limit: `45° out of plumb; ${PRACTICE}`,
      weight: 'stop',
    },
    {
      when: 'way == "ropes" and runs > grips',
      says: 'The forward rope runs out under her bow: clamp a plank across her ahead of it, and stretch a line above from it to the after rope that bears {stay}.',
      limit: 'friction against the slope of her girth, with the friction that stands entered',
      weight: 'stop',
    },
    {
      when: 'way == "ropes" and (centreForward < aftPlace or centreForward > forePlace)',
      says: 'Her centre, {centreForward} forward, lies beyond the ropes at {aftPlace} and {forePlace}: she tips out of them.',
      limit: 'statics: moments about a rope',
      weight: 'stop',
    },
    {
      when: 'roomUp > ceiling',
      says: 'On the way over she is {roomUp} high, and the ceiling is at {ceiling}.',
      limit: 'geometry',
      weight: 'stop',
    },
    {
      when: 'way == "edge" and roomAcross > floorFree',
      says: 'Rolled right over she takes {roomAcross} of floor, and only {floorFree} is free: lift her back when she stands on her side.',
      limit: 'geometry',
      weight: 'mind',
    },
    {
      when: 'doorSpare < 0 mm',
      says: 'She does not go through the doorway, however she is leaned.',
      limit: 'geometry: her outline seen from ahead, without rails and motor',
      weight: 'mind',
    },
  ],
  cautions: [
    'Nobody stands on the side to which she falls, and no foot or hand goes under her. From the balance on a rope holds her, never a person.',
    'In the ropes too a line at her sheer holds her all the way: friction lets go without notice. One leads and alone gives the word. Clear the floor on both sides first, wear gloves and firm shoes, chock the edge that she turns on, and chock her at once where she stops.',
    'The guide for lifting is for a steady load with handles and good footing. Loads that slide, rock or are shared lie outside it: take its number as the least care, and blocks or a hired crane instead of more people.',
    'Ropes: maker’s sheet and the rules of the place outrank the figures here. New rope, no knots in the middle, pads on sharp edges, no jerk. Posts and what they stand in must bear the pull: ask somebody licensed to rig where you can’t tell.',
    'She is taken as stiff, and turned about one section, the widest. Brace her across the sheer before she leaves the jig.',
  ],
  sources: [
    { text: 'Turning over an edge, two ropes, sideways balance: statics', known: 'geometry' },
    { text: `What one person lifts: ${LIFTING}, for work of up to an hour`, known: 'published' },
    { text: 'Teams: HSE, two thirds of the sum for two, half for three', known: 'published' },
    { text: 'Rope round a body: L. Euler, 1769', known: 'published' },
    {
      text: 'What rope breaks at: a seamanship course; factor and knots: a guideline of rope makers',
      known: 'published',
    },
    {
      text: 'Friction of rope on wood; planks and a taut line at the bow rope; a box’s radius of gyration: custom of the trade',
      known: 'common practice',
    },
  ],
  about: ['sheer', 'hull'],
  lies: 'lies',
  draw: drawRoll,
  chart: rollChart,
});
