/** The working of the limbers. */
import { step } from '../form/define';
import { GEOMETRY } from '../../trade/sources';

export const UNWIN = 'W. C. Unwin, Hydraulics, in Encyclopaedia Britannica, 11th edition (1910)';

export const limberSteps = {
  slotWidth: step('length', 'keelsonWidth + 2 * limberWidth', 'width of the slot, across the boat', GEOMETRY),
  climb: step(
    'length',
    'keelsonThickness * (sqrt(1 + keelSlope^2) - 1)',
    'what a keelson that climbs takes plumb beyond its thickness',
    GEOMETRY,
  ),
  cutDepth: step(
    'length',
    'keelsonThickness + (climb > 0.25 mm ? climb : 0 mm)',
    'depth of the slot at the centreline, plumb, which the saw is set to',
    'geometry; to less than a quarter of a millimetre (0.01 in) no saw is set: common practice, no source',
  ),
  roofSlope: step(
    'angle',
    'atan(keelSlope)',
    'slope of the slot’s top across the frame, + higher on the forward face',
    GEOMETRY,
  ),
  roofRise: step(
    'length',
    'siding * abs(keelSlope)',
    'how much higher the slot’s top lies on one face than on the other, measured from the base line',
    GEOMETRY,
  ),
  holeFromCentre: step(
    'length',
    'keelsonWidth / 2 + limberWidth - holeDiameter / 2',
    'hole centre from the centreline, on each side: the outer edge of the hole is the side of the slot',
    GEOMETRY,
  ),
  holeAboveBottom: step(
    'length',
    'cutDepth - holeDiameter / 2',
    'hole centre above the bottom of the frame at the centreline: the top of the hole is the top of the slot',
    GEOMETRY,
  ),
  holeAboveEdge: step(
    'length',
    'holeAboveBottom - holeFromCentre * tan(deadrise)',
    'hole centre above the frame’s edge at the hole itself, plumb; - where deadrise has lifted the edge past it',
    GEOMETRY,
  ),
  passes: step(
    'count',
    'ceil(slotWidth / max(kerf, 0.1 mm) - 0.000001)',
    'passes of the saw side by side',
    GEOMETRY,
  ),
  innerHeight: step(
    'length',
    'max(cutDepth - keelsonWidth / 2 * tan(deadrise), 0 mm)',
    'height of the slot beside the keelson, where deadrise has lifted the bottom',
    GEOMETRY,
  ),
  outerHeight: step(
    'length',
    'max(cutDepth - slotWidth / 2 * tan(deadrise), 0 mm)',
    'height of the slot at its sides, where deadrise has lifted the bottom',
    GEOMETRY,
  ),
  openWidth: step(
    'length',
    'outerHeight > 0 mm ? limberWidth : innerHeight / tan(deadrise)',
    'width of the limber that is open: a steep bottom runs up to the top of the slot before its side',
    GEOMETRY,
  ),
  cornerRadius: step(
    'length',
    'min(holeDiameter / 2, limberWidth, outerHeight)',
    'radius of the rounded corner, as far as it shows in the limber',
    GEOMETRY,
  ),
  drainArea: step(
    'area',
    'openWidth * (innerHeight + outerHeight) / 2 - (1 - pi / 4) * cornerRadius^2',
    'clear area of the limber on one side of the keelson',
    GEOMETRY,
  ),
  clearArea: step('area', '2 * drainArea', 'clear area of both limbers', GEOMETRY),
  flow: step(
    'flow',
    'coefficient * clearArea * sqrt(2 * g * head)',
    'water through both limbers while the puddle stands that deep before them',
    `flow through an orifice, Q = c A √(2 g h), c = 0.97 × 0.64 = 0.62 for a sharp edge: ${UNWIN}`,
  ),
  slackening: step(
    'ratio',
    'lies == "level" ? (deadrise < 1° ? 2 : 4 / 3) : (deadrise < 1° ? 4 / 3 : 6 / 5)',
    'how many times longer the puddle takes to run out than at its first flow: as it falls the flow slackens',
    'integral of dV / Q as the depth falls: the surface keeps its size on a level flat bottom, shrinks as the depth on a vee or out of trim, as its square on both',
  ),
  drainTime: step(
    'minutes',
    'slackening * bucket / max(flow, 0.1 mL/min)',
    'time for the bucket to run through both limbers; less than a drip counts as two drops (0.1 mL) a minute',
    GEOMETRY,
  ),
  depthThere: step(
    'length',
    'frameDepth / cos(deadrise)',
    'depth of the members on the centreline, plumb',
    GEOMETRY,
  ),
  woodLeft: step('length', 'depthThere - cutDepth', 'wood left above the slot', GEOMETRY),
  depthTaken: step('share', 'cutDepth / depthThere', 'share of the depth that the slot takes', GEOMETRY),
  modulusLeft: step(
    'share',
    'max(1 - depthTaken, 0)^2',
    'strength in bending left, as a share of the uncut member',
    'section modulus of a rectangle, which goes with the square of its depth',
  ),
  stiffnessLeft: step(
    'share',
    'max(1 - depthTaken, 0)^3',
    'stiffness left, as a share of the uncut member',
    'second moment of area of a rectangle, which goes with the cube of its depth',
  ),
} as const;
