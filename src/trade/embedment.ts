/** How hard wood presses back on a thin fastening driven sideways through it. */
import { PSI } from '../measure/si';

/**
 * Embedment strength for nails and screws up to 8 mm, Pa.
 *
 * EN 1995-1-1 (2004), eq. 8.15 and 8.16, as transcribed: 0.082 x density x d^-0.3 undrilled,
 * 0.082 (1 - 0.01 d) x density in drilled holes; d in mm, N/mm2.
 *
 * @param diameter m
 * @param density characteristic, kg/m3
 */
export function embedmentByEurocode(diameter: number, density: number, drilled: boolean): number {
  const d = diameter * 1000;
  const perDensity = drilled ? 0.082 * (1 - 0.01 * d) : 0.082 * d ** -0.3;
  return perDensity * density * 1e6;
}

/**
 * What a screw's diameter squared is multiplied with for its load at the proportional limit, Pa.
 *
 * The form p = K D^2 is that of the Wood Handbook, Table 8-4, before yield models; its constants are
 * from memory.
 *
 * @param gravity at 12 % moisture
 * @returns the row's constant; `listed` is false where the table has no row for this gravity and the nearest serves
 */
export function olderScrewConstant(
  gravity: number,
  hardwood: boolean,
): { readonly constant: number; readonly listed: boolean } {
  const rows = hardwood ? HARDWOODS : SOFTWOODS;
  const [lightest] = rows[0]!; // both lists have rows
  const row = rows.findLast(([from]) => gravity >= from) ?? rows[0]!;
  const heaviest = rows.at(-1)![1];
  return { constant: row[2] * PSI, listed: gravity >= lightest && gravity <= heaviest };
}

type Row = readonly [lightest: number, heaviest: number, psi: number];
const SOFTWOODS: readonly Row[] = [
  [0.29, 0.42, 3360],
  [0.43, 0.47, 4320],
  [0.48, 0.52, 5280],
];
const HARDWOODS: readonly Row[] = [
  [0.33, 0.47, 3360],
  [0.48, 0.56, 4640],
  [0.57, 0.74, 6400],
];

/** Normal variates stand above this many standard deviations under the mean 19 times of 20. */
export const lowestTwentieth = 1.645;
