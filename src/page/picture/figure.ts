/** A drawing to scale, as wide as its place, following every change; the second version dashed over it. A press enlarges it. */
import type { VNode } from 'preact';
import { useMemo, useRef, useState } from 'preact/hooks';
import { type Drawing, overlay, type ScaleUnits, type Sheet, setOut, svgTree } from '../../drawing';
import { useBench, versionWords } from '../bench';
import { html, use } from '../html';
import { later } from '../later';
import { type Fitted, fitted } from './fitted';
import { toVNode } from './vnode';
import { useWidth } from './width';

const Enlarged = later(async () => (await import('./enlarged')).Enlarged, 'enlarged-to-come');

export interface FigureProps {
  readonly drawing: Drawing;
  /** The same drawing of the second version, if there is one. */
  readonly second?: Drawing | undefined;
  /** The drawing is of the last numbers that could be drawn, not of those typed now. */
  readonly stale?: boolean;
  /** What it may take with its caption, px; without it, so much that a cell stays on one screen. */
  readonly maxHeight?: number;
  /** What lies over the drawing as it is set out. */
  readonly over?: ((sheet: Sheet) => VNode | null) | undefined;
}

/** A drawing beside fields: nearly as high as it is wide, and never so low that it can't be read, px. */
const HIGH = 0.9;
const AT_LEAST = 350;
/** One over the whole width, on a phone. */
const MOST = 1.9;
/** On the wall, where it hangs 2.8 times as large, its lines are to be seen whole in a window of 1080, px. */
const ON_WALL = 340;

export function Figure({ drawing, second, stale = false, maxHeight, over }: FigureProps) {
  const { shown, wall } = useBench();
  const isOnWall = wall.value !== null;
  const host = useRef<HTMLElement>(null);
  const key = useRef<HTMLButtonElement>(null);
  const [large, setLarge] = useState(false);
  const width = useWidth(host);
  const units: ScaleUnits = shown.value.length === 'mm' ? 'metric' : 'inch';
  const last = useRef<Fitted | undefined>(undefined);
  const both = useMemo(() => (second ? overlay(drawing, second, versionWords) : drawing), [drawing, second]);
  const drawn = useMemo(() => {
    if (width === null) return null;
    const high = maxHeight ? Math.min(maxHeight, MOST * width) : Math.max(AT_LEAST, HIGH * width);
    last.current = isOnWall
      ? { field: ON_WALL, sheet: setOut(both, { width, units, maxHeight: maxHeight ?? ON_WALL }) }
      : fitted(high, both, { width, units }, last.current);
    const svg = svgTree(last.current.sheet);
    const { height, 'aria-label': says } = svg.attrs;
    return { svg: toVNode(svg), height, says, bar: barOf(last.current), sheet: last.current.sheet };
  }, [both, width, units, maxHeight, isOnWall]);
  const close = () => {
    setLarge(false);
    key.current?.focus();
  };
  return html`<figure class=${stale ? 'drawing stale' : 'drawing'} ref=${host}>
    ${drawn && html`<div class="drawn" role="img" aria-label=${drawn.says} style=${{ '--high': `${drawn.height}px` }}>${drawn.svg}</div>`}
    ${
      drawn &&
      html`<button type="button" class="enlarge" ref=${key} aria-label=${`Enlarge: ${drawing.title}`} onClick=${() => setLarge(true)}>
        <span style=${{ top: `${drawn.bar}px` }}>
          <svg viewBox="0 0 16 16" width="16" height="16" aria-hidden="true"><path d="M9.5 1.5h5v5M14.5 1.5l-5 5M6.5 14.5h-5v-5M1.5 14.5l5-5" /></svg>
          Enlarge
        </span>
      </button>`
    }
    ${drawn && over ? over(drawn.sheet) : null}
    ${large ? use(Enlarged, { drawing: both, units, onClose: close }) : null}
    ${stale ? html`<figcaption>Drawn from the last numbers that could be drawn.</figcaption>` : null}
  </figure>`;
}

/** Where the scale bar stands, px from the top: beside it there is room for the key. */
function barOf({ sheet }: Fitted): number {
  const bar = sheet.marks.find(({ className }) => className === 'bar-text');
  return bar?.kind === 'text' ? bar.y : sheet.height;
}
