/** The transom in its true shape: blank to cut, and the cut-out for an outboard motor. */
import { choice, input, defineCell } from '../form/define';
import { fromBoat } from '../form/from-boat';
import { firstOf } from '../form/in-words';
import { tableOf } from '../form/row-quantities';
import { transomView } from './transom-drawing';
import { transomPatterns } from './transom-pattern-drawing';
import { transomSteps } from './transom-cut-steps';

const BLANK = 'Cut a blank {blankWidth} wide and {blankHeight} high up the slope';

/** No motor hangs on a bow. */
const MOTOR = 'end == "transom"';

export const transomCut = defineCell({
  id: 'transomCut',
  stage: 'frames',
  title: 'Transom and motor cut-out',
  question: 'What is the true shape of the transom, and where do I cut it down for the motor?',
  inputs: {
    end: choice('Which', {
      options: [
        { id: 'transom', label: 'transom at the stern' },
        { id: 'bowTransom', label: 'transom at the bow' },
      ],
      preset: 'transom',
    }),
    corner: choice('Corner', { options: 'edges', preset: 'sheer' }),
    shaft: choice('Shaft of the motor', {
      when: MOTOR,
      options: [
        { id: 'short', label: 'short, 15 in (381 mm)' },
        { id: 'long', label: 'long, 20 in (508 mm)' },
        { id: 'extraLong', label: 'extra long, 25 in (635 mm)' },
        { id: 'longest', label: 'longest, 30 in (762 mm)' },
      ],
      preset: 'short',
    }),
    motorHeight: input('length', 'Height the motor asks for, plumb', {
      when: MOTOR,
      from: '{self}.classHeight',
      preset: '15 in',
      min: '5 in',
      max: '40 in',
      step: '1/4 in',
      note: 'from the outside of the bottom; measure the motor in hand: some short shafts are 17 1/2 in (445 mm)',
    }),
    plateAbove: input('length', 'Motor’s plate above the bottom', {
      when: MOTOR,
      preset: '0 mm',
      min: '-1 in',
      max: '6 in',
      step: '1/4 in',
      note: 'level with the bottom or up to 1 in (25 mm) above it, higher only for light fast boats; common practice, no source; the motor’s sheet holds',
    }),
    rake: input('angle', 'Rake of the transom', {
      from: '{end}.rake',
      preset: '13 deg',
      min: '-30 deg',
      max: '60 deg',
      step: '0.5 deg',
      note: 'from plumb, + where its top leans out of the boat',
    }),
    thickness: fromBoat('transom.thickness'),
    pads: input('length', 'Pads under the clamps', {
      when: MOTOR,
      preset: '18 mm',
      presetInch: '3/4 in',
      min: '0 mm',
      max: '100 mm',
      step: '1 mm',
      note: 'inside and outside together; common practice, no source',
    }),
    draught: input('length', 'Water above the bottom there', {
      when: MOTOR,
      from: '{end}.waterDepth',
      preset: '120 mm',
      min: '-2 m',
      max: '3 m',
      step: '5 mm',
      note: 'plumb at the transom, level at the design draught; with motor on and crew aft she sits deeper: measure it afloat; below 0 the bottom is clear of the water',
    }),
    bracket: input('length', 'Bracket of the motor, width', {
      when: MOTOR,
      preset: '250 mm',
      presetInch: '10 in',
      min: '50 mm',
      max: '1 m',
      step: '5 mm',
      note: 'common practice, no source; the motor maker’s drawing holds',
    }),
    swing: input('length', 'Steering swing, each side', {
      when: MOTOR,
      preset: '100 mm',
      presetInch: '4 in',
      min: '0 mm',
      max: '600 mm',
      step: '5 mm',
      note: 'common practice, no source; the motor maker’s drawing holds',
    }),
    radius: input('length', 'Radius in the corners', {
      when: MOTOR,
      preset: '40 mm',
      presetInch: '1 1/2 in',
      min: '0 mm',
      max: '6 in',
      step: '1/4 in',
    }),
    motorRake: input('angle', 'Rake the bracket is made for', {
      when: MOTOR,
      preset: '13 deg',
      min: '0 deg',
      max: '30 deg',
      step: '0.5 deg',
      note: '12° to 14° usual; common practice, no source',
    }),
    bracketHeight: input('length', 'Bracket of the motor, height', {
      when: MOTOR,
      preset: '200 mm',
      presetInch: '8 in',
      min: '20 mm',
      max: '600 mm',
      step: '5 mm',
      note: 'down the transom, where a wedge would lie; common practice, no source; measure it',
    }),
    leastFreeboard: input('length', 'Least freeboard you accept there', {
      when: MOTOR,
      bound: 'least',
      preset: '200 mm',
      presetInch: '8 in',
      min: '0 mm',
      max: '1 m',
      step: '10 mm',
      note: 'common practice, no source; your water decides',
    }),
    rise: input('length', 'Corner above the bottom, plumb', {
      from: '{self}.hullRise',
      preset: '400 mm',
      min: '0 mm',
      max: '3 m',
      step: '1 mm',
      note: 'from the outside of the bottom on the centreline to the wood inside the skin',
    }),
    face: choice('Face on the station line', {
      options: [
        { id: 'outer', label: 'outer face' },
        { id: 'inner', label: 'inner face' },
      ],
      preset: 'outer',
      note: 'see the plan; the table’s points are usually taken to the outer face',
    }),
    sideThickness: fromBoat('side.thickness'),
    bottomThickness: fromBoat('bottom.thickness'),
    bilgeThickness: fromBoat('bilge.thickness', {
      when: 'bilge.thickness',
      hint: 'between bottom and side, on a boat with two chines or more',
    }),
  },
  groups: {
    'The motor': ['plateAbove', 'motorRake', 'bracket', 'bracketHeight', 'swing'],
    'The transom': ['rise', 'face', 'thickness', 'pads', 'radius'],
    'The water': ['draught', 'leastFreeboard'],
    'The panels': ['sideThickness', 'bottomThickness', 'bilgeThickness'],
  },
  steps: transomSteps,
  answers: [
    {
      of: 'blankWidth',
      label: 'blank, wide',
      from: 'square across, half of it on each side of the centreline; bevels still on it',
      tolerance: '2 mm',
    },
    {
      of: 'blankHeight',
      label: 'blank, high',
      from: 'up the slope, from its lowest edge to the straight top; bevels still on it',
      tolerance: '2 mm',
    },
    {
      of: 'cutAboveEdge',
      label: 'cut-out, up the slope',
      from: 'on the centreline of the after face, from the transom’s own lower edge, before the bottom is on',
      when: 'end == "transom" and raise <= 0 mm',
      tolerance: '3 mm',
    },
  ],
  inWords: firstOf(
    [
      { when: 'end == "bowTransom"', says: [BLANK, '; it leans out {rake}. No motor hangs there.'] },
      {
        when: 'raise > 0 mm',
        says: [BLANK, '. For a motor that asks for {cutHeight} plumb its top is {raise} too low.'],
      },
    ],
    [
      '{cutHeight} plumb is {alongFace} up the slope from the outside of the bottom, {cutAboveEdge} from the wood’s own lower edge. Cut down {cutDepth} from the top, {cutWidth} wide, bottom level and square, corners {radius} round; the sides stay at full height. The transom leans {rake}:',
      {
        when: 'abs(motorTilt) > 0.5°',
        says: [
          'without a wedge the shaft hangs {outOfPlumb} out of plumb, its foot',
          { when: 'motorTilt > 0°', says: 'under the boat.', otherwise: 'kicked out aft.' },
        ],
        otherwise: 'the shaft hangs plumb without a wedge.',
      },
    ],
  ),
  table: tableOf({
    caption: 'Corners of the transom: out from the centreline, plumb and up the slope',
    over: 'corner',
    columns: [
      { of: 'halfBreadth', label: 'out' },
      { of: 'hullRise', label: 'up, plumb' },
      { of: 'upFace', label: 'up the slope' },
    ],
  }),
  warnings: [
    {
      when: 'end == "transom" and raise > 0 mm',
      says: 'The motor asks for {cutHeight} plumb, {alongFace} up the slope; the top stands at {topUp}. Raise it by {raise}, or take a motor with a shorter shaft.',
      limit: 'the motor’s height, as its maker states it',
      weight: 'stop',
    },
    {
      when: 'end == "transom" and sideLeft <= radius',
      says: 'A cut-out {cutWidth} wide leaves {sideLeft} of wood on each side: it breaks out at the corners.',
      limit: 'geometry',
      weight: 'stop',
    },
    {
      when: 'end == "transom" and freeboard <= 0 mm',
      says: 'The water stands {draught} above the bottom there, over the cut-out.',
      limit: 'geometry',
      weight: 'stop',
    },
    {
      when: 'end == "transom" and freeboard > 0 mm and freeboard < leastFreeboard',
      says: 'Freeboard at the cut-out is {freeboard}, less than the {leastFreeboard} you accept: a following sea comes in here first. A longer shaft, or a self-bailing well before the transom.',
      limit: 'the least freeboard typed or preset; common practice, no source',
      weight: 'mind',
    },
    {
      when: 'end == "transom" and radius < 1 in',
      says: 'Corners of {radius} let a crack start: make them 1 in (26 mm) round or more.',
      limit: 'at least 1 in (26 mm); common practice, no source',
      weight: 'mind',
    },
    {
      when: 'end == "transom" and (clampThickness < 1.375 in or clampThickness > 48 mm)',
      says: 'The clamps would hold {clampThickness}: most take 1 3/8 to 1 7/8 in (35 to 48 mm). Change the pads.',
      limit: '1 3/8 to 1 7/8 in (35 to 48 mm); common practice, no source; the motor’s own clamps decide',
      weight: 'mind',
    },
    {
      when: 'end == "transom" and abs(motorTilt) > 2°',
      says: [
        'The transom leans {rake}, the bracket is made for {motorRake}: the shaft hangs {outOfPlumb} out of plumb, its foot',
        {
          when: 'motorTilt > 0°',
          says: 'too far under the boat. A wedge under the bracket, {wedge} thick at its lower end and nothing at its upper, or the tilt pin, sets it plumb.',
          otherwise:
            'kicked out aft. A wedge under the bracket, {wedge} thick at its upper end and nothing at its lower, sets it plumb; a tilt pin may do.',
        },
      ],
      limit: '12° to 14° usual; common practice, no source',
      weight: 'mind',
    },
    {
      when: 'end == "transom" and plateAbove > 1 in',
      says: 'With its plate {plateAbove} above the bottom the propeller draws air sooner, in a turn or a sea: only light, fast boats hang their motors so high.',
      limit: 'level with the bottom to 1 in (25 mm) above it; common practice, no source',
      weight: 'mind',
    },
  ],
  cautions: [
    'A cut-out is the lowest place of the boat’s edge. Try her loaded in calm water before you trust its freeboard.',
    'Measure plumb, not up the slope, and from the outside of the bottom. Measure the motor in hand before you saw.',
    'The motor maker’s sheet decides height, width, clamp thickness and largest weight; the rules of your country decide the largest power. In the United States a transom of 20 in (508 mm) or more, with remote steering, has a formula of its own (33 CFR 183.53).',
    'A knee ties the transom to the keelson, and corner knees to the sheer: a motor’s push and its weight on a trailer go through them.',
    'Seal the cut edges of plywood before anything covers them.',
  ],
  sources: [
    { text: 'Expanding a raked transom, height over the cosine of the rake: geometry', known: 'geometry' },
    {
      text: '33 CFR 183.53: a transom of 20 in (508 mm) or more and remote steering decide which formula gives the largest power',
      known: 'published',
    },
    {
      text: 'Height classes, plate level with the bottom to 1 in (25 mm) above it, rake of 12° to 14°, radius of 1 in (26 mm) and clamp thickness of 1 3/8 to 1 7/8 in (35 to 48 mm): motor makers’ guides and custom of the trade',
      known: 'common practice',
    },
  ],
  about: ['{end}', 'sheer'],
  draw: transomView,
  patterns: { are: 'The transom at full size', draw: transomPatterns },
});
