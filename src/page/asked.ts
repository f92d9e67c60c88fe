/** Which inputs of a cell are asked. */
import { type Cell, isChoice } from '../cells';
import type { Bench } from './bench';

/** All of them; in a notebook without a boat there is no choosing among her parts. Tracked. */
export function askedOf(
  { inputs }: Cell,
  { boatless }: Bench,
): [key: string, spec: Cell['inputs'][string]][] {
  return Object.entries(inputs).filter(
    ([, spec]) => !boatless.value || !isChoice(spec) || typeof spec.options !== 'string',
  );
}
