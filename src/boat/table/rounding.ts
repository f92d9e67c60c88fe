import type { OffsetPoint, Offsets } from './offsets';

/** Closer than this, m, points are one place and a half-breadth is none: what sums of entries leave over. */
const ROUNDING = 1e-9;

/** The offsets with points a rounding apart made one: the keel and the chine at a stem, a stem on the centreline. */
export function withoutRounding(offsets: Offsets): Offsets {
  const points: (readonly OffsetPoint[])[] = [];
  for (const line of offsets.points) {
    const inner = points.at(-1);
    points.push(
      line.map((point, station): OffsetPoint => {
        const [x, y, z] = point;
        const settled: OffsetPoint = y !== null && Math.abs(y) < ROUNDING ? [x, 0, z] : point;
        const below = inner?.[station];
        return below && samePlace(below, settled) ? below : settled;
      }),
    );
  }
  return { ...offsets, points };
}

function samePlace(a: OffsetPoint, b: OffsetPoint): boolean {
  return a.every((value, axis) => {
    const other = b[axis] ?? null;
    return value !== null && other !== null && Math.abs(value - other) < ROUNDING;
  });
}
