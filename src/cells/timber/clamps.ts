/** Clamps for a glued joint: how many by pressure and by spread, in which order, and for how long. */
import type { Layout } from '../../boat';
import { partRadiusQuantities } from '../../boat/part-radius-quantities';
import { drawing, mm, note } from '../../drawing';
import { clampForce, clampPitch, screwPressure } from '../../trade/adhesives';
import { citation } from '../../trade/table';
import { choice, defineCell, input, step } from '../define';
import { clampedJoint, SHOWN } from './clamps-picture';
import { DOUBLING, FILLS, glueCautions, glueQuantities, glues, glueSources } from './glues';

const CUSTOM = 'common practice, no source';
const GEOMETRY = 'geometry';

const brings = (layout: Layout) => [...glueQuantities(), ...partRadiusQuantities(layout)];

const ofGlue = (
  kind: 'length' | 'pressure' | 'minutes' | 'time' | 'temperature',
  label: string,
  column: string,
  preset: string,
  max: string,
) =>
  input(kind, label, {
    seldom: true,
    from: `adhesive.{glue}.${column}`,
    preset,
    min: kind === 'temperature' ? '0 °C' : '0',
    max,
    note: 'from the sheet of the glue in hand',
  });

const ofPart = (key: 'width' | 'thickness' | 'length', label: string, preset: string, max: string) =>
  input('length', label, {
    from: `{part}.${key}`,
    preset,
    min: key === 'length' ? '50 mm' : '2 mm',
    max,
    step: key === 'length' ? '100 mm' : '1 mm',
  });

