/** The section of a timber at a bevelled edge or end, in millimetres: what stays, and the wedge that goes. */
import { angleDim, dim, hatch, line, note, type Point, type Shape } from '../../drawing';

/** Bevels are drawn up to this one; steeper ones keep their texts. */
const steepest = (60 * Math.PI) / 180;
/** A wedge thinner than this share of the wood is a line. */
const NO_WEDGE = 1e-4;

export interface EdgeSays {
  readonly name: string;
  readonly gauge: string;
  readonly off: string;
  /** Left out where the same wood has its thickness in another section. */
  readonly siding?: string;
  /** Which faces they are: aft and forward unless told otherwise. */
  readonly faces?: readonly [left: string, right: string];
  /** Part of the boat that lights up. */
  readonly part: string;
}

/**
 * The timber cut square to its edge, one face to the left and one to the right; `at` is the left corner of the
 * uncut edge. A bevel that is + takes the left corner off.
 */
export function edgeSection([x, y]: Point, siding: number, bevel: number, says: EdgeSays): Shape[] {
  const drawn = Math.max(-steepest, Math.min(steepest, bevel));
  const off = siding * Math.tan(Math.abs(drawn));
  const left: Point = [x, drawn > 0 ? y - off : y];
  const right: Point = [x + siding, drawn > 0 ? y : y - off];
  const root = y - Math.max(siding, off * 1.3);
  const [kept, far] = drawn > 0 ? [right, left] : [left, right];
  const out = (share: number): Point => [
    right[0] + (right[0] - left[0]) * share,
    right[1] + (right[1] - left[1]) * share,
  ];
  const corner: Point = [far[0], y];
  const along = Math.atan2(far[1] - kept[1], far[0] - kept[0]);
  const inward = -Math.PI / 2;
  // Anticlockwise, from the leg that comes first.
  const [from, to] =
    drawn > 0 ? [along < 0 ? along + 2 * Math.PI : along, inward + 2 * Math.PI] : [inward, along];
  const [leftFace, rightFace] = says.faces ?? ['aft', 'forward'];
  return [
    hatch([[x, root], [x + siding, root], right, left], 'cedar', { part: says.part }),
    off > NO_WEDGE * siding
      ? hatch([kept, corner, far], 'cedar', { pen: 'ghost', falling: true })
      : line([kept, corner, far], { pen: 'ghost' }),
    line([out(-1.6), out(0.6)], { pen: 'visible' }),
    dim(corner, far, says.off, { side: bevel > 0 ? 'left' : 'right', run: 'vertical' }),
    angleDim(kept, from, to, says.gauge, { reach: siding * 0.6 }),
    ...(says.siding === undefined
      ? []
      : [dim([x, root], [x + siding, root], says.siding, { side: 'below' })]),
    note(says.name, { at: [x + siding / 2, y + siding * 0.7] }),
    note(leftFace, { at: [x - siding, root] }),
    note(rightFace, { at: [x + siding * 2, root] }),
  ];
}
