/**
 * The strip at the foot of a phone: the hull, the first answer of the cell in hand and what it was before the last
 * edit. A press opens the list of what moved.
 */
import type { Hull } from '../../boat';
import { answersOf, type Instance } from '../../cells';
import { isIssue } from '../../measure';
import { misfitsInBrief } from '../as-built/words';
import { type Bench, useBench } from '../bench';
import { html, use } from '../html';
import { figuresOf } from '../ripple/figures';
import { inBrief } from '../ripple/words';
import { inShortWithin } from '../in-short';
import { HullViews } from '../hull/hull-views';
import { coverOf } from '../on-wall/cover';

export interface DockProps {
  readonly hull: Hull | null;
  readonly lit: string;
  /** Why she can't be drawn as she stands; empty where she can. */
  readonly trouble: string;
  readonly open: boolean;
  readonly onOpen: () => void;
}

export function Dock({ hull, lit, trouble, open, onOpen }: DockProps) {
  const bench = useBench();
  const name = bench.name.value;
  const instance = bench.instances.value.get(bench.inHand.value ?? '');
  // What waits for a guess, or is covered on the wall, isn't told at the foot either.
  const answer = instance && !coverOf(bench, instance.name) ? firstAnswer(instance, bench) : null;
  const brief = [inBrief(bench.ripple.value), misfitsInBrief(bench.misfits.value)].filter(Boolean).join(', ');
  return html`<button type="button" class="dock plain" onClick=${onOpen} aria-expanded=${open}>
    ${hull && !open ? use(HullViews, { hull, lit, name, form: 'wide' }) : null}
    <span class="dock-words">
      ${trouble ? html`<span class="speaks">${trouble}</span>` : html`<span class="dock-answer">${answer ?? instance?.cell.title ?? name}</span>`}
      ${brief ? html`<span class="brief">${brief}</span>` : null}
    </span>
    <span class="unseen">${name}: the hull and what moved</span>
  </button>`;
}

/** `57.6 % of breaking, was 49.2`; what it was is only said of the edit that made it what it is. */
function firstAnswer(instance: Instance, bench: Bench) {
  const graph = bench.book.inHand.value;
  const of = answersOf(instance, (by) => graph.workOut(by))[0]?.of;
  if (of === undefined) return null;
  const name = `${instance.name}.${of}`;
  const kind = graph.quantity(name)?.kind ?? 'number';
  const value = graph.value(name);
  if (isIssue(value)) return null;
  const { told = [] } = bench.ripple.value ?? {};
  const lines = [...told, ...(bench.ripple.value?.folded ?? []).flatMap((fold) => fold.lines)];
  const moved = lines
    .flatMap((line) => ('moved' in line ? [line.moved] : []))
    .find(({ quantity }) => quantity.name === name);
  const before = moved?.after === value && !isIssue(moved.before) ? moved.before : value;
  const { is, was } = figuresOf(bench, { quantity: { name, kind }, before, after: value });
  return html`<b>${is}</b> ${inShortWithin(bench, name, instance.name)}${before === value ? '' : `, was ${was}`}`;
}
