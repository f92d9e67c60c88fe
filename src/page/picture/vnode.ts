/** Turns a drawing's own tree into vnodes. */
import { h, type VNode } from 'preact';
import type { SvgNode } from '../../drawing';

export function toVNode(node: SvgNode | string): VNode | string {
  if (typeof node === 'string') return node;
  return h(node.tag, node.attrs, ...node.kids.map(toVNode));
}
