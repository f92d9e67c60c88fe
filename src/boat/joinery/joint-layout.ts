/** Where the scarfs of a long timber fall along its edge, and what speaks against each place. */
import { between, laidPieces, lapsOf, middleOf, type Stretch } from '../../kernel/laid-boards';
import { type BendAlong, bendAlong } from '../hull/bend-along';
import type { Edge } from '../hull/edge';
import { sideOf } from '../hull/side-of';
import type { Hull } from '../hull/hull';
import type { Station } from '../hull/station';

export type Side = 'port' | 'starboard';

/** What joints are held to. Lengths in m. */
export interface JointRules {
  /** The board's thickness, and the length of one board. */
  readonly thickness: number;
  readonly board: number;
  /** Length of a taper over the thickness. */
  readonly slope: number;
  /** Left for trimming, half of it beyond each end of the edge. */
  readonly trim: number;
  /** Thickness of a frame, and on which side of its line it stands: `custom`, `forward`, `aft`. */
  readonly siding: number;
  readonly stands: string;
  /** A stretch bends hard from this share of the edge's hardest bend on, where the bend is not easy. */
  readonly hardShare: number;
  /** A bend is easy from this radius over thickness on. */
  readonly easyBend: number;
  readonly frameClearance: number;
  /** Joints port and starboard at least so far apart. */
  readonly stagger: number;
  /** Shortest piece worth a scarf. */
  readonly least: number;
}

/** A frame's wood along the edge, from its after end, m. */
export interface FrameThere extends Stretch {
  readonly station: Station;
}

/** The timber and the rules its joints are held to; lengths along the edge from its after end, m. */
export interface LongTimber {
  readonly edge: Edge;
  readonly bend: BendAlong;
  readonly frames: readonly FrameThere[];
  /** The timber before its ends are trimmed: it begins before the edge and ends beyond it. */
  readonly rough: Stretch;
  readonly board: number;
  readonly taper: number;
  readonly pair: boolean;
  /** Bends from here on are hard, 1/m; infinite where none of the edge is. */
  readonly hardFrom: number;
  /** From this share of the hardest bend on, a joint that is not in a hard bend owes it to the bend being easy. */
  readonly hardShare: number;
  readonly frameClearance: number;
  readonly stagger: number;
  readonly least: number;
}

/** A joint by itself. */
export interface Lap extends Stretch {
  readonly at: number;
  /** Hardest bend within the lap, 1/m, and as a share of the hardest of the edge. */
  readonly bend: number;
  readonly share: number;
  /** The nearest frame; null where the boat has none. */
  readonly frame: Station | null;
  /** Lap to that frame's wood, m; below zero by as much as it lies on it. */
  readonly clear: number;
  readonly inHardBend: boolean;
  /** Where the edge bends as hard as anywhere, but easily. */
  readonly inEasyBend: boolean;
  readonly onFrame: boolean;
}

/** One side of the boat, or the only timber. */
export interface LaidSide {
  readonly first: number;
  readonly pieces: readonly Stretch[];
  readonly laps: readonly Lap[];
  /** The shortest piece, m. */
  readonly shortest: number;
}

export interface Joint extends Lap {
  readonly side: Side;
  /** From the after end, 1 first. */
  readonly number: number;
  /** Middle to middle of the nearest joint of the other side, m; the whole length where it has none. */
  readonly apart: number;
  readonly tooNear: boolean;
}

/** A rule that is kept but for rounding is kept, m. */
const ROUNDING = 1e-6;

/** @throws a sentence where the edge can't be drawn */
export function timberOf(hull: Hull, edge: Edge, rules: JointRules): LongTimber {
  const { thickness, board, slope, trim, siding, hardShare, frameClearance, stagger, least } = rules;
  const bend = bendAlong(edge);
  const easy = 1 / (rules.easyBend * thickness);
  return {
    edge,
    bend,
    frames: framesAlong(hull, edge, siding, rules.stands),
    rough: { from: -trim / 2, to: edge.length + trim / 2 },
    board,
    taper: slope * thickness,
    // There is one timber along the keel, and a pair along every other edge.
    pair: edge.index > 0,
    hardFrom: bend.worst > easy ? Math.max(bend.worst * hardShare, easy) : Infinity,
    hardShare,
    frameClearance,
    stagger,
    least,
  };
}

