/** Where the joints of the panels stand together: the rules that hold between them, and a layout by the shop's rule. */
import type { SheetStock } from '../../kernel/nest';
import { outlineBox } from '../../kernel/lying-outlines';
import type { Vec2 } from '../../kernel/vec';
import { pieceBetween } from './panel-pieces';
import type { CutPanel } from './panel-spots';

/** What the pieces and the joints of all panels are held to; lengths in m. */
export interface LayoutRules {
  readonly stocks: readonly SheetStock[];
  /** Kept from the edges of a sheet. */
  readonly edge: number;
  /** Shortest piece worth a joint. */
  readonly least: number;
  /** Between a joint and that of the neighbouring panel, and that of the other side, along the boat. */
  readonly offPanel: number;
  readonly offSide: number;
  /** Joints that a panel may have beyond the fewest. */
  readonly more: number;
  /** Whether both sides are jointed alike, as pairs that are sawn together are. */
  readonly alike: boolean;
}

/** Joints of one panel on one side: places in its spots, from aft forward. */
export type Joints = readonly number[];

/** One entry a panel. Where both sides are jointed alike the two are the same. */
export interface PanelJoints {
  readonly port: Joints;
  readonly starboard: Joints;
}
export type PanelLayout = readonly PanelJoints[];

/** A place held but for rounding is held, m. */
const ROUNDING = 1e-6;

/** Of each number of joints no more ways than these are looked at, those that reach farthest forward. */
const MOST = 120;

/**
 * All ways to joint a panel so that each piece lies on a sheet, the fewest joints first, of these the ones with most
 * joints by the rule, and then the one whose joints stand farthest forward, as a sheet laid on from the stern reaches.
 *
 * @throws a sentence where there is none
 */
function jointings(panel: CutPanel, rules: LayoutRules, held: number | null): readonly Joints[] {
  const { spots, label } = panel;
  const [start, end] = [-1, spots.length];
  const known = new Map<number, boolean>();
  /** Whether the piece from one joint to another lies on a sheet; the panel's ends count as joints. */
  const isPiece = (aft: number, fore: number): boolean => {
    if (held !== null && aft < held && fore > held) return false;
    const key = (aft + 1) * (end + 2) + fore;
    const told = known.get(key);
    if (told !== undefined) return told;
    const bounds = [aft, fore].map((at) => (at > start && at < end ? at : undefined));
    const whole = aft === start && fore === end;
    // The piece reaches from line to line at least, which is soon told.
    const lines = bounds.flatMap((at) => (at === undefined ? [] : spots[at]!.line));
    const piece =
      lines.length === 4 && !fitsSome(lines, panel, rules) ? [] : pieceBetween(panel, bounds[0], bounds[1]);
    const is = (whole || lengthOf(piece) >= rules.least - ROUNDING) && fitsSome(piece, panel, rules);
    known.set(key, is);
    return is;
  };
  // From the bow aft: the fewest joints with which the rest of the panel can be cut.
  const left = Array.from({ length: end + 2 }, () => Infinity);
  left[end + 1] = -1;
  for (let aft = end - 1; aft >= start; aft -= 1)
    for (let fore = aft + 1; fore <= end; fore += 1)
      if (left[fore + 1]! + 1 < left[aft + 1]! && isPiece(aft, fore)) left[aft + 1] = left[fore + 1]! + 1;
  const fewest = left[0]!;
  if (!Number.isFinite(fewest))
    throw new Error(
      `the ${label} can't be got from these sheets with joints in these places: allow other places${panel.whole ? ', halves' : ''} or another grain`,
    );
  return Array.from({ length: rules.more + 1 }, (_, i) => fewest + i).flatMap((count) => {
    const found: Joints[] = [];
    const extend = (joints: Joints) => {
      const aft = joints.at(-1) ?? start;
      const more = count - joints.length;
      if (more === 0) {
        if (isPiece(aft, end)) found.push(joints);
        return;
      }
      for (let fore = end - 1; fore > aft && found.length < MOST; fore -= 1)
        if (left[fore + 1]! < more && isPiece(aft, fore)) extend([...joints, fore]);
    };
    extend([]);
    const offRule = (joints: Joints) => joints.filter((joint) => !spots[joint]!.byRule).length;
    return found.toSorted((a, b) => offRule(a) - offRule(b));
  });
}

function lengthOf(piece: readonly Vec2[]): number {
  if (piece.length < 3) return 0;
  const { from, to } = outlineBox(piece);
  return to[0] - from[0];
}

/** All ways to joint a panel on each side; they are one list where neither side is held to more than the other. */
export interface SideWays {
  readonly port: readonly Joints[];
  readonly starboard: readonly Joints[];
}

/** Whether a panel is jointed alike on both sides: as all are, or since it goes from side to side. */
export const isAlike = ({ whole }: Pick<CutPanel, 'whole'>, { alike }: Pick<LayoutRules, 'alike'>): boolean =>
  alike || whole;

