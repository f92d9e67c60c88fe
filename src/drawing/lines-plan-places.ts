// What a full lines plan is made of, and where its three views stand on the sheet: profile, under it the half-breadth
// plan, at the foot the body plan.

import { extents } from './flatten';
import { type SpaceLine, view, type View } from './project';
import type { Box, Point } from './shapes';

export type Spatial = SpaceLine['points'][number];

/** A station of the plan: where it crosses the keel, and the section there, m. */
export interface PlanStation {
  /** Short, to stand on the drawing. */
  readonly name: string;
  readonly x: number;
  readonly section: SpaceLine;
}

/** A waterline at its height above the base line, or a buttock at its distance from the centreline, m. */
export interface PlanCut {
  readonly name: string;
  readonly at: number;
  readonly lines: readonly (readonly Spatial[])[];
  /** The one that the boat is drawn to float at. */
  readonly design?: boolean;
}

/** An edge of the hull with the name it has on the plan. */
export interface PlanEdge extends SpaceLine {
  readonly label: string;
}

export interface FullLines {
  readonly title: string;
  readonly says: string;
  /** What stands at the head of the sheet. */
  readonly heading: string;
  /** Keel outward. */
  readonly edges: readonly PlanEdge[];
  readonly stations: readonly PlanStation[];
  readonly waterlines: readonly PlanCut[];
  readonly buttocks: readonly PlanCut[];
  /** Where the body plan changes sides, m. */
  readonly amidships: number;
  readonly notes: readonly string[];
  /** Height of a row of text on the sheet, mm; by the hull's length unless given. */
  readonly row?: number;
}

/** One view on the sheet: how much larger than the rest, where its origin lies, and what it takes up from there, mm. */
export interface ViewPlace {
  readonly times: number;
  readonly at: Point;
  readonly box: Box;
}
export type ViewPlaces = Readonly<Record<View, ViewPlace>>;

/** Height of a row of text with its air, by the hull's length: what 14 px are on a sheet as narrow as a phone. */
const ROW = 0.077;
/** Between the views, and over the first, in rows of text. */
export const GAPS = { head: 2.3, plan: 3.7, body: 4.2 };

export const rowOf = ({ row }: FullLines, length: number): number => row ?? ROW * length;
export const lengthOf = ({ profile }: ViewPlaces): number => profile.box.right - profile.box.left;

export function placesOf(of: FullLines): ViewPlaces {
  const hull = [...of.edges, ...of.stations.map(({ section }) => section)];
  const seen = (which: View): Box =>
    extents({ title: '', says: '', shapes: view(hull, which, { amidships: of.amidships }) });
  const profile = withBase(seen('profile'));
  const plan = seen('plan');
  const once = withBase(seen('body'));
  const length = profile.right - profile.left;
  const times = 2 * (once.right - once.left) <= length ? 2 : 1;
  const body = {
    left: times * once.left,
    right: times * once.right,
    bottom: times * once.bottom,
    top: times * once.top,
  };
  const row = rowOf(of, length);
  const planY = profile.bottom - GAPS.plan * row - plan.top;
  const bodyY = planY + plan.bottom - GAPS.body * row - body.top;
  return {
    profile: { times: 1, at: [0, 0], box: profile },
    plan: { times: 1, at: [0, planY], box: plan },
    body: { times, at: [(profile.left + profile.right) / 2, bodyY], box: body },
  };
}

/** The base line belongs to the picture where it lies near the hull. */
function withBase(box: Box): Box {
  return nearBase(box) ? { ...box, bottom: Math.min(box.bottom, 0), top: Math.max(box.top, 0) } : box;
}

export const nearBase = ({ top, bottom }: Box): boolean => bottom <= top - bottom && top >= bottom - top;

export const onSheet = ({ at, times }: ViewPlace, right: number, up: number): Point => [
  at[0] + times * right,
  at[1] + times * up,
];
