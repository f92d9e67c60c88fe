/** The table of offsets: typed and pasted in the page's own grid, measured and held against the plan here. */
import type { Hull } from '../../boat';
import { apartForward } from '../../boat/hull/station-plane';
import type { Issue, KindId } from '../../measure';
import { choice, defineCell, hullStep, input, step, type Values } from '../form/define';
import { firstOf } from '../form/in-words';
import { drawOffsets } from './offsets-drawing';

const GEOMETRY = 'geometry';
const TABLE = 'the table of offsets';

const ofHull = (
  kind: KindId,
  says: string,
  meaning: string,
  find: (hull: Hull, values: Values) => number | Issue,
  uses: readonly string[] = [],
  source = GEOMETRY,
) => hullStep(kind, { says, uses, find, meaning, source });

const stationOf = (hull: Hull, v: Values) => hull.station(String(v['station']));

/** Number in the table of an edge at a station, m. */
const numberAt = (hull: Hull, v: Values, axis: 0 | 1 | 2) =>
  hull.edge(String(v['edge'])).points[stationOf(hull, v).index]![axis]; // a point a station

const missing = ({ offsets }: Hull) =>
  offsets.points.flat().reduce((sum, point) => sum + point.filter((value) => value === null).length, 0);

export const offsets = defineCell({
  id: 'offsets',
  stage: 'shape',
  title: 'Table of offsets',
  question: 'Are these the plan’s numbers, and what boat do they make?',
  view: 'offsets',
  inputs: {
    station: choice('Station looked at', { options: 'stations', preset: 'frame3' }),
    edge: choice('Edge looked at', { options: 'edges', preset: 'sheer' }),
    planLength: input('length', 'Length over all by the plan', {
      from: '{self}.length',
      preset: '4.5 m',
      min: '0.1 m',
      max: '100 m',
      step: '1 mm',
      note: 'as the plan states it; until you type it, what the table makes',
    }),
    planBeam: input('length', 'Greatest breadth by the plan', {
      from: '{self}.beam',
      preset: '1.5 m',
      min: '0.01 m',
      max: '100 m',
      step: '1 mm',
      note: 'as the plan states it, to the same face of the skin as the table',
    }),
    within: input('length', 'Look into a difference of more than', {
      preset: '10 mm',
      presetInch: '3/8 in',
      min: '1 mm',
      max: '100 mm',
      step: '1 mm',
      note: 'about 3/8 in (10 mm): drawing and copying lose that much; common practice, no source',
    }),
  },
  steps: {
    stations: ofHull('count', 'counted', 'stations of the table', (hull) => hull.stations.length, [], TABLE),
    edges: ofHull('count', 'counted', 'edges of the table', (hull) => hull.edges.length, [], TABLE),
    missing: ofHull(
      'count',
      'counted: boxes that are empty or can’t be read',
      'numbers still missing',
      missing,
      [],
      TABLE,
    ),
    faults: ofHull(
      'count',
      'counted: points behind one another, a half-breadth below nothing, a section that crosses itself, names told apart by nothing',
      'other faults of the table',
      (hull) => hull.faults.length - missing(hull),
      [],
      TABLE,
    ),
    length: ofHull(
      'length',
      'from the aftmost to the foremost point of all edges',
      'length of the hull over all',
      (hull) => hull.length,
    ),
    beam: ofHull(
      'length',
      'twice the greatest half-breadth of the edges, as battens through their points',
      'greatest breadth of the hull',
      (hull) => hull.beam,
    ),
    depth: ofHull(
      'length',
      'height of the outermost edge less that of the keel, where the hull is widest',
      'depth of the hull at its widest station',
      (hull) => hull.depth,
    ),
    diagonal: ofHull(
      'length',
      'in plan, as it is lofted: √(distance forward² + half-breadths²), the heights left out',
      'diagonal from the after corner of the sheer across to its fore end, in plan, to tape on the floor',
      (hull) => {
        const sheer = hull.edges.at(-1)!.points; // a hull without edges has no length either
        const [aft, fore] = [sheer[0]!, sheer.at(-1)!];
        // From the port corner across to the starboard one of a bow transom; to the centreline at a stem.
        return Math.hypot(fore[0] - aft[0], fore[1] + aft[1]);
      },
    ),
    leaning: ofHull(
      'count',
      'counted: stations between the ends whose edges do not all stand equally far forward',
      'frames that lean',
      (hull) => hull.frames.filter(({ corners }) => apartForward(corners) > 0).length,
      [],
      TABLE,
    ),
    leansMost: ofHull(
      'length',
      'foremost edge less aftmost, at the frame where they stand farthest apart',
      'most that a frame’s edges stand apart, fore and aft',
      (hull) => Math.max(0, ...hull.frames.map(({ corners }) => apartForward(corners))),
      [],
      TABLE,
    ),
    lengthOff: step('length', 'length - planLength', 'table less plan, in length', GEOMETRY),
    beamOff: step('length', 'beam - planBeam', 'table less plan, in breadth', GEOMETRY),
    forward: ofHull(
      'length',
      'from the table',
      'distance forward of that edge at that station',
      (hull, v) => numberAt(hull, v, 0),
      ['station', 'edge'],
      TABLE,
    ),
    halfBreadth: ofHull(
      'length',
      'from the table',
      'half-breadth of that edge at that station',
      (hull, v) => numberAt(hull, v, 1),
      ['station', 'edge'],
      TABLE,
    ),
    height: ofHull(
      'length',
      'from the table',
      'height of that edge at that station above the base line',
      (hull, v) => numberAt(hull, v, 2),
      ['station', 'edge'],
      TABLE,
    ),
    across: ofHull(
      'length',
      'the straight section of the lowest panel at that station; nothing where it comes to a point',
      'length of the section across the bottom at that station',
      (hull, v) => stationOf(hull, v).girth(hull.panels[0]!.name), // two edges have a panel
      ['station'],
    ),
    deadrise: ofHull(
      'angle',
      'of the straight section of the lowest panel at that station, from level',
      'deadrise of the straight section at that station, + rising outward',
      (hull, v) => stationOf(hull, v).deadrise(hull.panels[0]!.name), // two edges have a panel
      ['station'],
    ),
    flare: ofHull(
      'angle',
      'of the straight section of the highest panel at that station, from plumb',
      'flare of the straight section of the side at that station, + outward',
      (hull, v) => stationOf(hull, v).flare(hull.panels.at(-1)!.name),
      ['station'],
    ),
  },
  answers: [
    {
      of: 'length',
      label: 'length over all',
      from: 'between the extreme points of all edges, raked ends included',
    },
    {
      of: 'beam',
      label: 'greatest breadth',
      from: 'over both sides, on the face of the skin that the table is to',
    },
    { of: 'depth', label: 'depth', from: 'from the keel up to the sheer, at the widest station' },
  ],
  inWords: firstOf(
    [
      {
        when: 'missing > 0',
        says: [
          {
            when: 'missing == 1',
            says: 'One number is still missing or can’t be read; what depends on it waits.',
            otherwise:
              '{missing} numbers {missing?is:are} still missing or can’t be read; what depends on them waits.',
          },
          { when: 'faults > 0', says: 'Other faults: {faults}, each told below.' },
        ],
      },
      {
        when: 'faults > 0',
        says: [
          'Every number is there, but the table has',
          { when: 'faults == 1', says: 'a fault. It is', otherwise: '{faults} faults. Each is' },
          'told below, and marked in its box where it has one.',
        ],
      },
    ],
    '{stations} stations and {edges} edges make a hull {length} long, {beam} wide and {depth} deep. From the after corner of the sheer across to its fore end a tape on the floor reads {diagonal}. At {station} the {edge} stands {halfBreadth} out from the centreline and {height} above the base line.',
  ),
  table: {
    caption: 'What the numbers make at each station',
    over: 'station',
    columns: [
      { of: 'forward', label: 'forward' },
      { of: 'halfBreadth', label: 'half-breadth' },
      { of: 'height', label: 'height' },
      { of: 'deadrise', label: 'deadrise, section', where: 'across' },
      { of: 'flare', label: 'flare, section' },
    ],
  },
  warnings: [
    {
      when: 'abs(lengthOff) > within',
      says: 'The plan says {planLength} over all, the table makes {length}: look for a number lost or misread before anything is cut.',
      limit: 'the difference to be looked into, as typed among the inputs; common practice, no source',
      weight: 'mind',
    },
    {
      when: 'abs(beamOff) > within',
      says: 'The plan says {planBeam} of breadth, the table makes {beam}: is the table to the other face of the skin, or a half-breadth misread?',
      limit: 'the difference to be looked into, as typed among the inputs; common practice, no source',
      weight: 'mind',
    },
    {
      when: 'leansMost > 1 mm',
      says: '{leaning} {leaning?frame leans, its edges:frames lean, their edges} up to {leansMost} apart fore and aft. If the plan has frames plumb, a number forward is misread. If the plan rakes one, loft it on the floor: here frames are drawn and set up plumb.',
      limit: 'frames are taken as plumb; 1 mm (1/32 in)',
      weight: 'mind',
    },
  ],
  cautions: [
    'The plan outranks this table. Keep it beside you, read each number back aloud to somebody, and measure length, breadth and diagonal on the floor before cutting.',
    'Whether the numbers are to the inside or the outside of the skin stands on the plan, not in the numbers. A skin deducted twice, or not at all, makes every frame wrong by its thickness.',
  ],
  sources: [
    {
      text: 'Feet, inches and eighths in three figures, + and − for a sixteenth more or less: the usual notation of tables of offsets',
      known: 'common practice',
    },
    {
      text: 'Half-breadth from the centreline, height from the base line, one section a station',
      known: 'common practice',
    },
    {
      text: 'A. Saxena and B. Sahay, Computer Aided Engineering Design, chapter 5: a batten between ducks is a cubic',
      known: 'published',
    },
  ],
  lights: ['{station}', '{edge}'],
  draw: drawOffsets,
});
