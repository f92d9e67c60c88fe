import type { VNode } from 'preact';
import { use } from '../html';
import { later } from '../later';
import type { SeldomBlock } from './seldom';
import type { Showing } from './show';

const Seldom = later(async () => (await import('./seldom')).Seldom, 'seldom-to-come');

/** Each is the one that it was as long as its name, or its place, is the same. */
export const seldom = (block: SeldomBlock, showing: Showing): VNode =>
  use(Seldom, {
    key: 'name' in block ? `${block.type} ${block.name} ${'again' in block}` : block.line,
    block,
    showing,
  });
