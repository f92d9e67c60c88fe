/** The hull, always in sight in small, lighting up the part that the cell in hand speaks of. */
import { useRef } from 'preact/hooks';
import type { Hull } from '../boat';
import { fillIn } from '../cells';
import { setOut, type SvgNode, svgTree, thumbnail } from '../drawing';
import { isIssue } from '../measure';
import { useBench } from './bench';
import { toVNode, useWidth } from './figure';
import { hullLines, litParts } from './hull-lines';
import { html, use } from './html';

export function HullInSight({ onOpen, open }: { onOpen: () => void; open: boolean }) {
  const bench = useBench();
  const { book } = bench;
  const hull = book.inHand.value.hull();
  const lastGood = useRef<Hull | null>(null);
  if (!isIssue(hull)) lastGood.current = hull;
  const instance = bench.inHand.value === null ? undefined : bench.instances.value.get(bench.inHand.value);
  const lights = instance
    ? instance.cell.lights.map((name) =>
        fillIn(name, (key) => String(book.inHand.value.value(`${instance.name}.${key}`))),
      )
    : [];
  const table = book.state.value.table;
  return html`<div class="hull-in-sight">
    <button type="button" onClick=${onOpen} aria-expanded=${open} aria-label=${`${table.name}: show the hull and what moved`}>
      ${lastGood.current ? use(Views, { hull: lastGood.current, lights, name: table.name }) : html`<span>The hull can't be drawn yet.</span>`}
    </button>
    <p class="speaks plain">
      ${isIssue(hull) ? `Last good hull. ${hull.issue}.` : instance ? `Here: ${instance.cell.title.toLowerCase()}` : table.name}
    </p>
  </div>`;
}

function Views({ hull, lights, name }: { hull: Hull; lights: readonly string[]; name: string }) {
  const host = useRef<HTMLElement>(null);
  const width = useWidth(host, 280);
  const lit = litParts(lights, hull);
  const drawing = thumbnail(hullLines(hull), {
    title: name,
    says: `${name} in profile, plan and body view.`,
    amidships: hull.widest.x,
  });
  const sheet = setOut(drawing, { width, maxHeight: 260, bar: false, caption: false });
  return html`<span class="views" ref=${host}>${toVNode(light(svgTree(sheet), lit))}</span>`;
}

/** Adds the class that lights a mark; the drawing itself knows nothing of what is spoken of. */
function light(node: SvgNode, lit: ReadonlySet<string>): SvgNode {
  const part = node.attrs['data-part'];
  const attrs =
    typeof part === 'string' && lit.has(part)
      ? { ...node.attrs, class: `${node.attrs['class'] ?? ''} lit` }
      : node.attrs;
  return { ...node, attrs, kids: node.kids.map((kid) => (typeof kid === 'string' ? kid : light(kid, lit))) };
}
