/** The working of a panel laid flat. */
import { FORM_PANELS } from '../../trade/plywood-bend';
import { step, type ValuesOf } from '../form/define';
import { tell } from '../form/fact';
import { bends, crown, edgeJobs, flat, hardest, marks, ordinate } from './panels-facts';
import { openingFit } from './panels-opening';
import type { panelInputs } from './panels-inputs';
import { plyRadii } from './ply-radii';
import { GEOMETRY } from '../../trade/sources';

/** Bent flatter than this it counts as straight, m. */
const STRAIGHT = 1000;
const AS_STRAIGHT = 'flatter than 1 km (3280 ft) counts as flat and is given as that';

export const panelSteps = {
  length: tell(flat, 'length', 'length of the flat panel, along the straight edge', ({ length }) => length),
  width: tell(flat, 'length', 'least width of the flat panel, square to that edge', ({ width }) => width),
  lowerEdge: tell(edgeJobs, 'choice', 'edge of the hull that lies below', (job) => job.lowerEdge, {
    options: 'edges',
  }),
  upperEdge: tell(edgeJobs, 'choice', 'edge of the hull that lies above', (job) => job.upperEdge, {
    options: 'edges',
  }),
  lowerJob: tell(edgeJobs, 'choice', 'what is done at the lower edge', ({ lower }) => lower),
  upperJob: tell(edgeJobs, 'choice', 'what is done at the upper edge', ({ upper }) => upper),
  crossed: tell(marks, 'count', 'frames that cross the panel', (all) => all.length),
  ordinates: step('count', 'ceil(length / every) - 1', 'ordinates between the two ends', GEOMETRY),
  at: tell(ordinate, 'length', 'running distance of the ordinate, held to the panel', ({ at }) => at),
  lower: tell(
    ordinate,
    'length',
    'height of the lower edge over the straight edge',
    ({ line }) => line.lower,
  ),
  upper: tell(
    ordinate,
    'length',
    'height of the upper edge over the straight edge',
    ({ line }) => line.upper,
  ),
  lowerCut: tell(ordinate, 'length', 'height at which the lower edge is sawn', ({ cut }) => cut.lower),
  upperCut: tell(ordinate, 'length', 'height at which the upper edge is sawn', ({ cut }) => cut.upper),
  area: tell(flat, 'area', 'area of the panel, one side of the boat', ({ panel }) => panel.area),
  openingArea: step(
    'area',
    'opening == "none" ? 0 m^2 : opening == "hole" ? pi * openingWide^2 / 4 : (openingLong - openingWide) * openingWide + pi * openingWide^2 / 4',
    'area of the cut-out',
    GEOMETRY,
  ),
  openingWood: tell(
    openingFit,
    'length',
    'least wood between the cut-out and an edge of the panel; its width where there is no cut-out',
    ({ wood }) => wood,
    { bound: 'most' },
  ),
  openingFrames: tell(openingFit, 'count', 'frames that the cut-out crosses', ({ frames }) => frames),
  mass: step(
    'mass',
    '(area - openingArea) * thickness * plyDensity',
    'mass of the panel, one side of the boat',
    'volume times the density of the plywood',
  ),
  layerThickness: step('length', 'thickness / skinLayers', 'thickness of one layer', GEOMETRY),
  ...plyRadii,
  bendsTo: tell(
    hardest,
    'length',
    'radius to which it bends where bend and twist take most',
    ({ here }) => 1 / Math.max(here.place.bend, 1 / STRAIGHT),
    { how: `across the ruling there; ${AS_STRAIGHT}` },
  ),
  hardestAt: tell(
    hardest,
    'length',
    'running distance of that place along the straight edge',
    ({ here }) => here.place.along,
  ),
  axis: tell(
    hardest,
    'angle',
    'angle between the axis of the bend there and the straight edge',
    ({ here }) => here.place.axis,
  ),
  bendShare: tell(
    hardest,
    'share',
    'bend there as a share of what a common panel takes',
    ({ here }) => here.common.bend,
    { source: FORM_PANELS },
  ),
  twist: tell(
    bends,
    'angle',
    'greatest twist of the panel, from edge to edge along one ruling',
    (all) => Math.max(...all.map(({ twist }) => twist)),
    { how: 'angle between the skin’s normals at the two ends' },
  ),
  twistStrain: step(
    'ratio',
    '(twist / rad)^2 / 12',
    'stretch of the edges that this twist asks for',
    'derived: the edges of a twisted strip are longer than its middle',
  ),
  twistShare: tell(
    hardest,
    'share',
    'twist there as a share of the strain that a common panel takes',
    ({ here }) => here.common.twist,
    { source: 'derived: the strain of the edges over that of the least radius along the grain' },
  ),
  share: tell(
    hardest,
    'share',
    'bend and twist there as a share of what a common panel takes',
    ({ here }) => here.common.both,
    { source: 'both strains lie on one face and add up' },
  ),
  otherShare: tell(
    hardest,
    'share',
    'the same with the face grain the other way',
    ({ other }) => other.common.both,
  ),
  verdict: tell(hardest, 'choice', 'what the plywood says to it', ({ verdict }) => verdict, {
    how: 'within both tables it bends, within one it is marginal, beyond both it does not bend',
  }),
  otherVerdict: tell(
    hardest,
    'choice',
    'what it says with the face grain the other way',
    ({ otherVerdict }) => otherVerdict,
    { how: 'as before' },
  ),
  crown: tell(
    crown,
    'length',
    'most that the panel stands off a straight frame side, + outside it',
    ({ off }) => off,
  ),
  crownFrame: tell(crown, 'choice', 'frame at which it does', ({ frame }) => frame, { options: 'frames' }),
} as const;

/** All that the drawings and offers of the cell go by. */
export type PanelsValues = ValuesOf<typeof panelInputs, typeof panelSteps>;
