/**
 * A part marked cut: what was given of it on that day, and the numbers that followed for it. They are asked
 * again later, in the same way, to be held against what has become of the design since.
 */
import { type CutPart } from '../../boat';
import { cutBy, type Instance, isChoice } from '../../cells';
import { plainShown, writeExact } from '../../measure';
import type { Graph } from './graph';

/** The part as it is by the graph now. Quantities without a value are left out: nothing can be held against them. */
export function cutAs(part: string, graph: Graph, instances: Iterable<Instance>): CutPart {
  const held: Record<string, string> = {};
  for (const name of givensOf(part, graph)) {
    const value = graph.value(name);
    const quantity = graph.quantity(name)!; // one of the graph's own
    if (typeof value === 'number') held[name] = writeExact(value, quantity.kind, plainShown);
    else if (typeof value === 'string') held[name] = value;
  }
  const numbers: Record<string, number> = {};
  const looked = lookAt(part, graph, instances);
  for (const name of looked.names) {
    const value = looked.graph.value(name);
    // Nine figures are finer than any tolerance, and half as long to keep as all of them.
    if (typeof value === 'number') numbers[name] = Number(value.toPrecision(9));
  }
  return { held, numbers };
}

/** Given quantities of a part; none where the boat has no such part. */
export function givensOf(part: string, graph: Graph): readonly string[] {
  return graph.namesOf(part).filter((name) => graph.entry(name) !== undefined);
}

export interface LookedAt {
  /** In it, cells look at the part. */
  readonly graph: Graph;
  /** Numbers that follow for the part: its own, and those of cells. */
  readonly names: readonly string[];
}

/**
 * Cells that are about a frame or a panel of choice are made to look at this one; what else they may look at is as they
 * are set from the beginning, so that turning a cell to another chine is no change of the boat.
 */
export function lookAt(part: string, graph: Graph, instances: Iterable<Instance>): LookedAt {
  const own = graph.namesOf(part).filter((name) => graph.entry(name) === undefined);
  const answers: Record<string, string | null> = {};
  const ofCells: string[] = [];
  for (const instance of instances) {
    const by = cutBy(instance.cell);
    // A cell under a name of its own has numbers typed over its links and speaks of no boat.
    if (by === undefined || instance.name !== instance.cell.id || !offers(graph, instance, by, part))
      continue;
    for (const [key, spec] of Object.entries(instance.cell.inputs)) {
      if (isChoice(spec) && typeof spec.options === 'string') answers[`${instance.name}.${key}`] = null;
    }
    answers[`${instance.name}.${by}`] = part;
    ofCells.push(...shownBy(instance, by, part, graph));
  }
  const isLooking = ofCells.length > 0;
  return { graph: isLooking ? graph.with(() => answers) : graph, names: [...own, ...ofCells] };
}

/** Whether a choice of the cell has the part among its answers. */
function offers(graph: Graph, instance: Instance, key: string, part: string): boolean {
  return optionsOf(graph, `${instance.name}.${key}`).includes(part);
}

function optionsOf(graph: Graph, name: string): readonly string[] {
  const quantity = graph.quantity(name);
  const options = quantity && 'options' in quantity ? (quantity.options ?? []) : [];
  return options.map(({ id }) => id);
}

/** What a cell shows of the part: its answers and the columns of its table, in the row or rows of the part. */
function shownBy({ cell, name }: Instance, by: string, part: string, graph: Graph): string[] {
  const columns = cell.table?.columns ?? [];
  const keys = [...new Set([...cell.answers, ...columns].map(({ of }) => of))].filter(
    (key) => cell.steps[key],
  );
  const { table } = cell;
  const rows = !table ? [] : table.over === by ? [part] : optionsOf(graph, `${name}.${table.over}`);
  const heads = table ? rows.map((row) => `${name}.${row}`) : [name];
  return heads.flatMap((head) => keys.map((key) => `${head}.${key}`)).filter((of) => graph.has(of));
}
