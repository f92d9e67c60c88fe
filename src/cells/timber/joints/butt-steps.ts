/** The working of the butt. */
import { longestScrew } from '../../common/screws/screw-choice';
import { printedPlate, plateEachSide } from '../../../trade/butt-plates';
import { curedResinDensity } from '../../../trade/glass';
import { type CellFunction, step } from '../../form/define';
import { screwLengths } from '../../../trade/lengths-sold';
import { INCH } from '../../../measure/si';
import { buttKept } from '../../../trade/scarf-strength';
import { GEOMETRY } from '../../../trade/sources';

export const PRACTICE = 'common practice, no source';

export const PRINTED = 'from memory: APA, Plywood Design Specification, plywood splice plates';

export const HANDBOOK = 'Wood Handbook, USDA FPL-GTR-190 (2010), ch. 10';

/** The shortest screw that shops keep, over what the cell calls `soldIn`. */
const SHORTEST = `(soldIn == "inch" ? ${screwLengths.inch[0]! / INCH} in : ${1000 * screwLengths.metric[0]!} mm)`;

/** Wood left over the point of a screw. */
const POINT = '(soldIn == "inch" ? 0.125 in : 3 mm)';

/** A block is cut to lengths that are easily marked, and never shorter than the first of them. */
const [LEAST_BLOCK, BLOCK_STEP] = [
  '(soldIn == "inch" ? 6 in : 150 mm)',
  '(soldIn == "inch" ? 0.5 in : 10 mm)',
];

export const buttFunctions = {
  ...longestScrew,
  printed: {
    takes: ['length', 'count'],
    gives: 'length',
    how: 'printed length for the row nearest in thickness: 6 in of plate on 1/4 in, 8 on 5/16, 10 on 3/8 sanded and 12 unsanded, 14 on 1/2, 16 on 5/8 and 3/4; where none is printed, 24 thicknesses',
    run: (thickness, sanded) =>
      printedPlate(thickness, sanded > 0 ? 'sanded' : 'unsanded') ?? 2 * plateEachSide * thickness,
  },
} satisfies Readonly<Record<string, CellFunction>>;

export const buttSteps = {
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
    `fabric * (1 / glassDensity + (1 / glassShare - 1) / (${curedResinDensity.value} kg/m^3))`,
    'thickness of one ply of glass, cured',
    'volumes of glass and resin; with these densities it is the form of ISO 12215-5, (w / 3.072) (2.56 / share - 1.36)',
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
  reachIn: step('length', 'max(0 mm, longestScrew - thickness)', 'reach of a screw into the block', GEOMETRY),
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
} as const;
