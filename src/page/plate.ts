/** What the rest of the page needs to know of the wall: what covers an answer, and what is covered. */
import type { FunctionComponent, VNode } from 'preact';

export interface PlateProps {
  /** The cell, by its name in the notebook. */
  readonly instance: string;
  /** What of the cell lies under it: an answer's key, or one of the words below. */
  readonly part: string;
  /** What a press shows: `the working`. */
  readonly what: string;
  /** Of an answer, what it is the answer to: `taper`. */
  readonly label?: string;
  readonly inside: () => VNode | null;
}

export interface Wall {
  readonly Plate: FunctionComponent<PlateProps>;
  /** The keys that show and cover everything, at the foot of the window. */
  readonly Bar: FunctionComponent;
  /** A number covered in the middle of a sentence. */
  readonly blank: (of: string) => VNode;
  /** Whether this quantity is covered; tracked. */
  readonly hides: (name: string) => boolean;
}
