/** Reading a flat outline as ordinates from its straight edge, and drawing it proud. */
import { between2, distance2, type Vec2 } from '../../kernel';

/** What stands over one place of the straight edge, m: the lowest and the highest of the outline there. */
export interface Ordinate {
  readonly lower: number;
  readonly upper: number;
}

/** The outline over a running distance; null before its after end and past its fore end. */
export function ordinateAt(outline: readonly Vec2[], x: number): Ordinate | null {
  const ys: number[] = [];
  outline.forEach((from, i) => {
    const to = outline[(i + 1) % outline.length]!;
    const [low, high] = from[0] <= to[0] ? [from, to] : [to, from];
    if (x < low[0] || x > high[0]) return;
    if (low[0] === high[0]) {
      ys.push(low[1], high[1]);
      return;
    }
    ys.push(between2(low, high, (x - low[0]) / (high[0] - low[0]))[1]);
  });
  if (ys.length === 0) return null;
  return { lower: Math.min(...ys), upper: Math.max(...ys) };
}

/** A corner sharper than this leaves the line farther out than 4 times the allowance; it is cut off square. */
const SHARP = -0.875;

/**
 * An outline, anticlockwise, with an allowance left all round, square to it: the line to saw to. Its corners run on to
 * a point but for the sharpest, which are cut off.
 *
 * @param by the allowance, m; not more than the tightest hollow of the outline
 */
export function proudOf(outline: readonly Vec2[], by: number): readonly Vec2[] {
  if (by === 0) return outline;
  const sides = outline.map((from, i): Vec2 => {
    const to = outline[(i + 1) % outline.length]!;
    const length = distance2(from, to);
    return [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  });
  return outline.flatMap(([x, y], i): readonly Vec2[] => {
    const before = sides[(i + sides.length - 1) % sides.length]!;
    const after = sides[i]!;
    const cosine = before[0] * after[0] + before[1] * after[1];
    if (cosine < SHARP)
      return [
        [x + by * (before[1] + before[0]), y + by * (before[1] - before[0])],
        [x + by * (after[1] - after[0]), y - by * (after[0] + after[1])],
      ];
    const reach = by / (1 + cosine);
    return [[x + reach * (before[1] + after[1]), y - reach * (before[0] + after[0])]];
  });
}
