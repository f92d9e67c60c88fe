// Builders of shapes, so that a cell's drawing reads like a list of what is drawn.

import { putBefore } from '../measure';
import type {
  AngleShape,
  ArcShape,
  AreaShape,
  ArrowShape,
  Box,
  CircleShape,
  Compass,
  DimShape,
  Drawing,
  Fill,
  Grip,
  LabelShape,
  LineShape,
  MarkShape,
  NoteShape,
  Pen,
  Point,
  RadiusShape,
  DimensionRun,
  Shape,
  SheetSide,
  Tag,
} from './shapes';

/** Metres, as the cells reckon, to the millimetres of a drawing. */
export const mm = (metres: number): number => metres * 1000;

type Nested = Shape | readonly Nested[];

/**
 * A drawing from its shapes; lists among them are laid open, so a part can be drawn by a
 * function of its own. Its texts read as a sentence does: `a scant 3/4 in deep`.
 *
 * Throws when a coordinate is not a finite number, naming the drawing and the shape: the
 * cell must then refuse the input in its own words, for nothing sensible can be drawn.
 */
export function drawing(parts: {
  readonly title: string;
  readonly says: string;
  readonly shapes: readonly Nested[];
  readonly grips?: readonly Grip[];
  readonly keepIn?: Box;
  readonly toScale?: false;
}): Drawing {
  const shapes = (parts.shapes as readonly unknown[]).flat(Infinity) as Shape[];
  for (const shape of shapes) {
    if (!allFinite(shape)) {
      throw new Error(`the drawing "${parts.title}" has a ${shape.shape} at a place that is not a number`);
    }
  }
  if (parts.keepIn && !allFinite(parts.keepIn)) {
    throw new Error(`the drawing "${parts.title}" is to keep within extents that are not numbers`);
  }
  return {
    ...parts,
    says: putBefore(parts.says),
    shapes: shapes.map((shape) => ('text' in shape ? { ...shape, text: putBefore(shape.text) } : shape)),
  };
}

function allFinite(value: unknown): boolean {
  if (typeof value === 'number') return Number.isFinite(value);
  if (Array.isArray(value)) return value.every(allFinite);
  return typeof value !== 'object' || value === null || Object.values(value).every(allFinite);
}

export function line(
  points: readonly Point[],
  { pen = 'visible', closed = false, ...tag }: Tag & { readonly pen?: Pen; readonly closed?: boolean } = {},
): LineShape {
  return { shape: 'line', points, closed, pen, ...tag };
}

/** The outline of an upright rectangle from its lower left corner. */
export function rect(
  x: number,
  y: number,
  width: number,
  height: number,
  { pen = 'outline', ...tag }: Tag & { readonly pen?: Pen } = {},
): LineShape {
  return { shape: 'line', points: corners(x, y, width, height), closed: true, pen, ...tag };
}

const corners = (x: number, y: number, width: number, height: number): Point[] => [
  [x, y],
  [x + width, y],
  [x + width, y + height],
  [x, y + height],
];

export function circle(
  at: Point,
  radius: number,
  { pen = 'visible', ...tag }: Tag & { readonly pen?: Pen } = {},
): CircleShape {
  return { shape: 'circle', at, radius, pen, ...tag };
}

/** Anticlockwise from direction `from` to direction `to`, radians. */
export function arc(
  centre: Point,
  radius: number,
  from: number,
  to: number,
  { pen = 'visible', ...tag }: Tag & { readonly pen?: Pen } = {},
): ArcShape {
  return { shape: 'arc', at: centre, radius, from, to, pen, ...tag };
}

export const centreLine = (from: Point, to: Point, tag: Tag = {}): LineShape =>
  line([from, to], { pen: 'centre', ...tag });

/** The zigzag that says a part is broken off here and goes on. */
export function breakLine(from: Point, to: Point, tag: Tag = {}): LineShape {
  const along = (share: number, out: number): Point => [
    from[0] + share * (to[0] - from[0]) - out * (to[1] - from[1]),
    from[1] + share * (to[1] - from[1]) + out * (to[0] - from[0]),
  ];
  const points = [from, along(0.43, 0), along(0.47, 0.09), along(0.53, -0.09), along(0.57, 0), to];
  return line(points, { pen: 'thin', ...tag });
}

interface HatchOptions extends Tag {
  readonly holes?: readonly (readonly Point[])[];
  readonly pen?: Pen | 'none';
  readonly falling?: boolean;
}

/** A filled area inside a closed outline; `falling` hatches it the other way from its neighbour. */
export function hatch(
  points: readonly Point[],
  fill: Fill = 'cedar',
  { holes = [], pen = 'outline', falling = false, ...tag }: HatchOptions = {},
): AreaShape {
  return { shape: 'area', rings: [points, ...holes], fill, pen, falling, ...tag };
}

export const rectHatch = (
  x: number,
  y: number,
  width: number,
  height: number,
  fill: Fill = 'cedar',
  options: HatchOptions = {},
): AreaShape => hatch(corners(x, y, width, height), fill, options);

/**
 * A linear dimension. Unless told, it stands below what is rather flat and to the left of
 * what is rather steep.
 */
export function dim(
  from: Point,
  to: Point,
  text: string,
  options: Tag & { readonly side?: SheetSide; readonly run?: DimensionRun; readonly level?: number } = {},
): DimShape {
  const { run = 'aligned', level = 0, ...tag } = options;
  const steep =
    run === 'vertical' || (run === 'aligned' && Math.abs(to[1] - from[1]) > Math.abs(to[0] - from[0]));
  return { shape: 'dim', from, to, text, run, level, side: steep ? 'left' : 'below', ...tag };
}

/** The angle from direction `from` to direction `to`, radians, anticlockwise. */
export function angleDim(
  apex: Point,
  from: number,
  to: number,
  text: string,
  { reach = 0, ...tag }: Tag & { readonly reach?: number } = {},
): AngleShape {
  return { shape: 'angle', apex, from, to, text, reach, ...tag };
}

/** An arrow from or towards the centre, on the curve in direction `towards`; the text brings its own R. */
export const radiusDim = (
  centre: Point,
  radius: number,
  towards: number,
  text: string,
  tag: Tag = {},
): RadiusShape => ({ shape: 'radius', centre, radius, towards, text, ...tag });

export function label(
  at: Point,
  text: string,
  { toward, ...tag }: Tag & { readonly toward?: Compass; readonly again?: boolean } = {},
): LabelShape {
  return { shape: 'label', at, text, toward: toward ?? null, ...tag };
}

export function note(
  text: string,
  { at, ...more }: Tag & { readonly at?: Point; readonly inRow?: true } = {},
): NoteShape {
  return { shape: 'note', at: at ?? null, text, ...more };
}

export function mark(
  at: Point,
  { form = 'cross', ...tag }: Tag & { readonly form?: MarkShape['form'] } = {},
): MarkShape {
  return { shape: 'mark', at, form, ...tag };
}

export function arrow(
  from: Point,
  to: Point,
  { pen = 'visible', ...tag }: Tag & { readonly pen?: Pen } = {},
): ArrowShape {
  return { shape: 'arrow', from, to, pen, ...tag };
}
