// A drawing at full size, as ink on paper: strokes, solids and texts in millimetres, y up from the lower left.
// Tints and hatching stay off: a pattern is cut along its lines, and areas of ink cost more than they tell.

import { flattenPath } from './full-size-path';
import { setOut } from '../set-out/set-out';
import type { Drawing, Pen, Point } from '../shapes';
import type { Placed, PlacedPath, PlacedText } from '../set-out/sheet';
import { PX_PER_MM } from './svg';
import { LINE } from '../set-out/text-size';

export interface InkLine {
  readonly ink: 'line';
  readonly points: readonly Point[];
  readonly pen: Pen;
  readonly part?: string;
}

export interface InkSolid {
  readonly ink: 'solid';
  readonly points: readonly Point[];
  /** White hides what lies under it. */
  readonly white: boolean;
}

export interface InkText {
  readonly ink: 'text';
  /** Of the baseline. */
  readonly at: Point;
  readonly text: string;
  /** Font size, mm. */
  readonly size: number;
  readonly anchor: PlacedText['anchor'];
  /** Anticlockwise, rad. */
  readonly turn: number;
  readonly bold: boolean;
}

export type Ink = InkLine | InkSolid | InkText;

/** A drawing ready for paper, its lower left corner at 0, 0; mm. */
export interface Inked {
  readonly title: string;
  readonly width: number;
  readonly height: number;
  readonly ink: readonly Ink[];
  /** Where the drawing's own origin came to lie, mm. */
  readonly origin: Point;
}

/** Text size at full size, px at 96 to the inch: 4.2 mm. */
const TEXT = 16;

export function inked(drawing: Drawing): Inked {
  const sheet = setOut(drawing, { width: 0, scale: PX_PER_MM, text: TEXT, bar: false, caption: false });
  const height = sheet.height / PX_PER_MM;
  const place = ([x, y]: Point): Point => [x / PX_PER_MM, height - y / PX_PER_MM];
  return {
    title: drawing.title,
    width: sheet.width / PX_PER_MM,
    height,
    ink: sheet.marks.flatMap((mark) => inkOf(mark, place)),
    origin: place(sheet.origin),
  };
}

function inkOf(mark: Placed, place: (at: Point) => Point): Ink[] {
  return mark.kind === 'text' ? textInk(mark, place) : pathInk(mark, place);
}

function textInk(
  { x, y, lines, size, anchor, turn, className }: PlacedText,
  place: (at: Point) => Point,
): Ink[] {
  const radians = (turn * Math.PI) / 180;
  return lines.map((text, i): InkText => {
    const down = i * LINE * size;
    return {
      ink: 'text',
      at: place([x - down * Math.sin(radians), y + down * Math.cos(radians)]),
      text,
      size: size / PX_PER_MM,
      anchor,
      turn: -radians,
      bold: className === 'dim-text' || className === 'number-text',
    };
  });
}

const SOLID: ReadonlySet<string> = new Set(['arrowhead', 'leader-dot', 'bar-solid', 'fill-glue']);
const PEN = /^pen-(\w+)$/;

function pathInk({ d, className, part }: PlacedPath, place: (at: Point) => Point): Ink[] {
  const strokes = flattenPath(d).map((points) => points.map(place));
  const [, pen] = PEN.exec(className) ?? [];
  if (pen !== undefined) {
    return strokes.map((points): InkLine => ({
      ink: 'line',
      points,
      pen: pen as Pen, // class names of pens are made from pens
      ...(part === undefined ? {} : { part }),
    }));
  }
  const solid = (white: boolean) => strokes.map((points): InkSolid => ({ ink: 'solid', points, white }));
  if (SOLID.has(className)) return solid(false);
  if (className === 'fill-void') return solid(true);
  if (className !== 'key-ring') return [];
  return [...solid(true), ...strokes.map((points): InkLine => ({ ink: 'line', points, pen: 'thin' }))];
}
