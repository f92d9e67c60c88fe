import type { Mesh } from './mesh';
import { cutAcross } from './plane';

/** The part of a transverse section of a body that lies below a height. */
export interface SectionBelow {
  /** Both sides, m2. */
  readonly area: number;
  /** Half its breadth at the top of that part, m; 0 where nothing lies below. */
  readonly halfBreadth: number;
}

/**
 * What lies below a height of the section at x of a closed mesh, by Green's theorem over the rim: exact for the
 * mesh, and no loop need be put together. An end face square to x, such as an upright transom, counts as a section.
 */
export const sectionBelow = (mesh: Mesh, x: number, height: number): SectionBelow =>
  sectionsBelow(mesh, x)(height);

/** The same for many heights: the mesh is cut once. */
export function sectionsBelow(mesh: Mesh, x: number): (height: number) => SectionBelow {
  // A face in the cutting plane is seen from one side only.
  const [forward, aft] = [rimFrom(mesh, x, 1), rimFrom(mesh, x, -1)];
  return (height) => {
    const [one, other] = [partOf(forward, height, 1), partOf(aft, height, -1)];
    return one.area >= other.area ? one : other;
  };
}

/** The sides of the section seen from one way, y and z of both their ends, m. */
function rimFrom(mesh: Mesh, x: number, way: 1 | -1): readonly number[] {
  const rim: number[] = [];
  cutAcross(mesh, x, way, (_ax, ay, az, _bx, by, bz) => rim.push(ay, az, by, bz));
  return rim;
}

function partOf(rim: readonly number[], height: number, way: 1 | -1): SectionBelow {
  let area = 0;
  let top = -Infinity;
  let halfBreadth = 0;
  const meet = (y: number, z: number) => {
    if (z < top) return;
    halfBreadth = z > top ? Math.abs(y) : Math.max(halfBreadth, Math.abs(y));
    top = z;
  };
  for (let i = 0; i < rim.length; i += 4) {
    const [ay, az, by, bz] = [rim[i]!, rim[i + 1]!, rim[i + 2]!, rim[i + 3]!]; // four a side
    if (az > height && bz > height) continue;
    // The rim above the height is cut away; along the water itself z stands still and adds no area.
    const share = az > height || bz > height ? (height - az) / (bz - az) : 0;
    const cutY = ay + share * (by - ay);
    const [fromY, fromZ] = az > height ? [cutY, height] : [ay, az];
    const [toY, toZ] = bz > height ? [cutY, height] : [by, bz];
    area += (way * (fromY + toY) * (toZ - fromZ)) / 2;
    meet(fromY, fromZ);
    meet(toY, toZ);
  }
  return { area, halfBreadth };
}
