/** Where an input's value comes from, in words that need no key to press. */
import { isIssue } from '../../measure';
import type { Graph } from '../../notebook';
import { type Bench, optionsFor } from '../bench';
import { fieldOf, giverOf } from '../input/owner';
import { beginning } from '../input/beginning';
import { inShortWithin } from '../in-short';
import { tiedValue } from './versions';

/** What stands behind the value: what was measured or cut to, what was typed, another quantity, or what is usual. */
export type Origin = 'built' | 'written' | 'linked' | 'usual';

export interface WhereFrom {
  readonly origin: Origin;
  /** `from keelson thickness`, `written here`, `measured; the design says 18 mm`. */
  readonly says: string;
}

export function whereFrom(bench: Bench, graph: Graph, name: string): WhereFrom {
  const entry = graph.entry(name);
  // A field of the boat's is as built where the boat is.
  const { name: written } = fieldOf(bench, graph, name);
  if (graph.entry(written)?.built !== undefined)
    return { origin: 'built', says: `${howBuilt(bench, written)}${designWords(bench, graph, written)}` };
  const [cell = ''] = name.split('.');
  const from = (entry?.names ?? [])
    .map((one) => {
      const words = one.startsWith('shop.') ? 'the shop' : inShortWithin(bench, one, cell);
      return graph.entry(one)?.built === undefined ? words : `${words}, ${howBuilt(bench, one)}`;
    })
    .join(' and ');
  if (entry?.written)
    return {
      origin: 'written',
      says: `${giverOf(graph, name) === undefined ? 'written' : 'only'} here${from && `, from ${from}`}`,
    };
  if (from) return { origin: 'linked', says: `from ${from}` };
  const { kind, source = '' } = graph.quantity(name) ?? {};
  const note = beginning(source);
  if (kind === 'choice') return { origin: 'usual', says: note || 'as usual' };
  return { origin: 'usual', says: note ? `usual value: ${note}` : 'usual value' };
}

const howBuilt = ({ book }: Bench, name: string): string =>
  book.asBuilt.value.measured[name] === undefined ? 'cut' : 'measured';

function designWords(bench: Bench, graph: Graph, name: string): string {
  const designed = graph.designed(name);
  const kind = graph.quantity(name)?.kind;
  if (isIssue(designed) || kind === undefined || optionsFor(graph, name).length > 0) return '';
  return `; the design says ${tiedValue(designed, name, graph, bench)}`;
}
