import { use } from '../html';
import { later } from '../later';
import type { Show } from './show';

const AskView = later(async () => (await import('../ask/ask-view')).AskView, 'ask-to-come');

export const ask: Show<'ask'> = (block, showing) => use(AskView, { key: block.name, ask: block, showing });
