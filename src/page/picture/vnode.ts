/** Turns a drawing's own tree into vnodes, and lays its pens and fills with the page. */
import { h, type VNode } from 'preact';
import { drawingStyle, type SvgNode } from '../../drawing';

/** Pens and fills belong to the drawings; the page only lends them its colours. */
const pens = new CSSStyleSheet();
pens.replaceSync(drawingStyle);
document.adoptedStyleSheets.push(pens);

export function toVNode(node: SvgNode | string): VNode | string {
  if (typeof node === 'string') return node;
  return h(node.tag, node.attrs, ...node.kids.map(toVNode));
}
