import { integrate } from './quadrature';
import { findRoot } from './roots';

/** A thin straight board held fast at one end and drawn over at the other by a pull that keeps its direction. */
export interface Elastica {
  /** The pull as F L^2 / EI. */
  readonly load: number;
  /** How far the end has come over, square to the board where it is held, over its length. */
  readonly offset: number;
  /** How far out the end still stands, along the board where it is held, over its length. */
  readonly reach: number;
  /** Slope of the end to the board where it is held, rad. */
  readonly slope: number;
}

/** Above this share of its length an end is all but square to where it is held, and the pull grows past all bounds. */
const MOST_OFFSET = 0.98;

/**
 * The elastica of a board bent by its end, from how far the end has come over, as a share of the length from 0 to 0.98.
 * The board does not stretch, its bending moment is EI times its curvature however steep it runs, and the pull is
 * square to the board at the held end. Relative error below 1e-9.
 *
 * Throws when the share is outside that range.
 *
 * Source: K. E. Bisshopp and D. C. Drucker, Large deflection of cantilever beams, Quarterly of Applied Mathematics 3
 * (1945), 272-275: the same elliptic integrals, here by quadrature.
 */
export function elasticaOf(offset: number): Elastica {
  if (!(offset >= 0 && offset <= MOST_OFFSET))
    throw new Error(`the end of a board comes over by 0 to ${MOST_OFFSET} of its length; got ${offset}`);
  // Below this the gentle slope is right to the last digit.
  if (offset < 1e-9) return { load: 3 * offset, offset, reach: 1, slope: 1.5 * offset };
  const exponent = findRoot((guess) => bentTo(guess).offset - offset, -45, 80);
  if (exponent === null) throw new Error(`no pull brings the end over by ${offset} of the length`);
  return bentTo(exponent);
}

/**
 * The board whose end slopes so that 1 - sin(slope) is 2 / (2 + e^exponent): from all but level to all but a right
 * angle, without a difference of near numbers at either end.
 *
 * With `lack` half of that, and w an angle that is 0 at the end, the sine of the slope along the board is
 * 1 - 2 (sin^2 w + lack cos^2 w), and the length goes as dw over the root of that bracket. The bracket peaks at the
 * end, sharper the smaller the lack; sinh u = tan w / sqrt(lack) spreads the peak out and makes of dw / root cos w du.
 */
function bentTo(exponent: number): Elastica {
  const steep = Math.exp(exponent);
  const lack = 1 / (2 + steep);
  const half = steep / (4 + 2 * steep); // half the sine of the end's slope: 1/2 - lack
  const root = Math.sqrt(lack);
  const held = Math.atan(Math.sqrt(2 * half));
  const last = Math.asinh(Math.sqrt(2 * half) / root);
  const over = (f: (w: number) => number): number =>
    integrateSmooth((u) => {
      const w = Math.atan(root * Math.sinh(u));
      return f(w) * Math.cos(w);
    }, last);
  const length = over(() => 1);
  const rise = over((w) => 2 * (1 - lack) * Math.sin(held - w) * Math.sin(held + w));
  return {
    load: length ** 2,
    offset: rise / length,
    reach: (2 * Math.sqrt(half)) / length,
    slope: Math.atan2(2 * half, 2 * Math.sqrt(lack * (1 - lack))),
  };
}

/** From 0 on, in pieces so short that the nearest pole, a quarter turn off the real line, does not count. */
function integrateSmooth(f: (u: number) => number, to: number): number {
  const pieces = Math.max(1, Math.ceil(to));
  let sum = 0;
  for (let i = 0; i < pieces; i++) sum += integrate(f, (to * i) / pieces, (to * (i + 1)) / pieces, 16);
  return sum;
}
