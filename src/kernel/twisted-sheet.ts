/**
 * A sheet forced into twist. A twisted surface can't be had of a flat sheet without stretch: its edges must grow longer
 * than its middle.
 */

/**
 * Strain along the edges of a long strip whose surface turns by an angle, rad, from edge to edge across it: the edges
 * lie on a helix and are longer than the middle, and what pulls them shortens the middle until the sheet is in balance.
 *
 * At a distance y from the middle the strain is (twist per length)² (y² - b²/12) / 2, so the edge has psi²/12 and the
 * middle -psi²/24, whatever the width b.
 */
export const edgeStrain = (psi: number): number => psi ** 2 / 12;

/**
 * Least radius of a sheet bent about an axis that lies at an angle to its face grain: straining the grain no harder than
 * a bend square to it may, and never tighter than one along it.
 *
 * Bent to 1/R, the strain along a grain that makes an angle with the axis is t/(2R) sin². Where the axis lies up to 45°
 * off the grain this gives the radius across the grain in each row of the aircraft table, as that table has it.
 *
 * @param along least radius with the face grain along the curve, m
 * @param across the same with the face grain along the axis
 * @param axis angle between axis and face grain, rad
 */
export const radiusAtAngle = (along: number, across: number, axis: number): number =>
  Math.max(across, along * Math.sin(axis) ** 2);
