/** A butt in plywood: what stands behind it, how long, how it is fastened, and where on the boat it may be. */
import { INCH } from '../../../measure/si';
import { plateEachSide, printedPlate, sheathing } from '../../../trade/butt-plates';
import { buttKept } from '../../../trade/scarf-strength';
import { screwLengths } from '../../../trade/lengths-sold';
import { choice, defineCell, step } from '../../form/define';
import { buttInputs, buttKinds } from './butt-inputs';
import { drawButt } from './butt-drawing';
import { longestScrew } from '../../common/screws/screw-choice';

const GEOMETRY = 'geometry';
const PRACTICE = 'common practice, no source';
const PRINTED = 'from memory: APA, Plywood Design Specification, plywood splice plates';
const HANDBOOK = 'Wood Handbook, USDA FPL-GTR-190 (2010), ch. 10';
/** The shortest screw that shops keep, over what the cell calls `soldIn`. */
const SHORTEST = `(soldIn == "inch" ? ${screwLengths.inch[0]! / INCH} in : ${1000 * screwLengths.metric[0]!} mm)`;
/** Wood left over the point of a screw. */
const POINT = '(soldIn == "inch" ? 0.125 in : 3 mm)';
/** A block is cut to lengths that are easily marked, and never shorter than the first of them. */
const [LEAST_BLOCK, BLOCK_STEP] = [
  '(soldIn == "inch" ? 6 in : 150 mm)',
  '(soldIn == "inch" ? 0.5 in : 10 mm)',
];
const LAMINATE = 'volume of glass in the laminate';

