/**
 * Chance: the normal distribution, and how often a random stress outruns a random strength.
 */

/** Area under the normal curve up to z, from 0 to 1; relative error below 1e-12 for z above -37. */
export function normalBelow(z: number): number {
  if (Number.isNaN(z)) throw new Error('a chance needs a number');
  if (z > 0) return 1 - normalBelow(-z);
  return z > -3 ? 0.5 - density(z) * seriesTo(-z) : density(z) * tailAt(-z);
}

const density = (z: number): number => Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);

/**
 * Area from 0 to z over the curve's height at z: z + z^3/3 + z^5/(3 5) + ...
 *
 * Source: Abramowitz and Stegun, Handbook of Mathematical Functions, 26.2.11.
 */
function seriesTo(z: number): number {
  let term = z;
  let sum = z;
  for (let n = 3; term > 1e-17 * sum; n += 2) {
    term *= (z * z) / n;
    sum += term;
  }
  return sum;
}

/**
 * Area beyond z over the curve's height at z: the fraction 1/(z + 1/(z + 2/(z + 3/(z + ...)))), from its tail up.
 *
 * Source: the same, 26.2.14.
 */
function tailAt(z: number): number {
  let value = z;
  for (let n = 120; n > 0; n--) value = z + n / value;
  return 1 / value;
}

/** How boards of one wood vary: standard deviation over mean, and how strength and stiffness go together. */
export interface Spread {
  readonly strength: number;
  readonly stiffness: number;
  /** Between the logarithms of the two: 0 for none, 1 for strictly together. */
  readonly correlation: number;
}

/**
 * How often a board bent to a given curve breaks: its stress goes with its stiffness, and both stiffness and strength
 * are lognormal over the boards.
 *
 * @param share mean stress over mean strength; means and not medians, as tables print them
 * @throws on a negative share, on spreads that aren't above 0, on a correlation outside -1..1
 */
export function chanceOfBreaking(share: number, { strength, stiffness, correlation }: Spread): number {
  if (!(share >= 0)) throw new Error('a share of breaking is 0 or more');
  if (!(strength > 0 && stiffness > 0)) throw new Error('the spread of strength and of stiffness is above 0');
  if (!(Math.abs(correlation) <= 1)) throw new Error('a correlation lies between -1 and 1');
  if (share === 0) return 0;
  // Variances of the logarithms; the logarithm of a mean is that of the median and half the variance.
  const ofStrength = Math.log1p(strength ** 2);
  const ofStiffness = Math.log1p(stiffness ** 2);
  const medians = Math.log(share) + (ofStrength - ofStiffness) / 2;
  const variance = ofStrength + ofStiffness - 2 * correlation * Math.sqrt(ofStrength * ofStiffness);
  // Two that vary alike and strictly together leave nothing to chance.
  if (variance <= 1e-15) return medians > 0 ? 1 : 0;
  return normalBelow(medians / Math.sqrt(variance));
}
