/** Clamps for a glued joint: how many by pressure and by spread, in which order, and for how long. */
import type { Layout } from '../../../boat';
import { tradeQuantities } from '../../../boat/quantities/trade-quantities';
import {
  glueQuantities,
  tooCold,
  OPEN_TIME,
  FILLS,
  glueCautions,
  glueSources,
} from '../../common/glue/glues';
import { partRadiusQuantities } from '../../../boat/quantities/part-radius-quantities';
import { bendingModuli } from '../../../boat/quantities/bending-quantities';
import { clampSteps } from './clamps-steps';
import { firstOf } from '../../form/in-words';
import { drawing, mm, note } from '../../../drawing';
import { clampedJoint, SHOWN } from './clamps-drawing';
import { partAlong } from './glued-joints';
import { defineCell } from '../../form/define';
import { tableOf } from '../../form/row-quantities';
import { clampInputs } from './clamps-inputs';
import { CUSTOM } from '../../../trade/sources';

const brings = (layout: Layout) => [
  ...tradeQuantities(),
  ...glueQuantities(),
  ...partRadiusQuantities(layout),
  ...bendingModuli,
];

export const clamps = defineCell({
  id: 'clamps',
  stage: 'timber',
  title: 'Clamps',
  question: 'How many clamps does this joint take, in which order do I set them, and how long do they stay?',
  inputs: clampInputs,
  groups: {
    'The joint': ['places', 'pieces', 'ply', 'caul'],
    'The clamps': ['capacity', 'pressure', 'order', 'screwPitch', 'measures'],
    'How fast you work': ['spreading', 'each', 'shop'],
    'The glue': ['mostGap', 'leastPressure', 'mostPressure', 'openAt20', 'clampedAt20', 'coldest'],
    'The wood': ['species', 'gravity'],
    'The bend': ['radius', 'tightness', 'keelsonRadius', 'logRadius', 'clampRadius', 'railRadius'],
  },
  steps: clampSteps,
  answers: [
    { of: 'clamps', label: 'clamps', from: 'on one piece' },
    {
      of: 'evenPitch',
      label: 'clamp to clamp',
      from: 'along the joint; the first half of it from the end',
      when: 'places <= 1',
      tolerance: '10 mm',
    },
    {
      of: 'clamped',
      label: 'in the clamps',
      from: 'at this temperature, before anything pulls at the joint',
    },
  ],
  inWords: {
    when: 'clamps <= 0',
    says: 'There is no such joint here, so there is nothing to clamp.',
    otherwise: [
      { when: 'pieces > 1', says: 'Each of the {pieces} pieces takes', otherwise: 'The joint takes' },
      '{clamps} clamps,',
      { when: 'places > 1', says: '{atPlace} at each of {places} places', otherwise: '{saidPitch} apart' },
      firstOf(
        [
          {
            when: 'wanting > 0',
            says: [
              ', and you have {inHand}.',
              {
                when: 'places > 1',
                says: 'Glue a few places at a time.',
                otherwise: [
                  'Close it {goLength} at a time, or',
                  {
                    when: 'screws > 0',
                    says: 'drive {screws} screws in place of the missing clamps.',
                    otherwise: 'borrow {wanting}: screws do not press enough for this glue.',
                  },
                ],
              },
            ],
          },
          { when: 'places > 1', says: '.' },
          { when: 'byForce > byPitch', says: ': so many for the pressure, {forceEach} from each.' },
        ],
        ': so many to press it evenly; the pressure alone needs {byForce}.',
      ),
      'Leave them for {clamped}.',
    ],
  },
  table: tableOf({
    caption: 'What is glued to what, one piece of each',
    over: 'joint',
    only: 'clamps',
    columns: [
      { of: 'byForce', label: 'for pressure' },
      { of: 'byPitch', label: 'for spacing' },
      { of: 'clamps', label: 'clamps' },
    ],
  }),
  warnings: [
    tooCold,
    {
      when: 'setting > open',
      says: 'To spread the glue and set the clamps takes {setting}, and all must be closed within {open}. Close {goLength} at a time, get more hands, or take a slower glue.',
      limit: OPEN_TIME,
      weight: 'mind',
    },
    {
      when: 'pressure < leastPressure or pressure > mostPressure',
      says: 'A pressure of {pressure} is outside the range of this glue, {leastPressure} to {mostPressure}.',
      limit: 'the glue’s range; common practice, the sheet rules',
      weight: 'mind',
    },
    {
      when: `mostGap < ${FILLS} and width > spread`,
      says: 'One row of clamps presses {spread} across, and the face is {width} wide: set them by turns from both edges, or use a thicker caul.',
      limit: `45° through caul and layer: ${CUSTOM}`,
      weight: 'mind',
    },
    {
      when: 'wanting > 0',
      says: 'You are {wanting} clamps short.',
      limit: 'the clamps in hand',
      weight: 'mind',
    },
  ],
  cautions: [
    'A bent timber under clamps is a spring: when one slips it strikes. Stand out of its line, eye protection on, and keep clear while another tightens.',
    ...glueCautions,
    'Clamp it dry first, all of it, with the watch running. Tighten lightly along the whole run, then once more: too much squeezes a joint of epoxy dry.',
    'If you close it a stretch at a time, spread no farther than the clamps reach, and keep the rest open and clean.',
    'Leave glued timbers in the clamps overnight: common practice, no source.',
  ],
  sources: [
    ...glueSources,
    {
      text: 'C. R. Frihart, USDA Forest Products Laboratory, on epoxy bonds of wood: low pressure, gaps filled',
      known: 'published',
    },
    {
      text: 'Force of a clamp, spread of 45°, spacing on straight runs and tight curves, pressure of screws, overnight',
      known: 'common practice',
    },
  ],
  about: ['{joint}'],
  brings,

  draw: (v, on) => {
    const say = (metres: number) => on.say(metres, 'length');
    const from = v.order === 'end' ? 'end' : 'middle';
    const seats = v.places > 1;
    const clamps = seats ? v.atPlace : v.clamps;
    const count = on.say(clamps, 'count');
    // A joint that the boat has not is drawn with a length that can be seen.
    const length = v.length > 0 ? v.length / v.places : 0.1;
    const order = from === 'end' ? 'from one end' : 'from the middle outward';
    const these = `${count} ${clamps === 1 ? 'clamp' : 'clamps'}`;
    const apart = clamps > 1 ? `${these} ${say(v.evenPitch)} apart` : these;
    const where = seats
      ? `${apart} at one place, on ${say(length)} of glue`
      : `${apart} over ${say(length)}, set ${order}`;
    return drawing({
      title: seats ? 'Clamps at one place' : 'Clamps in the order in which they are set',
      says: `${where}; each presses ${say(v.spread)} of the glue, through ${say(v.caul)} of caul and ${say(v.ply)} of wood.`,
      shapes: [
        clampedJoint(
          {
            length: mm(length),
            clamps,
            pitch: mm(v.evenPitch),
            ply: mm(v.ply),
            caul: mm(v.caul),
            from,
          },
          partAlong(v.joint),
          { pitch: say(v.evenPitch), ply: say(v.ply), caul: say(v.caul) },
        ),
        note(
          clamps > SHOWN
            ? `The first ${SHOWN} of ${count}, laid out straight; go on in the same way. Slanting lines: what a clamp presses.`
            : 'Laid out straight. Slanting lines: what a clamp presses.',
        ),
      ],
    });
  },
});