export const butt = defineCell({
  id: 'butt',
  stage: 'timber',
  title: 'Butt joint',
  question: 'What goes behind a butt, how long must it be, and between which frames may it stand?',
  inputs: {
    kind: choice('Behind the joint', { options: buttKinds, preset: 'block' }),
    ...buttInputs,
  },
  functions: {
    ...longestScrew,
    printed: {
      takes: ['length', 'count'],
      gives: 'length',
      how: 'printed length for the row nearest in thickness: 6 in of plate on 1/4 in, 8 on 5/16, 10 on 3/8 sanded and 12 unsanded, 14 on 1/2, 16 on 5/8 and 3/4; where none is printed, 24 thicknesses',
      run: (thickness, sanded) =>
        printedPlate(thickness, sanded > 0 ? 'sanded' : 'unsanded') ?? 2 * plateEachSide * thickness,
    },
  },
  groups: {
    'The bay': ['jointLength', 'bay', 'siding', 'framePosition'],
    'The block': ['plateThickness', 'faces', 'limberGap', 'rowIn', 'pitch', 'soldIn'],
    'The glass': ['plies', 'fabric', 'glassVolume', 'glassDensity', 'glassStrength', 'firstPly', 'stepDown'],
    'How hard it pulls': ['pull', 'rollingShear', 'panelStrength'],
  },
  steps: {
    byRule: step(
      'length',
      `2 * ${plateEachSide} * thickness`,
      'plate across the joint by the rule: 12 thicknesses to each side',
      `${PRINTED}: its lengths as a rule`,
    ),
    printedLength: step(
      'length',
      'printed(thickness, faces == "sanded" ? 1 : 0)',
      'plate across the joint that the table calls full strength',
      PRINTED,
      'least',
    ),
    usualPlate: step(
      'length',
      `kind == "block" ? max(thickness, ${SHORTEST} + ${POINT} - thickness) : thickness`,
      'thickness of the plate: the panel’s own; of a block enough to keep the shortest screw sold inside it',
      `${PRINTED}: as thick as the panel or thicker; screws: ${PRACTICE}`,
    ),
    plyThickness: step(
      'length',
      'fabric / (glassDensity * glassVolume)',
      'thickness of one ply of glass, cured',
      LAMINATE,
    ),
    pliesExact: step(
      'ratio',
      'panelStrength * thickness / (2 * plyThickness * glassStrength)',
      'plies on each face that part where the panel parts, before rounding up',
      'statics: both faces together carry what the panel carries',
    ),
    pliesNeeded: step('count', 'max(1, ceil(pliesExact - 0.001))', 'plies on each face', 'rounded up'),
    recess: step('length', '1 mm', 'deepest recess for a strap planed in flush', PRACTICE, 'most'),
    stack: step('length', 'plies * plyThickness', 'thickness of the strap on one face', GEOMETRY),
    usualLength: step(
      'length',
      `kind == "plate" ? max(byRule, printedLength) : kind == "block" ? max(byRule, ${LEAST_BLOCK}, ceil(0.9 * printedLength / ${BLOCK_STEP} - 0.001) * ${BLOCK_STEP}) : kind == "strap" ? max(byRule, firstPly + (plies - 1) * stepDown) : 0 mm`,
      'length across the joint: of a plate by the printed table or the rule, of a block by custom, of a strap its widest ply',
      `${PRINTED}; block: 24 thicknesses, 150 mm (6 in) or nine tenths of what is printed, strap: plies stepped, both ${PRACTICE}`,
    ),
    half: step('length', 'plateLength / 2', 'reach to each side of the joint', GEOMETRY),
    narrowest: step(
      'length',
      'max(0 mm, plateLength - (plies - 1) * stepDown)',
      'narrowest ply of a strap, which is laid first',
      PRACTICE,
    ),
    clothArea: step(
      'area',
      'kind == "strap" ? plies * (plateLength + narrowest) * jointLength : 0 m^2',
      'cloth for a strap, both faces',
      'geometry: plies of the mean width, twice',
    ),
    bondHalf: step(
      'length',
      'pull * thickness / rollingShear',
      'reach to each side that the glue line wants, by rolling shear in the plies beside it',
      'statics: shear over the reach makes up the pull',
    ),
    bondHolds: step(
      'stress',
      'rollingShear * half / thickness',
      'pull in the panel that the glue line carries, by rolling shear',
      'statics: shear over the reach makes up the pull',
    ),
    strengthKept: step(
      'share',
      `kind == "bare" ? ${100 * buttKept} % : kind == "strap" ? min(1, plies / pliesExact, plateLength / byRule) : min(1, plateLength / printedLength, plateThickness / thickness)`,
      'part of the panel’s strength along the joint’s pull that is kept',
      `bare end grain: ${HANDBOOK}; plate and block: whole at the printed length, shorter in proportion: ${PRACTICE}; strap: statics, whole at 12 thicknesses a side`,
    ),
    tall: step(
      'length',
      'max(0 mm, jointLength - 2 * limberGap)',
      'height of the plate, along the joint',
      'geometry: stops short at both ends, so that water runs past',
    ),
    perRow: step(
      'count',
      '1 + ceil(max(0 mm, tall - 2 * rowIn) / pitch - 0.001)',
      'screws in one row',
      'geometry; a thousandth of a space is forgiven',
    ),
    evenPitch: step(
      'length',
      'max(0 mm, tall - 2 * rowIn) / max(1, perRow - 1)',
      'screw to screw, shared out evenly',
      GEOMETRY,
    ),
    rowGap: step(
      'length',
      'half - 2 * rowIn',
      'row to row on one side of the joint',
      'geometry: one row by the joint, one by the edge of the block',
    ),
    screws: step(
      'count',
      'kind == "block" ? 4 * perRow : 0',
      'screws through the panel, two rows to each side of the joint',
      PRACTICE,
    ),
    insideBlock: step(
      'length',
      'thickness + plateThickness - 3 mm',
      'longest screw that stays inside the block',
      '3 mm (1/8 in) clear of the far face: common practice, no source',
      'most',
    ),
    longestScrew: step(
      'screwLength',
      'soldIn == "inch" ? longestInch(insideBlock) : longestMetric(insideBlock)',
      'longest screw sold that stays inside; 0 where none does',
      `lengths that shops keep: ${PRACTICE}`,
    ),
    reachIn: step(
      'length',
      'max(0 mm, longestScrew - thickness)',
      'reach of a screw into the block',
      GEOMETRY,
    ),
    bayThere: step('length', 'bay', 'from this station line to the next one forward', 'geometry'),
    freeBay: step(
      'length',
      'bay - siding',
      'free between the two frames, where both stand on the same side of their lines',
      GEOMETRY,
    ),
    room: step(
      'length',
      '(freeBay - plateLength) / 2',
      'free between the plate and the frame on either side of it; below zero it does not fit',
      'geometry: the joint midway between the frames',
    ),
    fits: step('count', 'room >= 0 mm ? 1 : 0', '1 where it fits between the frames', GEOMETRY),
    jointFrom: step(
      'length',
      'freeBay / 2',
      'from the face of the frame aft to the joint: midway between the frames',
      PRACTICE,
    ),
    where: step(
      'length',
      'framePosition + bay / 2',
      'joint forward of the after end of the bottom, about',
      GEOMETRY,
    ),
    acrossAft: step(
      'length',
      'where - bay',
      'a butt on the other side of the boat stands aft of this',
      `a frame bay apart or more: ${PRACTICE}`,
    ),
    acrossForward: step(
      'length',
      'where + bay',
      'or forward of this',
      `a frame bay apart or more: ${PRACTICE}`,
    ),
  },
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
  table: {
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
  },
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
    'A butt is stiffer and flatter than the panel beside it. Where the panel bends, laminate or saw the block to the curve; a flat one makes a flat in the side.',
    'Butts stand between frames, never on one, and port and starboard at least one bay apart. Keep them out of the tightest bend and out of the bottom where the boat grounds.',
    'Bevel the ends of the block and leave the gap at both, or water stands behind it and rots it.',
    'Grinding glass and cutting plywood make dust that harms lungs and skin, and epoxy sensitises: mask, gloves, fresh air, and the maker’s sheet.',
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
