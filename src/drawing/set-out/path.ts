// SVG path data, rounded to 0.01 px.

import { onPaper, type Arrowhead, type Paper } from './berth';
import { onCircle, sweep } from '../flatten';
import type { ArcShape, ArrowShape, CircleShape, MarkShape, Point } from '../shapes';
import type { Stroke } from './slab';

export const round = (value: number): number => Math.round(value * 100) / 100 + 0;

/** Fractions as they are written, by hundredths: nothing for .00, '.5' for .50. */
const FRACTION: readonly string[] = Array.from({ length: 100 }, (_, i) => String(i / 100).slice(1));

/** A number as it is written in a path; whole numbers are several times quicker to write than fractions. */
function written(value: number): string {
  const hundredths = Math.round(value * 100);
  if (hundredths < 0) return `-${written(-value)}`;
  const whole = Math.floor(hundredths / 100);
  return whole + (FRACTION[hundredths - 100 * whole] ?? '');
}

const pair = (x: number, y: number): string => `${written(x)} ${written(y)}`;

/** A polyline through places on paper. */
export function polyline(points: readonly Point[], closed = false): string {
  let d = '';
  for (const [x, y] of points) d += `${d === '' ? 'M' : 'L'}${pair(x, y)}`;
  return closed && d !== '' ? `${d}Z` : d;
}

export function strokesPath(strokes: readonly Stroke[]): string {
  let d = '';
  for (const s of strokes) d += `M${pair(s[0], s[1])}L${pair(s[2], s[3])}`;
  return d;
}

/** Length and half width of an arrowhead, px. */
const HEAD = 9;
const HALF = 2.1;

export const headsPath = (heads: readonly Arrowhead[]): string =>
  heads
    .map(([x, y, ux, uy]) =>
      polyline(
        [
          [x, y],
          [x - HEAD * ux - HALF * uy, y - HEAD * uy + HALF * ux],
          [x - HEAD * ux + HALF * uy, y - HEAD * uy - HALF * ux],
        ],
        true,
      ),
    )
    .join('');

/** A small disc as an octagon. */
export const dotPath = (at: Point, radius: number): string =>
  polyline(
    Array.from({ length: 8 }, (_, i) => onCircle(at, radius, (Math.PI / 4) * (i + 0.5))),
    true,
  );

export function ringPath([x, y]: Point, radius: number): string {
  const r = round(radius);
  return `M${pair(x - radius, y)}A${r} ${r} 0 1 0 ${pair(x + radius, y)}A${r} ${r} 0 1 0 ${pair(x - radius, y)}Z`;
}

export const circlePath = (shape: CircleShape, paper: Paper): string =>
  ringPath(onPaper(paper, shape.at), shape.radius * paper.scale);

export function arcPath(shape: ArcShape, paper: Paper): string {
  const angle = sweep(shape.from, shape.to);
  const radius = shape.radius * paper.scale;
  if (angle === 2 * Math.PI) return ringPath(onPaper(paper, shape.at), radius);
  const start = onPaper(paper, onCircle(shape.at, shape.radius, shape.from));
  const end = onPaper(paper, onCircle(shape.at, shape.radius, shape.to));
  const r = round(radius);
  // Anticlockwise on the drawing is SVG's negative sweep, for y runs down on paper.
  return `M${pair(...start)}A${r} ${r} 0 ${angle > Math.PI ? 1 : 0} 0 ${pair(...end)}`;
}

/** Half the size of a point mark, px. */
const MARK = 4;

export function markPath(shape: MarkShape, paper: Paper): string {
  const at = onPaper(paper, shape.at);
  const [x, y] = at;
  switch (shape.form) {
    case 'dot':
      return dotPath(at, 2.6);
    case 'ring':
      return ringPath(at, MARK);
    case 'cross':
      return strokesPath([
        [x - MARK, y, x + MARK, y],
        [x, y - MARK, x, y + MARK],
      ]);
  }
}

/** An arrow's shaft and head; one too short for its head is all head. */
export function arrowPaths(
  shape: ArrowShape,
  paper: Paper,
): { readonly shaft: string; readonly head: string } {
  const [x1, y1] = onPaper(paper, shape.from);
  const [x2, y2] = onPaper(paper, shape.to);
  const length = Math.hypot(x2 - x1, y2 - y1);
  if (length < 0.5) return { shaft: '', head: '' };
  const [ux, uy] = [(x2 - x1) / length, (y2 - y1) / length];
  const neck = Math.min(length, HEAD);
  return {
    shaft: strokesPath([[x1, y1, x2 - neck * ux, y2 - neck * uy]]),
    head: headsPath([[x2, y2, ux, uy]]),
  };
}
