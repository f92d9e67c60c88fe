/** What small drawings are made of: as few lines as show the one thing meant, and its name. */
import { type Drawing, drawing, type Point, type Shape } from '../../drawing';
import type { OnHand } from '../../cells';

/** Drawings by their names. */
export type Sketches = Readonly<Record<string, (say: OnHand['say']) => Drawing>>;

type Nested = Shape | readonly Nested[];

/** @param says what is seen, in a sentence, for who does not see it */
export const small = (title: string, says: string, ...shapes: readonly Nested[]): (() => Drawing) => {
  const made = () => drawing({ title, says, shapes });
  return made;
};

/** Points on a curve, from 0 to 1. */
export const curve = (at: (t: number) => Point, parts = 24): readonly Point[] =>
  Array.from({ length: parts + 1 }, (_, i) => at(i / parts));

/** Points of a circle's arc, anticlockwise, angles in radians. */
export const round = ([x, y]: Point, radius: number, from: number, to: number): readonly Point[] =>
  curve((t) => {
    const turn = from + t * (to - from);
    return [x + radius * Math.cos(turn), y + radius * Math.sin(turn)];
  });
