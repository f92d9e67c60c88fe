/** The formulas among what is on hand: for who asks which there are, and reads none. */
import type { Catalogue } from '../graph/on-hand';
import type { FormulaBlock } from './formula-quantities';

export interface FormulaCatalogue extends Catalogue {
  readonly formulas: ReadonlyMap<string, FormulaBlock>;
}

/** The blocks of a catalogue, by their names; none of one without formulas. */
export const formulasIn = (catalogue: Catalogue): ReadonlyMap<string, FormulaBlock> =>
  'formulas' in catalogue ? (catalogue as FormulaCatalogue).formulas : new Map();
