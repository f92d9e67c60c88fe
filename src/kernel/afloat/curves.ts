import { below, type Waterplane } from '../immersion';
import type { Mesh } from '../mesh';
import type { Vec3 } from '../vec';

/** The form of what is under a level water. */
export interface FormAt {
  /** Of the water over the body's own base, m. */
  readonly height: number;
  /** m3 */
  readonly volume: number;
  /** Centre of that volume, m. */
  readonly centre: Vec3;
  /** Area of the skin under water, m2. */
  readonly wettedArea: number;
  readonly waterplane: Waterplane;
  /** Heights of the metacentres over the body's own base, m: for a small heel, and for a small trim. */
  readonly metacentre: { readonly transverse: number; readonly longitudinal: number };
}

/** The curves of form: a closed body on an even keel at one level after the other; levels that miss it are left out. */
export function curvesOfForm(mesh: Mesh, heights: readonly number[]): readonly FormAt[] {
  return heights.flatMap((height): FormAt[] => {
    const { volume, centroid, wettedArea, waterplane } = below(mesh, { normal: [0, 0, 1], height });
    if (!centroid) return [];
    return [
      {
        height,
        volume,
        centre: centroid,
        wettedArea,
        waterplane,
        metacentre: {
          transverse: centroid[2] + waterplane.transverse / volume,
          longitudinal: centroid[2] + waterplane.longitudinal / volume,
        },
      },
    ];
  });
}
