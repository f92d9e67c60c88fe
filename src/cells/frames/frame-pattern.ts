/** The pattern of a frame: its outline inside the skin, the pieces it is sawn from, and what is cut out of them. */
import type { Hull } from '../../boat';
import { breadthAt } from '../../boat/hull/breadth';
import { stands } from '../../boat/quantities/frame-stands';
import type { Member } from '../../boat/joinery/frame-outline';
import { type Issue, issue, type KindId } from '../../measure';
import { choice, defineCell, hullStep, input, step, type Values } from '../form/define';
import { apartForward } from '../../boat/hull/station-plane';
import { cutLimits, limitWords } from './cut-limits';
import {
  MEMBER_INPUTS,
  memberInHand,
  OUTLINE_INPUTS,
  outlineInHand,
  PIECE_INPUTS,
  piecesInHand,
  thicknessKey,
} from '../common/frame/frame-in-hand';
import { limberDrill } from '../common/frame/limber-drill';
import { framePatterns } from './frame-patterns-drawing';
import { frameView } from './frame-drawing';

const GEOMETRY = 'geometry';
const TAKEN =
  'geometry: thickness is measured square to the panel, the frame is drawn in the plane of the station';
const INSIDE = 'the planes of the skin on both sides of the corner, moved in by their thickness';
const ENDS = 'the member’s outline between its two joints';
const BEVEL = 'the skin’s plane at the corner against the plane of the station';
const FACE = 'on the face that stands on the station line';

const size = (label: string, from: string, preset: string, max: string, min = '3 mm') =>
  input('length', label, { from, preset, min, max, step: '1 mm' });

/** A number of the member spoken of. */
const ofMember = (
  kind: KindId,
  says: string,
  meaning: string,
  find: (member: Member, hull: Hull, values: Values) => number | Issue,
) =>
  hullStep(kind, {
    says,
    uses: MEMBER_INPUTS,
    find: (hull, values) => find(memberInHand(hull, values), hull, values),
    meaning,
    source: GEOMETRY,
  });

/** A number of the whole frame. */
const ofFrame = (
  kind: KindId,
  says: string,
  meaning: string,
  uses: readonly string[],
  find: (hull: Hull, values: Values) => number,
) => hullStep(kind, { says, uses, find, meaning, source: GEOMETRY });

/** The notch at the chine where a member begins; of the bottom, where it ends. */
function logOf(hull: Hull, values: Values) {
  const { panel } = memberInHand(hull, values);
  const chine = hull.edges[Math.max(1, panel.index)];
  return piecesInHand(hull, values).notches.find(({ part, edge }) => part === 'chineLog' && edge === chine);
}

const clampOf = (hull: Hull, values: Values) =>
  piecesInHand(hull, values).notches.find(({ part }) => part === 'sheerClamp')!; // every frame has one

