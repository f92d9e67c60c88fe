/** Which inputs of a cell are asked. */
import { type Cell, type Instance, isAsked, isChoice } from '../cells';
import type { Bench } from './bench';

/**
 * Those that count in one of the versions; in a notebook without a boat there is no choosing among her parts. Tracked.
 */
export function askedOf(
  instance: Instance,
  { boatless, book }: Bench,
): [key: string, spec: Cell['inputs'][string]][] {
  const graphs = [book.first.value, book.second.value].filter((graph) => graph !== null);
  return Object.entries(instance.cell.inputs).filter(
    ([key, spec]) =>
      (!boatless.value || !isChoice(spec) || typeof spec.options !== 'string') &&
      graphs.some((graph) => isAsked(instance, key, (by) => graph.workOut(by))),
  );
}