/**
 * A joint chosen by hand stands on the port side; to starboard too where both are jointed alike.
 *
 * @throws as `jointings`
 */
export function waysToJoint(panel: CutPanel, rules: LayoutRules): SideWays {
  const port = jointings(panel, rules, panel.held);
  return {
    port,
    starboard: isAlike(panel, rules) || panel.held === null ? port : jointings(panel, rules, null),
  };
}

function fitsSome(outline: readonly Vec2[], { turns }: CutPanel, { stocks, edge }: LayoutRules): boolean {
  if (outline.length < 3) return false;
  const { from, to } = outlineBox(outline);
  const [long, wide] = [to[0] - from[0] + 2 * edge, to[1] - from[1] + 2 * edge];
  return stocks.some(({ length, width }) =>
    turns.some((turn) =>
      turn % 2 === 0
        ? long <= length + ROUNDING && wide <= width + ROUNDING
        : wide <= length + ROUNDING && long <= width + ROUNDING,
    ),
  );
}

/** Whether the joints of two panels, or of two sides of one, stand far enough from each other. */
export function farApart(
  [one, a]: readonly [CutPanel, Joints],
  [other, b]: readonly [CutPanel, Joints],
  apart: number,
): boolean {
  if (apart <= 0) return true;
  return a.every((i) => b.every((k) => Math.abs(one.spots[i]!.x - other.spots[k]!.x) >= apart - ROUNDING));
}

/** Whether the joints of a panel may stand as far from each other, and from those of layers and panels before it that it meets. */
export function agrees(
  panels: readonly CutPanel[],
  layout: PanelLayout,
  at: number,
  rules: LayoutRules,
): boolean {
  const { offPanel, offSide } = rules;
  const panel = panels[at]!;
  const { port, starboard } = layout[at]!;
  if (!isAlike(panel, rules) && !farApart([panel, port], [panel, starboard], offSide)) return false;
  return layout.slice(0, at).every((within, i) => {
    const inner = panels[i]!; // one a panel
    return (
      !meets(inner, panel) ||
      (farApart([inner, within.port], [panel, port], offPanel) &&
        farApart([inner, within.starboard], [panel, starboard], offPanel))
    );
  });
}

/** Layers of one panel lie on each other, and panels side by side share an edge. */
const meets = (one: CutPanel, other: CutPanel) => Math.abs(one.strake - other.strake) <= 1;

/** Layouts tried before it is said that there is none. */
const TRIES = 40_000;

/** Of the distances asked for, as much as is tried, in this order. */
const SHARES = [1, 0.75, 0.5, 0.25, 0] as const;

export interface ShopLayouts {
  /** One at least. */
  readonly layouts: readonly PanelLayout[];
  /** The rules, with the distances between joints as far as they can be held. */
  readonly rules: LayoutRules;
}

/**
 * By the rule of the shop: each panel in turn from the keel outward, port before starboard, takes the first of its
 * jointings that agrees with those before; then the next such layouts, up to a number. Where none agree the distances
 * give way by quarters, that between the sides first: a boat has her joints somewhere.
 */
export function shopLayouts(
  panels: readonly CutPanel[],
  ways: readonly SideWays[],
  asked: LayoutRules,
  most: number,
): ShopLayouts {
  for (const panelShare of SHARES) {
    for (const sideShare of SHARES) {
      const rules = { ...asked, offPanel: panelShare * asked.offPanel, offSide: sideShare * asked.offSide };
      const layouts = firstThatAgree(panels, ways, rules, most);
      if (layouts.length > 0) return { layouts, rules };
    }
  }
  throw new Error('the joints find no places'); // without distances any do
}

function firstThatAgree(
  panels: readonly CutPanel[],
  ways: readonly SideWays[],
  rules: LayoutRules,
  most: number,
): readonly PanelLayout[] {
  let tries = TRIES;
  const found: PanelLayout[] = [];
  const extend = (layout: PanelLayout): void => {
    const at = layout.length;
    if (at === panels.length) {
      found.push(layout);
      return;
    }
    const panel = panels[at]!;
    const isClear = (joints: Joints) =>
      layout.every(
        (within, i) =>
          !meets(panels[i]!, panel) || farApart([panels[i]!, within.port], [panel, joints], rules.offPanel),
      );
    for (const port of ways[at]!.port) {
      if (!isClear(port)) continue;
      for (const starboard of isAlike(panel, rules) ? [port] : ways[at]!.starboard) {
        tries -= 1;
        if (tries < 0 || found.length >= most) return;
        const next = [...layout, { port, starboard }];
        if (agrees(panels, next, at, rules)) extend(next);
      }
    }
  };
  extend([]);
  return found;
}

/** The fewest joints that each panel can have on one side. */
export const fewestJoints = (ways: readonly SideWays[]): readonly number[] =>
  ways.map(({ port, starboard }) => Math.min(port[0]!.length, starboard[0]!.length)); // there is a way
