/** Clamps for a glued joint: how many by pressure and by spread, in which order, and for how long. */
import { tradeQuantities } from '../../../boat/quantities/trade-quantities';
import type { Layout } from '../../../boat';
import { bendingModuli } from '../../../boat/quantities/bending-quantities';
import { partRadiusQuantities } from '../../../boat/quantities/part-radius-quantities';
import { drawing, mm, note } from '../../../drawing';
import { clampForce, clampPitch, clampTime, screwPressure, spreadTime } from '../../../trade/adhesives';
import { citation } from '../../../trade/table';
import { measures, saidAtMost } from '../../common/sizes/custom-sizes';
import { choice, defineCell, input, step } from '../../form/define';
import { firstOf } from '../../form/in-words';
import { chosenFromBoat, fromShop } from '../../form/from-boat';
import { customPitch } from '../../common/glue/clamp-pitch';
import { clampedJoint, SHOWN } from './clamps-drawing';
import { byPart, joinedAlong, partAlong, singleJoints, woodAlong } from './glued-joints';
import {
  DOUBLING,
  FILLS,
  glueCautions,
  glueQuantities,
  glues,
  glueSources,
  ofGlue,
  usualGlue,
  OPEN_TIME,
  tooCold,
} from '../../common/glue/glues';

const CUSTOM = 'common practice, no source';
const GEOMETRY = 'geometry';

const brings = (layout: Layout) => [
  ...tradeQuantities(),
  ...glueQuantities(),
  ...partRadiusQuantities(layout),
  ...bendingModuli,
];

/** From the glue cell, which knows the boat's joints. */
const ofJoint = (
  key: string,
  label: string,
  preset: string,
  [min, max]: readonly [string, string],
  note?: string,
) =>
  input('length', label, {
    from: `glue.{joint}.${key}`,
    preset,
    min,
    max,
    step: key === 'pieceLength' ? '100 mm' : '1 mm',
    ...(note === undefined ? {} : { note }),
  });

const radiusOf = (part: string, label: string) =>
  input('length', `${label}: tightest radius`, {
    when: `(${joinedAlong(part)}) and places <= 1 and radius == jointRadius`,
    from: `${part}.edgeRadius`,
    preset: '1 km',
    min: '20 mm',
    max: '1 km',
    step: '50 mm',
    note: '1 km (3280 ft) where it is straight',
  });

/** From this specific gravity on a wood counts as dense. */
const DENSE = 0.55;

/** What a glue asks of clamps: one that fills gaps to be closed, a rigid one an even pressure by the wood. */
const FILLING = `mostGap >= ${FILLS}`;
const RIGID = `mostGap < ${FILLS}`;
/** Where it bends, clamps on a run stand closer. */
const ONE_RUN = 'places <= 1';

