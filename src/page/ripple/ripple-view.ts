/** What moved after the last edit: limits crossed first, then answers and main numbers, then the rest. */
import { useState } from 'preact/hooks';
import { warningsOf } from '../../cells';
import { type Issue, isIssue, putBefore, write, writeDifference } from '../../measure';
import type { Moved } from '../../notebook';
import { sayOf, tiedWith, useBench } from '../bench';
import { html, use } from '../html';
import { capital, inShort } from '../words';
import { edgesOf } from './snapshot';
import { hullWords, inBrief, isStill } from './words';

/** Cells whose warnings are about her numbers, and not about a batten that nobody has chosen yet. */
const OF_HER_SHAPE: ReadonlySet<string> = new Set(['offsets', 'lines', 'fair']);

/** How many moves are listed before "and so many more". */
const LISTED = 8;

export function RippleView() {
  const bench = useBench();
  const ripple = bench.ripple.value;
  const [all, setAll] = useState(false);
  if (!ripple || isStill(ripple)) {
    return html`<section class="ripple plain">
      <h2>What moves</h2>
      <p class="moved-from">${ripple ? 'Nothing else moved.' : 'Change a number: what follows from it is listed here.'}</p>
      <p class="unseen" role="status"></p>
    </section>`;
  }
  const { moved, hull } = ripple;
  const say = tiedWith(bench);
  const nowWarned = ripple.nowWarned.map((tell) => tell(say));
  const nowClear = ripple.nowClear.map((tell) => tell(say));
  const listed = all ? moved : moved.slice(0, LISTED);
  return html`<section class="ripple plain">
    <h2>${hull ? hullWords[hull] : moved.length === 1 ? 'One number moved' : `${moved.length} numbers moved`}</h2>
    ${hull ? use(OfHull, { drawn: hull === 'drawn' }) : null}
    <ul>
      ${nowWarned.map((says) => html`<li class="crossed"><b>Now past a limit: </b>${says}</li>`)}
      ${nowClear.map((says) => html`<li><b>No longer so: </b>${says}</li>`)}
      ${listed.map((one) => use(MovedLine, { key: one.quantity.name, moved: one }))}
    </ul>
    ${
      moved.length > LISTED
        ? html`<button type="button" class="quiet" aria-expanded=${all} onClick=${() => setAll(!all)}>${all ? 'Fewer' : `and ${moved.length - LISTED} more`}</button>`
        : null
    }
    <p class="unseen" role="status">${inBrief(ripple)}. ${nowWarned.join(' ')}</p>
  </section>`;
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

function MovedLine({ moved: { quantity, before, after } }: { moved: Moved }) {
  const bench = useBench();
  const { kind, name } = quantity;
  const say = (value: typeof before) => sayOf(bench.book.inHand.value, name, value, bench.shown.value);
  // The reason as it stands now, in the units chosen since.
  const whyNow = (then: Issue) => {
    const value = bench.book.inHand.value.value(name);
    return isIssue(value) ? value.issue : then.issue;
  };
  const difference =
    typeof before === 'number' && typeof after === 'number'
      ? ` (${writeDifference(after - before, kind, bench.shown.value)})`
      : '';
  return html`<li>
    <button type="button" class="jump" onClick=${() => bench.goTo(name)}>${capital(inShort(bench, name))}</button>
    <span> ${isIssue(after) ? `has no value: ${whyNow(after)}` : say(after)}, </span>
    <span class="moved-from">${isIssue(before) ? 'had no value' : `was ${say(before)}`}${difference}</span>
  </li>`;
}
