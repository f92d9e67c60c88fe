/** The eight ways in which a flat piece may lie, on whole ticks: none of them rounds. */
import type { Quarter } from '../../kernel/nest';

/** 0 to 3: quarter turns anticlockwise; 4 to 7: mirrored left to right first, then so turned. */
export type Turn = 0 | 1 | 2 | 3 | 4 | 5 | 6 | 7;

export const turns: readonly Turn[] = [0, 1, 2, 3, 4, 5, 6, 7];

export const turnOf = (quarter: Quarter, mirrored: boolean): Turn => ((mirrored ? 4 : 0) + quarter) as Turn;

export const isMirrored = (turn: Turn): boolean => turn >= 4;

const made = (quarters: number, mirrored: boolean) => turnOf((((quarters % 4) + 4) % 4) as Quarter, mirrored);

/** The turn that undoes another. */
export const undone = (turn: Turn): Turn => (isMirrored(turn) ? turn : made(-turn, false));

/** First the one, then the other. (A module with an export called `then` is taken for a promise and never loads.) */
export function inTurn(first: Turn, second: Turn): Turn {
  // What is mirrored afterwards has been turned the other way.
  const quarters = (second % 4) + (isMirrored(second) ? -(first % 4) : first % 4);
  return made(quarters, isMirrored(first) !== isMirrored(second));
}

/** Sides of a box; nought for what is turned about the origin and not moved back. */
interface Box {
  readonly width: number;
  readonly height: number;
}

/** A point of what lies in a box, as it is turned and its box's lower left corner is back at the origin. */
export function turnedPoint(
  turn: Turn,
  { width, height }: Box,
  x: number,
  y: number,
): readonly [number, number] {
  const along = isMirrored(turn) ? width - x : x;
  if (turn % 4 === 1) return [height - y, along];
  if (turn % 4 === 2) return [width - along, height - y];
  return turn % 4 === 3 ? [y, width - along] : [along, y];
}

/** Turned about the origin. */
export const turnedAbout = (turn: Turn, x: number, y: number): readonly [number, number] =>
  turnedPoint(turn, NOWHERE, x, y);

const NOWHERE: Box = { width: 0, height: 0 };
