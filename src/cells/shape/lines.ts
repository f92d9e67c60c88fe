/** The lines of the hull: drafted, measured, floated at a draught, and to be turned by hand. */
import { type Hull, usualDraught } from '../../boat';
import type { Issue, KindId } from '../../measure';
import {
  choice,
  defineCell,
  hullStep,
  input,
  type Offer,
  type OnHand,
  step,
  type Values,
} from '../form/define';
import { firstOf } from '../form/in-words';
import { type Afloat, afloatAt, draughtAt, heightsOf, numberOf, stationOf } from './lines-form';
import { areasChart, drawLines, wallSheet } from './lines-drawing';

const GEOMETRY = 'geometry';
const MESH = 'geometry: divergence theorem over the panels as they are ruled; exact for a box and a prism';
const FORM = 'K. J. Rawson and E. C. Tupper, Basic Ship Theory, chapter 1: coefficients of form; from memory';

const ofHull = (
  kind: KindId,
  says: string,
  meaning: string,
  find: (hull: Hull, values: Values) => number | Issue,
  uses: readonly string[] = [],
  source = GEOMETRY,
) => hullStep(kind, { says, uses, find, meaning, source });

const atWater = (hull: Hull, values: Values) => afloatAt(hull, numberOf(values, 'waterline'));

const afloat = (kind: KindId, says: string, meaning: string, find: (afloat: Afloat) => number) =>
  ofHull(kind, says, meaning, (hull, v) => find(atWater(hull, v)), ['waterline'], MESH);

const atStation = (
  kind: KindId,
  says: string,
  meaning: string,
  find: (hull: Hull, values: Values) => number | Issue,
  uses: readonly string[] = ['station'],
) => ofHull(kind, says, meaning, find, uses);

