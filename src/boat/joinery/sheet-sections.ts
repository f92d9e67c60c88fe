/** All that is cut from sheets, as problems of laying pieces: one for each thickness of plywood. */
import { distance2, type Vec2 } from '../../kernel';
import {
  type NestPiece,
  type NestPlan,
  type NestProblem,
  type Quarter,
  type SheetStock,
} from '../../kernel/nest';
import { agrees, isAlike, type Joints, type PanelLayout, type LayoutRules } from './panel-layouts';
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
  const { rules, gap, together, panels } = problem;
  const skin = (whole: boolean) =>
    group.panels
      .filter((at) => panels[at]!.whole === whole)
      .flatMap((at) => piecesOf(problem, at, layout[at]!));
  const inPairs = [
    ...skin(false),
    ...group.others.filter(({ pairs }) => pairs).flatMap((other) => copies(problem, other, together)),
  ];
  const alone = [
    ...skin(true),
    ...group.others.filter(({ pairs }) => !pairs).flatMap((other) => copies(problem, other, false)),
  ];
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
  const { together, mirror, sides } = problem;
  const side = (joints: Joints, name: string, turn: (outline: readonly Vec2[]) => readonly Vec2[]) => {
    const pieces = panelPieces(panel, joints);
    return [
      ...pieces.map((outline, i): NestPiece => {
        const which = pieces.length === 1 ? '' : `, ${i + 1} of ${pieces.length}`;
        return { name: `${panel.label}${name}${which}`, outline: turn(outline), turns: panel.turns, mirror };
      }),
      ...blocksOf(problem, panel, joints, name),
    ];
  };
  if (together || panel.whole) return side(port, '', (outline) => outline);
  if (sides === 1) return side(port, ', port', (outline) => outline);
  return [...side(port, ', port', (outline) => outline), ...side(starboard, ', starboard', mirroredPiece)];
}

function blocksOf(
  { blocks, mirror }: SheetsProblem,
  panel: CutPanel,
  joints: Joints,
  side: string,
): readonly NestPiece[] {
  // Where there are layers one carries the other across its joints.
  if (!blocks || panel.layers > 1) return [];
  return joints.flatMap((joint): NestPiece[] => {
    const { line, onFrame } = panel.spots[joint]!;
    // The keelson parts the block of a whole bottom.
    const halves = panel.whole ? 2 : 1;
    const tall = distance2(line[0], line[1]) / halves - 2 * blocks.gap;
    if (onFrame || tall <= 0) return [];
    const outline: Vec2[] = [
      [0, 0],
      [blocks.length, 0],
      [blocks.length, tall],
      [0, tall],
    ];
    const block = { name: `butt block, ${panel.label}${side}`, outline, turns: panel.turns, mirror };
    return Array.from({ length: halves }, () => block);
  });
}

/** How often a panel is cut: once a side, and a whole bottom once. */
export const timesCut = ({ sides, panels }: Pick<SheetsProblem, 'sides' | 'panels'>, at: number): 1 | 2 =>
  panels[at]!.whole ? 1 : sides;

/** Of the sides that are skinned. */
export const jointCount = (problem: Pick<SheetsProblem, 'sides' | 'panels'>, layout: PanelLayout): number =>
  layout.reduce(
    (sum, { port, starboard }, at) =>
      sum + port.length + (timesCut(problem, at) === 2 ? starboard.length : 0),
    0,
  );

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
        (!isAlike(panel, rules) || port.join() === starboard.join()) &&
        agrees(panels, layout, at, rules)
      );
    })
  );
}
