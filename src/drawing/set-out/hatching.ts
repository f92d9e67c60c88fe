// Section hatching on paper: lines at 45 degrees and a fixed spacing in px, whatever the
// scale, counted from the sheet's corner so that they stand still while a part moves.

import type { Fill, Point } from '../shapes';
import { within, type Slab, type Stroke } from './slab';

/** Spacing of the hatch lines, px; a fill that is not listed has a tint alone. */
export const HATCH: { readonly [fill in Fill]?: number } = { cedar: 6, ply: 3.5, resin: 5 };

/** Room left free of hatching round a text, px. */
const CLEAR = 2;
/** Shorter scraps of a line are left out, px. */
const SCRAP = 0.7;

const HALF = Math.SQRT1_2;

/**
 * The hatch lines inside closed rings (even-odd), px, interrupted where texts lie.
 * Rising lines go up to the right, falling ones down.
 */
export function hatchLines(
  rings: readonly (readonly Point[])[],
  spacing: number,
  falling: boolean,
  texts: readonly Slab[],
): Stroke[] {
  // Turned so that each hatch line is s -> (s, t) at one t = row * spacing.
  const mirror = falling ? -1 : 1;
  const rows = new Map<number, number[]>();
  for (const ring of rings) {
    let from = ring.at(-1);
    for (const to of ring) {
      if (from) crossRows(rows, spacing, turned(from, mirror), turned(to, mirror));
      from = to;
    }
  }

  const inTheWay = textsOn(rings, texts);
  const strokes: Stroke[] = [];
  for (const [row, crossings] of rows) {
    crossings.sort((a, b) => a - b);
    for (let i = 1; i < crossings.length; i += 2) {
      const [x1, y1] = turnedBack(crossings[i - 1] ?? 0, row * spacing, mirror);
      const [x2, y2] = turnedBack(crossings[i] ?? 0, row * spacing, mirror);
      interrupt(strokes, [x1, y1, x2, y2], inTheWay);
    }
  }
  return strokes;
}

/** The texts that may lie on the rings, by their extents. */
function textsOn(rings: readonly (readonly Point[])[], texts: readonly Slab[]): readonly Slab[] {
  let [left, right, top, bottom] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const [x, y] of rings.flat()) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    top = Math.min(top, y);
    bottom = Math.max(bottom, y);
  }
  return texts.filter(
    (t) =>
      t.x + t.reachX + CLEAR > left &&
      t.x - t.reachX - CLEAR < right &&
      t.y + t.reachY + CLEAR > top &&
      t.y - t.reachY - CLEAR < bottom,
  );
}

const turned = ([x, y]: Point, mirror: number): Point => [HALF * (x - mirror * y), HALF * (y + mirror * x)];

const turnedBack = (s: number, t: number, mirror: number): Point => [
  HALF * (s + mirror * t),
  HALF * (t - mirror * s),
];

/** Notes where an edge crosses each row; half open, so that a corner on a row counts once. */
function crossRows(rows: Map<number, number[]>, spacing: number, a: Point, b: Point): void {
  const [low, high] = a[1] < b[1] ? [a, b] : [b, a];
  const last = Math.ceil(high[1] / spacing) - 1;
  for (let row = Math.ceil(low[1] / spacing); row <= last; row++) {
    const share = (row * spacing - low[1]) / (high[1] - low[1]);
    const s = low[0] + share * (high[0] - low[0]);
    const found = rows.get(row);
    if (found) found.push(s);
    else rows.set(row, [s]);
  }
}

type Share = readonly [from: number, to: number];
const WHOLE: readonly Share[] = [[0, 1]];

/** Adds what is left of a stroke when the texts are given room. */
function interrupt(strokes: Stroke[], stroke: Stroke, texts: readonly Slab[]): void {
  let free: Share[] | null = null;
  for (const text of texts) {
    const taken = within(text, stroke, CLEAR);
    if (!taken) continue;
    free = (free ?? WHOLE).flatMap(([from, to]): Share[] => [
      [from, Math.min(to, taken[0])],
      [Math.max(from, taken[1]), to],
    ]);
  }
  const [x1, y1, x2, y2] = stroke;
  const scrap = SCRAP / Math.hypot(x2 - x1, y2 - y1);
  if (!free) {
    if (scrap < 1) strokes.push(stroke);
    return;
  }
  for (const [from, to] of free) {
    if (to - from <= scrap) continue;
    strokes.push([x1 + from * (x2 - x1), y1 + from * (y2 - y1), x1 + to * (x2 - x1), y1 + to * (y2 - y1)]);
  }
}
