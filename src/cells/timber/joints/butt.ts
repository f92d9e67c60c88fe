/** A butt in plywood: what stands behind it, how long, how it is fastened, and where on the boat it may be. */
import { choice, defineCell } from '../../form/define';
import { tableOf } from '../../form/row-quantities';
import { buttKinds, buttInputs } from './butt-inputs';
import { sheathing } from '../../../trade/butt-plates';
import { drawButt } from './butt-drawing';
import { PRACTICE, PRINTED, HANDBOOK, buttFunctions, buttSteps } from './butt-steps';
import { GEOMETRY } from '../../../trade/sources';

export const butt = defineCell({
  id: 'butt',
  stage: 'timber',
  title: 'Butt joint',
  question: 'What goes behind a butt, how long must it be, and between which frames may it stand?',
  inputs: {
    kind: choice('Behind the joint', { options: buttKinds, preset: 'block' }),
    ...buttInputs,
  },
  functions: buttFunctions,
  groups: {
    'The bay': ['jointLength', 'bay', 'siding', 'framePosition'],
    'The block': ['plateThickness', 'faces', 'limberGap', 'rowIn', 'pitch', 'soldIn'],
    'The glass': ['plies', 'fabric', 'glassShare', 'glassDensity', 'glassStrength', 'firstPly', 'stepDown'],
    'How hard it pulls': ['pull', 'rollingShear', 'panelStrength'],
  },
  steps: buttSteps,
  answers: [
    { of: 'plateLength', label: 'across the joint', from: 'along the grain of the panel, half to each side' },
    { of: 'strengthKept', label: 'strength kept', from: 'of the panel, pulled square to the joint' },
    {
      of: 'jointFrom',
      label: 'joint from the frame',
      from: 'along the skin, from the face of the frame aft',
      tolerance: '10 mm',
    },
  ],
  inWords: [
    {
      when: 'kind == "plate" or kind == "block"',
      says: [
        { when: 'kind == "plate"', says: 'A plate of plywood', otherwise: 'A block' },
        '{plateThickness} thick, {plateLength} across the joint and {tall} along it,',
        { when: 'kind == "plate"', says: 'its face grain with the panel’s,', otherwise: 'glued,' },
        'keeps about {strengthKept}.',
        {
          when: 'kind == "plate"',
          says: 'The table prints {printedLength}; 12 thicknesses a side make {byRule}.',
          otherwise:
            'Its screws, {screws} of {longestScrew} in two rows a side, {evenPitch} apart, only clamp while the glue sets and carry nothing: they reach {reachIn} into the block, {rowIn} from the panel’s end.',
        },
        'By rolling shear the glue line wants {bondHalf} a side to carry {pull}, and this one carries {bondHolds}.',
      ],
    },
    {
      when: 'kind == "strap"',
      says: 'On each face {plies} plies of glass, the first {narrowest} wide and the last {plateLength}, together {stack} thick: {pliesExact} would part where the panel parts. It keeps about {strengthKept}; {clothArea} of cloth for both faces.',
    },
    {
      when: 'kind == "bare"',
      says: 'Glued end to end with nothing behind it, the joint keeps about {strengthKept} of the strength along the grain. Put a block, a plate or glass behind it, or scarf it.',
    },
  ],
  table: tableOf({
    caption: 'Bays in which it fits, each forward of its frame',
    over: 'frame',
    only: 'fits',
    columns: [
      { of: 'bayThere', label: 'bay' },
      { of: 'room', label: 'free each side' },
      { of: 'jointFrom', label: 'joint from the frame' },
      { of: 'where', label: 'joint from aft' },
      { of: 'acrossAft', label: 'across: aft of' },
      { of: 'acrossForward', label: 'or forward of' },
    ],
  }),
  warnings: [
    {
      when: 'fits < 1',
      says: 'With {plateLength} across the joint it does not fit between frames {bay} apart: choose a longer bay, a scarf, or glass.',
      limit: `a butt stands between frames: ${PRACTICE}`,
      weight: 'stop',
    },
    {
      when: 'kind == "bare"',
      says: 'End grain glued to end grain keeps about {strengthKept}.',
      limit: `${HANDBOOK}: about 25 % of tension strength`,
      weight: 'stop',
    },
    {
      when: '(kind == "plate" or kind == "block") and plateLength < 0.9 * printedLength',
      says: '{plateLength} across the joint is less than the {printedLength} that the table calls full strength.',
      limit: PRINTED,
      weight: 'mind',
    },
    {
      when: '(kind == "plate" or kind == "block") and plateThickness < thickness',
      says: 'The plate, {plateThickness}, is thinner than the panel, {thickness}.',
      limit: 'a plate as thick as the panel or thicker; from memory: APA, Plywood Design Specification',
      weight: 'mind',
    },
    {
      when: 'kind == "block" and longestScrew <= 0 mm',
      says: 'No screw is sold that stays inside panel and block: take a thicker block.',
      limit: `lengths that shops keep: ${PRACTICE}`,
      weight: 'mind',
    },
    {
      when: 'kind == "block" and rowGap < rowIn / 2',
      says: 'Two rows of screws find no room in {half}: take one row a side, or a longer block.',
      limit: GEOMETRY,
      weight: 'mind',
    },
    {
      when: 'kind == "strap" and plies < pliesExact - 0.001',
      says: '{plies} plies on each face {plies?parts:part} before the panel does: {pliesNeeded} {pliesNeeded?is:are} wanted.',
      limit: 'the strengths entered above',
      weight: 'mind',
    },
    {
      when: 'kind == "strap" and plateLength < byRule',
      says: 'The widest ply is {plateLength}; 12 thicknesses a side want {byRule}.',
      limit: PRACTICE,
      weight: 'mind',
    },
    {
      when: 'kind == "strap" and stack > 1.05 * recess',
      says: 'The strap is {stack} thick on each face: planed in flush it takes a recess of more than {recess} from the panel. Let it stand proud and fair it off.',
      limit: `deepest recess in a panel, to a twentieth: ${PRACTICE}`,
      weight: 'mind',
    },
  ],
  cautions: [
    'Grinding glass and cutting plywood make dust that harms lungs and skin, and epoxy sensitises: mask, gloves, fresh air, and the maker’s sheet.',
    'A butt is stiffer and flatter than the panel beside it. Where the panel bends, laminate or saw the block to the curve; a flat one makes a flat in the side.',
    'Butts stand between frames, never on one, and port and starboard at least one bay apart. Keep them out of the tightest bend and out of the bottom where the boat grounds.',
    'Bevel the ends of the block and leave the gap at both, or water stands behind it and rots it.',
    'The screws of a block are too short and too near the panel’s end to carry: by the American code a screw that carries stands 6 diameters in the wood and, pulled towards an end, 10 from it. The glue line is the joint.',
    'Strengths are planning figures for sound plywood and a full glue line, not a test of your joint. Rules of a class or a designer’s plan outrank them.',
  ],
  sources: [
    { text: `${HANDBOOK}: butt joint in end grain`, known: 'published' },
    { text: `Strength of plywood: ${sheathing.source}`, known: 'published' },
    { text: 'APA, Plywood Design Specification: lengths of splice plates', known: 'from memory' },
    {
      text: 'Butt block 24 thicknesses or 150 mm (6 in) wide, and no less than nine tenths of a printed plate, limber gap 10 to 15 mm (3/8 to 5/8 in), two rows a side at 75 mm (3 in); glass strap stepped by 25 mm (1 in), recess 1 mm (1/32 in); place between frames and a bay apart',
      known: 'common practice',
    },
    { text: 'Glue line, glass strap and place in the bay', known: 'geometry' },
  ],
  about: ['{frame}', '{skin}'],
  draw: drawButt,
});
