/** Places and weights of a Gauss-Legendre rule on -1..1. */
interface Rule {
  readonly places: Float64Array;
  readonly weights: Float64Array;
}

const rules = new Map<number, Rule>();

/**
 * Integral of f from one bound to the other by the Gauss-Legendre rule of the given number of points,
 * exact for polynomials of degree 2 * points - 1.
 *
 * Source: Abramowitz and Stegun, Handbook of Mathematical Functions, 25.4.30.
 */
export function integrate(f: (t: number) => number, from: number, to: number, points = 8): number {
  const { places, weights } = ruleOf(points);
  const middle = (from + to) / 2;
  const half = (to - from) / 2;
  let sum = 0;
  // Places and weights have the same length, so each index is in range.
  for (let i = 0; i < places.length; i++) sum += weights[i]! * f(middle + half * places[i]!);
  return half * sum;
}

/**
 * The same integral, halving the interval until whole and halves agree to the relative accuracy asked
 * for. Gives up halving after 30 levels, so a jump inside costs time but never hangs.
 */
export function integrateTo(f: (t: number) => number, from: number, to: number, relative = 1e-12): number {
  const whole = integrate(f, from, to);
  const floor = relative * Math.abs(whole);
  return refine(f, from, to, whole, floor, 30);
}

function refine(
  f: (t: number) => number,
  from: number,
  to: number,
  whole: number,
  tolerance: number,
  levels: number,
): number {
  const middle = (from + to) / 2;
  const left = integrate(f, from, middle);
  const right = integrate(f, middle, to);
  if (levels === 0 || Math.abs(left + right - whole) <= tolerance) return left + right;
  return (
    refine(f, from, middle, left, tolerance / 2, levels - 1) +
    refine(f, middle, to, right, tolerance / 2, levels - 1)
  );
}

function ruleOf(points: number): Rule {
  const known = rules.get(points);
  if (known) return known;
  if (!Number.isInteger(points) || points < 1 || points > 64) {
    throw new Error(`a Gauss-Legendre rule needs 1 to 64 points; got ${points}`);
  }
  const places = new Float64Array(points);
  const weights = new Float64Array(points);
  for (let i = 0; i < points; i++) {
    // Newton from the usual cosine guess lands on the i-th root of the Legendre polynomial.
    let x = -Math.cos((Math.PI * (i + 0.75)) / (points + 0.5));
    let slope = 1;
    for (let round = 0; round < 100; round++) {
      const [value, derivative] = legendre(points, x);
      slope = derivative;
      const step = value / derivative;
      x -= step;
      if (Math.abs(step) < 1e-15) break;
    }
    places[i] = x;
    weights[i] = 2 / ((1 - x * x) * slope * slope);
  }
  const rule = { places, weights };
  rules.set(points, rule);
  return rule;
}

/** Legendre polynomial of the given degree and its slope, by Bonnet's recursion. */
function legendre(degree: number, x: number): readonly [value: number, slope: number] {
  let before = 1;
  let value = x;
  for (let n = 2; n <= degree; n++) {
    const next = ((2 * n - 1) * x * value - (n - 1) * before) / n;
    before = value;
    value = next;
  }
  return [value, (degree * (x * value - before)) / (x * x - 1)];
}
