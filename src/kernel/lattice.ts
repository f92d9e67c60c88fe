import { twistOf } from './twist';

/** What twist within a fan counts for: a cone is free of it, but the shorter of two fans is wanted. */
const fanShare = 0.05;

/** How the best path arrives at a node: along the second edge, along the first, or along both at once. */
const alongSecond = 0;
const alongFirst = 1;
const alongBoth = 2;

/**
 * The path of least total cost over the lattice of rulings between two edges, from corner to corner: its place
 * on the first edge at each step, in cells. Each node costs its ruling's twist and, by the weight, its squared
 * length. Edges come as six numbers a lattice line: point and derivative.
 *
 * A fan about the end of an edge is a cone, so it costs little; but the ruling where it joins the rest is a
 * crease unless it lies in the plane of the edge there, and that counts as much as the same twist all along
 * the strip. The first and the last step may go along both edges at once: where the edges meet, a step
 * along one of them alone would make a ruling that runs along the other.
 */
export function cheapestPath(a: Float64Array, b: Float64Array, cells: number, weight: number): Float64Array {
  const width = cells + 1;
  const crease = 2 * cells;
  const twist = new Float64Array(width * width);
  const cost = new Float64Array(width * width);
  const total = new Float64Array(width * width);
  const arrival = new Uint8Array(width * width);
  for (let i = 0; i < width; i++) {
    const p = 6 * i;
    const endOfFirst = i === 0 || i === cells;
    for (let j = 0; j < width; j++) {
      const q = 6 * j;
      const endOfSecond = j === 0 || j === cells;
      const dx = b[q]! - a[p]!;
      const dy = b[q + 1]! - a[p + 1]!;
      const dz = b[q + 2]! - a[p + 2]!;
      const bend = twistOf(a[p + 3]!, a[p + 4]!, a[p + 5]!, b[q + 3]!, b[q + 4]!, b[q + 5]!, dx, dy, dz);
      const length = weight * (dx * dx + dy * dy + dz * dz);
      const here = bend + length;
      const node = i * width + j;
      twist[node] = bend;
      cost[node] = here;
      if (node === 0) continue;
      let best = Infinity;
      if (j > 0) {
        best = total[node - 1]! + length + bend * (endOfFirst ? fanShare : 1);
        if (j === 1 && i > 0) best += crease * twist[node - 1]!;
        if (j === cells && i < cells) best += crease * bend;
        arrival[node] = alongSecond;
      }
      if (i > 0) {
        let other = total[node - width]! + length + bend * (endOfSecond ? fanShare : 1);
        if (i === 1 && j > 0) other += crease * twist[node - width]!;
        if (i === cells && j < cells) other += crease * bend;
        if (other <= best) {
          best = other;
          arrival[node] = alongFirst;
        }
      }
      if (i === j && (i === 1 || i === cells)) {
        // The middle of the step counts as the nearer inner node does.
        const before = node - width - 1;
        const both = total[before]! + here + (i === 1 ? here : cost[before]!);
        if (both <= best) {
          best = both;
          arrival[node] = alongBoth;
        }
      }
      total[node] = best;
    }
  }
  const path = new Float64Array(2 * cells + 1);
  let i = cells;
  for (let k = 2 * cells; k > 0; k--) {
    path[k] = i;
    const arrived = arrival[i * width + k - i]!;
    if (arrived === alongBoth) path[--k] = i - 0.5;
    if (arrived !== alongSecond) i--;
  }
  return path;
}
