/** The working of the transom and its cut-out. */
import { tell } from '../form/fact';
import { shape, corner, largerFace, halfAtCut } from './transom-facts';
import { step } from '../form/define';
import { GEOMETRY } from '../../trade/sources';

const EXPANDED = 'geometry: what leans is longer up its slope than plumb, by the cosine of the rake';

const CLASSES = 'height classes of motor makers’ guides; common practice, no source';

export const transomSteps = {
  hullRise: tell(
    corner,
    'length',
    'corner of the wood above the outside of the bottom on the centreline, plumb',
    ({ rise }) => rise,
  ),
  halfBreadth: tell(
    corner,
    'length',
    'half-breadth of the corner inside the skin, on the face on the station line',
    ({ halfBreadth }) => halfBreadth,
  ),
  upFace: step(
    'length',
    'rise / cos(rake)',
    'the corner up the slope, from the outside of the bottom on the centreline',
    EXPANDED,
  ),
  blankWidth: tell(
    largerFace,
    'length',
    'width of the blank, bevels still on it',
    (corners) => 2 * Math.max(...corners.map(([out]) => out)),
    { how: 'twice the greatest half-breadth of the larger of the two faces' },
  ),
  blankHeight: tell(
    largerFace,
    'length',
    'height of the blank up the slope, bevels still on it',
    (corners) => Math.max(...corners.map(([, up]) => up)) - Math.min(...corners.map(([, up]) => up)),
    { how: 'from the lowest to the highest corner of the larger of the two faces, up the slope' },
  ),
  classHeight: step(
    'length',
    'shaft == "short" ? 15 in : shaft == "long" ? 20 in : shaft == "extraLong" ? 25 in : 30 in',
    'height of the class, plumb, from the outside of the bottom to the cut-out',
    CLASSES,
  ),
  cutHeight: step(
    'length',
    'motorHeight + plateAbove',
    'cut-out above the outside of the bottom, plumb',
    GEOMETRY,
  ),
  alongFace: step(
    'length',
    'cutHeight / cos(rake)',
    'the same up the slope, from the outside of the bottom on the centreline',
    EXPANDED,
  ),
  skinOnFace: tell(
    shape,
    'length',
    'the bottom’s thickness up the slope on the centreline',
    ({ inside }) => inside[0]![1], // every transom has a keel
    { how: 'from the outside of the bottom up the slope to the wood' },
  ),
  cutAboveEdge: step(
    'length',
    'alongFace - skinOnFace',
    'the cut-out up the slope from the transom’s own lower edge, on the centreline',
    'geometry: the bottom lies under the transom’s edge',
  ),
  ifAlong: step(
    'length',
    'cutHeight * cos(rake)',
    'what is left plumb where the motor’s height is laid off up the slope by mistake',
    EXPANDED,
  ),
  topUp: tell(
    shape,
    'length',
    'top of the transom up the slope, from the outside of the bottom on the centreline',
    ({ inside }) => inside.at(-1)![1], // every transom has a sheer
    { how: 'the corner at the sheer, up the slope; the top is straight across' },
  ),
  cutDepth: step(
    'length',
    'max(topUp - alongFace, 0 mm)',
    'depth of the cut-out down the slope from the top',
    GEOMETRY,
  ),
  raise: step(
    'length',
    'max(alongFace - topUp, 0 mm)',
    'what the top lacks up the slope for this motor',
    GEOMETRY,
  ),
  cutWidth: step(
    'length',
    'bracket + 2 * swing',
    'width of the cut-out: bracket and steering swing on both sides',
    'common practice, no source; the motor maker’s drawing holds',
  ),
  halfAtCut: tell(
    halfAtCut,
    'length',
    'half-breadth of the transom at the bottom of the cut-out',
    (breadth) => breadth,
  ),
  sideLeft: step(
    'length',
    'halfAtCut - cutWidth / 2',
    'wood left on each side of the cut-out, at its bottom',
    GEOMETRY,
  ),
  motorTilt: step(
    'angle',
    'rake - motorRake',
    'angle of the motor: how far its shaft hangs out of plumb without a wedge, + its foot too far under the boat',
    GEOMETRY,
  ),
  outOfPlumb: step('angle', 'abs(motorTilt)', 'how far the shaft hangs out of plumb, either way', GEOMETRY),
  wedge: step(
    'length',
    'bracketHeight * tan(abs(motorTilt))',
    'thick end of the wedge that brings the shaft plumb, over the bracket’s height',
    GEOMETRY,
  ),
  clampThickness: step(
    'length',
    'thickness + pads',
    'what the clamps hold: transom and pads together',
    GEOMETRY,
  ),
  freeboard: step('length', 'cutHeight - draught', 'freeboard left at the cut-out, plumb', GEOMETRY),
} as const;
