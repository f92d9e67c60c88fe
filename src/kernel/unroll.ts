import type { Vec2 } from './vec';

/** One strip's rulings as the unrolling needs them; every list has one number a ruling. */
export interface Fold {
  /** Length of each ruling. */
  readonly across: Float64Array;
  /** Distance on the sheet from each ruling to the next, along the first edge and along the second. */
  readonly first: Float64Array;
  readonly second: Float64Array;
  /** Distance from first edge at a ruling to second edge at the next, and the other diagonal. */
  readonly rising: Float64Array;
  readonly falling: Float64Array;
}

/** A strip laid flat: the points of both edges, m, one a ruling. */
export interface Flat {
  readonly first: readonly Vec2[];
  readonly second: readonly Vec2[];
}

/**
 * Lays a strip flat triangle by triangle, each by its three sides, so all lengths given are kept. The piece
 * between two rulings is cut along its shorter diagonal. The first edge's chord lies along +x from the
 * origin, the second edge to the left of it.
 */
export function unroll(fold: Fold): Flat {
  const n = fold.across.length;
  const p = new Float64Array(2 * n);
  const q = new Float64Array(2 * n);
  q[1] = fold.across[0]!;
  for (let k = 0; k + 1 < n; k++) {
    const i = 2 * k;
    const next = i + 2;
    // All indices lie inside lists of n rulings.
    const e1 = fold.first[k]!;
    const e2 = fold.second[k]!;
    const width = fold.across[k + 1]!;
    // A side shorter than this against the ruling is lost in rounding: the edge stands still.
    const none = 1e-8 * width;
    if (fold.across[k] === 0) {
      // The edges part from one point: the first piece is a single triangle, or only a line.
      p[next] = p[i]! + e1;
      p[next + 1] = p[i + 1]!;
      if (e1 > none) lay(p, i, e2, p, next, width, 1, q, next);
      else q.set([p[i]!, p[i + 1]! + width], next);
    } else if (e1 <= none) {
      p.copyWithin(next, i, next);
      lay(p, i, width, q, i, e2, -1, q, next);
    } else if (e2 <= none) {
      q.copyWithin(next, i, next);
      lay(p, i, e1, q, i, width, -1, p, next);
    } else if (width === 0) {
      lay(p, i, e1, q, i, e2, -1, p, next);
      q.set(p.subarray(next, next + 2), next);
    } else if (fold.rising[k]! <= fold.falling[k]!) {
      lay(p, i, fold.rising[k]!, q, i, e2, -1, q, next);
      lay(p, i, e1, q, next, width, -1, p, next);
    } else {
      lay(p, i, e1, q, i, fold.falling[k]!, -1, p, next);
      lay(p, next, width, q, i, e2, -1, q, next);
    }
  }
  return turned(p, q);
}

/** Puts a point at two distances from two points already laid; side 1 is left of the line from a to b, -1 right. */
function lay(
  as: Float64Array,
  a: number,
  fromA: number,
  bs: Float64Array,
  b: number,
  fromB: number,
  side: number,
  into: Float64Array,
  at: number,
): void {
  const ax = as[a]!;
  const ay = as[a + 1]!;
  const dx = bs[b]! - ax;
  const dy = bs[b + 1]! - ay;
  const base2 = dx * dx + dy * dy;
  const along = base2 === 0 ? 0 : (base2 + fromA * fromA - fromB * fromB) / (2 * base2);
  const off2 = base2 === 0 ? 0 : (fromA * fromA) / base2 - along * along;
  // Rounding can make a triangle of no width impossible by a hair.
  const off = side * Math.sqrt(Math.max(0, off2));
  into[at] = ax + along * dx - off * dy;
  into[at + 1] = ay + along * dy + off * dx;
}

/** Turns both edges so that the chord of the first lies along +x from the origin. */
function turned(p: Float64Array, q: Float64Array): Flat {
  const end = p.length - 2;
  const dx = p[end]! - p[0]!;
  const dy = p[end + 1]! - p[1]!;
  const chord = Math.hypot(dx, dy);
  const cosine = chord === 0 ? 1 : dx / chord;
  const sine = chord === 0 ? 0 : dy / chord;
  const turn = (from: Float64Array): Vec2[] => {
    const points: Vec2[] = [];
    for (let i = 0; i < from.length; i += 2) {
      const x = from[i]! - p[0]!;
      const y = from[i + 1]! - p[1]!;
      points.push([cosine * x + sine * y, cosine * y - sine * x]);
    }
    return points;
  };
  return { first: turn(p), second: turn(q) };
}
