import { use } from '../html';
import { later } from '../later';
import type { Show } from './show';

const FormulaView = later(
  async () => (await import('../formulas/formula-view')).FormulaView,
  'formula-to-come',
);

export const formula: Show<'formula'> = ({ name, again = 0, line }) =>
  use(FormulaView, { key: `formula ${name} ${again}`, name, again, line });
