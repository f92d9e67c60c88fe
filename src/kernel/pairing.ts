import type { Curve } from './curve';
import { misfit } from './misfit';
import { findMinimum } from './roots';

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

/** What a twist within a fan counts for: a cone is free of it, but the least of two fans is wanted. */
const fanShare = 0.05;

/**
 * The path of least total misfit over the lattice from corner to corner: its place on the first edge at each
 * step.
 *
 * A fan about the end of an edge is a cone, so it costs little; but the ruling where it joins the rest is a
 * crease unless it lies in the plane of the edge there, and that counts as much as the same twist all along
 * the strip. Where the edges meet in a point there is no end line to fan towards, and none is favoured.
 */
function cheapestPath(a: Float64Array, b: Float64Array, cells: number, weight: number): Int32Array {
  const width = cells + 1;
  const crease = 2 * cells;
  const startsApart = apart(a, b, 0, 6);
  const endsApart = apart(a, b, 6 * cells, 6 * (cells - 1));
  const fanned = (i: number): boolean => (i === 0 && startsApart) || (i === cells && endsApart);
  const cost = new Float64Array(width * width);
  const total = new Float64Array(width * width);
  const moved = new Uint8Array(width * width);
  for (let i = 0; i < width; i++) {
    const p = 6 * i;
    const share = fanned(i) ? fanShare : 1;
    for (let j = 0; j < width; j++) {
      const q = 6 * j;
      const here = misfit(
        a[p + 3]!,
        a[p + 4]!,
        a[p + 5]!,
        b[q + 3]!,
        b[q + 4]!,
        b[q + 5]!,
        b[q]! - a[p]!,
        b[q + 1]! - a[p + 1]!,
        b[q + 2]! - a[p + 2]!,
        weight,
      );
      const node = i * width + j;
      cost[node] = here;
      if (node === 0) continue;
      // Arriving from the node before on the second edge, and from the one before on the first.
      let onSecond = Infinity;
      let onFirst = Infinity;
      if (j > 0) {
        onSecond = total[node - 1]! + here * share;
        if (j === 1 && i > 0 && startsApart) onSecond += crease * cost[node - 1]!;
        if (j === cells && i < cells && endsApart) onSecond += crease * here;
      }
      if (i > 0) {
        onFirst = total[node - width]! + here * (fanned(j) ? fanShare : 1);
        if (i === 1 && j > 0 && startsApart) onFirst += crease * cost[node - width]!;
        if (i === cells && j < cells && endsApart) onFirst += crease * here;
      }
      total[node] = Math.min(onSecond, onFirst);
      moved[node] = onFirst <= onSecond ? 1 : 0;
    }
  }
  const path = new Int32Array(2 * cells + 1);
  let i = cells;
  for (let k = 2 * cells; k >= 0; k--) {
    path[k] = i;
    i -= moved[i * width + k - i]!;
  }
  return path;
}

/**
 * Whether the edges stand apart at an end by more than two cells of either. Nearer than that the lattice can't tell a
 * fan from the few rulings that run to the end.
 */
function apart(a: Float64Array, b: Float64Array, end: number, next: number): boolean {
  const gap = between(a, end, b, end);
  return gap > 2 * between(a, end, a, next) && gap > 2 * between(b, end, b, next);
}

/** Distance between two samples. */
function between(a: Float64Array, at: number, b: Float64Array, bt: number): number {
  return Math.hypot(b[bt]! - a[at]!, b[bt + 1]! - a[at + 1]!, b[bt + 2]! - a[at + 2]!);
}

/**
 * Moves each ruling of the path along its line u + v = k to the bottom of the valley, at most one lattice
 * point away. Returns u - v in cells. Rulings would cross where that changes faster than u + v; there
 * the greatest curve below and the least curve above that don't are averaged.
 */
function settle(first: Curve, second: Curve, path: Int32Array, cells: number, weight: number): Float64Array {
  const one = new Float64Array(9);
  const two = new Float64Array(9);
  const last = 2 * cells;
  const lean = new Float64Array(last + 1);
  const fans = (k: number): boolean => Math.abs(2 * path[k]! - k) === Math.min(k, last - k);
  for (let k = 1; k < last; k++) {
    const cost = (x: number): number => {
      first.write(parameter(first, (k + x) / last), one);
      second.write(parameter(second, (k - x) / last), two);
      return misfit(
        one[3]!,
        one[4]!,
        one[5]!,
        two[3]!,
        two[4]!,
        two[5]!,
        two[0]! - one[0]!,
        two[1]! - one[1]!,
        two[2]! - one[2]!,
        weight,
      );
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
