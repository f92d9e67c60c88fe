/** In the middle of a sentence: a name that no quantity has, with the nearest that there are. */
import { unknownName, upToComma } from '../../measure';
import type { Graph } from '../../notebook';
import { useBench } from '../bench';
import { html } from '../html';

/** Names for which the nearest are looked up; in a text that is wrong all through they help nobody. */
const MOST = 30;
const known = new WeakMap<Graph, Map<string, string>>();

export function UnknownName({ name, line }: { name: string; line: number }) {
  return html`<span class="notice">Line ${line}: ${sentence(name, useBench().book.first.value)}.</span>`;
}

function sentence(name: string, graph: Graph): string {
  const told = known.get(graph) ?? new Map<string, string>();
  known.set(graph, told);
  const says = told.get(name) ?? (told.size < MOST ? nearTo(name, graph) : unknownName(name, []));
  told.set(name, says);
  return says;
}

/** What is said of a name that is not there, with those that are near and what they are. */
export function nearTo(name: string, graph: Graph): string {
  // Rows of tables, which are most of the names, are asked for with as many words.
  const words = name.split('.').length;
  const alike = graph.names.filter((one) => one.split('.').length <= Math.max(2, words));
  return unknownName(name, alike, (of) => upToComma(graph.quantity(of)?.meaning ?? ''));
}
