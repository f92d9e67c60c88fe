/** The lines plan of the hull, both versions. */
import { useMemo } from 'preact/hooks';
import type { Hull } from '../../boat';
import { linesPlan } from '../../drawing';
import { isIssue } from '../../measure';
import { useBench } from '../bench';
import { html, use } from '../html';
import { Figure } from '../picture/figure';
import { capital } from '../words';
import { useGoodHull } from '../good-hull';
import { hullLines } from './hull-lines';

/** Narrower than this the three views stand below each other, px. */
const NARROW = 560;

export function LinesFigure() {
  const { book, other, ...bench } = useBench();
  const { hull, fault } = useGoodHull(book.inHand.value);
  const beside = other.value?.graph.hull() ?? null;
  const { value: name } = bench.name;
  const form = innerWidth < NARROW ? 'tall' : 'wide';
  const plan = (of: Hull | null) =>
    of &&
    linesPlan(hullLines(of), {
      title: 'Lines',
      says: `${name} in profile, half-breadth plan and body plan.`,
      amidships: of.widest.x,
      form,
    });
  const drawing = useMemo(() => plan(hull), [hull, name, form]);
  const isOther =
    beside !== null && !isIssue(beside) && beside.faults.length === 0 && !sameShape(beside, hull);
  const second = useMemo(() => (isOther ? plan(beside) : null), [isOther, beside, name, form]);
  if (!drawing) return html`<p class="says">${capital(fault ?? 'the hull can’t be drawn yet')}.</p>`;
  return html`<div>
    ${fault === null ? null : html`<p class="says">${capital(fault)}. The last good hull stays on the sheet.</p>`}
    ${use(Figure, { drawing, second: second ?? undefined, stale: fault !== null, maxHeight: 520 })}
  </div>`;
}

/** Two versions with the same offsets each have a hull of their own. */
export function sameShape(a: Hull, b: Hull | null): boolean {
  return b !== null && JSON.stringify(a.offsets.points) === JSON.stringify(b.offsets.points);
}
