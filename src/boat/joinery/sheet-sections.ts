/** All that is cut from sheets, as problems of laying pieces: one for each thickness of plywood. */
import { distance2, type Vec2 } from '../../kernel';
import {
  type NestPiece,
  type NestPlan,
  type NestProblem,
  type Quarter,
  type SheetStock,
} from '../../kernel/nest';
import { areaKept, costForArea, costForTall } from '../../kernel/nest-bound';
import { tallStretch } from '../../kernel/tall-stretch';
import { outlineArea } from '../../kernel/outline';
import { agrees, type Joints, type PanelLayout, type LayoutRules } from './panel-layouts';
import { mirroredPiece, panelPieces } from './panel-pieces';
import type { CutPanel } from './panel-spots';

/** What else is cut from a thickness: a transom, a gusset, a seat. */
export interface OtherPiece {
  readonly name: string;
  readonly outline: readonly Vec2[];
  /** How it may lie, against the way it is drawn. */
  readonly turns: readonly Quarter[];
  /** Whether half of them belong to each side. */
  readonly pairs: boolean;
  readonly count: number;
}

/** Plates behind the butts that no frame backs; lengths in m. */
export interface Blocks {
  /** Across the joint. */
  readonly length: number;
  /** Left at both ends for water. */
  readonly gap: number;
}

export interface SheetGroup {
  readonly thickness: number;
  readonly stocks: readonly SheetStock[];
  /** By their places in the list of panels. */
  readonly panels: readonly number[];
  readonly others: readonly OtherPiece[];
}

/** Everything that bears on a plan of sheets, as plain data. */
export interface SheetsProblem {
  readonly panels: readonly CutPanel[];
  readonly groups: readonly SheetGroup[];
  readonly rules: LayoutRules;
  readonly gap: number;
  /** Whether pieces may be cut from the back of the sheet. */
  readonly mirror: boolean;
  /** Sides of the boat that are skinned; one of a boat whose other side is there. */
  readonly sides: 1 | 2;
  /** Whether the two of a pair are sawn together from two sheets, one on the other. */
  readonly together: boolean;
  /** Null where there are none. */
  readonly blocks: Blocks | null;
}

/** Sheets of one thickness; cut two at a time where pairs are sawn together. */
export interface SheetSection {
  readonly thickness: number;
  readonly times: 1 | 2;
  readonly problem: NestProblem;
}

/** What a search has found; `plans` has one a section of the layout. */
export interface SheetsAnswer {
  readonly layout: PanelLayout;
  readonly plans: readonly NestPlan[];
  /** No plan can cost less. */
  readonly least: number;
}

/** @returns in the order of the groups; those cut two at a time first */
export function sectionsOf(problem: SheetsProblem, layout: PanelLayout): readonly SheetSection[] {
  return problem.groups.flatMap((group) => groupSections(problem, group, layout));
}

export function groupSections(
  problem: SheetsProblem,
  group: SheetGroup,
  layout: PanelLayout,
): readonly SheetSection[] {
  const { rules, gap, together } = problem;
  const inPairs = [
    ...group.panels.flatMap((at) => piecesOf(problem, at, layout[at]!)),
    ...group.others.filter(({ pairs }) => pairs).flatMap((other) => copies(problem, other, together)),
  ];
  const alone = group.others.filter(({ pairs }) => !pairs).flatMap((other) => copies(problem, other, false));
  const section = (times: 1 | 2, pieces: readonly NestPiece[]): SheetSection[] =>
    pieces.length === 0
      ? []
      : [
          {
            thickness: group.thickness,
            times,
            problem: { pieces, stocks: group.stocks, gap, edge: rules.edge },
          },
        ];
  return together ? [...section(2, inPairs), ...section(1, alone)] : section(1, [...inPairs, ...alone]);
}

function copies(
  { mirror }: SheetsProblem,
  { name, outline, turns, count }: OtherPiece,
  half: boolean,
): NestPiece[] {
  const wanted = half ? Math.ceil(count / 2) : count;
  return Array.from({ length: wanted }, (_, i) => ({
    name: wanted === 1 ? name : `${name}, ${i + 1} of ${wanted}`,
    outline,
    turns,
    mirror,
  }));
}

/** The pieces of a panel, port and starboard, and the blocks behind their joints. */
function piecesOf(
  problem: SheetsProblem,
  at: number,
  { port, starboard }: PanelLayout[number],
): readonly NestPiece[] {
  const panel = problem.panels[at]!; // groups are of the problem's own panels
  const { together, mirror, rules, sides } = problem;
  const side = (joints: Joints, name: string, turn: (outline: readonly Vec2[]) => readonly Vec2[]) => {
    const pieces = panelPieces(panel, joints);
    return [
      ...pieces.map((outline, i): NestPiece => {
        const which = pieces.length === 1 ? '' : `, ${i + 1} of ${pieces.length}`;
        return { name: `${panel.label}${name}${which}`, outline: turn(outline), turns: rules.turns, mirror };
      }),
      ...blocksOf(problem, panel, joints, name),
    ];
  };
  if (together) return side(port, '', (outline) => outline);
  if (sides === 1) return side(port, ', port', (outline) => outline);
  return [...side(port, ', port', (outline) => outline), ...side(starboard, ', starboard', mirroredPiece)];
}

