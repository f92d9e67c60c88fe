/** The rolling bevel of a chine log: what is planed off it at marks from one end to the other. */
import { attempt } from '../../boat';
import { drawing, mm, note } from '../../drawing';
import { isIssue } from '../../measure';
import { type Chart, choice, defineCell, input, type OnHand, step } from '../form/define';
import { words } from '../form/in-words';
import { tell } from '../form/fact';
import { along, corner, log, type LogAsked, marks, place } from './rolling-bevel-facts';
import { MOST_MARKS } from '../common/frame/marks-along';
import { pastTheSaw } from './saw-tilt';
import { fromBoat } from '../form/from-boat';
import { tableOf } from '../form/row-quantities';
import { logSection } from './log-drawing';
import { GEOMETRY } from '../../trade/sources';

const OUTER = { when: 'bottomBevel >= 0°', says: 'outer', otherwise: 'inner' };
const INNER = { when: 'bottomBevel >= 0°', says: 'inner', otherwise: 'outer' };
const MARK_UNDER = words`Mark on the ${OUTER} face a line {bottomOff} up from the lower edge; plane the under face to it and keep its ${INNER} edge.`;
const MARKED = { when: 'sideBevel >= 0°', says: 'on the under face', otherwise: 'on top' };
const KEPT = { when: 'sideBevel >= 0°', says: 'upper', otherwise: 'lower' };
const MARK_OUTER = words`Mark ${MARKED} a line {sideOff} from the outer edge; plane the outer face to it and keep its ${KEPT} edge.`;

