import type { Curve } from './curve';
import { pairEdges } from './pairing';
import type { Pairing } from './pairing';
import { rulingEnd, rulingOf } from './ruling';
import type { StripEdge, Ruling, RulingEnd } from './ruling';
import { layFlat } from './sheet';
import type { LaidStrip } from './sheet';
import type { Vec3 } from './vec';

/** The panel between two edges: in space, and laid flat. */
export interface Strip extends LaidStrip {
  readonly first: Curve;
  readonly second: Curve;
  readonly rulings: readonly Ruling[];
  /** The greatest twist, rad, and the index of its ruling. */
  readonly mostTwist: { readonly twist: number; readonly ruling: number };
  /** The tightest bend across the rulings, m, and the index of its ruling; null for a flat strip. */
  readonly leastRadius: { readonly radius: number; readonly ruling: number } | null;
}

export interface StripOptions {
  /** Lattice cells along each edge; the strip has twice as many pieces. 64 unless given. */
  readonly cells?: number;
  /** Squared twist, rad2, that a ruling may take on to save one usual length, squared. 1e-4 unless given. */
  readonly shortness?: number;
}

/**
 * The developable or least twisted panel between two edges that run the same way, and its flat sheet.
 *
 * Normals are (first edge to second) x (along the edge): for edges that run forward, the first nearer the
 * keel, they point outward on the port side. The edges may meet in a point at either end, and either may
 * stand still in one (the apex of a cone).
 *
 * Edges keep their length on the sheet: the chord of each short piece is lengthened by what it lost to the
 * bend of the surface, so corners and area of a developable strip converge with the third power of the
 * cell. A strip that can't be developed has no exact flat shape; `mostTwist` tells how far it is from one.
 *
 * Throws when the edges are one and the same line or run opposite ways, or when there are fewer than 2 cells.
 *
 * Source: M. P. do Carmo, Differential Geometry of Curves and Surfaces, sections 3-5 and 4-4 (ruled
 * surfaces; curvature of a curve within a surface survives bending).
 */
export function spanStrip(first: Curve, second: Curve, options: StripOptions = {}): Strip {
  const cells = options.cells ?? 64;
  if (!Number.isInteger(cells) || cells < 2) throw new Error(`a strip needs at least 2 cells; got ${cells}`);
  const pairs = pairEdges(first, second, cells, options.shortness ?? 1e-4);
  const starts: RulingEnd[] = [];
  const stops: RulingEnd[] = [];
  const one = new Float64Array(9);
  const two = new Float64Array(9);
  // Pairs are two lists of the same length, and so are the ends made from them.
  for (let k = 0; k < pairs.first.length; k++) {
    first.write(pairs.first[k]!, one);
    second.write(pairs.second[k]!, two);
    const ruling: Vec3 = [two[0]! - one[0]!, two[1]! - one[1]!, two[2]! - one[2]!];
    starts.push(rulingEnd(one, ruling));
    stops.push(rulingEnd(two, ruling));
  }
  const rulings = starts.map((start, k) =>
    rulingOf(pairs.first[k]!, pairs.second[k]!, start, stops[k]!, fanAt(first, second, pairs, k)),
  );
  const whole = rulings.map(
    (ruling, k) => ruling ?? meeting(rulings, k, pairs, starts[k]!.point, stops[k]!.point),
  );
  return { first, second, rulings: whole, ...layFlat(starts, stops), ...extremes(whole) };
}

/** The edge whose end point a ruling shares with a neighbour, if any. */
function fanAt(first: Curve, second: Curve, pairs: Pairing, k: number): StripEdge | null {
  const shares = (of: Float64Array, curve: Curve): boolean =>
    (of[k] === curve.start || of[k] === curve.end) && (of[k] === of[k - 1] || of[k] === of[k + 1]);
  if (shares(pairs.first, first)) return 'first';
  return shares(pairs.second, second) ? 'second' : null;
}

/** A ruling that shows no plane, as where the edges meet: it takes the normal of the nearest that does. */
function meeting(
  rulings: readonly (Ruling | null)[],
  k: number,
  pairs: Pairing,
  from: Vec3,
  to: Vec3,
): Ruling {
  const near = rulings.slice(k).find((r) => r !== null) ?? rulings.slice(0, k).findLast((r) => r !== null);
  if (!near) throw new Error('the two edges of a strip make no surface');
  const normal = near.fromNormal;
  return {
    u: pairs.first[k]!,
    v: pairs.second[k]!,
    from,
    to,
    fromNormal: normal,
    toNormal: normal,
    twist: 0,
    fan: null,
    radius: null,
  };
}

function extremes(rulings: readonly Ruling[]): Pick<Strip, 'mostTwist' | 'leastRadius'> {
  let mostTwist = { twist: 0, ruling: 0 };
  let leastRadius: { radius: number; ruling: number } | null = null;
  rulings.forEach(({ twist, radius }, ruling) => {
    if (twist > mostTwist.twist) mostTwist = { twist, ruling };
    if (radius !== null && radius < (leastRadius?.radius ?? Infinity)) leastRadius = { radius, ruling };
  });
  return { mostTwist, leastRadius };
}
