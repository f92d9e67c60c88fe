/** Foam in the bays, on the profile and on the plan; and how she lies with it when she is full of water. */
import { blockOf, type FoamBay } from '../../boat/hull/foam-bays';
import {
  type Drawing,
  drawing,
  hatch,
  line,
  mark,
  mm,
  note,
  type Point,
  rectHatch,
  type Shape,
} from '../../drawing';
import type { Balance, Vec3 } from '../../kernel';
import type { OnHand } from '../form/define';
import { laid } from './flotation-facts';
import type { FlotationValues } from './flotation-steps';
import { fromAstern, stationsAfloat } from './stations-afloat-drawing';
import { swamped } from './swamped-facts';

const TITLE = 'Where the foam goes';
const AND_LIES = `${TITLE}, and how she lies full of water`;
const ALONG = 49;
const GAP = 0.08;

/** Steeper than this her water crosses the profile far from where she is looked at. */
const NEARLY_LEVEL = 0.5;

type Hull = NonNullable<OnHand['hull']>;
type On = Pick<OnHand<FlotationValues>, 'hull' | 'say' | 'ask'>;

export function drawFlotation(v: FlotationValues, { hull, say, ask }: On): Drawing {
  if (!hull) {
    const shapes = [mark([0, 0]), mark([100, 0])];
    return drawing({ title: TITLE, says: 'There is no hull to put foam in.', shapes });
  }
  const { bays, volumes } = ask(laid);
  const { at } = ask(swamped);
  const edges = hull.edges.map((edge) => ({ name: edge.name, points: edge.polyline(ALONG) }));
  const low = Math.min(...edges.flatMap(({ points }) => points.map(([, , z]) => z)));
  const middle = low - GAP * hull.length - hull.beam / 2;
  const profile = ([x, , z]: Vec3): Point => [mm(x), mm(z)];
  const plan =
    (side: 1 | -1) =>
    ([x, y]: Vec3): Point => [mm(x), mm(middle + side * y)];
  const ends = [hull.aft, hull.fore].map(({ corners }) => corners);
  const both = [1, -1] as const;
  const blocks = bays.flatMap((bay, at) => blockOf(bay, volumes[at] ?? 0) ?? []);
  const hatched = blocks.flatMap((_, at): Shape[] => {
    if (at % 2 === 1) return [];
    const [from, to] = [blocks[at]!, blocks[at + 1]!]; // two corners a block
    const long = mm(to[0] - from[0]);
    const broad = mm(to[1] - from[1]);
    return [
      rectHatch(mm(from[0]), mm(from[2]), long, mm(to[2] - from[2]), 'glue'),
      rectHatch(mm(from[0]), mm(middle + from[1]), long, broad, 'glue'),
      rectHatch(mm(from[0]), mm(middle - to[1]), long, broad, 'glue'),
    ];
  });
  return drawing({
    title: at ? AND_LIES : TITLE,
    says: `Profile and plan, bow to the right: ${say(v.fitted - v.lacks, 'displacement')} of foam as blocks, ${v.where === 'sides' ? 'along both sides' : 'under the thwarts'}. ${at ? `Below, full of water, from astern: heel ${say(v.swampedHeel, 'angle')}, trim ${say(v.swampedTrim, 'angle')}.` : 'Full of water she finds no rest.'}`,
    shapes: [
      ...hatched,
      ...edges.flatMap(({ name, points }) => [
        line(points.map(profile), { pen: 'outline', part: name }),
        ...both.map((side) => line(points.map(plan(side)), { pen: 'outline', part: name })),
      ]),
      ...ends.flatMap((points) => [
        line(points.map(profile), { pen: 'outline' }),
        ...both.map((side) => line(points.map(plan(side)), { pen: 'outline' })),
      ]),
      ...(at ? lyingShapes(hull, at, bays, volumes, middle - hull.beam / 2 - GAP * hull.length) : []),
      note(
        `Filled in: foam. Each bay’s is drawn as one block on each side.${at ? ' Below: all stations from astern as she lies full of water, with what is looked at; thin, there and on the profile: the water.' : ''}`,
      ),
    ],
  });
}

/** Her stations and her foam from astern, under a level line that is the water, and that water on the profile. */
function lyingShapes(
  hull: Hull,
  at: Balance,
  bays: readonly FoamBay[],
  volumes: readonly number[],
  under: number,
): readonly Shape[] {
  const across = fromAstern(at);
  const tops = hull.stations.flatMap(({ corners }) =>
    corners.flatMap(([x, y, z]) => [across([x, y, z])[1], across([x, -y, z])[1]]),
  );
  const water = mm(under) - Math.max(...tops, 0);
  const middle = mm(hull.widest.x);
  const place = (point: Vec3): Point => {
    const [left, up] = across(point);
    return [middle + left, water + up];
  };
  const foam = bays.flatMap((bay, i) => {
    const corners = blockOf(bay, volumes[i] ?? 0);
    if (!corners) return [];
    const [[x0, y0, z0], [x1, y1, z1]] = corners;
    const x = (x0 + x1) / 2;
    return [1, -1].map((side) =>
      hatch(
        [
          place([x, side * y0, z0]),
          place([x, side * y1, z0]),
          place([x, side * y1, z1]),
          place([x, side * y0, z1]),
        ],
        'glue',
      ),
    );
  });
  const { normal, height } = at.plane;
  const onProfile = (x: number): Point => [mm(x), mm((height - normal[0] * x) / normal[2])];
  const [aft, fore] = [hull.aft.corners.at(-1)![0], hull.fore.corners.at(-1)![0]]; // keel and sheer at least
  return [
    ...foam,
    ...stationsAfloat(hull, place),
    line(
      [
        [middle - mm(0.6 * hull.beam), water],
        [middle + mm(0.6 * hull.beam), water],
      ],
      { pen: 'thin' },
    ),
    ...(normal[2] > NEARLY_LEVEL ? [line([onProfile(aft), onProfile(fore)], { pen: 'thin' })] : []),
  ];
}
