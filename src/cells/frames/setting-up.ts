/** A frame on the jig: from what was taped, what stands out of true, and which way to move what, by how much. */
import { choice, defineCell, input, step } from '../form/define';
import { fromShop } from '../form/from-shop';
import { words } from '../form/in-words';
import { settingUpView } from './setting-up-drawing';
import { TWO_LENGTHS } from './two-lengths';
import { GEOMETRY } from '../../trade/sources';

const ALONG = 'set-up within 3 mm (1/8 in) along; common practice, no source';
const ACROSS = 'set-up within 1.5 mm (1/16 in) across, and in height; common practice, no source';

const taped = (label: string, from: string, preset: string, note: string) =>
  input('length', label, { from, preset, min: '100 mm', max: '20 m', step: '1 mm', note });

const planned = (label: string, from: string, preset: string, note: string) =>
  input('length', label, { from, preset, min: '20 mm', max: '20 m', step: '1 mm', note });

/** Which way, where a number is above 0; below it is the other. */
const port = (of: string) => ({ when: `${of} > 0 mm`, says: 'port', otherwise: 'starboard' });
const starboard = (of: string) => ({ when: `${of} > 0 mm`, says: 'starboard', otherwise: 'port' });
const forward = (of: string) => ({ when: `${of} > 0 mm`, says: 'forward', otherwise: 'aft' });
const aft = (of: string) => ({ when: `${of} > 0 mm`, says: 'aft', otherwise: 'forward' });

