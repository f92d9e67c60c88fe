import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { distance, dot, subtract, thinned, type Vec3 } from '../../src/kernel';
import { seeded } from './shapes';

function offPiece(point: Vec3, a: Vec3, b: Vec3): number {
  const along = subtract(b, a);
  const length2 = dot(along, along);
  const share = length2 === 0 ? 0 : Math.max(0, Math.min(1, dot(subtract(point, a), along) / length2));
  return distance(point, [a[0] + share * along[0], a[1] + share * along[1], a[2] + share * along[2]]);
}

describe('a line thinned', () => {
  test('keeps its ends and its corner, and nothing of what is straight', () => {
    const line: Vec3[] = [
      [0, 0, 0],
      [1, 0, 0],
      [2, 0, 0],
      [2, 1, 0],
      [2, 2, 0],
    ];
    expect(thinned(line, 1e-9)).toStrictEqual([line[0], line[2], line[4]]);
  });
  test('a quarter circle of radius 1 within 0.001 takes chords of about 0.18 (closed form: sagitta s, chord 2 sqrt(2rs))', () => {
    const arc = Array.from({ length: 1001 }, (_, i): Vec3 => {
      const angle = (i * Math.PI) / 2000;
      return [Math.cos(angle), Math.sin(angle), 0];
    });
    const least = Math.PI / 2 / (2 * Math.sqrt(2 * 0.001));
    const { length } = thinned(arc, 0.001);
    expect(length).toBeGreaterThan(least);
    // Halving can't hit the longest chord everywhere, but it needs no more than twice as many.
    expect(length).toBeLessThan(2 * least + 2);
  });
  test('leaves no point further off than the tolerance', () => {
    const coordinate = fc.double({ min: -1, max: 1, noNaN: true });
    const lines = fc.array(fc.tuple(coordinate, coordinate, coordinate), { minLength: 2, maxLength: 40 });
    fc.assert(
      fc.property(lines, fc.double({ min: 0, max: 1, noNaN: true }), (line, tolerance) => {
        const kept = thinned(line, tolerance);
        expect(kept[0]).toBe(line[0]);
        expect(kept.at(-1)).toBe(line.at(-1));
        let piece = 0;
        for (const point of line) {
          if (piece + 1 < kept.length - 1 && point === kept[piece + 1]) piece++;
          // 1e-12: rounding of the cross product.
          expect(offPiece(point, kept[piece]!, kept[piece + 1]!)).toBeLessThanOrEqual(tolerance + 1e-12);
        }
      }),
      seeded,
    );
  });
});
