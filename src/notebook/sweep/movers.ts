/** The numbers by which a result can be moved: all that is written or preset on the way by which it was worked out, links among them. */
import type { Given } from '../../boat';
import type { Graph } from '../graph/graph';
import { type Limits, limitsOf } from '../graph/limits';

/** A given number that another follows from, SI. */
export interface Mover extends Limits {
  readonly name: string;
  readonly given: Given;
  /** What it is now. */
  readonly value: number;
  /** Steps from the result: a cell's own inputs come before what they are linked to. */
  readonly away: number;
}

/**
 * The given numbers that a quantity follows from as things stand, nearest first; empty where it has no value and
 * nothing was asked for it. A number filled by a link stands among them beside what it is linked to: either can be
 * changed. What a choice of another answer would bring in is not among them.
 * @param graph tracked
 * @param name a quantity of it
 */
export function moversOf(graph: Graph, name: string): readonly Mover[] {
  void graph.value(name); // Worked out, so that what it asked is known.
  const away = new Map([[name, 0]]);
  for (const [of, steps] of away) {
    for (const asked of graph.dependsOn(of)) if (!away.has(asked)) away.set(asked, steps + 1);
  }
  return [...away]
    .filter(([of]) => of !== name)
    .flatMap(([of, steps]): Mover[] => {
      const given = givenNumber(graph, of);
      const value = graph.value(of);
      if (!given || typeof value !== 'number') return [];
      return [{ name: of, given, value, ...limitsOf(given), away: steps }];
    });
}

/** A quantity that the builder may write as a number. */
function givenNumber(graph: Graph, name: string): Given | undefined {
  const of = graph.quantity(name);
  return of && 'preset' in of && of.kind !== 'choice' ? of : undefined;
}
