/** The hull in the water: profile, plan and all her stations from astern, and the freeboard all round her sheer. */
import {
  dim,
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
import { heightsAlong, type Vec3 } from '../../kernel';
import type { Chart, OnHand } from '../form/define';
import { painted, rest, waterlines } from './float-facts';
import type { FloatValues } from './float-steps';
import { fromAstern, stationsAfloat } from './stations-afloat-drawing';

const TITLE = 'How she floats';
const ALONG = 49;
/** Between the views, as a share of her length. */
const GAP = 0.08;

type On = Pick<OnHand<FloatValues>, 'hull' | 'say' | 'ask'>;
type Hull = NonNullable<OnHand['hull']>;

export function drawFloat(v: FloatValues, { hull, say, ask }: On): Drawing {
  if (!hull) {
    const shapes = [mark([0, 0]), mark([100, 0])];
    return drawing({ title: TITLE, says: 'There is no hull to float.', shapes });
  }
  const { at } = ask(rest);
  const line3 = (points: readonly Vec3[], place: (point: Vec3) => Point) => points.map(place);
  const { body, beam, length } = hull;
  const [low] = heightsAlong(body, [0, 0, 1]);
  const both = ([x, y, z]: Vec3): Vec3 => [x, -y, z];
  const gap = GAP * length;
  const profile = ([x, , z]: Vec3): Point => [mm(x), mm(z)];
  const plan = ([x, y]: Vec3): Point => [mm(x), mm(low - gap - beam / 2 + y)];
  const tops = hull.stations.flatMap(({ corners }) => corners.flatMap((one) => [one, both(one)]));
  const highest = Math.max(...tops.map((point) => fromAstern(at)(point)[1]));
  const water0 = mm(low - 2 * gap - beam) - highest;
  const middle = hull.widest.x;
  // Below the plan: along the water, so that one level line is the water for all stations.
  const across = fromAstern(at);
  const astern = (point: Vec3): Point => {
    const [left, up] = across(point);
    return [mm(middle) + left, water0 + up];
  };
  const edges = hull.edges.map((edge) => ({ name: edge.name, points: edge.polyline(ALONG) }));
  const ends = [hull.aft, hull.fore].map(({ corners }) => corners);
  const { normal, height } = at.plane;
  const waterAt = (x: number, y: number): Vec3 => [
    x,
    y,
    (height - normal[0] * x - normal[1] * y) / normal[2],
  ];
  const [from, to] = [hull.aft.corners.at(-1)![0] - gap, hull.fore.corners.at(-1)![0] + gap];
  const water = (points: readonly Point[]): Shape => line(points, { pen: 'thin' });
  const least: Vec3 = [v.leastAt, 0, sheerAt(hull, v.leastAt)];
  return drawing({
    title: TITLE,
    says: `Draught ${say(v.draught, 'length')}, trim ${say(v.trim, 'angle')}, heel ${say(v.heel, 'angle')}. Least freeboard ${say(v.leastFreeboard, 'length')}, ${say(v.leastAt, 'length')} forward.`,
    shapes: [
      ...edges.map(({ name, points }) => line(line3(points, profile), { pen: 'outline', part: name })),
      ...ends.map((points) => line(line3(points, profile), { pen: 'outline' })),
      water([profile(waterAt(from, 0)), profile(waterAt(to, 0))]),
      // Where the line is painted: as high over the base line at each station as the table says.
      line([profile([from, 0, 0]), profile([to, 0, 0])], { pen: 'hidden' }),
      ...ask(painted).map(({ x, up }) => line([profile([x, 0, 0]), profile([x, 0, up])], { pen: 'thin' })),
      dim(profile([v.place, 0, 0]), profile([v.place, 0, v.waterUp]), say(v.waterUp, 'length'), {
        side: 'left',
      }),
      mark(profile([v.movedForward, v.movedSide, v.movedHeight]), { form: 'cross' }),
      mark(profile(at.immersed.centroid!), { form: 'dot' }),
      mark(profile(least), { form: 'dot' }),
      label(profile(least), say(v.leastFreeboard, 'length')),
      ...edges.flatMap(({ name, points }) => [
        line(line3(points, plan), { pen: 'outline', part: name }),
        line(line3(points.map(both), plan), { pen: 'outline', part: name }),
      ]),
      ...ends.flatMap((points) => [
        line(line3(points.toReversed().concat(points.map(both)), plan), { pen: 'outline' }),
      ]),
      ...ask(waterlines).map((points) => water(line3(points, plan))),
      ...stationsAfloat(hull, astern),
      water([
        [mm(middle - 0.6 * beam), water0],
        [mm(middle + 0.6 * beam), water0],
      ]),
      note(
        'Profile and plan, bow to the right, and all stations seen from astern. Thin: the water. From the base line, dashed, up at each station: the height at which the waterline is painted, told at the station looked at. Cross: the centre of all aboard; dot below: that of the water pushed aside.',
      ),
    ],
  });
}

function sheerAt(hull: Hull, x: number): number {
  const sheer = hull.edges.at(-1)!.polyline(ALONG); // two edges or more
  return sheer.reduce((best, point) => (Math.abs(point[0] - x) < Math.abs(best[0] - x) ? point : best))[2];
}

export function freeboardChart(v: FloatValues, { hull, say, ask }: On): Chart {
  const bare = {
    title: 'Freeboard all round the sheer',
    x: { label: 'From the after end of the bottom', kind: 'length' },
    y: { label: 'Freeboard', kind: 'length' },
  } as const;
  if (!hull) return { ...bare, says: 'There is no hull to float.', lines: [] };
  const { freeboard } = ask(rest);
  return {
    ...bare,
    says: `What is left above the water to port and to starboard: least, ${say(v.leastFreeboard, 'length')}, at ${say(v.leastAt, 'length')}.`,
    lines: [
      { name: 'port', points: freeboard.map(({ x, port }) => [x, port] as const), as: 'line' },
      { name: 'starboard', points: freeboard.map(({ x, starboard }) => [x, starboard] as const), as: 'line' },
    ],
    points: [{ x: v.leastAt, y: v.leastFreeboard, label: `least: ${say(v.leastFreeboard, 'length')}` }],
  };
}
