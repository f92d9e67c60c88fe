/** Packs as shops sell them: those that must be bought to have so much. */
import { putUp } from '../../../measure';
import { packsShelf } from '../../../trade/packs-sold';
import { type FormulaStep, step } from '../../form/define';

putUp('packs', packsShelf);

/** The packs that hold a volume of the cell, named `of`. */
export const packsToBuy = (of: string, meaning: string): FormulaStep =>
  step('packs', of, meaning, 'common practice, no source: packs that shops keep');
