/** Boats whose sheer is a curve that has a closed form. */
import { starter, type Table } from '../../../src/boat';

/** A boat whose sheer has these half-breadths and heights, mm, at these x; the keel and chine lie under it. */
export function boatWithSheer(points: readonly (readonly [x: number, y: number, z: number])[]): Table {
  return {
    ...starter('ferry-dory')!,
    stations: points.map(([x, y, z], i) => ({
      name: i === 0 ? 'transom' : i === points.length - 1 ? 'bow' : `frame ${i}`,
      points: [
        { x, y: 0, z: 0 },
        { x, y: y - 200, z: 0 },
        { x, y, z },
      ],
    })),
  };
}

/** One circle of radius 8 m in plan, 6 m long, 21 stations. */
export const round = boatWithSheer(
  Array.from({ length: 21 }, (_, i) => {
    const x = 300 * i;
    return [x, 1200 + Math.sqrt(8000 ** 2 - (x - 3000) ** 2) - 8000, 600] as const;
  }),
);

/** Level but for the middle one of three stations, 4 m between the ends, which stands 10 mm high. */
export const onThreeSupports = boatWithSheer([
  [0, 600, 600],
  [2000, 700, 610],
  [4000, 600, 600],
]);
