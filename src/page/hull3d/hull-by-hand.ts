/** The hull to be turned by finger, mouse and keys. Fetched, and three with it, when a reader asks for it. */
import { useEffect, useLayoutEffect, useRef } from 'preact/hooks';
import { html } from '../html';
import { redraw } from '../picture/redraw';
import { type Hands, handsOn } from './hands';
import type { HullModel } from './hull-model';
import { type Viewpoint, nearer, threeQuarter, turned } from './look';
import { type HullScene, openScene, type Paints } from './scene';

export interface HullByHandProps {
  readonly model: HullModel;
  readonly second: HullModel | null;
  /** Names of the parts that are lit, in one text so that it compares by what it says. */
  readonly lit: string;
  /** Changes with the colours of the page. */
  readonly colours: string;
  readonly look: Viewpoint;
  /** By which she lies over to port, rad. */
  readonly heel?: number;
  readonly onLook: (change: (from: Viewpoint) => Viewpoint) => void;
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

const keys: Readonly<Record<string, (from: Viewpoint) => Viewpoint>> = {
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
  const { model, second, lit, colours, look, heel = 0, onLook, onLost, label, hint } = props;
  const host = useRef<HTMLDivElement>(null);
  const scene = useRef<HullScene | null>(null);
  const hands = useRef<Hands | null>(null);
  const draw = useRef(() => scene.current?.draw()).current;
  useLayoutEffect(() => openOn(host.current!, scene, draw, onLost), []); // laid out, so it is there
  useLayoutEffect(() => {
    hands.current = handsOn(host.current!, (look) => onLook(() => look)); // laid out, so it is there
    return () => hands.current?.dispose();
  }, [onLook]);
  useEffect(() => {
    // Colours are read when the picture is drawn: the page has its own by then.
    redraw(() => {
      if (!host.current) return;
      scene.current?.show({ model, second, lit: new Set(lit.split(' ')), paints: paintsOf(host.current) });
      draw();
    });
  }, [model, second, lit, colours]);
  useLayoutEffect(() => {
    scene.current?.see(look, heel);
    hands.current?.follow(look);
    redraw(draw);
  }, [look, heel]);
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
    ink: paint('--hull-ink'),
    skin: paint('--hull-skin'),
    lit: paint('--red-lead'),
    litSkin: paint('--hull-lit'),
    second: paint('--bottom-blue'),
  };
}
