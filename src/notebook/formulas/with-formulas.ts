/** The quantities on hand with those of the builder's own formulas among them. */
import { type Catalogue, catalogueFrom } from '../graph/on-hand';
import { formulaBlocks, type FormulaText } from './formula-quantities';
import type { FormulaCatalogue } from './formulas-in';

/** @param texts blocks under names that nothing else on hand goes by */
export function withFormulas(base: Catalogue, texts: readonly FormulaText[]): FormulaCatalogue {
  const { hull, onBoat, ends } = base;
  const blocks = formulaBlocks(texts, base.find);
  const owners = [...base.owners, ...blocks.map(({ owner }) => owner)];
  const all = catalogueFrom(owners, { hull, ...(onBoat && { onBoat }), ...(ends && { ends }) });
  return { ...all, formulas: new Map(blocks.map((block) => [block.name, block])) };
}
