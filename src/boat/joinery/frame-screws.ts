/**
 * The screws of a frame, port side: through a plate into the members at a chine, through the skin into a
 * member's edge, through the keelson into the lowest member. All in the station's plane, m.
 */
import { clearOf, common, convexOutline, distance2, narrowed, type Vec2 } from '../../kernel';
import { plateAt } from './frame-pieces';
import type { Notch } from './frame-notches';
import type { FrameOutline, Member } from './frame-outline';
import type { KeepOut } from './keep-outs';
import { type Clearance, type ScrewField, layOut } from './screw-layout';

/** What is screwed on: at which chine, counted outward from the keel as 0, or along which panel. */
export type ScrewedOn =
  | { readonly fastened: 'plate'; readonly chine: number }
  | { readonly fastened: 'skin'; readonly panel: string }
  | { readonly fastened: 'keelson' };

export interface ScrewStock extends Pick<ScrewField, 'along' | 'across' | 'rows' | 'rowGap' | 'pitch'> {
  /** Least distance along the grain to an end, and square to an edge, m. */
  readonly end: number;
  readonly edge: number;
  /** Diameters, and how deep it stands in the member, m. */
  readonly head: number;
  readonly diameter: number;
  readonly hold: number;
  /** Legs of the plate, width of the keelson, thickness of the frame, m. */
  readonly plateLeg: number;
  readonly keelsonWidth: number;
  readonly siding: number;
  /** Plates lie on both faces: screws go in from them by turns. */
  readonly bothFaces: boolean;
}

export interface FrameScrew {
  readonly member: Member;
  readonly wanted: Vec2;
  /** Middle of the head, or where the shank enters the member; null where there is no room. */
  readonly at: Vec2 | null;
  /** Along the member from the joint’s datum: the chine, the outer edge of the panel, or the centreline. */
  readonly along: number;
  /** In from the edge on the skin; of skin and keelson, from the face on the station line. */
  readonly inward: number;
  /** From the face on the station line, from the other one, or from outside the boat. */
  readonly from: 'line' | 'other' | 'outside';
  /** How far it was moved, m; 0 where it was not. */
  readonly moved: number;
  /** The later cut that it was moved or dropped for; empty where it stands as the rows had it. */
  readonly clash: string;
  /** Wood beyond what is asked between it and the nearest later cut, m; - what it lacks. */
  readonly clear: number;
}

/**
 * All screws of the joint, in order along each member, those without room last.
 *
 * @param keepOuts every later cut of the frame; what is done before this joint is left out here
 * @throws a sentence where the frame has no such joint
 */
export function frameScrews(
  frame: FrameOutline,
  notches: readonly Notch[],
  keepOuts: readonly KeepOut[],
  joint: ScrewedOn,
  stock: ScrewStock,
): readonly FrameScrew[] {
  const pieces = piecesOf(frame, notches, joint, stock);
  const screws = pieces.flatMap((piece) => {
    const cuts = laterCuts(keepOuts, joint, piece, stock);
    const field: ScrewField = {
      ...stock,
      rows: joint.fastened === 'plate' ? stock.rows : 1,
      allowed: piece.allowed,
      clearance: (at) => nearestCut(cuts, piece.inPlane(at)),
    };
    return layOut(field)
      .toSorted((a, b) => (a.at ?? a.wanted)[0] - (b.at ?? b.wanted)[0])
      .map(({ wanted, at, clash, clear }) => ({
        member: piece.member,
        wanted: piece.inPlane(wanted),
        at: at && piece.inPlane(at),
        along: (at ?? wanted)[0],
        inward: joint.fastened === 'plate' ? (at ?? wanted)[1] : stock.siding / 2,
        moved: at ? distance2(at, wanted) : 0,
        clash,
        clear,
      }));
  });
  const [standing, dropped] = [screws.filter(({ at }) => at), screws.filter(({ at }) => !at)];
  return [...standing, ...dropped].map((screw, i): FrameScrew => ({
    ...screw,
    from: faceOf(joint, stock, i),
  }));
}

/** By turns from either face, so that no two points meet: all keep their distance whichever face they are from. */
function faceOf({ fastened }: ScrewedOn, { bothFaces }: ScrewStock, i: number): FrameScrew['from'] {
  if (fastened !== 'plate') return 'outside';
  return bothFaces && i % 2 === 1 ? 'other' : 'line';
}

/** A member with the places on it that its edges and ends allow, along the grain and across. */
interface Piece {
  readonly member: Member;
  readonly allowed: readonly Vec2[];
  readonly inPlane: (at: Vec2) => Vec2;
  /** Which way a screw goes, where it lies in the station's plane. */
  readonly into: Vec2;
}

function piecesOf(
  frame: FrameOutline,
  notches: readonly Notch[],
  joint: ScrewedOn,
  stock: ScrewStock,
): readonly Piece[] {
  if (joint.fastened === 'keelson') return [underKeelson(frame, notches, stock)];
  if (joint.fastened === 'skin') {
    const member = frame.members.find(({ panel }) => panel.name === joint.panel);
    if (!member) throw new Error(`${frame.station.label} has no member under a panel named ${joint.panel}`);
    return [underSkin(member, stock)];
  }
  if (joint.chine < 1 || joint.chine >= frame.members.length)
    throw new Error('a boat without a chine has no gussets: take the skin or the keelson');
  const plate = plateAt(frame, joint.chine, stock.plateLeg);
  return [
    underPlate(frame.members[joint.chine]!, 1, plate, stock),
    underPlate(frame.members[joint.chine - 1]!, -1, plate, stock),
  ];
}

