/** Clamps along a joint, numbered in the order in which they are set: a stretch of it, to scale. */
import { arrow, breakLine, dim, line, note, type Point, rectHatch, type Shape } from '../../../drawing';

/** Millimetres. */
export interface Clamped {
  readonly length: number;
  /** Clamps along all of it, and from one to the next. */
  readonly clamps: number;
  readonly pitch: number;
  /** Above the glue line: the layer, and the caul under the clamps. */
  readonly ply: number;
  readonly caul: number;
  /** From the middle outward, or from one end. */
  readonly from: 'middle' | 'end';
}

/** Clamps that a phone has room for, drawn large enough to see the caul. */
export const SHOWN = 5;

/** Where the clamps stand along the joint, mm, in the order in which they are set. */
export function inOrder({ clamps, pitch, from }: Pick<Clamped, 'clamps' | 'pitch' | 'from'>): number[] {
  const along = Array.from({ length: clamps }, (_, i) => (i + 0.5) * pitch);
  if (from === 'end') return along;
  const middle = (clamps * pitch) / 2;
  // Outward by distance; of two as far out the forward one first.
  return along.toSorted((a, b) => Math.abs(a - middle) - Math.abs(b - middle) || b - a);
}

/** The stretch in which the first clamps stand. */
export function clampedJoint(
  joint: Clamped,
  part: string,
  says: { readonly pitch: string; readonly ply: string; readonly caul: string },
): Shape[] {
  const { length, clamps, pitch, ply, caul } = joint;
  const first = inOrder(joint).slice(0, SHOWN);
  const whole = clamps <= SHOWN;
  const left = whole ? 0 : Math.max(0, Math.min(...first) - pitch / 2);
  const right = whole ? length : Math.min(length, Math.max(...first) + pitch / 2);
  // High enough to hold a number over an arrow, whatever the scale.
  const reach = Math.max(right - left, 2 * ply + caul) / 11;
  const lower = Math.max(ply, reach);
  const span = right - left;
  const ends = [
    { at: left, open: left > 1e-6 * length },
    { at: right, open: right < length * (1 - 1e-6) },
  ];
  const top = ply + caul;
  return [
    rectHatch(left, -lower, span, lower, 'cedar', { pen: 'none', part, falling: true }),
    rectHatch(left, 0, span, ply, 'cedar', { pen: 'none', part }),
    caul > 0 ? [rectHatch(left, ply, span, caul, 'plain', { pen: 'none', layer: 'caul' })] : [],
    [-lower, 0, ply, ...(caul > 0 ? [top] : [])].map((y) =>
      line(
        [
          [left, y],
          [right, y],
        ],
        { pen: 'outline' },
      ),
    ),
    ends.map(({ at, open }) =>
      open
        ? breakLine([at, -lower], [at, top])
        : line(
            [
              [at, -lower],
              [at, top],
            ],
            { pen: 'outline' },
          ),
    ),
    first.map((x) => cone(x, top, [left, right])),
    first.flatMap((x, i) => [
      arrow([x, top + reach], [x, top], { layer: 'clamps' }),
      arrow([x, -lower - reach], [x, -lower], { layer: 'clamps' }),
      note(String(i + 1), { at: [x, top + 1.9 * reach] }),
    ]),
    clamps > 1 ? [dimPitch(first, lower + reach, says.pitch)] : [],
    dim([left, 0], [left, ply], says.ply, { side: 'left' }),
    caul > 0 ? [dim([right, ply], [right, top], says.caul, { side: 'right' })] : [],
  ].flat(2);
}

/** The pressure of one clamp spreads down to the glue line at 45 degrees. */
function cone(x: number, top: number, [left, right]: readonly [number, number]): Shape {
  const foot = (sign: 1 | -1): Point => {
    const run = Math.min(top, sign > 0 ? right - x : x - left);
    return [x + sign * run, top - run];
  };
  return line([foot(-1), [x, top], foot(1)], { pen: 'thin', layer: 'spread' });
}

function dimPitch(first: readonly number[], below: number, text: string): Shape {
  const [a = 0, b = a] = first.toSorted((one, other) => one - other);
  return dim([a, -below], [b, -below], text, { side: 'below' });
}
