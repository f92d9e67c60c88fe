/** What a cell's drawings, offers, patterns and search go by: its values, and what else they may ask for. */
import type { Hull } from '../boat';
import {
  type Ask,
  type Instance,
  onHand,
  type OnHand,
  scopeOf,
  underName,
  type Values,
  valuesOf,
} from '../cells';
import { type Issue, isIssue } from '../measure';
import type { Graph } from '../notebook';
import { type Bench, sayWith } from './bench';

export interface AtHand {
  readonly values: Values;
  /** Null where it has no shape to draw. */
  readonly hull: Hull | null;
  readonly on: OnHand;
  /** What was asked of the cell under other values so far, with the answers. */
  readonly asked: readonly Supposition[];
}

export interface Supposition {
  readonly changes: Partial<Values>;
  readonly answer: Values | Issue;
}

/** As a graph has them; why there are none, while a value is missing. */
export function atHand(instance: Instance, graph: Graph, bench: Bench): AtHand | Issue {
  const values = graph.workOut((read) => valuesOf(instance, read));
  if (isIssue(values)) return values;
  const drawn = graph.hull();
  const hull = isIssue(drawn) ? null : drawn;
  // Facts are those of the graph: none is found twice.
  const ask: Ask = (fact) => {
    const found = graph.workOut((read) => scopeOf(instance, read).ask(fact));
    if (isIssue(found)) throw new Error(found.issue);
    return found;
  };
  const suppose = graph.supposing((read) => valuesOf(instance, read));
  const asked: Supposition[] = [];
  const on = onHand(instance.cell, values, {
    say: sayWith(bench),
    hull,
    found: bench.findings.found,
    ask,
    with: (changes) => {
      const answer = suppose(underName(instance, changes));
      asked.push({ changes, answer });
      return answer;
    },
  });
  return { values, hull, on, asked };
}
