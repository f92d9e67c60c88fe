import type { Curve } from './curve';
import type { Mesh } from './mesh';
import type { Strip } from './strip';
import type { Vec3 } from './vec';

/** Strips side by side as one mesh, with the points of each edge, first edge of the first strip to last of the last. */
export interface StripsMesh {
  readonly mesh: Mesh;
  readonly edges: readonly (readonly Vec3[])[];
}

/**
 * The mesh of strips that lie side by side, each sharing its second edge with the next one's first. Both sides
 * of a shared edge use the same points, those of both strips' rulings, so the seam holds water. Points lie on
 * the edges themselves, so volume and area converge with the square of the strips' cell.
 *
 * Throws when neighbouring strips don't share an edge.
 */
export function meshOfStrips(strips: readonly Strip[]): StripsMesh {
  const first = strips[0];
  if (!first) throw new Error('a mesh needs at least 1 strip; got none');
  const keel = rising(first.rulings.map((ruling) => ruling.u));
  const parameters = [keel];
  const edges = [pointsOf(first.first, keel)];
  strips.forEach((strip, i) => {
    const next = strips[i + 1];
    if (next && !sameCurve(strip.second, next.first)) {
      throw new Error(`strips ${i + 1} and ${i + 2} don't share an edge`);
    }
    const own = strip.rulings.map((ruling) => ruling.v);
    const places = rising(next ? [...own, ...next.rulings.map((ruling) => ruling.u)] : own);
    parameters.push(places);
    edges.push(pointsOf(strip.second, places));
  });
  // Each edge's points follow those of the edge before it.
  const offsets = edges.map((_, i) => edges.slice(0, i).reduce((sum, edge) => sum + edge.length, 0));
  const triangles: number[] = [];
  strips.forEach((strip, i) => {
    fill(strip, parameters[i]!, offsets[i]!, parameters[i + 1]!, offsets[i + 1]!, triangles);
  });
  const mesh = { points: Float64Array.from(edges.flat(2)), triangles: Uint32Array.from(triangles) };
  return { mesh, edges };
}

/** Fills each piece between two rulings: fans about one corner over the points on the first edge, then on the second. */
function fill(
  strip: Strip,
  onFirst: readonly number[],
  first: number,
  onSecond: readonly number[],
  second: number,
  triangles: number[],
): void {
  let p = 0;
  let q = 0;
  for (const ruling of strip.rulings) {
    // Every ruling's parameters are among the edges' own, so both walks stop on it.
    while (onFirst[p]! < ruling.u) {
      triangles.push(first + p, second + q, first + p + 1);
      p++;
    }
    while (onSecond[q]! < ruling.v) {
      triangles.push(first + p, second + q, second + q + 1);
      q++;
    }
  }
}

function pointsOf(curve: Curve, parameters: readonly number[]): readonly Vec3[] {
  const out = new Float64Array(9);
  return parameters.map((t): Vec3 => {
    curve.write(t, out);
    return [out[0]!, out[1]!, out[2]!];
  });
}

/** Numbers in order, each once. */
function rising(values: readonly number[]): readonly number[] {
  return Float64Array.from(values)
    .sort()
    .reduce<number[]>((kept, value) => {
      if (value !== kept[kept.length - 1]) kept.push(value);
      return kept;
    }, []);
}

function sameCurve(a: Curve, b: Curve): boolean {
  if (a === b) return true;
  if (a.start !== b.start || a.end !== b.end) return false;
  const places = [0, 0.37, 1].map((share) => a.start + share * (a.end - a.start));
  const [one, two] = [pointsOf(a, places).flat(), pointsOf(b, places).flat()];
  return one.every((value, i) => value === two[i]);
}
