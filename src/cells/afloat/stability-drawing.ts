/** All stations of the heeled hull from astern, with weight and push and the lever between them; and the lever against heel. */
import { dim, type Drawing, drawing, line, mark, mm, note, type Point } from '../../drawing';
import { LAST_HEEL } from '../../boat/hull/heeling';
import type { Chart, OnHand } from '../form/define';
import { held, levers, wallFails, wallSided } from './stability-facts';
import type { StabilityValues } from './stability-steps';
import { fromAstern, stationsAfloat } from './stations-afloat-drawing';

const TITLE = 'What rights her';
/** Higher than so many of the greatest lever the wall-sided formula would press the curve flat. */
const WALL_SHOWN = 1.5;

type On = Pick<OnHand<StabilityValues>, 'hull' | 'say' | 'ask'>;

export function drawStability(v: StabilityValues, { hull, say, ask }: On): Drawing {
  if (!hull) {
    const shapes = [mark([0, 0]), mark([100, 0])];
    return drawing({ title: TITLE, says: 'There is no hull to heel.', shapes });
  }
  const { at } = ask(held);
  const place = fromAstern(at);
  const weight = place([v.centreForward, 0, v.centreHeight]);
  const push = place(at.immersed.centroid!); // some of her is under
  const half = mm(0.65 * hull.beam);
  const below: number =
    Math.min(...hull.widest.corners.map((corner) => place(corner)[1]), push[1]) - mm(0.12 * hull.beam);
  const plumb = (from: Point) => line([from, [from[0], below]], { pen: 'thin' });
  return drawing({
    title: TITLE,
    says: `All stations from astern, heeled ${say(v.heel, 'angle')} to port. The water pushes ${say(Math.abs(v.rightingLever), 'length')} ${v.rightingLever >= 0 ? 'outboard of her weight, and rights her' : 'inboard of her weight, and turns her over'}.`,
    shapes: [
      ...stationsAfloat(hull, place),
      line(
        [
          [-half, 0],
          [half, 0],
        ],
        { pen: 'thin' },
      ),
      mark(weight, { form: 'cross' }),
      mark(push, { form: 'dot' }),
      plumb(weight),
      plumb(push),
      dim([weight[0], below], [push[0], below], `lever ${say(v.rightingLever, 'length')}`, {
        run: 'horizontal',
        side: 'below',
      }),
      note(
        'Cross: the weight of all aboard, plumb down. Dot: the water’s push, plumb up. Level line: the water.',
      ),
    ],
  });
}

export function leverChart(v: StabilityValues, { hull, say, ask }: On): Chart {
  const bare = {
    title: 'Righting lever against heel',
    x: { label: 'Heel', kind: 'angle' },
    y: { label: 'Righting lever', kind: 'length' },
  } as const;
  if (!hull) return { ...bare, says: 'There is no hull to heel.', lines: [] };
  const curve = ask(levers);
  const wall = curve.map(({ heel }) => [heel, wallSided(v.metacentricHeight, v.radius, heel)] as const);
  const tallest = WALL_SHOWN * Math.max(...curve.map(({ lever }) => Math.abs(lever)));
  const off = wall.findIndex(([, lever]) => Math.abs(lever) > tallest);
  const greatest = Math.max(...curve.filter(({ heel }) => heel <= v.swamps).map(({ lever }) => lever));
  const open = v.swamps < LAST_HEEL;
  const decked = open && v.swamps > v.sheerUnder;
  const comesIn = decked
    ? `The sheer goes under at ${say(v.sheerUnder, 'angle')}, and water comes in at ${say(v.swamps, 'angle')}.`
    : open
      ? `Water comes in at ${say(v.swamps, 'angle')}.`
      : 'No water comes in.';
  return {
    ...bare,
    says: `${comesIn} Her greatest lever till then is ${say(greatest, 'length')}; what is drawn beyond is of a hull closed up to her sheer. The wall-sided formula takes her sides as plumb: from about ${say(ask(wallFails), 'angle')} it is off by more than a twentieth.`,
    lines: [
      {
        name: 'free to trim, closed to the sheer',
        points: curve.map(({ heel, lever }) => [heel, lever] as const),
        as: 'line',
      },
      { name: 'wall-sided formula', points: off < 0 ? wall : wall.slice(0, off), as: 'line' },
    ],
    limits: [
      ...(decked ? [{ at: v.sheerUnder, axis: 'x' as const, label: 'the sheer goes under' }] : []),
      ...(open ? [{ at: v.swamps, axis: 'x' as const, label: 'water comes in' }] : []),
    ],
    points: [{ x: v.heel, y: v.rightingLever, label: say(v.rightingLever, 'length') }],
  };
}
