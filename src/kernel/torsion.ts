/**
 * What stiffens a rectangular bar against twist, m4: the torque is this times the shear modulus times the twist for each
 * length. Within half a hundredth of the exact series.
 *
 * @param width and thickness, m, in either order; above 0
 * Source: Saint-Venant's torsion as in W. C. Young and R. G. Budynas, Roark's Formulas for Stress and Strain, Table 10.1;
 * from memory.
 */
export function torsionConstant(width: number, thickness: number): number {
  const [long, short] = [Math.max(width, thickness), Math.min(width, thickness)];
  if (!(short > 0)) throw new Error('a bar has a width and a thickness above nought');
  const slender = short / long;
  return long * short ** 3 * (1 / 3 - 0.21 * slender * (1 - slender ** 4 / 12));
}
