/** A coat as it is rolled on, and all coats when they are dry, in section and much enlarged, in millimetres. */
import { dim, hatch, label, line, type Point, type Shape } from '../../drawing';

/** Millimetres. */
export interface Coats {
  readonly coats: number;
  readonly wet: number;
  readonly film: number;
}

/** Layers that can still be told apart; more are drawn as one. */
const MOST_LAYERS = 12;

/** The face that is painted on y = 0, the wet coat to the left, the dry ones to the right. */
export function coatsInSection(
  { coats, wet, film }: Coats,
  says: { readonly wet: string; readonly film: string; readonly all: string; readonly coats: string },
): Shape[] {
  const all = coats * film;
  const high = Math.max(wet, all);
  const wide = 1.6 * high;
  const gap = 0.5 * high;
  const right = wide + gap;
  const deep = 0.7 * high;
  const layers = coats <= MOST_LAYERS ? coats : 1;
  const each = all / layers;
  return [
    hatch(box(0, -deep, right + wide, deep), 'ply', { pen: 'none' }),
    line(
      [
        [0, 0],
        [right + wide, 0],
      ],
      { pen: 'outline' },
    ),
    hatch(box(0, 0, wide, wet), 'resin', { pen: 'visible' }),
    ...Array.from({ length: layers }, (_, i) =>
      hatch(box(right, i * each, wide, each), 'plain', { falling: i % 2 === 1, pen: 'visible' }),
    ),
    label([wide / 2, wet], 'one coat, wet', { toward: 'n' }),
    label([right + wide / 2, all], says.coats, { toward: 'n' }),
    label([right + wide / 2, -deep / 2], 'scuffed face', { toward: 's' }),
    dim([0, 0], [0, wet], says.wet, { side: 'left' }),
    ...(coats > 1 && coats <= MOST_LAYERS
      ? [dim([right + wide, 0], [right + wide, film], says.film, { side: 'right' })]
      : []),
    dim([right + wide, 0], [right + wide, all], says.all, { side: 'right', level: 1 }),
  ];
}

const box = (x: number, y: number, wide: number, high: number): Point[] => [
  [x, y],
  [x + wide, y],
  [x + wide, y + high],
  [x, y + high],
];
