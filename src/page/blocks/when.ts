import { use } from '../html';
import { later } from '../later';
import type { Show } from './show';

export const When = later(async () => (await import('./said-when')).When, 'when-to-come');
const WhenAlone = later(async () => (await import('./said-when')).WhenAlone, 'when-to-come');

export const when: Show<'when'> = (block, { blocks }) =>
  use(WhenAlone, { condition: block.holds, line: block.line, text: () => blocks(block.blocks) });