function blocksOf(
  { blocks, rules, mirror }: SheetsProblem,
  panel: CutPanel,
  joints: Joints,
  side: string,
): readonly NestPiece[] {
  if (!blocks) return [];
  return joints.flatMap((joint): NestPiece[] => {
    const { line, onFrame } = panel.spots[joint]!;
    const tall = distance2(line[0], line[1]) - 2 * blocks.gap;
    if (onFrame || tall <= 0) return [];
    const outline: Vec2[] = [
      [0, 0],
      [blocks.length, 0],
      [blocks.length, tall],
      [0, tall],
    ];
    return [{ name: `butt block, ${panel.label}${side}`, outline, turns: rules.turns, mirror }];
  });
}

/** Of the sides that are skinned. */
export const jointCount = ({ sides }: Pick<SheetsProblem, 'sides'>, layout: PanelLayout): number =>
  layout.reduce((sum, { port, starboard }) => sum + port.length + (sides === 2 ? starboard.length : 0), 0);

/**
 * No plan can cost less, wherever the joints stand: the area of all that is cut, in the cheapest sheets that have it; or
 * the lengths of panels that take up the sheet's width, laid end to end.
 *
 * @param fewest the fewest joints of each panel on one side
 */
export function sheetsCostAtLeast(problem: SheetsProblem, fewest: readonly number[]): number {
  const { panels, gap, rules } = problem;
  return problem.groups.reduce((sum, { panels: own, others, stocks }) => {
    const skin = own.reduce((area, at) => {
      const { outline, spots, lap } = panels[at]!;
      const shortest = Math.min(...spots.map(({ line }) => distance2(line[0], line[1])));
      // What all its pieces keep others off is no less than what the whole would; the laps are cut twice.
      const laps = fewest[at]! > 0 ? fewest[at]! * lap * shortest : 0;
      return area + Math.abs(outlineArea(outline)) + laps;
    }, 0);
    const each = ({ outline }: OtherPiece) => areaKept({ outline }, gap);
    const pairs = others.filter((other) => other.pairs);
    const alone = others.filter((other) => !other.pairs);
    const areaOf = (of: readonly OtherPiece[]) => of.reduce((area, one) => area + one.count * each(one), 0);
    const sold = { stocks, gap, edge: rules.edge };
    const ends = rules.turns.every((turn) => turn % 2 === 0)
      ? costForTall(
          (height) =>
            own.reduce((length, at) => length + tallOf(panels[at]!, fewest[at]! + rules.more, height), 0) *
            (problem.together ? 1 : problem.sides),
          sold,
        )
      : 0;
    const times = problem.together ? 2 : 1;
    const byArea = problem.together
      ? 2 * costForArea(skin + areaOf(pairs) / 2, sold) + costForArea(areaOf(alone), sold)
      : costForArea(problem.sides * skin + areaOf(others), sold);
    return sum + Math.max(byArea, times * ends);
  }, 0);
}

/**
 * What of a panel's length is higher than a height in one piece, wherever its joints stand, m: a joint that runs askew
 * parts an upright line for as long as it is itself.
 *
 * @param most joints that it has at the most, unless one is chosen by hand
 */
function tallOf({ outline, spots, held }: CutPanel, most: number, height: number): number {
  const askew = spots
    .map(({ line: [inner, outer] }) => Math.abs(outer[0] - inner[0]))
    .toSorted((a, b) => b - a);
  const parted = (held === null ? askew.slice(0, most) : askew).reduce((sum, one) => sum + one, 0);
  return Math.max(0, tallStretch(outline, height) - parted);
}

/** Whether a layout is one of the problem's: its joints in order, a piece each, and as far apart as is asked. */
export function isLayout(problem: SheetsProblem, layout: PanelLayout): boolean {
  const { panels, rules } = problem;
  const inOrder = (joints: Joints, { spots }: CutPanel) =>
    joints.every((joint, i) => spots[joint] !== undefined && joint > (joints[i - 1] ?? -1));
  return (
    layout.length === panels.length &&
    panels.every((panel, at) => {
      const { port, starboard } = layout[at]!;
      return (
        inOrder(port, panel) &&
        inOrder(starboard, panel) &&
        (panel.held === null || port.includes(panel.held)) &&
        (!rules.alike || port.join() === starboard.join()) &&
        agrees(panels, layout, at, rules)
      );
    })
  );
}
