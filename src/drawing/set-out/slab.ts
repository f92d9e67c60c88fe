// Rectangles at any angle on paper, as texts occupy them, and what touches them.
// Paper: px, x to the right, y down.

/** A rectangle by its centre, half sizes and the direction of its long side, and how far it reaches along x and y. */
export interface Slab {
  readonly x: number;
  readonly y: number;
  readonly halfWidth: number;
  readonly halfHeight: number;
  readonly cos: number;
  readonly sin: number;
  readonly reachX: number;
  readonly reachY: number;
}

export const makeSlab = (
  x: number,
  y: number,
  halfWidth: number,
  halfHeight: number,
  cos = 1,
  sin = 0,
): Slab => ({
  x,
  y,
  halfWidth,
  halfHeight,
  cos,
  sin,
  reachX: halfWidth * Math.abs(cos) + halfHeight * Math.abs(sin),
  reachY: halfWidth * Math.abs(sin) + halfHeight * Math.abs(cos),
});

export const shifted = (s: Slab, dx: number, dy: number): Slab => ({ ...s, x: s.x + dx, y: s.y + dy });

/** Do two slabs overlap by more than touching, `gap` px to be kept between them? Separating axes. */
export function slabsMeet(a: Slab, b: Slab, gap = 0): boolean {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  if (Math.abs(dx) >= a.reachX + b.reachX + gap || Math.abs(dy) >= a.reachY + b.reachY + gap) return false;
  const cos = Math.abs(a.cos * b.cos + a.sin * b.sin);
  const sin = Math.abs(a.cos * b.sin - a.sin * b.cos);
  return (
    Math.abs(dx * a.cos + dy * a.sin) < a.halfWidth + b.halfWidth * cos + b.halfHeight * sin + gap &&
    Math.abs(dy * a.cos - dx * a.sin) < a.halfHeight + b.halfWidth * sin + b.halfHeight * cos + gap &&
    Math.abs(dx * b.cos + dy * b.sin) < b.halfWidth + a.halfWidth * cos + a.halfHeight * sin + gap &&
    Math.abs(dy * b.cos - dx * b.sin) < b.halfHeight + a.halfWidth * sin + a.halfHeight * cos + gap
  );
}

/** A straight stroke from (x1, y1) to (x2, y2). */
export type Stroke = readonly [x1: number, y1: number, x2: number, y2: number];

/**
 * The share of a stroke, from and to as fractions of its length, that lies within `gap` px
 * of a slab; null when it keeps clear. Clipped in the slab's own frame.
 */
export function within(
  s: Slab,
  [x1, y1, x2, y2]: Stroke,
  gap = 0,
): readonly [enter: number, leave: number] | null {
  const fromX = x1 - s.x;
  const fromY = y1 - s.y;
  const toX = x2 - s.x;
  const toY = y2 - s.y;
  const across = s.reachX + gap;
  const down = s.reachY + gap;
  if ((fromX >= across && toX >= across) || (fromX <= -across && toX <= -across)) return null;
  if ((fromY >= down && toY >= down) || (fromY <= -down && toY <= -down)) return null;

  const along = fromX * s.cos + fromY * s.sin;
  const aside = fromY * s.cos - fromX * s.sin;
  // The sign of a run of zero would be lost in a division: a stroke along a side is inside or out.
  const alongRun = (toX - fromX) * s.cos + (toY - fromY) * s.sin || TINY;
  const asideRun = (toY - fromY) * s.cos - (toX - fromX) * s.sin || TINY;
  const alongHalf = Math.sign(alongRun) * (s.halfWidth + gap);
  const asideHalf = Math.sign(asideRun) * (s.halfHeight + gap);
  const enter = Math.max(0, (-alongHalf - along) / alongRun, (-asideHalf - aside) / asideRun);
  const leave = Math.min(1, (alongHalf - along) / alongRun, (asideHalf - aside) / asideRun);
  return enter < leave ? [enter, leave] : null;
}

const TINY = 1e-12;

/** Do two strokes cross within both? Sharing an end, or lying along each other, is no crossing. */
export function strokesCross(a: Stroke, b: Stroke): boolean {
  return (
    side(b, a[0], a[1]) * side(b, a[2], a[3]) < -1e-6 && side(a, b[0], b[1]) * side(a, b[2], b[3]) < -1e-6
  );
}

/** On which side of a stroke a point lies: positive, negative, or 0 in line with it. */
const side = (s: Stroke, x: number, y: number): number =>
  (s[2] - s[0]) * (y - s[1]) - (s[3] - s[1]) * (x - s[0]);

/** Do two strokes run side by side less than `gap` px apart, over more than a touch? */
export function strokesCrowd(a: Stroke, b: Stroke, gap: number): boolean {
  const length = Math.hypot(a[2] - a[0], a[3] - a[1]);
  if (length === 0) return false;
  const ux = (a[2] - a[0]) / length;
  const uy = (a[3] - a[1]) / length;
  const off1 = ux * (b[1] - a[1]) - uy * (b[0] - a[0]);
  const off2 = ux * (b[3] - a[1]) - uy * (b[2] - a[0]);
  if (Math.abs(off1) >= gap || Math.abs(off2) >= gap) return false;
  const start = ux * (b[0] - a[0]) + uy * (b[1] - a[1]);
  const end = ux * (b[2] - a[0]) + uy * (b[3] - a[1]);
  return Math.min(length, Math.max(start, end)) - Math.max(0, Math.min(start, end)) > 1;
}
