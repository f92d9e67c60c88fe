/** What of the hull lights up while a cell is in hand. */
import { aboutOf, type Instance } from '../../cells';
import type { Graph } from '../../notebook';

/** Names of the parts that a cell speaks of, with its choices put in. */
export function litBy({ cell, name }: Instance, graph: Graph): string[] {
  return aboutOf(cell, (key) => {
    const chosen = graph.value(`${name}.${key}`);
    return typeof chosen === 'string' ? chosen : '';
  });
}
