/** The hull to be turned by finger, mouse and keys. Fetched, and three with it, when a reader asks for it. */
import { useEffect, useLayoutEffect, useRef } from 'preact/hooks';
import { html } from '../html';
import { redraw } from '../picture/redraw';
import type { HullModel } from './hull-model';
import { type Look, nearer, threeQuarter, turned } from './look';
import { type HullScene, openScene, type Paints } from './scene';

export interface HullByHandProps {
  readonly model: HullModel;
  readonly second: HullModel | null;
  /** Names of the parts that are lit, in one text so that it compares by what it says. */
  readonly lit: string;
  /** Changes with the colours of the page. */
  readonly dress: string;
  readonly look: Look;
  readonly onLook: (change: (from: Look) => Look) => void;
  /** The graphics card let go of the picture. */
  readonly onLost: () => void;
  /** What is seen, and from where. */
  readonly label: string;
  readonly hint: string;
}

const degree = Math.PI / 180;
/** A key press turns by this much, and brings nearer by a quarter. */
const KEY_TURN = 10 * degree;
const KEY_NEAR = 1.25;
/** A drag across the picture's width turns her half round. */
const DRAG_TURN = Math.PI;

const keys: Readonly<Record<string, (from: Look) => Look>> = {
  ArrowLeft: (from) => turned(from, -KEY_TURN, 0),
  ArrowRight: (from) => turned(from, KEY_TURN, 0),
  ArrowUp: (from) => turned(from, 0, -KEY_TURN),
  ArrowDown: (from) => turned(from, 0, KEY_TURN),
  '+': (from) => nearer(from, KEY_NEAR),
  '=': (from) => nearer(from, KEY_NEAR),
  '-': (from) => nearer(from, 1 / KEY_NEAR),
  _: (from) => nearer(from, 1 / KEY_NEAR),
  Home: () => threeQuarter,
};

export function HullByHand(props: HullByHandProps) {
  const { model, second, lit, dress, look, onLook, onLost, label, hint } = props;
  const host = useRef<HTMLDivElement>(null);
  const scene = useRef<HullScene | null>(null);
  const draw = useRef(() => scene.current?.draw()).current;
  useLayoutEffect(() => openOn(host.current!, scene, draw, onLost), []); // laid out, so it is there
  useEffect(() => {
    // Colours are read when the frame is drawn: the page has put its dress on by then.
    redraw(() => {
      if (!host.current) return;
      scene.current?.show({ model, second, lit: new Set(lit.split(' ')), paints: paintsOf(host.current) });
      draw();
    });
  }, [model, second, lit, dress]);
  useLayoutEffect(() => {
    scene.current?.see(look);
    redraw(draw);
  }, [look]);
  useHands(host, onLook);
  const press = (event: KeyboardEvent) => {
    const change = event.ctrlKey || event.metaKey || event.altKey ? undefined : keys[event.key];
    if (!change) return;
    event.preventDefault();
    onLook(change);
  };
  return html`<div
    class="hull-canvas"
    ref=${host}
    tabindex="0"
    role="application"
    aria-label=${label}
    aria-describedby=${hint}
    onKeyDown=${press}
  ></div>`;
}

/** Puts a canvas into the host and a scene on it; hands back what takes both away. */
function openOn(
  host: HTMLElement,
  scene: { current: HullScene | null },
  draw: () => void,
  onLost: () => void,
): () => void {
  const canvas = document.createElement('canvas');
  host.replaceChildren(canvas);
  try {
    scene.current = openScene(canvas);
  } catch {
    onLost();
    return () => undefined;
  }
  const lost = (event: Event) => {
    event.preventDefault();
    onLost();
  };
  canvas.addEventListener('webglcontextlost', lost);
  const fit = () => {
    const { clientWidth, clientHeight } = host;
    if (clientWidth === 0 || clientHeight === 0) return;
    scene.current?.size(clientWidth, clientHeight);
    // At once: a canvas is cleared when it is given another size.
    draw();
  };
  const observer = new ResizeObserver(fit);
  observer.observe(host);
  return () => {
    observer.disconnect();
    canvas.removeEventListener('webglcontextlost', lost);
    scene.current?.dispose();
    scene.current = null;
    canvas.remove();
  };
}

function paintsOf(host: Element): Paints {
  const style = getComputedStyle(host);
  const paint = (name: string) => style.getPropertyValue(name).trim();
  return {
    ink: paint('--ink'),
    skin: paint('--hull-skin'),
    lit: paint('--red-lead'),
    litSkin: paint('--hull-lit'),
    second: paint('--bottom-blue'),
  };
}

/** One finger or the mouse turns, two fingers draw nearer; the wheel does while the picture is in hand. */
function useHands(host: { current: HTMLElement | null }, onLook: HullByHandProps['onLook']): void {
  useEffect(() => {
    const element = host.current;
    if (!element) return undefined;
    const down = new Map<number, { x: number; y: number }>();
    const spread = () => {
      const [a, b] = [...down.values()];
      return a && b ? Math.hypot(a.x - b.x, a.y - b.y) : 0;
    };
    const take = (event: PointerEvent) => {
      element.setPointerCapture(event.pointerId);
      element.focus({ preventScroll: true });
      down.set(event.pointerId, { x: event.clientX, y: event.clientY });
    };
    const move = (event: PointerEvent) => {
      const last = down.get(event.pointerId);
      if (!last) return;
      const before = spread();
      down.set(event.pointerId, { x: event.clientX, y: event.clientY });
      const width = element.clientWidth;
      if (down.size === 1) {
        const [right, below] = [event.clientX - last.x, event.clientY - last.y];
        onLook((from) => turned(from, (right / width) * DRAG_TURN, (below / width) * DRAG_TURN));
      } else if (before > 0) onLook((from) => nearer(from, spread() / before));
    };
    const leave = (event: PointerEvent) => down.delete(event.pointerId);
    const wheel = (event: WheelEvent) => {
      // Until it is in hand the wheel scrolls the page.
      if (document.activeElement !== element) return;
      event.preventDefault();
      onLook((from) => nearer(from, Math.exp(-event.deltaY / 600)));
    };
    const stop = new AbortController();
    const { signal } = stop;
    element.addEventListener('pointerdown', take, { signal });
    element.addEventListener('pointermove', move, { signal });
    element.addEventListener('pointerup', leave, { signal });
    element.addEventListener('pointercancel', leave, { signal });
    element.addEventListener('wheel', wheel, { signal, passive: false });
    return () => stop.abort();
  }, [host, onLook]);
}
