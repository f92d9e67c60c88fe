/** Her section as it stands in the turn, on the floor or in the loops; and what her sheer takes at every angle. */
import {
  arrow,
  dim,
  type Drawing,
  drawing,
  label,
  line,
  mark,
  mm,
  type Point,
  type Shape,
} from '../../drawing';
import type { Vec2 } from '../../kernel';
import type { Chart, OnHand, ValuesOf } from '../form/define';
import { cradles, everyDegree } from './roll-cradles';
import { rolledTo, rolling, standingAt } from './roll-facts';
import type { rollInputs } from './roll-inputs';
import type { rollSteps } from './roll-steps';

export type RollValues = ValuesOf<typeof rollInputs, typeof rollSteps>;
type On = Pick<OnHand<RollValues>, 'hull' | 'say' | 'ask'>;

const TITLE = 'How she stands now, seen from astern';

export function drawRoll(v: RollValues, on: On): Drawing {
  if (!on.hull)
    return drawing({
      title: TITLE,
      says: 'There is no hull to turn.',
      shapes: [mark([0, 0]), mark([100, 0])],
    });
  return v.way === 'edge' ? overEdge(v, on) : inRopes(v, on);
}

function overEdge(v: RollValues, { hull, say, ask }: On): Drawing {
  const now = ask(rolledTo);
  // The floor keeps its place below her, so that she alone moves.
  const at = ([x, y]: Vec2): Point => [mm(x - now.along), mm(y)];
  const section = (hull?.widest.section ?? []).map(([y, z]): Vec2 => [y, z]);
  const open = [...section.toReversed(), ...section.map(([y, z]): Vec2 => [-y, z])].map((point) =>
    at(now.place(point)),
  );
  const reach = mm(Math.hypot(v.broad, v.deep));
  const grip = at(now.gripAt);
  const centre = at(now.centre);
  const long = 0.3 * reach;
  const way = v.atSheer < 0 ? -1 : 1;
  const arm = mm(v.arm) || 1;
  const push: Point = [grip[0] + (way * long * grip[1]) / arm, grip[1] - (way * long * grip[0]) / arm];
  return drawing({
    title: TITLE,
    says: `Turned by ${say(v.angle, 'angle')}: at her far sheer ${say(v.atSheerSize, 'mass')}, ${way > 0 ? 'pushed on' : 'held back'}; her centre is ${say(Math.abs(v.lever), 'length')} ${v.lever < 0 ? 'past' : 'short of'} what bears.`,
    keepIn: { left: -1.2 * reach, right: 1.2 * reach, bottom: -0.1 * reach, top: 1.2 * reach },
    shapes: [
      line([
        [-1.2 * reach, 0],
        [1.2 * reach, 0],
      ]),
      line(open, { pen: 'outline' }),
      line([[0, 0], grip], { pen: 'thin' }),
      mark([0, 0], { form: 'dot' }),
      mark(centre, { form: 'cross' }),
      label(centre, `centre, ${say(v.mass, 'mass')}`),
      line([centre, [centre[0], 0]], { pen: 'centre' }),
      ...(Math.abs(centre[0]) > 1
        ? [
            dim([Math.min(centre[0], 0), 0], [Math.max(centre[0], 0), 0], say(Math.abs(v.lever), 'length'), {
              side: 'below',
            }),
          ]
        : []),
      arrow(grip, push),
      label(push, `${way > 0 ? 'push on' : 'hold back'} ${say(v.atSheerSize, 'mass')}`),
    ],
  });
}

function inRopes(v: RollValues, { say, ask }: On): Drawing {
  const found = ask(cradles);
  const half = mm(v.posts / 2);
  const high = mm(v.postHigh);
  const at = ([x, y]: Vec2): Point => [mm(x), mm(y)];
  const post = (x: number): Shape =>
    line(
      [
        [x, 0],
        [x, high],
      ],
      { pen: 'outline' },
    );
  const heavy = found && (found.hung[0].bears > found.hung[1].bears ? found.hung[0] : found.hung[1]);
  const other = found && (heavy === found.hung[0] ? found.hung[1] : found.hung[0]);
  const rope = (of: NonNullable<typeof heavy>, pen: 'visible' | 'hidden') =>
    line([[-half, high], ...of.under.map(at), [half, high]], { pen });
  return drawing({
    title: TITLE,
    says: `In the ropes, turned by ${say(v.angle, 'angle')}: ${say(v.atSheerSize, 'mass')} at her sheer ${v.atSheer < 0 ? 'hold her back' : 'turn her on'}, and the hardest pulled leg bears ${say(v.legPull, 'mass')}.`,
    shapes: [
      line([
        [-1.15 * half, 0],
        [1.15 * half, 0],
      ]),
      post(-half),
      post(half),
      ...(found && heavy && other
        ? [
            line(other.outline.map(at), { pen: 'hidden', closed: true }),
            line(heavy.outline.map(at), { pen: 'outline', closed: true }),
            rope(other, 'hidden'),
            rope(heavy, 'visible'),
            mark([mm(found.off), mm(found.centreUp)]),
            label([mm(found.off), mm(found.centreUp)], `centre, ${say(v.mass, 'mass')}`),
            label(middleOf([-half, high], at(heavy.leaves[0])), say(v.mass * heavy.pulls[0], 'mass'), {
              toward: 'ne',
            }),
            label(middleOf([half, high], at(heavy.leaves[1])), say(v.mass * heavy.pulls[1], 'mass'), {
              toward: 'nw',
            }),
          ]
        : []),
      dim([-half, 0], [half, 0], say(v.posts, 'length'), { side: 'below' }),
      dim([half, 0], [half, high], say(v.postHigh, 'length'), { side: 'right' }),
    ],
  });
}

const middleOf = (a: Point, b: Point): Point => [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];

export function rollChart(v: RollValues, { hull, say, ask }: On): Chart {
  const bare = {
    title: 'At her far sheer, all the way over',
    x: { label: 'Turned by', kind: 'angle', from: 0, to: Math.PI },
    y: { label: 'Push on; below 0 hold back', kind: 'mass' },
  } as const;
  if (!hull) return { ...bare, says: 'There is no hull to turn.', lines: [] };
  const points = v.way === 'edge' ? atEdge(v, ask) : atRopes(v, ask);
  return {
    ...bare,
    says:
      v.way === 'edge'
        ? `On the way up most, ${say(v.heaviest, 'mass')}; nothing at ${say(v.balanceAngle, 'angle')}; past that the hold on her, ${say(v.held, 'mass')} where it is hardest.`
        : `The pull that turns her on in the ropes, against the high friction.`,
    lines: [{ name: 'at her far sheer', points, as: 'line' }],
    limits: [{ at: 0, axis: 'y', label: 'balance' }],
    points: [{ x: v.angle, y: v.atSheer, label: say(v.atSheer, 'mass') }],
  };
}

function atEdge(v: RollValues, ask: On['ask']): readonly (readonly [number, number])[] {
  const roll = ask(rolling);
  return Array.from({ length: 181 }, (_, degree) => {
    const angle = (degree * Math.PI) / 180;
    const { lever, arm } = standingAt(roll, angle);
    return [angle, (v.mass * lever) / arm] as const;
  });
}

const atRopes = (v: RollValues, ask: On['ask']): readonly (readonly [number, number])[] =>
  ask(everyDegree).map(
    ({ angle, off, held }) => [angle, (v.mass * (held(v.drags) - off)) / v.cradleArm] as const,
  );
