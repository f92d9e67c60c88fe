import type { Mesh } from './mesh';
import { cutAcross } from './cut-mesh';

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
  cutAcross(mesh, x, way, (points, a, b) =>
    rim.push(points[a + 1]!, points[a + 2]!, points[b + 1]!, points[b + 2]!),
  );
  return rim;
}

function partOf(rim: readonly number[], height: number, way: 1 | -1): SectionBelow {
  let area = 0;
  let top = -Infinity;
  let halfBreadth = 0;
  for (let i = 0; i < rim.length; i += 4) {
    const az = rim[i + 1]!; // four numbers a side
    const bz = rim[i + 3]!;
    if (az > height && bz > height) continue;
    // The rim above the height is cut away; along the water itself z stands still and adds no area.
    const share = az > height || bz > height ? (height - az) / (bz - az) : 0;
    const cutY = rim[i]! + share * (rim[i + 2]! - rim[i]!);
    const fromY = az > height ? cutY : rim[i]!;
    const fromZ = Math.min(az, height);
    const toY = bz > height ? cutY : rim[i + 2]!;
    const toZ = Math.min(bz, height);
    area += (way * (fromY + toY) * (toZ - fromZ)) / 2;
    // Of both ends the higher, of two alike the one farther out.
    const high = Math.max(fromZ, toZ);
    const out = Math.max(fromZ === high ? Math.abs(fromY) : 0, toZ === high ? Math.abs(toY) : 0);
    halfBreadth = high > top ? out : high === top ? Math.max(halfBreadth, out) : halfBreadth;
    top = Math.max(top, high);
  }
  return { area, halfBreadth };
}
