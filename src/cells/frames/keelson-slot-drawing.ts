/** A frame's bottom member with the keelson's slot in it, seen along the boat: in millimetres. */
import { breakLine, circle, hatch, line, mark, type Point, type Shape } from '../../drawing';

/** Millimetres; heights from the bottom of the frame at the centreline. */
export interface SlotMeasures {
  /** From the centreline to the side of the slot. */
  readonly slot: number;
  readonly depth: number;
  /** Of the drill that rounds the corners. */
  readonly radius: number;
  /** Depth of the member at the centreline. */
  readonly board: number;
  /** From the centreline to where the drawing breaks off. */
  readonly reach: number;
  /** Rise of the bottom over run outboard: the tangent of the deadrise. */
  readonly rise: number;
}

/** The member, broken off on both sides. */
export function slottedFrame(
  { slot, depth, radius, board, reach, rise }: SlotMeasures,
  part: string,
): Shape[] {
  const corner = Math.min(radius, depth, slot);
  const half: Point[] = [[reach, reach * rise], ...slotEnd(slot, depth, corner, rise)];
  const lower = [...half, ...mirrored(half).toReversed()];
  const end: Point = [reach, board + reach * rise];
  const upper: Point[] = [...mirrored([end]), [0, board], end];
  return [
    hatch([...lower, ...upper], 'plain', { pen: 'none', part }),
    line(lower, { pen: 'outline', part }),
    line(upper, { pen: 'outline', part }),
    breakLine([reach, reach * rise], end, { part }),
    breakLine([-reach, reach * rise], [-end[0], end[1]], { part }),
  ];
}

/** The keelson: deadrise planes its lower corners off, and past its full thickness leaves a point. */
export function slottedKeelson(half: number, depth: number, rise: number): Point[] {
  const wide = rise * half > depth ? depth / rise : half;
  const edge: Point[] = [
    [wide, wide * rise],
    [wide, depth],
  ];
  return [[0, 0], ...edge, ...mirrored(edge).toReversed()];
}

export function drilled(at: Point, radius: number, frame: string): Shape[] {
  return [circle(at, radius, { pen: 'thin', part: frame }), mark(at, { form: 'cross' })];
}

/** One end of the slot, from the bottom up: its side and rounded corner, as far as deadrise leaves them. */
function slotEnd(slot: number, depth: number, corner: number, rise: number): Point[] {
  if (slot * rise >= depth) return [[depth / rise, depth]];
  const round = quarterTurn([slot - corner, depth - corner], corner).filter(([x, y]) => y > x * rise);
  return slot * rise < depth - corner ? [[slot, slot * rise], ...round] : round;
}

/** A quarter of a circle as points, from its right to its top. */
function quarterTurn([x, y]: Point, radius: number): Point[] {
  const parts = 8;
  return Array.from({ length: parts + 1 }, (_, i): Point => {
    const turn = (i / parts) * (Math.PI / 2);
    return [x + radius * Math.cos(turn), y + radius * Math.sin(turn)];
  });
}

const mirrored = (points: readonly Point[]) => points.map(([x, y]): Point => [-x, y]);
