/** A figure with two parallel sides and its diagonals, racked as measured, many times over. */
import { type Drawing, drawing, label, line, mm, note, type Point } from '../../drawing';
import type { OnHand } from '../form/define';
import { exaggeration, times } from './exaggeration';

interface Figure {
  readonly first: number;
  readonly second: number;
  readonly apart: number;
  readonly slide: number;
  readonly diagonalAC: number;
  readonly diagonalBD: number;
  readonly slideBy: number;
}

export function squareView(v: Figure, { say }: Pick<OnHand, 'say'>): Drawing {
  const length = (metres: number) => say(metres, 'length');
  const [first, second, apart] = [mm(v.first), mm(v.second), mm(v.apart)];
  const long = Math.max(first, second);
  // A jig is far longer than wide: drawn narrower it would be two lines.
  const wide = Math.max(apart, 0.3 * long);
  const k = exaggeration([mm(v.slide)], 0.2 * Math.min(long, wide));
  const turn = Math.asin(Math.max(-0.9, Math.min(0.9, (mm(v.slide) * k) / wide)));
  const up = wide * Math.cos(turn);
  const across = wide * Math.sin(turn);
  const figure = (dx: number, dy: number): Point[] => [
    [-first / 2, 0],
    [first / 2, 0],
    [dx + second / 2, dy],
    [dx - second / 2, dy],
  ];
  const corners = figure(across, up) as [Point, Point, Point, Point];
  const [a, b, c, d] = corners;
  const between = (p: Point, q: Point): Point => [p[0] + 0.3 * (q[0] - p[0]), p[1] + 0.3 * (q[1] - p[1])];
  return drawing({
    title: 'The two diagonals',
    says: `A to C measures ${length(v.diagonalAC)}, B to D ${length(v.diagonalBD)}: side D to C stands ${length(v.slideBy)} ${v.slide > 0 ? 'too far towards C' : v.slide < 0 ? 'too far towards D' : 'off, that is true'}.`,
    shapes: [
      line(figure(0, wide), { pen: 'hidden', closed: true }),
      line(corners, { pen: 'outline', closed: true }),
      line([a, c], { pen: 'visible' }),
      line([b, d], { pen: 'visible' }),
      label(a, 'A', { toward: 'sw' }),
      label(b, 'B', { toward: 'se' }),
      label(c, 'C', { toward: 'ne' }),
      label(d, 'D', { toward: 'nw' }),
      label(between(a, c), `A to C ${length(v.diagonalAC)}`, { toward: 's' }),
      label(between(b, d), `B to D ${length(v.diagonalBD)}`, { toward: 's' }),
      note(
        `${wide > apart ? 'Drawn wider than it is: the bar holds along the sides. ' : ''}Dashed: square. Of a jig from above, boat upside down, D to C is the starboard rail, C forward. ${times(k)}`,
      ),
    ],
  });
}