export const lines = defineCell({
  id: 'lines',
  stage: 'shape',
  title: 'Lines of the hull',
  question: 'What shape do these numbers make, how deep does she float, and what does she weigh then?',
  inputs: {
    by: choice('The plan states', {
      options: [
        { id: 'neither', label: 'neither draught nor weight, so far' },
        { id: 'draught', label: 'the draught' },
        { id: 'weight', label: 'the weight' },
      ],
      preset: 'neither',
    }),
    draught: input('length', 'Design draught', {
      from: 'hull.draught',
      ofBoat: true,
      preset: '150 mm',
      min: '1 mm',
      max: '1.5 m',
      step: '5 mm',
      when: 'by != "weight"',
      note: 'from the lowest point of the hull up to the design waterline',
    }),
    weight: input('mass', 'Weight with all aboard', {
      preset: '250 kg',
      min: '1 kg',
      max: '20 t',
      step: '10 kg',
      when: 'by == "weight"',
      note: 'boat, motor, gear and crew',
    }),
    station: choice('Station looked at', { options: 'stations', preset: 'frame3' }),
    panel: choice('Panel measured', { options: 'panels', preset: 'side' }),
    waterlines: input('count', 'Waterlines drawn', { preset: '4', min: '0', max: '8', step: '1' }),
    buttocks: input('count', 'Buttocks drawn, each side', { preset: '2', min: '0', max: '5', step: '1' }),
    wall: input('count', 'Sheet for the wall, 1 to', {
      preset: '10',
      min: '5',
      max: '50',
      step: '5',
      note: 'scale of the plan that is printed on sheets to be joined; 1 to 20 is half as large as 1 to 10',
    }),
    density: input('density', 'Density of the water', {
      preset: '1000 kg/m3',
      min: '990 kg/m3',
      max: '1035 kg/m3',
      step: '5 kg/m3',
      note: 'fresh water 1000, sea water about 1025: round figures, common practice',
    }),
  },
  groups: {
    'The drawing': ['waterlines', 'buttocks', 'wall'],
  },
  steps: {
    length: ofHull(
      'length',
      'between the extreme points of all edges',
      'length of the hull over all',
      (hull) => hull.length,
    ),
    beam: ofHull(
      'length',
      'twice the greatest half-breadth along the edges',
      'greatest breadth of the hull',
      (hull) => hull.beam,
    ),
    depth: ofHull(
      'length',
      'from keel to sheer at the widest station',
      'depth of the hull',
      (hull) => hull.depth,
    ),
    usualDraught: ofHull(
      'length',
      'a quarter of the least depth, keel to sheer, of any station',
      'draught that she is drawn at until the plan’s own is typed',
      usualDraught,
      [],
      'common practice, no source',
    ),
    assumed: step(
      'count',
      'by == "neither" and abs(draught - usualDraught) < 0.001 mm ? 1 : 0',
      '1 where neither draught nor weight is known',
      'nothing but a comparison',
    ),
    deep: ofHull(
      'length',
      'the draught typed, or the one at which the water pushed aside weighs what she weighs',
      'draught, from the lowest point of the hull up to the water',
      (hull, v) =>
        v['by'] === 'weight'
          ? draughtAt(hull, numberOf(v, 'weight') / numberOf(v, 'density'))
          : numberOf(v, 'draught'),
      ['by', 'draught', 'weight', 'density'],
      'Archimedes’ principle',
    ),
    lowest: ofHull(
      'length',
      'the lowest point of the skin',
      'height of the lowest point of the hull above the base line',
      (hull) => heightsOf(hull).lowest,
    ),
    waterline: step('length', 'lowest + deep', 'height of the waterline above the base line', GEOMETRY),
    height: ofHull(
      'length',
      'from the lowest point of the skin to the highest of the sheer',
      'height of the whole hull',
      (hull) => heightsOf(hull).highest - heightsOf(hull).lowest,
    ),
    freeboard: ofHull(
      'length',
      'from the waterline up to the sheer where it is lowest',
      'least freeboard',
      (hull, v) => heightsOf(hull).leastSheer - numberOf(v, 'waterline'),
      ['waterline'],
    ),
    waterlineSpacing: step(
      'length',
      'height / (waterlines + 1)',
      'distance between the waterlines drawn',
      GEOMETRY,
    ),
    buttockSpacing: step(
      'length',
      'beam / 2 / (buttocks + 1)',
      'distance between the buttocks drawn',
      GEOMETRY,
    ),
    wallLength: step('length', 'length / wall', 'length of the hull on the sheet for the wall', GEOMETRY),
    volume: afloat(
      'displacement',
      'the part of the closed hull below the level',
      'volume of water pushed aside on an even keel',
      ({ immersed }) => immersed.volume,
    ),
    mass: step(
      'mass',
      'volume * density',
      'displacement: what boat and load weigh together when it floats at this line',
      'Archimedes’ principle',
    ),
    waterlineLength: afloat(
      'length',
      'between the ends of the cut at the level',
      'length on the waterline',
      ({ waterplane }) => waterplane.fore - waterplane.aft,
    ),
    waterlineBeam: afloat(
      'length',
      'twice the greatest half-breadth of the cut at the level',
      'greatest breadth on the waterline',
      ({ waterplane }) => 2 * waterplane.halfBreadth,
    ),
    waterplane: afloat(
      'area',
      'the area of the cut at the level',
      'area of the waterplane',
      ({ immersed }) => immersed.waterplane.area,
    ),
    wetted: afloat(
      'area',
      'skin and transoms below the level, both sides',
      'wetted area',
      ({ immersed }) => immersed.wettedArea,
    ),
    greatest: afloat(
      'area',
      'the greatest of 65 sections under water',
      'greatest section under water',
      ({ areas }) => Math.max(...areas.map(([, area]) => area)),
    ),
    block: step(
      'ratio',
      'volume / (waterlineLength * waterlineBeam * deep)',
      'block coefficient: share of the box of waterline length, waterline beam and draught',
      FORM,
    ),
    prismatic: step(
      'ratio',
      'volume / (waterlineLength * greatest)',
      'prismatic coefficient: share of the prism of the greatest section, how full the ends are',
      FORM,
    ),
    sinkage: step(
      'mass',
      'waterplane * density * 10 mm',
      'load that sinks the boat by 10 mm (about 3/8 in) at this line',
      'waterplane area times density times the sinkage',
    ),
    sternDepth: ofHull(
      'length',
      'from the bottom’s after end on the centreline up to the waterline',
      'depth of the bottom’s after end under water; below 0 it is clear of it',
      (hull, v) => numberOf(v, 'waterline') - hull.aft.corners[0]![2],
      ['waterline'],
    ),
    sternBreadth: ofHull(
      'length',
      'over both sides, where the hull is broadest at its after end',
      'breadth of the after end; nothing where both ends are sharp',
      (hull) => 2 * Math.max(...hull.aft.corners.map(([, y]) => y)),
    ),
    panelArea: ofHull(
      'area',
      'laid flat, triangle by triangle',
      'area of the panel, one side of the boat',
      (hull, v) => hull.panel(String(v['panel'])).area,
      ['panel'],
    ),
    skinArea: ofHull(
      'area',
      'all panels laid flat, both sides of the boat',
      'area of the skin, without transoms',
      (hull) => 2 * hull.panels.reduce((sum, { area }) => sum + area, 0),
    ),
    place: atStation(
      'length',
      'where the station crosses the keel',
      'distance forward of the station',
      (hull, v) => stationOf(hull, v).x,
    ),
    flare: atStation(
      'angle',
      'the straight line across the uppermost panel, from the vertical',
      'flare of the side at the station, + outward',
      (hull, v) => stationOf(hull, v).flare(hull.panels.at(-1)!.name),
    ),
    across: atStation(
      'length',
      'the straight line across the lowest panel; nothing where it comes to a point',
      'length of the section across the bottom at the station',
      (hull, v) => stationOf(hull, v).girth(hull.panels[0]!.name),
    ),
    deadrise: atStation(
      'angle',
      'the straight line across the lowest panel, from the horizontal',
      'deadrise of the bottom at the station, + rising outward',
      (hull, v) => stationOf(hull, v).deadrise(hull.panels[0]!.name),
    ),
    waterBreadth: atStation(
      'length',
      'the section at the level; nothing where it is clear of the water',
      'half-breadth on the waterline at the station',
      (hull, v) => atWater(hull, v).section(stationOf(hull, v)).halfBreadth,
      ['station', 'waterline'],
    ),
    sectionArea: atStation(
      'area',
      'the section below the level, both sides',
      'section under water at the station',
      (hull, v) => atWater(hull, v).section(stationOf(hull, v)).area,
      ['station', 'waterline'],
    ),
  },
  answers: [
    { of: 'length', label: 'length over all', from: 'between the extreme points of the hull, ends included' },
    {
      of: 'mass',
      label: 'displacement',
      from: 'boat, motor, gear and crew together, floating level',
      when: 'assumed == 0',
    },
    {
      of: 'deep',
      label: 'draught',
      from: 'from the lowest point of the hull up to the water, floating level',
      when: 'assumed == 0',
    },
  ],
  inWords: [
    'The hull is {length} long, {beam} broad and {depth} deep.',
    firstOf(
      [
        {
          when: 'assumed == 1',
          says: 'Type the draught that the plan states, or what she weighs with all aboard: until then the waterline is drawn {deep} up, a quarter of her least depth, which is only a guess.',
        },
        {
          when: 'freeboard > 0 m',
          says: 'Floating level and {deep} deep she displaces {volume} and weighs {mass} in all. Where the sheer is lowest {freeboard} of side is left above the water; another {sinkage} aboard sinks her by about 10 mm (3/8 in).',
        },
      ],
      'With her lowest point {deep} down the water stands over the sheer: no boat floats so.',
    ),
  ],
  table: {
    caption: 'Form by station',
    over: 'station',
    columns: [
      { of: 'place', label: 'forward' },
      { of: 'flare', label: 'flare' },
      { of: 'deadrise', label: 'deadrise', where: 'across' },
      { of: 'waterBreadth', label: 'half-breadth afloat' },
      { of: 'sectionArea', label: 'area under water' },
    ],
  },
  warnings: [
    {
      when: 'freeboard <= 0 m',
      says: 'The water would stand {deep} above the lowest point of the hull, over the sheer where it is lowest: she would fill before she floated so deep.',
      limit: 'the sheer of this hull',
      weight: 'stop',
    },
    {
      when: 'sternDepth > deep / 2 and sternBreadth > 0 m and freeboard > 0 m and assumed == 0',
      says: 'The after end of the bottom is {sternDepth} under water. A boat for oars or sail drags water behind such a stern; one that is to plane wants it so.',
      limit: 'a transom clear of the water at rest for low speeds; common practice, no source',
      weight: 'mind',
    },
  ],
  cautions: [
    'All this is of the face of the skin that the offsets are measured to, floating level. Offsets to the inside of the skin give a little less than what floats.',
    'The displacement says what the boat weighs at this line, not what she may carry. How much may go aboard is for the capacity rule of the place, for stability, and for the water she is used on.',
  ],
  sources: [
    {
      text: 'Volume, wetted area and waterplane of the ruled panels by the divergence and Green’s theorems, any text of vector analysis',
      known: 'geometry',
    },
    {
      text: 'Displacement: the weight of the water pushed aside, Archimedes, On Floating Bodies',
      known: 'published',
    },
    {
      text: 'Block and prismatic coefficients: K. J. Rawson and E. C. Tupper, Basic Ship Theory, chapter 1',
      known: 'from memory',
    },
    {
      text: 'Forebody to the right, afterbody to the left in the body plan; bow to the right in profile',
      known: 'common practice',
    },
  ],
  lights: ['{station}'],
  wide: 'tall',
  draw: drawLines,
  chart: areasChart,
  view: 'hull',
  offers: draughtOffer,
  patterns: wallSheet,
  patternsAre: 'Lines plan for the wall, to scale',
});

/** A draught found by the weight may become the boat's own. */
function draughtOffer(v: Values, { say }: Pick<OnHand, 'say'>): readonly Offer[] {
  if (v['by'] !== 'weight') return [];
  const deep = numberOf(v, 'deep');
  return [
    {
      turns: 'Make it her design draught',
      label: `At that weight she floats ${say(deep, 'length')} deep.`,
      changes: { 'hull.draught': `${+(1000 * deep).toFixed(1)} mm`, '{self}.by': 'draught' },
    },
  ];
}
