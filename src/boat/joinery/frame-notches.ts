/**
 * What is cut out of a frame for the long timbers: their sections as the station's plane cuts them.
 *
 * A long timber runs at an angle through the plane, so its section there is larger than square to its length:
 * a face parallel to the skin at a distance t stands t / cos(bevel) off it, and the notch is drawn with the
 * planes of the two panels on which the timber lies.
 */
import { cross, dot, scale, unit, type Vec2, type Vec3 } from '../../kernel';
import type { Edge } from '../hull/edge';
import type { FrameOutline } from './frame-outline';
import type { Hull } from '../hull/hull';
import type { Panel } from '../hull/panel';

/** A timber's section, m: thickness from its face on the skin inward, width along the skin. */
export interface TimberSection {
  readonly thickness: number;
  readonly width: number;
}

export interface Slot {
  /** From side to side, limbers included, m. */
  readonly width: number;
  /** Square to the keelson, m: its thickness. */
  readonly depth: number;
  /** Of the drill that rounds its upper corners, m. */
  readonly radius: number;
}

export interface Notch {
  /** The timber that lies in it. */
  readonly part: 'chineLog' | 'sheerClamp' | 'keelson';
  readonly edge: Edge;
  /** The timber's section in the station's plane; of the keelson's slot, what is sawn out on the port side. */
  readonly section: readonly Vec2[];
  /** What is cut away: the section, reaching out beyond the frame's edges. */
  readonly cut: readonly Vec2[];
  /** Depth square to the member's edge, and length along it, as laid off on the frame's face, m. */
  readonly depth: number;
  readonly along: number;
}

/** How far cuts reach out beyond the edges that they are open at, m; more than any crown. */
const BEYOND = 0.03;

/** The notch of the chine log at one chine: its faces lie on side and bottom, its top is square to the side. */
export function chineLogNotch(hull: Hull, frame: FrameOutline, edge: Edge, log: TimberSection): Notch {
  const below = hull.panels[edge.index - 1]!; // a chine has a panel on either side
  const above = hull.panels[edge.index]!;
  const corner = frame.corners[edge.index]!;
  const planes = planesOf(frame, edge, above);
  const inner: Flat = { ...planes.skin, height: -log.thickness };
  const top: Flat = { ...planes.up, height: log.width };
  const bottom = flat(frame.station.normal(edge.name, below.name), 0);
  const apex = meeting(inner, top, corner);
  const upper = meeting(planes.skin, top, corner);
  const foot = meeting(inner, bottom, corner);
  const out = reached(apex, upper);
  const down = reached(apex, foot);
  const far: Vec2 = [out[0] + down[0] - apex[0], out[1] + down[1] - apex[1]];
  return {
    part: 'chineLog',
    edge,
    section: [corner, upper, apex, foot],
    cut: [apex, down, far, out],
    depth: log.thickness / sectionLength(planes.skin),
    along: distance(corner, upper),
  };
}

/** The notch of the sheer clamp: from the sheer down, inside the side. */
export function sheerClampNotch(
  hull: Hull,
  frame: FrameOutline,
  clamp: TimberSection,
  beyond: number,
): Notch {
  const edge = hull.edges.at(-1)!; // every hull has a sheer
  const panel = hull.panels.at(-1)!; // and a panel under it
  const corner = frame.corners.at(-1)!;
  const planes = planesOf(frame, edge, panel);
  const inner: Flat = { ...planes.skin, height: -clamp.thickness };
  const lower: Flat = { ...planes.up, height: -clamp.width };
  // Where nothing is left above the sheer the notch is open at its top too.
  const open: Flat = { ...planes.up, height: beyond < 1e-3 ? BEYOND : 0 };
  const at = (height: Flat) => ({
    inner: meeting(inner, height, corner),
    skin: meeting(planes.skin, height, corner),
  });
  const [foot, head, sawn] = [at(lower), at(planes.up), at(open)];
  return {
    part: 'sheerClamp',
    edge,
    section: [foot.skin, head.skin, head.inner, foot.inner],
    cut: [foot.inner, reached(foot.inner, foot.skin), reached(sawn.inner, sawn.skin), sawn.inner],
    depth: clamp.thickness / sectionLength(planes.skin),
    along: distance(corner, foot.skin),
  };
}

/** The keelson's slot with its limbers, port half: plumb sides, the top rounded by the drill. */
export function keelsonSlot(hull: Hull, frame: FrameOutline, slot: Slot): Notch {
  const edge = hull.edges[0]!; // every hull has a keel
  const [, foot] = frame.corners[0]!;
  const half = slot.width / 2;
  // The keelson climbs with the keel, so plumb in the station's plane it takes more than its thickness.
  const depth = slot.depth * Math.hypot(1, edge.slopes[frame.station.index]!.profile);
  const top = foot + depth;
  const radius = Math.min(slot.radius, half, depth);
  const round = Array.from({ length: 9 }, (_, i): Vec2 => {
    const turn = (i / 8) * (Math.PI / 2);
    return [half - radius + radius * Math.cos(turn), top - radius + radius * Math.sin(turn)];
  });
  return {
    part: 'keelson',
    edge,
    section: [[0, foot], [half, foot], ...round, [0, top]],
    cut: [[-BEYOND, foot - BEYOND], [half, foot - BEYOND], ...round, [-BEYOND, top]],
    depth,
    along: half,
  };
}

/** A plane as the station's plane sees it: normal, and distance from the corner by the plane's own measure. */
interface Flat {
  readonly normal: Vec2;
  readonly height: number;
}

const flat = ([, y, z]: Vec3, height: number): Flat => ({ normal: [y, z], height });

/** The skin at an edge, and the plane through the edge square to the skin, its normal up along the panel. */
function planesOf(frame: FrameOutline, edge: Edge, panel: Panel): { readonly skin: Flat; readonly up: Flat } {
  const { station } = frame;
  const normal = station.normal(edge.name, panel.name);
  const square = unit(cross(edge.directions[station.index]!, normal)); // one direction a station, of a length near 1
  const inner = panel.inner.points[station.index]!;
  const outer = panel.outer.points[station.index]!;
  const upward = dot(square, [0, outer[1] - inner[1], outer[2] - inner[2]]) < 0 ? -1 : 1;
  return { skin: flat(normal, 0), up: flat(scale(square, upward), 0) };
}

const sectionLength = ({ normal }: Flat): number => Math.hypot(...normal);

/** Where two planes cross in the station's plane; heights are from the corner. */
function meeting(a: Flat, b: Flat, [y, z]: Vec2): Vec2 {
  const turn = a.normal[0] * b.normal[1] - a.normal[1] * b.normal[0];
  return [
    y + (a.height * b.normal[1] - b.height * a.normal[1]) / turn,
    z + (a.normal[0] * b.height - b.normal[0] * a.height) / turn,
  ];
}

/** From one point through another and on beyond it. */
function reached(from: Vec2, through: Vec2): Vec2 {
  const length = distance(from, through);
  const share = length < 1e-9 ? 1 : (length + BEYOND) / length;
  return [from[0] + share * (through[0] - from[0]), from[1] + share * (through[1] - from[1])];
}

const distance = (a: Vec2, b: Vec2): number => Math.hypot(a[0] - b[0], a[1] - b[1]);
