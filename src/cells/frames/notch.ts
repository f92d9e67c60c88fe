/** Notches for chine log and sheer clamp: how deep on either face, how wide, how sawn, and where no screw may stand. */
import { choice, input, defineCell } from '../form/define';
import { fromBoat } from '../form/from-boat';
import { fromShop } from '../form/from-shop';
import { tableOf } from '../form/row-quantities';
import { gapsBridged } from '../../trade/adhesives';
import { slopeOfLine } from './slope-input';
import { cutWarnings, cutLimits, limitWords } from './cut-limits';
import { keepOutQuantities } from '../../boat/quantities/keep-out-quantities';
import { notchView } from './notch-drawing';
import { notchSteps } from './notch-steps';

/** What each of the two timbers lies by. */
const LOG = 'timber == "chineLog"';
const CLAMP = 'timber == "sheerClamp"';

const ON_CHINE = 'timber == "chineLog"';
const SQUARE = 'sawn == "square"';

export const notch = defineCell({
  id: 'notch',
  stage: 'frames',
  title: 'Notches for chine log and sheer clamp',
  question:
    'How deep and how wide is the notch on each face of this frame, how do I saw it, and where may no screw stand?',
  inputs: {
    frame: choice('Frame', { options: 'frames', preset: 'frame3' }),
    timber: choice('Timber that lies in it', {
      options: [
        { id: 'chineLog', label: 'chine log' },
        { id: 'sheerClamp', label: 'sheer clamp' },
      ],
      preset: 'chineLog',
      note: 'the slot for the keelson is sawn with the limbers',
    }),
    chine: choice('Chine', {
      options: 'chines',
      preset: 'chine',
      without: 'none: side and bottom are one',
      when: LOG,
    }),
    thickness: fromBoat('{timber}.thickness', {
      hint: 'from its face on the side inward; measure the piece that goes in',
    }),
    width: fromBoat('{timber}.width', { hint: 'up or down the side; measure the piece that goes in' }),
    kerf: fromShop('kerf'),
    land: input('length', 'Wood left between two cuts, at most', {
      bound: 'most',
      preset: '5 mm',
      min: '0.5 mm',
      max: '1 in',
      step: '1/64 in',
      slider: true,
      note: 'thin enough to be knocked out with a chisel; common practice, no source',
    }),
    sawn: choice('Sawn', {
      options: [
        { id: 'square', label: 'before the edge is bevelled' },
        { id: 'planed', label: 'after it is bevelled' },
      ],
      preset: 'square',
      note: 'with the edge flat on the table of the saw, the frame square to the blade but for the mitre',
    }),
    screwClear: fromBoat('frame.screwClearance'),
    siding: fromBoat('frame.siding'),
    moulded: fromBoat('frame.moulded', { hint: 'on the face that stands on the station line' }),
    fit: input('length', 'Play in the width', {
      preset: '0.3 mm',
      presetInch: '1/64 in',
      min: '0 mm',
      max: '10 mm',
      step: '0.1 mm',
      note: `the glue fills it: ${gapsBridged}; common practice, no source`,
    }),
    proud: input('length', 'Timber left proud of the edge', {
      preset: '0 mm',
      min: '0 mm',
      max: '25 mm',
      step: '0.5 mm',
      note: '1/16 in (1.5 mm) where the timber itself is planed fair afterwards; common practice, no source',
    }),
    setBack: input('length', 'Clamp below the sheer', {
      preset: '0 mm',
      min: '0 mm',
      max: '300 mm',
      step: '1 mm',
      when: CLAMP,
      note: 'square to the clamp, from the sheer mark to its upper edge; the pattern of the frame takes none',
    }),
    flare: input('angle', 'Flare of the skin at the chine', {
      when: LOG,
      from: '{frame}.{chine}.above.flare',
      preset: '20 deg',
      min: '-60 deg',
      max: '80 deg',
      step: '0.5 deg',
      note: 'from plumb, + outward',
    }),
    deadrise: input('angle', 'Deadrise of the skin at the chine', {
      when: LOG,
      from: '{frame}.{chine}.below.deadrise',
      preset: '0 deg',
      min: '-20 deg',
      max: '80 deg',
      step: '0.5 deg',
      note: 'from level, + where the bottom rises outboard',
    }),
    chinePlan: { ...slopeOfLine('Chine slope in plan', '{frame}.{chine}.planSlope'), when: LOG },
    chineProfile: { ...slopeOfLine('Chine slope in profile', '{frame}.{chine}.profileSlope'), when: LOG },
    sheerFlare: input('angle', 'Flare of the skin at the sheer', {
      when: CLAMP,
      from: '{frame}.{sheer}.below.flare',
      preset: '20 deg',
      min: '-60 deg',
      max: '80 deg',
      step: '0.5 deg',
      note: 'from plumb, + outward',
    }),
    sheerPlan: { ...slopeOfLine('Sheer slope in plan', '{frame}.{sheer}.planSlope'), when: CLAMP },
    sheerProfile: { ...slopeOfLine('Sheer slope in profile', '{frame}.{sheer}.profileSlope'), when: CLAMP },
  },
  groups: {
    'How it is sawn': ['sawn', 'kerf', 'land', 'fit', 'proud'],
    'The frame': ['siding', 'moulded', 'screwClear'],
    'At the chine': ['flare', 'deadrise', 'chinePlan', 'chineProfile'],
    'At the sheer': ['sheerFlare', 'sheerPlan', 'sheerProfile', 'setBack'],
  },
  steps: notchSteps,
  answers: [
    {
      of: 'nearDepth',
      label: 'depth',
      from: 'square to the edge, on the face that stands on the station line',
      tolerance: '0.5 mm',
    },
    {
      of: 'farDepth',
      label: 'depth on the other face',
      from: 'square to its edge before that is bevelled',
      tolerance: '0.5 mm',
    },
    {
      of: 'along',
      label: 'width',
      from: 'along the frame’s edge, on the face on the station line: from the chine up for a log, from the sheer mark down for a clamp',
      tolerance: '0.5 mm',
    },
  ],
  inWords: {
    when: `${ON_CHINE} and chine == "none"`,
    says: 'This boat has no chine, so no log lies in it: choose the sheer clamp.',
    otherwise: [
      'Mark the edge from',
      {
        when: ON_CHINE,
        says: 'the chine up to {endsAt},',
        otherwise: '{startsAt} to {endsAt} below the sheer mark,',
      },
      {
        when: SQUARE,
        says: '{nearDepth} deep on the face on the station line and {farDepth} on the other. Set the blade {bladeHeight} high and {tilt} off plumb,',
        otherwise:
          '{nearDepth} deep from the bevelled edge on both faces. With the bevelled edge on the table set the blade {bladeHeight} high and plumb,',
      },
      'the mitre gauge {mitre} off square; take {passes} passes with {landLeft} left between',
      {
        when: SQUARE,
        says: ', chisel the lands out and pare the floor down to the mark on the other face.',
        otherwise: 'and chisel the lands out.',
      },
      {
        when: ON_CHINE,
        says: 'On the bottom edge it ends {foot} from the chine. Drive no screw within {keepTo} of the chine along the side,',
        otherwise: 'Drive no screw between {keepFrom} and {keepTo} below the sheer mark,',
      },
      'unless it stands {keepDepth} or more from the edge.',
    ],
  },
  table: tableOf({
    caption: 'This timber’s notch at every frame',
    over: 'frame',
    columns: [
      { of: 'nearDepth', label: 'depth' },
      { of: 'farDepth', label: 'on the other face' },
      { of: 'along', label: 'width' },
      { of: 'bevel', label: 'slope of the floor' },
      { of: 'mitre', label: 'mitre' },
      { of: 'tilt', label: 'tilt' },
      { of: 'modulusLeft', label: 'strength left' },
    ],
  }),
  warnings: [
    {
      when: 'proud >= thickness',
      says: 'The timber is left {proud} proud and is only {thickness} thick: there is nothing to let in.',
      limit: 'geometry',
      weight: 'stop',
    },
    {
      when: 'farDepth >= moulded',
      says: 'The notch, {farDepth} deep on its deeper face, cuts the member right through.',
      limit: 'geometry',
      weight: 'stop',
    },
    ...cutWarnings({
      cut: 'The notch',
      through: 'farDepth >= moulded',
      mend: 'take a deeper member or a thinner timber',
    }),
    {
      when: `timber == "sheerClamp" and depthTaken > ${cutLimits.unbacked} and depthTaken <= ${cutLimits.backed}`,
      says: 'The notch takes {depthTaken} of the depth at the head of the frame, where no gusset backs it: put a knee or a plate there.',
      limit: limitWords.unbacked,
      weight: 'mind',
    },
    {
      when: 'landLeft > 6 mm',
      says: 'Lands of {landLeft} do not snap off; they tear, and the floor with them. Take more passes.',
      limit: 'about 6 mm (1/4 in); common practice, no source',
      weight: 'mind',
    },
    {
      when: 'kerf > along',
      says: 'The kerf, {kerf}, is wider than the notch, {along}.',
      limit: 'geometry',
      weight: 'stop',
    },
    {
      when: 'timber == "chineLog" and foot > 3 * width',
      says: 'Side and bottom meet so flat here that the notch runs {foot} along the edge below: stand the log upright in the corner, or take a batten on the flat in its place.',
      limit: 'three times the width of the log; common practice, no source',
      weight: 'mind',
    },
    {
      when: 'abs(bevel) > 45° or abs(mitre) > 45°',
      says: 'The timber runs so slantwise through this frame (floor {bevel}, ends {skew}) that a saw hardly reaches it: cut the notch by hand to marks on both faces.',
      limit: 'gauge and tilt of common table saws, 45°; common practice, no source',
      weight: 'mind',
    },
    {
      when: 'screwClear < 10 mm',
      says: 'Screws only {screwClear} from the cut: a blade set a little over meets them.',
      limit: 'at least 10 mm (7/16 in) from a later cut; common practice, no source',
      weight: 'mind',
    },
  ],
  cautions: [
    'Screws set before a notch is cut meet the blade, and a blade that meets a screw throws it: mark what is kept free on both faces before the gussets go on, and check again before each cut.',
    'Many cuts side by side in a piece held by hand: guard and push block as the maker of the saw says, the frame against a mitre gauge or on a sled, never by the fence alone.',
    'Try a scrap of the timber in the first notch before the others are sawn. Too deep leaves a gap behind the skin, too shallow a hump in it.',
    'Depths here are for a frame sawn to the larger face, which stands on the station line. Where the bevel changes hand, mark both faces from the frame’s pattern.',
  ],
  sources: [
    {
      text: 'Depth, width and slopes of the notch: geometry of the skin’s plane and the timber’s run; the notch in the frame’s pattern is found another way, and agrees',
      known: 'geometry',
    },
    {
      text: 'A notch sawn in passes and chiselled out, share of the depth, play, lands and clearance of screws: custom of the trade',
      known: 'common practice',
    },
  ],
  about: ['{frame}', '{timber}', 'frame'],
  brings: keepOutQuantities,
  draw: (v, on) => notchView(v, (metres) => on.say(metres, 'length')),
});
