// Random drawings for property tests: all kinds of shapes, texts from none to long ones.

import * as fc from 'fast-check';
import {
  angleDim,
  arc,
  arrow,
  circle,
  dim,
  drawing,
  hatch,
  label,
  line,
  mark,
  note,
  radiusDim,
  type Point,
} from '../../src/drawing';

const coordinate = fc.double({ min: -900, max: 900, noNaN: true });
const point: fc.Arbitrary<Point> = fc.tuple(coordinate, coordinate);
const radius = fc.double({ min: 0, max: 500, noNaN: true });
const direction = fc.double({ min: -7, max: 7, noNaN: true });
const side = fc.constantFrom('above', 'below', 'left', 'right');
const text = fc.oneof(
  fc.constantFrom('19 mm', '14 5/8 in', 'R 1200 mm', '7.1°', 'glue line', ''),
  fc.lorem({ maxCount: 6 }),
  fc.string({ maxLength: 40 }),
);

const textShape = fc.oneof(
  fc
    .record({
      from: point,
      to: point,
      text,
      side,
      run: fc.constantFrom('aligned', 'horizontal', 'vertical'),
      level: fc.integer({ min: 0, max: 2 }),
    })
    .map(({ from, to, text, ...rest }) => dim(from, to, text, rest)),
  fc
    .tuple(point, direction, direction, text, radius)
    .map(([at, from, to, t, reach]) => angleDim(at, from, to, t, { reach })),
  fc.tuple(point, radius, direction, text).map(([at, r, towards, t]) => radiusDim(at, r, towards, t)),
  fc
    .tuple(point, text, fc.constantFrom('n', 'ne', 'e', 'se', 's', 'sw', 'w', 'nw'))
    .map(([at, t, toward]) => label(at, t, { toward })),
  fc.tuple(point, text).map(([at, t]) => label(at, t)),
  fc.tuple(point, text).map(([at, t]) => note(t, { at })),
  text.map((t) => note(t)),
);

const plainShape = fc.oneof(
  fc.array(point, { maxLength: 6 }).map((points) => line(points, { pen: 'outline' })),
  fc.tuple(point, radius).map(([at, r]) => circle(at, r)),
  fc.tuple(point, radius, direction, direction).map(([at, r, from, to]) => arc(at, r, from, to)),
  fc
    .tuple(
      fc.array(point, { maxLength: 6 }),
      fc.constantFrom('cedar', 'ply', 'plain', 'void', 'glue', 'resin'),
    )
    .map(([points, fill]) => hatch(points, fill)),
  point.map((at) => mark(at)),
  fc.tuple(point, point).map(([from, to]) => arrow(from, to)),
);

/** Drawings from empty to crowded. */
export const anyDrawing = fc
  .tuple(fc.array(plainShape, { maxLength: 8 }), fc.array(textShape, { maxLength: 12 }))
  .map(([plain, texts]) =>
    drawing({ title: 'Random', says: 'Random shapes.', shapes: [...plain, ...texts] }),
  );
