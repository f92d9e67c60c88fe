/** Which inputs of a cell count as it stands, and so are asked. */
import type { Option } from '../../boat';
import { isIssue } from '../../measure';
import type { ChoiceSpec, InputSpec } from './define';
import { type Instance, isChoice } from './instance';
import { compiled, evaluateFormula, valueOf } from './steps';
import type { WorkOut } from './warnings';

/** The sheet that the cell stands on. */
export interface Asked {
  readonly workOut: WorkOut;
  readonly quantity: (name: string) => { readonly options?: readonly Option[] } | undefined;
}

/** `bilge.thickness`, no formula. */
const NAME = /^[a-z]\w*(\.\w+)+$/i;

/** What every boat has. */
const BOAT = 'hull.length';

/**
 * Whether an input is asked: its `when` is true or can't be told yet, a choice has two answers at least, and what speaks
 * of a boat has one; or its own entry is at fault and has to be seen to be mended. What is written in an input that is
 * not asked stays written.
 */
export function isAsked(instance: Instance, key: string, on: Asked): boolean {
  const spec = instance.cell.inputs[key];
  const when = spec?.when;
  const isOnly = on.quantity(`${instance.name}.${key}`)?.options?.length === 1;
  const isElsewhere = isOfBoat(spec) && on.quantity(BOAT) === undefined;
  if (when === undefined && !isOnly && !isElsewhere) return true;
  const own = on.workOut((read) => valueOf(instance, key, read));
  if (isIssue(own)) return true;
  return !isOnly && !isElsewhere && (when === undefined || counts(instance, when, on));
}

const isOfBoat = (spec: InputSpec | ChoiceSpec | undefined): boolean =>
  spec !== undefined && !isChoice(spec) && spec.ofBoat === true;

function counts(instance: Instance, when: string, on: Asked): boolean {
  if (NAME.test(when)) return on.quantity(when) !== undefined;
  return (
    on.workOut((read) =>
      evaluateFormula(compiled(instance.cell, when), (of) => valueOf(instance, of, read)),
    ) !== 0
  );
}
