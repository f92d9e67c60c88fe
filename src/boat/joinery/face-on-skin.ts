/**
 * How the face of a long timber lies against the skin between the frames.
 *
 * At the frames it lies in notches and is true. Between them the board goes its own way: its line is that of a board
 * held at the stations alone, and its face turns evenly from one notch to the next, as a board twisted at its ends does.
 * The skin runs fair through the same stations on the ruled surface of its panel. A keelson doesn't turn at all: it
 * stays square to the centreline plane, and the panels fall away from it to both sides.
 *
 * Distances are square to the skin: + where wood stands proud of it, outward, - where it lacks.
 */
import {
  type Batten,
  bendBatten,
  derivativeAt,
  dot,
  lengthTo,
  parameterAtLength,
  parameterAtX,
  pointAt,
  scale,
  splineAt,
  subtract,
  unit,
  type Vec3,
} from '../../kernel';
import { turnBetween } from '../../kernel/board-turn';
import type { Edge } from '../hull/edge';
import type { Hull } from '../hull/hull';
import type { Panel } from '../hull/panel';
import type { BoardEnds } from './laid-board';

export interface FacePlace {
  /** Length along the edge from its after end, m. */
  readonly along: number;
  /** Off the skin, m: at the edge of the hull along which the timber lies, and at the far edge of its face. */
  readonly line: number;
  readonly far: number;
}

export interface FaceOnSkin {
  /** From aft forward, several a bay, the stations among them. */
  readonly places: readonly FacePlace[];
  /** Held to the ends. */
  readonly at: (along: number) => FacePlace;
}

/** Pieces of a bay. */
const PIECES = 16;

/**
 * @param panel the one of the two at this edge that the face lies on
 * @param reach from the edge across the face to its far edge, m
 * @throws the fault of an edge or a panel that can't be drawn
 */
export function faceOnSkin(edge: Edge, panel: Panel, reach: number, ends: BoardEnds): FaceOnSkin {
  const { batten } = edge;
  const own = ownCurve(edge, ends);
  const lieAt = (t: number): Lie => {
    const length = unit(derivativeAt(batten, t, 1));
    const normal = panel.normalOn(edge, t);
    // Read between rulings a normal may lean a little along the edge.
    return { length, normal: unit(subtract(normal, scale(length, dot(normal, length)))) };
  };
  const wind = edge.index === 0 ? null : windAlong(batten, lieAt);
  // On the panel outside its inner edge the face reaches outward from it, else back toward the keel.
  const side = edge === panel.inner ? -1 : 1;
  const placeAt = (along: number): FacePlace => {
    const t = parameterAtLength(batten, along);
    const { normal } = lieAt(t);
    const line = dot(subtract(pointAt(own, t), pointAt(batten, t)), normal);
    return { along, line, far: line + reach * (wind ? Math.sin(side * wind(along)) : normal[1]) };
  };
  const places = parametersOf(batten).map((t) => placeAt(lengthTo(batten, t)));
  return { places, at: (along) => placeAt(Math.max(0, Math.min(edge.length, along))) };
}

/** The line of a board through the stations, with ends free to turn, or turned as the fair line leads on. */
const ownCurve = ({ batten, points }: Edge, ends: BoardEnds): Batten =>
  ends === 'fast' ? batten : bendBatten(points, { start: 'natural', end: 'natural' });

/** Direction of the length, and the skin's outward normal, unit and square to each other. */
interface Lie {
  readonly length: Vec3;
  readonly normal: Vec3;
}

/** How far the face, turned evenly from station to station, is turned beyond the skin there, rad. */
function windAlong(batten: Batten, lieAt: (t: number) => Lie): (along: number) => number {
  const lies = parametersOf(batten).map((t) => ({ ...lieAt(t), along: lengthTo(batten, t) }));
  let turned = 0;
  const turns = lies.map((lie, i) => {
    const before = lies[i - 1];
    if (before) turned += turnBetween([before.length, lie.length], [before.normal, lie.normal]);
    return { along: lie.along, turn: turned };
  });
  const stations = turns.filter((_, i) => i % PIECES === 0);
  return (along) => between(stations, along) - between(turns, along);
}

function between(turns: readonly { readonly along: number; readonly turn: number }[], along: number): number {
  const next = Math.max(
    1,
    turns.findIndex((one) => one.along >= along),
  );
  const [one, two] = [turns[next - 1]!, turns[next]!]; // a batten has two stations or more
  const share = (along - one.along) / (two.along - one.along);
  return one.turn + share * (two.turn - one.turn);
}

function parametersOf({ knots }: Batten): readonly number[] {
  const inner = Array.from(knots.subarray(1), (knot, i) =>
    Array.from({ length: PIECES }, (_, k) => knots[i]! + ((knot - knots[i]!) * k) / PIECES),
  ).flat();
  return [...inner, knots.at(-1)!]; // a batten has two knots or more
}

/** Where a stick from the keelson to the chine rocks, or lets light through. */
export interface StickPlace {
  /** Station aft of it. */
  readonly after: number;
  /** Share of that bay. */
  readonly share: number;
  /** How much more the keelson stands out than the chine between the two stations, m; - where it lacks. */
  readonly proud: number;
}

/**
 * What the keelson's own curve and the first chine's differ by in profile: how far each stands below its straight line
 * from station to station, at the same share of the bay. Nothing where the hull has no chine.
 */
export function underStick(hull: Hull, ends: BoardEnds): readonly StickPlace[] {
  const [keel, chine] = hull.edges;
  if (!keel || !chine || hull.edges.length < 3) return [];
  const curves = [keel, chine].map((edge) => ({ edge, own: ownCurve(edge, ends) }));
  return hull.stations.slice(1).flatMap((_, after) =>
    Array.from({ length: PIECES + 1 }, (_place, k): StickPlace => {
      const share = k / PIECES;
      const [atKeel, atChine] = curves.map(({ edge, own }) => belowChord(edge, own, after, share));
      return { after, share, proud: atKeel! - atChine! };
    }),
  );
}

function belowChord({ points }: Edge, own: Batten, after: number, share: number): number {
  const [from, to] = [points[after]!, points[after + 1]!]; // one point a station
  const x = from[0] + share * (to[0] - from[0]);
  const t = parameterAtX(own, x) ?? own.knots[after]!;
  return from[2] + share * (to[2] - from[2]) - splineAt(own.z, t);
}
