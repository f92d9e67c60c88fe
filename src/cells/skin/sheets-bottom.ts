/** Whether the bottom can be cut in one width from chine to chine, and whether a sheet is wide enough for it. */
import { isFlatAcross, wholeBreadth } from '../../boat/joinery/whole-bottom';
import { fact, tell } from '../form/fact';
import { GEOMETRY } from '../../trade/sources';
import { panelsCut } from './sheets-grain';
import type { SheetsAsked } from './sheets-problem';

/** The flat bottom among the panels that are cut for both sides; null where there is none. */
const flatBottom = fact(
  'level from side to side, and straight along the keel when it is laid flat',
  GEOMETRY,
  (v: SheetsAsked, at) =>
    v.skinSides < 2 ? null : (panelsCut(v, at.hull.panels).find(isFlatAcross) ?? null),
);

const usual = fact(
  'its breadth and what is kept off both edges against the widest sheet sold',
  'common practice, no source',
  ({ width, otherLength, otherWidth, edge, outside }: SheetsAsked, { ask }) => {
    const panel = ask(flatBottom);
    const widest = Math.max(width, otherLength > 0 ? otherWidth : 0);
    return panel && wholeBreadth(panel) + 2 * (edge + outside) <= widest ? 'whole' : 'halves';
  },
);

export const bottomSteps = {
  flatBottom: tell(flatBottom, 'count', '1 where the bottom is flat across', (panel) => (panel ? 1 : 0)),
  bottomWide: tell(
    flatBottom,
    'length',
    'breadth of the flat bottom, chine to chine; 0 where it is not',
    (panel) => (panel ? wholeBreadth(panel) : 0),
  ),
  usualBottom: tell(
    usual,
    'choice',
    'in one width where a sheet is wide enough for it, else in halves',
    (way) => way,
  ),
};
