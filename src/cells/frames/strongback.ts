/** The strongback: where each frame stands on the jig upside down, how long its legs are, and what the jig takes in lumber. */
import { isPost, type Hull } from '../../boat';
import { sideOf } from '../../boat/hull/side-of';
import { stands } from '../../boat/quantities/frame-stands';
import { distance, type Vec3 } from '../../kernel';
import { choice, defineCell, hullStep, input, step, type Values } from '../form/define';
import { firstOf } from '../form/in-words';
import { soldLength } from '../common/sizes/lumber-sold';
import {
  aftCorners,
  foreMark,
  legsOf,
  SKIN_INPUTS,
  type Standing,
  standingInHand,
  standingsOf,
} from './jig-in-hand';
import { strongbackView } from './strongback-drawing';

const GEOMETRY = 'geometry';
const INSIDE = 'the planes of the skin moved in by their thickness, on the face that stands on the line';
const PRACTICE = 'common practice, no source';

const thickness = (label: string, from: string, preset: string) =>
  input('length', label, { from, preset, min: '2 mm', max: '60 mm', step: '1 mm' });

const size = (label: string, preset: string, min: string, max: string, note = PRACTICE) =>
  input('length', label, { preset, min, max, step: '10 mm', note });

/** A length of the station in hand. */
const ofStation = (
  says: string,
  meaning: string,
  find: (standing: Standing, hull: Hull, values: Values) => number,
) =>
  hullStep('length', {
    says,
    uses: [...SKIN_INPUTS, 'station'],
    find: (hull, values) => find(standingInHand(hull, values), hull, values),
    meaning,
    source: GEOMETRY,
  });

/** A length of the whole boat. */
const ofBoat = (
  says: string,
  meaning: string,
  find: (hull: Hull, values: Values) => number,
  uses: readonly string[] = SKIN_INPUTS,
) => hullStep('length', { says, uses, find, meaning, source: GEOMETRY });

const stemTop = (standing: Standing, values: Values) =>
  standing.sheer[2] + (isPost(standing.station.role) ? Number(values['stemHead']) : 0);

const toStarboard = ([x, y, z]: Vec3): Vec3 => [x, -y, z];

