/** A limit as two numbers, where a cell's warning is one comparison: what it is now, and what it may be. */
import type { Read } from '../../boat';
import { compiled, evaluateFormula, type Instance, valueOf, type WorkOut } from '../../cells';
import { isIssue, type KindId } from '../../measure';

export interface AgainstLimit {
  /** Name of the quantity. */
  readonly name: string;
  readonly kind: KindId;
  readonly value: number;
  readonly limit: number;
  /** Whether it must not be more, or else not less. */
  readonly isMost: boolean;
}

/** One name, one sign, and what it is held against; nothing joined by `and`, and nothing that turns on a question. */
const COMPARISON = /^(\w+) ([<>])=? ((?:(?! and | or )[^<>=?])+)$/;

/** @returns null where the comparison is no such one, or where it is only about whether there is any */
export function againstLimit(instance: Instance, when: string, workOut: WorkOut): AgainstLimit | null {
  const { cell, name } = instance;
  const [, key = '', sign, bound = ''] = COMPARISON.exec(when) ?? [];
  const spec = cell.inputs[key] ?? cell.steps[key];
  if (!spec || spec.kind === 'choice') return null;
  const numbers = workOut((read: Read) => ({
    value: valueOf(instance, key, read),
    limit: evaluateFormula(compiled(cell, bound), (of) => valueOf(instance, of, read)),
  }));
  if (isIssue(numbers) || typeof numbers.value !== 'number' || isIssue(numbers.limit) || numbers.limit === 0)
    return null;
  return {
    name: `${name}.${key}`,
    kind: spec.kind,
    value: numbers.value,
    limit: numbers.limit,
    isMost: sign === '>',
  };
}
