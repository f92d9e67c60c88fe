/** A drawing to scale, as wide as its place, following every change; the second version dashed over it. */
import { h, type VNode } from 'preact';
import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { type Drawing, drawingDress, overlay, setOut, type Sheet, type SvgNode, svgTree } from '../drawing';
import { useBench, versionWords } from './bench';
import { html } from './html';

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
pens.replaceSync(drawingDress);
document.adoptedStyleSheets.push(pens);

export function Figure({ drawing, second, stale = false, maxHeight = 420 }: FigureProps) {
  const { shown } = useBench();
  const host = useRef<HTMLElement>(null);
  const last = useRef<Sheet | undefined>(undefined);
  const width = useWidth(host);
  const both = second ? overlay(drawing, second, versionWords) : drawing;
  const units = shown.value.length === 'mm' ? 'metric' : 'inch';
  const sheet = setOut(both, { width, maxHeight, units, ...(last.current ? { like: last.current } : {}) });
  last.current = sheet;
  return html`<figure class=${`drawing ${stale ? 'stale' : ''}`} ref=${host}>
    ${toVNode(svgTree(sheet))}
    ${stale ? html`<figcaption>Drawn from the last numbers that could be drawn.</figcaption>` : null}
  </figure>`;
}

/** Turns the drawing's own tree into vnodes. */
export function toVNode(node: SvgNode | string): VNode | string {
  if (typeof node === 'string') return node;
  return h(node.tag, node.attrs, ...(node.kids ?? []).map(toVNode));
}

/** The width the element has been given; paper gets a fixed one. */
export function useWidth(host: { current: HTMLElement | null }, start = 640): number {
  const [width, setWidth] = useState(start);
  useLayoutEffect(() => {
    const element = host.current;
    if (!element) return undefined;
    const measure = () => {
      const now = Math.floor(element.clientWidth);
      if (now > 0) setWidth(now);
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return width;
}
