/** The working of the compound cut. */
import { step } from '../form/define';
import { GEOMETRY } from '../../trade/sources';

const NORMALS = 'geometry of the two normals; for a box of equal sides it is the chart of compound settings';

const EDGE = 'geometry: the line in which both planes meet, square to both normals';

export const compoundCutSteps = {
  angle: step(
    'angle',
    'acos(sin(turn) * cos(lean) * cos(rake) - sin(lean) * sin(rake))',
    'angle between side and transom inside the boat, square to the corner',
    NORMALS,
  ),
  edgeBevel: step(
    'angle',
    'angle - 90°',
    'bevel of the transom’s edge off square, + inner face larger',
    GEOMETRY,
  ),
  sawTilt: step(
    'angle',
    'joint == "mitre" ? 90° - angle / 2 : abs(edgeBevel)',
    'tilt of the blade off square, for the end of the side and the edge of the transom alike',
    NORMALS,
  ),
  edgeBack: step(
    'ratio',
    'sin(rake) * cos(lean) * cos(turn)',
    'run of the corner’s line out of the boat',
    EDGE,
  ),
  edgeOut: step(
    'ratio',
    'sin(lean) * cos(rake) + sin(rake) * cos(lean) * sin(turn)',
    'run of the corner’s line outboard',
    EDGE,
  ),
  edgeUp: step('ratio', 'cos(lean) * cos(rake) * cos(turn)', 'run of the corner’s line up', EDGE),
  endCut: step(
    'angle',
    'acos(-(edgeBack * cos(turn) + edgeOut * sin(turn)) / sqrt(edgeBack^2 + edgeOut^2 + edgeUp^2)) - 90°',
    'mitre across the face of the side, off square to a level line on it; + the top reaches farther out',
    EDGE,
  ),
  memberCut: step(
    'angle',
    'endCut - memberRise',
    'the same for a log or clamp that lies on the side, off square to its own length',
    GEOMETRY,
  ),
  onTransom: step(
    'angle',
    'atan2(edgeOut, cos(lean) * cos(turn))',
    'slant of the transom’s edge, off its centreline, on its face',
    EDGE,
  ),
  transomOff: step(
    'length',
    'thickness * tan(min(sawTilt, 85°))',
    'off the transom’s edge, on its smaller face',
    `${GEOMETRY}; a steeper tilt is counted as 85°`,
  ),
  sideOff: step(
    'length',
    'sideThickness * tan(min(sawTilt, 85°))',
    'off the end of the side, on its shorter face',
    `${GEOMETRY}; a steeper tilt is counted as 85°`,
  ),
} as const;