/** Every frame stands with its thickness forward or aft of its line; on a slanting edge it covers more. */
function framesAlong(hull: Hull, edge: Edge, siding: number, stands: string): readonly FrameThere[] {
  return hull.frames.map((station) => {
    const at = edge.arcs[station.index]!; // one arc a station
    const { plan, profile } = edge.slopes[station.index]!;
    const thick = siding * Math.hypot(1, plan, profile);
    return sideOf(station, stands, true) === 'forward'
      ? { station, from: at, to: at + thick }
      : { station, from: at - thick, to: at };
  });
}

export function lapAt(timber: LongTimber, { from, to }: Stretch): Lap {
  const { bend, edge, frames } = timber;
  const hardest = bend.within({ from, to });
  let nearest: FrameThere | null = null;
  let clear = Infinity;
  for (const there of frames) {
    const gap = between(there, { from, to });
    if (gap < clear) [nearest, clear] = [there, gap];
  }
  if (!nearest) clear = edge.length;
  const share = bend.worst > 0 ? hardest / bend.worst : 0;
  const inHardBend = hardest >= timber.hardFrom;
  return {
    from,
    to,
    at: middleOf({ from, to }),
    bend: hardest,
    share,
    frame: nearest?.station ?? null,
    clear,
    inHardBend,
    inEasyBend: !inHardBend && share >= timber.hardShare,
    onFrame: clear < timber.frameClearance - ROUNDING,
  };
}

/** @throws a sentence where boards are no longer than their taper */
export function laidSide(timber: LongTimber, first: number): LaidSide {
  const { rough, board, taper } = timber;
  const start = Math.min(first, board);
  const pieces = laidPieces(rough.to - rough.from, board, taper, start).map(({ from, to }) => ({
    from: rough.from + from,
    to: rough.from + to,
  }));
  return {
    first: start,
    pieces,
    laps: lapsOf(pieces).map((lap) => lapAt(timber, lap)),
    shortest: Math.min(...pieces.map(({ from, to }) => to - from)),
  };
}

/** Port first, each side from aft forward. */
export function jointsOf(timber: LongTimber, port: LaidSide, starboard: LaidSide | null): readonly Joint[] {
  const against = (side: Side, own: LaidSide, across: readonly Lap[]): Joint[] =>
    own.laps.map((lap, i) => {
      const apart = Math.min(timber.edge.length, ...across.map(({ at }) => Math.abs(lap.at - at)));
      const tooNear = across.length > 0 && apart < timber.stagger - ROUNDING;
      return { ...lap, side, number: i + 1, apart, tooNear };
    });
  return [
    ...against('port', port, starboard?.laps ?? []),
    ...(starboard ? against('starboard', starboard, port.laps) : []),
  ];
}

/** Rules that the joint breaks. */
export const faultsOf = ({ inHardBend, onFrame, tooNear }: Omit<Joint, 'side' | 'number'>): number =>
  Number(inHardBend) + Number(onFrame) + Number(tooNear);

/** What speaks against the place, in words for a table and a sentence. */
export function verdictOf(joint: Joint): string {
  const says = [
    joint.inHardBend ? 'in the hard bend' : '',
    joint.onFrame && joint.frame
      ? `${joint.clear < 0 ? 'on' : 'too near'} ${joint.frame.label.toLowerCase()}`
      : '',
    joint.tooNear ? 'too near the joint across' : '',
  ].filter((one) => one !== '');
  if (says.length > 0) return says.join(', ');
  return joint.inEasyBend ? 'clear: the bend is easy' : 'clear';
}

/** First boards of a pair, their tapers and what is left for trimming included, m. */
export interface FirstBoards {
  readonly port: number;
  /** Of no account where there is one timber only. */
  readonly starboard: number;
}

export interface JointLayout {
  readonly timber: LongTimber;
  readonly port: LaidSide;
  /** Null where there is one timber only. */
  readonly starboard: LaidSide | null;
  readonly joints: readonly Joint[];
}

/** @throws a sentence where boards can't be laid along the edge */
export function layOut(timber: LongTimber, first: FirstBoards): JointLayout {
  const port = laidSide(timber, first.port);
  const starboard = timber.pair ? laidSide(timber, first.starboard) : null;
  return { timber, port, starboard, joints: jointsOf(timber, port, starboard) };
}
