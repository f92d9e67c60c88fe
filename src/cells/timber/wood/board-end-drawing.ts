/** A board's end, with its rings, and how it cups as it dries or swells: millimetres and radians. */
import { dim, hatch, label, line, type Point, type Shape } from '../../../drawing';

export interface BoardEnd {
  readonly width: number;
  readonly thickness: number;
  /** From the middle of the face on the heart's side to the pith, mm; null where the rings stand upright. */
  readonly pith: number | null;
  readonly ply: boolean;
  /** Part by which lengths across and along the rings change, + growing, as it is drawn. */
  readonly across: number;
  readonly along: number;
}

const STEPS = 24;
const FACTORS = [100, 50, 20, 10, 5, 2, 1] as const;

/** How many times too large movements are drawn, so that the greatest is a tenth of the width at most. */
export function enlarged({ across, along }: Pick<BoardEnd, 'across' | 'along'>): number {
  const most = Math.max(Math.abs(across), Math.abs(along));
  return FACTORS.find((factor) => most * factor <= 0.1) ?? 1;
}

/**
 * Where a point of the dry or damp board goes. About the pith a body that changes by `across` outward and by
 * `along` round it does so without stress: radii grow by the one, angles by the difference.
 */
export function moved([x, y]: Point, { pith, across, along, thickness }: BoardEnd): Point {
  if (pith === null) return [x * (1 + across), thickness / 2 + (y - thickness / 2) * (1 + along)];
  const radius = Math.hypot(x, y + pith) * (1 + across);
  const angle = Math.atan2(x, y + pith) * (1 + along - across);
  // The middle of the lower face keeps its place.
  return [radius * Math.sin(angle), radius * Math.cos(angle) - pith * (1 + across)];
}

/** The end of the board as it is, its rings, and dashed what becomes of it. */
export function boardEnd(
  board: BoardEnd,
  part: string,
  says: { readonly width: string; readonly thickness: string; readonly later: string },
): Shape[] {
  const { width, thickness } = board;
  const outline = around(width, thickness);
  return [
    hatch(
      [
        [-width / 2, 0],
        [width / 2, 0],
        [width / 2, thickness],
        [-width / 2, thickness],
      ],
      board.ply ? 'ply' : 'plain',
      { part },
    ),
    ...(board.ply ? [] : rings(board)),
    line(
      outline.map((point) => moved(point, board)),
      { pen: 'ghost', closed: true, layer: 'later' },
    ),
    dim([-width / 2, 0], [width / 2, 0], says.width, { side: 'below' }),
    dim([-width / 2, 0], [-width / 2, thickness], says.thickness, { side: 'left' }),
    label(moved([width / 4, thickness], board), says.later, { toward: 'ne' }),
  ];
}

function around(width: number, thickness: number): Point[] {
  const across = Array.from({ length: STEPS + 1 }, (_, i) => width * (i / STEPS - 0.5));
  return [...across.map((x): Point => [x, 0]), ...across.toReversed().map((x): Point => [x, thickness])];
}

/** Rings cut off by the board's edges; upright lines where the board is quarter-sawn. */
function rings({ width, thickness, pith }: BoardEnd): Shape[] {
  if (pith === null) {
    const count = 9;
    return Array.from({ length: count }, (_, i) => {
      const x = width * ((i + 1) / (count + 1) - 0.5);
      return line(
        [
          [x, 0],
          [x, thickness],
        ],
        { pen: 'thin', layer: 'rings' },
      );
    });
  }
  const nearest = pith;
  const farthest = Math.hypot(width / 2, pith + thickness);
  const count = 8;
  return Array.from({ length: count }, (_, i) => {
    const radius = nearest + ((i + 1) / (count + 1)) * (farthest - nearest);
    return arcsInside(radius, pith, width, thickness);
  }).flat();
}

/** The pieces of one ring that lie in the board. */
function arcsInside(radius: number, pith: number, width: number, thickness: number): Shape[] {
  const outer = Math.min(Math.asin(Math.min(1, width / 2 / radius)), Math.acos(Math.min(1, pith / radius)));
  const top = (pith + thickness) / radius;
  const inner = top >= 1 ? 0 : Math.acos(top);
  if (outer <= inner) return [];
  const ring = (from: number, to: number) =>
    line(
      Array.from({ length: STEPS + 1 }, (_, i): Point => {
        const angle = from + ((to - from) * i) / STEPS;
        return [radius * Math.sin(angle), radius * Math.cos(angle) - pith];
      }),
      { pen: 'thin', layer: 'rings' },
    );
  return inner === 0 ? [ring(-outer, outer)] : [ring(-outer, -inner), ring(inner, outer)];
}
