/** Lift: one end of the hull raised by a long timber over a block, a bite at a time, until the jig comes out whole. */
import { defineCell } from '../form/define';
import { liftView } from './lift-drawing';
import { liftInputs } from './lift-inputs';
import { liftFunctions, liftSteps } from './lift-steps';

const PRACTICE = 'common practice, no source';
const HANDBOOK = 'Wood Handbook, USDA FPL-GTR-190 (2010), Tables 5-3a and 5-5b';
const LEVER = 'the lever: moments about the block';

export const lift = defineCell({
  id: 'lift',
  stage: 'handling',
  title: 'Lifting by lever and blocks',
  question: 'How hard do I push on the lever, how far does each push lift, and how many does it take?',
  inputs: liftInputs,
  functions: liftFunctions,
  groups: {
    'The hull': ['span', 'centre', 'stands'],
    'The packing': ['packing', 'room', 'base'],
    'The lever’s wood': ['species', 'breadth', 'depth', 'rupture', 'leverShare'],
    'The hands': ['drop', 'onePush'],
  },
  steps: liftSteps,
  answers: [
    {
      of: 'push',
      label: 'push down',
      from: 'at the lever’s long end, as a weight hung there',
    },
    { of: 'rise', label: 'lifted by each push', from: 'at the lifting place, straight up' },
    { of: 'bites', label: 'pushes in all', from: 'at both ends by turns, each packed before the next' },
  ],
  inWords: [
    'This end bears {load}, {loadShare} of the hull; the other end keeps {stays}.',
    {
      when: 'people > 1',
      says: 'It takes {push} at the long end: {people} people.',
      otherwise: 'It takes {push} at the long end: one person.',
    },
    'Each push lifts {rise}: slip {packed} under, let her down on it, and go to the other end. To bring her up by {gained} takes {bitesEnd} {bitesEnd?push:pushes} at each end.',
  ],
  warnings: [
    {
      when: 'people > 2',
      says: '{push} is a push for {people} people, and no more than two find room on one lever: move the block nearer to the hull, or take a longer lever.',
      limit: `two people on a lever, each as you entered; ${PRACTICE}`,
      weight: 'mind',
    },
    {
      when: 'rise - room < packing',
      says: 'A push of {drop} lifts {rise}: no room for a packing of {packing}. Take thinner packing, or more pushes with {packed}.',
      limit: LEVER,
      weight: 'mind',
    },
    {
      when: 'handLow < 0 mm',
      says: 'The long end meets the floor before it has gone down by {drop}: stand the block on another, or push less far.',
      limit: LEVER,
      weight: 'stop',
    },
    {
      when: 'stress > strength',
      says: 'The lever is bent to {stress} over its block, and {leverShare} of what breaks it is {strength}: take a deeper timber, on edge.',
      limit: `the share of rupture that you allow; rupture: ${HANDBOOK}`,
      weight: 'stop',
    },
    {
      when: 'stack > 3 * base',
      says: 'The stack ends {stack} high on a base of {base}: more than three times as high as it is wide. Lay it wider, and crossed, course over course.',
      limit: 'three times the least side of the base: guides for shoring by rescuers, from memory',
      weight: 'stop',
    },
  ],
  cautions: [
    'No hand, foot or knee goes under her while the lever holds her: push the packing in with a stick, and stand clear of the lever’s end. A lever that slips flies up.',
    'Before the first push every screw, clamp and leg between hull and jig is out. What was forgotten tears, or drops her on the other side.',
    'One end at a time and no more than one packing higher than the other; chock the end that stays so that she can’t slide.',
    'Lift under a frame or the transom, with a pad as wide as the timber: between frames the skin gives way.',
  ],
  sources: [
    { text: 'Shares of two supports, and the lever: statics', known: 'geometry' },
    { text: `Modulus of rupture: ${HANDBOOK}`, known: 'published' },
    {
      text: 'A stack of crossed blocks no higher than three times its least side: guides for shoring by rescuers',
      known: 'from memory',
    },
    {
      text: 'What one person pushes down, a quarter of rupture for a lever that holds a load: custom of the trade',
      known: 'common practice',
    },
  ],
  about: ['frame', 'transom'],
  draw: liftView,
});
