/** At the head of a notebook of the builder's own: with which boat it is kept, what can't be used in it, and its keys. */
import { Fragment } from 'preact';
import { putNotebookAway } from '../../notebook';
import { type Bench, useBench } from '../bench';
import { html, use } from '../html';
import { openText } from '../library';
import { offerFile } from '../offer-file';
import { isWritten, written } from '../prose';
import { amendBoat } from '../notebooks/amend';
import { keptWith } from '../notebooks/kept-with';
import { linesAmiss } from '../notebooks/lines-amiss';

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
      ${use(WritingKeys, { id })}
      <button type="button" class="quiet" onClick=${putAway}>Put this notebook away</button>
      <button type="button" class="quiet" onClick=${save}>Save it to a file</button>
    </div>
  </div>`;
}

/** Whether it is written in, and whether its text stands beside it. */
function WritingKeys({ id }: { id: string }) {
  const bench = useBench();
  const is = isWritten(id);
  const isBeside = is && written.value?.beside === true;
  const turn = (to: 'by piece' | 'beside' | 'none') =>
    import('./start').then(
      ({ startWriting, stopWriting }) => {
        if (to === 'none') stopWriting();
        else startWriting(id, to === 'beside');
      },
      () => {
        bench.notice.value = {
          says: 'What one writes with did not arrive. Load the page again when you are online.',
        };
      },
    );
  const key = (words: string, isPressed: boolean, to: Parameters<typeof turn>[0]) =>
    html`<button type="button" class="quiet" aria-pressed=${isPressed} onClick=${() => void turn(to)}>${words}</button>`;
  return html`<${Fragment}>
    ${key('Write in it', is, is ? 'none' : 'by piece')} ${key('Its text beside it', isBeside, isBeside ? 'by piece' : 'beside')}
  <//>`;
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
