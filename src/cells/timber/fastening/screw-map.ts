/** Where the screws of a frame go, clear of every cut that is still to come. */
import { tradeQuantities } from '../../../boat/quantities/trade-quantities';
import { sideOf } from '../../../boat/hull/side-of';
import { stiffnessBored } from '../../../trade/bored';
import { choice, defineCell, input, step } from '../../form/define';
import { chosenFromBoat, fromBoat } from '../../form/from-boat';
import { fact, tell } from '../../form/fact';
import {
  CUSTOM,
  screwCautions,
  screwFunctions,
  screwInputs,
  screwSteps,
  screwWarnings,
} from '../../common/screws/screw-choice';
import { screwMapPatterns, screwMapView } from './screw-map-drawing';
import { ruleFunctions, ruleSteps } from './screw-rules';
import {
  datumOf,
  faceInWords,
  type ScrewsAsked,
  screwInHand,
  screwList,
  screwsInHand,
} from './screws-in-hand';

const GEOMETRY = 'geometry';

const wood = fact(
  'what is kept, and what is left beyond it',
  GEOMETRY,
  ({ screwClear }: ScrewsAsked, { ask }) => {
    const { standing } = ask(screwsInHand);
    const woodAt = (clear: number) => screwClear + Math.max(0, clear);
    return {
      least: standing.length > 0 ? woodAt(Math.min(...standing.map(({ clear }) => clear))) : screwClear,
      woodAt,
    };
  },
);

const woodInHand = fact(wood.how, GEOMETRY, (_: ScrewsAsked, { ask }) => {
  const screw = ask(screwInHand);
  return screw ? ask(wood).woodAt(screw.clear) : 0;
});

const faceInHand = fact(
  'the side of the joint that its row is driven from',
  GEOMETRY,
  (_: ScrewsAsked, { ask }) => {
    const screw = ask(screwInHand);
    return screw ? faceInWords(ask(screwsInHand), screw) : 'none';
  },
);

/** Of the two published rules, the one chosen, or the larger figure. */
const byRule = (of: string, meaning: string) =>
  step(
    'length',
    `rule == "american" ? american${of} : rule == "european" ? european${of} : max(american${of}, european${of})`,
    meaning,
    'as chosen',
  );

