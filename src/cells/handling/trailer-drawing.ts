/** The trailer from the side with the boat on it: what bears where. */
import {
  arrow,
  circle,
  dim,
  type Drawing,
  drawing,
  label,
  line,
  mark,
  mm,
  note,
  type Point,
  rectHatch,
} from '../../drawing';
import type { OnHand } from '../form/define';

interface Trailed {
  readonly ball: number;
  readonly behind: number;
  readonly balance: number;
  readonly aftBunk: number;
  readonly foreBunk: number;
  readonly long: number;
  readonly boat: number;
  readonly tongue: number;
  readonly axleLoad: number;
}

/** Of the wheel's radius: the frame's height, the bunks', and the boat's depth where there is none to draw. */
const WHEEL = 0.085;

export function trailerView(v: Trailed, { hull, say }: Pick<OnHand, 'hull' | 'say'>): Drawing {
  const length = (metres: number) => say(metres, 'length');
  const [ball, behind, long] = [mm(v.ball), mm(v.behind), mm(v.long)];
  const wheel = WHEEL * ball;
  const frame = 1.5 * wheel;
  const deck = 2.6 * wheel;
  // Along the trailer from the axle, forward to the right; the after end of her bottom lies behind it.
  const at = (forward: number) => forward - behind;
  const keel = hull?.edges[0]?.polyline(25);
  const sheer = hull?.edges.at(-1)?.polyline(25);
  const low = keel ? Math.min(...keel.map(([, , z]) => z)) : 0;
  const profile = (points: readonly (readonly [number, number, number])[]): Point[] =>
    points.map(([x, , z]) => [at(mm(x - keel![0]![0])), deck + mm(z - low)]);
  const box: Point[] = [
    [at(0), deck],
    [at(0.8 * long), deck],
    [at(long), deck + 2.2 * wheel],
    [at(0), deck + 2.2 * wheel],
  ];
  const boat = keel && sheer ? [...profile(keel), ...profile(sheer).toReversed()] : box;
  const top = Math.max(...boat.map(([, y]) => y));
  const balance: Point = [at(mm(v.balance)), deck + 0.35 * (top - deck)];
  const bunk = (forward: number) =>
    rectHatch(at(mm(forward)) - wheel / 4, frame, wheel / 2, deck - frame, 'cedar');
  return drawing({
    title: 'The boat on her trailer, from the side',
    says: `${say(v.tongue, 'mass')} hangs on the ball, ${say(v.axleLoad, 'mass')} on the axle; her balance stands ${length(v.balance)} forward of her after end.`,
    shapes: [
      line([
        [at(0) - wheel, 0],
        [ball + wheel, 0],
      ]),
      line(boat, { pen: 'outline', closed: true }),
      bunk(v.aftBunk),
      bunk(v.foreBunk),
      line(
        [
          [Math.min(at(mm(v.aftBunk)), 0) - wheel, frame],
          [0.75 * ball, frame],
          [ball, 1.3 * wheel],
        ],
        { pen: 'outline' },
      ),
      circle([0, wheel], wheel, { pen: 'outline' }),
      circle([ball, 1.3 * wheel], wheel / 5),
      mark(balance),
      label(balance, say(v.boat, 'mass'), { toward: 'n' }),
      arrow([ball, 0], [ball, 1.1 * wheel], { pen: 'visible' }),
      label([ball, 1.3 * wheel], say(v.tongue, 'mass'), { toward: 'n' }),
      label([0, wheel], say(v.axleLoad, 'mass'), { toward: 'sw' }),
      dim([0, 0], [ball, 0], length(v.ball), { side: 'below' }),
      ...(behind > 1 ? [dim([at(0), 0], [0, 0], length(v.behind), { side: 'below' })] : []),
      dim([at(0), top], [balance[0], top], length(v.balance), { side: 'above', run: 'horizontal' }),
      note('Forward to the right. Cross: where she balances.'),
    ],
  });
}
