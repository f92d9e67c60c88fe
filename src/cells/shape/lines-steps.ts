/** The working of the cell `lines`. */
import { usualDraught } from '../../boat';
import { step, type ValuesOf } from '../form/define';
import { fact, tell } from '../form/fact';
import { sectionSteps, sizeSteps, whole } from './hull-sizes';
import { afloat, ARCHIMEDES, deep, heights, here, sectionHere } from './lines-facts';
import type { LinesAsked, linesInputs } from './lines-inputs';
import { GEOMETRY } from '../../trade/sources';

const FORM = 'K. J. Rawson and E. C. Tupper, Basic Ship Theory, chapter 1: coefficients of form; from memory';

type AtWater = { readonly waterline: number };

const panel = fact('laid flat, triangle by triangle', GEOMETRY, ({ panel: name }: LinesAsked, { hull }) =>
  hull.panel(name),
);

export const linesSteps = {
  ...sizeSteps,
  usualDraught: tell(
    whole,
    'length',
    'draught that she is drawn at until the plan’s own is typed',
    (hull) => usualDraught(hull),
    {
      how: 'a quarter of the least depth, keel to sheer, of any station',
      source: 'common practice, no source',
    },
  ),
  assumed: step(
    'count',
    'by == "neither" and abs(draught - usualDraught) < 0.001 mm ? 1 : 0',
    '1 where neither draught nor weight is known',
    'nothing but a comparison',
  ),

  deep: tell(deep, 'length', 'draught, from the lowest point of the hull up to the water'),
  lowest: tell(
    heights,
    'length',
    'height of the lowest point of the hull above the base line',
    ({ lowest }) => lowest,
  ),
  waterline: step('length', 'lowest + deep', 'height of the waterline above the base line', GEOMETRY),

  height: tell(heights, 'length', 'height of the whole hull', ({ lowest, highest }) => highest - lowest, {
    how: 'from the lowest point of the skin to the highest of the sheer',
  }),
  freeboard: tell(
    heights,
    'length',
    'least freeboard',
    ({ leastSheer }, { waterline }: AtWater) => leastSheer - waterline,
    {
      how: 'from the waterline up to the sheer where it is lowest',
    },
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

  volume: tell(
    afloat,
    'displacement',
    'volume of water pushed aside on an even keel',
    ({ immersed }) => immersed.volume,
  ),
  mass: step(
    'mass',
    'volume * density',
    'displacement: what boat and load weigh together when it floats at this line',
    ARCHIMEDES,
  ),

  waterlineLength: tell(
    afloat,
    'length',
    'length on the waterline',
    ({ waterplane }) => waterplane.fore - waterplane.aft,
    { how: 'between the ends of the cut at the level' },
  ),
  waterlineBeam: tell(
    afloat,
    'length',
    'greatest breadth on the waterline',
    ({ waterplane }) => 2 * waterplane.halfBreadth,
    { how: 'twice the greatest half-breadth of the cut at the level' },
  ),
  waterplane: tell(afloat, 'area', 'area of the waterplane', ({ immersed }) => immersed.waterplane.area, {
    how: 'the area of the cut at the level',
  }),
  wetted: tell(afloat, 'area', 'wetted area', ({ immersed }) => immersed.wettedArea, {
    how: 'skin and transoms below the level, both sides',
  }),
  greatest: tell(
    afloat,
    'area',
    'greatest section under water',
    ({ areas }) => Math.max(...areas.map(([, area]) => area)),
    { how: 'the greatest of 65 sections under water' },
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

  sternDepth: tell(
    whole,
    'length',
    'depth of the bottom’s after end under water; below 0 it is clear of it',
    ({ aft }, { waterline }: AtWater) => waterline - aft.corners[0]![2],
    { how: 'from the bottom’s after end on the centreline up to the waterline' },
  ),
  sternBreadth: tell(
    whole,
    'length',
    'breadth of the after end; nothing where both ends are sharp',
    ({ aft }) => 2 * Math.max(...aft.corners.map(([, y]) => y)),
    { how: 'over both sides, where the hull is broadest at its after end' },
  ),
  panelArea: tell(panel, 'area', 'area of the panel, one side of the boat', ({ area }) => area),
  skinArea: tell(
    whole,
    'area',
    'area of the skin, without transoms',
    ({ panels }) => 2 * panels.reduce((sum, { area }) => sum + area, 0),
    { how: 'all panels laid flat, both sides of the boat' },
  ),
  place: tell(here, 'length', 'position of the station along the boat', ({ x }) => x, {
    how: 'where the station crosses the keel',
  }),
  ...sectionSteps,
  waterBreadth: tell(
    sectionHere,
    'length',
    'half-breadth on the waterline at the station',
    ({ halfBreadth }) => halfBreadth,
    { how: 'the section at the level; nothing where it is clear of the water' },
  ),
  sectionArea: tell(sectionHere, 'area', 'section under water at the station', ({ area }) => area),
} as const;

/** All that the drawings and offers of the cell go by. */
export type LinesValues = ValuesOf<typeof linesInputs, typeof linesSteps>;
