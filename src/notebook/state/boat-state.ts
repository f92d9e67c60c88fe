/** A boat as a file or a link has her, and as the notebook remembers her. Fetched with what opens or saves one. */
import { type Boat, nothingBuilt } from '../../boat';
import type { BookState } from './state';

/** What is not said of her is not there. */
export function stateOf({
  table,
  name = table.name,
  entries = {},
  second,
  inHand,
  asBuilt = nothingBuilt,
  notebooks = {},
  log = {},
  lessons = {},
  sweeps = {},
}: Pick<Boat, 'table'> & Partial<Boat>): BookState {
  const versions = { second: second ?? null, inHand: (second && inHand) ?? 'first' } as const;
  return { name, table, entries, ...versions, asBuilt, notebooks, log, lessons, sweeps };
}

export function boatOf({ second, inHand, ...boat }: BookState): Boat {
  return { ...boat, ...(second && { second }), ...(second && inHand === 'second' && { inHand }) };
}
