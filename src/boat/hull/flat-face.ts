/**
 * Faces of the hull laid flat, as cloth is cut for them: a panel, the bottom in one piece over both sides, a transom.
 *
 * The sheet lies outside up, port side; of the bottom in one piece the keel runs along y = 0.
 */
import { between2, distance, distance2, stripSection, type Vec2, type Vec3 } from '../../kernel';
import { convexOutline } from '../../kernel/convex';
import { boxRound, type Sides, turnedOutline } from '../../kernel/outline';
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

/** A panel of one side of the boat, turned so that it takes the least width. */
export function panelFace(hull: Hull, panel: Panel): FlatFace {
  const { inner, outer } = panel.flat;
  return faceOf(hull, panel, leastWidthTurn([...inner, ...outer]), false);
}

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
  const { inner } = panel.flat;
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
    if (inner.slice(0, straight).every((point) => Math.abs(off(point)) <= slack)) break;
  }
  const end = inner[straight]!;
  const bow = inner[last]!;
  const turn = -Math.atan2(end[1] - start[1], end[0] - start[0]);
  const isOpen = straight < last;
  return {
    face: faceOf(hull, panel, turn, true),
    dart: {
      from: distance2(start, end),
      length: isOpen ? distance2(end, bow) : 0,
      gap: isOpen ? 2 * offLine(end)(bow) : 0,
    },
  };
}

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

function faceOf(hull: Hull, panel: Panel, turn: number, both: boolean): FlatFace {
  const { strip, area } = panel;
  const origin = strip.flat.first[0]!; // a strip has rulings
  const laid = (points: readonly Vec2[]) =>
    turnedOutline(
      points.map(([x, y]): Vec2 => [x - origin[0], y - origin[1]]),
      turn,
    );
  const inner = laid(strip.flat.first);
  const outer = laid(strip.flat.second);
  const mirror = ([x, y]: Vec2): Vec2 => [x, -y];
  // Where the two halves gape at the bow, each is cut to the centreline.
  const onHalf = ([x, y]: Vec2): Vec2 => [x, Math.max(0, y)];
  const bow = inner.at(-1)!; // a strip has rulings
  const parts: readonly (readonly [readonly Vec2[], SideKind, SideKind])[] = both
    ? [
        [outer.map(onHalf).map(mirror), 'outer', 'fore'],
        [[mirror(onHalf(bow)), onHalf(bow)], 'fore', 'fore'],
        [outer.toReversed().map(onHalf), 'outer', 'aft'],
        [[onHalf(inner[0]!)], 'aft', 'aft'],
      ]
    : [
        [inner, 'inner', 'fore'],
        [outer.toReversed(), 'outer', 'aft'],
      ];
  const marks = hull.stations.flatMap((station): FaceMark[] => {
    const section = station.role === 'frame' ? stripSection(strip, station.x) : [];
    const ends = laid([section[0], section.at(-1)].flatMap((point) => (point ? [point.flat] : [])));
    const [from, to] = ends;
    return from && to ? [{ station, from: both ? mirror(to) : from, to }] : [];
  });
  return {
    outline: parts.flatMap(([points]) => points),
    kinds: parts.flatMap(([points, along, last]) =>
      points.map((_, i) => (i === points.length - 1 ? last : along)),
    ),
    marks,
    area: both ? 2 * area : area,
    inSpace: (axis, at) =>
      strip.rulings.flatMap(({ from, to }, k): Vec3[] => {
        const [a, b] = [inner[k]![axis] - at, outer[k]![axis] - at]; // a point a ruling
        if (a === b || a > 0 === b > 0) return [];
        const share = a / (a - b);
        return [
          [
            from[0] + share * (to[0] - from[0]),
            from[1] + share * (to[1] - from[1]),
            from[2] + share * (to[2] - from[2]),
          ],
        ];
      }),
  };
}

/** How far to turn points so that they take the least height: along one side of the tightest outline round them, rad. */
function leastWidthTurn(points: readonly Vec2[]): number {
  const round = convexOutline(points);
  const turns = round.map((from, i) => {
    const to = round[(i + 1) % round.length]!;
    // Kept within a quarter turn, so that aft stays at the left.
    return -Math.atan((to[1] - from[1]) / (to[0] - from[0] || 1e-12));
  });
  const heightAt = (turn: number) => {
    const { low, high } = boxRound(turnedOutline(round, turn));
    return high - low;
  };
  return turns.reduce((best, turn) => (heightAt(turn) < heightAt(best) - 1e-9 ? turn : best));
}

/** How long a line x = const of the sheet is within an outline, m. */
export function chordAcross(outline: readonly Vec2[], x: number): number {
  const crossings = outline.flatMap((from, i): number[] => {
    const to = outline[(i + 1) % outline.length]!;
    if (from[0] > x === to[0] > x) return [];
    return [between2(from, to, (x - from[0]) / (to[0] - from[0]))[1]];
  });
  return crossings.length < 2 ? 0 : Math.max(...crossings) - Math.min(...crossings);
}

/** The corner between a panel and what ends it, m long. */
export const endLength = (panel: Panel, end: Station): number =>
  distance(panel.inner.points[end.index]!, panel.outer.points[end.index]!);
