/** What a number hangs on: the entries at the ends of all ways that lead to it. */
import type { Given } from '../../boat';
import { columns } from '../../boat';
import { isIssue } from '../../measure';
import type { Graph } from './graph';

/** A number that is written, or preset, and follows no other number. */
export interface NumberBehind {
  readonly quantity: Given;
  /** What it comes to, SI. */
  readonly value: number;
  /** Steps away: an input of the cell's own is nearer than what stands behind it. */
  readonly away: number;
}

/**
 * The numbers that one hangs on, nearest first. A link is followed to the number it brings, so that one that reaches
 * an answer by two ways is one. An entry that a table fills (a wood's stiffness) is an end: no number stands behind it.
 * Choices are none. What has no value is left out.
 *
 * @param graph tracked
 */
export function hangsOn(graph: Graph, name: string): readonly NumberBehind[] {
  const found: NumberBehind[] = [];
  const seen = new Set([name]);
  let round = [name];
  for (let away = 0; round.length > 0; away += 1) {
    for (const one of round) {
      const number = away > 0 ? behindAt(graph, one, away) : undefined;
      if (number) found.push(number);
    }
    const next = new Set(round.flatMap((one) => graph.dependsOn(one)));
    round = [...next].filter((one) => !seen.has(one));
    for (const one of round) seen.add(one);
  }
  return found;
}

function behindAt(graph: Graph, name: string, away: number): NumberBehind | undefined {
  const quantity = graph.quantity(name);
  if (!quantity || !('preset' in quantity) || quantity.kind === 'choice') return undefined;
  const value = graph.value(name);
  if (isIssue(value) || typeof value !== 'number' || hasNumbersBehind(graph, name)) return undefined;
  return { quantity, value, away };
}

/** Whether any number that is written stands behind an entry. */
function hasNumbersBehind(graph: Graph, name: string): boolean {
  const seen = new Set([name]);
  for (const one of seen)
    for (const behind of graph.dependsOn(one)) {
      const quantity = graph.quantity(behind);
      if (quantity && 'preset' in quantity && quantity.kind !== 'choice') return true;
      seen.add(behind);
    }
  return false;
}

const COLUMNS: readonly string[] = columns;

/** Whether it is a number of the plan's table of offsets: of a station, an edge and a column. */
export function isOffset(name: string): boolean {
  const words = name.split('.');
  return words.length === 3 && COLUMNS.includes(words[2]!); // of three
}