export const settingUp = defineCell({
  id: 'settingUp',
  stage: 'frames',
  title: 'Setting up a frame',
  question: 'I have taped this frame on the jig: what do I move, which way, and by how much?',
  inputs: {
    frame: choice('Frame', { options: 'frames', preset: 'frame3' }),
    portLength: taped(
      'Nail to the port sheer mark',
      '{self}.trueLength',
      '2400 mm',
      'from the nail on the jig’s centreline under the foremost sheer mark; taped, not reckoned',
    ),
    starboardLength: taped(
      'Nail to starboard sheer mark',
      '{self}.trueLength',
      '2400 mm',
      'from the same nail, the tape pulled as hard',
    ),
    offString: input('length', 'Centre mark off the string', {
      preset: '0 mm',
      min: '-500 mm',
      max: '500 mm',
      step: '1 mm',
      note: '+ where it stands to port of the string, plumbed down',
    }),
    lean: input('length', 'Out of plumb, fore and aft', {
      preset: '0 mm',
      min: '-500 mm',
      max: '500 mm',
      step: '1 mm',
      note: '+ where its upper edge, the boat’s bottom, leans forward; over the height below',
    }),
    plumbHeight: input('length', 'Over a height of', {
      from: '{self}.depth',
      preset: '500 mm',
      min: '20 mm',
      max: '10 m',
      step: '10 mm',
      note: 'length of the level that was held, or of the plumb line',
    }),
    portHeight: taped(
      'Port sheer mark above the jig',
      '{self}.height',
      '550 mm',
      'plumb, from the level of the jig’s top',
    ),
    starboardHeight: taped(
      'Starboard mark above the jig',
      '{self}.height',
      '550 mm',
      'plumb, from the level of the jig’s top',
    ),
    out: planned('Half-breadth of the sheer marks', 'strongback.{frame}.sheerOut', '600 mm', 'of the frame'),
    ahead: planned(
      'Nail forward of the station line',
      'strongback.{frame}.nailAhead',
      '2300 mm',
      'along the jig’s centreline',
    ),
    height: planned('Sheer marks above jig, by plan', 'strongback.{frame}.leg', '550 mm', 'the legs’ length'),
    depth: planned(
      'Depth of the frame, by plan',
      'strongback.{frame}.frameDepth',
      '500 mm',
      'from the sheer marks to the bottom, plumb',
    ),
    alongTolerance: fromShop('trueWithin', { hint: 'along the jig' }),
    acrossTolerance: input('length', 'Accepted across, and in height', {
      from: '{self}.halfAlong',
      preset: '1.5 mm',
      presetInch: '1/16 in',
      min: '0.1 mm',
      max: '50 mm',
      step: '0.5 mm',
      note: 'half as much as along the jig, for it bends the planking in a shorter length; common practice, no source',
    }),
  },
  functions: {
    ...TWO_LENGTHS,
    swungBy: {
      takes: ['length', 'length', 'length'],
      gives: 'angle',
      how: 'the angle by which the frame has turned about its centre mark: atan(along / square off) + asin(off the string / distance of the nail)',
      run: (along: number, off: number, string: number) => {
        const reach = Math.hypot(along, off);
        if (Math.abs(string) >= reach)
          throw new Error(
            'the centre mark can not stand farther off the string than it is from the nail: measure again',
          );
        return Math.atan2(along, off) + Math.asin(string / reach);
      },
    },
  },
  groups: {
    'Plumb and height': ['plumbHeight', 'portHeight', 'starboardHeight'],
    'By the plan': ['out', 'ahead', 'height', 'depth'],
    'What is accepted': ['alongTolerance', 'acrossTolerance'],
  },
  steps: {
    halfAlong: step(
      'length',
      'alongTolerance / 2',
      'accepted across: half of what is accepted along the jig',
      'common practice, no source',
      'most',
    ),
    trueLength: step(
      'length',
      'sqrt(ahead^2 + out^2 + height^2)',
      'the nail to either sheer mark, by plan',
      'geometry: Pythagoras in space',
    ),
    difference: step('length', 'portLength - starboardLength', 'port longer than starboard by', GEOMETRY),
    nailToPort: step(
      'length',
      'towardPort(portLength, starboardLength, 2 * out)',
      'nail off the frame’s own middle, along the frame, + to port',
      'geometry: the triangle of the two marks and the nail',
    ),
    nailOff: step(
      'length',
      'levelPart(squareOff(portLength, starboardLength, 2 * out), (portHeight + starboardHeight) / 2)',
      'nail ahead of the frame, square to it, level',
      'geometry: the triangle of the two marks and the nail',
    ),
    swing: step(
      'angle',
      'swungBy(nailToPort, nailOff, offString)',
      'frame turned about its centre mark, + port side forward',
      GEOMETRY,
    ),
    portAhead: step(
      'length',
      'out * sin(swing)',
      'port sheer mark too far forward, and starboard as much too far aft',
      GEOMETRY,
    ),
    found: step(
      'length',
      'sqrt(nailToPort^2 + nailOff^2 - offString^2)',
      'nail forward of the frame’s centre mark, along the jig, as taped',
      'geometry: Pythagoras',
    ),
    centreAhead: step('length', 'ahead - found', 'centre mark too far forward along the jig', GEOMETRY),
    footAhead: step(
      'length',
      'lean * depth / plumbHeight',
      'its upper edge too far forward, out of plumb over its whole depth',
      'geometry: similar triangles',
    ),
    portHigh: step(
      'length',
      'portHeight - starboardHeight',
      'port sheer mark higher than starboard',
      GEOMETRY,
    ),
    tooHigh: step(
      'length',
      '(portHeight + starboardHeight) / 2 - height',
      'the two sheer marks on average too high above the jig',
      GEOMETRY,
    ),
    swingBy: step('length', 'abs(portAhead)', 'each side, to be turned back by', GEOMETRY),
    alongBy: step('length', 'abs(centreAhead)', 'the whole frame, to be moved along by', GEOMETRY),
    offBy: step('length', 'abs(offString)', 'the whole frame, to be moved across by', GEOMETRY),
    leanBy: step('length', 'abs(footAhead)', 'upper edge, to be moved by', GEOMETRY),
    highBy: step('length', 'abs(portHigh)', 'one side above the other by', GEOMETRY),
    liftBy: step('length', 'abs(tooHigh)', 'both sides, to be moved up or down by', GEOMETRY),
    worst: step(
      'ratio',
      'max(max(swingBy, alongBy, leanBy) / alongTolerance, max(offBy, highBy, liftBy) / acrossTolerance)',
      'the worst of all, as a part of what is accepted',
      'common practice, no source',
    ),
  },
  answers: [
    {
      of: 'portAhead',
      label: 'port side, forward',
      from: 'at the port sheer mark, along the jig: + too far forward, and the starboard side as much too far aft; the boat’s own port side',
      tolerance: '3 mm',
    },
    {
      of: 'centreAhead',
      label: 'whole frame, forward',
      from: 'at the centre mark, along the jig: + too far forward, − too far aft',
      tolerance: '3 mm',
    },
    {
      of: 'footAhead',
      label: 'upper edge, forward',
      from: 'over the frame’s whole depth: + leans forward, − leans aft',
      tolerance: '3 mm',
    },
  ],
  inWords: {
    when: 'worst <= 1',
    says: 'The frame stands true within what is accepted: {alongTolerance} along, {acrossTolerance} across and in height. Prop it both ways, then measure once more.',
    otherwise:
      'Not true yet. Put right the faults below, in this order: on the string, on its line, square, plumb, level. Each move disturbs the others, so measure everything again afterwards.',
  },
  warnings: [
    {
      when: 'offBy > acrossTolerance',
      says: words`The centre mark stands {offBy} to ${port('offString')} of the string: move the whole frame {offBy} to ${starboard('offString')}.`,
      limit: ACROSS,
      weight: 'mind',
    },
    {
      when: 'alongBy > alongTolerance',
      says: words`The frame’s middle stands {alongBy} too far ${forward('centreAhead')}: move the whole frame {alongBy} ${aft('centreAhead')}.`,
      limit: ALONG,
      weight: 'mind',
    },
    {
      when: 'swingBy > alongTolerance',
      says: words`The frame is swung, its ${port('portAhead')} side forward: turn it about its centre mark, ${port('portAhead')} side {swingBy} aft and ${starboard('portAhead')} side {swingBy} forward.`,
      limit: ALONG,
      weight: 'mind',
    },
    {
      when: 'leanBy > alongTolerance',
      says: words`Its upper edge leans ${forward('footAhead')}: bring that {leanBy} ${aft('footAhead')}, the sheer marks staying where they are.`,
      limit: ALONG,
      weight: 'mind',
    },
    {
      when: 'highBy > acrossTolerance',
      says: words`The ${port('portHigh')} sheer mark stands {highBy} above the ${starboard('portHigh')} one: half of it off the ${port('portHigh')} leg, half of it under the ${starboard('portHigh')} leg.`,
      limit: ACROSS,
      weight: 'mind',
    },
    {
      when: 'liftBy > acrossTolerance',
      says: [
        'Both sheer marks stand {liftBy} too',
        {
          when: 'tooHigh > 0 mm',
          says: 'high on average: take that off both legs.',
          otherwise: 'low on average: put that under both legs.',
        },
      ],
      limit: ACROSS,
      weight: 'mind',
    },
  ],
  cautions: [
    'Prop before you measure, fore and aft and across, and slacken one prop at a time. A frame that is let go of falls flat.',
    'Port and starboard are the boat’s own. Upside down, looking forward, her port side lies to your right.',
    'Two lengths can’t tell a frame that is swung from one that stands beside the string: plumb its centre mark down first, and type what you find.',
    'Measure again after each pair of long timbers: a log bent in on one side alone drags frames out of square.',
  ],
  sources: [
    {
      text: 'Swing and distance from two lengths taped from one point on the centreline: geometry of the triangle',
      known: 'geometry',
    },
    {
      text: 'Equal lengths from a centreline point forward to both sheer marks; 3 mm (1/8 in) along and 1.5 mm (1/16 in) across accepted: custom of the trade',
      known: 'common practice',
    },
  ],
  about: ['{frame}', 'sheer'],
  draw: settingUpView,
});
