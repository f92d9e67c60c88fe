/** At the head of a notebook of the builder's own: with which boat it is kept, what can't be used in it, and its keys. */
import { putNotebookAway } from '../../notebook';
import { type Bench, useBench } from '../bench';
import { html } from '../html';
import { openText } from '../library';
import { offerFile } from '../offer-file';
import { amendBoat } from './amend';
import { keptWith } from './kept-with';
import { linesAmiss } from './lines-amiss';

/** Lines told at the head; what is amiss stands at its own place too. */
const TOLD = 12;

export function OwnLine({ id }: { id: string }) {
  const bench = useBench();
  const putAway = () => amendBoat(bench, (state) => putNotebookAway(state, id, true));
  const save = () => offerFile(bench.ownNotebooks.peek()?.[id]?.text ?? '', `${id}.md`, 'text/markdown');
  return html`<div class="own-notebook">
    <p>This notebook is yours. It ${keptWith(bench.shelf, whose(bench))}.</p>
    ${faultLines(bench)}
    <div class="keys">
      <button type="button" class="quiet" onClick=${putAway}>Put this notebook away</button>
      <button type="button" class="quiet" onClick=${save}>Save it to a file</button>
    </div>
  </div>`;
}

const whose = ({ sheet, book }: Bench): string =>
  sheet.value.kind === 'boat' ? book.state.value.name : 'your boat';

function faultLines(bench: Bench) {
  const page = openText();
  const lines = page ? linesAmiss(page, bench) : [];
  if (lines.length === 0) return null;
  const told = lines.slice(0, TOLD).join(', ');
  const more = lines.length > TOLD ? ` and ${lines.length - TOLD} more` : '';
  return html`<p class="notice" role="status">
    Something can’t be used on ${lines.length === 1 ? `line ${told}. It is` : `${lines.length} lines: ${told}${more}. Each is`} marked where it stands. The rest works.
  </p>`;
}
