/** Where the screws of a frame go, clear of every cut that is still to come. */
import { fasteningGravity, screwedDensity } from '../../common/screws/screwed-wood';
import { choice, input, defineCell } from '../../form/define';
import { fromBoat } from '../../form/from-boat';
import { chosenFromBoat, fromShop } from '../../form/from-shop';
import { tableOf } from '../../form/row-quantities';
import { frameInputs, memberJoints } from '../../common/frame/frame-inputs';
import { screwInputs, screwWarnings, screwCautions } from '../../common/screws/screw-choice';
import { screwList } from './screws-in-hand';
import { tradeQuantities } from '../../../boat/quantities/trade-quantities';
import { screwMapView, screwMapPatterns } from './screw-map-drawing';
import { screwMapFunctions, screwMapSteps } from './screw-map-steps';

export const screwMap = defineCell({
  id: 'screwMap',
  stage: 'timber',
  title: 'Where the screws of a frame go',
  question: 'Where may the screws of this frame stand, so that no later cut meets one?',
  inputs: {
    frame: choice('Frame', { options: 'frames', preset: 'frame3' }),
    fastened: choice('Screwed on', {
      options: [
        { id: 'plate', label: 'the gusset at a chine', about: ['gusset'] },
        { id: 'skin', label: 'the skin, along a member', about: ['{member}'] },
        { id: 'keelson', label: 'the keelson, to the lowest member' },
      ],
      preset: 'plate',
    }),
    chine: choice('Chine', {
      when: 'fastened == "plate"',
      options: 'chines',
      none: 'the lowest',
      preset: 'chine',
      note: 'for a gusset',
    }),
    member: choice('Member', {
      when: 'fastened == "skin"',
      options: 'panels',
      preset: 'side',
      note: 'for the skin',
    }),
    side: chosenFromBoat('frame.stands'),
    faces: choice('Gussets', {
      when: 'fastened == "plate"',
      options: [
        { id: 'both', label: 'on both faces' },
        { id: 'one', label: 'on the face on the station line alone' },
      ],
      preset: 'both',
      note: 'where both faces have one, screws go in by turns from either, so that no two points meet',
    }),
    rule: choice('Distances by', {
      options: [
        { id: 'both', label: 'the stricter of both tables' },
        { id: 'european', label: 'the European table' },
        { id: 'american', label: 'the American table' },
      ],
      preset: 'european',
      note: 'the European one lets screws stand closer along the grain',
    }),
    ends: choice('Ends of members', {
      options: [
        { id: 'quiet', label: 'no screw is pulled towards its end' },
        { id: 'pulled', label: 'screws are pulled towards their ends' },
      ],
      preset: 'quiet',
      note: 'a glued joint holds the ends together; without glue, pulled',
    }),
    rows: input('count', 'Rows in a member', {
      when: 'fastened == "plate"',
      preset: '2',
      min: '1',
      max: '5',
      step: '1',
      note: 'of a gusset; skin and keelson have one',
    }),
    rowGap: fromShop('rowGap', { when: 'fastened == "plate"', bound: 'least' }),
    // In plates and keelson the room decides, and no custom of the shop's.
    pitch: fromShop('framePitch', {
      label: 'Screw to screw, at most',
      fromBy: { choice: 'fastened', links: { plate: '{self}.customPitch', keelson: '{self}.customPitch' } },
      bound: 'most',
      slider: true,
    }),
    screw: input('count', 'Screw looked at', { preset: '1', min: '1', max: '999', step: '1' }),
    ...screwInputs,
    species: chosenFromBoat('frame.timber'),
    gravity: fasteningGravity('Specific gravity'),
    density: screwedDensity('Density of the wood'),
    screwClear: fromBoat('frame.screwClearance', {
      hint: 'or from the shank of a screw that lies in the frame',
    }),
    joint: choice('Joint of members', {
      options: memberJoints,
      from: 'framePattern.joint',
      preset: 'mitre',
    }),
    ...frameInputs({
      beyond: 'fastened != "keelson"',
      slot: 'fastened != "plate"',
      clampThickness: 'fastened == "skin"',
      clampWidth: 'fastened != "keelson"',
      gussets: 'fastened == "plate"',
    }),
  },
  functions: screwMapFunctions,
  groups: {
    'The rows': ['faces', 'rule', 'ends', 'rows', 'rowGap', 'screw'],
    'The screw': ['held', 'gauge', 'soldIn', 'screwLength'],
    'The wood': ['species', 'gravity', 'density'],
    'The frame': ['side', 'joint', 'siding', 'moulded', 'beyond', 'screwClear'],
    'The panels': ['sideThickness', 'bottomThickness', 'bilgeThickness'],
    'Keelson and limbers': ['keelsonWidth', 'keelsonThickness', 'limberWidth', 'holeDiameter'],
    'Logs and clamps': ['logThickness', 'logWidth', 'clampThickness', 'clampWidth'],
    'The gussets': ['gussetLeg', 'gussetThickness'],
  },
  steps: screwMapSteps,
  answers: [
    { of: 'placed', label: 'screws', from: 'in this joint, port side; starboard is its mirror' },
    { of: 'moved', label: 'moved', from: 'off a cut that is still to come' },
    { of: 'leastWood', label: 'least wood', from: 'between a screw and a later cut' },
  ],
  inWords: {
    when: 'placed < 1',
    says: 'No screw finds a place: edges, ends and later cuts leave no room. Take a longer gusset, a deeper member or a thinner screw; the glue has to do without.',
    otherwise: [
      'Screws to mark: {placed}, No. {gauge}, {screwLength} long, each taped from {datum} along its member.',
      {
        when: 'moved + dropped > 0',
        says: [
          'Moved off later cuts: {moved}',
          { when: 'dropped > 0', says: '; left out for want of a place: {dropped}' },
          '. The least wood between a screw and a cut is {leastWood}.',
        ],
        otherwise: 'None meets a later cut: the least wood between is {leastWood}.',
      },
    ],
  },
  table: tableOf({
    caption:
      'Each screw, port side. Tape along the member first, then in from its edge on the skin; a screw through skin or keelson stands in from the frame’s face on the station line',
    over: 'screw',
    rows: screwList,
    columns: [
      { of: 'into', label: 'member' },
      { of: 'along', label: 'along' },
      { of: 'inward', label: 'in' },
      { of: 'face', label: 'goes in' },
      { of: 'movedBy', label: 'moved' },
      { of: 'wood', label: 'to a later cut' },
    ],
  }),
  warnings: [
    ...screwWarnings,
    {
      when: 'placed > 0 and 2 * placed < asked',
      says: 'Fewer than half of the screws find a place that keeps edges, ends and spaces and clears the later cuts: {placed} of {asked}. Where there is room for it a cross shows where one would have stood.',
      limit: 'the rule chosen, and the wood kept between screws and later cuts',
      weight: 'mind',
    },
    {
      when: 'asked < 1',
      says: 'The rules leave no row at all: edges ask {ruleEdge} and ends {ruleEnd} of what is screwed together.',
      limit: 'the rule chosen',
      weight: 'stop',
    },
    {
      when: 'faceWood < ruleEdge',
      says: 'In the middle of a frame {siding} thick a screw has {faceWood} of wood on either side; {ruleEdge} is asked. Take a thinner screw, or a thicker frame.',
      limit: 'the rule chosen: distance to an edge',
      weight: 'mind',
    },
    {
      when: 'screwClear < leastClear',
      says: 'Screws only {screwClear} from a later cut: a blade set a little over meets them. At least {leastClear} is usual.',
      limit: 'least distance of screws from a later cut: common practice, no source',
      weight: 'mind',
    },
    {
      when: 'screw > placed',
      says: 'This joint has fewer screws than that: {placed} in all.',
      limit: 'the layout',
      weight: 'mind',
    },
  ],
  cautions: [
    'A blade that meets a screw throws it: mark what is kept free on both faces before the gussets go on. Before each later cut lay the pattern on, and feel with a pin; a magnet finds steel screws, bronze and brass never. Eye protection.',
    ...screwCautions,
    'Drill every hole before the glue goes on, with the plates clamped dry.',
    'The layout keeps distances in the plan of the frame. Knots, shakes and grain that runs out are not in it: look at the wood, and move a screw that would meet them.',
    'Distances are those of codes for houses, used here as a measure. What carries people or a hoist wants the code in force and a licensed engineer.',
  ],
  sources: [
    {
      text: 'Commentary to the National Design Specification for Wood Construction; EN 1995-1-1 Table 8.2: edge, end and spacing',
      known: 'from memory',
    },
    {
      text: 'Outline of the frame, sections of long timbers and later cuts: as in the frame’s pattern',
      known: 'geometry',
    },
    {
      text: 'Clearance of later cuts, rows from the outer edge in, plates screwed from both faces by turns',
      known: 'common practice',
    },
  ],
  about: ['{frame}', 'frame', '{fastened}'],
  brings: tradeQuantities,
  draw: screwMapView,
  patterns: { are: 'The screws at full size', draw: screwMapPatterns },
});
