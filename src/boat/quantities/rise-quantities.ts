/** How far each edge stands off a straight line between its ends; it comes with the cells that ask for it. */
import { riseOf } from '../../kernel/polyline';
import type { Layout } from './lists';
import { fromHull } from './make-derived';
import type { Derived } from './quantity';

/** Near enough: between neighbours of so many points an edge leaves its chord by less than a ten-thousandth of its rise. */
const POINTS = 161;

/** `chine.rise` and the like. */
export function riseQuantities({ edges }: Layout): readonly Derived[] {
  return edges.map(({ name, label }) =>
    fromHull(
      `${name}.rise`,
      'length',
      `greatest distance of the ${label} from a straight line between its ends`,
      (hull) => riseOf(hull.edge(name).polyline(POINTS)),
    ),
  );
}
