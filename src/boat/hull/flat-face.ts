/**
 * Faces of the hull laid flat, as cloth is cut for them: a panel, the bottom in one piece over both sides, a transom.
 *
 * The sheet lies outside up, port side; of the bottom in one piece the keel runs along y = 0.
 */
import { between, distance, distance2, turned, type Vec2, type Vec3 } from '../../kernel';
import type { Sides } from '../../kernel/outline';
import { flatPanel } from './flat-panel';
import type { Hull } from './hull';
import type { Panel } from './panel';
import type { Station } from './station';

/** What a side of the face lies along. */
export type SideKind = 'inner' | 'outer' | 'aft' | 'fore' | 'open';

/** A line of the hull on the sheet, to lay the cloth back by. */
export interface FaceMark {
  readonly station: Station;
  readonly from: Vec2;
  readonly to: Vec2;
}

export interface FlatFace {
  /** Anticlockwise, m, and the kind of the side from each point to the next. */
  readonly outline: readonly Vec2[];
  readonly kinds: readonly SideKind[];
  readonly marks: readonly FaceMark[];
  /** Of wood under it, m2. */
  readonly area: number;
  /** Where a line x = const or y = const of the sheet runs on the hull, m; port side. */
  readonly inSpace: (axis: 0 | 1, at: number) => readonly Vec3[];
}

/** The outline with each kind of side to be drawn out by so much, m. */
export function sidesOf({ outline, kinds }: FlatFace, out: Readonly<Record<SideKind, number>>): Sides {
  return { points: outline, out: kinds.map((kind) => out[kind]) };
}

/** A panel of one side of the boat, laid so that it stands least high over the edge of the roll. */
export const panelFace = (hull: Hull, panel: Panel): FlatFace => faceOf(hull, panel, null);

/** Where a bottom in one piece over both sides leaves the cloth's straight centreline, toward the bow. */
export interface Dart {
  /** From the after end along the centreline to where the cloth is cut open, m. */
  readonly from: number;
  /** From there to the bow, m; 0 where nothing is to be cut. */
  readonly length: number;
  /** Between the two edges at the bow, m: + where they part, so that the cut halves lap, - where they gape. */
  readonly gap: number;
}

/**
 * The bottom in one piece. From aft its keel is laid along the cloth's centreline as far as it keeps within the slack
 * that is worked out by hand; from there to the bow the cloth is cut open.
 *
 * @param slack m
 */
export function wholeBottom(hull: Hull, slack: number): { readonly face: FlatFace; readonly dart: Dart } {
  const panel = hull.panels[0]!; // every hull has a panel
  const { inner } = flatPanel(panel);
  const start = inner[0]!; // and an edge two points
  const last = inner.length - 1;
  const offLine = (to: Vec2) => {
    const length = distance2(start, to);
    return (point: Vec2) =>
      ((to[0] - start[0]) * (point[1] - start[1]) - (to[1] - start[1]) * (point[0] - start[0])) / length;
  };
  let straight = last;
  for (; straight > 1; straight--) {
    const off = offLine(inner[straight]!);
    if (inner.slice(0, straight).every((point) => Math.abs(off(point)) <= slack + HAIR)) break;
  }
  const end = inner[straight]!;
  const bow = inner[last]!;
  const turn = -Math.atan2(end[1] - start[1], end[0] - start[0]);
  const isOpen = straight < last;
  return {
    face: faceOf(hull, panel, { origin: start, turn }),
    dart: {
      from: distance2(start, end),
      length: isOpen ? distance2(end, bow) : 0,
      gap: isOpen ? 2 * offLine(end)(bow) : 0,
    },
  };
}

/** What rounding leaves of a straight line, m. */
const HAIR = 1e-6;

/** A transom in its true shape, up to the sheer. */
export function transomFace(station: Station): FlatFace {
  const port = station.outline;
  const outline = [
    ...port,
    ...port
      .filter(([y]) => y > 0)
      .map(([y, z]): Vec2 => [-y, z])
      .toReversed(),
  ];
  return { outline, kinds: outline.map(() => 'open'), marks: [], area: station.area, inSpace: () => [] };
}

/** A plain rectangle, its length along x; every side of it is turned round. */
export function rectangleFace(length: number, width: number): FlatFace {
  return {
    outline: [
      [0, 0],
      [length, 0],
      [length, width],
      [0, width],
    ],
    kinds: ['inner', 'fore', 'outer', 'aft'],
    marks: [],
    area: length * width,
    inSpace: () => [],
  };
}

/** @param keel of a bottom in one piece: what comes to the origin, and how far it is turned there, rad */
function faceOf(
  hull: Hull,
  panel: Panel,
  keel: { readonly origin: Vec2; readonly turn: number } | null,
): FlatFace {
  const flat = flatPanel(panel);
  const lay = ([x, y]: Vec2): Vec2 =>
    keel ? turned([x - keel.origin[0], y - keel.origin[1]], keel.turn) : [x, y];
  const [inner, outer] = [flat.inner.map(lay), flat.outer.map(lay)];
  const marks = flat.marks(hull.frames).map(({ station, inner: low, outer: high }): FaceMark => {
    const to = lay(high.at);
    return { station, from: keel ? mirror(to) : lay(low.at), to };
  });
  const { rulings, flat: sheet } = panel.strip;
  const onSheet = (point: Vec2) => lay(flat.place(point));
  return {
    ...(keel ? bothSides(inner, outer) : oneSide(inner, outer)),
    marks,
    area: keel ? 2 * panel.area : panel.area,
    inSpace: (axis, at) =>
      rulings.flatMap(({ from, to }, k): Vec3[] => {
        // A point a ruling on each edge.
        const [a, b] = [onSheet(sheet.first[k]!)[axis] - at, onSheet(sheet.second[k]!)[axis] - at];
        return a === b || a > 0 === b > 0 ? [] : [between(from, to, a / (a - b))];
      }),
  };
}

const mirror = ([x, y]: Vec2): Vec2 => [x, -y];

type Outline = Pick<FlatFace, 'outline' | 'kinds'>;

const oneSide = (inner: readonly Vec2[], outer: readonly Vec2[]): Outline =>
  joined([
    [inner, 'inner', 'fore'],
    [outer.toReversed(), 'outer', 'aft'],
  ]);

function bothSides(inner: readonly Vec2[], outer: readonly Vec2[]): Outline {
  // Where the two halves gape at the bow, each is cut to the centreline.
  const onHalf = ([x, y]: Vec2): Vec2 => [x, Math.max(0, y)];
  const [stern, bow] = [onHalf(inner[0]!), onHalf(inner.at(-1)!)]; // an edge has two points
  const half = outer.map(onHalf);
  return joined([
    [half.map(mirror), 'outer', 'fore'],
    [[mirror(bow), bow], 'fore', 'fore'],
    [half.toReversed(), 'outer', 'aft'],
    [[stern], 'aft', 'aft'],
  ]);
}

/** Runs of points one after another, each with the kind of its sides and of the one that leads on from its last point. */
function joined(runs: readonly (readonly [readonly Vec2[], SideKind, SideKind])[]): Outline {
  return {
    outline: runs.flatMap(([points]) => points),
    kinds: runs.flatMap(([points, along, last]) =>
      points.map((_, i) => (i === points.length - 1 ? last : along)),
    ),
  };
}

/** The corner between a panel and what ends it, m long. */
export const endLength = (panel: Panel, end: Station): number =>
  distance(panel.inner.points[end.index]!, panel.outer.points[end.index]!);
