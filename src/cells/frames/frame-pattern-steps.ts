/** The working of the pattern of a frame. */
import { breadthAt } from '../../boat/hull/breadth';
import { apartForward } from '../../boat/hull/station-plane';
import { issue } from '../../measure';
import {
  type FrameAsked,
  member,
  outline,
  pieces,
  type PiecesAsked,
  skinOver,
  stands,
} from '../common/frame/frame-facts';
import { step } from '../form/define';
import { fact, tell } from '../form/fact';
import { GEOMETRY } from '../../trade/sources';

const TAKEN =
  'geometry: thickness is measured square to the panel, the frame is drawn in the plane of the station';
const BEVEL = { how: 'the skin’s plane at the corner against the plane of the station' };
const INSIDE = { how: outline.how };

export interface MemberAsked extends FrameAsked {
  readonly member: string;
}

const station = fact('the plan’s station', GEOMETRY, ({ frame }: { readonly frame: string }, { hull }) =>
  hull.station(frame),
);

const skin = fact(
  'the panel’s thickness where the offsets are to the outside, none where they are to the inside',
  GEOMETRY,
  (asked: MemberAsked, { hull, ask }) =>
    hull.offsets.offsetsTo === 'inside of skin' ? 0 : skinOver(asked, ask(member).panel.name),
);

const levelMark = fact(
  'the frame’s edge at that height',
  GEOMETRY,
  ({ markHeight }: FrameAsked & { readonly markHeight: number }, { ask }) =>
    breadthAt(ask(outline).corners, markHeight) ?? 0,
);

const keelSlope = fact(
  'slope of the keel in profile at the station',
  GEOMETRY,
  (_: FrameAsked, { hull, ask }) => Math.atan(hull.edges[0]!.slopes[ask(station).index]!.profile), // every hull has a keel, with a slope a station
);

/** The notch at the chine where the member begins; of the bottom, where it ends. */
const log = fact(pieces.how, GEOMETRY, (_: PiecesAsked, { hull, ask }) => {
  const chine = hull.edges[Math.max(1, ask(member).panel.index)];
  const { notches } = ask(pieces);
  // Without a chine there is none.
  return notches.find(({ part, edge }) => part === 'chineLog' && edge === chine) ?? { depth: 0, along: 0 };
});

const clamp = fact(
  pieces.how,
  GEOMETRY,
  (_: PiecesAsked, { ask }) => ask(pieces).notches.find(({ part }) => part === 'sheerClamp')!, // every frame has one
);

