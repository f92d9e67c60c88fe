/** The address asks for a notebook that is not in the list: what became of it, and the way to have it back. */
import { putNotebookAway } from '../../notebook';
import { useBench } from '../bench';
import { html } from '../html';
import { notebooksAway } from '../library';
import { amendBoat } from './amend';

export function NotHere({ asked }: { asked: string }) {
  const bench = useBench();
  const away = notebooksAway.value.find(({ id }) => id === asked);
  const bringBack = () => amendBoat(bench, (state) => putNotebookAway(state, asked, false));
  const own = bench.ownNotebooks.value ?? {};
  const said = away
    ? `“${away.title}” is put away.`
    : Object.hasOwn(own, asked)
      ? 'The reader of your notebooks did not arrive. Load the page again when you are online.'
      : `There is no notebook “${asked.slice(0, 60)}” here.`;
  return html`<div class="notice not-here" role="status">
    <p>${said} This one is shown in its place.</p>
    ${away && html`<div class="keys"><button type="button" onClick=${bringBack}>Bring it back</button></div>`}
  </div>`;
}
