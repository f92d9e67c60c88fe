/** What no longer fits the parts that are cut, and by how much. */
import { type AsBuilt, type CutPart, type Quantity, type Value } from '../../boat';
import type { Instance } from '../../cells';
import { isIssue, issue, type KindId, plainShown, read } from '../../measure';
import { givensOf, lookAt } from './cut-part';
import type { Graph } from './graph';

export interface Misfit {
  /** The cut part, by the first word of its quantities' names. */
  readonly part: string;
  /**
   * `designed`: the plan or an entry says otherwise now than the part is cut.
   * `measured`: the part itself measures otherwise than it was cut to.
   * `follows`: a number that follows for the part is another than on that day.
   * `gone`: the boat has no such number any more.
   */
  readonly how: 'designed' | 'measured' | 'follows' | 'gone';
  readonly name: string;
  /** Undefined where it is gone. */
  readonly quantity: Quantity | undefined;
  readonly was: Value;
  /** An issue where it can't be reckoned any more. */
  readonly now: Value;
  /** Difference over tolerance, for ordering; infinite where there is no number to compare. */
  readonly size: number;
}

/**
 * Differences that a builder neither cuts nor sees, SI: half a millimetre, a quarter of a degree, and the slope
 * of a quarter of a degree; half a percent of anything else. Common practice, no source.
 */
export const tolerances: { readonly [kind in KindId]?: number } = {
  length: 0.0005,
  angle: (0.25 * Math.PI) / 180,
  ratio: Math.tan((0.25 * Math.PI) / 180),
};
const SHARE = 0.005;
/** Below this, SI, a difference is the rounding of sums that come out at nothing. */
const NOTHING = 1e-12;

/** How many tolerances two numbers of a kind lie apart; up to one they fit. */
export function apart(was: number, now: number, kind: KindId): number {
  const difference = Math.abs(now - was);
  if (difference <= NOTHING) return 0;
  return difference / (tolerances[kind] ?? SHARE * Math.max(Math.abs(was), Math.abs(now)));
}

/** Misfits of every cut part, in the order in which the parts were cut; within a part the largest first. */
export function misfits(asBuilt: AsBuilt, graph: Graph, instances: Iterable<Instance>): readonly Misfit[] {
  const all = [...instances];
  return Object.keys(asBuilt.cut).flatMap((part) => misfitsOf(part, asBuilt, graph, all));
}

function misfitsOf(
  part: string,
  { cut, measured }: AsBuilt,
  graph: Graph,
  instances: readonly Instance[],
): Misfit[] {
  const { held, numbers }: CutPart = cut[part]!; // one of its own parts
  const misfit = (how: Misfit['how'], name: string, was: Value, now: Value): Misfit[] => {
    const quantity = graph.quantity(name);
    const size = quantity ? sizeOf(was, now, quantity.kind) : Infinity;
    return size > 1 ? [{ part, how: quantity ? how : 'gone', name, quantity, was, now, size }] : [];
  };
  if (givensOf(part, graph).length === 0)
    return [{ part, how: 'gone', name: part, quantity: undefined, was: part, now: part, size: Infinity }];
  const given = Object.entries(held).flatMap(([name, text]) => {
    const was = valueIn(text, graph.quantity(name));
    // That a measured value is not the designed one is told at its row; here counts what the part was cut to.
    return Object.hasOwn(measured, name)
      ? misfit('measured', name, was, graph.value(name))
      : misfit('designed', name, was, graph.designed(name));
  });
  const looked = lookAt(part, graph, instances);
  const asked = new Set(looked.names);
  const follows = Object.entries(numbers)
    // A cell that has not been fetched yet, or is there no more, tells nothing about the part.
    .filter(([name]) => asked.has(name) || name.startsWith(`${part}.`))
    .flatMap(([name, was]) => misfit('follows', name, was, looked.graph.value(name)));
  return [...given.toSorted(bySize), ...untold(follows.toSorted(bySize))];
}

/** Largest first; slopes after what is cut to them, since nobody lays a bevel gauge to a slope. */
function bySize(a: Misfit, b: Misfit): number {
  const isSlope = ({ quantity }: Misfit) => Number(quantity?.kind === 'ratio');
  return isSlope(a) - isSlope(b) || (a.size === b.size ? 0 : b.size - a.size);
}

/** The same change of the same number under another name is told once. */
function untold(sorted: readonly Misfit[]): Misfit[] {
  const told = new Set<string>();
  return sorted.filter(({ quantity, was, now }) => {
    if (typeof was !== 'number' || typeof now !== 'number') return true;
    // Of flare and deadrise, of a bevel and its gauge, one is what the other lacks to a right angle.
    const isAngle = quantity?.kind === 'angle';
    const change = isAngle
      ? Math.abs(now - was).toPrecision(6)
      : `${quantity?.kind} ${was.toPrecision(6)} ${now.toPrecision(6)}`;
    return !told.has(change) && told.add(change);
  });
}

function sizeOf(was: Value, now: Value, kind: KindId): number {
  if (typeof was === 'number' && typeof now === 'number') return apart(was, now, kind);
  return was === now || (isIssue(was) && isIssue(now)) ? 0 : Infinity;
}

/** What a held entry says; it stands by itself. */
function valueIn(text: string, quantity: Quantity | undefined): Value {
  if (!quantity || quantity.kind === 'choice') return text;
  const reading = read(text, { kind: quantity.kind, shown: plainShown, field: quantity.meaning });
  return isIssue(reading) ? reading : reading.evaluate(() => issue('a part is cut to numbers, not to names'));
}
