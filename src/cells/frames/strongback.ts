/** The strongback: where each frame stands on the jig upside down, how long its legs are, and what the jig takes in lumber. */
import { fromBoat } from '../form/from-boat';
import { chosenFromBoat } from '../form/from-shop';
import { choice, defineCell, input } from '../form/define';
import { firstOf, words } from '../form/in-words';
import { tableOf } from '../form/row-quantities';
import { strongbackView } from './strongback-drawing';
import { strongbackSteps } from './strongback-steps';

const PRACTICE = 'common practice, no source';

const size = (label: string, preset: string, min: string, max: string, note = PRACTICE) =>
  input('length', label, { preset, min, max, step: '10 mm', note });

const STANDS = {
  when: 'stands == "forward"',
  says: 'forward of its line, its after face on it.',
  otherwise: 'aft of its line, its forward face on it.',
};

export const strongback = defineCell({
  id: 'strongback',
  stage: 'frames',
  title: 'Strongback',
  question: 'Where on the jig does each frame stand, and how long are its legs?',
  inputs: {
    station: choice('Station', { options: 'stations', preset: 'frame3' }),
    levelLine: input('length', 'Jig’s level line, above the base', {
      from: '{self}.usualLevel',
      preset: '1100 mm',
      min: '100 mm',
      max: '6 m',
      step: '10 mm',
      note: 'chosen above the highest sheer; upside down it lies under the boat, and is the jig’s top',
    }),
    jigTop: input('length', 'Jig’s top above the floor', {
      preset: '400 mm',
      presetInch: '16 in',
      min: '40 mm',
      max: '1.5 m',
      step: '10 mm',
      note: 'common practice, no source: so that you work at the sheer and over the bottom without a ladder',
    }),
    gauge: input('length', 'Width of the jig over its rails', {
      preset: '600 mm',
      presetInch: '24 in',
      min: '100 mm',
      max: '4 m',
      step: '10 mm',
      note: 'common practice, no source: wider stands stiffer, narrower lets you in beside it',
    }),
    overhang: input('length', 'Jig beyond the boat at each end', {
      preset: '300 mm',
      presetInch: '12 in',
      min: '0 mm',
      max: '3 m',
      step: '10 mm',
      note: 'common practice, no source: for the props of transom and stem',
    }),
    clearance: {
      ...size(
        'Jig clear of the highest sheer',
        '150 mm',
        '0 mm',
        '2 m',
        'for a hand, a clamp and the plane; common practice, no source',
      ),
      bound: 'least',
      presetInch: '6 in',
    },
    stemHead: {
      ...size(
        'Stem left above the sheer',
        '50 mm',
        '0 mm',
        '1 m',
        'trimmed later; common practice, no source',
      ),
      presetInch: '2 in',
    },
    markLine: input('length', 'Level mark, above the base', {
      from: 'framePattern.levelLine',
      preset: '250 mm',
      min: '-500 mm',
      max: '3 m',
      step: '10 mm',
      note: 'as it was marked from the pattern',
    }),
    starboardLow: input('length', 'Starboard rail lies lower by', {
      preset: '0 mm',
      min: '-200 mm',
      max: '200 mm',
      step: '1 mm',
      note: 'than the port rail, measured over the jig’s width; + lower',
    }),
    foreLow: input('length', 'Forward end lies lower by', {
      preset: '0 mm',
      min: '-300 mm',
      max: '300 mm',
      step: '1 mm',
      note: 'than the after end, measured over the jig’s length; + lower',
    }),
    side: chosenFromBoat('frame.stands'),
    face: choice('Face of a transom on its line', {
      from: 'transomCut.face',
      options: [
        { id: 'outer', label: 'outer face' },
        { id: 'inner', label: 'inner face' },
      ],
      preset: 'outer',
    }),
    siding: fromBoat('frame.siding'),
    sideThickness: fromBoat('side.thickness'),
    bottomThickness: fromBoat('bottom.thickness'),
    railDepth: { ...size('Depth of the rails', '140 mm', '20 mm', '400 mm'), presetInch: '5 1/2 in' },
    spallBeyond: {
      ...size('Cross-spall beyond the leg, each side', '50 mm', '0 mm', '500 mm'),
      presetInch: '2 in',
    },
    legOverlap: { ...size('Leg lapped on the frame', '200 mm', '0 mm', '1 m'), presetInch: '8 in' },
    stock: input('stockLength', 'Length of the lumber sold', {
      step: '0.3 m',
      preset: '4.8 m',
      presetInch: '16 ft',
      min: '1 m',
      max: '8 m',
      note: 'framing lumber, which yards sell longer than boards; common practice, no source',
    }),
    waste: input('share', 'Waste in cutting', {
      preset: '15 %',
      min: '0 %',
      max: '100 %',
      // Glue and paste are squeezed and scraped off; boards of the boat have a plan of their cuts.
      note: `offcuts of the jig’s lumber, which no plan of cuts counts; ${PRACTICE}`,
    }),
    reach: { ...size('Highest you care to work over', '1.4 m', '0.5 m', '2.5 m'), presetInch: '54 in' },
  },
  groups: {
    'Frame and panels': ['side', 'face', 'siding', 'markLine', 'sideThickness', 'bottomThickness'],
    'Height of the jig': ['clearance', 'stemHead', 'reach'],
    'The rails': ['railDepth', 'overhang', 'starboardLow', 'foreLow'],
    'Legs and lumber': ['spallBeyond', 'legOverlap', 'stock', 'waste'],
  },
  steps: strongbackSteps,
  answers: [
    {
      of: 'running',
      label: 'line, along the jig',
      from: 'from the after end of the jig, along its centreline',
      tolerance: '3 mm',
    },
    {
      of: 'legPort',
      label: 'leg, port',
      from: 'plumb from the jig’s top to the sheer mark inside the skin, the boat’s own port',
      tolerance: '1.5 mm',
    },
    {
      of: 'legStarboard',
      label: 'leg, starboard',
      from: 'plumb from the jig’s top to the sheer mark inside the skin, the boat’s own starboard',
      tolerance: '1.5 mm',
    },
  ],
  inWords: [
    firstOf(
      [
        {
          when: 'kindOfStation == "stem"',
          says: 'Set the stem’s sheer mark plumb over {running} along the jig, {leg} above its top, and its foot plumb over {footRunning}, {footAboveJig} above: both on the string.',
        },
        {
          when: 'kindOfStation == "transom"',
          says: 'Set the transom’s sheer marks plumb over {running} along the jig, {sheerOut} out to each side, and the middle of its bottom plumb over {footRunning}, {footAboveJig} above the jig’s top: the difference is its rake.',
        },
      ],
      words`The frame stands ${STANDS} Its sheer marks stand {sheerOut} out from the string, its bottom {footAboveJig} above the jig’s top.`,
    ),
    'The jig is {jigLength} long; {boards} lengths of {stock} make it with its legs and props.',
  ],
  table: tableOf({
    caption: 'Stations on the jig: running distances from its after end, heights above its top',
    over: 'station',
    columns: [
      { of: 'running', label: 'line, along' },
      { of: 'stands', label: 'stands' },
      { of: 'legPort', label: 'leg, port' },
      { of: 'legStarboard', label: 'leg, starboard' },
      { of: 'sheerOut', label: 'sheer mark out' },
      { of: 'spallLength', label: 'cross-spall' },
      { of: 'footRunning', label: 'bottom, along' },
      { of: 'footAboveJig', label: 'bottom above jig' },
      { of: 'nailLength', label: 'nail to sheer mark' },
    ],
  }),
  warnings: [
    {
      when: 'freeOverJig <= 0 mm',
      says: 'The highest point to be set up lies {highest} above the base, and the jig’s top at {levelLine}: it would reach into the jig. Take {usualLevel} or more.',
      limit: 'geometry',
      weight: 'stop',
    },
    {
      when: 'freeOverJig > 0 mm and freeOverJig < clearance - 0.1 mm',
      says: 'Only {freeOverJig} is left between the highest sheer and the jig, less than the {clearance} asked for: clamps and the plane will not get in there.',
      limit: 'the room asked for; common practice, no source',
      weight: 'mind',
    },
    {
      when: 'railDepth > jigTop',
      says: 'Rails {railDepth} deep can’t have their tops only {jigTop} above the floor: lay them flat or raise the jig.',
      limit: 'geometry',
      weight: 'stop',
    },
    {
      when: 'topHeight > reach',
      says: 'The bottom stands {topHeight} above the floor: lower the jig, or plan for steps to plane and sheathe it from.',
      limit: 'the height you care to work over; common practice, no source',
      weight: 'mind',
    },
    {
      when: 'max(abs(starboardLow), abs(foreLow)) > 10 mm',
      says: 'The jig lies out of level by more than 10 mm (3/8 in). The legs make that good, but string, square and level are easier to trust on a level jig: wedge it first.',
      limit: '10 mm (3/8 in); common practice, no source',
      weight: 'mind',
    },
    {
      when: 'railPieces > 1',
      says: 'Each rail takes {railPieces} pieces of {stock}: join them with a plate as long as three depths, the two rails’ joints not opposite each other, and sight along them again afterwards.',
      limit: 'length of the lumber typed or preset; plates by common practice, no source',
      weight: 'mind',
    },
  ],
  cautions: [
    'Prop each frame fore and aft before you let go of it, and never leave one standing on its legs alone: a frame falls flat and takes its neighbours along.',
    'Port and starboard are the boat’s own. Upside down they change hands: looking forward, her port side lies to your right. Write both words on the jig before the first frame stands.',
    'Measure every station from the one end, never from the last mark, and square each line across both rails from the centreline; draw a cross on the side where the wood stands.',
    'Level the rails both ways, fix the jig to the floor or load it: the long timbers pull hard enough to drag it out of line.',
    'Lift a frame or the transom with two people. Saw no foot to a point, take off every screw’s tip that comes through, and pad the corners of spalls at shin and head height.',
  ],
  sources: [
    { text: 'Running distances, heights under a level line, diagonals: geometry', known: 'geometry' },
    {
      text: 'Two straight level rails, cross-pieces at the stations, string on the centreline, running distances from one end; set-up within 3 mm (1/8 in) along and 1.5 mm (1/16 in) across; sizes of the jig: custom of the trade',
      known: 'common practice',
    },
  ],
  about: ['{station}', 'sheer', 'frame'],
  draw: strongbackView,
});
