// A coarse map of the sheet that remembers where strokes and hatching lie, so that texts
// can keep off them. It only ranks berths: a text over an outline is ugly, not wrong. What a text must
// not lie on at all, thin lines and heads of arrows that it would pass for its own, is kept exactly.

import { onPaper, type Paper } from './berth';
import { flatten } from '../flatten';
import { isText, type Shape } from '../shapes';
import { type Slab, type Stroke, within } from './slab';

/** Side of a cell, px. */
const CELL = 4;
/** Map beyond the geometry: a little, for marks and heavy lines at its edge, cells. */
const RIM = 2;

/** Paper wanted between a text and a stroke, px. */
const CLEAR = 2;

const STROKE = 2;
const HATCHED = 1;

interface Count {
  readonly strokes: number;
  readonly hatched: number;
}

export interface Ground {
  /** Cells with a stroke, and cells with hatching, under a text. */
  readonly under: (slab: Slab) => Count;
  /** Cells with a stroke along a thin line. */
  readonly along: (stroke: Stroke) => number;
  /** Thin lines and heads of arrows under a text. */
  readonly struck: (slab: Slab) => number;
}

/** Length of an arrow's head, and half its width with some air, px. */
const HEAD = 9;
const HEAD_CLEAR = 4;

interface Thin {
  readonly stroke: Stroke;
  /** Paper to be kept beside it, px. */
  readonly clear: number;
}

/** The strokes of shapes that no text may lie on, px. */
function thinStrokes(shapes: readonly Shape[], paper: Paper): Thin[] {
  return shapes.flatMap((shape): Thin[] => {
    if (shape.shape === 'arrow') {
      const [x1, y1] = onPaper(paper, shape.from);
      const [x2, y2] = onPaper(paper, shape.to);
      const length = Math.hypot(x2 - x1, y2 - y1);
      if (length < 0.5) return [];
      const share = HEAD / length; // a short arrow is all head
      const stroke: Stroke = [x2, y2, x2 - share * (x2 - x1), y2 - share * (y2 - y1)];
      return [{ stroke, clear: HEAD_CLEAR }];
    }
    if (shape.shape !== 'line' || shape.pen !== 'dimension') return [];
    const points = shape.points.map((point) => onPaper(paper, point));
    return points.slice(1).map((to, i) => ({ stroke: [...points[i]!, ...to], clear: CLEAR })); // the list shifted by one
  });
}

