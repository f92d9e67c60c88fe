/** The best plan known for what is cut from sheets, sheet by sheet and piece by piece. */
import {
  fewestJoints,
  type LayoutRules,
  type PanelLayout,
  shopLayouts,
  waysToJoint,
} from '../../boat/joinery/panel-layouts';
import {
  isLayout,
  jointCount,
  type SheetSection,
  sectionsOf,
  type SheetsAnswer,
  type SheetsProblem,
  timesCut,
} from '../../boat/joinery/sheet-sections';
import { SHOP_TRIES, shopPlan } from '../../boat/joinery/shop-plan';
import { sheetsCostAtLeast } from '../../boat/joinery/sheets-at-least';
import { faultsOfNest, type NestPlan, nestCost, type SheetStock } from '../../kernel/nest';
import { nestCostAtLeast } from '../../kernel/nest-bound';
import type { ListRow } from '../form/define';
import { fact } from '../form/fact';
import { type SheetsAsked, wanted } from './sheets-problem';
import { GEOMETRY } from '../../trade/sources';

interface Planned {
  readonly problem: SheetsProblem;
  /** Worth a look by the rule of the shop. */
  readonly layouts: readonly PanelLayout[];
  readonly fewest: readonly number[];
  /** Whether joints had to be let stand clear of frames beside the places by rule. */
  readonly freed: boolean;
}

/** The distances first, for a joint opposite another weakens the boat more than one that is not midway. */
const laidOut = fact(
  'a sheet laid on from the stern, joints as far forward as it reaches and as far apart as can be held; where the rule leaves no places so far apart, clear of frames too',
  'common practice, no source',
  (_: SheetsAsked, { ask }): Planned => {
    let best: Planned | null = null;
    for (const { freed, problem: asFreed } of wanted) {
      const of = ask(asFreed);
      const ways = of.panels.map((panel) => waysToJoint(panel, of.rules));
      const { layouts, rules } = shopLayouts(of.panels, ways, of.rules, SHOP_TRIES);
      const here = { problem: { ...of, rules }, layouts, fewest: fewestJoints(ways), freed };
      if (!best || holdsMore(rules, best.problem.rules)) best = here;
      if (!holdsMore(of.rules, rules)) break;
    }
    return best!; // the first is tried
  },
);

const holdsMore = (one: LayoutRules, other: LayoutRules): boolean =>
  one.offPanel > other.offPanel || (one.offPanel === other.offPanel && one.offSide > other.offSide);

export const isFreed = fact(
  laidOut.how,
  'common practice, no source',
  (_: SheetsAsked, { ask }) => ask(laidOut).freed,
);

/** Everything that bears on a plan. */
export const problem = fact(
  wanted[0]!.problem.how,
  GEOMETRY,
  (_: SheetsAsked, { ask }) => ask(laidOut).problem,
);

/** The problem as the searcher takes it. */
export const asked = fact(problem.how, GEOMETRY, (_: SheetsAsked, { ask }) => JSON.stringify(ask(problem)));

/** A plan whose pieces are all there. */
export interface PlannedSheets {
  readonly layout: SheetsAnswer['layout'];
  readonly sections: readonly SheetSection[];
  /** One a section. */
  readonly plans: readonly NestPlan[];
  readonly cost: number;
  readonly least: number;
  readonly joints: number;
}

const planned = (of: SheetsProblem, { layout, plans, least }: SheetsAnswer): PlannedSheets => {
  const sections = sectionsOf(of, layout);
  return {
    layout,
    sections,
    plans,
    cost: sections.reduce((sum, { times, problem: one }, i) => sum + times * nestCost(plans[i]!, one), 0),
    least,
    joints: jointCount(of, layout),
  };
};

export const shop = fact(
  `a sheet laid on from the stern, joints as far forward as it reaches; long pieces first, each by its box in the first corner with room; of ${SHOP_TRIES} layouts of the joints the cheapest`,
  'common practice, no source',
  (_: SheetsAsked, { ask }): PlannedSheets => {
    const { problem: of, layouts, fewest } = ask(laidOut);
    const { layout, plans } = shopPlan(of, layouts);
    const sections = sectionsOf(of, layout);
    const least =
      of.panels.length > 0
        ? sheetsCostAtLeast(of, fewest)
        : sections.reduce((sum, { times, problem: one }) => sum + times * nestCostAtLeast(one), 0);
    return planned(of, { layout, plans, least });
  },
);

