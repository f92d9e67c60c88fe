/** Layouts of joints tried by laying their pieces; what was laid once is not laid again. */
import type { PanelLayout } from '../boat/joinery/panel-layouts';
import {
  groupSections,
  jointCount,
  type SheetGroup,
  type SheetsProblem,
} from '../boat/joinery/sheet-sections';
import { faultsOfNest, type NestPlan, nestCost } from '../kernel/nest';
import { nestCostAtLeast } from '../kernel/nest-bound';
import { offcutOf } from '../kernel/nest-offcut';
import { shopNest } from '../kernel/nest-shop';
import { improve } from './nest/improve';
import { makePacker } from './nest/pack';
import { makeTemplates } from './nest/templates';

export interface SheetsTrial {
  readonly layout: PanelLayout;
  /** One a section. */
  readonly plans: readonly NestPlan[];
  readonly cost: number;
  readonly joints: number;
  /** The best that is left in one sheet, of all thicknesses, m2. */
  readonly offcut: number;
}

interface GroupTrial {
  readonly plans: readonly NestPlan[];
  readonly cost: number;
  readonly offcut: number;
  readonly effort: number;
}

export interface SheetsTrials {
  /** A layout whose plans are at hand. */
  readonly known: (layout: PanelLayout, plans: readonly NestPlan[]) => SheetsTrial;
  /** Lays the pieces with so much effort, or more where that was spent before. */
  readonly look: (layout: PanelLayout, effort: number) => SheetsTrial;
  readonly isBetter: (one: SheetsTrial, other: SheetsTrial) => boolean;
  /** Whether a layout can't be better than the best, whatever is done. */
  readonly isHopeless: (layout: PanelLayout, best: SheetsTrial, least: number) => boolean;
}

/** As much money, or as large. */
const SAME = 1e-9;

export function makeTrials(problem: SheetsProblem): SheetsTrials {
  const templates = makeTemplates();
  const tried = new Map<string, GroupTrial>();
  const keyOf = ({ panels }: SheetGroup, at: number, layout: PanelLayout) =>
    `${at}|${panels.map((panel) => `${layout[panel]!.port.join()}/${layout[panel]!.starboard.join()}`).join('|')}`;

  const lookAt = (group: SheetGroup, at: number, layout: PanelLayout, effort: number): GroupTrial => {
    const key = keyOf(group, at, layout);
    const before = tried.get(key);
    if (before && before.effort >= effort) return before;
    const sections = groupSections(problem, group, layout);
    const found = sections.map((section, i) => {
      const packer = makePacker(section.problem, templates);
      const packed = improve(packer, effort);
      const plan = packed && packer.plan(packed);
      const known = before?.plans[i] ?? shopNest(section.problem);
      if (!plan || faultsOfNest(plan, section.problem).length > 0) return known;
      const cheaper = nestCost(known, section.problem) - nestCost(plan, section.problem);
      const more = offcutOf(plan, section.problem) - offcutOf(known, section.problem);
      return cheaper > SAME || (cheaper > -SAME && more >= 0) ? plan : known;
    });
    const trial: GroupTrial = {
      plans: found,
      cost: sections.reduce(
        (sum, section, i) => sum + section.times * nestCost(found[i]!, section.problem),
        0,
      ),
      offcut: Math.max(0, ...sections.map((section, i) => offcutOf(found[i]!, section.problem))),
      effort,
    };
    tried.set(key, trial);
    return trial;
  };

  const whole = (layout: PanelLayout, groups: readonly Omit<GroupTrial, 'effort'>[]): SheetsTrial => ({
    layout,
    plans: groups.flatMap(({ plans }) => plans),
    cost: groups.reduce((sum, { cost }) => sum + cost, 0),
    joints: jointCount(problem, layout),
    offcut: Math.max(0, ...groups.map(({ offcut }) => offcut)),
  });

  return {
    known: (layout, plans) => {
      let used = 0;
      return whole(
        layout,
        problem.groups.map((group) => {
          const sections = groupSections(problem, group, layout);
          const own = plans.slice(used, (used += sections.length));
          return {
            plans: own,
            cost: sections.reduce(
              (sum, section, i) => sum + section.times * nestCost(own[i]!, section.problem),
              0,
            ),
            offcut: Math.max(0, ...sections.map((section, i) => offcutOf(own[i]!, section.problem))),
          };
        }),
      );
    },
    look: (layout, effort) =>
      whole(
        layout,
        problem.groups.map((group, at) => lookAt(group, at, layout, effort)),
      ),
    isBetter,
    isHopeless: (layout, best, least) => {
      const joints = jointCount(problem, layout);
      if (best.cost <= least + SAME) return joints > best.joints;
      const atLeast = problem.groups.reduce(
        (sum, group) =>
          sum +
          groupSections(problem, group, layout).reduce(
            (cost, section) => cost + section.times * nestCostAtLeast(section.problem),
            0,
          ),
        0,
      );
      return atLeast > best.cost + SAME || (atLeast > best.cost - SAME && joints > best.joints);
    },
  };
}

function isBetter(one: SheetsTrial, other: SheetsTrial): boolean {
  if (Math.abs(one.cost - other.cost) > SAME) return one.cost < other.cost;
  if (one.joints !== other.joints) return one.joints < other.joints;
  return one.offcut > other.offcut + SAME;
}
