/** How tightly the long parts are bent, each along its edge; fetched with the cells that clamp them. */
import type { Layout } from './lists';
import { fromHull } from './make-derived';
import type { Derived } from './quantity';

/** As good as straight, m: an edge without a bend has no radius, and clamps ask for none. */
const STRAIGHT = 1000;

/** `keelson.edgeRadius` and the like, of the parts that this boat has. */
export function partRadiusQuantities(layout: Layout): readonly Derived[] {
  const edges = layout.edges.map(({ name }) => name);
  const [keel, ...others] = edges;
  const sheer = others.at(-1);
  if (keel === undefined || sheer === undefined) return [];
  return [
    radiusOf('keelson', [keel]),
    ...(others.length > 1 ? [radiusOf('chineLog', others.slice(0, -1))] : []),
    radiusOf('sheerClamp', [sheer]),
    radiusOf('rubRail', [sheer]),
  ];
}

const labels = {
  keelson: 'keelson runs',
  chineLog: 'chine logs run',
  sheerClamp: 'sheer clamps run',
  rubRail: 'rub rails run',
};

function radiusOf(part: keyof typeof labels, along: readonly string[]): Derived {
  return fromHull(
    `${part}.edgeRadius`,
    'length',
    `tightest radius of the edge along which the ${labels[part]}, 1 km (3280 ft) where it is straight`,
    (hull) => Math.min(STRAIGHT, ...along.map((edge) => hull.edge(edge).leastRadius?.radius ?? STRAIGHT)),
  );
}
