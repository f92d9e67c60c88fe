/** Rectangles to be laid, and where they lie. */

/** Sides as they may lie; two for one that may be turned. */
export type RectWays = readonly (readonly [width: number, height: number])[];

export interface PlacedRect {
  readonly kind: number;
  readonly way: number;
  readonly x: number;
  readonly y: number;
}

/** What is left of the steps that may be taken; below zero nothing more can be said. */
export interface Effort {
  left: number;
}
