/**
 * Where no screw may stand in a frame because something is still to be cut there: the slot for the keelson
 * and its limbers, the notches of chine logs and sheer clamp, what the plane takes off each edge, and what is
 * trimmed above the sheer.
 *
 * All in the station's plane, half-breadth and height above the base in metres, port side; starboard alike.
 * A cut is kept as a convex outline, because most run along a slanted edge, where an upright box round them
 * would shut the whole member; the box that goes with it is for reading off with a tape.
 */
import { convexOutline, type Vec2 } from '../../kernel';
import { frameNotches, type Fittings } from './frame-pieces';
import { type FrameOutline, frameOutline, type Member } from './frame-outline';
import type { Notch } from './frame-notches';
import type { Hull } from '../hull/hull';

/** A later cut of a frame, by the edge or the panel at which it is. */
export interface KeepOut {
  readonly cut: 'slot' | 'limber' | 'notch' | 'planed' | 'trim';
  /** The edge's name, of what is planed the panel's: `chine`, `side`. */
  readonly at: string;
  /** In words: `notch at the chine`. */
  readonly what: string;
  /** What is cut away, convex, anticlockwise, m. */
  readonly outline: readonly Vec2[];
  /** How far it reaches in from the member's edge on the skin, m. */
  readonly depth: number;
  /** Wood kept between it and the rim of a screw's head, m. */
  readonly clearance: number;
  /** The cut with that clearance. */
  readonly box: KeepOutBox;
}

/** From the centreline outward, and above the base, m. */
export interface KeepOutBox {
  readonly inboard: number;
  readonly outboard: number;
  readonly lower: number;
  readonly upper: number;
}

/** A scantling by its name, SI: `chineLog.thickness`. */
export type SizeOf = (name: string) => number;

/**
 * The later cuts of a frame, by the scantlings in hand; worked out once for a hull and its scantlings.
 *
 * @throws a sentence where there is no such frame, or its members don't fit the section
 */
export function keepOutsOf(hull: Hull, frame: string, sizeOf: SizeOf): readonly KeepOut[] {
  const read: number[] = [];
  const size: SizeOf = (name) => {
    const value = sizeOf(name);
    read.push(value);
    return value;
  };
  const moulded = size('frame.moulded');
  const beyond = size('frame.aboveSheer');
  const stock = {
    siding: size('frame.siding'),
    moulded,
    beyond,
    joint: 'mitre',
    skin: Object.fromEntries(hull.panels.map(({ name }) => [name, size(`${name}.thickness`)])),
  } as const;
  const stick = (part: string) => ({ thickness: size(`${part}.thickness`), width: size(`${part}.width`) });
  const keelson = stick('keelson');
  const sheerClamp = stick('sheerClamp');
  const cuts: Cuts = {
    slot: {
      width: keelson.width + 2 * size('frame.limberWidth'),
      depth: keelson.thickness,
      radius: size('frame.limberDrill') / 2,
    },
    // A boat without a chine has no log, and no sizes of one.
    chineLog: hull.edges.length > 2 ? stick('chineLog') : sheerClamp,
    sheerClamp,
    beyond,
    clearance: size('frame.screwClearance'),
  };
  return remembered(hull, `${frame} ${read.join(' ')}`, () => {
    const station = hull.station(frame);
    const outline = frameOutline(hull, frame, { ...stock, stands: station.stands });
    return keepOutsIn(outline, frameNotches(hull, outline, cuts), cuts);
  });
}

export interface Cuts extends Pick<Fittings, 'slot' | 'chineLog' | 'sheerClamp' | 'beyond'> {
  readonly clearance: number;
}

