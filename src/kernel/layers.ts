/**
 * Layers bent together round one curve, listed from its hollow side outward. A thickness of 0 is no layer, so that
 * a list of fixed length holds fewer.
 */

/** Thinner than this is shaving, not a layer, m. */
const THINNEST = 1e-4;

/** Those of the list that are layers: a tenth of a millimetre or more. */
export function layersOf(thicknesses: readonly number[]): number[] {
  return thicknesses.filter((thickness) => thickness >= THINNEST);
}

/** The number of layers itself; throws where it makes no stack. */
export function stackOf(layers: number): number {
  if (layers < 2) throw new Error('a stack has two layers or more: give two of them a thickness');
  return layers;
}

/**
 * Stretch of the outer face of each layer, loose on its neighbours, bent round the radius of its own middle:
 * t/(2r). The inner layers lie on the tighter curves.
 *
 * No layer can be bent past its own inner face, so a stack thicker than its curve gives 1 there.
 * @param radius to the middle of the whole stack, m
 */
export function ownStrains(radius: number, thicknesses: readonly number[]): number[] {
  const whole = thicknesses.reduce((sum, thickness) => sum + thickness, 0);
  let inner = radius - whole / 2;
  return thicknesses.map((thickness) => {
    if (thickness < THINNEST) return 0;
    const middle = Math.max(inner + thickness / 2, thickness / 2);
    inner += thickness;
    return thickness / (2 * middle);
  });
}

/** Chance that at least one of several things comes about that have nothing to do with each other; keeps its digits where all are rare. */
export function anyHappens(chances: readonly number[]): number {
  return -Math.expm1(chances.reduce((sum, chance) => sum + Math.log1p(-chance), 0));
}

/** Chance that all of them come about. */
export function allHappen(chances: readonly number[]): number {
  return chances.reduce((product, chance) => product * chance, 1);
}
