// Texts tied to a place by a leader (labels and radii), and texts that merely lie there (notes).

import { berth, onPaper, slabAt, type Berth, type BerthParts, type Paper, type Setting } from './berth';
import type { Compass, LabelShape, NoteShape, Point, RadiusShape } from '../shapes';

/** Between a leader's end and its text, px. */
const GAP = 3;

const COMPASS: readonly Compass[] = ['e', 'ne', 'n', 'nw', 'w', 'sw', 's', 'se'];

export interface Reach {
  /** Eighths of a turn away from the preferred direction. */
  readonly veer: number;
  readonly length: number;
  readonly cost: number;
}

/** Leaders of all lengths and directions, the cheapest first: short ones, near the wished direction. */
export const REACHES: readonly Reach[] = [14, 26, 42, 64, 92, 128, 176]
  .flatMap((length) =>
    [0, 1, -1, 2, -2, 3, -3, 4].map((veer) => ({
      veer,
      length,
      cost: 0.05 * (length - 14) + (length > 64 ? 2 : 0) + 0.9 * Math.abs(veer) + (veer < 0 ? 0.05 : 0),
    })),
  )
  .sort((a, b) => a.cost - b.cost);

/** Away from the middle of the drawing, so that the leader leaves it by the shortest way. */
function away(paper: Paper, [x, y]: Point): number {
  const east = x - (paper.left + paper.right) / 2;
  const north = (paper.top + paper.bottom) / 2 - y;
  // Rather north-east than along an axis: texts on both axes are most in the way.
  return Math.round((Math.atan2(north, east) - Math.PI / 4) / (Math.PI / 2)) * 2 + 1;
}

export function* labelBerths(
  shape: LabelShape,
  paper: Paper,
  settings: readonly Setting[],
): Generator<Berth> {
  const at = onPaper(paper, shape.at);
  const wished = shape.toward ? COMPASS.indexOf(shape.toward) : away(paper, at);
  for (const { veer, length, cost } of REACHES) {
    const direction = ((wished + veer) * Math.PI) / 4;
    const end: Point = [at[0] + length * Math.cos(direction), at[1] - length * Math.sin(direction)];
    for (const setting of settings) {
      yield berth({
        cost: cost + setting.cost,
        floor: cost,
        setting,
        ...beside(end, Math.cos(direction), -Math.sin(direction), setting),
        strokes: [[...at, ...end]],
        dot: at,
      });
    }
  }
}

/** A level text at the end of a leader that comes from direction -(ux, uy). */
export function beside(
  [x, y]: Point,
  ux: number,
  uy: number,
  setting: Setting,
): Pick<BerthParts, 'slab' | 'anchor'> {
  if (Math.abs(ux) < 0.3) {
    return { slab: slabAt(x, y + Math.sign(uy) * (GAP + setting.height / 2), setting) };
  }
  const east = ux > 0;
  return {
    slab: slabAt(x + (east ? 1 : -1) * (GAP + setting.width / 2), y, setting),
    anchor: setting.ringed ? 'middle' : east ? 'start' : 'end',
  };
}

const RADIUS_LEADERS = [26, 40, 58, 80, 110, 150];

export function* radiusBerths(
  shape: RadiusShape,
  paper: Paper,
  settings: readonly Setting[],
): Generator<Berth> {
  const centre = onPaper(paper, shape.centre);
  const radius = shape.radius * paper.scale;
  const ux = Math.cos(shape.towards);
  const uy = -Math.sin(shape.towards);
  const tip: Point = [centre[0] + radius * ux, centre[1] + radius * uy];
  for (const [rank, length] of RADIUS_LEADERS.entries()) {
    for (const inward of [true, false]) {
      // From inside the leader can be no longer than the radius.
      if (inward && length > radius) continue;
      const way = inward ? -1 : 1;
      const end: Point = [tip[0] + way * length * ux, tip[1] + way * length * uy];
      for (const setting of settings) {
        yield berth({
          cost: rank + (inward ? 0 : 0.4) + setting.cost,
          floor: rank,
          setting,
          ...beside(end, way * ux, way * uy, setting),
          strokes: [[...tip, ...end]],
          heads: [[...tip, -way * ux, -way * uy]],
        });
      }
    }
  }
}

/** Shifts of a note from its place, in half widths and heights of its text. */
const SHIFTS: readonly Point[] = [
  [0, 0],
  [0, -1.1],
  [0, 1.1],
  [1.2, 0],
  [-1.2, 0],
  [0, -2.2],
  [0, 2.2],
  [1.2, -1.1],
  [-1.2, -1.1],
  [1.2, 1.1],
  [-1.2, 1.1],
];

/** The same of one that stays in its row. */
const ALONG: readonly Point[] = [0, 1.2, -1.2, 2.4, -2.4, 3.6, -3.6].map((right) => [right, 0]);

export function* noteBerths(
  { at, inRow }: NoteShape,
  paper: Paper,
  settings: readonly Setting[],
): Generator<Berth> {
  const [x, y] = onPaper(paper, at ?? [0, 0]);
  for (const [rank, [right, down]] of (inRow ? ALONG : SHIFTS).entries()) {
    for (const setting of settings) {
      yield berth({
        cost: rank + setting.cost,
        floor: rank,
        setting,
        slab: slabAt(x + (right * setting.width) / 2, y + down * setting.height, setting),
        strokes: [],
      });
    }
  }
}
