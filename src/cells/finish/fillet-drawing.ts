/** Two panels that meet at their inside corner, with the fillet between them, in millimetres. */
import { arc, breakLine, dim, hatch, label, line, type Point, radiusDim, type Shape } from '../../drawing';

/** Millimetres and radians. */
export interface FilletSection {
  readonly radius: number;
  readonly angle: number;
  readonly width: number;
  readonly lower: number;
  readonly upper: number;
  /** Whether the gap between the square edges outside is filled as well. */
  readonly filled: boolean;
}

/** Chords that stand for the arc where it bounds an area. */
const CHORDS = 32;

/** The section square to the seam: the inside corner at the origin, the face of the lower panel along +x. */
export function filletSection(
  { radius, angle, width, lower, upper, filled }: FilletSection,
  parts: { readonly lower: string; readonly upper: string },
  says: { readonly radius: string; readonly angle: string; readonly width: string; readonly throat: string },
): Shape[] {
  const up = (along: number, off = 0): Point => [
    along * Math.cos(angle) - off * Math.sin(angle),
    along * Math.sin(angle) + off * Math.cos(angle),
  ];
  const reach = width + Math.max(0.7 * width, 0.8 * Math.max(lower, upper));
  const clear = (width + reach) / 2;
  const centre: Point = [width, radius];
  const from = angle + Math.PI / 2;
  const to = 1.5 * Math.PI;
  const on = (direction: number): Point => [
    centre[0] + radius * Math.cos(direction),
    centre[1] + radius * Math.sin(direction),
  ];
  const curve = Array.from({ length: CHORDS + 1 }, (_, i) => on(from + ((to - from) * i) / CHORDS));
  const middle = on(angle / 2 + Math.PI);
  return [
    hatch(
      [
        [0, 0],
        [0, -lower],
        [reach, -lower],
        [reach, 0],
      ],
      'ply',
      { pen: 'none', part: parts.lower },
    ),
    line(
      [
        [reach, 0],
        [0, 0],
        [0, -lower],
        [reach, -lower],
      ],
      { pen: 'outline', part: parts.lower },
    ),
    breakLine([reach, -lower], [reach, 0]),
    hatch([[0, 0], up(reach), up(reach, upper), up(0, upper)], 'ply', {
      pen: 'none',
      falling: true,
      part: parts.upper,
    }),
    line([up(reach), [0, 0], up(0, upper), up(reach, upper)], { pen: 'outline', part: parts.upper }),
    breakLine(up(reach), up(reach, upper)),
    ...(filled ? [hatch([[0, 0], up(0, upper), [0, -lower]], 'resin', { pen: 'visible' })] : []),
    hatch([[0, 0], ...curve], 'resin', { pen: 'none' }),
    arc(centre, radius, from, to, { pen: 'outline' }),
    dim([0, 0], [width, 0], says.width, { side: 'below' }),
    // An angle dimension stands as near to its apex as it can, which here is in the fillet itself.
    arc([0, 0], clear, 0, angle, { pen: 'dimension' }),
    label([clear * Math.cos(angle / 2), clear * Math.sin(angle / 2)], `${says.angle} inside`, {
      toward: 'ne',
    }),
    radiusDim(centre, radius, from + (to - from) * 0.75, says.radius),
    // Extension lines of so short a dimension would run right through a panel.
    line([[0, 0], middle], { pen: 'dimension' }),
    label([middle[0] / 2, middle[1] / 2], `throat ${says.throat}`, { toward: 'e' }),
    label(up(reach * 0.8, upper / 2), parts.upper, { toward: 'nw' }),
    label([reach * 0.8, -lower / 2], parts.lower, { toward: 's' }),
  ];
}