/** @param way 1 where the member runs outward from the chine, -1 where it comes in to it */
function underPlate(
  member: Member,
  way: 1 | -1,
  plate: readonly [Vec2, Vec2, Vec2],
  stock: ScrewStock,
): Piece {
  const [corner, ...tips] = plate;
  const { along, inward } = member;
  const flat = ([y, z]: Vec2): Vec2 => {
    const [dy, dz] = [y - corner[0], z - corner[1]];
    return [way * (dy * along[0] + dz * along[1]), dy * inward[0] + dz * inward[1]];
  };
  const depth = Math.max(...member.outline.map((at) => flat(at)[1]));
  const covered = common(convexOutline(member.outline), convexOutline(plate)).map(flat);
  const [one, other] = tips.map(flat) as [Vec2, Vec2];
  const outline = covered.length === 0 ? [] : convexOutline(covered);
  const kept = outline.map((from, i) => {
    const to = outline[(i + 1) % outline.length]!;
    const level = (t: number) => Math.abs(from[1] - t) < HAIR && Math.abs(to[1] - t) < HAIR;
    const isLong = offLine(from, one, other) < HAIR && offLine(to, one, other) < HAIR;
    if (level(0) || level(depth) || isLong) return stock.edge;
    // An end: its distance is along the grain, whichever way it is cut.
    return (stock.end * Math.abs(to[1] - from[1])) / (distance2(from, to) || 1);
  });
  return {
    member,
    allowed: outline.length < 3 ? [] : narrowed(outline, kept),
    inPlane: ([s, t]) => [
      corner[0] + way * s * along[0] + t * inward[0],
      corner[1] + way * s * along[1] + t * inward[1],
    ],
    into: [0, 0],
  };
}

/** Corners that lie on an edge but for rounding, m. */
const HAIR = 1e-7;

/** How far a place lies off the line through two others. */
function offLine(at: Vec2, a: Vec2, b: Vec2): number {
  const turn = (b[0] - a[0]) * (at[1] - a[1]) - (b[1] - a[1]) * (at[0] - a[0]);
  return Math.abs(turn) / (distance2(a, b) || 1);
}

/** In one row along the member's edge, from its outer corner inward. */
function underSkin(member: Member, { end, along: pitch, hold }: ScrewStock): Piece {
  const { inner, outer, along, inward, outline, pieces } = member;
  const length = distance2(inner, outer);
  const run = (at: Vec2) => (at[0] - inner[0]) * along[0] + (at[1] - inner[1]) * along[1];
  const [foot, head] = [run(outline[0]!), run(outline[1]!)]; // the edge on the skin comes first
  const first = Math.max(0, length - head) + end;
  // A piece right across has no end at the centreline, but its own screws beyond it.
  const last = pieces === 1 ? length - pitch / 2 : length - Math.max(0, foot) - end;
  return {
    member,
    allowed: inLine(first, last),
    inPlane: ([s]) => [outer[0] - s * along[0], outer[1] - s * along[1]],
    into: [hold * inward[0], hold * inward[1]],
  };
}

/** In one row across the keelson, from the centreline outward, up into the wood above the slot. */
function underKeelson(
  frame: FrameOutline,
  notches: readonly Notch[],
  { end, edge, along: pitch, hold, keelsonWidth }: ScrewStock,
): Piece {
  const member = frame.members[0]!; // a frame has a member
  const slot = notches.find(({ part }) => part === 'keelson')!; // and a slot
  const top = Math.max(...slot.section.map(([, z]) => z));
  const first = member.pieces === 1 ? pitch / 2 : end * member.along[0];
  return {
    member,
    allowed: inLine(first, keelsonWidth / 2 - edge),
    inPlane: ([y]) => [y, top],
    into: [0, hold],
  };
}

const inLine = (from: number, to: number): readonly Vec2[] =>
  to < from
    ? []
    : [
        [from, 0],
        [to, 0],
      ];

interface Cut {
  readonly what: string;
  readonly outline: readonly Vec2[];
  readonly need: number;
  /** A circle round it: what lies far outside need not be measured off. */
  readonly middle: Vec2;
  readonly reach: number;
}

/** The cuts that come after this joint: the skin goes on when edges are planed, the keelson lies in its slot. */
export function stillToCome(
  keepOuts: readonly KeepOut[],
  fastened: ScrewedOn['fastened'],
): readonly KeepOut[] {
  const done: readonly KeepOut['cut'][] =
    fastened === 'plate' ? [] : fastened === 'skin' ? ['planed'] : ['planed', 'slot'];
  return keepOuts.filter(({ cut }) => !done.includes(cut));
}

/**
 * What is still to be cut when this joint is screwed, drawn wider by the length of a screw that lies in the
 * station's plane: a shank stands clear of a cut where its upper end stands clear of that.
 */
function laterCuts(
  keepOuts: readonly KeepOut[],
  { fastened }: ScrewedOn,
  { into }: Piece,
  { head, diameter }: ScrewStock,
): readonly Cut[] {
  return stillToCome(keepOuts, fastened).map(({ what, outline, clearance }): Cut => {
    const swept = convexOutline([...outline, ...outline.map(([y, z]): Vec2 => [y - into[0], z - into[1]])]);
    const middle: Vec2 = [mean(swept.map(([y]) => y)), mean(swept.map(([, z]) => z))];
    const reach = Math.max(...swept.map((at) => distance2(at, middle)));
    const need = clearance + (fastened === 'plate' ? head : diameter) / 2;
    return { what, outline: swept, need, middle, reach };
  });
}

const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;

function nearestCut(cuts: readonly Cut[], at: Vec2): Clearance {
  let worst: Clearance = { by: Infinity, of: '' };
  for (const { what, outline, need, middle, reach } of cuts) {
    if (distance2(at, middle) - reach - need >= worst.by) continue;
    const by = clearOf(outline, at) - need;
    if (by < worst.by) worst = { by, of: what };
  }
  return worst;
}
