// What a drawing is made of: true millimetres, x to the right, y up; angles in
// radians, anticlockwise from +x. No pixels, colours or fonts: those belong to paper.

/** A place on the drawing, mm. */
export type Point = readonly [x: number, y: number];

/** A draughtsman's pens: heavy, medium, dashed, chain, thin, thinner, and dashed for the second version. */
export type Pen =
  | 'outline'
  | 'visible'
  | 'hidden'
  | 'centre'
  | 'dimension'
  | 'thin'
  | 'ghost'
  /** Of a lines plan: its grid, waterlines, the one she is drawn to float at, and buttocks. */
  | 'grid'
  | 'waterline'
  | 'design'
  | 'buttock';

/** Fills named after the yard. Cedar and ply are hatched, resin is hatched broken; void is bare paper. */
export type Fill = 'cedar' | 'ply' | 'glue' | 'resin' | 'void' | 'plain';

export type SheetSide = 'above' | 'below' | 'left' | 'right';

/** Compass directions on the sheet, north up. */
export type Compass = 'n' | 'ne' | 'e' | 'se' | 's' | 'sw' | 'w' | 'nw';

/** What a dimension measures: the distance itself, or only its horizontal or vertical part. */
export type DimensionRun = 'aligned' | 'horizontal' | 'vertical';

/** Extents, mm. */
export interface Box {
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
  readonly top: number;
}

/** Where a shape belongs: the hull part it shows (to light it up) and a layer of its own choice. */
export interface Tag {
  readonly part?: string;
  readonly layer?: string;
}

export interface LineShape extends Tag {
  readonly shape: 'line';
  readonly points: readonly Point[];
  readonly closed: boolean;
  readonly pen: Pen;
}

export interface CircleShape extends Tag {
  readonly shape: 'circle';
  readonly at: Point;
  readonly radius: number;
  readonly pen: Pen;
}

/** Anticlockwise from `from` to `to`. */
export interface ArcShape extends Tag {
  readonly shape: 'arc';
  readonly at: Point;
  readonly radius: number;
  readonly from: number;
  readonly to: number;
  readonly pen: Pen;
}

/** A filled area; its rings are closed, and a ring inside another is a hole (even-odd). */
export interface AreaShape extends Tag {
  readonly shape: 'area';
  readonly rings: readonly (readonly Point[])[];
  readonly fill: Fill;
  readonly pen: Pen | 'none';
  /** Hatched the other way, so that two parts that touch can be told apart. */
  readonly falling: boolean;
}

export interface DimShape extends Tag {
  readonly shape: 'dim';
  readonly from: Point;
  readonly to: Point;
  readonly text: string;
  readonly run: DimensionRun;
  readonly side: SheetSide;
  /** 0 is nearest to the part. A wish: a dimension steps outward where it must. */
  readonly level: number;
}

/** The angle from direction `from` to direction `to`, anticlockwise. */
export interface AngleShape extends Tag {
  readonly shape: 'angle';
  readonly apex: Point;
  readonly from: number;
  readonly to: number;
  readonly text: string;
  /** Length of the legs that other shapes draw already, mm. */
  readonly reach: number;
}

/** An arrow on a curve, in line with its centre. */
export interface RadiusShape extends Tag {
  readonly shape: 'radius';
  readonly centre: Point;
  readonly radius: number;
  readonly towards: number;
  readonly text: string;
}

/** A text with a leader to the place it speaks of. */
export interface LabelShape extends Tag {
  readonly shape: 'label';
  readonly at: Point;
  readonly text: string;
  readonly toward: Compass | null;
  /** The same name stands elsewhere too: this one is left out where there is no room for it close by. */
  readonly again?: boolean;
}

/** A text without a leader: centred at a place, or a sentence under the drawing. */
export interface NoteShape extends Tag {
  readonly shape: 'note';
  readonly at: Point | null;
  readonly text: string;
  /** Its height says what it is of: where it is in the way it moves along, never up or down. */
  readonly inRow?: true;
}

/** A point mark, of one size on paper whatever the scale. */
export interface MarkShape extends Tag {
  readonly shape: 'mark';
  readonly at: Point;
  readonly form: 'cross' | 'dot' | 'ring';
}

/** A force or a motion, its head at `to`. */
export interface ArrowShape extends Tag {
  readonly shape: 'arrow';
  readonly from: Point;
  readonly to: Point;
  readonly pen: Pen;
}

/** Shapes that carry a text for which room must be found on the sheet. */
export type TextShape = DimShape | AngleShape | RadiusShape | LabelShape | NoteShape;

/** Shapes drawn where they are. */
export type PlainShape = LineShape | CircleShape | ArcShape | AreaShape | MarkShape | ArrowShape;

export type Shape = TextShape | PlainShape;

/** A number that a point of a drawing stands for, along one way of the paper. */
export interface GripWay {
  /** Of the cell's input. */
  readonly key: string;
  /** Where it is 0, mm; it grows to the right, or upward, 1 m by 1000 mm. */
  readonly zero: number;
}

/** A point that is moved by hand, and the numbers that follow it. */
export interface Grip {
  /** What is moved, as its label calls it; with a number or two of the cell. */
  readonly name: string;
  readonly at: Point;
  readonly right?: GripWay;
  readonly up?: GripWay;
}

export interface Drawing {
  /** What is drawn, from where; it stands under the drawing, and the notes without a place follow it. */
  readonly title: string;
  /** Its numbers in a sentence or two, for those who don't see it. Beside it the cell says them itself. */
  readonly says: string;
  readonly shapes: readonly Shape[];
  /** What can be moved on it by hand, on a page. */
  readonly grips?: readonly Grip[];
  /** Extents held steady while a slider moves; the sheet still grows if a shape leaves them. */
  readonly keepIn?: Box;
  /** False where lengths stand for something else, hours say: no scale bar stands under it. */
  readonly toScale?: false;
}

export const isText = (shape: Shape): shape is TextShape => 'text' in shape;

/** A note that stands under the drawing, having no place on it. */
export const isFootNote = (shape: Shape): shape is NoteShape => shape.shape === 'note' && shape.at === null;
