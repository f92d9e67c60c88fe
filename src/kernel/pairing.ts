import type { Curve } from './curve';
import { cheapestPath } from './lattice';
import { findMinimum } from './roots';
import { twistOf } from './twist';

/** Which point of the second edge each point of the first is ruled to: parameters of both, rising together. */
export interface Pairing {
  readonly first: Float64Array;
  readonly second: Float64Array;
}

/**
 * Pairs the points of two edges so that the surface ruled between them is twisted as little as can be.
 *
 * Where the tangent planes at both ends of a ruling agree, the surface is developable there; the pairing
 * follows the valley of that disagreement through the square of both parameters. Both parameters rise or
 * stay, so rulings never cross; where the valley leaves the square, rulings fan about the end of an edge.
 * A small weight on the length of rulings settles which of many equally good ones to take where the
 * surface is nearly plane.
 *
 * A dynamic programme over a lattice of cells x cells finds the valley, however crooked. Every lattice
 * path crosses each line u + v = constant once, so the ruling on that line is then moved along it to the
 * bottom of the valley, which the lattice alone would miss by up to a cell.
 *
 * Returns 2 * cells + 1 pairs, ends included.
 *
 * Condition: M. P. do Carmo, Differential Geometry of Curves and Surfaces, section 3-5 (ruled surfaces).
 */
export function pairEdges(first: Curve, second: Curve, cells: number, shortness: number): Pairing {
  const a = sampled(first, cells);
  const b = sampled(second, cells);
  if (opposed(a, b)) throw new Error('the two edges of a strip run opposite ways');
  const weight = shortness / typicalLength2(a, b, cells);
  const path = cheapestPath(a, b, cells, weight);
  const lean = settle(first, second, path, cells, weight);
  const pairs = 2 * cells + 1;
  const u = new Float64Array(pairs);
  const v = new Float64Array(pairs);
  for (let k = 0; k < pairs; k++) {
    u[k] = parameter(first, (k + lean[k]!) / (2 * cells));
    v[k] = parameter(second, (k - lean[k]!) / (2 * cells));
  }
  return { first: u, second: v };
}

/** The parameter a share of the way along a curve, exact at both ends. */
function parameter(curve: Curve, share: number): number {
  if (share <= 0) return curve.start;
  if (share >= 1) return curve.end;
  return curve.start + share * (curve.end - curve.start);
}

/** Point and derivative at equal steps of the parameter: six numbers a step. */
function sampled(curve: Curve, cells: number): Float64Array {
  const samples = new Float64Array(6 * (cells + 1));
  const out = new Float64Array(9);
  for (let i = 0; i <= cells; i++) {
    curve.write(parameter(curve, i / cells), out);
    samples.set(out.subarray(0, 6), 6 * i);
  }
  return samples;
}

/** Whether the chord of one edge runs against that of the other. */
function opposed(a: Float64Array, b: Float64Array): boolean {
  const end = a.length - 6;
  return (
    [0, 1, 2].reduce((sum, axis) => sum + (a[end + axis]! - a[axis]!) * (b[end + axis]! - b[axis]!), 0) < 0
  );
}

/** Mean squared distance between the edges: what the length of a ruling is measured against. */
function typicalLength2(a: Float64Array, b: Float64Array, cells: number): number {
  let sum = 0;
  for (let i = 0; i < a.length; i += 6) {
    sum += (b[i]! - a[i]!) ** 2 + (b[i + 1]! - a[i + 1]!) ** 2 + (b[i + 2]! - a[i + 2]!) ** 2;
  }
  if (sum === 0) throw new Error('the two edges of a strip are the same line');
  return sum / (cells + 1);
}

/**
 * Moves each ruling of the path along its line u + v = k to the bottom of the valley, at most one lattice
 * point away. Returns u - v in cells. Rulings would cross where that changes faster than u + v; there
 * the greatest curve below and the least curve above that don't are averaged.
 */
function settle(
  first: Curve,
  second: Curve,
  path: Float64Array,
  cells: number,
  weight: number,
): Float64Array {
  const one = new Float64Array(9);
  const two = new Float64Array(9);
  const last = 2 * cells;
  const lean = new Float64Array(last + 1);
  const fans = (k: number): boolean => Math.abs(2 * path[k]! - k) === Math.min(k, last - k);
  for (let k = 1; k < last; k++) {
    const cost = (x: number): number => {
      first.write(parameter(first, (k + x) / last), one);
      second.write(parameter(second, (k - x) / last), two);
      const dx = two[0]! - one[0]!;
      const dy = two[1]! - one[1]!;
      const dz = two[2]! - one[2]!;
      const bend = twistOf(one[3]!, one[4]!, one[5]!, two[3]!, two[4]!, two[5]!, dx, dy, dz);
      return bend + weight * (dx * dx + dy * dy + dz * dz);
    };
    const reach = Math.min(k, last - k);
    const start = 2 * path[k]! - k;
    // Inside a fan nothing moves; its last ruling may, to find where the fan ends.
    if (fans(k) && fans(k < cells ? k + 1 : k - 1)) {
      lean[k] = start;
      continue;
    }
    const low = Math.max(start - 2, -reach);
    const high = Math.min(start + 2, reach);
    const found = findMinimum(cost, low, high, 1e-6);
    lean[k] = found.at;
    // The search only comes near its bounds; at a fan the bound itself is meant.
    if (low === -reach && cost(low) <= found.value) lean[k] = low;
    if (high === reach && cost(high) <= found.value) lean[k] = high;
  }
  const below = lean.slice();
  const above = lean.slice();
  for (let k = 1; k <= last; k++) {
    below[k] = Math.max(below[k]!, below[k - 1]! - 1);
    above[k] = Math.min(above[k]!, above[k - 1]! + 1);
  }
  for (let k = last - 1; k >= 0; k--) {
    below[k] = Math.max(below[k]!, below[k + 1]! - 1);
    above[k] = Math.min(above[k]!, above[k + 1]! + 1);
  }
  for (let k = 0; k <= last; k++) lean[k] = (below[k]! + above[k]!) / 2;
  return lean;
}
