/** The two lengths from the transom's corners to the stem, from above; how far the stem is off, many times too large. */
import {
  centreLine,
  dim,
  type Drawing,
  drawing,
  label,
  line,
  mark,
  mm,
  note,
  type Point,
} from '../../drawing';
import type { OnHand } from '../form/define';
import { exaggeration, times } from './exaggeration';

interface Triangle {
  readonly portLength: number;
  readonly starboardLength: number;
  readonly cornerOut: number;
  readonly ahead: number;
  readonly off: number;
  readonly offBy: number;
}

export function stemView(v: Triangle, { say }: Pick<OnHand, 'say'>): Drawing {
  const length = (metres: number) => say(metres, 'length');
  const [out, ahead] = [mm(v.cornerOut), mm(v.ahead)];
  const k = exaggeration([mm(v.off)], 0.8 * out);
  // Upside down, from above, forward to the right: the boat's port side lies below.
  const port: Point = [0, -out];
  const starboard: Point = [0, out];
  const stem: Point = [ahead, -Math.max(-2 * out, Math.min(2 * out, mm(v.off) * k))];
  const part = (a: Point, b: Point): Point => [a[0] + 0.5 * (b[0] - a[0]), a[1] + 0.5 * (b[1] - a[1])];
  const side = v.off < 0 ? 'starboard' : 'port';
  return drawing({
    title: 'Transom corners and stem, from above',
    says: `From the port corner ${length(v.portLength)}, from the starboard corner ${length(v.starboardLength)}: the stem stands ${v.offBy === 0 ? 'on' : `${length(v.offBy)} to ${side} of`} the centreline.`,
    shapes: [
      centreLine([-0.06 * ahead, 0], [1.08 * ahead, 0]),
      line([port, starboard], { pen: 'outline', part: 'transom' }),
      line([port, [ahead, 0], starboard], { pen: 'hidden' }),
      line([port, stem, starboard], { pen: 'visible' }),
      mark(stem, { form: 'dot', part: 'stem' }),
      mark([ahead, 0]),
      dim(port, starboard, length(2 * v.cornerOut), { side: 'left', run: 'vertical' }),
      label(part(port, stem), `port ${length(v.portLength)}`, { toward: 's' }),
      label(part(starboard, stem), `starboard ${length(v.starboardLength)}`, { toward: 'n' }),
      label(stem, v.off === 0 ? 'stem' : `stem, ${length(v.offBy)} to ${side}`, { toward: 'e' }),
      note(
        `Dashed: true. Forward is to the right and the boat’s port side below, since she lies upside down. ${times(k)}`,
      ),
    ],
  });
}