export const frameSteps = {
  stands: tell(stands, 'choice', 'side of the station line on which the frame stands', (side) => side),
  leans: tell(
    station,
    'length',
    'how far the frame leans, fore and aft',
    ({ corners }) => apartForward(corners),
    { how: 'foremost edge less aftmost, at this frame' },
  ),
  skinThickness: tell(skin, 'length', 'skin between the offsets and the member', (thickness) => thickness),
  footBevel: tell(
    member,
    'angle',
    'bevel at the inner end, off square; + opens going forward',
    ({ bevels }) => bevels[0],
    BEVEL,
  ),
  headBevel: tell(
    member,
    'angle',
    'bevel at the outer end, off square; + opens going forward',
    ({ bevels }) => bevels[1],
    BEVEL,
  ),
  footTaken: step(
    'length',
    'skinThickness / cos(footBevel)',
    'taken off the offsets at the inner end, square to the section',
    TAKEN,
  ),
  headTaken: step(
    'length',
    'skinThickness / cos(headBevel)',
    'taken off the offsets at the outer end, square to the section',
    TAKEN,
  ),
  footHalfBreadth: tell(
    member,
    'length',
    'half-breadth of the member’s inner corner',
    ({ inner }) => inner[0],
    INSIDE,
  ),
  footHeight: tell(
    member,
    'length',
    'height of the member’s inner corner above the base',
    ({ inner }) => inner[1],
    INSIDE,
  ),
  headHalfBreadth: tell(
    member,
    'length',
    'half-breadth of the member’s outer corner',
    ({ outer }) => outer[0],
    INSIDE,
  ),
  headHeight: tell(
    member,
    'length',
    'height of the member’s outer corner above the base',
    ({ outer }) => outer[1],
    INSIDE,
  ),
  edgeLength: step(
    'length',
    'sqrt((headHalfBreadth - footHalfBreadth)^2 + (headHeight - footHeight)^2)',
    'along the skin from corner to corner, one side of the boat',
    GEOMETRY,
  ),
  slope: step(
    'angle',
    'atan2(headHeight - footHeight, headHalfBreadth - footHalfBreadth)',
    'slope of the member’s edge from level',
    GEOMETRY,
  ),
  pieces: tell(member, 'count', 'pieces to saw', (one) => one.pieces, {
    how: 'one right across where the bottom is flat, else one to port and one to starboard',
  }),
  cutLength: tell(
    member,
    'length',
    'length of a piece, from long point to long point',
    ({ length }) => length,
  ),
  footCut: tell(
    member,
    'angle',
    'cut at the inner end, off square; + leaves the edge on the skin longer; none of a piece right across',
    (one) => one.footCut,
  ),
  headCut: tell(
    member,
    'angle',
    'cut at the outer end, off square; + leaves the edge on the skin longer',
    (one) => one.headCut,
  ),
  standsOff: tell(
    member,
    'length',
    'skin off the straight edge, + outside it; read on the face that the offsets are to',
    ({ standsOff, panel }) => standsOff ?? issue(`the ${panel.label} does not reach across this frame`),
    {
      how: 'the skin’s section between the two corners, square to the straight edge, where it stands off most',
    },
  ),
  proud: tell(
    outline,
    'length',
    'most that the face away from the line reaches beyond the one on it',
    ({ members }) => Math.max(0, ...members.flatMap(({ farther }) => farther)),
    {
      how: 'frame thickness × tangent of the bevel, wherever on the frame the skin opens the other way',
    },
  ),
  keelHeight: tell(
    outline,
    'length',
    'height of the frame’s foot on the centreline above the base',
    ({ corners }) => corners[0]![1], // a frame has a keel
  ),
  sheerHeight: tell(
    outline,
    'length',
    'height of the sheer mark above the base',
    ({ corners }) => corners.at(-1)![1], // and a sheer
  ),
  markHeight: step(
    'length',
    'min(max(levelLine, keelHeight), sheerHeight)',
    'height of the level mark above the base, kept on the frame',
    GEOMETRY,
  ),
  markHalfBreadth: tell(
    levelMark,
    'length',
    'half-breadth of the frame at the level mark',
    (breadth) => breadth,
  ),
  screwsIn: step(
    'length',
    'screwClear + siding * tan(max(abs(footBevel), abs(headBevel)))',
    'how far in from the member’s edge the rim of a screw’s head stays clear of its bevel',
    'geometry; the clearance is common practice, no source',
  ),
  keelSlope: tell(keelSlope, 'angle', 'slope of the keelson, + rising forward', (slope) => slope),
  slotWidth: step(
    'length',
    'keelsonWidth + 2 * limberWidth',
    'width of the keelson’s slot, limbers included',
    'geometry; common practice for the limbers, no source',
  ),
  slotDepth: step(
    'length',
    'keelsonThickness / cos(keelSlope)',
    'depth of the keelson’s slot on the centreline, plumb: the keelson climbs through it',
    GEOMETRY,
  ),
  slotCorner: step(
    'length',
    'min(holeDiameter / 2, slotWidth / 2, slotDepth)',
    'radius in the upper corners of the slot',
    GEOMETRY,
  ),
  logDepth: tell(
    log,
    'length',
    'depth of the chine log’s notch, square to the edge on the panel above; 0 without a chine',
    ({ depth }) => depth,
    { how: 'the log’s thickness over the cosine of the bevel there' },
  ),
  logAlong: tell(
    log,
    'length',
    'length of the chine log’s notch from the corner up; 0 without a chine',
    ({ along }) => along,
    { how: 'the log’s width as the plane of the station cuts it' },
  ),
  clampDepth: tell(
    clamp,
    'length',
    'depth of the sheer clamp’s notch, square to the edge on the side',
    ({ depth }) => depth,
    { how: 'the clamp’s thickness over the cosine of the side’s bevel at the sheer' },
  ),
  clampAlong: tell(
    clamp,
    'length',
    'length of the sheer clamp’s notch from the sheer mark down',
    ({ along }) => along,
    { how: 'the clamp’s width as the plane of the station cuts it' },
  ),
  leastLeg: tell(
    pieces,
    'length',
    'leg with which a gusset’s long edge just passes the inner corner of the joint',
    ({ gussets }) => Math.max(0, ...gussets.map(({ leastLeg }) => leastLeg)),
    {
      bound: 'least',
      how: 'twice the depth of the members over the sine of the angle between them, at the flattest chine',
    },
  ),
  jointThickness: step(
    'length',
    'siding + 2 * gussetThickness',
    'thickness through a joint with plates on both faces',
    GEOMETRY,
  ),
  lumber: tell(
    outline,
    'length',
    'frame stock for this frame, without kerfs and waste',
    ({ members }) => members.reduce((sum, { length, pieces }) => sum + length * pieces, 0),
    { how: 'the lengths of all members, port and starboard' },
  ),
} as const;
