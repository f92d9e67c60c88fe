import type { StripEdge } from './ruling';
import type { LaidStrip } from './sheet';
import { between2, distance2 } from './vec';
import type { Vec2 } from './vec';

/**
 * An edge of a strip on the sheet as a line whose chords stand less than `tolerance`, m, off the curve: its points a
 * ruling, and between them points of the arc that it makes there. A point that repeats, where rulings fan, comes once.
 */
export function fineEdge(laid: LaidStrip, edge: StripEdge, tolerance: number): readonly Vec2[] {
  const points = laid.flat[edge];
  const turn = laid.turn[edge];
  return points.flatMap((to, k): readonly Vec2[] => {
    const from = points[k - 1];
    if (!from) return [to];
    const chord = distance2(from, to);
    if (chord < NO_LENGTH) return [];
    // A point and a turn a ruling.
    const bend = (turn[k - 1]! + turn[k]!) / 2;
    const parts = Math.max(1, Math.ceil(Math.sqrt((Math.abs(bend) * chord ** 2) / 8 / tolerance)));
    return Array.from({ length: parts }, (_, i): Vec2 => {
      const share = (i + 1) / parts;
      if (share === 1) return to;
      const turnHere = turn[k - 1]! + share * (turn[k]! - turn[k - 1]!);
      return bowed(from, to, share, turnHere);
    });
  });
}

/** Shorter than this, m, a piece is what rounding leaves. */
const NO_LENGTH = 1e-9;

/**
 * A point of an arc a share of the way along its chord, moved out by half the curvature times the distances to both
 * ends; an edge that turns left (+) bows to the right.
 */
export function bowed(from: Vec2, to: Vec2, share: number, turn: number): Vec2 {
  const [x, y] = between2(from, to, share);
  const bow = (turn * share * (1 - share) * distance2(from, to)) / 2;
  return [x + bow * (to[1] - from[1]), y - bow * (to[0] - from[0])];
}