export const best = fact(
  'the better of two plans: the one by the rule of the shop, and the best that the search has found',
  'E. K. Burke, R. S. R. Hellier, G. Kendall and G. Whitwell, Complete and robust no-fit polygon generation for the irregular stock cutting problem, 2007',
  (_: SheetsAsked, { ask, found }): PlannedSheets => {
    const of = ask(problem);
    const byRule = ask(shop);
    const answer = found(ask(asked)) as SheetsAnswer | null; // as its searcher gives it
    if (!answer || !isLayout(of, answer.layout)) return byRule;
    const sections = sectionsOf(of, answer.layout);
    const holds =
      sections.length === answer.plans.length &&
      sections.every(({ problem: one }, i) => faultsOfNest(answer.plans[i]!, one).length === 0);
    if (!holds) return byRule;
    const searched = planned(of, { ...answer, least: Math.max(answer.least, byRule.least) });
    return isBehind(searched, byRule) ? { ...byRule, least: searched.least } : searched;
  },
);

const SAME = 1e-9;
const isBehind = (one: PlannedSheets, other: PlannedSheets) =>
  one.cost > other.cost + SAME || (one.cost > other.cost - SAME && one.joints > other.joints);

/** Joints that stand merely clear of frames, for the rule has no place for them so far from the others. */
export const offRule = fact('counted in the plan', GEOMETRY, (_: SheetsAsked, { ask }): number => {
  const of = ask(problem);
  return ask(best).layout.reduce((sum, { port, starboard }, at) => {
    const own = timesCut(of, at) === 2 ? [...port, ...starboard] : port;
    return sum + own.filter((joint) => !of.panels[at]!.spots[joint]!.byRule).length; // a layout is of its own spots
  }, 0);
});

/** Whether no plan costs less in sheets. */
export const isProved = ({ cost, least }: PlannedSheets): boolean => cost <= least * (1 + SAME) + SAME;

/** A sheet of the plan. */
export interface PlannedSheet {
  /** 1 first, through all thicknesses; of two that are sawn at once the first. */
  readonly number: number;
  readonly times: 1 | 2;
  readonly section: SheetSection;
  readonly stock: SheetStock;
  readonly sheet: NestPlan['sheets'][number];
  /** The number of its first piece in the cut list. */
  readonly first: number;
}

export const sheetsOf = fact(
  'sheet by sheet, the thickest plywood first',
  GEOMETRY,
  (_: SheetsAsked, { ask }): readonly PlannedSheet[] => {
    const { sections, plans } = ask(best);
    let [number, first] = [1, 1];
    return sections.flatMap((section, i) =>
      plans[i]!.sheets.map((sheet): PlannedSheet => {
        const one = {
          number,
          times: section.times,
          section,
          sheet,
          first,
          stock: section.problem.stocks[sheet.stock]!,
        };
        number += section.times;
        first += sheet.laid.length;
        return one;
      }),
    );
  },
);

/** A piece of the cut list: what it is, and where its box lies on its sheet, m. */
export interface CutPiece {
  readonly number: number;
  readonly on: PlannedSheet;
  readonly name: string;
  readonly laid: NestPlan['sheets'][number]['laid'][number];
}

export const cutList = fact(
  'sheet by sheet, from the end that is cut first',
  GEOMETRY,
  (_: SheetsAsked, { ask }): readonly CutPiece[] =>
    ask(sheetsOf).flatMap((on) =>
      inOrder(on).map((laid, i): CutPiece => ({
        number: on.first + i,
        on,
        name: on.section.problem.pieces[laid.piece]!.name,
        laid,
      })),
    ),
);

/** From the sheet's left end on, and upward. */
export const inOrder = ({ sheet }: PlannedSheet): PlannedSheet['sheet']['laid'] =>
  sheet.laid.toSorted((a, b) => a.at[0] - b.at[0] || a.at[1] - b.at[1]);

export const cutRows = fact(cutList.how, GEOMETRY, (_: SheetsAsked, { ask }) =>
  ask(cutList).map(({ number }): ListRow => ({ id: `cut${number}`, label: `${number}`, value: number })),
);
