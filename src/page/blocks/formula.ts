import { use } from '../html';
import { later } from '../later';
import type { Show } from './show';

const FormulaView = later(async () => (await import('../formulas/formula-view')).FormulaView, 'formula');

export const formula: Show<'formula'> = (block) => use(FormulaView, block);
