/** Which of a cell's warnings apply, with the numbers put in. */
import type { Read } from '../boat';
import { type Issue, isIssue, type KindId } from '../measure';
import type { Cell, Warning } from './define';
import { type Instance, isChoice } from './instance';
import { compiled, evaluateFormula, valueOf } from './steps';

export interface Applies {
  /** Stays the same while the numbers in the sentence change: `bend.1`. */
  readonly name: string;
  readonly warning: Warning;
  readonly says: string;
}

/** Works something out from the graph; a missing value makes an issue of it. */
export type Work = <T>(by: (read: Read) => T) => T | Issue;

/**
 * @param say writes a value in the chosen units
 * @returns the warnings that apply; one whose values are still missing does not, and silences no other
 */
export function warningsOf(
  instance: Instance,
  work: Work,
  say: (value: number, kind: KindId) => string,
): Applies[] {
  const { cell, name } = instance;
  return cell.warnings.flatMap((warning, index) => {
    const says = work((read) => {
      const verdict = evaluateFormula(compiled(cell, warning.when), (key) => valueOf(instance, key, read));
      return isIssue(verdict) || verdict === 0 ? '' : inWords(instance, warning.says, read, say);
    });
    return isIssue(says) || says === '' ? [] : [{ name: `${name}.${index + 1}`, warning, says }];
  });
}

/** The cell's answers without those that have no sense here; what can't be told yet is said to wait. */
export function answersOf(instance: Instance, work: Work): Cell['answers'] {
  const { cell } = instance;
  return cell.answers.filter(
    ({ when }) =>
      when === undefined ||
      work((read) => evaluateFormula(compiled(cell, when), (key) => valueOf(instance, key, read))) !== 0,
  );
}

/** The result in one sentence. */
export function answerInWords(
  instance: Instance,
  read: Read,
  say: (value: number, kind: KindId) => string,
): string {
  const { cell } = instance;
  if (typeof cell.inWords === 'string') return inWords(instance, cell.inWords, read, say);
  const holds = cell.inWords.find(({ when }) => {
    const verdict =
      when === undefined ? 1 : evaluateFormula(compiled(cell, when), (key) => valueOf(instance, key, read));
    return !isIssue(verdict) && verdict !== 0;
  });
  return holds ? inWords(instance, holds.says, read, say) : '';
}

/** A sentence of the cell with `{key}` replaced by the value as written. */
export function inWords(
  instance: Instance,
  template: string,
  read: Read,
  say: (value: number, kind: KindId) => string,
): string {
  return template.replace(/\{(\w+)\}/g, (_, key: string) => {
    const value = valueOf(instance, key, read);
    return typeof value === 'number'
      ? say(value, kindOfKey(instance.cell, key))
      : optionLabel(instance, key, value);
  });
}

export function kindOfKey(cell: Cell, key: string): KindId {
  const spec = cell.inputs[key] ?? cell.steps[key];
  if (!spec) throw new Error(`${cell.id} has no input or step "${key}"`);
  return spec.kind;
}

/** Options of a boat's lists are named by what they are; their ids read well enough in a sentence. */
function optionLabel(instance: Instance, key: string, id: string): string {
  const spec = instance.cell.inputs[key];
  const options = spec && isChoice(spec) && typeof spec.options !== 'string' ? spec.options : [];
  return (
    options.find((option) => option.id === id)?.label ??
    id.replace(/([a-z])([A-Z0-9])/g, '$1 $2').toLowerCase()
  );
}
