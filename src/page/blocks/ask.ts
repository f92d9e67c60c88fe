import type { VNode } from 'preact';
import type { AskPlace, SeedPlace } from '../../notebook';
import { use } from '../html';
import { later } from '../later';
import type { Showing } from './show';

const AskBlock = later(async () => (await import('../ask/ask-blocks')).AskBlock, 'ask-to-come');

/** A question, and the place of numbers of one's own. */
export const ask = (block: AskPlace | SeedPlace, showing: Showing): VNode =>
  use(AskBlock, { key: block.line, block, showing });
