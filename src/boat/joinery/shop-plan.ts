/** The plan of the sheets by the rule of the shop: a few layouts of the joints laid by hand, and the best of them taken. */
import { type NestPlan, nestCost } from '../../kernel/nest';
import { shopNest } from '../../kernel/nest-shop';
import type { PanelLayout } from './panel-layouts';
import { groupSections, jointCount, type SheetsProblem } from './sheet-sections';

export interface ShopPlan {
  readonly layout: PanelLayout;
  /** One a section. */
  readonly plans: readonly NestPlan[];
}

/** Layouts that are laid: each takes some milliseconds. */
export const SHOP_TRIES = 10;
/** As much money. */
const SAME = 1e-9;

/**
 * Of these layouts the cheapest in sheets, of several the one with fewest joints, of these the first.
 *
 * @param layouts one at least, all of the problem
 */
export function shopPlan(problem: SheetsProblem, layouts: readonly PanelLayout[]): ShopPlan {
  const laid = new Map<string, readonly NestPlan[]>();
  let best: (ShopPlan & { cost: number; joints: number }) | null = null;
  for (const layout of layouts) {
    let cost = 0;
    const plans = problem.groups.flatMap((group, at) => {
      const sections = groupSections(problem, group, layout);
      const key = JSON.stringify([at, group.panels.map((panel) => layout[panel])]);
      const own = laid.get(key) ?? sections.map((section) => shopNest(section.problem));
      laid.set(key, own);
      own.forEach((plan, i) => {
        cost += sections[i]!.times * nestCost(plan, sections[i]!.problem); // one a section
      });
      return own;
    });
    const joints = jointCount(problem, layout);
    if (!best || cost < best.cost - SAME || (cost < best.cost + SAME && joints < best.joints))
      best = { layout, plans, cost, joints };
  }
  return { layout: best!.layout, plans: best!.plans }; // there is a layout
}
