/** What moved after the last edit: limits crossed first, then answers and main numbers, then the rest. */
import { useState } from 'preact/hooks';
import { isIssue, writeDifference } from '../../measure';
import type { Moved } from '../../notebook';
import { sayOf, useBench } from '../bench';
import { html, use } from '../html';
import { capital, inShort } from '../words';
import { inBrief, isStill } from './words';

/** How many moves are listed before "and so many more". */
const LISTED = 8;

export function RippleView() {
  const bench = useBench();
  const ripple = bench.ripple.value;
  const [all, setAll] = useState(false);
  if (!ripple || isStill(ripple)) {
    return html`<section class="ripple plain">
      <h2>What moves</h2>
      <p class="moved-from">Change a number: what follows from it is listed here.</p>
      <p class="unseen" role="status"></p>
    </section>`;
  }
  const { moved, nowWarned, nowClear } = ripple;
  const listed = all ? moved : moved.slice(0, LISTED);
  return html`<section class="ripple plain">
    <h2>${moved.length === 1 ? 'One number moved' : `${moved.length} numbers moved`}</h2>
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

function MovedLine({ moved: { quantity, before, after } }: { moved: Moved }) {
  const bench = useBench();
  const { kind, name } = quantity;
  const say = (value: typeof before) => sayOf(bench.book.inHand.value, name, value, bench.shown.value);
  const difference =
    typeof before === 'number' && typeof after === 'number'
      ? ` (${writeDifference(after - before, kind, bench.shown.value)})`
      : '';
  return html`<li>
    <button type="button" class="jump" onClick=${() => bench.goTo(name)}>${capital(inShort(bench, name))}</button>
    <span> ${isIssue(after) ? `has no value: ${after.issue}` : say(after)}, </span>
    <span class="moved-from">${isIssue(before) ? 'had no value' : `was ${say(before)}`}${difference}</span>
  </li>`;
}