/** The same for a frame whose outline and notches are in hand. */
export function keepOutsIn(
  frame: FrameOutline,
  notches: readonly Notch[],
  cuts: Pick<Cuts, 'slot' | 'beyond' | 'clearance'>,
): readonly KeepOut[] {
  const { clearance, slot, beyond } = cuts;
  const made: Make = (one, points) => {
    const outline = convexOutline(points);
    return { ...one, outline, clearance, box: boxRound(outline, clearance) };
  };
  return [
    ...notches.flatMap(({ part, edge, section, depth }): readonly KeepOut[] => {
      const at = edge.name;
      if (part !== 'keelson')
        return [made({ cut: 'notch', at, what: `notch at the ${edge.label}`, depth }, section)];
      return [
        made({ cut: 'slot', at, what: 'slot for the keelson', depth }, section),
        made({ cut: 'limber', at, what: 'limber hole', depth }, limberHole(section, slot.radius)),
      ];
    }),
    ...frame.members.filter(isPlaned).map(({ panel, farther }) => {
      const ends = [panel.inner.index, panel.outer.index];
      return made(
        {
          cut: 'planed',
          at: panel.name,
          what: `bevel of the ${panel.label}’s edge`,
          depth: Math.max(...farther.map(Math.abs)),
        },
        // One corner an edge, on either face.
        ends.flatMap((i) => [frame.corners[i]!, frame.farCorners[i]!]),
      );
    }),
    ...(beyond > 0 ? [trimmed(frame, made)] : []),
  ];
}

type Make = (one: Pick<KeepOut, 'cut' | 'at' | 'what' | 'depth'>, points: readonly Vec2[]) => KeepOut;

/** A bevel that takes less than this off the far face is none, m: less than a pencil line. */
const PENCIL = 2e-4;

const isPlaned = ({ farther }: Member) => Math.max(...farther.map(Math.abs)) > PENCIL;

/** The drilled hole: it touches the side and the top of the slot, whose upper corner it rounds. */
function limberHole(slot: readonly Vec2[], drill: number): readonly Vec2[] {
  const half = Math.max(...slot.map(([y]) => y));
  const top = Math.max(...slot.map(([, z]) => z));
  const radius = Math.min(drill, half);
  return Array.from({ length: 24 }, (_, k): Vec2 => {
    const turn = (k / 24) * 2 * Math.PI;
    return [half - radius + radius * Math.cos(turn), top - radius + radius * Math.sin(turn)];
  });
}

/** What stands above the sheer until the frame is trimmed, right across the side member. */
function trimmed({ members, corners }: FrameOutline, made: Make): KeepOut {
  const { outline, inward, inner, outer, panel } = members.at(-1)!; // a frame has a side
  const [, head, insideHead] = outline as readonly [Vec2, Vec2, Vec2, Vec2];
  const depth = inward[0] * (insideHead[0] - inner[0]) + inward[1] * (insideHead[1] - inner[1]);
  const sheer = corners.at(-1)!;
  const across: Vec2 = [outer[0] + depth * inward[0], outer[1] + depth * inward[1]];
  return made({ cut: 'trim', at: panel.outer.name, what: 'trimming at the sheer', depth }, [
    sheer,
    head,
    insideHead,
    across,
  ]);
}

/** Nothing stands inboard of the centreline but the other half. */
function boxRound(outline: readonly Vec2[], by: number): KeepOutBox {
  const [out, up] = [outline.map(([y]) => y), outline.map(([, z]) => z)];
  return {
    inboard: Math.max(0, Math.min(...out) - by),
    outboard: Math.max(...out) + by,
    lower: Math.min(...up) - by,
    upper: Math.max(...up) + by,
  };
}

const known = new WeakMap<Hull, Map<string, readonly KeepOut[]>>();
/** Frames kept of one hull: all of a large one in two versions of the scantlings. */
const KEPT = 80;

function remembered(hull: Hull, key: string, make: () => readonly KeepOut[]): readonly KeepOut[] {
  const ofHull = known.get(hull) ?? new Map<string, readonly KeepOut[]>();
  known.set(hull, ofHull);
  const before = ofHull.get(key);
  if (before) return before;
  const fresh = make();
  if (ofHull.size >= KEPT) ofHull.clear();
  ofHull.set(key, fresh);
  return fresh;
}