export const strongback = defineCell({
  id: 'strongback',
  stage: 'frames',
  title: 'Strongback',
  question: 'Where on the jig does each frame stand, and how long are its legs?',
  inputs: {
    station: choice('Station', { options: 'stations', preset: 'frame3' }),
    levelLine: input('length', 'Jig’s top stands for a level line, above the base', {
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
        'Clearance between the highest sheer and the jig',
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
    markLine: input('length', 'Level mark on the frames, above the base', {
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
    side: choice('Frames stand', {
      from: 'frame.stands',
      ofBoat: true,
      options: stands,
      preset: 'custom',
      note: 'by custom forward of the line before the widest frame, aft of it behind',
    }),
    face: choice('Face of a transom on its line', {
      from: 'transomCut.face',
      options: [
        { id: 'outer', label: 'outer face' },
        { id: 'inner', label: 'inner face' },
      ],
      preset: 'outer',
    }),
    siding: input('length', 'Frame thickness', {
      from: 'frame.siding',
      preset: '19 mm',
      min: '3 mm',
      max: '150 mm',
      step: '1 mm',
    }),
    sideThickness: thickness('Side thickness', 'side.thickness', '6 mm'),
    bottomThickness: thickness('Bottom thickness', 'bottom.thickness', '9 mm'),
    bilgeThickness: thickness('Thickness of panels between', 'bilge.thickness', '9 mm'),
    railDepth: { ...size('Depth of the rails', '140 mm', '20 mm', '400 mm'), presetInch: '5 1/2 in' },
    spallBeyond: {
      ...size('Cross-spall beyond the leg, each side', '50 mm', '0 mm', '500 mm'),
      presetInch: '2 in',
    },
    legOverlap: { ...size('Leg lapped on the frame', '200 mm', '0 mm', '1 m'), presetInch: '8 in' },
    stock: soldLength('Length of the lumber sold', {
      preset: '4.8 m',
      presetInch: '16 ft',
      min: '1 m',
      max: '8 m',
      note: 'what your yard has; common practice, no source',
    }),
    waste: input('share', 'Waste in cutting', {
      preset: '15 %',
      min: '0 %',
      max: '100 %',
      note: PRACTICE,
    }),
    reach: { ...size('Highest you care to work over', '1.4 m', '0.5 m', '2.5 m'), presetInch: '54 in' },
  },
  groups: {
    'The frame': ['side', 'face', 'siding', 'markLine'],
    'The panels': ['sideThickness', 'bottomThickness', 'bilgeThickness'],
    'Height of the jig': ['clearance', 'stemHead', 'reach'],
    'The rails': ['railDepth', 'starboardLow', 'foreLow'],
    'Legs and spalls': ['spallBeyond', 'legOverlap'],
    'The lumber': ['stock', 'waste'],
  },
  steps: {
    stands: hullStep('choice', {
      says: 'frames by custom forward of their line before the widest one, aft of it behind; a transom and a stem inboard of it',
      uses: ['station', 'side', 'face'],
      find: (hull, { station, side, face }) =>
        sideOf(hull.station(String(station)), String(side), face === 'outer'),
      meaning: 'side of the line on which the wood stands',
      source: 'custom of the trade; common practice, no source',
    }),
    kindOfStation: hullStep('choice', {
      says: 'by the plan’s half-breadths: an end with breadth is a transom, one without a stem',
      uses: ['station'],
      find: (hull, { station }) => {
        const { role } = hull.station(String(station));
        if (role === 'frame') return 'frame';
        return isPost(role) ? 'stem' : 'transom';
      },
      meaning: 'what stands there',
      source: GEOMETRY,
    }),
    highest: ofBoat(
      'the highest sheer mark of all stations, or the head of the stem',
      'highest point of what is set up, above the base',
      (hull, values) =>
        Math.max(...standingsOf(hull, values).all.map((standing) => stemTop(standing, values))),
      [...SKIN_INPUTS, 'stemHead'],
    ),
    usualLevel: step(
      'length',
      'highest + clearance',
      'level line that leaves the room asked for',
      GEOMETRY,
      'least',
    ),
    freeOverJig: step(
      'length',
      'levelLine - highest',
      'free between the jig’s top and what hangs nearest to it',
      GEOMETRY,
    ),
    fromAft: ofStation(
      INSIDE,
      'sheer mark, forward of the boat’s aftmost point',
      ({ sheer }, hull, values) => sheer[0] - standingsOf(hull, values).aftmost,
    ),
    running: step(
      'length',
      'overhang + fromAft',
      'station line on the jig, from its after end; of a raked end the line plumb under its sheer mark',
      GEOMETRY,
    ),
    footAhead: ofStation(
      INSIDE,
      'how far the bottom on the centreline stands forward of the sheer mark; none of a plumb frame',
      ({ sheer, foot }) => foot[0] - sheer[0],
    ),
    footRunning: step(
      'length',
      'running + footAhead',
      'the bottom on the centreline, along the jig',
      GEOMETRY,
    ),
    sheerOut: ofStation(INSIDE, 'half-breadth of the sheer mark', ({ sheer }) => sheer[1]),
    sheerHeight: ofStation(INSIDE, 'height of the sheer mark above the base', ({ sheer }) => sheer[2]),
    footHeight: ofStation(
      INSIDE,
      'height of the bottom on the centreline above the base',
      ({ foot }) => foot[2],
    ),
    farFace: step(
      'length',
      'stands == "forward" ? running + siding : running - siding',
      'the wood’s other face, along the jig, so that its cross-spall does not stand there',
      GEOMETRY,
    ),
    hullSpan: ofBoat(
      'from the aftmost mark to the foremost',
      'length of what is set up, along the jig',
      (hull, values) => {
        const { aftmost, foremost } = standingsOf(hull, values);
        return foremost - aftmost;
      },
    ),
    jigLength: step('length', 'hullSpan + 2 * overhang', 'length of the jig', GEOMETRY),
    jigDiagonal: step(
      'length',
      'sqrt(jigLength^2 + gauge^2)',
      'diagonal of the jig, both alike: outer corner to outer corner',
      'geometry: Pythagoras',
    ),
    leg: step(
      'length',
      'levelLine - sheerHeight',
      'from the level of the jig’s top up to the sheer mark, plumb',
      'geometry: upside down, height = level line - height above the base',
    ),
    legPort: step(
      'length',
      'leg + foreLow * running / jigLength - starboardLow * sheerOut / gauge',
      'leg to port, from the jig as it lies',
      'geometry: a jig out of level is made good in the legs',
    ),
    legStarboard: step(
      'length',
      'leg + foreLow * running / jigLength + starboardLow * sheerOut / gauge',
      'leg to starboard, from the jig as it lies',
      'geometry: a jig out of level is made good in the legs',
    ),
    footAboveJig: step(
      'length',
      'levelLine - footHeight',
      'the bottom on the centreline above the level of the jig’s top',
      GEOMETRY,
    ),
    frameDepth: step(
      'length',
      'footAboveJig - leg',
      'from the sheer mark to the bottom on the centreline, plumb',
      GEOMETRY,
    ),
    markAboveJig: step(
      'length',
      'levelLine - markLine',
      'level mark of every frame above the level of the jig’s top: one height for all',
      GEOMETRY,
    ),
    underRails: step('length', 'max(jigTop - railDepth, 0 mm)', 'under the rails, from the floor', GEOMETRY),
    topHeight: hullStep('length', {
      says: 'jig’s top + level line - the lowest point of the bottom',
      uses: [...SKIN_INPUTS, 'jigTop', 'levelLine'],
      find: (hull, values) =>
        Number(values['jigTop']) +
        Number(values['levelLine']) -
        Math.min(...standingsOf(hull, values).all.map(({ foot }) => foot[2])),
      meaning: 'highest frame’s bottom above the floor',
      source: GEOMETRY,
    }),
    nailAhead: ofStation(
      'from the sheer mark to the mark of the foremost station',
      'nail on the jig’s centreline, plumb under the foremost sheer mark: forward of this station’s sheer mark',
      ({ sheer }, hull, values) => foreMark(hull, values).sheer[0] - sheer[0],
    ),
    nailLength: step(
      'length',
      'sqrt(nailAhead^2 + sheerOut^2 + leg^2)',
      'from that nail to the sheer mark, port and starboard alike',
      'geometry: Pythagoras in space',
    ),
    crossLength: ofStation(
      'between the two marks in space; from the foremost station to the one abaft it',
      'from a sheer mark across to the other side’s at the next station forward; the two alike',
      ({ sheer, station: { index } }, hull, values) => {
        const { all } = standingsOf(hull, values);
        return distance(sheer, toStarboard((all[index + 1] ?? all[index - 1]!).sheer)); // three stations at least
      },
    ),
    cornerOut: ofBoat(
      'the aftmost station that has breadth at the sheer',
      'half-breadth at the transom’s corners; of a boat that is sharp at both ends, at the first frame’s',
      (hull, values) => aftCorners(hull, values).sheer[1],
    ),
    stemAhead: ofBoat(
      'along the boat, between the sheer marks',
      'stem’s sheer mark forward of those corners',
      (hull, values) => foreMark(hull, values).sheer[0] - aftCorners(hull, values).sheer[0],
    ),
    stemRise: ofBoat(
      'between the sheer marks, + where the stem’s is the higher in the boat',
      'stem’s sheer mark above those corners',
      (hull, values) => foreMark(hull, values).sheer[2] - aftCorners(hull, values).sheer[2],
    ),
    spallLength: step(
      'length',
      '2 * (max(sheerOut, gauge / 2) + spallBeyond)',
      'cross-spall under this station',
      GEOMETRY,
    ),
    railPieces: step('count', 'ceil(jigLength / stock)', 'pieces in each rail', GEOMETRY),
    spallsLength: ofBoat(
      'over all stations: twice the half-breadth of legs or rails, and what stands beyond',
      'all cross-spalls',
      (hull, values) =>
        standingsOf(hull, values).all.reduce(
          (sum, { sheer }) =>
            sum + 2 * (Math.max(sheer[1], Number(values['gauge']) / 2) + Number(values['spallBeyond'])),
          0,
        ),
      [...SKIN_INPUTS, 'gauge', 'spallBeyond'],
    ),
    legsLength: ofBoat(
      'over all stations: leg and lap, two to a frame or transom, one to a stem',
      'all legs',
      (hull, values) =>
        standingsOf(hull, values).all.reduce(
          (sum, standing) =>
            sum +
            legsOf(standing) *
              (Math.max(0, Number(values['levelLine']) - standing.sheer[2]) + Number(values['legOverlap'])),
          0,
        ),
      [...SKIN_INPUTS, 'levelLine', 'legOverlap'],
    ),
    propsLength: hullStep('length', {
      says: 'one to a station, at 45° from its bottom down to the jig: √2 × height',
      uses: [...SKIN_INPUTS, 'levelLine'],
      find: (hull, values) =>
        standingsOf(hull, values).all.reduce(
          (sum, { foot }) => sum + Math.SQRT2 * Math.max(0, Number(values['levelLine']) - foot[2]),
          0,
        ),
      meaning: 'all props fore and aft',
      source: PRACTICE,
    }),
    lumber: step(
      'length',
      '2 * jigLength + spallsLength + legsLength + propsLength',
      'rails, cross-spalls, legs and props together, without waste',
      GEOMETRY,
    ),
    boards: step(
      'count',
      'ceil(lumber * (1 + waste) / stock)',
      'lengths of lumber to buy, the jig’s own feet not counted',
      `${GEOMETRY}; the share of waste is common practice, no source`,
    ),
  },
  answers: [
    {
      of: 'running',
      label: 'line, along the jig',
      from: 'from the after end of the jig, along its centreline; then squared across and a cross drawn on the side where the wood stands',
      tolerance: '3 mm',
    },
    {
      of: 'legPort',
      label: 'leg, port',
      from: 'plumb from the jig’s top to the sheer mark inside the skin, on the boat’s own port side',
      tolerance: '1.5 mm',
    },
    {
      of: 'legStarboard',
      label: 'leg, starboard',
      from: 'plumb from the jig’s top to the sheer mark inside the skin, on the boat’s own starboard side',
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
      [
        'The frame stands',
        {
          when: 'stands == "forward"',
          says: 'forward of its line, its after face on it.',
          otherwise: 'aft of its line, its forward face on it.',
        },
        'Its sheer marks stand {sheerOut} out from the string, its bottom {footAboveJig} above the jig’s top.',
      ],
    ),
    'The jig is {jigLength} long; {boards} lengths of {stock} make it with its legs and props.',
  ],
  table: {
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
  },
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
      says: 'The bottom stands {topHeight} above the floor: lower the jig, or plan for steps to stand on while you plane and sheathe it.',
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
    'Port and starboard are the boat’s own. Upside down they change hands: looking forward, her port side lies to your right. Write both words on the jig before the first frame stands.',
    'Measure every station from the one end, never from the last mark, and square each line across both rails from the centreline.',
    'Level the rails both ways, fix the jig to the floor or load it: the long timbers pull hard enough to drag it out of line.',
    'Prop each frame fore and aft before you let go of it, and never leave one standing on its legs alone: a frame falls flat and takes its neighbours along.',
    'Lift a frame or the transom with two people. Saw no foot to a point, take off every screw’s tip that comes through, and pad the corners of spalls at shin and head height.',
  ],
  sources: [
    { text: 'Running distances, heights under a level line, diagonals: geometry', known: 'geometry' },
    {
      text: 'Two straight level rails, cross-pieces at the stations, string on the centreline, running distances from one end; set-up within 3 mm (1/8 in) along and 1.5 mm (1/16 in) across; sizes of the jig: custom of the trade',
      known: 'common practice',
    },
  ],
  lights: ['{station}', 'sheer', 'frame'],
  wide: true,
  draw: (v, on) => strongbackView(v, on),
});
