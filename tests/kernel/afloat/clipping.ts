/** Sections cut off by the water's line, by a general-purpose library for polygons. */
import { intersection } from 'polyclip-ts';
import type { Vec3 } from '../../../src/kernel';

type Loop = readonly [y: number, z: number][];

/** Farther out than any section. */
const FAR = 50;

/** Area and centre of each piece of a section at x that lies below a plane, m. */
export function polygonClipping(
  loops: readonly Loop[],
  { normal: [nx, ny, nz], height, x }: { readonly normal: Vec3; readonly height: number; readonly x: number },
): readonly { readonly area: number; readonly y: number; readonly z: number }[] {
  // In the section's plane the water is a line: a point on it, and which way it runs.
  const rest = height - nx * x;
  const size = ny * ny + nz * nz;
  const [y0, z0] = [(ny * rest) / size, (nz * rest) / size];
  const length = Math.sqrt(size);
  const [along, down] = [
    [nz / length, -ny / length],
    [-ny / length, -nz / length],
  ] as const;
  const corner = (a: number, d: number): [number, number] => [
    y0 + FAR * (a * along[0] + d * down[0]),
    z0 + FAR * (a * along[1] + d * down[1]),
  ];
  const water = [corner(-1, 0), corner(1, 0), corner(1, 1), corner(-1, 1)];
  return loops
    .filter((loop) => loop.length > 3)
    .flatMap((loop) => intersection([[...loop]], [water]))
    .flatMap((polygon) => polygon.map(measured));
}

function measured(ring: readonly (readonly [number, number])[]): { area: number; y: number; z: number } {
  let [twice, y, z] = [0, 0, 0];
  ring.forEach(([ay, az], i) => {
    const [by, bz] = ring[(i + 1) % ring.length]!;
    const part = ay * bz - by * az;
    twice += part;
    y += ((ay + by) * part) / 3;
    z += ((az + bz) * part) / 3;
  });
  return { area: Math.abs(twice) / 2, y: y / twice, z: z / twice };
}
