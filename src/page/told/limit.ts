/** A limit as two numbers, where a cell's warning is one comparison: what it is now, and what it may be. */
import type { Read, Value } from '../../boat';
import { compiled, evaluateFormula, type Instance, valueOf, type WorkOut } from '../../cells';
import { type Issue, isIssue, type KindId } from '../../measure';

export interface AgainstLimit {
  /** Name of the quantity. */
  readonly name: string;
  readonly kind: KindId;
  readonly value: number;
  readonly limit: number;
  /** Whether it must not be more, or else not less. */
  readonly isMost: boolean;
}

/** What a comparison is of, and what it is held against, to be worked out. */
export interface WorkedComparison extends Pick<AgainstLimit, 'name' | 'kind' | 'isMost'> {
  readonly value: (read: Read) => Value;
  readonly limit: (read: Read) => number | Issue;
}

/** One name, one sign, and what it is held against; nothing joined by `and`, and nothing that turns on a question. */
const COMPARISON = /^(\w+) ([<>])=? ((?:(?! and | or )[^<>=?])+)$/;

/** @returns null where the comparison is no such one */
export function comparisonIn(instance: Instance, when: string): WorkedComparison | null {
  const { cell, name } = instance;
  const [, key = '', sign, bound = ''] = COMPARISON.exec(when) ?? [];
  const spec = cell.inputs[key] ?? cell.steps[key];
  if (!spec || spec.kind === 'choice') return null;
  return {
    name: `${name}.${key}`,
    kind: spec.kind,
    isMost: sign === '>',
    value: (read) => valueOf(instance, key, read),
    limit: (read) => evaluateFormula(compiled(cell, bound), (of) => valueOf(instance, of, read)),
  };
}

/** @returns null where the comparison is no such one, or where it is only about whether there is any */
export function againstLimit(instance: Instance, when: string, workOut: WorkOut): AgainstLimit | null {
  const found = comparisonIn(instance, when);
  if (!found) return null;
  const numbers = workOut((read: Read) => ({ value: found.value(read), limit: found.limit(read) }));
  if (isIssue(numbers) || typeof numbers.value !== 'number' || isIssue(numbers.limit) || numbers.limit === 0)
    return null;
  const { name, kind, isMost } = found;
  return { name, kind, isMost, value: numbers.value, limit: numbers.limit };
}
