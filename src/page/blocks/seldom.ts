/** Blocks that few notebooks have, and what covers the answers that one asks for: in one file, so that the first page names it once. */
import type { VNode } from 'preact';
import type { Block } from '../../notebook';
import { AskView } from '../ask/ask-view';
import { SeedView } from '../ask/seed-view';
import { FormulaView } from '../formulas/formula-view';
import { SweepShown } from '../further/sweep-shown';
import { use } from '../html';
import type { Showing } from './show';

export { coverAsked } from '../ask/asked';

export type SeldomBlock = Extract<Block, { type: 'ask' | 'formula' | 'seed' | 'sweep' }>;

export function Seldom({ block, showing }: { block: SeldomBlock; showing: Showing }): VNode {
  switch (block.type) {
    case 'ask':
      return use(AskView, { ask: block, showing });
    case 'seed':
      return use(SeedView, { seed: block, notebook: showing.notebook });
    case 'formula':
      return use(FormulaView, block);
    case 'sweep':
      return use(SweepShown, { ask: block.ask, line: block.line });
  }
}
