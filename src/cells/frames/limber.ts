/** Keelson slot and limber holes in one cut: the slot is sawn wider than the keelson, and the two gaps drain. */
import { centreLine, dim, drawing, hatch, label, mm, note } from '../../drawing';
import { choice, defineCell, input, step } from '../define';
import { drilled, slottedFrame, slottedKeelson } from './keelson-slot';

const GEOMETRY = 'geometry';

export const limber = defineCell({
  id: 'limber',
  stage: 'frames',
  title: 'Keelson slot and limber holes',
  question:
    'Where do I drill the limber holes and how wide and deep do I saw the keelson slot in this frame?',
  inputs: {
    frame: choice('Frame', { options: 'frames', preset: 'frame3' }),
    keelsonWidth: input('length', 'Keelson width', {
      from: 'keelson.width',
      preset: '90 mm',
      min: '10 mm',
      max: '400 mm',
      step: '1 mm',
      note: 'measure the piece that goes in, not its name at the yard',
    }),
    keelsonThickness: input('length', 'Keelson thickness', {
      from: 'keelson.thickness',
      preset: '18 mm',
      min: '3 mm',
      max: '150 mm',
      step: '1 mm',
      note: 'measure the piece that goes in, not its name at the yard',
    }),
    limberWidth: input('length', 'Limber width, each side', {
      preset: '1/2 in',
      min: '1/8 in',
      max: '2 in',
      step: '1/16 in',
      slider: true,
      note: 'how far the slot runs on beyond the keelson on each side; common practice, no source',
    }),
    holeDiameter: input('length', 'Drill', {
      preset: '1/2 in',
      min: '1/8 in',
      max: '2 in',
      step: '1/16 in',
      slider: true,
      note: 'rounds the two inner corners of the slot; common practice, no source',
    }),
    kerf: input('length', 'Saw kerf', {
      preset: '1/8 in',
      min: '0.5 mm',
      max: '1 in',
      step: '1/64 in',
      note: 'saw a scrap and measure; a wide cutter set takes fewer passes',
    }),
    frameDepth: input('length', 'Depth of the bottom member', {
      from: 'frame.moulded',
      preset: '70 mm',
      min: '10 mm',
      max: '500 mm',
      step: '1 mm',
      note: 'at the centreline, from the edge on the bottom upward',
    }),
    deadrise: input('angle', 'Deadrise', {
      seldom: true,
      from: '{frame}.bottom.deadrise',
      preset: '0 deg',
      min: '0 deg',
      max: '60 deg',
      step: '1 deg',
      note: 'of the bottom at this frame; none on a flat bottom',
    }),
    hullLength: input('length', 'Length of the boat', {
      seldom: true,
      from: 'hull.length',
      preset: '4.5 m',
      min: '1 m',
      max: '15 m',
      step: '100 mm',
      note: 'for the custom about clear area',
    }),
    bucket: input('volume', 'Bucket', {
      seldom: true,
      preset: '10 L',
      min: '0.1 L',
      max: '500 L',
      step: '1 L',
    }),
    head: input('length', 'Depth of water at the frame', {
      seldom: true,
      preset: '20 mm',
      min: '1 mm',
      max: '500 mm',
      step: '1 mm',
      note: 'held while the bucket runs out; as it falls the flow slackens',
    }),
  },
  steps: {
    slotWidth: step(
      'length',
      'keelsonWidth + 2 * limberWidth',
      'width of the slot, across the boat',
      GEOMETRY,
    ),
    cutDepth: step(
      'length',
      'keelsonThickness',
      'depth of the slot at the centreline, which the saw is set to',
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
      'keelsonThickness - holeDiameter / 2',
      'hole centre above the bottom of the frame at the centreline: the top of the hole is the top of the slot',
      GEOMETRY,
    ),
    passes: step('count', 'ceil(slotWidth / kerf - 0.000001)', 'passes of the saw side by side', GEOMETRY),
    innerHeight: step(
      'length',
      'max(keelsonThickness - keelsonWidth / 2 * tan(deadrise), 0 mm)',
      'height of the slot beside the keelson, where deadrise has lifted the bottom',
      GEOMETRY,
    ),
    outerHeight: step(
      'length',
      'max(keelsonThickness - slotWidth / 2 * tan(deadrise), 0 mm)',
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
      '0.6 * clearArea * sqrt(2 * g * head)',
      'water through both limbers while that depth stands before them',
      'flow through an orifice, Q = 0.6 A sqrt(2 g h); the 0.6 is common practice, no source',
    ),
    drainTime: step(
      'minutes',
      'bucket / max(flow, 0.1 mL/min)',
      'time for the bucket to run through both limbers; less than a drip counts as 0.1 mL a minute',
      GEOMETRY,
    ),
    woodLeft: step('length', 'frameDepth - cutDepth', 'wood left above the slot', GEOMETRY),
    depthTaken: step('share', 'cutDepth / frameDepth', 'share of the depth that the slot takes', GEOMETRY),
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
  },
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
    'Drill {holeDiameter} holes {holeFromCentre} each side of the centreline and {holeAboveBottom} above the bottom; set the saw to {cutDepth} and clear {slotWidth} in {passes} passes. Between the hole centres saw to the full depth; outside them stop at {holeAboveBottom}, or the saw squares the corner that the drill has rounded.',
  table: {
    caption: 'Limbers at every frame',
    over: 'frame',
    columns: [
      { of: 'outerHeight', label: 'height at the sides' },
      { of: 'clearArea', label: 'clear area, both' },
      { of: 'drainTime', label: 'bucket runs out in' },
    ],
  },
  warnings: [
    {
      when: 'holeDiameter / 2 > keelsonThickness',
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
      when: 'cutDepth >= frameDepth',
      says: 'The slot, {cutDepth} deep, cuts the bottom member right through.',
      limit: 'geometry',
      weight: 'stop',
    },
    {
      when: 'cutDepth < frameDepth and depthTaken > 1 / 3',
      says: 'The slot takes {depthTaken} of the depth and leaves {modulusLeft} of the strength: put a deeper bottom member or a floor timber here.',
      limit: 'at most 1/3 of the depth where gussets or a floor back the joint; common practice, no source',
      weight: 'stop',
    },
    {
      when: 'depthTaken > 1 / 4 and depthTaken <= 1 / 3',
      says: 'The slot takes {depthTaken} of the depth: that holds only where glued gussets or a floor timber back the cut.',
      limit: 'at most 1/4 of the depth in a member that nothing backs; common practice, no source',
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
      limit: 'at least 12 mm either way, better 20 mm wide; common practice, no source',
      weight: 'mind',
    },
    {
      when: 'drainArea > 0 mm^2 and clearArea < (hullLength < 5 m ? 300 mm^2 : 600 mm^2)',
      says: 'Both limbers together clear {clearArea}, little for a boat of {hullLength}: let this frame drain at the chines too.',
      limit: 'at least 300 mm² a frame under 5 m, 600 mm² to 8 m; common practice, no source',
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
    'Soak the end grain of slot and holes with epoxy or paint before the keelson goes in: it can hardly be reached afterwards.',
  ],
  sources: [
    { text: 'Slot and holes from the keelson: geometry', known: 'geometry' },
    {
      text: 'Limits for the depth of notches and for the size of limbers: custom of the trade',
      known: 'common practice',
    },
    {
      text: 'National Design Specification for Wood Construction, 4.4.3: an edge notch in a beam takes at most 1/6 of its depth and none of its middle third; a frame with gussets is allowed more by custom',
      known: 'from memory',
    },
  ],
  lights: ['keelson', '{frame}'],
  draw: (v, on) => {
    const say = (metres: number) => on.say(metres, 'length');
    const out = mm(v.holeFromCentre);
    const up = mm(v.holeAboveBottom);
    const radius = mm(v.holeDiameter) / 2;
    const slot = mm(v.slotWidth) / 2;
    const depth = mm(v.cutDepth);
    const half = mm(v.keelsonWidth) / 2;
    // A member that is cut through is drawn deeper, or there would be nothing to see.
    const board = Math.max(mm(v.frameDepth), depth * 1.15);
    const rise = Math.tan(v.deadrise);
    const reach = slot + Math.max(board * 0.5, slot * 0.4);
    return drawing({
      title: 'Keelson slot and limbers, looking along the boat',
      says: `A slot ${say(v.slotWidth)} wide and ${say(v.cutDepth)} deep; hole centres ${say(v.holeFromCentre)} each side of the centreline and ${say(v.holeAboveBottom)} above the bottom; the keelson sits in the middle and leaves ${say(v.limberWidth)} free on each side.`,
      shapes: [
        slottedFrame({ slot, depth, radius, board, reach, rise }, v.frame),
        hatch(slottedKeelson(half, depth, rise), 'cedar', { part: 'keelson' }),
        drilled([out, up], radius, v.frame),
        drilled([-out, up], radius, v.frame),
        centreLine([0, -board * 0.15], [0, board * 1.15]),
        dim([0, up], [out, up], say(v.holeFromCentre), { side: 'above', run: 'horizontal' }),
        dim([out, 0], [out, up], say(v.holeAboveBottom), { side: 'right', run: 'vertical' }),
        dim([-slot, slot * rise], [slot, slot * rise], say(v.slotWidth), {
          side: 'below',
          run: 'horizontal',
          level: 1,
        }),
        dim([-half, half * rise], [half, half * rise], say(v.keelsonWidth), {
          side: 'below',
          run: 'horizontal',
        }),
        dim([-slot, 0], [-slot, depth], say(v.cutDepth), { side: 'left', run: 'vertical' }),
        dim([-reach, reach * rise], [-reach, board + reach * rise], say(v.frameDepth), {
          side: 'left',
          run: 'vertical',
        }),
        label([half * 0.5, depth * 0.6], 'keelson', { toward: 's' }),
        label([-out - radius * 0.6, up], `${say(v.holeDiameter)} drill`, { toward: 'nw' }),
        note('looking forward; port and starboard alike'),
      ],
    });
  },
});
