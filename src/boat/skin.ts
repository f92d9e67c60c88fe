/**
 * The two faces of the skin: from offsets to its outside to those of its inside, and back.
 *
 * How a corner moves is said in inset.ts.
 */
import { subtract, type Vec3 } from '../kernel';
import { buildHull, type Hull } from './hull';
import { insetPoint, type SkinThickness } from './inset';
import type { Offsets } from './offsets';

export type { SkinThickness } from './inset';

/**
 * Offsets to the other face of the skin.
 *
 * Inside to outside undoes outside to inside: it is found by repeating the way in until it lands on what
 * was given, to 1e-12 m.
 *
 * @throws with the hull's fault if it has one; if the skin is too thick for the hull's shape
 */
export function otherFace(hull: Hull, thickness: SkinThickness): Offsets {
  return hull.offsets.offsetsTo === 'outside of skin'
    ? insideOf(hull, thickness)
    : outsideOf(hull, thickness);
}

function insideOf(hull: Hull, thickness: SkinThickness): Offsets {
  const points = hull.edges.map((edge) =>
    hull.stations.map((station) => insetPoint(hull, edge, station, thickness)),
  );
  return { ...hull.offsets, offsetsTo: 'inside of skin', points };
}

function outsideOf(hull: Hull, thickness: SkinThickness): Offsets {
  const wanted = hull.edges.map(({ points }) => points);
  let guess = wanted;
  for (let round = 0; round < 60; round++) {
    const outside = buildHull({ ...hull.offsets, offsetsTo: 'outside of skin', points: guess });
    const inside = outside.edges.map((edge) =>
      outside.stations.map((station) => insetPoint(outside, edge, station, thickness)),
    );
    let miss = 0;
    guess = guess.map((line, e) =>
      line.map((point, s): Vec3 => {
        const step = subtract(wanted[e]![s]!, inside[e]![s]!); // three tables of one shape
        miss = Math.max(miss, ...step.map(Math.abs));
        return [point[0] + step[0], point[1] + step[1], point[2] + step[2]];
      }),
    );
    if (miss < 1e-12) return { ...hull.offsets, offsetsTo: 'outside of skin', points: guess };
  }
  throw new Error('the skin is too thick for the shape of this hull: its outside can not be found');
}
