/** Layouts of joints worth a look: some of every number of joints, and changes of one that is good. */
import {
  agrees,
  isAlike,
  type Joints,
  type PanelLayout,
  type PanelJoints,
  type SideWays,
} from '../boat/joinery/panel-layouts';
import type { SheetsProblem } from '../boat/joinery/sheet-sections';
import { generator } from '../kernel';

export interface Layouts {
  /** The fewest joints first; up to so many of each family, a number of joints for each panel. */
  readonly families: (of: number) => readonly PanelLayout[];
  /** One panel jointed otherwise, its neighbours as they are; null where that does not agree. */
  readonly changed: (layout: PanelLayout) => PanelLayout | null;
}

const SEED = 41;
/** Families beyond this many are left to the changes. */
const MOST_FAMILIES = 27;
/** Draws before a family is given up as having no layout that agrees. */
const DRAWS = 60;

export function makeLayouts(problem: SheetsProblem, ways: readonly SideWays[]): Layouts {
  const { panels, rules } = problem;
  const random = generator(SEED);
  const pick = <T>(of: readonly T[]): T => of[Math.floor(random() * of.length)]!; // of a list that has some
  const draw = ({ port: of, starboard }: SideWays, at: number): PanelJoints => {
    const port = pick(of);
    return { port, starboard: isAlike(panels[at]!, rules) ? port : pick(starboard) }; // ways of each panel
  };
  const agreesAt = (layout: PanelLayout, at: number) =>
    layout.every((_, other) => other < at || agrees(panels, layout, other, rules));

  const drawn = (counts: readonly number[]): PanelLayout | null => {
    const withSo = (some: readonly Joints[], joints: number) =>
      some.filter(({ length }) => length === joints);
    const of = ways.map(({ port, starboard }, at): SideWays => ({
      port: withSo(port, counts[at]!),
      starboard: withSo(starboard, counts[at]!),
    }));
    if (of.some(({ port, starboard }) => port.length === 0 || starboard.length === 0)) return null;
    for (let tries = 0; tries < DRAWS; tries += 1) {
      const layout = of.map(draw);
      if (layout.every((_, at) => agrees(panels, layout, at, rules))) return layout;
    }
    return null;
  };

  return {
    families: (count) => {
      const counts = ways.map(({ port }) => [...new Set(port.map(({ length }) => length))]);
      const families = counts
        .reduce<readonly (readonly number[])[]>(
          (all, own) => all.flatMap((family) => own.map((joints) => [...family, joints])),
          [[]],
        )
        .toSorted((a, b) => sum(a) - sum(b))
        .slice(0, MOST_FAMILIES);
      return families.flatMap((family) =>
        Array.from({ length: count }, () => drawn(family)).filter((layout) => layout !== null),
      );
    },
    changed: (layout) => {
      const at = Math.floor(random() * panels.length);
      const now = layout[at]!;
      const { port, starboard } = ways[at]!;
      const other = draw({ port, starboard }, at);
      const next: PanelJoints = isAlike(panels[at]!, rules)
        ? other
        : random() < 0.5
          ? { ...now, port: other.port }
          : { ...now, starboard: other.starboard };
      const changed = layout.map((one, i) => (i === at ? next : one));
      return agreesAt(changed, at) ? changed : null;
    },
  };
}

const sum = (of: readonly number[]) => of.reduce((total, one) => total + one, 0);
