/** The numbers and warnings of one moment, to be compared with those of another. */
import { type Derived, lists, partOf, type Value } from '../../boat';
import { compiled, type Instance, valueOf, warningsOf, type WorkOut } from '../../cells';
import { isIssue, plainShown, write } from '../../measure';
import type { Catalogue, Graph, Snapshot } from '../../notebook';
import type { Bench } from '../bench';
import { againstLimit } from '../told/limit';
import type { Limit } from '../told/told';

export type RippleSnapshot = Snapshot<Limit>;

/** Rows of tables and coordinates would drown the rest: they say again what their heads say. */
const speaksForItself = (name: string): boolean => name.split('.').length <= 2;

/** What follows from others, under names that speak for themselves. */
export function toldOf({ names, find }: Catalogue): readonly Derived[] {
  return names()
    .filter(speaksForItself)
    .flatMap((name) => {
      const of = find(name)!; // one of its own
      return 'preset' in of ? [] : [of];
    });
}

/**
 * Takes in every number, so it is done when the page is at rest, part by part.
 * @param before an earlier moment: a warning whose numbers are missing now is neither gone nor new, and stays as it was
 */
export function* snapshotOf(
  bench: Bench,
  graph: Graph,
  before: RippleSnapshot | null,
): Generator<void, RippleSnapshot> {
  const values = new Map<string, Value>();
  const warnings = new Map<string, Limit>();
  const unweighed = new Set<string>();
  const hull = edgesOf(bench, graph).every((length) => !isIssue(length));
  let part = '';
  for (const { name } of toldOf(bench.book.catalogue.peek())) {
    if (part !== (part = partOf(name))) yield;
    values.set(name, graph.peek(name));
  }
  for (const instance of bench.instances.peek().values()) {
    yield;
    for (const name of waitingIn(instance, graph)) {
      unweighed.add(name);
      const limit = before?.warnings.get(name);
      if (limit !== undefined) warnings.set(name, limit);
    }
    const workOut: WorkOut = (by) => graph.workOut(by);
    const applies = warningsOf(instance, workOut, (value, kind, options) =>
      write(value, kind, plainShown, options),
    );
    for (const { name, tell, warning } of applies)
      warnings.set(name, {
        cell: instance.name,
        weight: warning.weight,
        tell,
        against: againstLimit(instance, warning.when, workOut),
      });
  }
  return { values, warnings, unweighed, hull };
}

/** The length of each edge, or why it can't be drawn: the hull is there when all of them are. */
export function edgesOf(bench: Bench, graph: Graph): Value[] {
  return lists(bench.table.peek()).edges.map(({ id }) => graph.value(`${id}.length`));
}

/** Warnings that can't be weighed, because a number of theirs is missing. */
function waitingIn(instance: Instance, graph: Graph): string[] {
  return instance.cell.warnings.flatMap(({ when }, index): string[] => {
    const missing = graph.workOut((read) =>
      compiled(instance.cell, when).names.map((key) => valueOf(instance, key, read)),
    );
    return isIssue(missing) ? [`${instance.name}.${index + 1}`] : [];
  });
}
