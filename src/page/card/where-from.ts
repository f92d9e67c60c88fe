/** Where an input's value comes from, in words that need no key to press. */
import { type Bench } from '../bench';
import type { Graph } from '../../notebook';
import { beginning } from '../input/provenance';
import { inShortWithin } from '../words';

/** What stands behind the value: typed, another quantity, or what is usual. */
export type Standing = 'written' | 'linked' | 'usual';

export interface WhereFrom {
  readonly standing: Standing;
  /** `from keelson thickness`, `written here`, `usual value: measure the sheet in hand`. */
  readonly says: string;
}

export function whereFrom(bench: Bench, graph: Graph, name: string): WhereFrom {
  const entry = graph.entry(name);
  const [cell = ''] = name.split('.');
  const from = (entry?.names ?? []).map((one) => inShortWithin(bench, one, cell)).join(' and ');
  if (entry?.written)
    return { standing: 'written', says: from ? `written here, from ${from}` : 'written here' };
  if (from) return { standing: 'linked', says: `from ${from}` };
  const note = beginning(graph.quantity(name)?.source ?? '');
  return { standing: 'usual', says: note ? `usual value: ${note}` : 'usual value' };
}
