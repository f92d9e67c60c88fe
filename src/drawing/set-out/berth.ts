// A berth is one place where a text may lie, together with the thin lines that tie it to
// what it speaks of. Each kind of text shape offers its berths one after another, the
// likeliest first; `seating` takes the first that disturbs nobody.

import type { Point } from '../shapes';
import { makeSlab, shifted, type Slab, type Stroke } from './slab';
import { textHeight, textWidth, wrap } from './text-size';

/** The sheet as berths see it: where the geometry lies, px, y down. */
export interface Paper {
  /** px for each mm */
  readonly scale: number;
  /** Where the drawing's origin lies, px. */
  readonly origin: Point;
  /** The geometry's extents on paper, px. */
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  /** Size of dimension texts and labels, px. */
  readonly size: number;
}

export const onPaper = (paper: Paper, [x, y]: Point): Point => [
  paper.origin[0] + paper.scale * x,
  paper.origin[1] - paper.scale * y,
];

/** One way to set a text: in one line, in two, or as a number that stands for it. */
export interface Setting {
  readonly lines: readonly string[];
  readonly width: number;
  readonly height: number;
  /** What it costs to set it so rather than in one line. */
  readonly cost: number;
  readonly ringed: boolean;
}

export type Anchor = 'start' | 'middle' | 'end';

/** An arrowhead by its tip and the direction in which it points. */
export type Arrowhead = readonly [x: number, y: number, towardX: number, towardY: number];

export interface Berth {
  readonly cost: number;
  /** No berth offered later costs less than this. */
  readonly floor: number;
  readonly setting: Setting;
  /** The text's place; null when the text has none on the drawing. */
  readonly slab: Slab | null;
  readonly anchor: Anchor;
  /** The dimension line itself, kept apart from other dimension lines. */
  readonly main: Stroke | null;
  /** All thin lines, the main one too. */
  readonly strokes: readonly Stroke[];
  readonly heads: readonly Arrowhead[];
  /** Where a leader ends in a dot. */
  readonly dot: Point | null;
  /** Bounds of all that, px. */
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Side of the square that a key number takes, px. */
const RING = 19;

/** The number that stands for a text kept in the key. */
export const numbered = (number: number): Setting => ({
  lines: [String(number)],
  width: RING,
  height: RING,
  cost: 0,
  ringed: true,
});

/** From this width, over the font size, a text may also be set in two lines. */
const LONG = 7.5;

/** The ways to set a text no wider than `room` px: in one line where that fits, in two, else in as many as it takes. */
export function settings(text: string, size: number, room: number): Setting[] {
  const width = textWidth(text, size);
  const set = (lines: readonly string[], cost: number): Setting => ({
    lines,
    width: Math.max(...lines.map((l) => textWidth(l, size))),
    height: textHeight(lines.length, size),
    cost,
    ringed: false,
  });
  const found: Setting[] = [];
  if (width <= room) found.push(set([text], 0));
  if (width > LONG * size) {
    // Halves of about one length: a little more than half, for a word seldom ends in the middle.
    const lines = wrap(text, size, Math.min(room, 0.5 * width + 2.5 * size));
    if (lines.length > 1) found.push(set(lines, 1.6));
  }
  return found.length > 0 ? found : [set(wrap(text, size, room), 1.6)];
}

export interface BerthParts {
  readonly cost: number;
  readonly floor: number;
  readonly setting: Setting;
  readonly slab: Slab;
  readonly anchor?: Anchor;
  readonly main?: Stroke | null;
  readonly strokes: readonly Stroke[];
  readonly heads?: readonly Arrowhead[];
  readonly dot?: Point | null;
}

/** A berth with its bounds. Written out field by field: hundreds are made while a slider moves. */
export function berth(parts: BerthParts): Berth {
  const { cost, floor, setting, slab, strokes } = parts;
  let left = slab.x - slab.reachX;
  let right = slab.x + slab.reachX;
  let top = slab.y - slab.reachY;
  let bottom = slab.y + slab.reachY;
  for (const stroke of strokes) {
    left = Math.min(left, stroke[0], stroke[2]);
    right = Math.max(right, stroke[0], stroke[2]);
    top = Math.min(top, stroke[1], stroke[3]);
    bottom = Math.max(bottom, stroke[1], stroke[3]);
  }
  const { anchor = 'middle', main = null, heads = [], dot = null } = parts;
  return { cost, floor, setting, slab, anchor, main, strokes, heads, dot, left, right, top, bottom };
}

/** A text's slab about its centre; `ux, uy` is the direction in which it reads. */
export const slabAt = (x: number, y: number, setting: Setting, ux = 1, uy = 0): Slab =>
  makeSlab(x, y, setting.width / 2, setting.height / 2, ux, uy);

export const movedBerth = (b: Berth, dx: number, dy: number): Berth => ({
  ...b,
  slab: b.slab && shifted(b.slab, dx, dy),
  main: b.main && movedStroke(b.main, dx, dy),
  strokes: b.strokes.map((s) => movedStroke(s, dx, dy)),
  heads: b.heads.map(([x, y, ux, uy]) => [x + dx, y + dy, ux, uy]),
  dot: b.dot && [b.dot[0] + dx, b.dot[1] + dy],
  left: b.left + dx,
  right: b.right + dx,
  top: b.top + dy,
  bottom: b.bottom + dy,
});

const movedStroke = ([x1, y1, x2, y2]: Stroke, dx: number, dy: number): Stroke => [
  x1 + dx,
  y1 + dy,
  x2 + dx,
  y2 + dy,
];

export const movedPaper = (p: Paper, dx: number, dy: number): Paper => ({
  ...p,
  origin: [p.origin[0] + dx, p.origin[1] + dy],
  left: p.left + dx,
  right: p.right + dx,
  top: p.top + dy,
  bottom: p.bottom + dy,
});
