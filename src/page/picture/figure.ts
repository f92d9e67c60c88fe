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
  /** What it may take with its caption, px; without it, so much that a cell stays on one screen. */
  readonly maxHeight?: number;
}

/** A drawing beside fields: as high as it is wide, nearly, and never so low that it can't be read. */
const HIGH = 0.92;
const AT_LEAST = 390;
/** On the wall, where it hangs 2.8 times as large, its lines are to be seen whole in a window of 1080, px. */
const ON_WALL = 340;
/** What its lines may always take, px, however much is written under them. */
const LEAST_FIELD = 150;

/** Pens and fills belong to the drawings; the page only lends them its colours. */
const pens = new CSSStyleSheet();
pens.replaceSync(drawingStyle);
document.adoptedStyleSheets.push(pens);

export function Figure({ drawing, second, stale = false, maxHeight }: FigureProps) {
  const { shown, wall } = useBench();
  const isOnWall = wall.value !== null;
  const host = useRef<HTMLElement>(null);
  const width = useWidth(host);
  const units: ScaleUnits = shown.value.length === 'mm' ? 'metric' : 'inch';
  const last = useRef<Fitted | undefined>(undefined);
  const svg = useMemo(() => {
    if (width === null) return null;
    const both = second ? overlay(drawing, second, versionWords) : drawing;
    const high = maxHeight ?? Math.max(AT_LEAST, HIGH * width);
    last.current = isOnWall
      ? { field: ON_WALL, sheet: setOut(both, { width, units, maxHeight: maxHeight ?? ON_WALL }) }
      : within(high, both, { width, units }, last.current);
    return toVNode(svgTree(last.current.sheet));
  }, [drawing, second, width, units, maxHeight, isOnWall]);
  return html`<figure class=${stale ? 'drawing stale' : 'drawing'} ref=${host}>
    ${svg}
    ${stale ? html`<figcaption>Drawn from the last numbers that could be drawn.</figcaption>` : null}
  </figure>`;
}

interface Fitted {
  readonly sheet: Sheet;
  /** What the drawing's lines were given of the height. */
  readonly field: number;
}

/** Set out so that it stays within a height, caption and all. What stands under the lines is known only once it is. */
function within(
  high: number,
  drawing: Drawing,
  options: { readonly width: number; readonly units: ScaleUnits },
  last: Fitted | undefined,
): Fitted {
  const held = last?.sheet.width === options.width ? last : undefined;
  const set = (field: number): Fitted => ({
    field,
    sheet: setOut(drawing, { ...options, maxHeight: field, ...(held ? { like: held.sheet } : {}) }),
  });
  const first = set(held?.field ?? high);
  const over = first.sheet.height - high;
  return over > 0 ? set(Math.max(LEAST_FIELD, first.field - over)) : first;
}

/** Turns the drawing's own tree into vnodes. */
export function toVNode(node: SvgNode | string): VNode | string {
  if (typeof node === 'string') return node;
  return h(node.tag, node.attrs, ...node.kids.map(toVNode));
}
