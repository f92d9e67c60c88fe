/** Profile, half-breadth and body plan in small, at one scale, with what is spoken of lit. */
import { useMemo, useRef } from 'preact/hooks';
import type { Hull } from '../../boat';
import { setOut, type SvgNode, svgTree, thumbnail } from '../../drawing';
import { html } from '../html';
import { toVNode } from '../picture/vnode';
import { useWidth } from '../picture/width';
import { hullLines } from './hull-lines';

export interface HullViewsProps {
  readonly hull: Hull;
  /** Names of the marks that are lit, in one text so that it compares by what it says. */
  readonly lit: string;
  readonly name: string;
  /** Tall: below each other, as large as the rail is wide; wide: for a strip. */
  readonly form?: 'tall' | 'wide';
}

export function HullViews({ hull, lit, name, form = 'tall' }: HullViewsProps) {
  const host = useRef<HTMLElement>(null);
  const width = useWidth(host);
  const tree = useMemo(() => {
    if (width === null) return null;
    const drawing = thumbnail(hullLines(hull), {
      title: name,
      says: `${name} in profile, plan and body view, at one scale.`,
      amidships: hull.widest.x,
      form,
    });
    return svgTree(setOut(drawing, { width, maxHeight: 300, bar: false, caption: false }));
  }, [hull, name, width, form]);
  const svg = useMemo(() => tree && toVNode(light(tree, new Set(lit.split(' ')))), [tree, lit]);
  return html`<span class="views" ref=${host}>${svg}</span>`;
}

/** Adds the class that lights a mark; the drawing itself knows nothing of what is spoken of. */
function light(node: SvgNode, lit: ReadonlySet<string>): SvgNode {
  const part = node.attrs['data-part'];
  const isLit = typeof part === 'string' && lit.has(part);
  const attrs = isLit ? { ...node.attrs, class: `${node.attrs['class'] ?? ''} lit` } : node.attrs;
  return { ...node, attrs, kids: node.kids.map((kid) => (typeof kid === 'string' ? kid : light(kid, lit))) };
}
