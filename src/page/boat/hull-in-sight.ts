/** The hull, always in sight in small, lighting up the part that the cell in hand speaks of. */
import { useMemo, useRef } from 'preact/hooks';
import type { Hull } from '../../boat';
import { aboutOf, type Instance } from '../../cells';
import { setOut, type SvgNode, svgTree, thumbnail } from '../../drawing';
import type { Graph } from '../../notebook';
import { useBench } from '../bench';
import { misfitsInBrief } from '../as-built/words';
import { html, use } from '../html';
import { toVNode } from '../picture/figure';
import { useWidth } from '../picture/width';
import { inBrief } from '../ripple/words';
import { capital } from '../words';
import { useGoodHull } from '../good-hull';
import { hullLines, litParts } from './hull-lines';

export function HullInSight({ onOpen, open }: { onOpen: () => void; open: boolean }) {
  const bench = useBench();
  const graph = bench.book.inHand.value;
  const { hull, fault } = useGoodHull(graph);
  const instance = bench.inHand.value === null ? undefined : bench.instances.value.get(bench.inHand.value);
  const lights = instance ? litBy(instance, graph) : [];
  const name = bench.name.value;
  const brief = [inBrief(bench.ripple.value), misfitsInBrief(bench.misfits.value)].filter(Boolean).join(', ');
  return html`<div class="hull-in-sight">
    <button type="button" onClick=${onOpen} aria-expanded=${open} aria-label=${`${name}: the hull and what moved`}>
      ${hull ? use(Views, { hull, lit: [...litParts(lights, hull)].join(' '), name }) : html`<span>The hull can’t be drawn yet.</span>`}
    </button>
    <p class="speaks plain">
      ${fault === null ? (instance ? `Here: ${instance.cell.title.toLowerCase()}` : name) : `${hull ? 'Last good hull. ' : ''}${capital(fault)}.`}
      ${brief ? html`<span class="brief">${brief}</span>` : null}
    </p>
  </div>`;
}

/** Names of the parts that a cell speaks of, with its choices put in. */
export function litBy({ cell, name }: Instance, graph: Graph): string[] {
  return aboutOf(cell, (key) => {
    const chosen = graph.value(`${name}.${key}`);
    return typeof chosen === 'string' ? chosen : '';
  });
}

/** `lit` is one text so that it compares by what it says. */
function Views({ hull, lit, name }: { hull: Hull; lit: string; name: string }) {
  const host = useRef<HTMLElement>(null);
  const width = useWidth(host);
  const tree = useMemo(() => {
    if (width === null) return null;
    const drawing = thumbnail(hullLines(hull), {
      title: name,
      says: `${name} in profile, plan and body view.`,
      amidships: hull.widest.x,
    });
    return svgTree(setOut(drawing, { width, maxHeight: 260, bar: false, caption: false }));
  }, [hull, name, width]);
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
