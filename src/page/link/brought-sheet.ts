/** What a link brings, and the two ways on: to take it beside what is here, or to leave it. */
import { useState } from 'preact/hooks';
import type { BoatLink } from '../../notebook/link/link';
import { useBench } from '../bench';
import { html } from '../html';
import { linkOpen } from '../link-open';
import { takeOutOfAddress } from './arrive';
import { broughtLines, type BroughtLine, opensAt } from './brought';
import { sameBoat, takeLink } from './take';

export function BroughtSheet({ link }: { link: BoatLink }) {
  const bench = useBench();
  const [same] = useState(() => sameBoat(bench, link));
  const { name } = link.boat;
  const leave = () => {
    takeOutOfAddress();
    linkOpen.value = null;
    document.getElementById('notebook-title')?.focus();
  };
  const then = link.isBoatless
    ? 'They go into a notebook that knows no boat. What stands there now is one press of Undo away.'
    : same
      ? `She is on your shelf already${same.name === name ? '' : `, as ${same.name}`}, the same in every number.`
      : 'She goes onto your shelf as a boat of her own. Nothing of yours is changed.';
  const take = link.isBoatless ? 'Take these numbers' : same ? `Open ${same.name}` : `Take ${name}`;
  return html`<section class="boat-sheet own-boats link-sheet" aria-labelledby="link-title">
    <h2 id="link-title" tabindex="-1">${link.isBoatless ? 'A link brings numbers' : `A link brings ${name}`}</h2>
    <ul>${broughtLines(link, bench).map(line)}</ul>
    <p>${opensAt(link, bench)} ${then}</p>
    <p class="keys">
      <button type="button" onClick=${() => takeLink(bench, link, same)}>${take}</button>
      <button type="button" class="quiet" onClick=${leave}>Leave it</button>
    </p>
  </section>`;
}

function line({ says, each }: BroughtLine) {
  return html`<li>
    ${
      each.length === 0
        ? says
        : html`<details>
            <summary>${says}</summary>
            <ul>
              ${each.map((one) => html`<li>${one}</li>`)}
            </ul>
          </details>`
    }
  </li>`;
}
