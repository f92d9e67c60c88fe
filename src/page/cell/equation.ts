/** A line of mathematics, as the browser sets it. */
import { h, type VNode } from 'preact';
import type { MathNode } from '../../measure';
import { html } from '../html';

/** A name with the sign of equality after it. */
export const ident = (text: string): MathNode => ({
  tag: 'mrow',
  children: [
    { tag: 'mi', attrs: { mathvariant: 'normal' }, text },
    { tag: 'mo', text: '=' },
  ],
});
export const equals: MathNode = { tag: 'mo', text: '=' };

/** Set as a line of text, or a browser would put each in the middle. */
export function equation(parts: readonly MathNode[]): VNode {
  return html`<div class="equation">${h('math', { displaystyle: 'true' }, ...parts.map(mathVNode))}</div>`;
}

function mathVNode(node: MathNode): VNode {
  return h(node.tag, { ...node.attrs }, node.text ?? null, ...(node.children ?? []).map(mathVNode));
}