export const rollingBevel = defineCell({
  id: 'rollingBevel',
  stage: 'frames',
  title: 'Rolling bevel of a chine log',
  question: 'What do I plane off the chine log, mark by mark, so that side and bottom both lie on it?',
  inputs: {
    chine: choice('Chine', { options: 'chines', preset: 'chine' }),
    end: choice('Measured from', {
      options: [
        { id: 'aft', label: 'after end' },
        { id: 'fore', label: 'forward end' },
      ],
      preset: 'aft',
      note: 'always the same end, on port and starboard log alike',
    }),
    lies: choice('How the log lies', {
      options: [
        { id: 'side', label: 'flat on the side' },
        { id: 'bottom', label: 'flat on the bottom' },
        { id: 'upright', label: 'upright' },
      ],
      preset: 'side',
      note: 'flat on one panel only one face is planed; upright, both are, and each loses less',
    }),
    interval: input('length', 'From mark to mark', {
      preset: '150 mm',
      presetInch: '6 in',
      min: '20 mm',
      max: '1 m',
      step: '10 mm',
      note: '6 to 8 in (150 to 200 mm) between notches filed as depth guides; common practice, no source',
    }),
    at: input('length', 'This mark from that end', {
      preset: '1.5 m',
      presetInch: '60 in',
      min: '0 mm',
      max: '45 m',
      step: '10 mm',
      note: 'along the bent log, at the chine; type any other place',
    }),
    flare: input('angle', 'Side off plumb, square to the log', {
      from: '{self}.hullFlare',
      preset: '20 deg',
      min: '-60 deg',
      max: '85 deg',
      step: '0.5 deg',
      note: '+ outward; where the log runs aslant it is not the flare of the frame',
    }),
    deadrise: input('angle', 'Bottom off level, square to the log', {
      from: '{self}.hullDeadrise',
      preset: '0 deg',
      min: '-40 deg',
      max: '85 deg',
      step: '0.5 deg',
      note: '+ where the bottom rises outboard; where the log runs aslant it is not the deadrise of the frame',
    }),
    logThickness: fromBoat('chineLog.thickness', { hint: 'the smaller side of its section' }),
    logWidth: fromBoat('chineLog.width', { hint: 'the larger side: the face that lies flat on a panel' }),
  },
  groups: {
    'The marks': ['end', 'interval'],
    'The chine log': ['logThickness', 'logWidth'],
  },
  steps: {
    logLength: tell(log, 'length', 'length of the chine, along its bend', ({ length }) => length),
    place: tell(place, 'choice', 'where on the boat that is', (words) => words),
    hullFlare: tell(corner, 'angle', 'side off plumb, square to the log', ({ flare }) => flare),
    hullDeadrise: tell(corner, 'angle', 'bottom off level, square to the log', ({ deadrise }) => deadrise),
    angle: step(
      'angle',
      '90° + flare + deadrise',
      'angle between side and bottom inside the hull: a gauge on the two outer faces of the log',
      GEOMETRY,
    ),
    lean: step(
      'angle',
      'lies == "side" ? flare : lies == "bottom" ? -deadrise : 0°',
      'lean of the log itself, + with its top outboard',
      GEOMETRY,
    ),
    sideBevel: step('angle', 'flare - lean', 'bevel of the outer face, off square', GEOMETRY),
    bottomBevel: step('angle', 'deadrise + lean', 'bevel of the under face, off square', GEOMETRY),
    tall: step(
      'length',
      'lies == "bottom" ? logThickness : logWidth',
      'height of the log as it lies, up its outer face',
      GEOMETRY,
    ),
    deep: step(
      'length',
      'lies == "bottom" ? logWidth : logThickness',
      'depth of the log as it lies, inward from its outer face',
      GEOMETRY,
    ),
    sideOff: step(
      'length',
      'tall * tan(min(abs(sideBevel), 85°))',
      'planed off at the outer face, measured in from it: on the under face where its bevel is +, else on top',
      `${GEOMETRY}; a steeper bevel is counted as 85°`,
    ),
    bottomOff: step(
      'length',
      'deep * tan(min(abs(bottomBevel), 85°))',
      'planed off at the under face, measured up from it: on the outer face where its bevel is +, else on the inner',
      `${GEOMETRY}; a steeper bevel is counted as 85°`,
    ),
    onLog: step('count', 'at <= logLength + 0.1 mm ? 1 : 0', 'whether the mark lies on the log', GEOMETRY),
    reach: step('length', `${MOST_MARKS} * interval`, 'where the list of marks ends', GEOMETRY),
  },
  answers: [
    {
      of: 'angle',
      label: 'side to bottom',
      from: 'gauge across the log’s outer and under faces, square to its length',
      tolerance: '0.5 deg',
    },
    {
      of: 'bottomOff',
      label: 'off the under face',
      from: 'up from the sawn under face: on the outer face where the corner is wider than square, else on the inner',
      tolerance: '0.5 mm',
    },
    {
      of: 'sideOff',
      label: 'off the outer face',
      from: 'in from the sawn outer face: on the under face where the side leans out more than the log, else on top',
      tolerance: '0.5 mm',
    },
  ],
  inWords: [
    '{at} from the {end}, {place}:',
    { when: 'lies == "side"', says: ['the outer face lies on the side as it was sawn.', MARK_UNDER] },
    { when: 'lies == "bottom"', says: ['the under face lies on the bottom as it was sawn.', MARK_OUTER] },
    { when: 'lies == "upright"', says: ['mark both lines before you plane either.', MARK_UNDER, MARK_OUTER] },
    'The gauge across both faces reads {angle}.',
  ],
  table: tableOf({
    caption: 'Marks along the log: running distances from one end',
    over: 'at',
    rows: marks,
    columns: [
      { of: 'at', label: 'from the end' },
      { of: 'angle', label: 'side to bottom' },
      { of: 'bottomOff', label: 'off the under face' },
      { of: 'sideOff', label: 'off the outer face' },
    ],
  }),
  warnings: [
    {
      when: 'onLog < 1',
      says: 'The mark is {at} from the end, and the log only {logLength} long. The angles are those of its other end.',
      limit: GEOMETRY,
      weight: 'stop',
    },
    {
      when: 'bottomOff > tall or sideOff > deep',
      says: 'Here the bevel takes more than the log has. Set the log upright, so that both faces share the angle, or start from a wider piece.',
      limit: GEOMETRY,
      weight: 'stop',
    },
    pastTheSaw('max(abs(sideBevel), abs(bottomBevel)) > 45°', 'take the bulk off with a drawknife or an axe'),
    {
      when: 'reach < logLength',
      says: 'A hundred marks end {reach} from the end and the log is {logLength} long: take a wider interval, or list the rest from the other end.',
      limit: 'the list holds a hundred marks',
      weight: 'mind',
    },
  ],
  cautions: [
    'Punch nails and screws well under before you plane. A plane iron that meets one is spoiled; a power plane throws the pieces.',
    'Plane the log after it is bent in and fastened to the frames, or plane it proud on the bench: bent, it twists, and the twist alters the bevel a little.',
    'File a notch to the depth at every mark, then plane from notch to notch. A hollow between two good frames is found with a straight stick laid from the log to the keelson.',
  ],
  sources: [
    { text: 'Angle of a corner from the normals of the two panels, square to the chine', known: 'geometry' },
    {
      text: 'Notches filed every 6 to 8 in (150 to 200 mm) as depth guides: custom of the trade',
      known: 'common practice',
    },
  ],
  about: ['{chine}', 'chineLog', 'bottom'],
  draw: (v, { say }) => {
    const [thick, wide] = [mm(v.deep), mm(v.tall)];
    return drawing({
      title: 'The log in its corner, cut square to its length',
      says: `Side and bottom meet at ${say(v.angle, 'angle')}; off the sawn log go ${say(v.bottomOff, 'length')} at the under face and ${say(v.sideOff, 'length')} at the outer face.`,
      shapes: [
        logSection(
          [0, 0],
          { thick, wide, flare: v.flare, angle: v.angle, lean: v.lean },
          {
            name: `${say(v.at, 'length')} from the ${v.end === 'fore' ? 'forward' : 'after'} end`,
            part: 'chineLog',
            angle: say(v.angle, 'angle'),
            thick: say(v.deep, 'length'),
            wide: say(v.tall, 'length'),
            sideOff: say(v.sideOff, 'length'),
            bottomOff: say(v.bottomOff, 'length'),
          },
        ),
        note('Outboard to the right. Hatched the other way, in a dashed outline: the wood that goes.'),
      ],
    });
  },
  chart: alongTheLog,
});

/** The angle from end to end, the frames on it, and the mark in hand. */
function alongTheLog(
  { end, at, angle }: LogAsked & { readonly at: number; readonly angle: number },
  { hull, say, ask }: Pick<OnHand, 'hull' | 'say' | 'ask'>,
): Chart {
  const found = attempt(() => {
    if (!hull) throw new Error('There is no hull to take other places from.');
    return ask(along);
  });
  const { run, frames } = isIssue(found) ? { run: [], frames: [] } : found;
  const angles = run.map(([, value]) => value);
  return {
    title: 'The angle along the log',
    says: isIssue(found)
      ? found.issue
      : `Along the log the angle between side and bottom runs between ${say(Math.min(...angles), 'angle')} and ${say(Math.max(...angles), 'angle')}.`,
    x: { label: `from the ${end === 'fore' ? 'forward' : 'after'} end`, kind: 'length' },
    y: { label: 'side to bottom', kind: 'angle' },
    lines: [
      { name: 'side to bottom', points: run, as: 'line' },
      { name: 'at the frames', points: frames, as: 'dots' },
    ],
    points: [{ x: at, y: angle, label: `this mark: ${say(angle, 'angle')}` }],
  };
}