export const clamps = defineCell({
  id: 'clamps',
  stage: 'timber',
  title: 'Clamps',
  question: 'How many clamps does this joint take, in which order do I set them, and how long do they stay?',
  inputs: {
    part: choice('What is glued down', {
      options: [
        { id: 'keelson', label: 'keelson, or its outer layer' },
        { id: 'chineLog', label: 'chine log' },
        { id: 'sheerClamp', label: 'sheer clamp' },
        { id: 'rubRail', label: 'rub rail' },
      ],
      preset: 'keelson',
    }),
    length: ofPart('length', 'Length of the joint', '4.2 m', '100 m'),
    width: ofPart('width', 'Width of the glue face', '90 mm', '1 m'),
    ply: {
      ...ofPart('thickness', 'Thickness above the glue line', '18 mm', '300 mm'),
      note: 'of a stack, its outer layer',
    },
    radius: input('length', 'Radius, tightest', {
      seldom: true,
      from: '{part}.edgeRadius',
      preset: '5 m',
      min: '20 mm',
      max: '1 km',
      step: '50 mm',
    }),
    caul: input('length', 'Strip of wood under the clamps', {
      preset: '18 mm',
      min: '0 mm',
      max: '100 mm',
      step: '1 mm',
      note: '0 without one; waxed, or with film between, so that it does not stay',
    }),
    glue: choice('Glue', { options: glues, preset: 'epoxy' }),
    hardness: choice('Wood', {
      seldom: true,
      options: [
        { id: 'soft', label: 'softwood' },
        { id: 'hard', label: 'hardwood' },
      ],
      preset: 'soft',
    }),
    pressure: input('pressure', 'Pressure on the glue', {
      seldom: true,
      from: '{self}.usualPressure',
      preset: '60 kPa',
      min: '1 kPa',
      max: '2000 kPa',
      step: '10 kPa',
      note: 'from the sheet of the glue in hand',
    }),
    capacity: input('force', 'Force of one clamp', {
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
      max: '45 °C',
      step: '1 °C',
    }),
    each: input('minutes', 'Time to set one clamp', {
      seldom: true,
      preset: '30 s',
      min: '1 s',
      max: '30 min',
      step: '5 s',
      note: 'try it dry, with a watch',
    }),
    tightness: input('number', 'Tight below, in thicknesses', {
      seldom: true,
      preset: '300',
      min: '50',
      max: '1000',
      step: '10',
      note: 'radius over thickness from which a bend asks for closer clamps: common practice, no source',
    }),
    screwPitch: input('length', 'Screw to screw, where screws press', {
      seldom: true,
      from: 'fasten.pitch',
      preset: '75 mm',
      min: '10 mm',
      max: '1 m',
      step: '5 mm',
    }),
    mostGap: ofGlue('length', 'Gap the glue bridges', 'mostGap', '3 mm', '20 mm'),
    leastPressure: ofGlue('pressure', 'Least pressure for it', 'leastPressure', '20 kPa', '2000 kPa'),
    mostPressure: ofGlue('pressure', 'Greatest pressure for it', 'mostPressure', '100 kPa', '3000 kPa'),
    openAt20: ofGlue('minutes', 'Time until it must be closed, at 20 °C', 'shortestOpen', '20 min', '4 h'),
    clampedAt20: ofGlue('time', 'Time in the clamps, at 20 °C', 'longestClamped', '24 h', '7 d'),
    coldest: ofGlue('temperature', 'Coldest it cures', 'leastTemperature', '10 °C', '40 °C'),
  },
  steps: {
    usualPressure: step(
      'pressure',
      `mostGap >= ${FILLS} ? (leastPressure + mostPressure) / 2 : hardness == "hard" ? mostPressure : leastPressure`,
      'pressure usual for this glue and wood',
      'glues that fill gaps: the middle of their range; rigid ones: the low end on softwood, the high end on hardwood, as the handbook and a maker have it',
    ),
    force: step('force', 'pressure * width * length', 'force on the whole joint', 'pressure times area'),
    byForce: step('count', 'ceil(force / capacity)', 'clamps for that force', GEOMETRY),
    spread: step(
      'length',
      '2 * (caul + ply)',
      'length of glue line that one clamp presses',
      `pressure spreads at 45° through strip and layer: ${CUSTOM}`,
    ),
    usualPitch: step(
      'length',
      `radius < tightness * ply ? ${mm(clampPitch.tight.value)} mm : ${mm(clampPitch.straight.value)} mm`,
      'clamp to clamp, usual on such a run',
      `${citation(clampPitch.straight)}; ${citation(clampPitch.tight)}`,
    ),
    pitch: step(
      'length',
      `mostGap >= ${FILLS} ? usualPitch : min(usualPitch, spread)`,
      'clamp to clamp, at most',
      'a rigid glue wants even pressure, one that fills gaps only to be closed',
    ),
    byPitch: step('count', 'ceil(length / pitch)', 'clamps for that spacing', GEOMETRY),
    clamps: step('count', 'max(byForce, byPitch)', 'clamps for the joint', 'the larger of the two'),
    evenPitch: step('length', 'length / clamps', 'clamp to clamp, even; half of it to each end', GEOMETRY),
    forceEach: step('force', 'force / clamps', 'force of each clamp', GEOMETRY),
    wanting: step('count', 'max(0, clamps - inHand)', 'clamps wanting', GEOMETRY),
    goes: step(
      'count',
      'ceil(clamps / max(1, inHand))',
      'times to glue, if the joint is closed a stretch at a time',
      GEOMETRY,
    ),
    goLength: step('length', 'length / goes', 'stretch closed each time', GEOMETRY),
    screws: step(
      'count',
      `mostGap >= ${FILLS} ? ceil(wanting * evenPitch / screwPitch) : 0`,
      'screws that press in the place of the clamps wanting; none with a glue that wants pressure',
      `screws press with ${citation(screwPressure)}: enough only for a glue that fills gaps`,
    ),
    slower: step('ratio', '2^((293.15 K - shop) / (10 K))', 'times as long as at 20 °C', DOUBLING),
    open: step('minutes', 'openAt20 * slower', 'time from spreading until all must be closed', DOUBLING),
    setting: step(
      'minutes',
      'clamps / goes * each',
      'time to set the clamps of one go, one person',
      GEOMETRY,
    ),
    clamped: step('time', 'clampedAt20 * slower', 'time in the clamps at this temperature', DOUBLING),
  },
  answers: [
    { of: 'clamps', label: 'clamps', from: 'on the whole joint, evenly spaced' },
    {
      of: 'evenPitch',
      label: 'clamp to clamp',
      from: 'along the joint; the first half of it from the end',
      tolerance: '10 mm',
    },
    {
      of: 'clamped',
      label: 'in the clamps',
      from: 'at this temperature, before anything pulls at the joint',
    },
  ],
  inWords: [
    {
      when: 'wanting > 0 and screws > 0',
      says: '{clamps} clamps, {evenPitch} apart, and {inHand} in hand: close it in {goes} goes of {goLength}, or let {screws} screws press where clamps are wanting. Leave it for {clamped}.',
    },
    {
      when: 'wanting > 0',
      says: '{clamps} clamps, {evenPitch} apart, and {inHand} in hand: close it in {goes} goes of {goLength}, or borrow {wanting}. Screws do not press enough for this glue. Leave it for {clamped}.',
    },
    {
      when: 'byForce > byPitch',
      says: '{clamps} clamps, {evenPitch} apart: the pressure decides, {forceEach} from each. Leave them for {clamped}.',
    },
    {
      says: '{clamps} clamps, {evenPitch} apart: the spacing decides; {byForce} would do for the force. Leave them for {clamped}.',
    },
  ],
  table: {
    caption: 'The long parts, one by one',
    over: 'part',
    columns: [
      { of: 'byForce', label: 'for force' },
      { of: 'byPitch', label: 'for spacing' },
      { of: 'clamps', label: 'clamps' },
    ],
  },
  warnings: [
    {
      when: 'shop < coldest',
      says: 'At {shop} this glue may never cure: it asks for {coldest} at least, in the wood and until it is hard.',
      limit: 'the glue’s least temperature; common practice, the sheet rules',
      weight: 'stop',
    },
    {
      when: 'setting > open',
      says: 'Setting the clamps takes {setting}, and the glue must be closed in {open}: more hands, fewer clamps at a time, or a slower glue.',
      limit: 'the glue’s shortest open time; common practice, the sheet rules',
      weight: 'stop',
    },
    {
      when: 'pressure < leastPressure or pressure > mostPressure',
      says: 'A pressure of {pressure} is outside what this glue is pressed with, {leastPressure} to {mostPressure}.',
      limit: 'the glue’s range; common practice, the sheet rules',
      weight: 'mind',
    },
    {
      when: `mostGap < ${FILLS} and width > spread`,
      says: 'One row of clamps presses a strip {spread} wide, and the face is {width}: set them by turns from both edges, or use a thicker strip.',
      limit: `45° through strip and layer: ${CUSTOM}`,
      weight: 'mind',
    },
    {
      when: 'wanting > 0',
      says: '{wanting} clamps are wanting.',
      limit: 'the clamps in hand',
      weight: 'mind',
    },
  ],
  cautions: [
    ...glueCautions,
    'A bent timber under clamps is a spring: when one slips it strikes. Stand out of its line, eye protection on, and keep clear while another tightens.',
    'Clamp it dry first, all of it, with the watch running. Tighten lightly along the whole run, then once more: too much squeezes a joint of epoxy dry.',
    'Closed a stretch at a time: spread no farther than the clamps reach, and keep the rest open and clean.',
    'Glued timbers stay in the clamps overnight, and one never has too many clamps: common practice, no source.',
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
  lights: ['{part}'],
  brings,

  draw: (v, on) => {
    const say = (metres: number) => on.say(metres, 'length');
    const from = v.order === 'end' ? 'end' : 'middle';
    const count = on.say(v.clamps, 'count');
    return drawing({
      title: 'Clamps in the order in which they are set',
      says: `${count} clamps ${say(v.evenPitch)} apart over ${say(v.length)}, set ${from === 'end' ? 'from one end' : 'from the middle outward'}; each presses ${say(v.spread)} of the glue line, through ${say(v.caul)} of strip and ${say(v.ply)} of wood.`,
      shapes: [
        clampedJoint(
          {
            length: mm(v.length),
            clamps: v.clamps,
            pitch: mm(v.evenPitch),
            ply: mm(v.ply),
            caul: mm(v.caul),
            from,
          },
          v.part,
          { pitch: say(v.evenPitch), ply: say(v.ply), caul: say(v.caul) },
        ),
        note(
          v.clamps > SHOWN
            ? `The first ${SHOWN} of ${count}, laid out straight; go on in the same way. Slanting lines: what a clamp presses.`
            : 'Laid out straight. Slanting lines: what a clamp presses.',
        ),
      ],
    });
  },
});
