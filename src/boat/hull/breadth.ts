/** The breadth of a section at a height. A file of its own, so that a cell fetched late brings no hull with it. */

/** Half-breadth of a section at a height; null above the sheer or below the keel. */
export function breadthAt(
  section: readonly (readonly [y: number, z: number])[],
  height: number,
): number | null {
  for (let i = section.length - 1; i > 0; i--) {
    const [y0, z0] = section[i - 1]!;
    const [y1, z1] = section[i]!;
    if (height > z1 && i === section.length - 1) return null;
    if (height >= z0 && z1 > z0) return y0 + ((y1 - y0) * (height - z0)) / (z1 - z0);
  }
  return null;
}
