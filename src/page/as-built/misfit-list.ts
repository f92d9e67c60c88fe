/** What no longer fits one cut part, the largest first. */
import { useState } from 'preact/hooks';
import type { Misfit } from '../../notebook/graph/misfits';
import { useBench } from '../bench';
import { html, use } from '../html';
import { labelOf, placeOf, tell } from './words';

/** How many are listed before "and so many more". */
const LISTED = 6;

export function MisfitList({ misfits }: { misfits: readonly Misfit[] }) {
  const [all, setAll] = useState(false);
  const listed = all ? misfits : misfits.slice(0, LISTED);
  return html`<div>
    <ul class="misfit-list">
      ${listed.map((misfit) => use(MisfitLine, { key: misfit.name, misfit }))}
    </ul>
    ${
      misfits.length > LISTED
        ? html`<button type="button" class="quiet" aria-expanded=${all} onClick=${() => setAll(!all)}>${all ? 'Fewer' : `and ${misfits.length - LISTED} more`}</button>`
        : null
    }
  </div>`;
}

function MisfitLine({ misfit }: { misfit: Misfit }) {
  const bench = useBench();
  const label = labelOf(misfit, bench);
  const says = bench.asked.value?.hides(misfit.name)
    ? 'is asked for: write your guess first'
    : tell(misfit, bench);
  return html`<li>
    ${misfit.quantity ? html`<button type="button" class="jump" onClick=${() => bench.goTo(placeOf(misfit))}>${label}</button>` : label}
    <span> ${says}</span>
  </li>`;
}
