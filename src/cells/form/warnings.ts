/** Which of a cell's warnings apply, with the numbers put in. */
import type { Read } from '../../boat';
import { type Issue, isIssue } from '../../measure';
import type { Cell, Warning } from './define';
import { told } from './in-words';
import type { Instance } from './instance';
import type { Say, Tell } from './sentence';
import { compiled, evaluateFormula, valueOf } from './steps';

export interface Applies {
  /** Stays the same while the numbers in the sentence change: `bend.1`. */
  readonly name: string;
  readonly warning: Warning;
  readonly says: string;
  /** The same sentence in other units, with the numbers as they were. */
  readonly tell: Tell;
}

/** Works something out from the graph; a missing value makes an issue of it. */
export type WorkOut = <T>(by: (read: Read) => T) => T | Issue;

/**
 * @param say writes a value in the chosen units
 * @returns the warnings that apply; one whose values are still missing does not, and silences no other
 */
export function warningsOf(instance: Instance, workOut: WorkOut, say: Say): Applies[] {
  const { cell, name } = instance;
  return cell.warnings.flatMap((warning, index) => {
    const tell = workOut((read) => {
      const verdict = evaluateFormula(compiled(cell, warning.when), (key) => valueOf(instance, key, read));
      return isIssue(verdict) || verdict === 0 ? null : told(instance, warning.says, read, [warning.when]);
    });
    return isIssue(tell) || tell === null
      ? []
      : [{ name: `${name}.${index + 1}`, warning, says: tell(say), tell }];
  });
}

/**
 * The cell's answers without those that have no sense here. Of what can't be told yet only the answers of one
 * condition are said to wait: the others may be what stands in their place.
 */
export function answersOf(instance: Instance, workOut: WorkOut): Cell['answers'] {
  const { cell } = instance;
  const holds = ({ when = '1' }: Cell['answers'][number]) =>
    workOut((read) => evaluateFormula(compiled(cell, when), (key) => valueOf(instance, key, read)));
  const untold = cell.answers.find((answer) => isIssue(holds(answer)))?.when;
  return cell.answers.filter((answer) => {
    const verdict = holds(answer);
    return isIssue(verdict) ? answer.when === untold : verdict !== 0;
  });
}
