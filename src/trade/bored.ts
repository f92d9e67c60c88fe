/** What a hole leaves of a piece's stiffness. */

/**
 * Share of the second moment of area that a rectangle keeps where a hole is bored through it, square to the
 * plane in which it bends. Geometry: the hole's own second moment and its distance from the middle are taken off.
 *
 * @param depth of the piece, in the plane of the bend, m
 * @param hole diameter, m
 * @param offMiddle from the middle of the depth to the middle of the hole, m
 */
export function stiffnessBored(depth: number, hole: number, offMiddle: number): number {
  return Math.max(0, 1 - (hole ** 3 + 12 * hole * offMiddle ** 2) / depth ** 3);
}
