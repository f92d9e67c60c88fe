/** Foam in the bays, on the profile and on the plan. */
import { blockOf } from '../../boat/hull/foam-bays';
import {
  type Drawing,
  drawing,
  line,
  mark,
  mm,
  note,
  type Point,
  rectHatch,
  type Shape,
} from '../../drawing';
import type { Vec3 } from '../../kernel';
import type { OnHand } from '../form/define';
import { laid } from './flotation-facts';
import type { FlotationValues } from './flotation-steps';

const TITLE = 'Where the foam goes';
const ALONG = 49;
const GAP = 0.08;

type On = Pick<OnHand<FlotationValues>, 'hull' | 'say' | 'ask'>;

export function drawFlotation(v: FlotationValues, { hull, say, ask }: On): Drawing {
  if (!hull) {
    const shapes = [mark([0, 0]), mark([100, 0])];
    return drawing({ title: TITLE, says: 'There is no hull to put foam in.', shapes });
  }
  const { bays, volumes } = ask(laid);
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
    title: TITLE,
    says: `Profile and plan, bow to the right: ${say(v.fitted - v.lacks, 'displacement')} of foam as blocks, ${v.where === 'sides' ? 'along both sides' : 'under the thwarts'}.`,
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
      note('Filled in: foam. Each bay’s is drawn as one block on each side.'),
    ],
  });
}
