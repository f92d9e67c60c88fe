/** Sections of bevelled wood: a frame's edge and a chine log, in millimetres. */
import { angleDim, dim, hatch, label, line, note, type Point, type Shape } from '../../drawing';

/** Bevels are drawn up to this one; steeper ones keep their texts. */
const steepest = (60 * Math.PI) / 180;

/** The frame cut square to its edge, aft to the left; `at` is the aft corner of the uncut edge. */
export function edgeSection(
  [x, y]: Point,
  siding: number,
  bevel: number,
  frame: string,
  says: { name: string; gauge: string; off: string; siding: string },
): Shape[] {
  const drawn = Math.max(-steepest, Math.min(steepest, bevel));
  const off = siding * Math.tan(Math.abs(drawn));
  const aft: Point = [x, drawn > 0 ? y - off : y];
  const fore: Point = [x + siding, drawn > 0 ? y : y - off];
  const root = y - Math.max(siding, off * 1.3);
  const [line0, far] = drawn > 0 ? [fore, aft] : [aft, fore];
  const out = (share: number): Point => [
    fore[0] + (fore[0] - aft[0]) * share,
    fore[1] + (fore[1] - aft[1]) * share,
  ];
  const corner: Point = [far[0], y];
  const along = Math.atan2(far[1] - line0[1], far[0] - line0[0]);
  const inward = -Math.PI / 2;
  // Anticlockwise, from the leg that comes first.
  const [from, to] =
    drawn > 0 ? [along < 0 ? along + 2 * Math.PI : along, inward + 2 * Math.PI] : [inward, along];
  return [
    hatch([[x, root], [x + siding, root], fore, aft], 'cedar', { part: frame }),
    line([line0, corner, far], { pen: 'ghost' }),
    line([out(-1.6), out(0.6)], { pen: 'visible' }),
    dim(corner, far, says.off, { side: bevel > 0 ? 'left' : 'right', run: 'vertical' }),
    angleDim(line0, from, to, says.gauge, { reach: siding * 0.6 }),
    dim([x, root], [x + siding, root], says.siding, { side: 'below' }),
    note(says.name, { at: [x + siding / 2, y + siding * 0.7] }),
    note('aft', { at: [x - siding * 0.9, root] }),
    note('forward', { at: [x + siding * 1.9, root] }),
  ];
}

/** The chine log cut square to its length, outboard to the right; `at` is the corner of side and bottom. */
export function logSection(
  [x, y]: Point,
  thick: number,
  flare: number,
  angle: number,
  says: { chine: string; angle: string; thick: string },
): Shape[] {
  const side = Math.PI / 2 - flare;
  const bottom = side + angle;
  const from = (distance: number, direction: number, [px, py]: Point = [x, y]): Point => [
    px + distance * Math.cos(direction),
    py + distance * Math.sin(direction),
  ];
  const wide = thick * 2;
  const upper = from(wide, side);
  const inner = from(thick, side + Math.PI / 2, upper);
  const foot = from(thick / Math.max(Math.sin(angle), 0.2), bottom);
  return [
    hatch([[x, y], upper, inner, foot], 'cedar', { part: 'chineLog' }),
    line([[x, y], from(wide * 1.7, side)], { part: 'side' }),
    line([[x, y], from(wide * 1.7, bottom)], { part: 'bottom' }),
    angleDim([x, y], side, bottom, says.angle, { reach: thick * 0.7 }),
    dim(upper, inner, says.thick, { side: 'above' }),
    label(from(wide * 1.5, side), 'side', { toward: 'e' }),
    label(from(wide * 1.5, bottom), 'bottom', { toward: 's' }),
    note('the chine log, square to its length', { at: [x - thick * 0.5, y - thick * 1.7] }),
  ];
}
