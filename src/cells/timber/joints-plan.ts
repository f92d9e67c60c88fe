/** Where the scarfs of a long timber fall along its edge, and what speaks against each place. */
import { type Edge, type Hull, type Station } from '../../boat';
import { type BendAlong, bendAlong } from '../../boat/bend-along';
import { between, laidPieces, lapsOf, middleOf, type Stretch } from '../../kernel/laid-boards';
import type { Values } from '../define';
import { sideOf } from '../frames/jig-in-hand';

export type Side = 'port' | 'starboard';

/** A frame's wood along the edge, from its after end, m. */
export interface FrameThere extends Stretch {
  readonly station: Station;
}

/** The timber and the rules its joints are held to; lengths along the edge from its after end, m. */
export interface LongTimber {
  readonly edge: Edge;
  readonly bend: BendAlong;
  readonly frames: readonly FrameThere[];
  readonly board: number;
  readonly taper: number;
  readonly pair: boolean;
  /** Bends from here on are hard, 1/m; infinite where none of the edge is. */
  readonly hardFrom: number;
  readonly frameClearance: number;
  readonly stagger: number;
  readonly least: number;
}

/** What the timber follows from: keys of the cell. */
export const timberKeys = [
  'along',
  'sides',
  'thickness',
  'taper',
  'boardLength',
  'siding',
  'stands',
  'hardShare',
  'easyBend',
  'frameClearance',
  'stagger',
  'leastPiece',
] as const;

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
export function timberOf(hull: Hull, v: Values): LongTimber {
  const of = (key: (typeof timberKeys)[number]) => Number(v[key]);
  const edge = hull.edge(String(v['along']));
  const bend = bendAlong(edge);
  const hardest = bend.worst * of('hardShare');
  const easy = 1 / (of('easyBend') * of('thickness'));
  return {
    edge,
    bend,
    frames: framesAlong(hull, edge, of('siding'), String(v['stands'])),
    board: of('boardLength'),
    taper: of('taper'),
    pair: v['sides'] === 'pair',
    hardFrom: bend.worst > easy ? Math.max(hardest, easy) : Infinity,
    frameClearance: of('frameClearance'),
    stagger: of('stagger'),
    least: of('leastPiece'),
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
  const [nearest] = frames
    .map((there) => ({ frame: there.station, clear: between(there, { from, to }) }))
    .toSorted((a, b) => a.clear - b.clear);
  const clear = nearest?.clear ?? edge.length;
  return {
    from,
    to,
    at: middleOf({ from, to }),
    bend: hardest,
    share: bend.worst > 0 ? hardest / bend.worst : 0,
    frame: nearest?.frame ?? null,
    clear,
    inHardBend: hardest >= timber.hardFrom,
    onFrame: clear < timber.frameClearance - ROUNDING,
  };
}

/** @throws a sentence where boards are no longer than their taper */
export function laidSide(timber: LongTimber, first: number): LaidSide {
  const { edge, board, taper } = timber;
  const start = Math.min(first, board);
  const pieces = laidPieces(edge.length, board, taper, start);
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
  return says.length > 0 ? says.join(', ') : 'clear';
}

/** Keys of the cell that the whole layout follows from. */
export const layoutKeys = [...timberKeys, 'portFirst', 'starboardFirst'] as const;

export interface Layout {
  readonly timber: LongTimber;
  readonly port: LaidSide;
  /** Null where there is one timber only. */
  readonly starboard: LaidSide | null;
  readonly joints: readonly Joint[];
}

const known = new WeakMap<Hull, { readonly key: string; readonly layout: Layout }>();

/** The layout by the cell's values; the last is kept, since every step of every row asks for it. */
export function layoutOf(hull: Hull, v: Values): Layout {
  const key = layoutKeys.map((name) => v[name]).join(' ');
  const before = known.get(hull);
  if (before?.key === key) return before.layout;
  const timber = timberOf(hull, v);
  const port = laidSide(timber, Number(v['portFirst']));
  const starboard = timber.pair ? laidSide(timber, Number(v['starboardFirst'])) : null;
  const layout = { timber, port, starboard, joints: jointsOf(timber, port, starboard) };
  known.set(hull, { key, layout });
  return layout;
}
