import { describe, expect, test } from 'vitest';
import { bendBatten, hollows, placeInView, turnOfLine, type Vec3 } from '../../src/kernel';
import './near';

/** A batten through y(x), and the same on edge in profile. */
const batten = (y: (x: number) => number, n = 41, length = 4) =>
  bendBatten(
    Array.from({ length: n }, (_, i): Vec3 => {
      const x = (length * i) / (n - 1);
      return [x, y(x), -y(x)];
    }),
  );

describe('hollows', () => {
  test('a side that swells all along has none, and bends clockwise in plan', () => {
    const side = batten((x) => 0.8 - 0.05 * (x - 2) ** 2);
    expect(turnOfLine(side, 'plan')).toBe(-1);
    expect(turnOfLine(side, 'profile')).toBe(1);
    expect(hollows(side, 'plan', -1)).toStrictEqual([]);
    expect(hollows(side, 'profile', 1)).toStrictEqual([]);
  });

  test('lie where y″ changes sign: x = 1 to 3 of a quartic, and as deep as it dips (closed form)', () => {
    // y″ = -(x - 1)(x - 3): bends the wrong way between 1 and 3, where the quartic dips under its chord.
    const y = (x: number) => -(x ** 4) / 12 + (2 * x ** 3) / 3 - (3 * x ** 2) / 2;
    const flat = (x: number) => 0.01 * y(x);
    const line = batten(flat);
    const [hollow, ...more] = hollows(line, 'plan', -1);
    expect(more).toStrictEqual([]);
    expect(placeInView(line, 'plan', hollow!.from)[0]).toBeNear(1, 0, 0.01);
    expect(placeInView(line, 'plan', hollow!.to)[0]).toBeNear(3, 0, 0.01);
    const chord = Math.hypot(2, flat(3) - flat(1));
    const depth = ((flat(1) + flat(3)) / 2 - flat(2)) * (2 / chord);
    expect(hollow!.depth).toBeNear(depth, 0.002);
    expect(hollows(line, 'plan', -1, 0.01)).toStrictEqual([]);
  });

  test('may run out at both ends, where the line bends the wrong way to its last point', () => {
    const wave = batten((x) => 0.1 * Math.sin(Math.PI * (x - 0.5)));
    const found = hollows(wave, 'plan', -1);
    expect(found).toHaveLength(3);
    expect(found[0]!.from).toBe(0);
    expect(found.at(-1)!.to).toBeLessThanOrEqual(wave.knots.at(-1)!);
  });

  test('of a straight line are none to speak of', () => {
    expect(
      hollows(
        batten((x) => 0.3 * x),
        'plan',
        1,
        1e-9,
      ),
    ).toStrictEqual([]);
  });
});