export const clamps = defineCell({
  id: 'clamps',
  stage: 'timber',
  title: 'Clamps',
  question: 'How many clamps does this joint take, in which order do I set them, and how long do they stay?',
  inputs: {
    joint: choice('What is glued to what', { options: singleJoints, preset: 'logFrames' }),
    length: ofJoint(
      'pieceLength',
      'Length of the joint, one piece',
      '4.2 m',
      ['0 m', '400 m'],
      'all its places together',
    ),
    places: input('count', 'Places where it is glued', {
      from: 'glue.{joint}.places',
      preset: '1',
      min: '1',
      max: '100',
      step: '1',
      note: 'a solid timber: the frames and the ends; 1 for a run all along',
    }),
    pieces: input('count', 'Pieces, one glued after the other', {
      from: 'glue.{joint}.pieces',
      preset: '1',
      min: '1',
      max: '40',
      step: '1',
      note: 'the clamps are counted for one of them',
    }),
    width: ofJoint('jointWidth', 'Width of the glue face', '38 mm', ['0 mm', '1 m']),
    ply: ofJoint(
      'above',
      'Thickness above the glue',
      '19 mm',
      ['0 mm', '500 mm'],
      'of a stack, its outer layer',
    ),
    radius: input('length', 'Radius, tightest', {
      when: ONE_RUN,
      from: '{self}.jointRadius',
      preset: '5 m',
      min: '20 mm',
      max: '1 km',
      step: '50 mm',
    }),
    caul: input('length', 'Caul under the clamps', {
      preset: '18 mm',
      presetInch: '3/4 in',
      min: '0 mm',
      max: '100 mm',
      step: '1 mm',
      note: 'a strip of wood that spreads the pressure; waxed, or over film, so that it does not stick; 0 without one',
    }),
    glue: choice('Glue', { options: glues, preset: usualGlue }),
    species: chosenFromBoat('keelson.timber', {
      when: RIGID,
      fromBy: { choice: 'joint', links: woodAlong },
      label: 'Wood',
      hint: 'of the denser piece',
    }),
    gravity: input('ratio', 'Specific gravity at 12 %', {
      when: RIGID,
      from: 'timber.{species}.gravity',
      preset: '0.48',
      min: '0.1',
      max: '1.1',
      step: '0.01',
      note: 'oven-dry weight over the volume at 12 %, Wood Handbook',
    }),
    pressure: input('pressure', 'Pressure on the glue', {
      from: '{self}.usualPressure',
      preset: '60 kPa',
      min: '1 kPa',
      max: '2000 kPa',
      step: '10 kPa',
      note: 'from the sheet of the glue in hand',
    }),
    capacity: input('force', 'Force of one clamp', {
      presetInch: '700 lbf',
      preset: `${clampForce.value} N`,
      min: '50 N',
      max: '20000 N',
      step: '100 N',
      note: citation(clampForce),
    }),
    inHand: input('count', 'Clamps in hand', {
      preset: '20',
      min: '0',
      max: '500',
      step: '1',
    }),
    order: choice('Clamps are set', {
      options: [
        { id: 'middle', label: 'from the middle outward' },
        { id: 'end', label: 'from one end' },
      ],
      preset: 'middle',
      note: 'from the end where that is fixed first, as at a stem; never from both ends inward',
    }),
    shop: input('temperature', 'Temperature of the wood', {
      from: 'moisture.air',
      preset: '20 °C',
      min: '0 °C',
      max: '60 °C',
      step: '1 °C',
    }),
    spreading: input('minutes', 'Time to spread a metre (3 ft 3 in)', {
      preset: `${spreadTime.value} s`,
      min: '0 s',
      max: '1 h',
      step: '5 s',
      note: citation(spreadTime),
    }),
    each: input('minutes', 'Time to set one clamp', {
      preset: `${clampTime.value} s`,
      min: '1 s',
      max: '30 min',
      step: '5 s',
      note: `${citation(clampTime)}; try it dry, with a watch`,
    }),
    tightness: fromShop('easyFrom', { when: ONE_RUN, hint: 'where it is tighter, clamps stand closer' }),
    measures,
    screwPitch: input('length', 'Screw to screw, where screws press', {
      when: FILLING,
      from: 'fasten.pitch',
      preset: '75 mm',
      presetInch: '3 in',
      min: '10 mm',
      max: '1 m',
      step: '5 mm',
    }),
    mostGap: ofGlue('length', 'Gap the glue bridges', 'mostGap', ['0 mm', '20 mm']),
    leastPressure: ofGlue('pressure', 'Least pressure for it', 'leastPressure', ['0 kPa', '2000 kPa']),
    mostPressure: ofGlue('pressure', 'Greatest pressure for it', 'mostPressure', ['0 kPa', '3000 kPa']),
    openAt20: ofGlue('minutes', 'Time until it must be closed, at 20 °C (68 °F)', 'shortestOpen', [
      '1 min',
      '4 h',
    ]),
    clampedAt20: ofGlue('time', 'Time in the clamps, at 20 °C (68 °F)', 'longestClamped', ['0 h', '7 d']),
    coldest: ofGlue('temperature', 'Coldest it cures', 'leastTemperature', ['0 °C', '40 °C']),
    keelsonRadius: radiusOf('keelson', 'Keelson'),
    logRadius: radiusOf('chineLog', 'Chine logs'),
    clampRadius: radiusOf('sheerClamp', 'Sheer clamps'),
    railRadius: radiusOf('rubRail', 'Rub rails'),
  },
  groups: {
    'The joint': ['places', 'pieces', 'ply', 'caul'],
    'The clamps': ['capacity', 'pressure', 'order', 'screwPitch', 'measures'],
    'How fast you work': ['spreading', 'each', 'shop'],
    'The glue': ['mostGap', 'leastPressure', 'mostPressure', 'openAt20', 'clampedAt20', 'coldest'],
    'The wood': ['species', 'gravity'],
    'The bend': ['radius', 'tightness', 'keelsonRadius', 'logRadius', 'clampRadius', 'railRadius'],
  },
  steps: {
    jointRadius: step(
      'length',
      byPart({ keelson: 'keelsonRadius', log: 'logRadius', clamp: 'clampRadius', rail: 'railRadius' }),
      'tightest radius of the line along which it runs',
      GEOMETRY,
    ),
    usualPressure: step(
      'pressure',
      `mostGap >= ${FILLS} ? (leastPressure + mostPressure) / 2 : gravity >= ${DENSE} ? mostPressure : leastPressure`,
      'pressure usual for this glue and wood',
      `glues that fill gaps: the middle of their range; rigid ones: the low end on light wood, the high end on dense wood, as the handbook and a maker have it; dense from a specific gravity of ${DENSE}: ${CUSTOM}`,
    ),
    force: step('force', 'pressure * width * length', 'force on one piece', 'pressure times area'),
    byForce: step(
      'count',
      'places * ceil(force / places / capacity)',
      'clamps for that force, the same at each place',
      GEOMETRY,
    ),
    spread: step(
      'length',
      '2 * (caul + ply)',
      'length of glue line that one clamp presses',
      `pressure spreads at 45° through caul and layer: ${CUSTOM}`,
    ),
    usualPitch: step(
      'length',
      `places <= 1 and radius < tightness * ply ? ${customPitch('tight')} : ${customPitch('straight')}`,
      'clamp to clamp, usual on such a run',
      `${citation(clampPitch.straight)}; ${citation(clampPitch.tight)}`,
      'most',
    ),
    pitch: step(
      'length',
      `mostGap >= ${FILLS} ? usualPitch : max(1 mm, min(usualPitch, spread))`,
      'clamp to clamp, at most',
      'a rigid glue wants even pressure, one that fills gaps only to be closed',
      'most',
    ),
    byPitch: step(
      'count',
      'places * ceil(length / places / pitch)',
      'clamps for that spacing, one at least at each place',
      GEOMETRY,
    ),
    clamps: step('count', 'max(byForce, byPitch)', 'clamps for one piece', 'the larger of the two'),
    allClamps: step('count', 'pieces * clamps', 'clamps to glue all pieces at one time', GEOMETRY),
    atPlace: step('count', 'clamps / places', 'clamps at each place', GEOMETRY),
    evenPitch: step(
      'length',
      'clamps > 0 ? length / clamps : pitch',
      'clamp to clamp, even; half of it to each end',
      GEOMETRY,
    ),
    saidPitch: step(
      'length',
      saidAtMost('evenPitch'),
      'the same as it is said',
      'common practice: no clamp is set to the millimetre',
      'most',
    ),
    forceEach: step('force', 'clamps > 0 ? force / clamps : 0 N', 'force of each clamp', GEOMETRY),
    wanting: step('count', 'max(0, clamps - inHand)', 'clamps that are missing', GEOMETRY),
    slower: step('ratio', '2^((293.15 K - shop) / (10 K))', 'times as long as at 20 °C (68 °F)', DOUBLING),
    open: step('minutes', 'openAt20 * slower', 'time from spreading until all must be closed', DOUBLING),
    pace: step(
      'minutes',
      'spreading + each * (1 m) / evenPitch',
      'time to spread and close a metre (39 in), one person',
      'a metre (39 in) of glue, and the clamps that stand on it',
    ),
    setting: step(
      'minutes',
      'pace * length / (1 m)',
      'time to spread and close one piece, one person',
      GEOMETRY,
    ),
    goesByClamps: step(
      'count',
      'ceil(clamps / max(1, inHand))',
      'goes that the clamps in hand ask for',
      GEOMETRY,
    ),
    goesByTime: step('count', 'ceil(setting / open)', 'goes that the glue’s open time asks for', GEOMETRY),
    goes: step(
      'count',
      'max(1, goesByClamps, goesByTime)',
      'goes, if the joint is closed a stretch at a time',
      'the larger of the two',
    ),
    goLength: step('length', 'length / goes', 'stretch closed each time', GEOMETRY),
    screws: step(
      'count',
      `mostGap >= ${FILLS} ? ceil(wanting * evenPitch / screwPitch) : 0`,
      'screws that press in place of the missing clamps; none with a glue that wants pressure',
      `screws press with ${citation(screwPressure)}: enough only for a glue that fills gaps`,
    ),
    clamped: step('time', 'clampedAt20 * slower', 'time in the clamps at this temperature', DOUBLING),
  },
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
  table: {
    caption: 'What is glued to what, one piece of each',
    over: 'joint',
    only: 'clamps',
    columns: [
      { of: 'byForce', label: 'for pressure' },
      { of: 'byPitch', label: 'for spacing' },
      { of: 'clamps', label: 'clamps' },
    ],
  },
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
    ...glueCautions,
    'A bent timber under clamps is a spring: when one slips it strikes. Stand out of its line, eye protection on, and keep clear while another tightens.',
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
