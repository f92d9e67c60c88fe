/**
 * On the wall: the page at a size for a class, its answers covered until somebody asks. What covers is fetched when it
 * is asked for; here is only what the rest of the page needs to know of it.
 */
import type { FunctionComponent, VNode } from 'preact';
import type { Bench } from '../bench';
import { use } from '../html';

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

/** A part of a cell, under a plate while the page is on the wall. */
export function cover(
  { wall }: Bench,
  instance: string,
  part: string,
  what: string,
  inside: () => VNode | null,
  label?: string,
): VNode | null {
  return wall.value
    ? use(wall.value.Plate, { key: part, instance, part, what, inside, ...(label ? { label } : {}) })
    : inside();
}
