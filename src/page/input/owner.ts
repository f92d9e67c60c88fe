/**
 * Whose a cell's number is. One that shows a number of the boat's or the shop's is their field: what is typed or
 * measured there is theirs, and every cell follows. *Only here* departs from it.
 */
import type { Given } from '../../boat';
import { isIssue } from '../../measure';
import type { Graph } from '../../notebook';
import type { Bench } from '../bench';
import { entryOf } from './entry-text';

/** What fills an input as long as nothing is written in it: another quantity, by its name. */
export function giverOf(graph: Graph, name: string): string | undefined {
  const given = graph.quantity(name);
  if (!given || !('preset' in given)) return undefined;
  const { preset, presetFrom } = given;
  const link = presetFrom ? graph.workOut(presetFrom) : preset;
  return typeof link === 'string' && graph.has(link) ? link : undefined;
}

/** The boat's or the shop's number that a plain cell's input shows; undefined where what fills it follows from others. */
export function ownerOf({ instances }: Bench, graph: Graph, name: string): string | undefined {
  const cellOf = (of: string) => instances.value.get(of.split('.', 1)[0]!); // split gives at least one
  const instance = cellOf(name);
  const [, key = ''] = name.split('.');
  if (!instance || instance.name !== instance.cell.id || key in instance.presets) return undefined;
  const giver = giverOf(graph, name);
  return giver !== undefined && !cellOf(giver) && graph.entry(giver) !== undefined ? giver : undefined;
}

/** Whether something is written or measured in the input itself. */
export function isDeparted(graph: Graph, name: string): boolean {
  const entry = graph.entry(name);
  return entry !== undefined && (entry.written || entry.built !== undefined);
}

/** Where an input's field writes, and where on the page it stands. */
export function fieldOf(bench: Bench, graph: Graph, place: string): { name: string; place: string } {
  const owner = ownerOf(bench, graph, place);
  return { name: owner !== undefined && !isDeparted(graph, place) ? owner : place, place };
}

/** The entry by which an input departs from its owner: what it is reckoned with now, or the text that can't be read. */
export function departure(graph: Graph, { name, kind }: Given, { shown }: Bench): string {
  const { text, names, built } = graph.entry(name)!; // owners are given
  const value = graph.value(name);
  if (typeof value === 'string') return value;
  if (isIssue(value) || (names.length === 0 && built === undefined)) return text;
  return entryOf(value, kind, shown.peek());
}
