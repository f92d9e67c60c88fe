/** Packs as shops sell them: one that is asked for, and those that must be bought to have so much. */
import { putUp } from '../../../measure';
import { packShelf, packsShelf } from '../../../trade/packs-sold';
import { type FormulaStep, input, type InputSpec, step } from '../../form/define';

putUp('pack', packShelf);
putUp('packs', packsShelf);

/** Asks for what one pack holds. */
export function soldPack(
  label: string,
  more: Omit<InputSpec, 'kind' | 'label'> & Required<Pick<InputSpec, 'presetInch'>>,
): InputSpec & { readonly kind: 'pack' } {
  return input('pack', label, more);
}

/** The packs that hold a volume of the cell, named `of`. */
export const packsToBuy = (of: string, meaning: string): FormulaStep =>
  step('packs', of, meaning, 'common practice, no source: packs that shops keep');
