/**
 * A board laid along an edge with its face against the skin: how it bends across its thickness, how edgewise, how it
 * twists, and with what the frames hold it.
 *
 * A keelson lies square to the centreline plane. All other timbers lie against the panel above their edge, the
 * outermost against the one below. + is outward through the face, and edgewise away from the keel.
 */
import {
  type Batten,
  bendBatten,
  cross,
  curvatureAt,
  derivativeAt,
  distance2,
  dot,
  lengthTo,
  pushesOn,
  scale,
  subtract,
  unit,
  type Vec2,
  type Vec3,
} from '../../kernel';
import { turnBetween } from '../../kernel/board-turn';
import type { Stretch } from '../../kernel/laid-boards';
import type { Edge } from '../hull/edge';
import type { Hull } from '../hull/hull';
import type { Panel } from '../hull/panel';
import { once } from '../once';

/**
 * Ends of the board: 'free' to turn where they are held, or 'fast', turned as the edge's own curve leads on. That curve
 * goes past the station next to each end without a push there.
 */
export type BoardEnds = 'free' | 'fast';

/** A number through the face, and one edgewise. */
export interface BothWays {
  readonly flat: number;
  readonly edgewise: number;
}

export interface BoardPlace {
  /** Length along the edge from its after end, m. */
  readonly along: number;
  /** Curvature, 1/m. */
  readonly bend: BothWays;
  /** Twist since the after end, rad. */
  readonly turn: number;
}

export interface LaidBoard {
  readonly edge: Edge;
  /** From aft forward, several a bay, the stations among them. */
  readonly places: readonly BoardPlace[];
  /** The places that are stations. */
  readonly stations: readonly BoardPlace[];
  /** What each station does to the board over its stiffness that way, 1/m2. */
  pushes(ends: BoardEnds): readonly BothWays[];
  /** The board's middle line with its bend one way only, laid out flat from end to end of its chord, m. */
  readonly seen: { readonly onEdge: readonly Vec2[]; readonly onFace: readonly Vec2[] };
  /** Greatest distance between the line seen on its face and its chord, m: what it asks edgewise. */
  readonly crook: number;
  /**
   * How much wider than itself a straight board must be to cut a stretch of it to shape, m: what the line on its face
   * takes up across the chord of that stretch.
   */
  spareFor(stretch: Stretch): number;
}

/** Pieces of a bay; twist and lines converge with the square of the piece. */
const PIECES = 16;

/** A board by its edge and the panel that it lies against, which hulls share as long as neither has moved. */
const known = new WeakMap<Edge, WeakMap<Edge | Panel, LaidBoard>>();

/** @throws the fault of an edge or a panel that can't be drawn */
export function laidBoard(hull: Hull, name: string): LaidBoard {
  const edge = hull.edge(name);
  const panel = edge.index === 0 ? null : (hull.panels[edge.index] ?? hull.panels[edge.index - 1] ?? null);
  const alongEdge = known.get(edge) ?? new WeakMap<Edge | Panel, LaidBoard>();
  known.set(edge, alongEdge);
  const against = panel ?? edge;
  const board = alongEdge.get(against) ?? layBoard(edge, panel);
  alongEdge.set(against, board);
  return board;
}

/** Its length and its face at a place, unit. */
interface Lie {
  readonly length: Vec3;
  readonly face: Vec3;
}

function layBoard(edge: Edge, panel: Panel | null): LaidBoard {
  const { batten } = edge;
  const lieAt = (t: number): Lie => {
    const length = unit(derivativeAt(batten, t, 1));
    // Read between rulings a normal may lean a little along the edge.
    const normal = panel ? panel.normalOn(edge, t) : cross([0, 1, 0], length);
    return { length, face: unit(subtract(normal, scale(length, dot(normal, length)))) };
  };
  const places: BoardPlace[] = [];
  let before: Lie | null = null;
  let turn = 0;
  for (const t of parametersOf(batten)) {
    const lie = lieAt(t);
    if (before) turn += turnBetween([before.length, lie.length], [before.face, lie.face]);
    const { vector } = curvatureAt(batten, t);
    places.push({ along: lengthTo(batten, t), bend: bothWays(vector, lie), turn });
    before = lie;
  }
  const pushed = (held: Batten) => pushesOn(held).map((push, i) => bothWays(push, lieAt(batten.knots[i]!))); // a push a knot
  const fast = once(() => pushed(batten));
  const free = once(() => pushed(bendBatten(edge.points, { start: 'natural', end: 'natural' })));
  const onFace = laidOut(places, ({ edgewise }) => edgewise);
  return {
    edge,
    places,
    stations: places.filter((_, i) => i % PIECES === 0),
    pushes: (ends) => (ends === 'fast' ? fast() : free()),
    seen: { onEdge: laidOut(places, ({ flat }) => -flat), onFace },
    crook: Math.max(...onFace.map(([, off]) => Math.abs(off))),
    spareFor: ({ from, to }) => {
      const within = places.filter(({ along }) => along > from && along < to);
      const piece = laidOut(
        [placeAt(places, from), ...within, placeAt(places, to)],
        ({ edgewise }) => edgewise,
      );
      const offs = piece.map(([, off]) => off);
      return Math.max(...offs) - Math.min(...offs);
    },
  };
}

/** A place between two others; before the first and beyond the last, that one. */
function placeAt(places: readonly BoardPlace[], along: number): BoardPlace {
  const [first, last] = [places[0]!, places.at(-1)!]; // a board has two places or more
  if (along <= first.along) return first;
  const next = places.findIndex((place) => place.along >= along);
  if (next < 0) return last;
  const [one, two] = [places[next - 1]!, places[next]!];
  const share = (along - one.along) / (two.along - one.along);
  const mix = (a: number, b: number) => a + share * (b - a);
  return {
    along,
    bend: {
      flat: mix(one.bend.flat, two.bend.flat),
      edgewise: mix(one.bend.edgewise, two.bend.edgewise),
    },
    turn: mix(one.turn, two.turn),
  };
}

function bothWays(vector: Vec3, { length, face }: Lie): BothWays {
  return { flat: dot(vector, face), edgewise: dot(vector, cross(length, face)) };
}

function parametersOf({ knots }: Batten): readonly number[] {
  const inner = Array.from(knots.subarray(1), (knot, i) =>
    Array.from({ length: PIECES }, (_, k) => knots[i]! + ((knot - knots[i]!) * k) / PIECES),
  ).flat();
  return [...inner, knots.at(-1)!]; // a batten has two knots or more
}

/** The plane line of this curvature, its ends on the axis. */
function laidOut(places: readonly BoardPlace[], bendOf: (bend: BothWays) => number): readonly Vec2[] {
  const points: Vec2[] = [[0, 0]];
  let heading = 0;
  for (let i = 1; i < places.length; i++) {
    const [one, two] = [places[i - 1]!, places[i]!];
    const [x, y] = points[i - 1]!;
    const run = two.along - one.along;
    const turn = ((bendOf(one.bend) + bendOf(two.bend)) / 2) * run;
    // The chord of a short arc bears half its turn.
    points.push([x + run * Math.cos(heading + turn / 2), y + run * Math.sin(heading + turn / 2)]);
    heading += turn;
  }
  const end = points.at(-1)!;
  const chord = distance2([0, 0], end);
  const [c, s] = [end[0] / chord, end[1] / chord];
  return points.map(([x, y]): Vec2 => [c * x + s * y, c * y - s * x]);
}
