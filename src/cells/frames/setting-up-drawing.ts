/** The frame from above against its line and the string, and from aft and from the side; its errors many times too large. */
import {
  arrow,
  centreLine,
  type Drawing,
  drawing,
  label,
  line,
  mark,
  mm,
  note,
  type Point,
  type Shape,
} from '../../drawing';
import type { OnHand } from '../form/define';
import { exaggeration, times } from './exaggeration';

interface Measured {
  readonly frame: string;
  readonly portLength: number;
  readonly starboardLength: number;
  readonly portHeight: number;
  readonly starboardHeight: number;
  readonly out: number;
  readonly ahead: number;
  readonly height: number;
  readonly depth: number;
  readonly offString: number;
  readonly portAhead: number;
  readonly centreAhead: number;
  readonly footAhead: number;
  readonly portHigh: number;
}

export function settingUpView(v: Measured, { say }: Pick<OnHand, 'say'>): Drawing {
  const length = (metres: number) => say(metres, 'length');
  const out = mm(v.out);
  const k = exaggeration(
    [v.portAhead, v.centreAhead, v.offString, v.footAhead, v.portHigh].map(mm),
    0.3 * Math.min(out, Math.max(mm(v.depth), 0.3 * out), mm(v.ahead)),
  );
  return drawing({
    title: 'The frame on the jig: from above, from aft and from the side',
    says: `Port side ${length(Math.abs(v.portAhead))} too far ${way(v.portAhead)}, middle ${length(Math.abs(v.centreAhead))} too far ${way(v.centreAhead)} and ${length(Math.abs(v.offString))} ${v.offString < 0 ? 'to starboard' : 'to port'} of the string, upper edge leaning ${length(Math.abs(v.footAhead))} ${way(v.footAhead)}.`,
    shapes: [
      fromAbove(v, k, length),
      fromAft(v, k, length),
      fromTheSide(v, k, length),
      note(
        `Dashed: where it should stand. From above, forward is to the right and the boat’s port side below, since she lies upside down. ${times(k)}`,
      ),
    ],
  });
}

const way = (metres: number) => (metres < 0 ? 'aft' : 'forward');
const held = (value: number, most: number) => Math.max(-most, Math.min(most, value));

function fromAbove(v: Measured, k: number, length: (metres: number) => string): Shape[] {
  const [out, ahead] = [mm(v.out), mm(v.ahead)];
  const middle: Point = [held(mm(v.centreAhead) * k, ahead * 0.8), -held(mm(v.offString) * k, out)];
  const dx = held(mm(v.portAhead) * k, out * 0.8);
  const dy = Math.sqrt(out * out - dx * dx);
  const port: Point = [middle[0] + dx, middle[1] - dy];
  const starboard: Point = [middle[0] - dx, middle[1] + dy];
  const nail: Point = [ahead, 0];
  return [
    centreLine([-0.3 * out, 0], [ahead + 0.2 * out, 0]),
    line(
      [
        [0, -out],
        [0, out],
      ],
      { pen: 'hidden' },
    ),
    line([port, starboard], { pen: 'outline', part: v.frame }),
    mark(middle),
    line([port, nail, starboard], { pen: 'thin' }),
    mark(nail, { form: 'dot' }),
    label(nail, 'nail', { toward: 'e' }),
    label(alongLine(nail, port), `to port ${length(v.portLength)}`, { toward: 's' }),
    label(alongLine(nail, starboard), `to starboard ${length(v.starboardLength)}`, { toward: 'n' }),
    // Back to where it belongs.
    ...(Math.abs(dx + middle[0]) > 0.02 * out ? [arrow(port, [0, -out], { pen: 'thin' })] : []),
    ...(Math.abs(middle[0] - dx) > 0.02 * out ? [arrow(starboard, [0, out], { pen: 'thin' })] : []),
  ];
}

const alongLine = (a: Point, b: Point): Point => [a[0] + 0.6 * (b[0] - a[0]), a[1] + 0.6 * (b[1] - a[1])];

/** Its sheer marks over the jig, looking forward: port to the right, since the boat lies upside down. */
function fromAft(v: Measured, k: number, length: (metres: number) => string): Shape[] {
  const [out, height, depth] = [
    mm(v.out),
    Math.min(mm(v.height), 2 * mm(v.out)),
    Math.min(mm(v.depth), 2 * mm(v.out)),
  ];
  const [x0, y0] = [0.9 * out, -1.7 * out - height - depth];
  const tilt = held((mm(v.portHigh) * k) / 2, height * 0.8);
  const port: Point = [x0 + out, y0 + height + tilt];
  const starboard: Point = [x0 - out, y0 + height - tilt];
  return [
    line([
      [x0 - 1.2 * out, y0],
      [x0 + 1.2 * out, y0],
    ]),
    line(
      [
        [x0 - out, y0 + height],
        [x0 + out, y0 + height],
      ],
      { pen: 'hidden' },
    ),
    line(
      [
        starboard,
        [x0 - 0.7 * out, y0 + height + depth - tilt],
        [x0 + 0.7 * out, y0 + height + depth + tilt],
        port,
      ],
      {
        pen: 'outline',
        part: v.frame,
      },
    ),
    line([[starboard[0], y0], starboard], { pen: 'thin' }),
    line([[port[0], y0], port], { pen: 'thin' }),
    label(starboard, `starboard ${length(v.starboardHeight)} up`, { toward: 'nw' }),
    label(port, `port ${length(v.portHeight)} up`, { toward: 'e' }),
  ];
}

/** Leaning, forward to the right. */
function fromTheSide(v: Measured, k: number, length: (metres: number) => string): Shape[] {
  const [out, height, depth] = [
    mm(v.out),
    Math.min(mm(v.height), 2 * mm(v.out)),
    Math.min(mm(v.depth), 2 * mm(v.out)),
  ];
  const [x0, y0] = [3 * out, -1.7 * out - height - depth];
  const lean = held(mm(v.footAhead) * k, depth * 0.8);
  return [
    line([
      [x0 - 0.5 * out, y0],
      [x0 + 0.5 * out, y0],
    ]),
    line(
      [
        [x0, y0],
        [x0, y0 + height + depth],
      ],
      { pen: 'hidden' },
    ),
    line(
      [
        [x0, y0 + height],
        [x0 + lean, y0 + height + depth],
      ],
      { pen: 'outline', part: v.frame },
    ),
    label(
      [x0 + lean, y0 + height + depth],
      v.footAhead === 0 ? 'plumb' : `leans ${length(Math.abs(v.footAhead))} ${way(v.footAhead)}`,
      { toward: 'ne' },
    ),
  ];
}
