/** One straight member of a frame between its joints, in the station's plane. */
import type { Vec2 } from '../../kernel';

/** How two members meet: both cut to half the angle, or the upper one standing on the lower, which runs out to the skin. */
export type MemberJoint = 'mitre' | 'butt';

/** Where a member's edge on the skin runs. */
export interface MemberRun {
  /** The corners between which it runs, on the face that stands on the station line, m. */
  readonly inner: Vec2;
  readonly outer: Vec2;
  /** Along it, outward; and square to it, into the boat. */
  readonly along: Vec2;
  readonly inward: Vec2;
}

interface Stock {
  readonly moulded: number;
  readonly joint: MemberJoint;
  readonly beyond: number;
}

interface Line {
  readonly at: Vec2;
  readonly along: Vec2;
}

/** Two members meet flatter than this: they are mitred whatever is asked, or an end would run out to a feather. */
const FLATTEST_BUTT = (150 * Math.PI) / 180;

/**
 * The outline of the i-th of a frame's members, bottom first: skin edge from inner to outer end, then back
 * along the inner edge. Null where the joints leave nothing of one of its edges.
 */
export function memberOutline(runs: readonly MemberRun[], i: number, stock: Stock): readonly Vec2[] | null {
  const run = runs[i]!; // asked for by a number of the list
  const skinEdge: Line = { at: run.inner, along: run.along };
  const innerEdge = innerEdgeOf(run, stock.moulded);
  const foot = footOf(runs[i - 1], run, stock);
  const above = runs[i + 1];
  const head: Line = above
    ? headUnder(run, above, stock.joint)
    : { at: moved(run.outer, run.along, stock.beyond), along: run.inward };
  const outline = [
    meeting(skinEdge, foot),
    meeting(skinEdge, head),
    meeting(innerEdge, head),
    meeting(innerEdge, foot),
  ];
  const [a, b, c, d] = outline.map(([y, z]) => dot(run.along, [y - run.inner[0], z - run.inner[1]])) as [
    number,
    number,
    number,
    number,
  ];
  return b - a < 1e-6 || c - d < 1e-6 ? null : outline;
}

/** The angle between two members inside the boat, rad. */
export function insideAngle(below: MemberRun, above: MemberRun): number {
  return Math.PI - Math.atan2(cross(below.along, above.along), dot(below.along, above.along));
}

/** Where the foot is cut: plumb on the centreline, or at the joint with the member below. */
function footOf(below: MemberRun | undefined, run: MemberRun, { moulded, joint }: Stock): Line {
  if (!below) return { at: [0, run.inner[1]], along: [0, 1] };
  return jointOf(below, run, joint) === 'mitre' ? mitre(below, run) : innerEdgeOf(below, moulded);
}

function headUnder(run: MemberRun, above: MemberRun, joint: MemberJoint): Line {
  return jointOf(run, above, joint) === 'mitre' ? mitre(run, above) : { at: above.inner, along: above.along };
}

function jointOf(below: MemberRun, above: MemberRun, joint: MemberJoint): MemberJoint {
  return insideAngle(below, above) > FLATTEST_BUTT ? 'mitre' : joint;
}

function mitre(below: MemberRun, above: MemberRun): Line {
  return {
    at: above.inner,
    along: [below.inward[0] + above.inward[0], below.inward[1] + above.inward[1]],
  };
}

function innerEdgeOf(run: MemberRun, moulded: number): Line {
  return { at: moved(run.inner, run.inward, moulded), along: run.along };
}

const dot = (a: Vec2, b: Vec2): number => a[0] * b[0] + a[1] * b[1];
const cross = (a: Vec2, b: Vec2): number => a[0] * b[1] - a[1] * b[0];

function moved([y, z]: Vec2, [dy, dz]: Vec2, by: number): Vec2 {
  return [y + by * dy, z + by * dz];
}

function meeting(a: Line, b: Line): Vec2 {
  const turn = cross(a.along, b.along);
  return moved(a.at, a.along, cross([b.at[0] - a.at[0], b.at[1] - a.at[1]], b.along) / turn);
}
