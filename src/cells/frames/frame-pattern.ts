/** The pattern of a frame: its outline inside the skin, the pieces it is sawn from, and what is cut out of them. */
import { choice, defineCell, input } from '../form/define';
import { words } from '../form/in-words';
import { fromBoat } from '../form/from-boat';
import { chosenFromBoat } from '../form/from-shop';
import { tableOf } from '../form/row-quantities';
import { frameInputs, memberJoints } from '../common/frame/frame-inputs';
import { cutLimits, limitWords } from './cut-limits';
import { frameView } from './frame-drawing';
import { frameSteps } from './frame-pattern-steps';
import { framePatterns } from './frame-patterns-drawing';

const FACE = 'on the face that stands on the station line';

const STANDS = {
  when: 'stands == "forward"',
  says: 'forward of its line, so draw on its after face.',
  otherwise: 'aft of its line, so draw on its forward face.',
};
const MEMBERS = {
  when: 'pieces == 1',
  says: 'one {member} member {cutLength} long right across, both ends {headCut} off square',
  otherwise:
    'two {member} members {cutLength} long, of opposite hands, {footCut} off square at the inner end and {headCut} at the outer',
};

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
    joint: choice('Joint of members', {
      options: memberJoints,
      preset: 'mitre',
      note: 'with plates on both faces either way; where panels meet flatter than 150° it is mitred',
    }),
    ...frameInputs(),
    levelLine: input('length', 'Level line above the base', {
      preset: '250 mm',
      presetInch: '10 in',
      min: '-500 mm',
      max: '3 m',
      step: '10 mm',
      note: 'marked on every frame: any level line to set the frames by',
    }),
    side: chosenFromBoat('frame.stands', {
      hint: 'moulds that get no bevel stand the other way',
    }),
    screwClear: fromBoat('frame.screwClearance'),
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
    'The frame': ['side', 'levelLine', 'siding', 'beyond', 'screwClear', 'gapAllowed'],
    'The panels': ['sideThickness', 'bottomThickness', 'bilgeThickness'],
    'Keelson and limbers': ['keelsonWidth', 'keelsonThickness', 'limberWidth', 'holeDiameter'],
    'Logs and clamps': ['logThickness', 'logWidth', 'clampThickness', 'clampWidth'],
    'The gussets': ['gussetLeg', 'gussetThickness'],
  },
  steps: frameSteps,
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
  inWords: words`The frame stands ${STANDS} Saw ${MEMBERS} (+ is longer on the skin); {lumber} of stock makes the whole frame.`,
  table: tableOf({
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
  }),
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
      says: 'With legs of {gussetLeg}, the gusset does not reach over the inner corner of the joint: {leastLeg} is the least that does, and glue wants more.',
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
    'No screw in the dashed places: something is still to be sawn or planed off there, and a blade that meets a screw throws it.',
    'Lay the pieces on the pattern and check both diagonals before the plates are glued: a frame out of true can’t be planed right.',
    'Carry centreline, level line, sheer and station onto both faces before the frame leaves the pattern, with its name and which face stands on the line.',
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
  about: ['{frame}', '{member}', 'frame', 'gusset'],
  draw: frameView,
  patterns: { are: 'The frame at full size', draw: framePatterns },
});
