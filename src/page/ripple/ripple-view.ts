/** What moved after the last edit, a line each: limits first, then what is in view; the rest folded. */
import { useState } from 'preact/hooks';
import { warningsOf } from '../../cells';
import { type Issue, isIssue, putBefore, write } from '../../measure';
import type { Moved } from '../../notebook';
import { sayOf, tiedWith, useBench } from '../bench';
import { figuresOf } from './figures';
import { html, use } from '../html';
import { notebooks } from '../library';
import { inShort, inShortWithin, titleOf } from '../in-short';
import { capital } from '../words';
import type { FoldedLines, LineKind } from '../told/order';
import { edgesOf } from './snapshot';
import type { Limit, ToldLine } from '../told/told';
import { amiss, foldWords, hullWords, inBrief, isStill } from './words';

/** Cells whose warnings are about her numbers, and not about a batten that nobody has chosen yet. */
const OF_HER_SHAPE: ReadonlySet<string> = new Set(['offsets', 'lines', 'fair']);

export function RippleView() {
  const bench = useBench();
  const ripple = bench.ripple.value;
  if (!ripple || isStill(ripple)) {
    return html`<section class="ripple plain">
      <h2>What moves</h2>
      <p class="moved-from">${ripple ? 'Nothing else moved.' : 'Change a number: what follows from it is listed here.'}</p>
      <p class="unseen" role="status"></p>
    </section>`;
  }
  const { told, folded, hull } = ripple;
  const stops = told.filter(({ kind }) => kind === 'stop' || kind === 'mind');
  const say = tiedWith(bench);
  return html`<section class="ripple plain">
    <h2>${hull ? hullWords[hull] : 'What moved'}</h2>
    ${hull ? use(OfHull, { drawn: hull === 'drawn' }) : null}
    <ul>
      ${told.map((line) => use(Line, { key: keyOf(line), line }))}
    </ul>
    ${folded.map((fold) => use(Folded, { key: fold.notebook, fold }))}
    <p class="unseen" role="status">${inBrief(ripple)}. ${stops.map((line) => ('limit' in line ? line.limit.tell(say) : '')).join(' ')}</p>
  </section>`;
}

const keyOf = (line: ToldLine): string =>
  'limit' in line
    ? `${line.kind} ${line.limit.cell} ${line.limit.against?.name ?? ''}`
    : line.moved.quantity.name;

function Line({ line }: { line: ToldLine }) {
  return 'limit' in line
    ? use(LimitLine, { limit: line.limit, kind: line.kind })
    : use(MovedLine, { moved: line.moved, within: line.place === 'in hand' });
}

/** What there is no room for, or nobody has opened, a press away. */
function Folded({ fold }: { fold: FoldedLines<ToldLine> }) {
  const bench = useBench();
  const [open, setOpen] = useState(false);
  const isHere = fold.lines.some(({ place }) => place !== 'elsewhere' && place !== 'boat');
  const notebook = notebooks.value.find(({ id }) => id === fold.notebook)?.title;
  const titles = isHere ? fold.lines.flatMap((line) => titleFor(line)) : [];
  return html`<button type="button" class="quiet fold" aria-expanded=${open} onClick=${() => setOpen(!open)}>${foldWords(fold.lines.length, titles, notebook)}</button>
    ${open ? html`<ul>${fold.lines.map((line) => use(Line, { key: keyOf(line), line }))}</ul>` : null}`;

  function titleFor(line: ToldLine): string[] {
    const part = 'limit' in line ? line.limit.cell : (line.moved.quantity.name.split('.')[0] ?? '');
    const instance = bench.instances.value.get(part);
    return instance ? [titleOf(instance, bench)] : [];
  }
}

const HEADS: Partial<Record<LineKind, string>> = {
  stop: 'Past its limit: ',
  mind: 'Mind: ',
  clear: 'No longer so: ',
};

/** `Past its limit: bending a board, share of breaking 57.6 %, at most 50`. */
function LimitLine({ limit, kind }: { limit: Limit; kind: LineKind }) {
  const bench = useBench();
  const { against, cell } = limit;
  const instance = bench.instances.value.get(cell);
  const title = instance ? titleOf(instance, bench) : '';
  const isClear = kind === 'clear';
  const head = HEADS[kind] ?? '';
  return html`<li class=${isClear ? '' : 'crossed'}>
    <b>${head}</b><button type="button" class="jump" onClick=${() => bench.goTo(against?.name ?? cell)}>${title}</button>${against ? `, ${numbers()}` : `. ${amiss(limit.tell(tiedWith(bench)))}`}
  </li>`;

  function numbers(): string {
    if (!against) return '';
    const what = inShortWithin(bench, against.name, cell);
    // What is kept again has another value by now.
    const now = isClear ? bench.book.inHand.value.value(against.name) : against.value;
    const { is, was: bound } = figuresOf(bench, {
      quantity: against,
      before: against.limit,
      after: now,
    });
    return `${what}${typeof now === 'number' ? ` ${is}` : ''}, ${against.isMost ? 'at most' : 'at least'} ${bound}`;
  }
}

/** How large she came out, and what the cells that look at the shape find fault with; or why she can't be drawn. */
function OfHull({ drawn }: { drawn: boolean }) {
  const bench = useBench();
  const graph = bench.book.inHand.value;
  if (!drawn) {
    const missing = edgesOf(bench, graph).find(isIssue);
    return html`<p>${missing ? `${capital(missing.issue)}.` : ''}</p>`;
  }
  const say = (key: string) => sayOf(graph, `hull.${key}`, graph.value(`hull.${key}`), bench.shown.value);
  const faults = [...bench.instances.value.values()]
    .filter(({ cell, name }) => OF_HER_SHAPE.has(cell.id) && name === cell.id)
    .flatMap((instance) =>
      warningsOf(
        instance,
        (by) => graph.workOut(by),
        (value, kind, options) => write(value, kind, bench.shown.value, options),
      ),
    );
  return html`<p>${putBefore(`${say('length')} long, ${say('beam')} wide, ${say('depth')} deep.`)}</p>
    ${faults.length === 0 ? null : html`<ul>${faults.map(({ says }) => html`<li class="crossed">${says}</li>`)}</ul>`}`;
}

/** `Pull to hold it 565 N, was 71`; of a cell that is not in hand, with its title. */
function MovedLine({ moved, within }: { moved: Moved; within: boolean }) {
  const { quantity, before, after } = moved;
  const bench = useBench();
  const { name } = quantity;
  const { is, was } = figuresOf(bench, moved);
  // The reason as it stands now, in the units chosen since.
  const whyNow = (then: Issue) => {
    const value = bench.book.inHand.value.value(name);
    return isIssue(value) ? value.issue : then.issue;
  };
  const what = within ? inShortWithin(bench, name, name.split('.')[0] ?? '') : inShort(bench, name);
  const jump = (text: string) =>
    html`<button type="button" class="jump" onClick=${() => bench.goTo(name)}>${text}</button>`;
  const now = isIssue(after) ? `has no value: ${whyNow(after)}` : is;
  // `57.6 % of breaking`, as the cell has it.
  return html`<li>
    ${what.startsWith('of ') ? html`${now} ${jump(what)}` : html`${jump(capital(what))} ${now}`},${' '}
    <span class="moved-from">${isIssue(before) ? 'had no value' : `was ${was}`}</span>
  </li>`;
}
