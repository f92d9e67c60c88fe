/** A screw head under its filler, in section, in millimetres; the face of the wood on y = 0. */
import { dim, hatch, label, line, type Point, type Shape } from '../../drawing';

/** Millimetres and radians. */
export interface FilledHole {
  readonly head: number;
  readonly mouth: number;
  readonly recess: number;
  /** Of the head, included. */
  readonly angle: number;
}

export function filledHole(
  { head, mouth, recess, angle }: FilledHole,
  says: { readonly head: string; readonly mouth: string; readonly recess: string },
): Shape[] {
  const [rim, top] = [head / 2, mouth / 2];
  const shank = rim / 2;
  const neck = -recess - (rim - shank) / Math.tan(angle / 2);
  const wide = 2 * mouth;
  const deep = neck - 1.2 * mouth;
  const half = (side: 1 | -1): Point[] => [
    [side * wide, 0],
    [side * top, 0],
    [side * rim, -recess],
    [side * shank, neck],
    [side * shank, deep],
    [side * wide, deep],
  ];
  const fill: Point[] = [
    [-top, 0],
    [top, 0],
    [rim, -recess],
    [-rim, -recess],
  ];
  return [
    ...([1, -1] as const).flatMap((side) => [
      hatch(half(side), 'ply', { pen: 'none' as const, part: 'bottom' }),
      line(half(side).slice(0, 5), { pen: 'outline' as const }),
    ]),
    hatch(fill, 'resin', { pen: 'outline' }),
    dim([-top, 0], [top, 0], says.mouth, { side: 'above' }),
    dim([top, -recess], [top, 0], says.recess, { side: 'right' }),
    label([0, -recess], `head ${says.head}`, { toward: 's' }),
  ];
}
