/**
 * An edge of the hull: a long line, as a batten bent through its points at the stations.
 */
import {
  add,
  type Batten,
  bendBatten,
  derivativeAt,
  duckJumps,
  findMinimum,
  lengthTo,
  norm,
  parameterAtX,
  pointAt,
  scale,
  splineAt,
  tightest,
  type Vec3,
} from '../../kernel';
import type { Named } from '../table/named';
import { once } from '../once';

/** How an edge runs at one place, as rise over run going forward. */
export interface Slopes {
  /** dy/dx: + where the hull widens going forward. */
  readonly plan: number;
  /** dz/dx: + where the edge rises going forward. */
  readonly profile: number;
}

/** A place on an edge. */
export interface EdgePlace extends Slopes {
  readonly point: Vec3;
  /** Length along the edge from its after end, m. */
  readonly along: number;
  /** Parameter of the batten there. */
  readonly parameter: number;
}

/** The tightest place of an edge. */
export interface EdgeBend {
  readonly radius: number;
  readonly x: number;
  /** Length along the edge from its after end, m. */
  readonly along: number;
}

/** Everything but the names and points is worked out when first asked for. */
export interface Edge extends Named {
  /** 0 for the keel, counted outward. */
  readonly index: number;
  /** One a station, aft to forward, m. */
  readonly points: readonly Vec3[];
  readonly batten: Batten;
  readonly length: number;
  /** Length along the edge from its after end to each station, m. */
  readonly arcs: readonly number[];
  readonly slopes: readonly Slopes[];
  /** Unit-free direction of the edge at each station, going forward (derivative by chord length). */
  readonly directions: readonly Vec3[];
  /** Force of the duck at each inner station on the batten, over the batten's EI, 1/m2. Zero at both ends. */
  readonly ducks: readonly Vec3[];
  /** Null where the edge is straight. */
  readonly leastRadius: EdgeBend | null;
  /** Middle of the batten's length, m. */
  readonly centre: Vec3;
  /** Greatest half-breadth along the batten, m. */
  readonly greatestHalfBreadth: number;
  /** Points at equal steps of the batten's parameter, ends included, m: for drawing. */
  polyline(count: number): readonly Vec3[];
  /** The place at x, or null where the edge does not reach it. */
  atX(x: number): EdgePlace | null;
}

/**
 * An edge through its points: at least two, going forward.
 *
 * @param points asked for when first needed; throws the fault that spoils the edge, if there is one
 */
export function makeEdge(named: Named, index: number, points: () => readonly Vec3[]): Edge {
  const batten = once(() => bendBatten(points()));
  const directions = once(() => Array.from(batten().knots, (knot) => derivativeAt(batten(), knot, 1)));
  const slopes = once(() => directions().map((direction) => slopesOf(direction, named.label)));
  const ducks = once((): readonly Vec3[] => [[0, 0, 0], ...duckJumps(batten()), [0, 0, 0]]);
  const leastRadius = once((): EdgeBend | null => {
    const found = tightest(batten());
    return found && { radius: found.radius, x: found.point[0], along: lengthTo(batten(), found.parameter) };
  });
  const centre = once(() => middleOf(batten()));
  const widest = once(() => greatestHalfBreadth(batten()));
  return {
    name: named.name,
    label: named.label,
    index,
    get points() {
      return points();
    },
    get batten() {
      return batten();
    },
    get length() {
      return batten().length;
    },
    get arcs() {
      return Array.from(batten().lengths);
    },
    get slopes() {
      return slopes();
    },
    get directions() {
      return directions();
    },
    get ducks() {
      return ducks();
    },
    get leastRadius() {
      return leastRadius();
    },
    get centre() {
      return centre();
    },
    get greatestHalfBreadth() {
      return widest();
    },
    polyline: (count) => polylineOf(batten(), count),
    atX: (x) => placeAt(batten(), x, named.label),
  };
}

function polylineOf(batten: Batten, count: number): readonly Vec3[] {
  const end = batten.knots.at(-1)!; // a batten has two knots or more
  return Array.from({ length: count }, (_, k) => pointAt(batten, (end * k) / (count - 1)));
}

function placeAt(batten: Batten, x: number, label: string): EdgePlace | null {
  const parameter = parameterAtX(batten, x);
  if (parameter === null) return null;
  return {
    parameter,
    point: pointAt(batten, parameter),
    along: lengthTo(batten, parameter),
    ...slopesOf(derivativeAt(batten, parameter, 1), label),
  };
}

function slopesOf(direction: Vec3, label: string): Slopes {
  const [dx, dy, dz] = direction;
  // The direction has a length near 1; steeper than 1 in 1000 off plumb no longer counts as going forward.
  if (dx < 1e-3)
    throw new Error(`the ${label} stands plumb or turns back somewhere, so it has no slope there`);
  return { plan: dy / dx, profile: dz / dx };
}

/** Middle of the length, by four places in each bay, each counted for the length it stands for. */
function middleOf(batten: Batten): Vec3 {
  const { knots } = batten;
  const places = 4;
  let length = 0;
  let moment: Vec3 = [0, 0, 0];
  for (let i = 0; i + 1 < knots.length; i++) {
    const step = (knots[i + 1]! - knots[i]!) / places;
    for (let k = 0; k < places; k++) {
      const t = knots[i]! + (k + 0.5) * step;
      const piece = norm(derivativeAt(batten, t, 1)) * step;
      length += piece;
      moment = add(moment, scale(pointAt(batten, t), piece));
    }
  }
  return scale(moment, 1 / length);
}

/** The batten bulges a little beyond its points; its peak lies beside the widest of them. */
function greatestHalfBreadth(batten: Batten): number {
  const { knots, points } = batten;
  const widest = points.reduce((best, point, i) => (point[1] > points[best]![1] ? i : best), 0);
  const low = knots[Math.max(0, widest - 1)]!;
  const high = knots[Math.min(knots.length - 1, widest + 1)]!;
  const peak = findMinimum((t) => -splineAt(batten.y, t), low, high);
  return Math.max(points[widest]![1], -peak.value);
}
