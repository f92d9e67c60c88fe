/** A panel of the skin laid flat: how to mark and cut it, and whether its plywood takes the bend. */
import { defineCell } from '../form/define';
import { tableOf } from '../form/row-quantities';
import { panelsChart } from './panels-chart';
import { drawPanels } from './panels-drawing';
import { places } from './panels-facts';
import { panelInputs } from './panels-inputs';
import { panelsOffers } from './panels-offers';
import { panelPatterns } from './panels-pattern-drawing';
import { panelSteps } from './panels-steps';
import { plyFunctions } from './ply-radii';

const PRACTICE = 'common practice, no source';
const TABLES = 'APA concrete-form panel table and FAA AC 43.13-1B, aircraft plywood';
const YARDSTICK = 'a strain derived from the published radii; no limit of twist was found published';

export const panels = defineCell({
  id: 'panels',
  stage: 'skin',
  title: 'A panel laid flat',
  question: 'What shape is this panel laid flat, and does its plywood take the bend?',
  inputs: panelInputs,
  groups: {
    'The plywood': ['thickness', 'ply', 'plyDensity', 'wetness', 'allowed', 'twistAllowed'],
    'The marks': ['place', 'siding', 'stands', 'gapAllowed'],
    'A hole or slot': ['opening', 'openingAt', 'openingUp', 'openingLong', 'openingWide'],
  },
  functions: plyFunctions,
  steps: panelSteps,
  answers: [
    {
      of: 'length',
      label: 'panel, long',
      from: 'along the straight edge, between squares at its two ends',
      tolerance: '2 mm',
    },
    {
      of: 'width',
      label: 'panel, wide',
      from: 'square up from the straight edge, where it stands highest',
      tolerance: '2 mm',
    },
    {
      of: 'share',
      label: 'of what it takes',
      from: 'bend and twist where they take most, of the least radius of a common panel',
    },
  ],
  inWords: [
    'Strike a straight line {leftOn} inside the sheet’s edge and mark up from it every {every}, {ordinates} times; saw {leftOn} outside the panel. The lower edge is the {lowerEdge}, {lowerJob}; the upper is the {upperEdge}, {upperJob}.',
    {
      when: 'verdict == "untabled"',
      says: 'No published radius is for a layer of {layerThickness}.',
      otherwise: [
        'A layer of {layerThickness}',
        { when: 'verdict == "refuses"', says: 'does not bend', otherwise: 'bends' },
        'to {bendsTo} with its face grain {grain}',
        { when: 'verdict == "marginal"', says: 'only if it is a picked sheet.', otherwise: '.' },
      ],
    },
    {
      when: 'layerThickness < 6.34 mm',
      says: 'The table begins at 1/4 in (6.4 mm); a thinner sheet is held to that row.',
    },
  ],
  table: tableOf({
    caption:
      'Heights over the straight edge, at distances from the aftermost point, port panel outside up; starboard is its mirror',
    over: 'place',
    rows: places,
    columns: [
      { of: 'place', label: 'along' },
      { of: 'lower', label: 'lower line' },
      { of: 'upper', label: 'upper line' },
      { of: 'lowerCut', label: 'saw below' },
      { of: 'upperCut', label: 'saw above' },
    ],
  }),
  warnings: [
    {
      when: 'verdict == "refuses"',
      says: 'At {hardestAt} along, the panel bends to {bendsTo}, tighter than any table lets a layer of {layerThickness} with its face grain {grain}. Turn the grain, or glue up thinner layers.',
      limit: TABLES,
      weight: 'stop',
    },
    {
      when: 'verdict == "marginal"',
      says: 'At {hardestAt} along, the panel bends to {bendsTo}. One table lets a layer of {layerThickness} bend so, and the other does not say so: try an off-cut, and take picked sheets without a patch there.',
      limit: TABLES,
      weight: 'mind',
    },
    {
      when: 'verdict == "untabled"',
      says: 'No published radius is for a layer of {layerThickness}: the tables end at 3/4 in (19 mm). Glue up thinner layers, or bend a strip for trial.',
      limit: TABLES,
      weight: 'mind',
    },
    {
      when: 'twist > twistAllowed',
      says: 'The panel twists by {twist} across: it goes on with many clamps, and slowly. Past 9° redraw its edges, or lay it in thinner layers.',
      limit: YARDSTICK,
      weight: 'mind',
    },
    {
      when: 'abs(crown) > gapAllowed',
      says: 'At {crownFrame} the skin stands {crown} off a straight frame side (+ outside it). Give the frame that crown, or pack it; do not pull the panel in.',
      limit: `the gap allowed: ${PRACTICE}`,
      weight: 'mind',
    },
    {
      when: 'place > length',
      says: 'The panel is only {length} long; the ordinate looked at is its last.',
      limit: 'geometry',
      weight: 'mind',
    },
    {
      when: 'opening != "none" and openingWood < 0 mm',
      says: 'The cut-out runs over the edge of the panel.',
      limit: 'geometry',
      weight: 'stop',
    },
    {
      when: 'opening != "none" and openingFrames > 0',
      says: 'Frames that the cut-out crosses: {openingFrames}. Move it between two of them, or frame round it.',
      limit: `no opening over a frame: ${PRACTICE}`,
      weight: 'mind',
    },
    {
      when: 'opening == "slot" and openingLong < openingWide',
      says: 'A slot shorter than it is wide is cut as a round hole of {openingWide}.',
      limit: 'geometry',
      weight: 'mind',
    },
  ],
  cautions: [
    'A panel bent near its limit can crack and whip back. Two people or more bend it, slowly, clamped before anybody lets go, with eye protection and no face over it.',
    'Hot water burns: wear gloves, pour it on towels laid over the panel, and let the panel dry before it is glued.',
    'Mark port and starboard, outside and fore end on both pieces before you saw; two panels of one hand are the usual loss.',
    'A panel that twists has no exact flat shape: leave more outside the line, and mark it on the boat before the last cut.',
    'Towards the bow, where side and bottom come to lie almost in one plane, the lap at the chine turns into a butt: scribe that stretch of the lower panel to the upper.',
    'The sheet’s own maker and a trial with an off-cut outrank both tables.',
    'Print at 100 %, never fitted to the page, and measure the bar on every sheet.',
  ],
  sources: [
    {
      text: 'Ruled surface of least twist, laid flat strip by strip; least height by going round the outline (Freeman and Shapira 1975): geometry',
      known: 'geometry',
    },
    {
      text: 'Least radii of common panels, dry: APA concrete-form panel table, Douglas-fir; now and then one cracks at them (APA TT-003)',
      known: 'published',
    },
    {
      text: 'Least radii of picked panels, dry and soaked: FAA AC 43.13-1B, aircraft plywood, as reproduced',
      known: 'published',
    },
    {
      text: 'Twist as a strain: edges of a twisted strip are stretched by the square of the twist over 12, held against the strain of the least radius along the grain; bands of 5° and 9° on that reckoning',
      known: 'common practice',
    },
    {
      text: 'Bend slantwise to the grain: the least radius along it times the squared sine of the angle between axis and grain, never less than across it; the aircraft table has the same up to 45°',
      known: 'geometry',
    },
    {
      text: 'Sides first, then the bottom over their edges; panels cut proud and planed flush; ordinates every 300 mm (12 in)',
      known: 'common practice',
    },
  ],
  about: ['{panel}'],
  draw: drawPanels,
  chart: panelsChart,
  offers: panelsOffers,
  patterns: { are: 'The panel and its mirror at full size', draw: panelPatterns },
});
