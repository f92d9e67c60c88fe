const epsilon = 2 ** -52;

/**
 * Where f crosses zero between two bounds; null when f has the same sign at both, which means no
 * crossing or an even number of them. The default tolerance is absolute and near the rounding of the
 * bounds. Never leaves the bracket, so f need not be smooth.
 *
 * Source: R. P. Brent, Algorithms for Minimization without Derivatives, 1973, chapter 4.
 */
export function findRoot(f: (x: number) => number, low: number, high: number, tolerance = 0): number | null {
  let a = low;
  let b = high;
  let fa = f(a);
  let fb = f(b);
  if (fa === 0) return a;
  if (fb === 0) return b;
  if (fa > 0 === fb > 0) return null;
  // b is the best guess, a the one before it, c keeps the root bracketed with b.
  let c = a;
  let fc = fa;
  let step = b - a;
  let stepBefore = step;
  for (let round = 0; round < 200; round++) {
    if (Math.abs(fc) < Math.abs(fb)) {
      a = b;
      b = c;
      c = a;
      fa = fb;
      fb = fc;
      fc = fa;
    }
    const reach = 2 * epsilon * Math.abs(b) + tolerance / 2;
    const middle = (c - b) / 2;
    if (Math.abs(middle) <= reach || fb === 0) return b;
    if (Math.abs(stepBefore) >= reach && Math.abs(fa) > Math.abs(fb)) {
      const trial = interpolated(a, b, c, fa, fb, fc);
      if (Math.abs(2 * trial) < Math.min(Math.abs(3 * middle) - reach, Math.abs(stepBefore))) {
        stepBefore = step;
        step = trial;
      } else {
        step = middle;
        stepBefore = middle;
      }
    } else {
      step = middle;
      stepBefore = middle;
    }
    a = b;
    fa = fb;
    b += Math.abs(step) > reach ? step : Math.sign(middle) * reach;
    fb = f(b);
    if (fb > 0 === fc > 0) {
      c = a;
      fc = fa;
      step = b - a;
      stepBefore = step;
    }
  }
  return b;
}

/** Step from b to the root of the secant, or of the inverse parabola when three points differ. */
function interpolated(a: number, b: number, c: number, fa: number, fb: number, fc: number): number {
  const s = fb / fa;
  if (a === c) return ((c - b) * s) / (s - 1) || 0;
  const q = fa / fc;
  const r = fb / fc;
  const p = s * ((c - b) * q * (q - r) - (b - a) * (r - 1));
  return -p / ((q - 1) * (r - 1) * (s - 1));
}

/**
 * The lowest value of f between two bounds, and where: golden sections hastened by parabolas. Finds a
 * local minimum when there are several; a minimum at a bound is approached to within the tolerance
 * (relative to the interval; below 1e-8 rounding in f hides the difference).
 *
 * Source: R. P. Brent, Algorithms for Minimization without Derivatives, 1973, chapter 5.
 */
export function findMinimum(
  f: (x: number) => number,
  low: number,
  high: number,
  tolerance = 1e-8,
): { readonly at: number; readonly value: number } {
  const golden = (3 - Math.sqrt(5)) / 2;
  const reach = tolerance * Math.abs(high - low) + epsilon * (Math.abs(low) + Math.abs(high));
  let a = Math.min(low, high);
  let b = Math.max(low, high);
  // x is the best place so far, w the second best, v the one w held before.
  let x = a + golden * (b - a);
  let w = x;
  let v = x;
  let fx = f(x);
  let fw = fx;
  let fv = fx;
  let step = 0;
  let stepBefore = 0;
  for (let round = 0; round < 200; round++) {
    const middle = (a + b) / 2;
    if (Math.abs(x - middle) <= 2 * reach - (b - a) / 2) break;
    let useGolden = true;
    if (Math.abs(stepBefore) > reach) {
      const r = (x - w) * (fx - fv);
      const s = (x - v) * (fx - fw);
      const p = (x - v) * s - (x - w) * r;
      const q = 2 * (s - r);
      const trial = q === 0 ? 0 : -p / q;
      if (q !== 0 && Math.abs(trial) < Math.abs(stepBefore / 2) && x + trial > a && x + trial < b) {
        useGolden = false;
        stepBefore = step;
        step = trial;
        // Not too near the bounds, where f has been evaluated already.
        const next = x + step;
        if (next - a < 2 * reach || b - next < 2 * reach) step = x < middle ? reach : -reach;
      }
    }
    if (useGolden) {
      stepBefore = x < middle ? b - x : a - x;
      step = golden * stepBefore;
    }
    const u = x + (Math.abs(step) >= reach ? step : Math.sign(step) * reach);
    const fu = f(u);
    if (fu <= fx) {
      if (u < x) b = x;
      else a = x;
      [v, fv, w, fw, x, fx] = [w, fw, x, fx, u, fu];
    } else {
      if (u < x) a = u;
      else b = u;
      if (fu <= fw || w === x) [v, fv, w, fw] = [w, fw, u, fu];
      else if (fu <= fv || v === x || v === w) [v, fv] = [u, fu];
    }
  }
  return { at: x, value: fx };
}
