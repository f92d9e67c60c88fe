/**
 * Density of water by its temperature and salt, at the pressure of the air.
 *
 * Source: N. P. Fofonoff and R. C. Millard, Algorithms for computation of fundamental properties of seawater, UNESCO
 * Technical Papers in Marine Science 44, 1983; coefficients from memory, held by its printed check values.
 */

/** Sum of coefficients times rising powers. */
const series = (of: readonly number[], t: number): number => of.reduceRight((sum, a) => sum * t + a, 0);

const PURE = [999.842_594, 6.793_952e-2, -9.095_29e-3, 1.001_685e-4, -1.120_083e-6, 6.536_332e-9];
const SALT = [0.824_493, -4.0899e-3, 7.6438e-5, -8.2467e-7, 5.3875e-9];
const SALT_ROOT = [-5.724_66e-3, 1.0227e-4, -1.6546e-6];
const SALT_SQUARE = 4.8314e-4;

/**
 * kg/m3
 *
 * @param celsius temperature, 0 to 40 °C
 * @param salt practical salinity, about grams in a kilogram, 0 to 42
 */
export function waterDensity(celsius: number, salt: number): number {
  return (
    series(PURE, celsius) +
    salt * series(SALT, celsius) +
    salt ** 1.5 * series(SALT_ROOT, celsius) +
    salt ** 2 * SALT_SQUARE
  );
}
