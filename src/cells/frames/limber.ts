/** Keelson slot and limber holes in one cut: the slot is sawn wider than the keelson, and the two gaps drain. */
import { choice, input, defineCell } from '../form/define';
import { fromBoat } from '../form/from-boat';
import { fromShop } from '../form/from-shop';
import { tableOf } from '../form/row-quantities';
import { limberDrill } from '../common/frame/limber-drill';
import { slopeOfLine } from './slope-input';
import { cutWarnings, cutLimits, limitWords } from './cut-limits';
import { limberView } from './limber-drawing';
import { UNWIN, limberSteps } from './limber-steps';

export const limber = defineCell({
  id: 'limber',
  stage: 'frames',
  title: 'Keelson slot and limber holes',
  question:
    'Where do I drill the limber holes and how wide and deep do I saw the keelson slot in this frame?',
  inputs: {
    frame: choice('Frame', { options: 'frames', preset: 'frame3' }),
    keelsonWidth: fromBoat('keelson.width', {
      hint: 'measure the piece that goes in, not its name at the yard',
    }),
    keelsonThickness: fromBoat('keelson.thickness', {
      hint: 'measure the piece that goes in, not its name at the yard',
    }),
    limberWidth: fromBoat('frame.limberWidth', { slider: true }),
    holeDiameter: limberDrill({ slider: true }),
    kerf: fromShop('kerf', { hint: 'a wide cutter set takes fewer passes' }),
    frameDepth: fromBoat('frame.moulded'),
    siding: fromBoat('frame.siding'),
    keelSlope: slopeOfLine('Keel slope in profile', '{frame}.{keel}.profileSlope'),
    deadrise: input('angle', 'Deadrise of the section', {
      from: '{frame}.{bottom}.deadrise',
      preset: '0 deg',
      min: '0 deg',
      max: '60 deg',
      step: '1 deg',
      note: 'of the bottom at this frame; none on a flat bottom',
    }),
    hullLength: input('length', 'Length of the boat', {
      from: 'hull.length',
      preset: '4.5 m',
      min: '1 m',
      max: '15 m',
      step: '100 mm',
      note: 'for the custom about clear area',
    }),
    bucket: input('volume', 'Bucket', {
      preset: '10 L',
      presetInch: '2 1/2 gal',
      min: '0.1 L',
      max: '500 L',
      step: '1 L',
    }),
    head: input('length', 'Depth of puddle at the frame', {
      preset: '20 mm',
      presetInch: '3/4 in',
      min: '1 mm',
      max: '500 mm',
      step: '1 mm',
      note: 'when the bucket has just been emptied into the boat',
    }),
    lies: choice('Boat lies', {
      options: [
        { id: 'level', label: 'level' },
        { id: 'trimmed', label: 'down by the bow or the stern' },
      ],
      preset: 'level',
      note: 'a puddle that narrows downward runs out sooner',
    }),
    coefficient: input('ratio', 'Coefficient of discharge', {
      preset: '0.62',
      min: '0.3',
      max: '1',
      step: '0.01',
      note: '0.62 through a sharp-edged opening; less where dirt has gathered',
    }),
  },
  groups: {
    'The frame': ['frameDepth', 'siding', 'keelSlope', 'deadrise', 'kerf'],
    'How fast she drains': ['hullLength', 'bucket', 'head', 'lies', 'coefficient'],
  },
  steps: limberSteps,
  answers: [
    {
      of: 'holeFromCentre',
      label: 'hole centres',
      from: 'from the centreline of the frame, to port and to starboard',
      tolerance: '1/32 in',
    },
    {
      of: 'holeAboveBottom',
      label: 'hole centres',
      from: 'above the bottom of the frame at the centreline, square to the base line',
      tolerance: '1/32 in',
    },
    {
      of: 'slotWidth',
      label: 'slot',
      from: 'across, half of it each side of the centreline',
      tolerance: '1/16 in',
    },
  ],
  inWords:
    'Drill {holeDiameter} holes {holeFromCentre} each side of the centreline and {holeAboveBottom} above the bottom; set the saw to {cutDepth} and take {passes} passes to clear {slotWidth}. Between the hole centres saw to the full depth; outside them stop at {holeAboveBottom}, or the saw squares the corner that the drill has rounded.',
  table: tableOf({
    caption: 'Limbers at every frame',
    over: 'frame',
    columns: [
      { of: 'outerHeight', label: 'height at the sides' },
      { of: 'clearArea', label: 'clear area, both' },
      { of: 'drainTime', label: 'bucket runs out in' },
    ],
  }),
  warnings: [
    {
      when: 'holeDiameter / 2 > cutDepth',
      says: 'Half the drill, {holeDiameter} across, is more than the slot is deep: its centre would fall outside the wood.',
      limit: 'geometry',
      weight: 'stop',
    },
    {
      when: 'holeDiameter / 2 > limberWidth',
      says: 'The corner rounded by a {holeDiameter} drill reaches in over the keelson, which would not bed: take a drill of at most twice the limber width.',
      limit: 'geometry',
      weight: 'stop',
    },
    {
      when: 'cutDepth >= depthThere',
      says: 'The slot, {cutDepth} deep, cuts the bottom member right through.',
      limit: 'geometry',
      weight: 'stop',
    },
    ...cutWarnings({
      cut: 'The slot',
      through: 'cutDepth >= depthThere',
      mend: 'put a deeper bottom member or a floor timber here',
    }),
    {
      when: `depthTaken > ${cutLimits.unbacked} and depthTaken <= ${cutLimits.backed}`,
      says: 'The slot takes {depthTaken} of the depth: that holds only where glued gussets or a floor timber back the cut.',
      limit: limitWords.unbacked,
      weight: 'mind',
    },
    {
      when: 'drainArea <= 0 mm^2',
      says: 'Deadrise of {deadrise} runs up to the top of the keelson before its edge: the slot leaves no way for water. Saw a corner inboard of the keelson instead.',
      limit: 'geometry',
      weight: 'stop',
    },
    {
      when: 'outerHeight < holeDiameter and drainArea > 0 mm^2 and deadrise > 0 deg',
      says: 'Deadrise of {deadrise} leaves the slot only {outerHeight} high at its sides, less than the drill: the holes break out of the bottom edge. Take a thicker or narrower keelson, or saw a corner inboard of the slot for the water.',
      limit: 'geometry',
      weight: 'mind',
    },
    {
      when: 'min(limberWidth, outerHeight) < 12 mm and drainArea > 0 mm^2',
      says: 'The narrowest way through is {limberWidth} wide and {outerHeight} high: a shaving or a leaf stops it.',
      limit: 'at least 12 mm (1/2 in) either way, better 20 mm (3/4 in) wide; common practice, no source',
      weight: 'mind',
    },
    {
      when: 'drainArea > 0 mm^2 and clearArea < (hullLength < 5 m ? 300 mm^2 : 600 mm^2)',
      says: 'Both limbers together clear {clearArea}, little for a boat of {hullLength}: let this frame drain at the chines too.',
      limit:
        'at least 300 mm² (1/2 in²) a frame under 5 m (16 ft), 600 mm² (1 in²) to 8 m (26 ft); common practice, no source',
      weight: 'mind',
    },
    {
      when: 'roofRise > 1 mm',
      says: 'The keel climbs here: on one face the slot’s top lies {roofRise} higher than on the other. Mark it on both faces, saw to the lower mark and pare to the other.',
      limit: 'geometry; 1 mm (1/32 in) is common practice, no source',
      weight: 'mind',
    },
    {
      when: 'kerf > limberWidth + keelsonWidth / 2',
      says: 'A kerf of {kerf} is wider than half the slot.',
      limit: 'geometry',
      weight: 'mind',
    },
  ],
  cautions: [
    'A cut across a frame on a table saw: guard and push block as the maker of the saw says, the frame held square by a mitre gauge or sled, never by the fence alone.',
    'Drill before sawing. Keep screws at least three of their diameters clear of the limbers, and of the slot still to be cut: common practice, no source.',
    'Water also gathers inboard of the chine logs: where they lie on the bottom, saw a corner for it beside each log, in every frame, before planking closes it.',
    'On a vee bottom two members meet in this slot, and the plate across them carries the load: cut the slot through plate and members alike.',
    'Soak the end grain of slot and holes with epoxy or paint before the keelson goes in: it can hardly be reached afterwards.',
  ],
  sources: [
    { text: 'Slot and holes from the keelson: geometry', known: 'geometry' },
    { text: `Flow through an orifice, coefficient 0.62, §§ 16 to 18: ${UNWIN}`, known: 'published' },
    {
      text: 'Limits for the depth of notches and for the size of limbers: custom of the trade',
      known: 'common practice',
    },
    {
      text: 'National Design Specification for Wood Construction, 4.4.3: an edge notch in a beam takes at most 1/6 of its depth and none of its middle third; a frame with gussets is allowed more by custom',
      known: 'from memory',
    },
  ],
  about: ['{frame}', 'keelson'],
  draw: (v, on) => limberView(v, (metres) => on.say(metres, 'length'), on.say(v.holeDiameter, 'drill')),
});
