/** What learners handed in, read into a table and saved as CSV. It stays in this browser. */
import { useEffect, useId, useState } from 'preact/hooks';
import { textOfCells } from '../../boat/table/pasted-cells';
import type { NotebookPage } from '../../notebook';
import { type ClassRow, classRow, classRows } from '../../notebook/lesson/class-table';
import { type Damaged, type HandedIn, isDamaged, readHandedIn } from '../../notebook/lesson/hand-in';
import { useBench } from '../bench';
import { html } from '../html';
import { bareOf } from '../bare';
import { offerFile } from '../offer-file';
import { asksOf } from '../asks';

export function Collect({ page }: { page: NotebookPage }) {
  const id = useId();
  const { book, shelf, shown } = bareOf(useBench());
  const key = `battenbook class ${page.id}`;
  const [text, setText] = useState(() => kept(() => shelf?.getItem(key)) ?? '');
  const [read, setRead] = useState<readonly (HandedIn | Damaged)[]>([]);
  const [told, tell] = useState('');
  useEffect(() => {
    let isWanted = true;
    void readHandedIn(text).then((found) => isWanted && setRead(found));
    return () => {
      isWanted = false;
    };
  }, [text]);
  const type = (event: Event) => {
    const typed = (event.currentTarget as HTMLTextAreaElement).value;
    setText(typed);
    const isKept = kept(() => {
      shelf?.setItem(key, typed);
      return true;
    });
    tell(isKept ? '' : 'This browser has no room to keep what you paste: save the table before you leave.');
  };
  const asks = asksOf(page);
  const seed = page.blocks.find((block) => block.type === 'seed');
  const here = read.flatMap((one) => (isDamaged(one) || one.notebook !== page.id ? [] : [one]));
  const rows = latest(here).map((one) => classRow(one, asks, seed, book.first.value, shown.value));
  const save = () =>
    offerFile(textOfCells(classRows(rows, asks), 'commas'), `${page.id}.class.csv`, 'text/csv');
  return html`<div>
    <p>Paste what learners sent you, one after another, with whatever stands round it. It is kept in this browser alone.</p>
    <label for=${id}>What was handed in</label>
    <textarea id=${id} rows="4" value=${text} onInput=${type}></textarea>
    <p class="says" role="alert">${told}</p>
    <ul class="class-faults" aria-live="polite">${read.flatMap((one, at) => (isDamaged(one) ? [html`<li>Number ${at + 1} can’t be read: ${one.fault}.</li>`] : one.notebook === page.id ? [] : [html`<li>Number ${at + 1}, of ${one.name || 'somebody'}, is for another notebook, “${one.notebook}”.</li>`]))}</ul>
    ${text.trim() !== '' && read.length === 0 ? html`<p>There is nothing in this that was handed in: it begins with BB: and ends with :BB.</p>` : null}
    ${
      rows.length > 0
        ? html`<div class="table-wrap" tabindex="0" role="group" aria-label="The class">
              <table>
                <thead><tr><th>Name</th>${seed ? html`<th>Numbers</th>` : null}${asks.map(({ name }) => html`<th key=${name}>${name}</th>`)}</tr></thead>
                <tbody>${rows.map((row) => html`<tr><th scope="row">${row.name || '(no name)'}</th>${seed ? html`<td>${row.seed}</td>` : null}${row.cells.map(cellWords)}</tr>`)}</tbody>
              </table>
            </div>
            <button type="button" onClick=${save}>Save the table as CSV</button>`
        : null
    }
  </div>`;
}

const cellWords = ({ guesses, worth, sentence }: ClassRow['cells'][number]) => html`<td>
  ${guesses.length === 0 ? '—' : guesses.join(', then ')}${worth === '' ? null : html` <em>${worth}</em>`}
  ${sentence === '' ? null : html`<p>${sentence}</p>`}
</td>`;

/** Of one who handed in twice the last counts; those without a name are told apart by nothing. */
const latest = (all: readonly HandedIn[]): readonly HandedIn[] =>
  all.filter(({ name }, at) => name === '' || !all.slice(at + 1).some((later) => later.name === name));

/** A shelf may be full or shut. */
function kept<T>(use: () => T): T | null {
  try {
    return use();
  } catch {
    return null;
  }
}
