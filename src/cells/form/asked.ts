/** Which inputs of a cell count as it stands, and so are asked. */
import { isIssue } from '../../measure';
import type { Instance } from './instance';
import { compiled, evaluateFormula, valueOf } from './steps';
import type { WorkOut } from './warnings';

/**
 * Whether an input is asked: its `when` is true or can't be told yet, or its own entry is at fault and has to be seen
 * to be mended. What is written in an input that is not asked stays written.
 */
export function isAsked(instance: Instance, key: string, workOut: WorkOut): boolean {
  const when = instance.cell.inputs[key]?.when;
  if (when === undefined) return true;
  const own = workOut((read) => valueOf(instance, key, read));
  if (isIssue(own)) return true;
  const holds = workOut((read) =>
    evaluateFormula(compiled(instance.cell, when), (of) => valueOf(instance, of, read)),
  );
  return holds !== 0;
}
