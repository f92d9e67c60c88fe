/** What can be moved in a drawing by hand: a ring over each place, for mouse, finger and arrow keys, which writes the numbers that the place stands for. */
import { useRef } from 'preact/hooks';
import type { Given } from '../../boat';
import type { Instance } from '../../cells';
import type { Grip, GripWay, Sheet } from '../../drawing';
import { type Bench, sayOf, useBench } from '../bench';
import { html, use } from '../html';
import { entryOf, markFrom, marksOf, nearestMark } from '../input/entry-text';
import { fieldOf } from '../input/owner';
import './grips.css';

export interface GripsProps {
  readonly instance: Instance;
  readonly grips: readonly Grip[];
  /** The drawing as it is set out, from the left upper corner of the place. */
  readonly sheet: Sheet;
}

export function Grips({ instance, grips, sheet }: GripsProps) {
  const { wall } = useBench();
  if (wall.value) return null;
  return html`<div class="grips">
    ${grips.map((grip, at) => use(Ring, { key: at, instance, grip, sheet }))}
  </div>`;
}

const ARROWS: Readonly<Record<string, readonly [way: 'right' | 'up', count: number]>> = {
  ArrowRight: ['right', 1],
  ArrowLeft: ['right', -1],
  ArrowUp: ['up', 1],
  ArrowDown: ['up', -1],
};

function Ring({ instance, grip, sheet }: { instance: Instance; grip: Grip; sheet: Sheet }) {
  const bench = useBench();
  const { book } = bench;
  const held = useRef<Held | null>(null);
  const given = ({ key }: GripWay): Given | undefined => {
    const graph = book.inHand.peek();
    const { name } = fieldOf(bench, graph, `${instance.name}.${key}`);
    return graph.quantity(name) as Given | undefined; // inputs are given
  };
  const [x, y] = grip.at;
  const ways = [grip.right, grip.up].filter((way) => way !== undefined);
  /** Writes the numbers of a place on the paper, each at the nearest mark of its field. */
  const moveTo = (to: readonly [x: number, y: number]) => {
    const changes = [grip.right, grip.up].flatMap((way, along): [string, string][] => {
      const quantity = way && given(way);
      return quantity ? [[quantity.name, entryAt(bench, quantity, (to[along]! - way.zero) / 1000)]] : [];
    });
    book.write(Object.fromEntries(changes), `drag ${instance.name} ${grip.name}`);
  };
  const press = (event: PointerEvent) => {
    if (event.button !== 0) return;
    const ring = event.currentTarget as HTMLElement;
    ring.setPointerCapture(event.pointerId);
    // The paper may grow under the hand: it is measured as it was when she took hold.
    held.current = { from: [event.clientX, event.clientY], at: [x, y], scale: sheet.scale, frame: 0 };
  };
  const drag = (event: PointerEvent) => {
    const hold = held.current;
    if (!hold) return;
    const [left, top] = hold.from;
    const to = [
      hold.at[0] + (event.clientX - left) / hold.scale,
      hold.at[1] - (event.clientY - top) / hold.scale,
    ] as const;
    // Once a frame, however often the hand is heard of.
    cancelAnimationFrame(hold.frame);
    hold.frame = requestAnimationFrame(() => moveTo(to));
  };
  const letGo = () => {
    if (!held.current) return;
    held.current = null;
    requestAnimationFrame(() => book.settle());
  };
  const turn = (event: KeyboardEvent) => {
    const [way, count] = ARROWS[event.key] ?? [];
    const quantity = way && grip[way] && given(grip[way]);
    if (!quantity || count === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
    event.preventDefault();
    const now = book.inHand.peek().value(quantity.name);
    if (typeof now !== 'number') return;
    const shown = bench.shown.peek();
    const next = markFrom(now, event.shiftKey ? 10 * count : count, marksOf(quantity, now, shown));
    book.write(
      { [quantity.name]: entryOf(next, quantity.kind, shown) },
      `drag ${instance.name} ${grip.name}`,
    );
  };
  const said = ways.flatMap((way) => {
    const quantity = given(way);
    if (!quantity) return [];
    const { name, label, meaning } = quantity;
    return `${label ?? meaning} ${sayOf(book.inHand.value, name, book.inHand.value.value(name), bench.shown.value)}`;
  });
  return html`<button
    type="button"
    class="grip"
    style=${{ left: `${sheet.origin[0] + sheet.scale * x}px`, top: `${sheet.origin[1] - sheet.scale * y}px` }}
    aria-label=${`Move ${grip.name}: ${said.join(', ')}`}
    title=${`Drag ${grip.name}, or move it with the arrow keys`}
    onPointerDown=${press}
    onPointerMove=${drag}
    onPointerUp=${letGo}
    onPointerCancel=${letGo}
    onKeyDown=${turn}
    onBlur=${() => book.settle()}
  ></button>`;
}

/** What has been taken hold of: where on the screen, px, and where on the paper, mm. */
interface Held {
  readonly from: readonly [x: number, y: number];
  readonly at: readonly [x: number, y: number];
  /** px for each mm. */
  readonly scale: number;
  frame: number;
}

function entryAt({ shown }: Bench, quantity: Given, value: number): string {
  const marks = marksOf(quantity, value, shown.peek());
  return entryOf(nearestMark(value, marks), quantity.kind, shown.peek());
}
