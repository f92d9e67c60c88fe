/** Where a function is what is wanted: against closed forms, and the roots of cubics as mathjs finds them. */
import * as fc from 'fast-check';
import { polynomialRoot } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { type Bounds, type Course, runsOf, sampled, type Aim, where } from '../../src/kernel';
import './near';
import { seeded } from './shapes';

function end<T>(steps: Generator<number, T>): T {
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value;
    expect(value).toBeGreaterThanOrEqual(0);
    expect(value).toBeLessThanOrEqual(1);
  }
}
const unit: Bounds = { low: 0, high: 1 };
const find = (f: Course, value: number, bounds: Bounds = unit, wanted: Aim = 'exactly') =>
  end(where(f, wanted, value, bounds));

describe('where a value is met', () => {
  test('at none, one or all of its places: a sine over two turns', () => {
    const f = (x: number) => Math.sin(4 * Math.PI * x);
    expect(find(f, 1.01).met).toStrictEqual([]);
    const at = find(f, 0.5).met;
    // sin(t) = 1/2 at t = π/6 and 5π/6, and a turn on.
    expect(at).toHaveLength(4);
    for (const [i, t] of [1 / 24, 5 / 24, 13 / 24, 17 / 24].entries()) {
      expect(at[i]!.from).toBe(at[i]!.to);
      expect(at[i]!.from).toBeNear(t, 1e-9);
    }
  });

  test('where it only touches, at its greatest, and the least and greatest themselves', () => {
    const f = (x: number) => 3 - (x - 0.3137) ** 2;
    const { met, most, least } = find(f, 3);
    expect(met).toHaveLength(1);
    expect(met[0]!.from).toBeNear(0.3137, 0, 1e-4);
    expect(most).toMatchObject({ turns: true });
    expect(most!.at).toBeNear(0.3137, 0, 1e-6);
    expect(most!.value).toBeNear(3, 1e-12);
    expect(least).toMatchObject({ at: 1, turns: false });
    expect(least!.value).toBeNear(3 - 0.6863 ** 2, 1e-12);
  });

  test('the roots of cubics, as mathjs has them', () => {
    const apart = fc.integer({ min: 70, max: 450 });
    fc.assert(
      fc.property(fc.integer({ min: -900, max: 0 }), apart, apart, (first, on, further) => {
        const [a, b, c] = [first / 1000, (first + on) / 1000, (first + on + further) / 1000];
        const f = (x: number) => (x - a) * (x - b) * (x - c);
        const roots = polynomialRoot(-a * b * c, a * b + b * c + a * c, -(a + b + c), 1)
          .map((root) => (typeof root === 'number' ? root : root.re))
          .toSorted((one, other) => one - other);
        const { met } = find(f, 0, { low: -1, high: 1 });
        expect(met).toHaveLength(3);
        for (const [i, { from }] of met.entries()) expect(from).toBeNear(roots[i]!, 0, 1e-6);
      }),
      seeded,
    );
  });

  test('a step of a stair is a stretch; between two steps nothing is met, and it is told', () => {
    // Layers of 6 mm to make a thickness, as sizes are sold.
    const layers = (x: number) => Math.ceil((100 * x) / 6);
    const wide = find(layers, 5, { low: 0.01, high: 1 });
    expect(wide.met[0]!.from).toBeNear(0.24, 1e-6);
    expect(wide.met[0]!.to).toBeNear(0.3, 1e-6);
    const between = find(layers, 5.5, { low: 0.01, high: 1 });
    expect(between.met).toStrictEqual([]);
    expect(between.stepsOver).toHaveLength(1);
    expect(between.stepsOver[0]).toMatchObject({ before: 5, after: 6 });
    expect(between.stepsOver[0]!.at).toBeNear(0.3, 1e-6);
  });

  test('no more or no less than a limit: from where to where, gaps left out', () => {
    const f = (x: number) => (x < 0.25 ? null : (x - 0.5) ** 2);
    const { met, hasGaps } = find(f, 0.01, unit, 'at most');
    expect(hasGaps).toBe(true);
    expect(met).toHaveLength(1);
    expect(met[0]!.from).toBeNear(0.4, 1e-7);
    expect(met[0]!.to).toBeNear(0.6, 1e-7);
    const out = find(f, 0.01, unit, 'at least').met;
    expect(out.map(({ to }) => to)[1]).toBe(1);
    expect(out[0]!.from).toBeNear(0.25, 1e-7);
    expect(find(() => null, 1).most).toBeNull();
  });

  test('of whole numbers only whole ones', () => {
    const f = (x: number) => Math.floor(x / 3);
    expect(find(f, 2, { low: 1, high: 20, whole: true }).met).toStrictEqual([{ from: 6, to: 8 }]);
    expect(find((x) => x * x, 49, { low: 1, high: 20, whole: true }).met).toStrictEqual([{ from: 7, to: 7 }]);
    expect(find((x) => x * x, 50, { low: 1, high: 20, whole: true }).met).toStrictEqual([]);
  });

  test('is never looked for outside the range', () => {
    const asked: number[] = [];
    const f = (x: number) => {
      asked.push(x);
      return Math.cos(9 * x) / (1.2 - x);
    };
    find(f, 0.7);
    expect(Math.min(...asked)).toBeGreaterThanOrEqual(0);
    expect(Math.max(...asked)).toBeLessThanOrEqual(1);
  });
});

describe('a line looked at', () => {
  const look = (f: Course, bounds = unit) => end(sampled(f, bounds));

  test('closely where it bends, and hardly where it is straight', () => {
    expect(look((x) => 3 * x + 1)).toHaveLength(41);
    const bent = look((x) => 1 / (x + 0.02));
    expect(bent.length).toBeGreaterThan(50);
    expect(bent.filter(({ x }) => x < 0.2).length).toBeGreaterThan(bent.filter(({ x }) => x > 0.8).length);
    // Between two places it lies on the line drawn, within half a hundredth of all it spans.
    for (const [i, { x, y }] of bent.entries()) {
      const next = bent[i + 1];
      if (!next) continue;
      const middle = 1 / ((x + next.x) / 2 + 0.02);
      expect(Math.abs((y! + next.y!) / 2 - middle)).toBeLessThan(0.005 * 50);
    }
  });

  test('breaks off at jumps and gaps, and at nothing else', () => {
    const stair = (x: number) => Math.ceil(5 * (x + 0.013));
    expect(runsOf(look(stair), unit)).toHaveLength(6);
    const gap = (x: number) => (x > 0.41 && x < 0.63 ? null : x);
    const runs = runsOf(look(gap), unit);
    expect(runs).toHaveLength(2);
    expect(runs[0]!.at(-1)!.x).toBeNear(0.41, 0, 1e-3);
    expect(runs[1]![0]!.x).toBeNear(0.63, 0, 1e-3);
    expect(
      runsOf(
        look((x) => Math.abs(x - 0.3) + x * x),
        unit,
      ),
    ).toHaveLength(1);
    expect(
      runsOf(
        look((x) => 1 / (x + 0.02)),
        unit,
      ),
    ).toHaveLength(1);
    expect(
      runsOf(
        look(() => 2),
        unit,
      ),
    ).toHaveLength(1);
  });
});
