/** The long timbers to choose from, in the cells that take a part's size and curve. */
import type { Option } from '../../boat';
import { longParts } from '../../boat/piece-plan';
import { hullStep } from '../define';

export const longPartOptions: readonly Option[] = longParts;

/** The edge along which the part chosen lies. */
export const usualEdge = hullStep('choice', {
  says: 'a keelson lies along the keel, a chine log along the lowest chine, clamp and rail along the sheer; without a chine all but the keelson along the sheer',
  uses: ['part'],
  options: 'longEdges',
  find: ({ edges }, { part }) => {
    if (part === 'keelson') return edges[0]!.name; // every hull has a keel
    return (part === 'chineLog' && edges.length > 2 ? edges[1]! : edges.at(-1)!).name;
  },
  meaning: 'edge along which this timber lies',
  source: 'custom of the trade',
});
