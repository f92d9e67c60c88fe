/** Which inputs of a cell are asked. */
import { type Cell, type Instance, isAsked } from '../cells';
import type { Bench } from './bench';

/** Those that count in one of the versions. Tracked. */
export function askedOf(instance: Instance, { book }: Bench): [key: string, spec: Cell['inputs'][string]][] {
  const graphs = [book.first.value, book.second.value].filter((graph) => graph !== null);
  return Object.entries(instance.cell.inputs).filter(([key]) =>
    graphs.some((graph) => isAsked(instance, key, graph)),
  );
}
