/** Names for cells that nothing else goes by. */
import { lists } from '../../boat';
import { isTaken } from '../../boat/table/names';
import { nameBeside } from '../../notebook/writing/cell-text';
import type { Bench } from '../bench';
import { notebooks } from '../library';

export const freeName = (name: string, bench: Bench): string => nameBeside(name, (one) => isFree(one, bench));

function isFree(name: string, { instances, table, boatless }: Bench): boolean {
  const { edges, stations } = boatless.peek() ? { edges: [], stations: [] } : lists(table.peek());
  return (
    !isTaken(name, 'edge') &&
    !instances.peek().has(name) &&
    ![...edges, ...stations].some(({ id }) => id === name) &&
    !notebooks.peek().some(({ cells }) => Object.hasOwn(cells, name))
  );
}
