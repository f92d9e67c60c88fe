/** The working of the cell `sheets`. */
import { laidOutline } from '../../kernel/nest';
import { offcutOf } from '../../kernel/nest-offcut';
import { outlineBox } from '../../kernel/lying-outlines';
import { outlineArea } from '../../kernel/outline';
import { step, type ValuesOf } from '../form/define';
import { fact, tell } from '../form/fact';
import {
  best,
  cutList,
  type CutPiece,
  isFreed,
  isProved,
  offRule,
  type PlannedSheet,
  type PlannedSheets,
  problem,
  sheetsOf,
  shop,
} from './sheets-facts';
import { grainSteps, layersOf, panelsCut } from './sheets-grain';
import type { sheetsInputs } from './sheets-inputs';
import { jointSteps } from './sheets-joints';
import { bottomSteps } from './sheets-bottom';
import type { SheetsAsked } from './sheets-problem';
import { GEOMETRY } from '../../trade/sources';

const sum = <T>(of: readonly T[], size: (one: T) => number): number =>
  of.reduce((total, one) => total + size(one), 0);

const countOf = ({ sections, plans }: PlannedSheets, counts: (stock: number) => boolean = () => true) =>
  sum(
    [...sections.keys()],
    (i) => sections[i]!.times * plans[i]!.sheets.filter(({ stock }) => counts(stock)).length,
  );

const boughtArea = (sheets: readonly PlannedSheet[]) =>
  sum(sheets, ({ times, stock }) => times * stock.length * stock.width);

const cutArea = ({ sections }: PlannedSheets) =>
  sum(sections, ({ times, problem: { pieces } }) =>
    sum(pieces, ({ outline }) => times * Math.abs(outlineArea(outline))),
  );

const between = fact(
  'of each panel laid flat one face less than it has layers, both sides',
  GEOMETRY,
  (v: SheetsAsked, at) =>
    v.skinSides > 0
      ? v.skinSides * sum(panelsCut(v, at.hull.panels), ({ name, area }) => (layersOf(v, name) - 1) * area)
      : 0,
);

/** The piece of the cut list that is looked at; undefined where the list is shorter. */
const cut = fact('of the cut list', GEOMETRY, (v: SheetsAsked, { ask }) => ask(cutList)[v.cut - 1]);

const boxOf = (found: CutPiece | undefined) =>
  found && outlineBox(laidOutline(found.laid, found.on.section.problem.pieces[found.laid.piece]!));

const lies = ({ laid }: CutPiece, grain: SheetsAsked['grain']): string => {
  const turned = laid.quarter % 2 === 1 ? 'across' : 'along';
  const back = laid.mirrored ? ', from the back' : '';
  return grain === 'either' || grain === 'better' || laid.mirrored ? `${turned}${back}` : turned;
};

/** Two thicknesses of plywood are one when they differ by less: sheets are never quite what is printed. */
const SAME_PLY = '0.6 mm';