const stands = fact(
  'as chosen; by custom forward of its line before the widest frame, aft of it behind, so that bevels are only cut off',
  'custom of the trade; common practice, no source',
  ({ frame, side }: { readonly frame: string; readonly side: string }, { hull }) =>
    sideOf(hull.station(frame), side, false),
);

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
    rowGap: input('length', 'Row to row, at least', {
      when: 'fastened == "plate"',
      bound: 'least',
      preset: '20 mm',
      presetInch: '3/4 in',
      min: '3 mm',
      max: '100 mm',
      step: '1 mm',
      note: 'common practice, no source',
    }),
    pitch: input('length', 'Screw to screw, at most', {
      bound: 'most',
      from: '{self}.customPitch',
      preset: '40 mm',
      min: '10 mm',
      max: '400 mm',
      step: '5 mm',
      slider: true,
    }),
    screw: input('count', 'Screw looked at', { preset: '1', min: '1', max: '999', step: '1' }),
    ...screwInputs,
    species: chosenFromBoat('frame.timber'),
    gravity: input('ratio', 'Specific gravity', {
      from: 'timber.{species}.fasteningGravity',
      preset: '0.5',
      min: '0.2',
      max: '1.2',
      step: '0.01',
      note: 'oven-dry, as the code counts it',
    }),
    density: input('density', 'Density of the wood', {
      from: 'timber.{species}.density',
      preset: '538 kg/m3',
      min: '150 kg/m3',
      max: '1300 kg/m3',
      step: '10 kg/m3',
    }),
    screwClear: fromBoat('frame.screwClearance', {
      hint: 'or from the shank of a screw that lies in the frame',
    }),
    joint: choice('Joint between members', {
      options: [
        { id: 'mitre', label: 'mitre' },
        { id: 'butt', label: 'upper stands on lower' },
      ],
      from: 'framePattern.joint',
      preset: 'mitre',
    }),
    siding: fromBoat('frame.siding'),
    moulded: fromBoat('frame.moulded'),
    beyond: fromBoat('frame.aboveSheer', { when: 'fastened != "keelson"' }),
    sideThickness: fromBoat('side.thickness'),
    bottomThickness: fromBoat('bottom.thickness'),
    bilgeThickness: fromBoat('bilge.thickness', {
      when: 'bilge.thickness',
      hint: 'between bottom and side, on a boat with two chines or more',
    }),
    keelsonWidth: fromBoat('keelson.width', { when: 'fastened != "plate"' }),
    keelsonThickness: fromBoat('keelson.thickness', { when: 'fastened != "plate"' }),
    limberWidth: fromBoat('frame.limberWidth', { when: 'fastened != "plate"' }),
    holeDiameter: fromBoat('frame.limberDrill', { when: 'fastened != "plate"' }),
    logThickness: fromBoat('chineLog.thickness'),
    logWidth: fromBoat('chineLog.width', { hint: 'up the side' }),
    clampThickness: fromBoat('sheerClamp.thickness', { when: 'fastened == "skin"' }),
    clampWidth: fromBoat('sheerClamp.width', { hint: 'down the side', when: 'fastened != "keelson"' }),
    gussetLeg: fromBoat('gusset.leg', { when: 'fastened == "plate"' }),
    gussetThickness: fromBoat('gusset.thickness', { when: 'fastened == "plate"' }),
  },
  functions: {
    ...screwFunctions,
    ...ruleFunctions,
    leftBored: {
      takes: ['length', 'length', 'length'],
      gives: 'share',
      how: '1 - (d³ + 12 d c²) / h³, for a hole d across, c off the middle of the depth h',
      run: stiffnessBored,
    },
  },
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
  steps: {
    stands: tell(stands, 'choice', 'side of the station line on which the frame stands', (side) => side),
    skinThickness: step(
      'length',
      'member == "bottom" ? bottomThickness : member == "side" ? sideThickness : bilgeThickness',
      'skin over this member',
      GEOMETRY,
    ),
    topThickness: step(
      'length',
      'fastened == "plate" ? gussetThickness : fastened == "skin" ? skinThickness : keelsonThickness',
      'thickness screwed on',
      GEOMETRY,
    ),
    depth: step(
      'length',
      'fastened == "plate" ? siding : max(moulded - (fastened == "skin" ? 0 mm : keelsonThickness), 5 mm)',
      'wood of the frame in the direction of the screw',
      GEOMETRY,
    ),
    ...screwSteps,
    drilled: step('count', '1', '1: every hole is drilled', 'common practice in boats'),
    ...ruleSteps,
    leastClear: step('length', '10 mm', 'least distance of a screw from a later cut', CUSTOM, 'least'),
    customPitch: step(
      'length',
      'fastened == "skin" ? (soldIn == "inch" ? 5 in : 125 mm) : soldIn == "inch" ? 1.5 in : 40 mm',
      'screw to screw by shop custom: skin to frames 100 to 125 mm, or 4 to 5 in, with glue; in plates and keelson as the room allows',
      CUSTOM,
      'most',
    ),
    ruleAlong: {
      ...byRule('Pitch', 'least distance from screw to screw in one line of grain'),
      bound: 'least',
    },
    ruleAcross: { ...byRule('Rows', 'least distance from line to line'), bound: 'least' },
    ruleEdge: { ...byRule('Edge', 'least distance from an edge'), bound: 'least' },
    ruleEnd: step(
      'length',
      'ends == "pulled" ? (rule == "american" ? americanEnd : rule == "european" ? europeanEnd : max(americanEnd, europeanEnd)) : rule == "american" ? americanQuietEnd : rule == "european" ? europeanQuietEnd : max(americanQuietEnd, europeanQuietEnd)',
      'least distance from an end, along the grain',
      'as chosen',
      'least',
    ),
    asked: tell(
      screwsInHand,
      'count',
      'screws that the rows ask for, port side',
      ({ screws }) => screws.length,
    ),
    placed: tell(
      screwsInHand,
      'count',
      'screws that find a place, port side',
      ({ standing }) => standing.length,
    ),
    moved: tell(
      screwsInHand,
      'count',
      'screws moved off a later cut',
      ({ standing }) => standing.filter(({ clash }) => clash !== '').length,
    ),
    dropped: step('count', 'asked - placed', 'screws left out because no place is left', 'count'),
    leastWood: tell(
      wood,
      'length',
      'least wood between a screw and a cut still to come; what is asked where there is no screw',
      ({ least }) => least,
    ),
    offMiddle: tell(
      screwsInHand,
      'length',
      'screw of a gusset that stands farthest from the middle of the member’s depth',
      ({ standing, joint }, { moulded }) =>
        joint.fastened === 'plate'
          ? Math.max(0, ...standing.map(({ inward }) => Math.abs(inward - moulded / 2)))
          : 0,
    ),
    stiffnessLeft: step(
      'share',
      'placed < 1 ? 1 : fastened == "plate" ? leftBored(moulded, pilot, offMiddle) : max(0, 1 - pilot / siding * (1 - (1 - 2 * max(0 mm, min(hold, depth)) / depth)^3) / 2)',
      'stiffness left in the member at the worst hole: of a gusset the farthest from the middle, else one bored in from the edge',
      'geometry: second moment of area less the hole’s',
    ),
    faceWood: step(
      'length',
      'fastened == "plate" ? ruleEdge : siding / 2',
      'wood on either side of a screw in the middle of the frame’s thickness; of a gusset what is asked',
      GEOMETRY,
    ),
    along: tell(
      screwInHand,
      'length',
      'along the member: from the chine for a gusset, from the outer edge of the panel for the skin, from the centreline for the keelson',
      (screw) => screw?.along ?? 0,
    ),
    inward: tell(
      screwInHand,
      'length',
      'in from the member’s edge on the skin for a gusset; else from the face on the station line',
      (screw) => screw?.inward ?? 0,
    ),
    into: tell(screwInHand, 'choice', 'member it goes into', (screw) => screw?.member.panel.label ?? 'none'),
    face: tell(faceInHand, 'choice', 'where it goes in', (face) => face),
    movedBy: tell(screwInHand, 'length', 'moved by', (screw) => screw?.moved ?? 0),
    wood: tell(woodInHand, 'length', 'wood between it and the nearest cut still to come', (left) => left),
    datum: tell(screwsInHand, 'choice', 'from where distances along a member are taped', datumOf, {
      how: 'the chine, the outer edge of the panel, or the centreline',
    }),
  },
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
  table: {
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
  },
  warnings: [
    ...screwWarnings,
    {
      when: 'placed > 0 and 2 * placed < asked',
      says: 'Fewer than half of the screws find a place that keeps edges, ends and spaces and clears the later cuts: {placed} of {asked}. Crosses show where the others would have stood.',
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
