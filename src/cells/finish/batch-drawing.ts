/** A pot in section with the mix in it, in millimetres; the inside of its foot on y = 0. */
import { dim, hatch, label, line, type Point, type Shape } from '../../drawing';

/** Millimetres, inside. */
export interface Pot {
  readonly kind: 'cup' | 'tray';
  readonly width: number;
  readonly depth: number;
}

export function potWithMix(
  { kind, width, depth }: Pot,
  says: { readonly width: string; readonly depth: string; readonly holds: string },
): Shape[] {
  // A cup stands higher than it is wide, a tray has a low rim; either holds the mix.
  const height = Math.max(kind === 'cup' ? 1.3 * width : Math.max(30, 0.12 * width), 1.25 * depth);
  const wall = 0.02 * Math.max(width, height);
  const half = width / 2;
  const inside: Point[] = [
    [-half, height],
    [-half, 0],
    [half, 0],
    [half, height],
  ];
  const outside: Point[] = [
    [half + wall, height],
    [half + wall, -wall],
    [-half - wall, -wall],
    [-half - wall, height],
  ];
  return [
    hatch([...inside, ...outside], 'plain'),
    ...(depth > 0
      ? [
          hatch(
            [
              [-half, 0],
              [half, 0],
              [half, depth],
              [-half, depth],
            ],
            'resin',
            { pen: 'none' as const },
          ),
          line(
            [
              [-half, depth],
              [half, depth],
            ],
            { pen: 'visible' as const },
          ),
          dim([half + wall, 0], [half + wall, depth], says.depth, { side: 'right' as const }),
          label([0, depth / 2], says.holds, { toward: kind === 'cup' ? ('w' as const) : ('n' as const) }),
        ]
      : []),
    dim([-half, -wall], [half, -wall], says.width, { side: 'below' }),
  ];
}
