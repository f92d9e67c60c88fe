import type { VNode } from 'preact';
import type { Block } from '../../notebook';
import { use } from '../html';
import { later } from '../later';
import type { Showing } from './show';

type Kind = 'ask' | 'formula' | 'seed' | 'sweep';
export type SeldomBlock = Extract<Block, { type: Kind }>;

const Seldom = later(async () => (await import('./seldom')).Seldom, 'seldom-to-come');

/** Each is the one that it was as long as its name, or its place, is the same. */
export const seldom = (block: SeldomBlock, showing: Showing): VNode =>
  use(Seldom, {
    key: 'name' in block ? `${block.type} ${block.name} ${'again' in block}` : block.line,
    block,
    showing,
  });
