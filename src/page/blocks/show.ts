/** What shows one kind of block, and what it shows its inside with. */
import type { VNode } from 'preact';
import type { Block } from '../../notebook';

export interface Showing {
  /** Id of the notebook. */
  readonly notebook: string;
  readonly blocks: (inside: readonly Block[]) => VNode[];
}
export type Show<T extends Block['type'] = Block['type']> = (
  block: Extract<Block, { type: T }>,
  showing: Showing,
) => VNode;
