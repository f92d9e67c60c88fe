/** The skin of the hull cut by level, upright and transverse planes: what a lines plan is drawn from. */
import { meshOfStrips, meshSection, thinned, type Vec3 } from '../../kernel';
import type { Hull } from './hull';
import type { Station } from './station';

/** Across which axis the plane stands: 0 a station, 1 a buttock, 2 a waterline. */
export type CutAxis = 0 | 1 | 2;

export type CutLines = readonly (readonly Vec3[])[];

/** The port side of the skin, without transoms and lid. */
export interface PortSkin {
  /** The lines in which the plane at this place of an axis, m, cuts it; on its rulings they are exact. */
  cut(axis: CutAxis, at: number): CutLines;
  /**
   * The section at a station, keel up: of a frame the skin's own, crown and all, which is what a waterline meets
   * there; of an end, whose face may rake, the line through its corners.
   */
  section(station: Station): readonly Vec3[];
}

/** Thinned to this share of the hull's length: under half a pixel on a sheet of a thousand. */
const FINENESS = 1 / 4000;

export function portSkin({ panels, length }: Hull): PortSkin {
  const { mesh } = meshOfStrips(panels.map(({ strip }) => strip));
  const cut = (axis: CutAxis, at: number): CutLines => {
    const normal: Vec3 = [axis === 0 ? 1 : 0, axis === 1 ? 1 : 0, axis === 2 ? 1 : 0];
    return meshSection(mesh, { normal, height: at }).map((line) => thinned(line, length * FINENESS));
  };
  return {
    cut,
    section: (station) => {
      if (station.role !== 'frame') return station.corners;
      const pieces = cut(0, station.x);
      const longest = pieces.reduce<readonly Vec3[]>(
        (best, line) => (line.length > best.length ? line : best),
        [],
      );
      if (longest.length < 2) return station.corners;
      return longest[0]![2] <= longest.at(-1)![2] ? longest : longest.toReversed();
    },
  };
}
