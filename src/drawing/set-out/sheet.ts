// A drawing set out on paper: primitives in px, y down, in the order they are drawn.

import type { Fill, Pen, Point } from '../shapes';

/** What a path is drawn with: a pen, a tint, hatch lines, or solid ink for arrowheads and bars. */
export type PathClass =
  | `pen-${Pen}`
  | `fill-${Fill}`
  | `hatch-${Fill}`
  | 'arrowhead'
  | 'leader-dot'
  | 'key-ring'
  | 'bar-solid';

export type TextClass =
  | 'dim-text'
  | 'label-text'
  | 'note-text'
  | 'number-text'
  | 'bar-text'
  | 'key-text'
  | 'caption-text';

interface Of {
  /** Rank in the drawing of the shape it belongs to; null for what the sheet adds. */
  readonly of: number | null;
  readonly part?: string;
  readonly layer?: string;
}

export interface PlacedPath extends Of {
  readonly kind: 'path';
  /** May be empty: the primitive is kept so that the list stays the same while a slider moves. */
  readonly d: string;
  readonly className: PathClass;
}

export interface PlacedText extends Of {
  readonly kind: 'text';
  /** Of the first baseline. Further lines follow LINE font sizes apart. */
  readonly x: number;
  readonly y: number;
  readonly lines: readonly string[];
  readonly size: number;
  readonly anchor: 'start' | 'middle' | 'end';
  /** Degrees, clockwise on paper, about (x, y). */
  readonly turn: number;
  readonly className: TextClass;
}

export type Placed = PlacedPath | PlacedText;

/** A text kept under the drawing; number 0 when not even its number found a place. */
export interface KeyLine {
  readonly number: number;
  readonly text: string;
}

export interface Margins {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export interface Sheet {
  readonly title: string;
  /** The text alternative: how the drawing is read, and its numbers. */
  readonly says: string;
  /** px */
  readonly width: number;
  readonly height: number;
  /** px for each mm, the same both ways. */
  readonly scale: number;
  /** Where the drawing's origin lies, px: x = origin[0] + scale * mm, y = origin[1] - scale * mm. */
  readonly origin: Point;
  readonly marks: readonly Placed[];
  readonly key: readonly KeyLine[];
  /** What the next setting out may start from, so that texts stay where they are. */
  readonly layout: {
    readonly margins: Margins;
    readonly choices: ReadonlyMap<number, number>;
    readonly shapes: number;
  };
}
