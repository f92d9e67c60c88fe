/** A drawing over the whole window, set out anew for it, drawn along and brought nearer by finger, wheel and keys. */
import Panzoom, { type PanzoomObject } from '@panzoom/panzoom';
import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import { type Drawing, type ScaleUnits, svgTree } from '../../drawing';
import { html } from '../html';
import { fitted } from './fitted';
import { toVNode } from './vnode';
import './enlarged.css';

export interface EnlargedProps {
  readonly drawing: Drawing;
  readonly units: ScaleUnits;
  readonly onClose: () => void;
}

/** How near it may be brought, and by what share of it a key does. */
const NEAREST = 12;
const STEP = 0.4;
/** From this width on letters may be larger, px. */
const ROOMY = 800;
/** How far a key draws it along, px on the screen. */
const ALONG = 80;

interface Key {
  /** Letters; or an arrow, by how far it is turned from one that points to the right, degrees. */
  readonly sign: string | number;
  readonly name: string;
  /** As the keyboard calls them. */
  readonly keys: readonly string[];
  readonly does: (hands: PanzoomObject) => unknown;
}

const along = (x: number, y: number) => (hands: PanzoomObject) =>
  hands.pan((x * ALONG) / hands.getScale(), (y * ALONG) / hands.getScale(), { relative: true });

const KEYS: readonly Key[] = [
  { sign: '−', name: 'Farther', keys: ['-', '−'], does: (hands) => hands.zoomOut() },
  { sign: '+', name: 'Nearer', keys: ['+', '='], does: (hands) => hands.zoomIn() },
  // To the left is what lies there: the paper goes to the right.
  { sign: 180, name: 'To the left', keys: ['ArrowLeft'], does: along(1, 0) },
  { sign: 270, name: 'Up', keys: ['ArrowUp'], does: along(0, 1) },
  { sign: 90, name: 'Down', keys: ['ArrowDown'], does: along(0, -1) },
  { sign: 0, name: 'To the right', keys: ['ArrowRight'], does: along(-1, 0) },
  { sign: 'All', name: 'All of it', keys: ['0', 'Home'], does: (hands) => hands.reset() },
];

export function Enlarged({ drawing, units, onClose }: EnlargedProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  const place = useRef<HTMLDivElement>(null);
  const paper = useRef<HTMLDivElement>(null);
  const hands = useRef<PanzoomObject | null>(null);
  const size = useSize(place);
  useLayoutEffect(() => {
    dialog.current?.showModal();
    place.current?.focus();
  }, []);
  const svg = useMemo(
    () =>
      size &&
      toVNode(
        svgTree(fitted(size.height, drawing, { ...size, units, text: size.width > ROOMY ? 17 : 15 }).sheet),
      ),
    [drawing, units, size],
  );
  useEffect(() => {
    const [frame, moved] = [place.current, paper.current];
    if (!frame || !moved) return undefined;
    const still = matchMedia('(prefers-reduced-motion: reduce)').matches;
    const panzoom = Panzoom(moved, {
      minScale: 1,
      maxScale: NEAREST,
      step: STEP,
      panOnlyWhenZoomed: true,
      animate: !still,
    });
    hands.current = panzoom;
    const wheel = (event: WheelEvent) => panzoom.zoomWithWheel(event);
    frame.addEventListener('wheel', wheel, { passive: false });
    return () => {
      frame.removeEventListener('wheel', wheel);
      panzoom.destroy();
    };
  }, [size]);
  const turn = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const key = KEYS.find(({ keys }) => keys.includes(event.key));
    if (!key || !hands.current) return;
    event.preventDefault();
    key.does(hands.current);
  };
  return html`<dialog class="enlarged" ref=${dialog} aria-label=${drawing.title} onClose=${onClose} onKeyDown=${turn}>
    <div class="enlarged-keys">
      ${KEYS.map(
        (key) =>
          html`<button type="button" aria-label=${key.name} title=${key.name} onClick=${() => hands.current && key.does(hands.current)}>${signOf(key)}</button>`,
      )}
      <button type="button" class="close-enlarged" onClick=${() => dialog.current?.close()}>Close</button>
    </div>
    <div class="enlarged-place" ref=${place} tabindex="0" role="group" aria-label="The drawing: + and − bring it nearer and farther, arrows draw it along, 0 shows all of it">
      <div class="enlarged-paper" ref=${paper}>${svg}</div>
    </div>
  </dialog>`;
}

/** The fonts of the page have no arrows. */
const signOf = ({ sign }: Key) =>
  typeof sign === 'string'
    ? sign
    : html`<svg viewBox="-8 -8 16 16" width="20" height="20" aria-hidden="true"><path transform=${`rotate(${sign})`} d="M-6 0h12M1-5l5 5-5 5" /></svg>`;

/** What a place measures inside, px, as long as it is shown; null until it is. */
function useSize(host: {
  current: HTMLElement | null;
}): { readonly width: number; readonly height: number } | null {
  const [size, setSize] = useState<{ readonly width: number; readonly height: number } | null>(null);
  useLayoutEffect(() => {
    const element = host.current;
    if (!element) return undefined;
    const observer = new ResizeObserver(([entry]) => {
      if (!entry) return;
      const { width, height } = entry.contentRect;
      if (width > 0) setSize({ width: Math.floor(width), height: Math.floor(height) });
    });
    observer.observe(element);
    return () => observer.disconnect();
  }, [host]);
  return size;
}