export function mapGround(shapes: readonly Shape[], paper: Paper): Ground {
  const left = paper.left - RIM * CELL;
  const top = paper.top - RIM * CELL;
  const columns = Math.ceil((paper.right - left) / CELL) + RIM;
  const rows = Math.ceil((paper.bottom - top) / CELL) + RIM;
  const cells = new Uint8Array(columns * rows);

  const look = (x: number, y: number): number => {
    const column = Math.floor((x - left) / CELL);
    const row = Math.floor((y - top) / CELL);
    if (column < 0 || column >= columns || row < 0 || row >= rows) return 0;
    return cells[row * columns + column] ?? 0;
  };
  const draw = ([x1, y1, x2, y2]: Stroke): void => {
    const steps = Math.max(1, Math.ceil(Math.hypot(x2 - x1, y2 - y1) / CELL));
    for (let i = 0; i <= steps; i++) {
      const column = Math.floor((x1 + ((x2 - x1) * i) / steps - left) / CELL);
      const row = Math.floor((y1 + ((y2 - y1) * i) / steps - top) / CELL);
      if (column >= 0 && column < columns && row >= 0 && row < rows) cells[row * columns + column] = STROKE;
    }
  };
  const fill = (corners: readonly (readonly [number, number])[]): void => {
    const first = Math.max(0, Math.floor((Math.min(...corners.map((c) => c[1])) - top) / CELL));
    const last = Math.min(rows - 1, Math.floor((Math.max(...corners.map((c) => c[1])) - top) / CELL));
    for (let row = first; row <= last; row++) {
      const y = top + (row + 0.5) * CELL;
      const crossings: number[] = [];
      let [px, py] = corners.at(-1) ?? [0, 0];
      for (const [x, cy] of corners) {
        if (py <= y !== cy <= y) crossings.push(px + ((y - py) / (cy - py)) * (x - px));
        px = x;
        py = cy;
      }
      crossings.sort((a, b) => a - b);
      for (let i = 0; i + 1 < crossings.length; i += 2) {
        const from = Math.max(0, Math.ceil(((crossings[i] ?? 0) - left) / CELL - 0.5));
        const to = Math.min(columns, Math.ceil(((crossings[i + 1] ?? 0) - left) / CELL - 0.5));
        for (let column = from; column < to; column++) cells[row * columns + column]! |= HATCHED;
      }
    }
  };

  // Hatching first: it is the weaker mark, and a stroke writes over it.
  const plain = shapes.filter((shape) => !isText(shape));
  for (const shape of plain) {
    if (shape.shape !== 'area' || shape.fill === 'void' || shape.fill === 'plain') continue;
    fill(shape.rings.flat().map((p) => onPaper(paper, p)));
  }
  for (const shape of plain) {
    if (shape.shape === 'area' && shape.pen === 'none') continue;
    for (const points of flatten(shape, 0.2)) {
      let [px, py] = onPaper(paper, points[0] ?? [0, 0]);
      for (const point of points) {
        const [x, y] = onPaper(paper, point);
        draw([px, py, x, y]);
        px = x;
        py = y;
      }
    }
  }

  const countUpright = (slab: Slab): Count => {
    const count = { strokes: 0, hatched: 0 };
    const firstColumn = Math.max(0, Math.floor((slab.x - slab.reachX - CLEAR - left) / CELL));
    const lastColumn = Math.min(columns - 1, Math.floor((slab.x + slab.reachX + CLEAR - left) / CELL));
    const firstRow = Math.max(0, Math.floor((slab.y - slab.reachY - CLEAR - top) / CELL));
    const lastRow = Math.min(rows - 1, Math.floor((slab.y + slab.reachY + CLEAR - top) / CELL));
    for (let row = firstRow; row <= lastRow; row++) {
      for (let column = firstColumn; column <= lastColumn; column++) {
        const found = cells[row * columns + column];
        if (found === STROKE) count.strokes++;
        else if (found === HATCHED) count.hatched++;
      }
    }
    return count;
  };
  const countTurned = (slab: Slab): Count => {
    const count = { strokes: 0, hatched: 0 };
    const halfWidth = slab.halfWidth + CLEAR;
    const halfHeight = slab.halfHeight + CLEAR;
    const across = Math.ceil((2 * halfWidth) / CELL);
    const down = Math.ceil((2 * halfHeight) / CELL);
    for (let i = 0; i <= across; i++) {
      for (let j = 0; j <= down; j++) {
        const s = halfWidth * ((2 * i) / across - 1);
        const t = halfHeight * ((2 * j) / down - 1);
        const found = look(slab.x + s * slab.cos - t * slab.sin, slab.y + s * slab.sin + t * slab.cos);
        if (found === STROKE) count.strokes++;
        else if (found === HATCHED) count.hatched++;
      }
    }
    return count;
  };

  const thin = thinStrokes(shapes, paper);
  return {
    struck: (slab) => thin.filter(({ stroke, clear }) => within(slab, stroke, clear)).length,
    under: (slab) => (slab.cos === 1 || slab.cos === 0 ? countUpright(slab) : countTurned(slab)),
    along: ([x1, y1, x2, y2]) => {
      const steps = Math.max(1, Math.ceil(Math.hypot(x2 - x1, y2 - y1) / CELL));
      let strokes = 0;
      for (let i = 0; i <= steps; i++) {
        if (look(x1 + ((x2 - x1) * i) / steps, y1 + ((y2 - y1) * i) / steps) === STROKE) strokes++;
      }
      return strokes;
    },
  };
}
