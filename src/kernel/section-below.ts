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
export function sectionBelow(mesh: Mesh, x: number, height: number): SectionBelow {
  // A face in the cutting plane is seen from one side only.
  const forward = sectionFrom(mesh, x, height, 1);
  const aft = sectionFrom(mesh, x, height, -1);
  return forward.area >= aft.area ? forward : aft;
}

function sectionFrom(mesh: Mesh, x: number, height: number, way: 1 | -1): SectionBelow {
  let area = 0;
  let top = -Infinity;
  let halfBreadth = 0;
  const meet = (y: number, z: number) => {
    if (z < top) return;
    halfBreadth = z > top ? Math.abs(y) : Math.max(halfBreadth, Math.abs(y));
    top = z;
  };
  cutAcross(mesh, x, way, (_ax, ay, az, _bx, by, bz) => {
    if (az > height && bz > height) return;
    // The rim above the height is cut away; along the water itself z stands still and adds no area.
    const share = az > height || bz > height ? (height - az) / (bz - az) : 0;
    const cutY = ay + share * (by - ay);
    const [fromY, fromZ] = az > height ? [cutY, height] : [ay, az];
    const [toY, toZ] = bz > height ? [cutY, height] : [by, bz];
    area += (way * (fromY + toY) * (toZ - fromZ)) / 2;
    meet(fromY, fromZ);
    meet(toY, toZ);
  });
  return { area, halfBreadth };
}
