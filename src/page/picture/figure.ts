/** A drawing to scale, as wide as its place, following every change; the second version dashed over it. */
import { h, type VNode } from 'preact';
import { useMemo, useRef } from 'preact/hooks';
import {
  type Drawing,
  drawingStyle,
  overlay,
  type ScaleUnits,
  setOut,
  type Sheet,
  type SvgNode,
  svgTree,
} from '../../drawing';
import { useBench, versionWords } from '../bench';
import { html } from '../html';
import { useWidth } from './width';

export interface FigureProps {
  readonly drawing: Drawing;
  /** The same drawing of the second version, if there is one. */
  readonly second?: Drawing | undefined;
  /** The drawing is of the last numbers that could be drawn, not of those typed now. */
  readonly stale?: boolean;
  readonly maxHeight?: number;
}

/** Pens and fills belong to the drawings; the page only lends them its colours. */
const pens = new CSSStyleSheet();
pens.replaceSync(drawingStyle);
document.adoptedStyleSheets.push(pens);

export function Figure({ drawing, second, stale = false, maxHeight = 420 }: FigureProps) {
  const { shown } = useBench();
  const host = useRef<HTMLElement>(null);
  const width = useWidth(host);
  const units: ScaleUnits = shown.value.length === 'mm' ? 'metric' : 'inch';
  const last = useRef<Sheet | undefined>(undefined);
  const svg = useMemo(() => {
    if (width === null) return null;
    const both = second ? overlay(drawing, second, versionWords) : drawing;
    last.current = setOut(both, { width, maxHeight, units, ...(last.current ? { like: last.current } : {}) });
    return toVNode(svgTree(last.current));
  }, [drawing, second, width, units, maxHeight]);
  return html`<figure class=${stale ? 'drawing stale' : 'drawing'} ref=${host}>
    ${svg}
    ${stale ? html`<figcaption>Drawn from the last numbers that could be drawn.</figcaption>` : null}
  </figure>`;
}

/** Turns the drawing's own tree into vnodes. */
export function toVNode(node: SvgNode | string): VNode | string {
  if (typeof node === 'string') return node;
  return h(node.tag, node.attrs, ...node.kids.map(toVNode));
}
