/** Invented hulls with a flat or vee bottom and flaring sides, for property tests. */
import * as fc from 'fast-check';
import type { Vec3 } from '../../src/kernel';
import type { Lines } from './shapes';

/** Smooth lines by a few dimensions: a transom aft, a stem forward, seven stations. */
export const flaredHull: fc.Arbitrary<Lines> = fc
  .record({
    length: fc.double({ min: 3, max: 7, noNaN: true }),
    slenderness: fc.double({ min: 3, max: 5, noNaN: true }),
    flare: fc.double({ min: 0.15, max: 0.55, noNaN: true }),
    depth: fc.double({ min: 0.4, max: 0.8, noNaN: true }),
    rocker: fc.double({ min: 0.03, max: 0.2, noNaN: true }),
    transom: fc.double({ min: 0.4, max: 0.8, noNaN: true }),
    deadrise: fc.constantFrom(0, 0.08, 0.15),
  })
  .map(({ length, slenderness, flare, depth, rocker, transom, deadrise }) => {
    const half = length / slenderness / 2;
    const stations = [0, 0.17, 0.34, 0.5, 0.67, 0.84, 1];
    // Widest a little abaft amidships; full at the transom, nothing at the stem.
    const breadth = (t: number) => {
      const u = (t - 0.42) / 0.58;
      const aft = (0.42 - t) / 0.42;
      return half * (t > 0.42 ? 1 - u ** 2 : 1 - (1 - transom) * aft ** 2);
    };
    const keelZ = (t: number) => rocker * 4 * (t - 0.4) ** 2;
    // A vee bottom flattens out aft and closes at the stem.
    const rise = (t: number) => deadrise * breadth(t);
    const line = (at: (t: number) => Vec3): readonly Vec3[] => stations.map(at);
    return {
      keel: line((t) => [t * length, 0, keelZ(t)]),
      chine: line((t) => [t * length, 0.7 * breadth(t), keelZ(t) + rise(t)]),
      sheer: line((t) => [
        t * length + (t === 1 ? 0.15 * depth : t === 0 ? -0.2 * depth : 0),
        t === 1 ? 0 : 0.7 * breadth(t) + depth * Math.tan(flare) * Math.min(1, 3 * (1 - t)),
        keelZ(t) + rise(t) + depth,
      ]),
    };
  });
