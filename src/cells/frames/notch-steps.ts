/** The working of the notch. */
import { step } from '../form/define';
import { GEOMETRY } from '../../trade/sources';

const PLANES = 'geometry: the plane of the skin and the run of the long line, cut by the plane of the frame';

const PRACTICE = 'common practice, no source';

export const notchSteps = {
  sideFlare: step(
    'angle',
    'timber == "chineLog" ? flare : sheerFlare',
    'flare of the side where the timber lies, from plumb',
    GEOMETRY,
  ),
  plan: step(
    'ratio',
    'timber == "chineLog" ? chinePlan : sheerPlan',
    'slope of the timber in plan',
    GEOMETRY,
  ),
  profile: step(
    'ratio',
    'timber == "chineLog" ? chineProfile : sheerProfile',
    'slope of the timber in profile',
    GEOMETRY,
  ),
  bevel: step(
    'angle',
    'atan(plan * cos(sideFlare) - profile * sin(sideFlare))',
    'slope of the notch’s floor across the frame: the bevel of its edge, + opens going forward',
    PLANES,
  ),
  climb: step(
    'ratio',
    'plan * sin(sideFlare) + profile * cos(sideFlare)',
    'upsweep of the timber along the frame’s edge, + rising forward',
    PLANES,
  ),
  skew: step(
    'angle',
    'atan(climb * cos(bevel))',
    'slope of the notch’s ends, off a line squared across the bevelled edge',
    PLANES,
  ),
  bed: step(
    'length',
    'max(thickness - proud, 0 mm)',
    'thickness let into the frame, square to the skin',
    GEOMETRY,
  ),
  nearDepth: step(
    'length',
    'bed / cos(bevel)',
    'depth on the face on the station line, square to its edge; from the bevelled edge the same on both faces',
    'geometry: thickness is measured square to the skin, the notch in the plane of the frame',
  ),
  planedOff: step(
    'length',
    'siding * tan(abs(bevel))',
    'planed off the edge on the other face when it is bevelled',
    'geometry: frame thickness × tangent of the bevel',
  ),
  farDepth: step(
    'length',
    'nearDepth + planedOff',
    'depth on the other face, from its edge still square',
    GEOMETRY,
  ),
  along: step(
    'length',
    '(width + fit) / cos(skew)',
    'width of the notch along the frame’s edge, on the face on the station line',
    GEOMETRY,
  ),
  startsAt: step(
    'length',
    'timber == "chineLog" ? 0 mm : setBack / cos(skew)',
    'where it begins, along the edge from the chine or the sheer mark',
    GEOMETRY,
  ),
  endsAt: step(
    'length',
    'startsAt + along',
    'where it ends, along the edge from the chine or the sheer mark',
    GEOMETRY,
  ),
  foot: step(
    'length',
    'timber == "chineLog" ? nearDepth / max(cos(flare + deadrise), 0.1) : 0 mm',
    'where a log’s notch ends on the bottom edge, from the chine inboard; at most ten times its depth, where side and bottom nearly run on in one line',
    GEOMETRY,
  ),
  bladeHeight: step(
    'length',
    'sawn == "planed" ? bed : nearDepth',
    'height of the blade over the table',
    'geometry: on the bevelled edge the floor is parallel to the table; on a square one the saw stops where the shallower face does',
  ),
  mitre: step(
    'angle',
    'sawn == "planed" ? skew : atan(climb * cos(bevel)^2)',
    'turn of the mitre gauge from square',
    PLANES,
  ),
  tilt: step(
    'angle',
    'sawn == "planed" ? 0° : atan(abs(climb * sin(bevel)) / sqrt((climb * cos(bevel))^2 + 1 / cos(bevel)^2))',
    'tilt of the blade off plumb: the notch’s ends stand square to the skin',
    PLANES,
  ),
  passes: step(
    'count',
    'ceil((along + land) / (kerf + land) - 0.000001)',
    'passes of the saw, the first and the last along the marks',
    GEOMETRY,
  ),
  sawnOut: step('length', 'min(passes * kerf, along)', 'width that the saw clears', GEOMETRY),
  landLeft: step(
    'length',
    '(along - sawnOut) / max(passes - 1, 1)',
    'wood left between two cuts, shared out evenly',
    GEOMETRY,
  ),
  chiselled: step('length', 'along - sawnOut', 'width left for the chisel, all lands together', GEOMETRY),
  woodLeft: step(
    'length',
    'moulded - farDepth',
    'wood left behind the notch, on the face that is planed smaller',
    GEOMETRY,
  ),
  depthTaken: step(
    'share',
    'nearDepth / max(moulded - planedOff, 1 mm)',
    'share of the depth that the notch takes there, once the edge is bevelled',
    GEOMETRY,
  ),
  modulusLeft: step(
    'share',
    'max(1 - depthTaken, 0)^2',
    'strength in bending left there, as a share of the uncut member',
    'section modulus of a rectangle, which goes with the square of its depth',
  ),
  stiffnessLeft: step(
    'share',
    'max(1 - depthTaken, 0)^3',
    'stiffness left, as a share of the uncut member',
    'second moment of area of a rectangle, which goes with the cube of its depth',
  ),
  keepFrom: step(
    'length',
    'max(startsAt - screwClear, 0 mm)',
    'where the place kept free of screws begins, along the edge from the chine or the sheer mark',
    PRACTICE,
    'most',
  ),
  keepTo: step(
    'length',
    'endsAt + screwClear',
    'where it ends, along the edge from the chine or the sheer mark',
    PRACTICE,
    'least',
  ),
  keepDepth: step(
    'length',
    'farDepth + screwClear',
    'how far in from the edge it reaches',
    PRACTICE,
    'least',
  ),
} as const;
