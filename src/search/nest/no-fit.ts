/**
 * Where a shape may not lie for another: the no-fit polygon, the places of the one's corner at which it would lie on
 * the other. It is the sum of the one and the other turned by half a turn (H. Minkowski).
 */
import { FillRule, minkowskiSum, type Path64, union } from 'clipper2-ts';
import { type NestShape, rectRing, type Ring, turnedGrown } from './shapes';
import { inTurn, turnedAbout, turnedPoint, turns, undone } from './turn';

export interface NoFit {
  /** The outline, and the holes in it where the shape lies in a hollow of the other. */
  readonly rings: readonly Ring[];
  readonly left: number;
  readonly low: number;
  readonly right: number;
  readonly high: number;
}

const toPath = (ring: Ring, sign: number): Path64 =>
  Array.from({ length: ring.length / 2 }, (_, i) => ({ x: sign * ring[2 * i]!, y: sign * ring[2 * i + 1]! }));

export type NoFits = (fixed: NestShape, moved: NestShape) => NoFit;

/** More shapes than a search meets; two of them and a turn make one whole number. */
const MANY = 2 ** 20;

/**
 * Worked out once for two patterns and how the one is turned to the other: two shapes that are turned together keep each
 * other off as before, and seen from the other shape all is turned by half a turn.
 */
export function makeNoFits(): NoFits {
  const known = new Map<number, NoFit>();
  const ofPatterns = new Map<number, NoFit>();

  const find = (fixed: NestShape, moved: NestShape): NoFit => {
    const key = fixed.id * MANY + moved.id;
    const told = known.get(key);
    if (told) return told;
    const found = fixed.isRect && moved.isRect ? ofRects(fixed.grown, moved.grown) : byPattern(fixed, moved);
    known.set(key, found);
    return found;
  };

  const byPattern = (fixed: NestShape, moved: NestShape): NoFit => {
    if (fixed.pattern.id > moved.pattern.id) return mapped(find(moved, fixed), (x, y) => [-x, -y]);
    const turn = inTurn(moved.turn, undone(fixed.turn));
    const key = (fixed.pattern.id * MANY + moved.pattern.id) * turns.length + turn;
    const { pattern } = moved;
    const corner = turnedPoint(turn, pattern, 0, 0);
    const found = ofPatterns.get(key) ?? noFit(fixed.pattern.grown, turnedGrown(pattern, turn));
    ofPatterns.set(key, found);
    // Where each pattern's corner comes to lie as its box is drawn back to the origin.
    const [fx, fy] = turnedPoint(fixed.turn, fixed.pattern, 0, 0);
    const [mx, my] = turnedPoint(moved.turn, pattern, 0, 0);
    return mapped(found, (x, y) => {
      const [u, v] = turnedAbout(fixed.turn, x + corner[0], y + corner[1]);
      return [u + fx - mx, v + fy - my];
    });
  };
  return find;
}

const mapped = ({ rings }: NoFit, to: (x: number, y: number) => readonly [number, number]): NoFit =>
  boxed(
    rings.map((ring) =>
      Float64Array.from(
        Array.from({ length: ring.length / 2 }, (_, i) => to(ring[2 * i]!, ring[2 * i + 1]!)).flat(),
      ),
    ),
  );

/** Corners 0 and 2 of a rectangle are its lower left and its upper right. */
const ofRects = (a: Ring, b: Ring): NoFit =>
  boxed([rectRing(a[0]! - b[4]!, a[1]! - b[5]!, a[4]! - b[0]!, a[5]! - b[1]!)]);

function noFit(a: Ring, b: Ring): NoFit {
  const path = toPath(a, 1);
  const pattern = toPath(b, -1);
  const [first, last] = [path[0]!, pattern[0]!];
  // The sum of the two outlines tells where they cross; a corner of each, carried along the other, where one holds
  // the other whole.
  const inside = [
    path.map(({ x, y }) => ({ x: x + last.x, y: y + last.y })),
    pattern.map(({ x, y }) => ({ x: x + first.x, y: y + first.y })),
  ];
  const sum = union([...minkowskiSum(pattern, path, true), ...inside], FillRule.NonZero);
  return boxed(sum.map((ring) => Float64Array.from(ring.flatMap(({ x, y }) => [x, y]))));
}

function boxed(rings: readonly Ring[]): NoFit {
  let [left, low, right, high] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const ring of rings) {
    for (let i = 0; i < ring.length; i += 2) {
      left = Math.min(left, ring[i]!);
      right = Math.max(right, ring[i]!);
      low = Math.min(low, ring[i + 1]!);
      high = Math.max(high, ring[i + 1]!);
    }
  }
  return { rings, left, low, right, high };
}

/** Deeper than this inside, ticks, and the shapes lie on one another; less is rounding. */
const DEEP = 2;

/** Whether a place lies inside, by more than rounding. */
export function forbids({ rings, left, low, right, high }: NoFit, x: number, y: number): boolean {
  if (x <= left + DEEP || x >= right - DEEP || y <= low + DEEP || y >= high - DEEP) return false;
  let inside = false;
  for (const ring of rings) {
    let ax = ring[ring.length - 2]!;
    let ay = ring[ring.length - 1]!;
    for (let i = 0; i < ring.length; i += 2) {
      const bx = ring[i]!;
      const by = ring[i + 1]!;
      if (ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax)) inside = !inside;
      ax = bx;
      ay = by;
    }
  }
  return inside && clearance2(rings, x, y) > DEEP * DEEP;
}

/** Square of the distance to the nearest side. */
function clearance2(rings: readonly Ring[], x: number, y: number): number {
  let least = Infinity;
  for (const ring of rings) {
    let ax = ring[ring.length - 2]!;
    let ay = ring[ring.length - 1]!;
    for (let i = 0; i < ring.length; i += 2) {
      const bx = ring[i]!;
      const by = ring[i + 1]!;
      const dx = bx - ax;
      const dy = by - ay;
      const squared = dx * dx + dy * dy;
      const along = squared === 0 ? 0 : ((x - ax) * dx + (y - ay) * dy) / squared;
      const share = along < 0 ? 0 : along > 1 ? 1 : along;
      const ox = x - ax - share * dx;
      const oy = y - ay - share * dy;
      const off = ox * ox + oy * oy;
      if (off < least) least = off;
      ax = bx;
      ay = by;
    }
  }
  return least;
}
