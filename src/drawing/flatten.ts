// Shapes as plain polylines, for extents, for keeping texts clear, and for writers that know no arcs.

import {
  isText,
  type ArcShape,
  type Box,
  type CircleShape,
  type Drawing,
  type PlainShape,
  type Point,
  type Shape,
} from './shapes';

const TURN = 2 * Math.PI;

/** Anticlockwise sweep of an arc, 0 to a full turn; equal directions are a full turn. */
export function sweep(from: number, to: number): number {
  const angle = (((to - from) % TURN) + TURN) % TURN;
  return angle === 0 ? TURN : angle;
}

export const onCircle = (centre: Point, radius: number, angle: number): Point => [
  centre[0] + radius * Math.cos(angle),
  centre[1] + radius * Math.sin(angle),
];

/**
 * The strokes of a shape as polylines, mm; closed ones end where they began. Arcs are cut
 * so that no chord turns more than `step` radians (error: radius * step^2 / 8).
 */
export function flatten(shape: PlainShape, step = 0.1): (readonly Point[])[] {
  switch (shape.shape) {
    case 'line':
      return [shape.closed ? closed(shape.points) : shape.points];
    case 'area':
      return shape.rings.map(closed);
    case 'circle':
    case 'arc':
      return [arcPoints(shape, step)];
    case 'mark':
      return [[shape.at]];
    case 'arrow':
      return [[shape.from, shape.to]];
  }
}

const closed = (points: readonly Point[]): readonly Point[] => {
  const first = points[0];
  return first ? [...points, first] : points;
};

function arcPoints(shape: CircleShape | ArcShape, step: number): Point[] {
  const from = shape.shape === 'arc' ? shape.from : 0;
  const angle = shape.shape === 'arc' ? sweep(shape.from, shape.to) : TURN;
  const chords = Math.max(1, Math.ceil(angle / step));
  return Array.from({ length: chords + 1 }, (_, i) =>
    onCircle(shape.at, shape.radius, from + (angle * i) / chords),
  );
}

/** The places a shape needs on the sheet; of a text shape, those that it measures or points to. */
function reaches(shape: Shape): readonly Point[] {
  if (!isText(shape)) return flatten(shape).flat();
  if (shape.shape === 'dim') return [shape.from, shape.to];
  if (shape.shape === 'angle') return [shape.apex];
  if (shape.shape === 'radius') return [onCircle(shape.centre, shape.radius, shape.towards)];
  return shape.at ? [shape.at] : [];
}

/** Extents of all that is drawn, together with what is to be kept in sight; of nothing, a point at the origin. */
export function extents(drawing: Drawing): Box {
  let { left, bottom, right, top } = drawing.keepIn ?? NOTHING;
  for (const shape of drawing.shapes) {
    for (const [x, y] of reaches(shape)) {
      if (x < left) left = x;
      if (x > right) right = x;
      if (y < bottom) bottom = y;
      if (y > top) top = y;
    }
  }
  return left > right ? { left: 0, bottom: 0, right: 0, top: 0 } : { left, bottom, right, top };
}

const NOTHING: Box = { left: Infinity, bottom: Infinity, right: -Infinity, top: -Infinity };
