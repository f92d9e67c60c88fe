/**
 * Searches for the fewest sheets that all panels and parts can be cut from, then the fewest joints, then the most left
 * in one: the places of the joints by turns with how the pieces lie. It counts steps and never the time, so that the
 * same problem is answered the same way again.
 */
import { fewestJoints, shopLayouts, waysToJoint } from '../boat/joinery/panel-layouts';
import {
  type SheetSection,
  sectionsOf,
  type SheetsAnswer,
  type SheetsProblem,
  timesCut,
} from '../boat/joinery/sheet-sections';
import { SHOP_TRIES, shopPlan } from '../boat/joinery/shop-plan';
import { sheetsCostAtLeast } from '../boat/joinery/sheets-at-least';
import { type NestPlan, nestCost } from '../kernel/nest';
import { isLeast, searchNest } from './nest/search-nest';
import type { Searcher } from './searcher';
import { makeLayouts } from './sheets-layouts';
import { makeTrials, type SheetsTrial } from './sheets-trials';

/** Steps for the first look at a layout, for a good one, and for the best at the end. */
const EFFORT = { look: 60, good: 400, best: 1500 } as const;
/** Layouts looked at of each number of joints, and changes tried of the best. */
const LOOKS = 2;
const CHANGES = 60;

/** @param asked a `SheetsProblem` as JSON */
export const searchSheets: Searcher = async (asked, tell) => {
  const problem = JSON.parse(asked) as SheetsProblem;
  const ways = problem.panels.map((panel) => waysToJoint(panel, problem.rules));
  const fewest = fewestJoints(ways);
  const least = problem.panels.length === 0 ? 0 : sheetsCostAtLeast(problem, fewest);
  const { layouts: byRule } = shopLayouts(problem.panels, ways, problem.rules, SHOP_TRIES);
  const { layout: first, plans: shop } = shopPlan(problem, byRule);
  tell({ layout: first, plans: shop, least } satisfies SheetsAnswer);
  if (problem.panels.length === 0) return searchGiven(sectionsOf(problem, first), shop, tell);

  const trials = makeTrials(problem);
  let best: SheetsTrial = trials.known(first, shop);
  const fewestInAll = fewest.reduce((sum, count, at) => sum + timesCut(problem, at) * count, 0);
  const isCheapest = () => best.cost <= least * (1 + SAME) + SAME;
  /** Nothing is left to find but how the same pieces lie best. */
  const isProved = () => isCheapest() && best.joints <= fewestInAll;
  const take = (trial: SheetsTrial): boolean => {
    if (!trials.isBetter(trial, best)) return false;
    best = trial;
    tell({ layout: trial.layout, plans: trial.plans, least } satisfies SheetsAnswer);
    return true;
  };
  take(trials.look(first, EFFORT.good));
  const layouts = makeLayouts(problem, ways);
  for (const layout of layouts.families(LOOKS)) {
    if (isProved()) break;
    if (trials.isHopeless(layout, best, least)) continue;
    if (take(trials.look(layout, EFFORT.look))) take(trials.look(layout, EFFORT.good));
  }
  for (let change = 0; change < CHANGES && !isProved(); change += 1) {
    const layout = layouts.changed(best.layout);
    if (!layout || trials.isHopeless(layout, best, least)) continue;
    if (take(trials.look(layout, EFFORT.look))) take(trials.look(layout, EFFORT.good));
  }
  take(trials.look(best.layout, EFFORT.best));
  if (!isCheapest()) return 'The best found; not proved: fewer sheets may do.';
  return isProved()
    ? 'Proved: no plan costs less in sheets, and none has fewer joints.'
    : 'Proved: no plan costs less in sheets; one with fewer joints may exist.';
};

const SAME = 1e-9;

/** Pieces that have no joints: each thickness by itself. */
function searchGiven(
  sections: readonly SheetSection[],
  shop: readonly NestPlan[],
  tell: (answer: unknown) => void,
): string {
  const plans = [...shop];
  const leasts = sections.map(() => 0);
  let open = 0;
  const tellAll = () =>
    tell({
      layout: [],
      plans: [...plans],
      least: leasts.reduce((sum, least, at) => sum + sections[at]!.times * least, 0),
    } satisfies SheetsAnswer);
  for (const [at, { problem }] of sections.entries()) {
    const found = searchNest(problem, EFFORT.best * 2);
    if (found.cost <= nestCost(plans[at]!, problem) + SAME) plans[at] = found.plan;
    leasts[at] = found.least;
    if (!isLeast({ cost: nestCost(plans[at]!, problem), least: found.least })) open += 1;
    tellAll();
  }
  return open === 0
    ? 'Proved: no plan costs less in sheets.'
    : 'The best found; not proved: fewer sheets may do.';
}