export const framePattern = defineCell({
  id: 'framePattern',
  stage: 'frames',
  title: 'Pattern of a frame',
  question: 'What is the true shape of this frame inside the skin, and which pieces do I saw for it?',
  inputs: {
    frame: choice('Frame', { options: 'frames', preset: 'frame3' }),
    member: choice('Member', {
      options: 'panels',
      preset: 'side',
      note: 'the straight piece under one panel of the skin',
    }),
    joint: choice('Joint between members', {
      options: [
        { id: 'mitre', label: 'mitre' },
        { id: 'butt', label: 'upper stands on lower' },
      ],
      preset: 'mitre',
      note: 'with plates on both faces either way; where panels meet flatter than 150° it is mitred',
    }),
    moulded: input('length', 'Depth of the members', {
      from: 'frame.moulded',
      ofBoat: true,
      preset: '70 mm',
      min: '20 mm',
      max: '300 mm',
      step: '1 mm',
      note: 'from the edge on the skin inward',
    }),
    levelLine: input('length', 'Level line above the base', {
      preset: '250 mm',
      presetInch: '10 in',
      min: '-500 mm',
      max: '3 m',
      step: '10 mm',
      note: 'marked on every frame: any level line to set the frames by',
    }),
    side: choice('Frames stand', {
      from: 'frame.stands',
      ofBoat: true,
      options: stands,
      preset: 'custom',
      note: 'by custom forward of the line before the widest frame, aft of it behind; moulds that get no bevel stand the other way',
    }),
    siding: size('Frame thickness', 'frame.siding', '19 mm', '100 mm'),
    sideThickness: size('Side thickness', 'side.thickness', '6 mm', '40 mm', '2 mm'),
    bottomThickness: size('Bottom thickness', 'bottom.thickness', '9 mm', '40 mm', '2 mm'),
    bilgeThickness: {
      ...size('Thickness of panels between', 'bilge.thickness', '9 mm', '40 mm', '2 mm'),
      note: 'only on a boat with two chines or more',
    },
    keelsonWidth: size('Keelson width', 'keelson.width', '90 mm', '400 mm', '3 mm'),
    keelsonThickness: size('Keelson thickness', 'keelson.thickness', '18 mm', '150 mm'),
    limberWidth: size('Limber width, each side', 'frame.limberWidth', '12 mm', '2 in'),
    holeDiameter: limberDrill(),
    logThickness: size('Chine log thickness', 'chineLog.thickness', '19 mm', '150 mm'),
    logWidth: { ...size('Chine log width', 'chineLog.width', '38 mm', '400 mm'), note: 'up the side' },
    clampThickness: size('Sheer clamp thickness', 'sheerClamp.thickness', '19 mm', '150 mm'),
    clampWidth: {
      ...size('Sheer clamp width', 'sheerClamp.width', '38 mm', '400 mm'),
      note: 'down the side',
    },
    gussetLeg: size('Gusset, along each member', 'gusset.leg', '150 mm', '600 mm', '30 mm'),
    gussetThickness: size('Gusset thickness', 'gusset.thickness', '9 mm', '30 mm'),
    beyond: input('length', 'Left above the sheer', {
      from: 'frame.aboveSheer',
      preset: '25 mm',
      min: '0 mm',
      max: '1 m',
      step: '5 mm',
      note: 'trimmed when the sheer has been faired; common practice, no source',
    }),
    screwClear: input('length', 'Wood kept between screws and later cuts', {
      from: 'frame.screwClearance',
      preset: '12.5 mm',
      min: '0 mm',
      max: '100 mm',
      step: '1 mm',
      note: 'three diameters of a No. 8 screw, from the rim of its head; common practice, no source',
    }),
    gapAllowed: input('length', 'Gap allowed under the skin', {
      bound: 'most',
      preset: '2 mm',
      presetInch: '1/16 in',
      min: '0.1 mm',
      max: '20 mm',
      step: '0.5 mm',
      note: 'what thickened epoxy fills; common practice, no source',
    }),
  },
  groups: {
    'The frame': ['side', 'siding', 'beyond', 'screwClear', 'gapAllowed'],
    'The panels': ['sideThickness', 'bottomThickness', 'bilgeThickness'],
    'Keelson and limbers': ['keelsonWidth', 'keelsonThickness', 'limberWidth', 'holeDiameter'],
    'Logs and clamps': ['logThickness', 'logWidth', 'clampThickness', 'clampWidth'],
    'The gussets': ['gussetLeg', 'gussetThickness'],
  },
  steps: {
    stands: hullStep('choice', {
      says: 'by custom forward of its line before the widest frame, aft of it behind, so that bevels are only cut off',
      uses: ['frame', 'side'],
      find: (hull, { frame, side }) =>
        side === 'forward' || side === 'aft' ? side : hull.station(String(frame)).stands,
      meaning: 'side of the station line on which the frame stands',
      source: 'custom of the trade; common practice, no source',
    }),
    leans: hullStep('length', {
      says: 'foremost edge less aftmost, at this frame',
      uses: ['frame'],
      find: (hull, { frame }) => apartForward(hull.station(String(frame)).corners),
      meaning: 'how far the frame leans, fore and aft',
      source: GEOMETRY,
    }),
    skinThickness: ofMember(
      'length',
      'the panel’s thickness where the offsets are to the outside, none where they are to the inside',
      'skin between the offsets and the member',
      ({ panel }, hull, values) =>
        hull.offsets.offsetsTo === 'inside of skin' ? 0 : Number(values[thicknessKey(panel.name)]),
    ),
    footBevel: ofMember(
      'angle',
      BEVEL,
      'bevel at the inner end, off square; + opens going forward',
      ({ bevels }) => bevels[0],
    ),
    headBevel: ofMember(
      'angle',
      BEVEL,
      'bevel at the outer end, off square; + opens going forward',
      ({ bevels }) => bevels[1],
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
    footHalfBreadth: ofMember(
      'length',
      INSIDE,
      'half-breadth of the member’s inner corner',
      ({ inner }) => inner[0],
    ),
    footHeight: ofMember(
      'length',
      INSIDE,
      'height of the member’s inner corner above the base',
      ({ inner }) => inner[1],
    ),
    headHalfBreadth: ofMember(
      'length',
      INSIDE,
      'half-breadth of the member’s outer corner',
      ({ outer }) => outer[0],
    ),
    headHeight: ofMember(
      'length',
      INSIDE,
      'height of the member’s outer corner above the base',
      ({ outer }) => outer[1],
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
    pieces: ofMember(
      'count',
      'one right across where the bottom is flat, else one to port and one to starboard',
      'pieces to saw',
      ({ pieces }) => pieces,
    ),
    cutLength: ofMember(
      'length',
      ENDS,
      'length of a piece, from long point to long point',
      ({ length }) => length,
    ),
    footCut: ofMember(
      'angle',
      ENDS,
      'cut at the inner end, off square; + leaves the edge on the skin longer; none of a piece right across',
      ({ footCut }) => footCut,
    ),
    headCut: ofMember(
      'angle',
      ENDS,
      'cut at the outer end, off square; + leaves the edge on the skin longer',
      ({ headCut }) => headCut,
    ),
    standsOff: ofMember(
      'length',
      'the skin’s section between the two corners, square to the straight edge, where it stands off most',
      'skin off the straight edge, + outside it; read on the face that the offsets are to',
      ({ standsOff, panel }) => standsOff ?? issue(`the ${panel.label} does not reach across this frame`),
    ),
    proud: ofFrame(
      'length',
      'frame thickness × tangent of the bevel, wherever on the frame the skin opens the other way',
      'most that the face away from the line reaches beyond the one on it',
      OUTLINE_INPUTS,
      (hull, values) => Math.max(0, ...outlineInHand(hull, values).members.flatMap(({ farther }) => farther)),
    ),
    keelHeight: ofFrame(
      'length',
      INSIDE,
      'height of the frame’s foot on the centreline above the base',
      OUTLINE_INPUTS,
      (hull, values) => outlineInHand(hull, values).corners[0]![1],
    ),
    sheerHeight: ofFrame(
      'length',
      INSIDE,
      'height of the sheer mark above the base',
      OUTLINE_INPUTS,
      (hull, values) => outlineInHand(hull, values).corners.at(-1)![1],
    ),
    markHeight: step(
      'length',
      'min(max(levelLine, keelHeight), sheerHeight)',
      'height of the level mark above the base, kept on the frame',
      GEOMETRY,
    ),
    markHalfBreadth: ofFrame(
      'length',
      'the frame’s edge at that height',
      'half-breadth of the frame at the level mark',
      [...OUTLINE_INPUTS, 'markHeight'],
      (hull, values) => breadthAt(outlineInHand(hull, values).corners, Number(values['markHeight'])) ?? 0,
    ),
    screwsIn: step(
      'length',
      'screwClear + siding * tan(max(abs(footBevel), abs(headBevel)))',
      'how far in from the member’s edge the rim of a screw’s head stays clear of its bevel',
      'geometry; the clearance is common practice, no source',
    ),
    keelSlope: ofFrame(
      'angle',
      'slope of the keel in profile at the station',
      'slope of the keelson, + rising forward',
      ['frame'],
      (hull, values) => {
        const { index } = hull.station(String(values['frame']));
        return Math.atan(hull.edges[0]!.slopes[index]!.profile); // every hull has a keel
      },
    ),
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
    logDepth: ofFrame(
      'length',
      'the log’s thickness over the cosine of the bevel there',
      'depth of the chine log’s notch, square to the edge on the panel above; 0 without a chine',
      PIECE_INPUTS,
      (hull, values) => logOf(hull, values)?.depth ?? 0,
    ),
    logAlong: ofFrame(
      'length',
      'the log’s width as the plane of the station cuts it',
      'length of the chine log’s notch from the corner up; 0 without a chine',
      PIECE_INPUTS,
      (hull, values) => logOf(hull, values)?.along ?? 0,
    ),
    clampDepth: ofFrame(
      'length',
      'the clamp’s thickness over the cosine of the side’s bevel at the sheer',
      'depth of the sheer clamp’s notch, square to the edge on the side',
      PIECE_INPUTS,
      (hull, values) => clampOf(hull, values).depth,
    ),
    clampAlong: ofFrame(
      'length',
      'the clamp’s width as the plane of the station cuts it',
      'length of the sheer clamp’s notch from the sheer mark down',
      PIECE_INPUTS,
      (hull, values) => clampOf(hull, values).along,
    ),
    leastLeg: {
      ...ofFrame(
        'length',
        'twice the depth of the members over the sine of the angle between them, at the flattest chine',
        'leg with which a gusset’s long edge just passes the inner corner of the joint',
        PIECE_INPUTS,
        (hull, values) => Math.max(0, ...piecesInHand(hull, values).gussets.map(({ leastLeg }) => leastLeg)),
      ),
      bound: 'least',
    },
    jointThickness: step(
      'length',
      'siding + 2 * gussetThickness',
      'thickness through a joint with plates on both faces',
      GEOMETRY,
    ),
    lumber: ofFrame(
      'length',
      'the lengths of all members, port and starboard',
      'frame stock for this frame, without kerfs and waste',
      OUTLINE_INPUTS,
      (hull, values) =>
        outlineInHand(hull, values).members.reduce((sum, { length, pieces }) => sum + length * pieces, 0),
    ),
  },
  answers: [
    {
      of: 'cutLength',
      label: 'member, to cut',
      from: `along the piece, from long point to long point, ${FACE}`,
      tolerance: '1 mm',
    },
    {
      of: 'headHalfBreadth',
      label: 'its outer corner, out',
      from: `from the centreline, level, to the edge on the skin, ${FACE}; port and starboard alike`,
      tolerance: '1 mm',
    },
    {
      of: 'headHeight',
      label: 'its outer corner, up',
      from: `from the base line, plumb, to the edge on the skin, ${FACE}`,
      tolerance: '1 mm',
    },
  ],
  inWords: [
    'The frame stands',
    {
      when: 'stands == "forward"',
      says: 'forward of its line, so draw on its after face.',
      otherwise: 'aft of its line, so draw on its forward face.',
    },
    'Saw',
    {
      when: 'pieces == 1',
      says: 'one {member} member {cutLength} long right across, both ends {headCut} off square',
      otherwise:
        'two {member} members {cutLength} long, of opposite hands, {footCut} off square at the inner end and {headCut} at the outer',
    },
    '(+ is longer on the skin); {lumber} of stock makes the whole frame.',
  ],
  table: {
    caption:
      'Members of this frame: corners out from the centreline and up from the base, on the face on the station line, port and starboard alike',
    over: 'member',
    columns: [
      { of: 'footHalfBreadth', label: 'inner corner out' },
      { of: 'footHeight', label: 'inner corner up' },
      { of: 'headHalfBreadth', label: 'outer corner out' },
      { of: 'headHeight', label: 'outer corner up' },
      { of: 'cutLength', label: 'length' },
      { of: 'footCut', label: 'inner cut' },
      { of: 'headCut', label: 'outer cut' },
      { of: 'standsOff', label: 'skin off straight' },
    ],
  },
  warnings: [
    {
      when: 'leans > 1 mm',
      says: 'By the table this frame leans by {leans}, fore and aft, and the pattern is drawn as if it stood plumb. Correct the number forward, or loft this frame on the floor.',
      limit: 'geometry; frames are taken as plumb',
      weight: 'stop',
    },
    {
      when: 'abs(standsOff) > gapAllowed',
      says: 'Between the corners the skin stands {standsOff} off the straight {member} member (+ outside it). It bears at the corners only: leave it so, pack it or shape the edge to the skin, as the plan says; do not pull the skin in.',
      limit: 'the gap allowed; common practice, no source',
      weight: 'mind',
    },
    {
      when: 'proud > 0.5 mm',
      says: 'On part of this frame the face away from the line is the larger one, by up to {proud}; the pattern shows it dashed, outside the line. Saw to the outer of the two lines and plane back on the face that stands on the line.',
      limit: 'geometry',
      weight: 'mind',
    },
    {
      when: 'leastLeg > gussetLeg and leastLeg <= 2 * gussetLeg',
      says: 'With legs of {gussetLeg} the gusset does not reach over the inner corner of the joint; {leastLeg} just does, and glue wants more.',
      limit: 'geometry',
      weight: 'mind',
    },
    {
      when: 'leastLeg > 2 * gussetLeg',
      says: 'Two members meet so flat that no gusset of this shape reaches their inner corner: put a straight plate over that joint, on both faces, {gussetLeg} to each side of it.',
      limit: 'geometry',
      weight: 'mind',
    },
    {
      when: `max(slotDepth, logDepth, clampDepth) > moulded * (${cutLimits.backed})`,
      says: 'A notch takes more than a third of the {moulded} depth (keelson {slotDepth}, chine log {logDepth}, sheer clamp {clampDepth}): take deeper stock, or back the cut.',
      limit: limitWords.backed,
      weight: 'mind',
    },
    {
      when: 'abs(levelLine - markHeight) > 0.1 mm',
      says: 'A level line {levelLine} above the base does not cross this frame; the mark is put at {markHeight}.',
      limit: 'geometry',
      weight: 'mind',
    },
  ],
  cautions: [
    'Lay the pieces on the pattern and check both diagonals before the plates are glued: a frame out of true can’t be planed right.',
    'Carry centreline, level line, sheer and station onto both faces before the frame leaves the pattern, with its name and which face stands on the line.',
    'No screw in the dashed places: something is still to be sawn or planed off there, and a blade that meets a screw throws it.',
    'Where two bottom members meet on the centreline they need plates too; they are not counted among the gussets.',
    'Print at 100 %, never fitted to the page, and measure the bar on every sheet.',
    'Short pieces on a mitre saw: clamp them, keep hands out of the saw’s path, as the maker of the saw says.',
  ],
  sources: [
    {
      text: 'Deduction thickness / cos(bevel), square to the section, and the sections of long timbers in the station’s plane: geometry',
      known: 'geometry',
    },
    {
      text: 'Which side of its line a frame stands, marks on frames, notches of at most a third of the depth at gusseted joints: custom of the trade',
      known: 'common practice',
    },
  ],
  lights: ['{frame}', '{member}', 'frame', 'gusset'],
  wide: true,
  draw: (v, on) => frameView(v, on),
  patterns: (v, on) => framePatterns(v, on),
});
