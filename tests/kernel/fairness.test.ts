import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fairRun, missWhenLifted, oddOneOut } from '../../src/kernel';
import { fairSteps, thirdRun } from '../../src/kernel/fairness';
import './near';

const ROUNDING = 0.0004;
const plant = (values: readonly number[], index: number, error: number) =>
  values.map((value, i) => (i === index ? value + error : value));

describe('the run of third differences', () => {
  test('of a cubic is 6 a h^3 all along, at any spacing (closed form)', () => {
    const knots = [0, 1, 2.5, 3, 4.2, 6];
    const { differences, at } = fairRun(
      knots,
      knots.map((x) => 0.02 * x ** 3 - x),
      ROUNDING,
    );
    const step = 6 / 5;
    expect(differences).toHaveLength(3);
    for (const difference of differences) expect(difference).toBeNear(6 * 0.02 * step ** 3, 1e-12);
    expect(at[0] ?? NaN).toBeNear((0 + 1 + 2.5 + 3) / 4, 1e-12);
  });

  test('shows an error e at one point as e, -3e, 3e, -e', () => {
    const { differences } = fairRun([0, 1, 2, 3, 4, 5, 6], plant([0, 0, 0, 0, 0, 0, 0], 3, 0.1), ROUNDING);
    [0.1, -0.3, 0.3, -0.1].forEach((want, i) => expect(differences[i] ?? NaN).toBeNear(want, 1e-12));
  });

  test('needs five points to tell one from another', () => {
    expect(() => fairRun([0, 1, 2, 3], [0, 1, 1, 0], ROUNDING)).toThrow('5 stations or more; there are 4');
    expect(fairRun([0, 1, 2, 3, 4], [0, 1, 2, 1, 0], ROUNDING).corrections).toHaveLength(5);
  });
});

describe('the one correction', () => {
  const knots = [0, 0.7, 1.5, 2.1, 2.9, 3.6, 4.4, 5.1, 6];
  const fair = knots.map((x) => 0.9 - 0.06 * (x - 2.5) ** 2 - 0.002 * (x - 2.5) ** 3);

  test.each(knots.map((_, i) => i).slice(1, -1))(
    'finds an error of 60 mm at point %i of a fair line',
    (index) => {
      const run = fairRun(knots, plant(fair, index, -0.06), ROUNDING);
      const odd = oddOneOut(run);
      expect(odd.index).toBe(index);
      expect(odd.proof).toBeGreaterThan(1);
      // The line's own bend can't be told from a small part of the error.
      expect(run.corrections[index]?.correction ?? NaN).toBeNear(0.06, 0, 0.004);
      expect(run.corrections[index]?.clears ?? NaN).toBeGreaterThan(0.95);
    },
  );

  test('stands out nowhere on the fair line itself, nor on a straight one', () => {
    expect(oddOneOut(fairRun(knots, fair, ROUNDING)).proof).toBeLessThan(1);
    const straight = fairRun(
      knots,
      knots.map((x) => 1 + 0.1 * x),
      ROUNDING,
    );
    expect(oddOneOut(straight).proof).toBeLessThan(1e-6);
    for (const { hidden, clears } of straight.corrections) {
      expect(hidden).toBeGreaterThan(0);
      expect(clears).toBeGreaterThanOrEqual(0);
    }
  });

  test('does not ask which way, from where or in what unit the line was measured', () => {
    const line = fc.array(
      fc.integer({ min: 0, max: 1000 }).map((mm) => mm / 1000),
      { minLength: 7, maxLength: 7 },
    );
    const x = [0, 1, 2.2, 3, 4.1, 5, 6];
    fc.assert(
      fc.property(line, fc.double({ min: -1, max: 1, noNaN: true }), (values, slope) => {
        const plain = fairRun(x, values, ROUNDING);
        const turned = fairRun(x.map((at) => 6 - at).toReversed(), values.toReversed(), ROUNDING);
        const leaning = fairRun(
          x.map((at) => at + 3),
          values.map((value, i) => value + slope * x[i]! - 2),
          ROUNDING,
        );
        const inFeet = fairRun(
          x.map((at) => at / 0.3048),
          values.map((value) => value / 0.3048),
          ROUNDING / 0.3048,
        );
        plain.corrections.forEach(({ correction, hidden, clears }, i) => {
          expect(turned.corrections.at(-1 - i)!.correction).toBeNear(correction, 1e-6, 1e-9);
          expect(leaning.corrections[i]!.correction).toBeNear(correction, 1e-6, 1e-9);
          expect(leaning.corrections[i]!.hidden).toBeNear(hidden, 1e-6);
          expect(inFeet.corrections[i]!.correction).toBeNear(correction / 0.3048, 1e-6, 1e-9);
          expect(inFeet.corrections[i]!.clears).toBeNear(clears, 1e-6, 1e-9);
        });
      }),
      { seed: 5, numRuns: 100 },
    );
  });

  test('hides more where the table is read to a coarser mark, where stations are wider, and at the ends', () => {
    const hiddenAt = (index: number, rounding: number, spread = 1) =>
      fairRun(
        knots.map((x) => x * spread),
        fair,
        rounding,
      ).corrections[index]!.hidden;
    expect(hiddenAt(4, 0.003)).toBeGreaterThan(hiddenAt(4, 0.0004));
    expect(hiddenAt(0, ROUNDING)).toBeGreaterThan(3 * hiddenAt(4, ROUNDING));
    const every = (n: number) =>
      Array.from({ length: n }, (_, i) => (6 * i) / (n - 1)).map(
        (x) => [x, 0.9 - 0.06 * (x - 2.5) ** 2] as const,
      );
    const middle = (n: number) =>
      fairRun(
        every(n).map(([x]) => x),
        every(n).map(([, y]) => y),
        ROUNDING,
      ).corrections[(n - 1) / 2]!.hidden;
    expect(middle(7)).toBeGreaterThan(2 * middle(13));
  });
});

describe('a sheer with one half-breadth read 50 mm short', () => {
  // The half-breadths of an invented dory; the third should read 851.
  const knots = [-0.16, 0.8, 1.6, 2.4, 3.2, 4, 5.2];
  const misread = [0.5, 0.727, 0.801, 0.865, 0.75, 0.512, 0];

  test('is found by the one correction: the third, 50 mm within 8', () => {
    const run = fairRun(knots, misread, ROUNDING);
    expect(oddOneOut(run).index).toBe(2);
    expect(run.corrections[2]?.correction ?? NaN).toBeNear(0.05, 0, 0.008);
  });

  test('is laid on a neighbour by lifting one duck at a time', () => {
    const misses = knots.map((_, i) => Math.abs(missWhenLifted(knots, misread, i)));
    const inner = misses.slice(1, -1);
    expect(misses.indexOf(Math.max(...misses))).not.toBe(2);
    expect(inner.indexOf(Math.max(...inner)) + 1).not.toBe(2);
  });
});

test('fair steps grow with the bend of the line and are widest at its ends', () => {
  const knots = [0, 1, 2, 3, 4, 5, 6];
  const bow = (size: number) => knots.map((x) => size * x * (6 - x));
  const small = fairSteps(thirdRun(knots, bow(0.01)));
  const large = fairSteps(thirdRun(knots, bow(0.02)));
  expect(small).toHaveLength(3);
  large.forEach((step, i) => expect(step).toBeNear(2 * small[i]!, 1e-9));
  expect(small[0]!).toBeGreaterThan(small[1]!);
});
