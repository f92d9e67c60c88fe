// Berths for a number that finds no room where its text would lie: away from there, on a leader that ties it to what it
// speaks of. What is drawn with the text, a dimension's lines or an angle's arc, stays.

import { type Berth, berth, numbered, onPaper, type Paper } from './berth';
import { beside } from './label-berths';
import type { Point, TextShape } from '../shapes';

/** How far the number may stand off, px, and in how many directions. */
const LENGTHS = [14, 26, 42, 64, 92, 128, 176, 240];
const DIRECTIONS = 16;

/** @param near the berth that its text or number had, with the lines that it keeps */
export function* tiedBerths(shape: TextShape, near: Berth, paper: Paper): Generator<Berth> {
  const at = placeOf(shape, near, paper);
  const hasLines = shape.shape === 'dim' || shape.shape === 'angle';
  const setting = numbered(0);
  for (const length of LENGTHS) {
    for (let turn = 0; turn < DIRECTIONS; turn++) {
      const direction = (turn * 2 * Math.PI) / DIRECTIONS;
      const [ux, uy] = [Math.cos(direction), Math.sin(direction)];
      const end: Point = [at[0] + length * ux, at[1] + length * uy];
      yield berth({
        cost: 0.05 * length,
        floor: 0.05 * length,
        setting,
        ...beside(end, ux, uy, setting),
        main: near.main,
        strokes: [...(hasLines ? near.strokes : []), [...at, ...end]],
        heads: hasLines ? near.heads : [],
        dot: hasLines ? null : at,
      });
    }
  }
}

/** Where the leader begins, px: on the line or the arc of a dimension, at the tip of a radius, where a note would lie. */
function placeOf(shape: TextShape, { main, strokes, heads, slab }: Berth, paper: Paper): Point {
  const [x1, y1, x2, y2] = main ?? strokes[Math.floor((strokes.length - 1) / 2)] ?? [0, 0, 0, 0];
  switch (shape.shape) {
    case 'dim':
    case 'angle':
      return [(x1 + x2) / 2, (y1 + y2) / 2];
    case 'radius':
      return heads[0] ? [heads[0][0], heads[0][1]] : [x1, y1];
    case 'label':
      return onPaper(paper, shape.at);
    case 'note':
      return shape.at ? onPaper(paper, shape.at) : [slab?.x ?? 0, slab?.y ?? 0];
  }
}
