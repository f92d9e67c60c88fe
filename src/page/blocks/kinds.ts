/** How each kind of block is shown: a file here and a line here for each that `notebook/blocks` reads. */
import type { VNode } from 'preact';
import type { Block } from '../../notebook';
import { boat } from './boat';
import { cell } from './cell';
import { code } from './code';
import { fault } from './fault';
import { heading } from './heading';
import type { Show, Showing } from './show';
import { list } from './list';
import { paragraph } from './paragraph';
import { quote } from './quote';
import { rule } from './rule';
import { seldom } from './seldom-kind';
import { sketch } from './sketch';
import { table } from './table';
import { trying } from './try';
import { when } from './when';

const shown: { readonly [T in Block['type']]: Show<T> } = {
  ask: seldom,
  boat,
  cell,
  code,
  fault,
  formula: seldom,
  heading,
  list,
  paragraph,
  quote,
  rule,
  seed: seldom,
  sketch,
  sweep: seldom,
  table,
  try: trying,
  when,
};

/** @param notebook its id, from which links to a heading go out */
export function blockViews(blocks: readonly Block[], notebook: string): VNode[] {
  const showing: Showing = { notebook, blocks: (inside) => blockViews(inside, notebook) };
  return blocks.map((block) => (shown[block.type] as Show)(block, showing));
}