export const sheetsSteps = {
  usualLayers: step(
    'count',
    [
      ...[
        '2 * bottomThickness / bottomLayers',
        '2 * sideThickness / sideLayers',
        '3 * sideThickness / sideLayers',
      ].map((skin) => `abs(transomThickness - ${skin}) < ${SAME_PLY} ? ${skin.charAt(0)}`),
      '1',
    ].join(' : '),
    'layers of the skin’s own plywood that make up a transom; 1 where none do',
    'common practice, no source',
  ),
  ...bottomSteps,
  ...grainSteps,
  count: tell(best, 'count', 'sheets to buy', (plan) => countOf(plan)),
  ofSecond: tell(best, 'count', 'of them of the second size', (plan) =>
    countOf(plan, (stock) => stock === 1),
  ),
  cost: tell(best, 'money', 'cost of the sheets', ({ cost }) => cost, {
    how: 'their prices, by volume where the thickness is another',
    source: GEOMETRY,
  }),
  joints: tell(best, 'count', 'joints in the skin, all sides together', ({ joints }) => joints, {
    how: 'counted',
  }),
  ...jointSteps,
  shopCount: tell(shop, 'count', 'sheets by the rule of the shop', (plan) => countOf(plan)),
  leastCost: tell(best, 'money', 'no plan can cost less', ({ least }) => least, {
    how: 'the area of all that is cut, in the cheapest sheets that have it, or the lengths wider than half a sheet, laid end to end; of parts without joints also by trying every way',
    source: GEOMETRY,
  }),
  proved: tell(
    best,
    'choice',
    'whether it is proved that no plan costs less',
    (plan) => (isProved(plan) ? 'yes' : 'not yet'),
    { how: 'the cost has come down to the least there can be', source: GEOMETRY },
  ),
  pieces: tell(cutList, 'count', 'pieces to mark', (all) => all.length, {
    how: 'counted; of two that are sawn at once, one',
  }),
  sheetsMarked: tell(sheetsOf, 'count', 'sheets to mark', (all) => all.length, {
    how: 'counted; of two that are sawn at once, one',
  }),
  bought: tell(sheetsOf, 'area', 'plywood bought', boughtArea, {
    how: 'lengths times widths',
    source: GEOMETRY,
  }),
  gluedArea: tell(
    between,
    'area',
    'face to be glued between layers of the skin, all panels and sides',
    (area) => area,
  ),
  needed: tell(best, 'area', 'plywood in the pieces', cutArea, {
    how: 'areas within their lines, laps and what is left over the transom included',
    source: GEOMETRY,
  }),
  waste: step(
    'share',
    '1 - needed / bought',
    'part of the plywood that is left over, kerfs included',
    GEOMETRY,
  ),
  offcut: tell(
    best,
    'area',
    'the largest piece left: across a whole sheet, or along all of it',
    ({ sections, plans }) => Math.max(0, ...sections.map(({ problem: one }, i) => offcutOf(plans[i]!, one))),
    { how: 'what lies beyond the pieces, at the sheet’s end or its edge', source: GEOMETRY },
  ),
  places: tell(
    problem,
    'count',
    'places where joints may stand, all panels of one side',
    ({ panels }) => sum(panels, ({ spots }) => spots.length),
    { how: 'by the rules for bottom and sides, clear of the hardest bend' },
  ),
  freed: tell(
    isFreed,
    'choice',
    'whether joints may stand clear of frames beside the places by rule',
    (is) => (is ? 'yes' : 'no'),
    {
      how: 'where the rule leaves no places so far apart',
    },
  ),
  offRule: tell(offRule, 'count', 'joints that stand clear of frames and not by the rule', (count) => count),
  keptSide: tell(
    problem,
    'length',
    'distance held between joints port and starboard',
    ({ rules }) => rules.offSide,
    { how: 'what is asked for, or as many quarters of it as places are found for', bound: 'least' },
  ),
  keptPanel: tell(
    problem,
    'length',
    'distance held between joints of bottom and side',
    ({ rules }) => rules.offPanel,
    { how: 'what is asked for, or as many quarters of it as places are found for', bound: 'least' },
  ),
  onSheet: tell(cut, 'count', 'sheet it is cut from', (found) => found?.on.number ?? 0, {
    how: 'sheets counted through all thicknesses',
  }),
  name: tell(cut, 'choice', 'what the piece is', (found) => found?.name ?? 'none', {
    how: 'panel, side, and place from aft',
  }),
  fromEnd: tell(
    cut,
    'length',
    'from the sheet’s left end to the piece',
    (found) => boxOf(found)?.from[0] ?? 0,
    {
      how: 'to the line, square from the end',
      source: GEOMETRY,
    },
  ),
  fromEdge: tell(cut, 'length', 'from its lower edge to the piece', (found) => boxOf(found)?.from[1] ?? 0, {
    how: 'to the line, square from the edge',
    source: GEOMETRY,
  }),
  long: tell(
    cut,
    'length',
    'along the sheet',
    (found) => {
      const box = boxOf(found);
      return box ? box.to[0] - box.from[0] : 0;
    },
    { how: 'the sides of the box round it', source: GEOMETRY },
  ),
  wide: tell(
    cut,
    'length',
    'across the sheet',
    (found) => {
      const box = boxOf(found);
      return box ? box.to[1] - box.from[1] : 0;
    },
    { how: 'the sides of the box round it', source: GEOMETRY },
  ),
  thick: tell(cut, 'length', 'thickness of its sheet', (found) => found?.on.section.thickness ?? 0, {
    how: 'of the panel or part',
  }),
  lies: tell(
    cut,
    'choice',
    'how it lies on the sheet',
    (found, { grain }: SheetsAsked) => (found ? lies(found, grain) : 'none'),
    {
      how: 'its length along the sheet, or across it',
    },
  ),
} as const;

/** All that the drawing and the search of the cell go by. */
export type SheetsValues = ValuesOf<typeof sheetsInputs, typeof sheetsSteps>;
