/** A log in the corner between side and bottom, cut square to its length, with the wood that the plane takes; mm. */
import { angleDim, dim, hatch, label, line, note, type Point, type Shape } from '../../drawing';

/** Angles in rad, lengths in mm. */
export interface LogInCorner {
  /** From its face on the side inward, and along that face upward. */
  readonly thick: number;
  readonly wide: number;
  /** Of the side out of plumb, and between side and bottom. */
  readonly flare: number;
  readonly angle: number;
  /** Of the log itself out of plumb, + with its top outboard. */
  readonly lean: number;
}

export interface LogSays {
  readonly name: string;
  readonly part: string;
  readonly angle: string;
  readonly thick: string;
  readonly wide?: string;
  /** Planed off the outer face and off the under face. */
  readonly sideOff: string;
  readonly bottomOff: string;
}

/** No bevel is drawn to take more than this share of a face: the log would be gone, and only its texts stay. */
const MOST = 0.97;
const STRAIGHT = 1e-4;

/** Outboard to the right; `at` is the corner of side and bottom. */
export function logSection(at: Point, log: LogInCorner, says: LogSays): Shape[] {
  const { thick, wide, flare, angle, lean } = log;
  const side = Math.PI / 2 - flare;
  const bottom = side + angle;
  const cut = planed(log);
  // From the log's own axes, inward and up from its outer lower corner as sawn, to the paper.
  const up = Math.PI / 2 - lean;
  const on = ([i, u]: Point): Point => [
    at[0] - (i - cut.corner[0]) * Math.sin(up) + (u - cut.corner[1]) * Math.cos(up),
    at[1] + (i - cut.corner[0]) * Math.cos(up) + (u - cut.corner[1]) * Math.sin(up),
  ];
  const from = (distance: number, direction: number): Point => [
    at[0] + distance * Math.cos(direction),
    at[1] + distance * Math.sin(direction),
  ];
  const sawn: Point[] = [
    [0, 0],
    [thick, 0],
    [thick, wide],
    [0, wide],
  ];
  const { s0, b0, tanSide, tanBottom } = cut;
  const left: Point[] = [
    cut.corner,
    [s0 - wide * tanSide, wide],
    [thick, wide],
    [thick, b0 - thick * tanBottom],
  ];
  const reach = Math.max(wide, thick);
  return [
    hatch(sawn.map(on), 'cedar', { holes: [left.map(on)], pen: 'ghost', falling: true }),
    hatch(left.map(on), 'cedar', { part: says.part }),
    line([at, from(reach * 1.7, side)], { part: 'side' }),
    line([at, from(reach * 1.7, bottom)], { part: 'bottom' }),
    angleDim(at, side, bottom, says.angle, { reach: thick * 0.7 }),
    dim(on([0, wide]), on([thick, wide]), says.thick, { side: 'above' }),
    ...(says.wide === undefined ? [] : [dim(on([thick, 0]), on([thick, wide]), says.wide, { side: 'left' })]),
    ...takenOff(cut, log, on, says),
    label(from(reach * 1.5, side), 'side', { toward: 'e' }),
    label(from(reach * 1.5, bottom), 'bottom', { toward: 's' }),
    ...(cut.whole ? [] : [note('The bevel is drawn only as far as the log has wood for it.')]),
    note(says.name, { at: [at[0] - thick * 0.5, at[1] - Math.min(thick, wide) * 1.9] }),
  ];
}

/** The planes of side and bottom in the log's own axes: inward = s0 - up tanSide, up = b0 - inward tanBottom. */
function planed({ thick, wide, flare, angle, lean }: LogInCorner) {
  const held = (tangent: number, most: number) => Math.max(-most, Math.min(most, tangent));
  const tangent = (bevel: number) => (Math.abs(bevel) < 1.48 ? Math.tan(bevel) : Math.sign(bevel) * 11);
  const bottomBevel = angle - Math.PI / 2 - flare + lean;
  const [sideTangent, bottomTangent] = [tangent(flare - lean), tangent(bottomBevel)];
  const tanSide = held(sideTangent, (MOST * thick) / wide);
  const tanBottom = held(bottomTangent, (MOST * wide) / thick);
  // What is kept is the edge on the far side of the wedge.
  const s0 = Math.max(0, wide * tanSide);
  const b0 = Math.max(0, thick * tanBottom);
  const inward = (s0 - b0 * tanSide) / (1 - tanSide * tanBottom);
  const corner: Point = [inward, b0 - inward * tanBottom];
  const whole = tanSide === sideTangent && tanBottom === bottomTangent;
  return { tanSide, tanBottom, s0, b0, corner, whole };
}

/** What goes, on the face where it is marked. */
function takenOff(
  { tanSide, tanBottom, s0, b0 }: ReturnType<typeof planed>,
  { thick, wide }: LogInCorner,
  on: (point: Point) => Point,
  says: LogSays,
): Shape[] {
  const under: Shape[] =
    Math.abs(tanBottom) < STRAIGHT
      ? []
      : tanBottom > 0
        ? [dim(on([0, 0]), on([0, b0]), says.bottomOff, { side: 'right' })]
        : [dim(on([thick, 0]), on([thick, -thick * tanBottom]), says.bottomOff, { side: 'left' })];
  const outer: Shape[] =
    Math.abs(tanSide) < STRAIGHT
      ? []
      : tanSide > 0
        ? [dim(on([0, 0]), on([s0, 0]), says.sideOff, { side: 'below' })]
        : [dim(on([0, wide]), on([-wide * tanSide, wide]), says.sideOff, { side: 'above' })];
  return [...under, ...outer];
}
