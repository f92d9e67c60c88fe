/**
 * The frame inside the skin: its corners on the station line and its straight members between them.
 *
 * The skin is measured square to its panel, so in the station's plane it takes t / cos(bevel) off the
 * offsets. Members are straight; where the skin is crowned between two corners it stands off them. All in the
 * station's plane, half-breadth and height in metres, port side.
 */
import { distance2, type Vec2 } from '../../kernel';
import { isIssue } from '../../measure';
import { attempt } from '../attempt';
import type { Hull } from '../hull/hull';
import { insetCorners } from '../hull/inset';
import { insideAngle, type MemberJoint, memberOutline, type MemberRun } from './member-outline';
import type { Panel } from '../hull/panel';
import type { Station } from '../hull/station';

export interface FrameStock {
  /** On which side of its line the frame stands; by custom the one from which bevels are only cut off. */
  readonly stands: Station['stands'];
  /** Fore and aft, m. */
  readonly siding: number;
  /** Depth of every member, from the edge on the skin inward, m. */
  readonly moulded: number;
  readonly joint: MemberJoint;
  /** Left on the side members above the sheer, m. */
  readonly beyond: number;
  /** Thickness of each panel's skin by the panel's name, m. */
  readonly skin: Readonly<Record<string, number>>;
}

/** One straight piece under one panel of the skin. */
export interface Member extends MemberRun {
  readonly panel: Panel;
  /** Before notches: skin edge from inner to outer end, then back along the inner edge. Of a piece right across, the port half. */
  readonly outline: readonly Vec2[];
  /** 1 for a piece right across the boat, else 2. */
  readonly pieces: 1 | 2;
  /** From long point to long point, m. */
  readonly length: number;
  /** The cut at each end, off square, rad; + where the edge on the skin is the longer one. */
  readonly footCut: number;
  readonly headCut: number;
  /** Bevels at both ends, rad; + opens going forward. */
  readonly bevels: readonly [inner: number, outer: number];
  /** How far the face away from the station line reaches beyond the one on it at both ends, m; - where it is the smaller. */
  readonly farther: readonly [inner: number, outer: number];
  /** How far the skin stands outside the straight edge, m; null where the panel doesn't say. */
  readonly standsOff: number | null;
}

export interface FrameOutline {
  readonly station: Station;
  readonly stands: Station['stands'];
  /** Inside the skin, keel outward, on the face that stands on the station line. */
  readonly corners: readonly Vec2[];
  /** The same on the other face, on the skin there. */
  readonly farCorners: readonly Vec2[];
  /** Bottom first. */
  readonly members: readonly Member[];
  /** Angle between the members at each chine, inside the boat, rad. */
  readonly angles: readonly number[];
}

/**
 * The frame of a station.
 * @throws a sentence, where the hull has a fault there, or where the members are deeper than the section has room for
 */
export function frameOutline(hull: Hull, name: string, stock: FrameStock): FrameOutline {
  const station = hull.station(name);
  const corners = insideCorners(hull, station, stock.skin);
  const far = farFace(stock);
  const farCorners = hull.edges.map((edge, i): Vec2 => {
    const { plan, profile } = edge.slopes[station.index]!; // one slope a station
    const [y, z] = corners[i]!; // one corner an edge
    return [y + far * plan, z + far * profile];
  });
  const runs = hull.panels.map((panel, i) => runOf(panel, corners[i]!, corners[i + 1]!, station));
  const members = runs.map((run, i): Member => {
    const panel = hull.panels[i]!; // one run a panel
    const outline = memberOutline(runs, i, stock);
    if (!outline) {
      throw new Error(
        `the members are too deep for ${station.label}: nothing is left of the inner edge along the ${panel.label}`,
      );
    }
    return { ...run, panel, outline, ...cuts(run, outline, i === 0), ...againstSkin(station, panel, stock) };
  });
  const angles = runs.slice(1).map((above, i) => insideAngle(runs[i]!, above));
  return { station, stands: stock.stands, corners, farCorners, members, angles };
}

/** From the face on the line to the other one along the boat, + forward, m. */
const farFace = ({ stands, siding }: FrameStock) => (stands === 'forward' ? siding : -siding);

/** Corners of the skin's inside in the station's plane, keel outward. */
function insideCorners(hull: Hull, station: Station, skin: FrameStock['skin']): readonly Vec2[] {
  if (hull.offsets.offsetsTo === 'inside of skin') return station.section;
  return insetCorners(hull, station, (panel) => skin[panel] ?? 0).map(([, y, z]): Vec2 => [y, z]);
}

function runOf(panel: Panel, inner: Vec2, outer: Vec2, station: Station): MemberRun {
  const length = distance2(inner, outer);
  if (length < 1e-6) throw new Error(`the ${panel.label} has no breadth at ${station.label}`);
  const along: Vec2 = [(outer[0] - inner[0]) / length, (outer[1] - inner[1]) / length];
  return { inner, outer, along, inward: [-along[1], along[0]] };
}

/** A bottom that rises less than this from the centreline to its corner is level, m: less than a pencil line. */
const LEVEL = 2e-4;

function cuts(
  run: MemberRun,
  outline: readonly Vec2[],
  lowest: boolean,
): Pick<Member, 'pieces' | 'length' | 'footCut' | 'headCut'> {
  const [a, b, c, d] = outline.map(([y, z]) => [y - run.inner[0], z - run.inner[1]] as const) as [
    Vec2,
    Vec2,
    Vec2,
    Vec2,
  ];
  const onSkin = [dot(run.along, a), dot(run.along, b)] as const;
  const inside = [dot(run.along, d), dot(run.along, c)] as const;
  const depth = dot(run.inward, d);
  // A level member from the centreline outward is one piece with its fellow.
  const across = lowest && run.inner[0] < LEVEL && Math.abs(run.outer[1] - run.inner[1]) < LEVEL;
  const half = Math.max(onSkin[1], inside[1]) - Math.min(onSkin[0], inside[0]);
  return {
    pieces: across ? 1 : 2,
    length: across ? 2 * half : half,
    footCut: across ? 0 : square(Math.atan2(inside[0] - onSkin[0], depth)),
    headCut: square(Math.atan2(onSkin[1] - inside[1], depth)),
  };
}

/** A cut that only rounding takes out of square. */
const square = (angle: number): number => (Math.abs(angle) < 1e-9 ? 0 : angle);

const dot = (a: Vec2, b: Vec2): number => a[0] * b[0] + a[1] * b[1];

function againstSkin(
  station: Station,
  panel: Panel,
  stock: FrameStock,
): Pick<Member, 'bevels' | 'farther' | 'standsOff'> {
  const bevels = [
    station.bevel(panel.inner.name, panel.name),
    station.bevel(panel.outer.name, panel.name),
  ] as const;
  const far = farFace(stock);
  const crown = attempt(() => station.crown(panel.name));
  return {
    bevels,
    farther: [far * Math.tan(bevels[0]), far * Math.tan(bevels[1])],
    standsOff: isIssue(crown) ? null : crown,
  };
}
